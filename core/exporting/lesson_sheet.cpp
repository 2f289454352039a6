// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/lesson_sheet.h"

#include <algorithm>
#include <array>
#include <functional>
#include <string>

#include "exporting/picture_marks.h"
#include "exporting/words.h"

namespace plumbmark::exporting {
namespace {

constexpr Ink kText{0x1b, 0x22, 0x2a};
constexpr Ink kQuiet{0x45, 0x50, 0x5a};
constexpr Ink kRule{0xb4, 0xbd, 0xc4};
constexpr Ink kDark{0x10, 0x18, 0x1e};
constexpr Ink kCautionFill{0xef, 0xe9, 0xfb}; // a colour of its own: cautions are no traffic lights
constexpr Ink kCautionEdge{0x33, 0x18, 0x6b};

struct Sizes {
    double width, height; ///< mm; height 0: as high as it needs to be
    double margin;
    int columns;
    double title, heading, body, small; ///< points
    double sign;                        ///< mm
    double term;                        ///< mm, column of the words "Feel", "Drill"
};
constexpr Sizes kPaper{210.0, 297.0, 14.0, 4, 20.0, 12.5, 10.0, 8.5, 4.2, 40.0};
constexpr Sizes kPhone{100.0, 0.0, 5.0, 2, 15.0, 11.5, 10.0, 8.5, 4.4, 27.0};

/// A piece that stays whole, laid out from y = 0.
struct Piece {
    std::vector<Item> items;
    double height = 0.0;
    double gapAfter = 0.0;
    bool keepWithNext = false; ///< a heading never stands alone at a page's end
};

class Sheet {
  public:
    Sheet(const LessonStory& story, const Painter& painter, SheetFormat format)
        : story_(story), painter_(painter), s_(format == SheetFormat::paper ? kPaper : kPhone),
          inner_(s_.width - 2 * s_.margin) {}

    std::vector<Page> make() {
        head();
        words();
        lightSection(coaching::State::good, "Good: keep it");
        plan();
        lightSection(coaching::State::work, "Work on it");
        lightSection(coaching::State::watch, "Watch");
        for (const LessonSwing& swing : story_.swings) {
            swingSection(swing);
        }
        lightSection(coaching::State::unknown, "Cannot tell from these clips");
        filming();
        body();
        next();
        return paged();
    }

  private:
    TextStyle styled(double points, Weight weight = Weight::regular, Ink ink = kText,
                     Align align = Align::start) const {
        return {points, weight, align, ink};
    }
    double put(Piece& piece, double x, double width, const std::string& words, const TextStyle& style,
               double y) const {
        const double height = painter_.textHeight(words, style, width);
        if (height > 0.0) {
            piece.items.emplace_back(Text{{s_.margin + x, y, width, height + 0.2}, words, style});
        }
        return height;
    }
    /// One block of text over the whole width, cut into pieces at its line ends so that it can break over
    /// pages.
    void paragraph(const std::string& words, const TextStyle& style, double gapAfter = 1.0) {
        std::size_t from = 0;
        while (from <= words.size()) {
            const std::size_t end = std::min(words.find('\n', from), words.size());
            Piece piece;
            piece.height = put(piece, 0, inner_, words.substr(from, end - from), style, 0);
            piece.gapAfter = end == words.size() ? gapAfter : 0.0;
            if (piece.height > 0.0) {
                pieces_.push_back(std::move(piece));
            }
            from = end + 1;
        }
    }
    void heading(const std::string& words) {
        Piece piece;
        const double above = 2.5;
        piece.height = above + put(piece, 0, inner_, words, styled(s_.heading, Weight::bold), above);
        Line rule;
        rule.from = {s_.margin, piece.height + 0.6};
        rule.to = {s_.margin + inner_, piece.height + 0.6};
        rule.width = 0.4;
        rule.ink = kDark;
        piece.items.emplace_back(rule);
        piece.height += 1.0;
        piece.gapAfter = 1.6;
        piece.keepWithNext = true;
        pieces_.push_back(std::move(piece));
    }
    /// "Feel      long words": nothing where there are none.
    void term(const std::string& name, const std::string& words) {
        if (words.empty()) {
            return;
        }
        Piece piece;
        const double left = put(piece, 0, s_.term - 2, name, styled(s_.body, Weight::bold), 0);
        piece.height = std::max(left, put(piece, s_.term, inner_ - s_.term, words, styled(s_.body), 0));
        piece.gapAfter = 0.6;
        pieces_.push_back(std::move(piece));
    }

    void head() {
        Piece piece;
        piece.height = put(piece, 0, inner_, story_.title.empty() ? "Lesson" : story_.title,
                           styled(s_.title, Weight::bold), 0);
        piece.height += put(piece, 0, inner_, heading_(), styled(s_.heading), piece.height + 0.5) + 0.5;
        piece.gapAfter = 2.0;
        pieces_.push_back(std::move(piece));
    }
    [[nodiscard]] std::string heading_() const {
        return story_.player + (story_.player.empty() || story_.day.empty() ? "" : ", ") + story_.day;
    }
    void words() {
        term("What you want", story_.wish);
        term("You think", story_.belief);
        term("We saw", story_.saw);
        term("Remember", story_.said);
        term("Note", story_.note);
    }

