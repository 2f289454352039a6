// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/key_position_sheet.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "exporting/picture_marks.h"
#include "exporting/words.h"
#include "video/still.h"

namespace plumbmark::exporting {
namespace {
using marks::Landmark;
using marks::MomentId;

constexpr std::size_t kMostStills = 8;
constexpr double kPictureAspect = 1.0; ///< width to height of every cut-out: a swing is as wide as high

/// Which moments to show when there are more than fit, most telling first.
constexpr std::array kImportance{MomentId::address,
                                 MomentId::top,
                                 MomentId::impact,
                                 MomentId::finish,
                                 MomentId::shaft_level_back,
                                 MomentId::shaft_level_down,
                                 MomentId::lead_arm_level_back,
                                 MomentId::release,
                                 MomentId::shaft_level_through,
                                 MomentId::lead_arm_level_down,
                                 MomentId::pelvis_starts_forward};

std::vector<marks::Moment> chosenMoments(const marks::Moments& moments) {
    std::vector<marks::Moment> chosen;
    for (const MomentId id : kImportance) {
        if (const auto* moment = marks::find(moments, id); moment != nullptr && chosen.size() < kMostStills) {
            chosen.push_back(*moment);
        }
    }
    std::stable_sort(chosen.begin(), chosen.end(),
                     [](const auto& a, const auto& b) { return a.time < b.time; });
    return chosen;
}

std::size_t nearestFrame(const std::vector<base::Seconds>& times, base::Seconds time) {
    const auto after = std::lower_bound(times.begin(), times.end(), time);
    if (after == times.begin()) {
        return 0;
    }
    const auto before = after - 1;
    const bool later = after != times.end() && *after - time < time - *before;
    return static_cast<std::size_t>((later ? after : before) - times.begin());
}

/// Grows to hold points.
class Bounds {
  public:
    void add(base::Vec2 p) {
        if (!std::isfinite(p.x) || !std::isfinite(p.y)) {
            return;
        }
        low_ = any_ ? base::Vec2{std::min(low_.x, p.x), std::min(low_.y, p.y)} : p;
        high_ = any_ ? base::Vec2{std::max(high_.x, p.x), std::max(high_.y, p.y)} : p;
        any_ = true;
    }
    [[nodiscard]] bool any() const { return any_; }
    [[nodiscard]] base::Vec2 centre() const { return base::midpoint(low_, high_); }
    [[nodiscard]] base::Vec2 size() const { return high_ - low_; }

  private:
    bool any_ = false;
    base::Vec2 low_, high_;
};

bool ofThePlayer(Landmark landmark) {
    return landmark <= Landmark::pelvis_rear;
}

struct CutOut {
    base::Vec2 centre; ///< in the reference frame of the ground
    int width = 0, height = 0;
};

CutOut cutOutFor(const analysis::Outcome& outcome, const std::vector<std::size_t>& frames) {
    Bounds body;
    for (const std::size_t frame : frames) {
        if (frame >= outcome.track.size()) {
            continue;
        }
        const auto onGround = [&](base::Vec2 p) {
            return outcome.scene.ground.toReference(static_cast<int>(frame), p);
        };
        for (std::size_t i = 0; i < marks::kLandmarkCount; ++i) {
            const auto& mark = outcome.track[frame].points[i];
            if (mark && ofThePlayer(static_cast<Landmark>(i))) {
                body.add(onGround(mark->at));
            }
        }
    }
    const double pictureWidth = outcome.clip.width;
    const double pictureHeight = outcome.clip.height;
    base::Vec2 size{pictureWidth, pictureHeight};
    base::Vec2 centre = size / 2;
    if (body.any()) {
        // Joint centres end before crown, soles and club do.
        const double margin = 0.13 * std::max(body.size().x, body.size().y) + 8.0;
        centre = body.centre();
        size = {body.size().x + 2 * margin, body.size().y + 2 * margin};
    }
    double height = std::max(size.y, size.x / kPictureAspect);
    height = std::min({height, pictureHeight, pictureWidth / kPictureAspect});
    return {centre, std::max(1, static_cast<int>(std::lround(height * kPictureAspect))),
            std::max(1, static_cast<int>(std::lround(height)))};
}

// ---------------------------------------------------------------------------------------------------------------------

constexpr Ink kText{0x1b, 0x22, 0x2a};
constexpr Ink kQuiet{0x45, 0x50, 0x5a};
constexpr Ink kRule{0xb4, 0xbd, 0xc4};
constexpr Ink kDark{0x10, 0x18, 0x1e};
constexpr Ink kCautionFill{0xef, 0xe9, 0xfb};
constexpr Ink kCautionEdge{0x33, 0x18, 0x6b};

struct Sizes {
    double width, margin, gap;
    int columns;
    double title, heading, body, small; ///< points
    double sign;                        ///< mm
};
constexpr Sizes kPaper{297.0, 9.0, 3.5, 4, 17.0, 10.0, 8.2, 7.2, 3.6};
constexpr Sizes kPhone{100.0, 4.0, 3.0, 2, 14.0, 10.5, 9.0, 8.0, 4.2};

class Layout {
  public:
    Layout(const analysis::Outcome& outcome, const std::vector<Still>& stills, const Painter& painter,
           const SheetOptions& options)
        : outcome_(outcome), stills_(stills), painter_(painter), options_(options),
          s_(options.format == SheetFormat::paper ? kPaper : kPhone) {}

