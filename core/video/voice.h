// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <span>
#include <vector>

#include "base/result.h"
#include "video/byte_source.h"
#include "video/clip.h"

namespace plumbmark::video {

/// The sound of a sound file or a film (WAV, M4A, MP3, FLAC, Ogg, AIFF, MP4, MKV ...), mono; sample i is
/// heard at start + i / rate. Priming samples are left out. Errors (input): those of openFile,
/// "sound.not_sound", "sound.too_long" (over half an hour).
base::Result<Sound> loadSound(const std::filesystem::path& path);
base::Result<Sound> loadSound(std::unique_ptr<ByteSource> source);

/// A spoken voice, small: AAC, mono, 24,000 samples and 40 kbit a second (300 kB a minute) in an M4A file,
/// from time 0 on: what lies before 0 is left out, what lacks is silence. Nothing of the recorder goes in.
/// Errors (failure): "sound.encode".
base::Result<std::vector<std::uint8_t>> encodeVoice(const Sound& sound);

/// The sound from time 0 to `seconds` exactly, at its own rate: cut or filled up with silence.
[[nodiscard]] std::vector<float> fitted(const Sound& sound, double seconds);

} // namespace plumbmark::video