    void lightSection(coaching::State state, const std::string& title) {
        const auto list = lights(story_, state);
        if (list.empty()) {
            return;
        }
        heading(title);
        const double indent = s_.sign + 2.0;
        const double width = inner_ - indent;
        for (const Light& light : list) {
            Piece piece;
            const TextStyle bold = styled(s_.body, Weight::bold);
            const double line = painter_.textHeight("X", bold, width);
            piece.items.emplace_back(Shape{signOf(state), {s_.margin + s_.sign / 2, line / 2}, s_.sign});
            std::string first = light.label;
            if (const std::string much = agreement(light); !much.empty()) {
                first += ", " + much;
            }
            piece.height = put(piece, indent, width, first, bold, 0);
            std::string value = light.value;
            if (!light.range.empty()) {
                value += "  (" + light.range + ")";
            }
            piece.height += put(piece, indent, width, value, styled(s_.small), piece.height);
            if (state != coaching::State::good) {
                piece.height += put(piece, indent, width, light.help,
                                    styled(s_.small, Weight::regular, kQuiet), piece.height);
            }
            piece.height = std::max(piece.height, s_.sign);
            piece.gapAfter = 1.2;
            pieces_.push_back(std::move(piece));
        }
    }

    void plan() {
        if (story_.plan.items.empty()) {
            return;
        }
        heading("Your plan");
        int number = 0;
        for (const records::PlanItem& item : story_.plan.items) {
            const std::string first = "Priority " + std::to_string(++number);
            Piece piece;
            piece.height = put(piece, 0, inner_, first, styled(s_.body, Weight::bold), 0);
            piece.gapAfter = 0.4;
            const std::size_t begin = pieces_.size();
            pieces_.push_back(std::move(piece));
            term("Feel", item.feel);
            term("Drill", item.drill);
            term("How much", item.dose);
            term("It decides", checkpointWords(item.checkpoint));
            term("Must not get worse", checkpointWords(item.guard));
            for (std::size_t i = begin; i + 1 < pieces_.size(); ++i) {
                pieces_[i].keepWithNext = true; // a priority stays together
            }
            pieces_.back().keepWithNext = false;
        }
    }

    void swingSection(const LessonSwing& swing) {
        const analysis::Outcome& outcome = *swing.outcome;
        heading("Swing " + std::to_string(swing.shotNumber) + ": " + contextLine(outcome.context));
        if (swing.stills.empty()) {
            paragraph("The film is not in this library, so there are no pictures.",
                      styled(s_.small, Weight::regular, kQuiet));
            return;
        }
        const auto columns = static_cast<std::size_t>(s_.columns);
        const double gap = 3.0;
        const double cell = (inner_ - (s_.columns - 1) * gap) / s_.columns;
        for (std::size_t row = 0; row < swing.stills.size(); row += columns) {
            Piece piece;
            for (std::size_t i = row; i < std::min(swing.stills.size(), row + columns); ++i) {
                const double x = static_cast<double>(i - row) * (cell + gap);
                piece.height = std::max(piece.height, position(piece, x, cell, outcome, swing.stills[i]));
            }
            piece.gapAfter = 2.0;
            pieces_.push_back(std::move(piece));
        }
        paragraph(linesLegend(outcome.context.view), styled(s_.small - 0.5, Weight::regular, kQuiet));
    }

    double position(Piece& piece, double x, double width, const analysis::Outcome& outcome,
                    const Still& still) const {
        const marks::Moment* moment = marks::find(outcome.moments, still.moment);
        double y =
            put(piece, x, width, moment != nullptr ? std::string(momentLabel(still.moment)) : "First frame",
                styled(s_.small, Weight::bold), 0) +
            0.5;
        if (still.picture && still.picture->width > 0) {
            const double scale = width / still.picture->width;
            const PageBox box{s_.margin + x, y, width, still.picture->height * scale};
            piece.items.emplace_back(Picture{box, still.picture});
            drawMarks(marksAt(outcome, still.frame, still.moment), still.corner, scale, box, piece.items,
                      0.9);
            Rectangle frame;
            frame.box = box;
            frame.outline = kRule;
            piece.items.emplace_back(frame);
            y += box.height + 0.8;
        }
        if (moment == nullptr) {
            return y;
        }
        for (const auto* told : tellingNumbers(outcome, still.moment, 4)) {
            const measure::Measurement& m = *told;
            const auto decides =
                std::find_if(outcome.checkpoints.begin(), outcome.checkpoints.end(),
                             [&](const auto& c) { return c.measurement == m.id && c.moment == m.moment; });
            const double sign = s_.sign * 0.7;
            const TextStyle bold = styled(s_.small - 1.0, Weight::bold);
            const double line = painter_.textHeight("X", bold, width);
            if (decides != outcome.checkpoints.end()) {
                piece.items.emplace_back(
                    Shape{signOf(decides->state), {s_.margin + x + sign / 2, y + line / 2}, sign});
            }
            const double indent = sign + 0.8;
            y += put(piece, x + indent, width - indent, measurementLabel(m.id),
                     styled(s_.small - 1.0, Weight::regular, kQuiet), y);
            y += put(piece, x + indent, width - indent,
                     valueText(m.id, *m.value, outcome.context.statureMetres), bold, y) +
                 0.3;
        }
        return y;
    }