    Page make() {
        page_.width = s_.width;
        page_.title = "Key positions";
        const double inner = s_.width - 2 * s_.margin;
        double y = header(s_.margin, s_.margin, inner);
        if (options_.format == SheetFormat::paper) {
            const double side = 76.0;
            const double listEnd = checkpoints(s_.margin, y, side);
            const double gridEnd = grid(s_.margin + side + 5.0, y, inner - side - 5.0);
            y = std::max(listEnd, gridEnd);
        } else {
            y = checkpoints(s_.margin, y, inner) + s_.gap;
            y = grid(s_.margin, y, inner);
        }
        y = cautions(s_.margin, y + s_.gap, inner);
        const double lowest = options_.format == SheetFormat::paper ? 210.0 : 0.0;
        const double footerHeight = footer(s_.margin, 0.0, inner, false);
        y = std::max(y + s_.gap, lowest - s_.margin * 0.6 - footerHeight);
        footer(s_.margin, y, inner, true);
        page_.height = y + footerHeight + s_.margin * 0.6;
        return std::move(page_);
    }

  private:
    // Puts text and answers with its height.
    double text(double x, double y, double width, const std::string& words, TextStyle style,
                bool draw = true) {
        const double height = painter_.textHeight(words, style, width);
        if (draw && height > 0.0) {
            page_.items.emplace_back(Text{{x, y, width, height + 0.2}, words, style});
        }
        return height;
    }
    static TextStyle styled(double points, Weight weight = Weight::regular, Ink ink = kText,
                            Align align = Align::start) {
        return {points, weight, align, ink};
    }

    double header(double x, double y, double width) {
        const double titleHeight = text(x, y, width * 0.4, "Key positions", styled(s_.title, Weight::bold));
        std::string facts = contextLine(outcome_.context);
        if (outcome_.timeScale.known && outcome_.clip.playbackFps > 0.0) {
            const double fps = outcome_.clip.playbackFps / outcome_.timeScale.realPerShown;
            facts += ", " + std::to_string(std::lround(fps)) + " frames/s";
        }
        const std::string lines = options_.heading.empty() ? facts : options_.heading + "\n" + facts;
        double height = titleHeight;
        if (options_.format == SheetFormat::paper) {
            const double h = painter_.textHeight(lines, styled(s_.heading), width * 0.6);
            text(x + width * 0.4, y + std::max(0.0, (titleHeight - h) * 0.65), width * 0.6, lines,
                 styled(s_.heading, Weight::regular, kText, Align::end));
            height = std::max(height, h);
        } else {
            height += text(x, y + titleHeight, width, lines, styled(s_.heading));
        }
        y += height + 1.2;
        page_.items.emplace_back(plainLine({x, y}, {x + width, y}, 0.5, kDark));
        return y + 2.8;
    }

