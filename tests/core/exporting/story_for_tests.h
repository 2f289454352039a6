// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exporting/lesson_story.h"
#include "outcome_for_tests.h"

namespace plumbmark::test {

/// A lesson of two made-up swings; the pictures are plain blocks of colour.
inline exporting::LessonStory madeUpStory() {
    exporting::LessonStory story;
    story.player = "Kim";
    story.title = "First lesson";
    story.day = "2026-11-25";
    story.wish = "straighter";
    story.belief = "I look up";
    story.note = "windy";
    story.saw = "narrow stance";
    story.said = "wider";
    story.next = "in two weeks: is the stance wide enough?";
    records::PlanItem wider;
    wider.feel = "stand like a goalkeeper";
    wider.drill = "feet on two sticks";
    wider.dose = "three times ten";
    wider.checkpoint = "stance_width";
    wider.guard = "tempo";
    wider.trains = "position";
    records::PlanItem turn;
    turn.feel = "belt buckle to the target";
    story.plan.items = {wider, turn};
    for (int i = 0; i < 2; ++i) {
        auto outcome = std::make_shared<analysis::Outcome>(madeUpOutcome());
        exporting::LessonSwing swing;
        swing.shotNumber = i + 1;
        for (const auto& [moment, frame] : {std::pair{marks::MomentId::address, std::size_t{0}},
                                            std::pair{marks::MomentId::impact, std::size_t{3}}}) {
            auto picture = std::make_shared<video::RgbImage>();
            picture->width = picture->height = 700;
            picture->pixels.assign(3 * 700 * 700, static_cast<std::uint8_t>(120 + 40 * i));
            swing.stills.push_back({moment, frame, {10, 500}, picture});
        }
        swing.outcome = outcome;
        story.swings.push_back(std::move(swing));
    }
    return story;
}

/// Markup, script, formulas, reordering marks, emoji, right-to-left letters, line ends and no end.
inline std::string hostileText(int number) {
    const std::string n = std::to_string(number);
    return "<script>document.title='hit'</script><img src=http://127.0.0.1:1/" + n +
           " onerror=alert(1)>\"'&amp;]]>-->\u202egnp.exe\u2066\u05e9\u05dc\u05d5\u05dd \U0001f3cc\n" +
           std::string(300, 'W') + " END" + n;
}

/// Everything in a story that somebody typed.
inline std::vector<std::string*> typedFields(exporting::LessonStory& story) {
    return {&story.player,
            &story.title,
            &story.day,
            &story.wish,
            &story.belief,
            &story.note,
            &story.saw,
            &story.said,
            &story.next,
            &story.plan.items[0].feel,
            &story.plan.items[0].drill,
            &story.plan.items[0].dose,
            &story.plan.items[0].checkpoint,
            &story.plan.items[0].guard};
}

inline exporting::LessonStory hostileStory() {
    exporting::LessonStory story = madeUpStory();
    int n = 0;
    for (std::string* text : typedFields(story)) {
        *text = hostileText(++n);
    }
    return story;
}
inline constexpr int kHostileFields = 14;

} // namespace plumbmark::test