    void filming() {
        const auto advice = filmAdvice(story_);
        if (advice.empty()) {
            return;
        }
        heading("Film it better");
        for (const Advice& one : advice) {
            Piece piece;
            piece.height = put(piece, 0, inner_, one.change, styled(s_.body, Weight::bold), 0);
            piece.height +=
                put(piece, 0, inner_, one.limited, styled(s_.small, Weight::regular, kQuiet), piece.height);
            piece.gapAfter = 1.0;
            pieces_.push_back(std::move(piece));
        }
    }

    void body() {
        heading("Your body");
        for (const coaching::Caution& caution : cautions(story_)) {
            const double pad = 2.0;
            Piece piece;
            piece.items.emplace_back(Rectangle{});
            double y = pad;
            y += put(piece, pad, inner_ - 2 * pad, "Body caution (" + caution.grade + "): " + caution.seen,
                     styled(s_.body, Weight::bold), y);
            y += put(piece, pad, inner_ - 2 * pad,
                     caution.ease.empty() ? caution.words : caution.ease + " " + caution.words,
                     styled(s_.small), y);
            Rectangle plate;
            plate.box = {s_.margin, 0, inner_, y + pad};
            plate.cornerRadius = 1.2;
            plate.fill = kCautionFill;
            plate.outline = kCautionEdge;
            piece.items.front() = plate;
            piece.height = y + pad;
            piece.gapAfter = 1.5;
            pieces_.push_back(std::move(piece));
        }
        paragraph(std::string(usualWords()), styled(s_.small));
    }

    void next() {
        if (!story_.next.empty()) {
            heading("Next look");
            paragraph(story_.next, styled(s_.body));
        }
        if (story_.moreSwings > 0) {
            paragraph(std::to_string(story_.moreSwings) +
                          (story_.moreSwings == 1 ? " more clip belongs" : " more clips belong") +
                          " to this lesson.",
                      styled(s_.small, Weight::regular, kQuiet));
        }
        paragraph(std::string(sigmaWords()), styled(s_.small, Weight::regular, kQuiet));
    }

    /// Puts the pieces on pages; what follows a heading comes along with it.
    std::vector<Page> paged() {
        const double footer = painter_.textHeight("X", styled(s_.small), inner_) + 3.0;
        const double bottom = s_.height > 0.0 ? s_.height - s_.margin - footer : 0.0;
        std::vector<Page> pages(1);
        double y = s_.margin;
        for (std::size_t i = 0; i < pieces_.size(); ++i) {
            double needed = pieces_[i].height;
            for (std::size_t k = i; k + 1 < pieces_.size() && pieces_[k].keepWithNext; ++k) {
                needed += pieces_[k].gapAfter + pieces_[k + 1].height;
            }
            // What fits no page at all is not moved on and on: it stays where it comes.
            const bool fitsAPage = needed <= bottom - s_.margin;
            const bool headed = i > 0 && pieces_[i - 1].keepWithNext;
            if (bottom > 0.0 && y > s_.margin && !headed &&
                (y + needed > bottom && (fitsAPage || y + pieces_[i].height > bottom))) {
                pages.emplace_back();
                y = s_.margin;
            } else if (bottom > 0.0 && headed && y + pieces_[i].height > bottom && y > s_.margin * 2) {
                pages.emplace_back();
                y = s_.margin;
            }
            for (Item& item : pieces_[i].items) {
                moveDown(item, y);
                pages.back().items.push_back(std::move(item));
            }
            y += pieces_[i].height + pieces_[i].gapAfter;
        }
        for (std::size_t p = 0; p < pages.size(); ++p) {
            Page& page = pages[p];
            page.width = s_.width;
            page.height = s_.height > 0.0 ? s_.height : y + s_.margin;
            page.title = story_.title.empty() ? "Lesson" : story_.title;
            if (s_.height > 0.0) {
                const TextStyle quiet = styled(s_.small, Weight::regular, kQuiet);
                const double at = s_.height - s_.margin - footer + 3.0;
                page.items.emplace_back(
                    Text{{s_.margin, at, inner_ * 0.8, footer - 3.0 + 0.2}, heading_(), quiet});
                page.items.emplace_back(Text{{s_.margin + inner_ * 0.8, at, inner_ * 0.2, footer - 3.0 + 0.2},
                                             std::to_string(p + 1) + " / " + std::to_string(pages.size()),
                                             styled(s_.small, Weight::regular, kQuiet, Align::end)});
            }
        }
        return pages;
    }

    const LessonStory& story_;
    const Painter& painter_;
    const Sizes& s_;
    double inner_;
    std::vector<Piece> pieces_;
};

} // namespace

std::vector<Page> lessonSheet(const LessonStory& story, const Painter& painter, SheetFormat format) {
    return Sheet(story, painter, format).make();
}

} // namespace plumbmark::exporting