    static Line plainLine(PagePoint from, PagePoint to, double width, Ink ink) {
        Line line;
        line.from = from;
        line.to = to;
        line.width = width;
        line.ink = ink;
        return line;
    }

    double checkpoints(double x, double y, double width) {
        static constexpr std::array<std::pair<coaching::State, const char*>, 4> kSections{
            {{coaching::State::good, "Good: keep it"},
             {coaching::State::work, "Work on it"},
             {coaching::State::watch, "Watch"},
             {coaching::State::unknown, "Cannot tell from this clip"}}};
        if (outcome_.checkpoints.empty()) {
            return y + text(x, y, width, "No checkpoints belong to this view, club and kind of shot.",
                            styled(s_.body, Weight::regular, kQuiet));
        }
        for (const auto& [state, title] : kSections) {
            bool first = true;
            for (const auto& checkpoint : outcome_.checkpoints) {
                if (checkpoint.state != state) {
                    continue;
                }
                if (first) {
                    y += text(x, y, width, title, styled(s_.heading, Weight::bold)) + 0.6;
                    first = false;
                }
                y = checkpointRow(x, y, width, checkpoint);
            }
            if (!first) {
                y += 2.0;
            }
        }
        return y;
    }

    double checkpointRow(double x, double y, double width, const coaching::CheckpointResult& c) {
        const double indent = s_.sign + 1.6;
        const std::string label = c.label.empty() ? measurementLabel(c.id) : c.label;
        const double textWidth = width - indent;
        const TextStyle labelStyle = styled(s_.body, Weight::bold);
        const double lineHeight = painter_.textHeight("X", labelStyle, textWidth);
        page_.items.emplace_back(Shape{signOf(c.state), {x + s_.sign / 2, y + lineHeight / 2}, s_.sign});
        double height = text(x + indent, y, textWidth, label, labelStyle);
        std::string value;
        if (c.value) {
            value = valueText(c.measurement, *c.value, outcome_.context.statureMetres);
            const std::string range =
                rangeText(c.goodLow, c.goodHigh, *c.value, outcome_.context.statureMetres);
            if (!range.empty()) {
                value += "  (good: " + range + ")";
            }
        }
        height += text(x + indent, y + height, textWidth, value, styled(s_.small, Weight::regular, kText));
        if (c.state != coaching::State::good) {
            height +=
                text(x + indent, y + height, textWidth, c.help, styled(s_.small, Weight::regular, kQuiet));
        }
        return y + height + 1.0;
    }

    double grid(double x, double y, double width) {
        const int columns = s_.columns;
        const double cell = (width - (columns - 1) * s_.gap) / columns;
        for (std::size_t row = 0; row < stills_.size(); row += static_cast<std::size_t>(columns)) {
            double lowest = y;
            for (std::size_t i = row; i < std::min(stills_.size(), row + static_cast<std::size_t>(columns));
                 ++i) {
                const double left = x + static_cast<double>(i - row) * (cell + s_.gap);
                lowest = std::max(lowest, position(left, y, cell, stills_[i]));
            }
            y = lowest + s_.gap;
        }
        return wholeSwing(x, y, width);
    }

    double position(double x, double y, double width, const Still& still) {
        const marks::Moment* moment = marks::find(outcome_.moments, still.moment);
        const bool told = moment != nullptr;
        const std::string label =
            told ? std::string(momentLabel(still.moment)) : "First frame (no key moment told)";
        const double labelHeight = text(x, y, width * 0.68, label, styled(s_.body, Weight::bold));
        if (told) {
            text(x + width * 0.68, y, width * 0.32, secondsText(moment->time),
                 styled(s_.small, Weight::regular, kQuiet, Align::end));
        }
        y += labelHeight + 0.6;
        const PageBox box{x, y, width, width / kPictureAspect};
        if (still.picture && still.picture->width > 0) {
            page_.items.emplace_back(Picture{box, still.picture});
            overlay(box, still);
        }
        Rectangle frame;
        frame.box = box;
        frame.outline = kRule;
        page_.items.emplace_back(frame);
        y += box.height + 1.0;
        return told ? values(x, y, width, still.moment) : y;
    }

