// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "analysis/analysis.h"
#include "exporting/film_advice.h"
#include "exporting/key_position_sheet.h"
#include "records/kinds.h"

/// What a lesson tells at home, before it becomes a page, a sheet or a film.
namespace plumbmark::exporting {

struct LessonSwing {
    int shotNumber = 0; ///< place in the lesson, from 1
    std::shared_ptr<const analysis::Outcome> outcome;
    std::vector<Still> stills;  ///< empty where the film is not here
    std::vector<Advice> advice; ///< how to film it better
};

struct LessonStory {
    std::string player, title, day;
    std::string wish, belief, note; ///< in the student's and the coach's own words
    std::string saw, said, next;    ///< the coach's three lines
    records::Plan plan;
    std::vector<LessonSwing> swings;
    int moreSwings = 0; ///< clips of the lesson that are not told here
};

/// One checkpoint over all swings that it fits.
struct Light {
    std::string label;
    coaching::State state =
        coaching::State::unknown; ///< the one most swings have; ties: the one that asks more
    int swings = 0;               ///< in which it could be told
    int agree = 0;                ///< of these, with that state
    std::string value; ///< number with sigma and unit, of several swings their median; empty where none
    std::string range; ///< "good: 2 to 10°"; empty where there is none
    std::string help;
};
/// All lights of the state, in the order of the playbook. Views never mix.
[[nodiscard]] std::vector<Light> lights(const LessonStory& story, coaching::State state);
/// "in 3 of 4 swings", empty for a single swing.
[[nodiscard]] std::string agreement(const Light& light);

/// The numbers of a moment, those that checkpoints rest on first, at most `most`.
[[nodiscard]] std::vector<const measure::Measurement*>
tellingNumbers(const analysis::Outcome& outcome, marks::MomentId moment, std::size_t most);

/// Cautions of all swings, each said once.
[[nodiscard]] std::vector<coaching::Caution> cautions(const LessonStory& story);

/// How to film better, over all swings, each said once.
[[nodiscard]] std::vector<Advice> filmAdvice(const LessonStory& story);

/// "Check" of a plan's item in words: the label where it is a checkpoint's id, else as it stands.
[[nodiscard]] std::string checkpointWords(std::string_view idOrWords);

/// The usual words under everything about a body.
[[nodiscard]] std::string_view usualWords();
/// What one sigma means, for people.
[[nodiscard]] std::string_view sigmaWords();

} // namespace plumbmark::exporting
