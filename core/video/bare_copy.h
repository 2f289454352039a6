// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>

#include "base/progress.h"
#include "base/result.h"

namespace plumbmark::video {

/// A copy of a film without what its recorder wrote beside pictures and sound: place, maker, model, owner,
/// comments, dates, names of tracks, chapters, attached files, data tracks (position, motion). The coded
/// pictures and the sound go over packet by packet, bit for bit; nothing is encoded again. Kept is a short
/// list: capture rate, turn and mirroring, colour and light level, edit times, the shape of a pixel. One
/// picture track and its sound go over, in the kind of container the film came in (MP4, MOV, Matroska, AVI,
/// MPEG-TS). The same film gives the same bytes with the same build of FFmpeg.
///
/// Afterwards the copy is opened and held against the film: size, turn, capture rate, the time of every
/// frame and the bytes of every coded picture are the same, or there is no copy.
///
/// What an encoder has put inside the coded pictures themselves stays (H.264 and HEVC can carry free text
/// there); only encoding anew takes that away.
///
/// Errors: (input) those of openFile and Clip::open, "bare.container" (a container we cannot write),
/// "bare.changed" (the copy would not show the same frames); (failure) "disk.full", "bare.unwritable",
/// "cancelled". On an error there is no file at `target`.
base::Result<void> writeBareCopy(const std::filesystem::path& film, const std::filesystem::path& target,
                                 const base::Progress& progress = {});

} // namespace plumbmark::video