    /// Rows below a picture: what the checkpoints rest on first, then what else was measured there.
    double values(double x, double y, double width, MomentId moment) {
        constexpr std::size_t kMostRows = 5;
        std::vector<std::pair<const measure::Measurement*, const coaching::CheckpointResult*>> rows;
        for (const auto& m : outcome_.measurements) {
            if (m.value && m.moment == moment) {
                const auto decides = std::find_if(
                    outcome_.checkpoints.begin(), outcome_.checkpoints.end(),
                    [&](const auto& c) { return c.measurement == m.id && c.moment == m.moment; });
                rows.emplace_back(&m, decides == outcome_.checkpoints.end() ? nullptr : &*decides);
            }
        }
        std::stable_sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) {
            return (a.second != nullptr) > (b.second != nullptr);
        });
        if (rows.size() > kMostRows) {
            const auto deciding = static_cast<std::size_t>(
                std::count_if(rows.begin(), rows.end(), [](const auto& r) { return r.second != nullptr; }));
            rows.resize(std::max(kMostRows, deciding));
        }
        for (const auto& [m, checkpoint] : rows) {
            y = valueRow(x, y, width, measurementLabel(m->id),
                         valueText(m->id, *m->value, outcome_.context.statureMetres), checkpoint);
        }
        return y;
    }

    double valueRow(double x, double y, double width, const std::string& label, const std::string& value,
                    const coaching::CheckpointResult* checkpoint) {
        const double sign = s_.sign * 0.8;
        const double indent = sign + 1.0;
        const TextStyle labels = styled(s_.small, Weight::regular, kQuiet);
        const TextStyle numbers = styled(s_.small, Weight::bold);
        const double lineHeight = painter_.textHeight("X", numbers, width);
        if (checkpoint != nullptr) {
            page_.items.emplace_back(
                Shape{signOf(checkpoint->state), {x + sign / 2, y + lineHeight / 2}, sign});
        }
        const double textWidth = width - indent;
        // Label and number on one line where both fit, else the number below its label.
        if (painter_.textHeight(label + "   " + value, numbers, textWidth) <= lineHeight * 1.5) {
            text(x + indent, y, textWidth, label, labels);
            text(x + indent, y, textWidth, value, styled(s_.small, Weight::bold, kText, Align::end));
            return y + lineHeight + 0.3;
        }
        double height = text(x + indent, y, textWidth, label, labels);
        height +=
            text(x + indent, y + height, textWidth, value, styled(s_.small, Weight::bold, kText, Align::end));
        return y + height + 0.3;
    }

    /// Numbers that belong to no moment (tempo, ...), one line of text.
    double wholeSwing(double x, double y, double width) {
        std::string line;
        for (const auto& m : outcome_.measurements) {
            if (m.value && !m.moment) {
                line += (line.empty() ? "Whole swing: " : ";  ") + measurementLabel(m.id) + " " +
                        valueText(m.id, *m.value, outcome_.context.statureMetres);
            }
        }
        return y + text(x, y, width, line, styled(s_.small));
    }

    void overlay(const PageBox& box, const Still& still) {
        const PictureMarks marks = marksAt(outcome_, still.frame, still.moment);
        drawMarks(marks, still.corner, box.width / still.picture->width, box, page_.items);
    }

    double cautions(double x, double y, double width) {
        for (const auto& caution : outcome_.cautions) {
            const double pad = 2.0;
            const std::string seen = "Body caution (" + caution.grade + "): " + caution.seen;
            const std::string rest =
                caution.ease.empty() ? caution.words : caution.ease + " " + caution.words;
            const TextStyle bold = styled(s_.body, Weight::bold);
            const TextStyle plain = styled(s_.small);
            const double height = painter_.textHeight(seen, bold, width - 2 * pad) +
                                  painter_.textHeight(rest, plain, width - 2 * pad);
            Rectangle plate;
            plate.box = {x, y, width, height + 2 * pad};
            plate.cornerRadius = 1.2;
            plate.fill = kCautionFill; // a colour of its own: cautions are no traffic lights
            plate.outline = kCautionEdge;
            page_.items.emplace_back(plate);
            const double first = text(x + pad, y + pad, width - 2 * pad, seen, bold);
            text(x + pad, y + pad + first, width - 2 * pad, rest, plain);
            y += height + 2 * pad + 1.5;
        }
        return y;
    }

