// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/request_card.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <vector>

#include "exporting/lesson_page.h"
#include "exporting/lesson_story.h"

namespace plumbmark::exporting {
namespace {

struct Section {
    std::string_view title;
    std::vector<std::string_view> lines;
    bool fillIn = false; ///< each line is a question with room for an answer
};

// The filming protocol is common practice, no source; so are the questions.
const std::vector<Section>& sections() {
    static const std::vector<Section> all{
        {"Where the phone goes",
         {"On a stand or a bag, lens as high as your hands, 4 to 5 m away, phone upright, main lens (not the "
          "wide one), level.",
          "Face-on: it looks at your chest; the ball is in the middle of the picture.",
          "Down-the-line: it stands behind your hands and looks along the target line; your hands are in the "
          "middle of the picture. Left-handers turn the drawing round.",
          "Slow motion, 120 to 240 frames a second. Light from behind the camera. Head, feet and the whole "
          "club "
          "in the picture from start to finish."},
         false},
        {"Sticks",
         {"One stick on the ground along the target line, just beyond the ball. A second one across your "
          "toes, "
          "if you have it."},
         false},
        {"What to film",
         {"Three swings face-on and three down-the-line with the same club, your usual swing, after warming "
          "up.",
          "Stand still for a second before each swing. Say or write what the ball did.",
          "Look around before every swing: nobody in front, nobody behind."},
         false},
        {"Please answer",
         {"What would you like to be better?", "What do you think causes it?",
          "Which club, and what did the ball do?",
          "Does anything hurt, now or when you play? Where, from 0 to 10?",
          "Joints that are stiff or replaced?"},
         true},
        {"Your agreement",
         {"I agree that these films and answers are kept on the coach's device for my lessons.     yes / no",
          "They may be shown to others for teaching, with my face covered.     yes / no",
          "For players under 18: a parent or guardian agrees.     Name:"},
         true},
    };
    return all;
}

/// Bird's-eye view of both places for the phone, metres; x to the target, y from the player's back to the
/// ball. Drawn small: 7 m by 7 m.
struct Plan {
    base::Vec2 player{0.0, 0.0}, ball{0.1, 0.8}, faceOn{0.0, 5.0}, downTheLine{-4.5, 0.45};
};

constexpr Ink kText{0x1b, 0x22, 0x2a};
constexpr Ink kQuiet{0x45, 0x50, 0x5a};
constexpr Ink kDark{0x10, 0x18, 0x1e};
constexpr Ink kRule{0xb4, 0xbd, 0xc4};

constexpr std::string_view kStyle = R"(
body{margin:0 auto;max-width:44rem;padding:1rem;font:1rem/1.45 system-ui,sans-serif;color:#1b222a;background:#fff;
overflow-wrap:anywhere}
h1{font-size:1.5rem;margin:.2rem 0}h2{font-size:1.15rem;margin:1.3rem 0 .3rem;border-bottom:2px solid #10181e}
li{margin:.3rem 0}.quiet{color:#45505a;font-size:.9rem}svg{width:100%;max-width:24rem;height:auto}
.answer{border-bottom:1px solid #b4bdc4;height:1.6rem}
)";

std::string intro(const RequestCard& card) {
    std::string words =
        card.player.empty() ? "Please film your swing" : card.player + ", please film your swing";
    if (!card.due.empty()) {
        words += " by " + card.due;
    }
    words += " and send the films as the camera made them, with your answers";
    return words + (card.coach.empty() ? "." : ", to " + card.coach + ".");
}

} // namespace

Page requestCardPage(const RequestCard& card, const Painter& painter) {
    Page page;
    page.width = 210.0;
    page.height = 297.0;
    page.title = "Swings to send in";
    const double margin = 14.0;
    const double inner = page.width - 2 * margin;
    const auto put = [&](double x, double y, double width, const std::string& words, const TextStyle& style,
                         double most = 1e9) {
        const double height = std::min(most, painter.textHeight(words, style, width));
        if (height > 0.0) {
            page.items.emplace_back(Text{{x, y, width, height + 0.2}, words, style});
        }
        return height;
    };
    const auto line = [&](PagePoint from, PagePoint to, double width, Ink ink, bool dashed = false) {
        Line drawn;
        drawn.from = from;
        drawn.to = to;
        drawn.width = width;
        drawn.ink = ink;
        drawn.dashed = dashed;
        page.items.emplace_back(drawn);
    };
    const TextStyle body{9.5, Weight::regular, Align::start, kText};
    double y = margin;
    y += put(margin, y, inner, "Swings to send in", {20.0, Weight::bold, Align::start, kText}) + 1.0;
    y += put(margin, y, inner, intro(card), {11.0, Weight::regular, Align::start, kText}, 15.0) + 1.0;
    if (!card.question.empty()) {
        y += put(margin, y, inner, card.question, {11.0, Weight::bold, Align::start, kText}, 10.0) + 1.0;
    }
    // The plan stands to the right of the first two sections.
    const double planSide = 58.0;
    const double planX = page.width - margin - planSide;
    const double planY = y + 4.0;
    for (std::size_t i = 0; i < sections().size(); ++i) {
        const Section& section = sections()[i];
        const double width = i < 2 ? inner - planSide - 6.0 : inner;
        if (i == 2) {
            y = std::max(y, planY + planSide + 8.0);
        }
        y += 3.0 + put(margin, y + 3.0, width, std::string(section.title),
                       {12.5, Weight::bold, Align::start, kText});
        line({margin, y + 0.4}, {margin + width, y + 0.4}, 0.4, kDark);
        y += 2.0;
        for (const std::string_view words : section.lines) {
            y += put(margin, y, width, std::string(words), body) + 0.8;
            if (section.fillIn) {
                y += 6.0;
                line({margin, y}, {margin + width, y}, 0.2, kRule);
                y += 1.6;
            }
        }
    }
    put(margin, y + 2.0, inner, std::string(usualWords()), {8.5, Weight::regular, Align::start, kQuiet});
    // Bird's-eye view.
    const Plan plan;
    const double scale = planSide / 7.2;
    const auto at = [&](base::Vec2 metres) {
        return PagePoint{planX + (metres.x + 5.2) * scale, planY + (metres.y + 1.2) * scale};
    };
    line(at({-5.0, 0.95}), at({1.8, 0.95}), 0.3, kRule, true);
    line(at({-0.6, 0.95}), at({1.0, 0.95}), 0.9, kDark);
    line(at({-0.5, 0.3}), at({0.7, 0.3}), 0.9, kDark);
    const auto box = [&](base::Vec2 centre, double width, double height, double radius) {
        Rectangle shape;
        const PagePoint c = at(centre);
        shape.box = {c.x - width / 2, c.y - height / 2, width, height};
        shape.cornerRadius = radius;
        shape.fill = kDark;
        page.items.emplace_back(shape);
    };
    box(plan.player, 4.4, 4.4, 2.2);
    box(plan.ball, 1.2, 1.2, 0.6);
    box(plan.faceOn, 3.6, 1.6, 0.4);
    box(plan.downTheLine, 1.6, 3.6, 0.4);
    const TextStyle small{7.5, Weight::regular, Align::start, kText};
    put(at({0.5, 4.7}).x, at({0.5, 4.7}).y, 18.0, "face-on", small);
    put(at({-5.2, 1.3}).x, at({-5.2, 1.3}).y, 24.0, "down-the-line", small);
    put(at({0.5, -0.5}).x, at({0.5, -0.5}).y, 18.0, "you", small);
    put(at({1.1, 1.1}).x, at({1.1, 1.1}).y, 9.0, "target", small);
    return page;
}

std::string requestCardHtml(const RequestCard& card) {
    std::string body =
        "<h1>Swings to send in</h1><p><bdi dir=\"auto\">" + htmlText(intro(card)) + "</bdi></p>";
    if (!card.question.empty()) {
        body += "<p><b><bdi dir=\"auto\">" + htmlText(card.question) + "</bdi></b></p>";
    }
    body +=
        R"(<svg viewBox="0 0 360 360" role="img" aria-label="Seen from above: you, the ball, a stick on the )"
        R"(target line, the phone 5 m in front of you or 4 to 5 m behind your hands">)"
        R"(<path d="M10 108H350" stroke="#b4bdc4" stroke-width="2" stroke-dasharray="8 5"/>)"
        R"(<path d="M230 108h80M235 75h60" stroke="#10181e" stroke-width="5"/>)"
        R"(<circle cx="260" cy="60" r="13"/><circle cx="265" cy="100" r="4"/>)"
        R"(<rect x="248" y="305" width="24" height="10" rx="2"/><rect x="30" y="72" width="10" height="24" rx="2"/>)"
        R"(<g font-size="15"><text x="282" y="62">you</text><text x="280" y="315">face-on</text>)"
        R"(<text x="8" y="130">down-the-line</text><text x="312" y="126">target</text></g></svg>)";
    for (const Section& section : sections()) {
        body += "<h2>" + htmlText(section.title) + "</h2><ul>";
        for (const std::string_view line : section.lines) {
            body +=
                "<li>" + htmlText(line) + (section.fillIn ? "<div class=\"answer\"></div>" : "") + "</li>";
        }
        body += "</ul>";
    }
    body += "<p class=\"quiet\">" + std::string(usualWords()) + "</p>";
    return htmlDocument("Swings to send in", kStyle, body);
}

} // namespace plumbmark::exporting