    double footer(double x, double y, double width, bool draw) {
        std::string words =
            "Each number with its one-sigma uncertainty: the true value lies within it about two times "
            "in three. " +
            linesLegend(outcome_.context.view);
        if (outcome_.scene.vertical.source == "assumed") {
            words += " Upright was assumed to be the picture's own.";
        }
        for (const auto* list : {&outcome_.clip.warnings, &outcome_.warnings}) {
            for (const auto& warning : *list) {
                words += " " + warning;
            }
        }
        words += " Posture read from pictures is no diagnosis: with pain, numbness or weakness stop, and see "
                 "a physician "
                 "or licensed physiotherapist.";
        const double legend = signLegend(x, y, draw);
        return legend +
               text(x, y + legend, width, words, styled(s_.small - 0.4, Weight::regular, kQuiet), draw);
    }

    /// The signs with their words; answers with the row's height.
    double signLegend(double x, double y, bool draw) {
        const TextStyle style = styled(s_.small, Weight::regular, kText);
        const double height = painter_.textHeight("X", style, 100.0);
        const double sign = s_.sign * 0.8;
        for (const auto state : {coaching::State::good, coaching::State::watch, coaching::State::work,
                                 coaching::State::unknown}) {
            if (draw) {
                page_.items.emplace_back(Shape{signOf(state), {x + sign / 2, y + height / 2}, sign});
                text(x + sign + 0.8, y, 20.0, std::string(stateWord(state)), style);
            }
            x += sign + 3.2 + 1.35 * static_cast<double>(stateWord(state).size()) * s_.small / 7.2;
        }
        return height + 0.8;
    }

    const analysis::Outcome& outcome_;
    const std::vector<Still>& stills_;
    const Painter& painter_;
    const SheetOptions& options_;
    const Sizes& s_;
    Page page_;
};

} // namespace

base::Result<std::vector<Still>> takeStills(video::Clip& clip, const analysis::Outcome& outcome) {
    std::vector<marks::Moment> moments = chosenMoments(outcome.moments);
    std::vector<std::size_t> frames;
    for (const auto& moment : moments) {
        frames.push_back(nearestFrame(clip.times(), moment.time));
    }
    if (frames.empty()) {
        frames.push_back(0);
        moments.emplace_back();
    }
    const CutOut cutOut = cutOutFor(outcome, frames);
    std::vector<Still> stills;
    for (std::size_t i = 0; i < frames.size(); ++i) {
        auto frame = clip.frame(static_cast<int>(frames[i]));
        if (!frame) {
            return frame.error();
        }
        const video::RgbImage whole = frame->rgb();
        const int width = std::min(cutOut.width, whole.width);
        const int height = std::min(cutOut.height, whole.height);
        const base::Vec2 centre =
            outcome.scene.ground.fromReference(static_cast<int>(frames[i]), cutOut.centre);
        const auto corner = [](double middle, int size, int available) {
            return std::clamp(static_cast<int>(std::lround(middle - size / 2.0)), 0, available - size);
        };
        const int x = corner(centre.x, width, whole.width);
        const int y = corner(centre.y, height, whole.height);
        stills.push_back(
            {moments[i].id,
             frames[i],
             {static_cast<double>(x), static_cast<double>(y)},
             std::make_shared<const video::RgbImage>(video::partOf(whole, x, y, width, height))});
    }
    return stills;
}

Page keyPositionSheet(const analysis::Outcome& outcome, const std::vector<Still>& stills,
                      const Painter& painter, const SheetOptions& options) {
    return Layout(outcome, stills, painter, options).make();
}

} // namespace plumbmark::exporting
