// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/lesson_page.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <optional>
#include <span>

#include "base/base64.h"
#include "base/hash.h"
#include "exporting/picture_marks.h"
#include "exporting/words.h"
#include "video/still.h"

namespace plumbmark::exporting {
namespace {

constexpr int kPictureSide = 480; ///< px: sharp on a phone, some 40 kB each

constexpr std::string_view kStyle = R"(
:root{color-scheme:light}
body{margin:0 auto;max-width:46rem;padding:1rem;font:1rem/1.45 system-ui,sans-serif;color:#1b222a;background:#fff;
overflow-wrap:anywhere}
h1{font-size:1.5rem;margin:.2rem 0}h2{font-size:1.2rem;margin:1.6rem 0 .4rem;border-bottom:2px solid #10181e}
h3{font-size:1rem;margin:1rem 0 .3rem}
p{margin:.3rem 0}.quiet{color:#45505a;font-size:.9rem}
dl{margin:.3rem 0;display:grid;grid-template-columns:max-content 1fr;gap:.15rem .8rem}dt{font-weight:600}dd{margin:0}
ul{list-style:none;margin:0;padding:0}li{margin:.35rem 0;padding-left:1.9rem;position:relative}
li>svg{position:absolute;left:0;top:.15rem;width:1.3rem;height:1.3rem}
ol{padding-left:1.4rem}ol>li{padding-left:.2rem}
.grid{display:grid;grid-template-columns:repeat(auto-fill,minmax(9.5rem,1fr));gap:.8rem}
figure{margin:0;break-inside:avoid}figure svg{width:100%;height:auto;display:block;border:1px solid #b4bdc4}
figcaption{font-size:.85rem}figcaption b{display:block}
.caution{background:#efe9fb;border:1px solid #33186b;border-radius:.3rem;padding:.6rem;margin:.5rem 0}
)";

/// SHA-256 of the style sheet the way a content security policy names it.
std::string policyHash(std::string_view text) {
    const std::string hex = base::sha256OfText(text);
    std::vector<std::uint8_t> bytes;
    for (std::size_t i = 0; i + 1 < hex.size(); i += 2) {
        bytes.push_back(static_cast<std::uint8_t>(std::stoi(hex.substr(i, 2), nullptr, 16)));
    }
    return "sha256-" + base::base64(bytes);
}

std::size_t utf8Length(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(0);
    const std::size_t length = first < 0x80                     ? 1
                               : first >= 0xc2 && first < 0xe0  ? 2
                               : first >= 0xe0 && first < 0xf0  ? 3
                               : first >= 0xf0 && first <= 0xf4 ? 4
                                                                : 0;
    if (length == 0 || length > text.size()) {
        return 0;
    }
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xc0) != 0x80) {
            return 0;
        }
    }
    const bool overlong = (first == 0xe0 && byte(1) < 0xa0) || (first == 0xf0 && byte(1) < 0x90);
    const bool outside = (first == 0xed && byte(1) >= 0xa0) || (first == 0xf4 && byte(1) >= 0x90);
    return overlong || outside ? 0 : length;
}

std::string own(std::string_view words) { // what a person typed
    return "<bdi dir=\"auto\">" + htmlText(words) + "</bdi>";
}

std::string num(double value) {
    std::array<char, 32> text{};
    const long long tenths = std::llround(std::clamp(value, -1e6, 1e6) * 10.0);
    std::snprintf(text.data(), text.size(), "%s%lld.%lld", tenths < 0 ? "-" : "", std::llabs(tenths) / 10,
                  std::llabs(tenths) % 10);
    return text.data();
}

std::string colour(Ink ink) {
    std::array<char, 8> text{};
    std::snprintf(text.data(), text.size(), "#%02x%02x%02x", ink.red, ink.green, ink.blue);
    return text.data();
}

/// The same shapes as on paper: told apart without any colour.
std::string sign(coaching::State state) {
    const std::string head = "<svg viewBox=\"0 0 24 24\" role=\"img\" aria-label=\"" +
                             std::string(stateWord(state)) +
                             "\" fill=\"none\" stroke=\"#10181e\" stroke-width=\"2\" "
                             "stroke-linecap=\"round\" stroke-linejoin=\"round\">";
    switch (state) {
    case coaching::State::good:
        return head + "<circle cx=\"12\" cy=\"12\" r=\"10.5\" fill=\"#56b4e9\"/><path stroke-width=\"3\" "
                      "d=\"M6.8 12.4 10.6 16.2 17.2 8.2\"/></svg>";
    case coaching::State::watch:
        return head + "<path fill=\"#f0e442\" d=\"M12 1.8 22.8 21.6H1.2Z\"/><path stroke-width=\"3\" "
                      "d=\"M12 9v5M12 18.2v.1\"/></svg>";
    case coaching::State::work:
        return head + "<path fill=\"#d55e00\" d=\"M12 .9 23.1 12 12 23.1.9 12Z\"/><path stroke-width=\"3\" "
                      "d=\"M8.6 8.6 15.4 15.4M15.4 8.6 8.6 15.4\"/></svg>";
    case coaching::State::unknown:
        break;
    }
    return head + "<circle cx=\"12\" cy=\"12\" r=\"10.5\" fill=\"#fff\" stroke-dasharray=\"4.2 2.4\"/><path "
                  "d=\"M8.8 9.2C8.8 4.6 15.6 4.9 15.2 9.2 15 11.6 12 11.4 12 14.2M12 18.2v.1\"/></svg>";
}

std::string lightList(const LessonStory& story, coaching::State state, std::string_view title) {
    const auto list = lights(story, state);
    if (list.empty()) {
        return "";
    }
    std::string html = "<h2>" + std::string(title) + "</h2><ul>";
    for (const Light& light : list) {
        html += "<li>" + sign(state) + "<b>" + htmlText(light.label) + "</b>";
        if (!light.value.empty()) {
            html += " " + htmlText(light.value);
        }
        if (const std::string much = agreement(light); !much.empty()) {
            html += ", " + htmlText(much);
        }
        if (!light.range.empty()) {
            html += " <span class=\"quiet\">(" + htmlText(light.range) + ")</span>";
        }
        if (state != coaching::State::good && !light.help.empty()) {
            html += "<br><span class=\"quiet\">" + htmlText(light.help) + "</span>";
        }
        html += "</li>";
    }
    return html + "</ul>";
}

/// A smaller copy by averaging whole blocks of pixels; never larger than asked.
video::RgbImage shrunk(const video::RgbImage& image, int side) {
    const int factor = (std::max(image.width, image.height) + side - 1) / side;
    if (factor <= 1) {
        return image;
    }
    video::RgbImage small;
    small.width = std::max(1, image.width / factor);
    small.height = std::max(1, image.height / factor);
    small.pixels.resize(std::size_t{3} * static_cast<std::size_t>(small.width) *
                        static_cast<std::size_t>(small.height));
    const auto at = [&](int x, int y, int c) {
        return image.pixels[3 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(image.width) +
                                 static_cast<std::size_t>(x)) +
                            static_cast<std::size_t>(c)];
    };
    for (int y = 0; y < small.height; ++y) {
        for (int x = 0; x < small.width; ++x) {
            for (int c = 0; c < 3; ++c) {
                int sum = 0;
                int n = 0;
                for (int dy = 0; dy < factor && y * factor + dy < image.height; ++dy) {
                    for (int dx = 0; dx < factor && x * factor + dx < image.width; ++dx) {
                        sum += at(x * factor + dx, y * factor + dy, c);
                        ++n;
                    }
                }
                small.pixels[3 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(small.width) +
                                  static_cast<std::size_t>(x)) +
                             static_cast<std::size_t>(c)] = static_cast<std::uint8_t>((sum + n / 2) / n);
            }
        }
    }
    return small;
}

std::string figure(const analysis::Outcome& outcome, const Still& still) {
    const marks::Moment* moment = marks::find(outcome.moments, still.moment);
    const std::string label = moment != nullptr ? std::string(momentLabel(still.moment)) : "First frame";
    std::string html = "<figure>";
    if (still.picture && still.picture->width > 0) {
        const auto jpeg = video::encodeJpeg(shrunk(*still.picture, kPictureSide));
        if (jpeg) {
            const double width = still.picture->width;
            const double height = still.picture->height;
            html += "<svg viewBox=\"0 0 " + num(width) + " " + num(height) + "\" role=\"img\" aria-label=\"" +
                    htmlText(label) + "\"><image width=\"" + num(width) + "\" height=\"" + num(height) +
                    "\" href=\"data:image/jpeg;base64," + base::base64(*jpeg) + "\"/>";
            const PictureMarks marks = marksAt(outcome, still.frame, still.moment);
            const base::Box box{0, 0, width, height};
            const double thin = width / 160.0;
            for (const MarkLine& line : marks.lines) {
                const auto inside = clippedLine(line.from - still.corner, line.to - still.corner, box);
                if (!inside) {
                    continue;
                }
                const std::string place =
                    "<line x1=\"" + num(inside->first.x) + "\" y1=\"" + num(inside->first.y) + "\" x2=\"" +
                    num(inside->second.x) + "\" y2=\"" + num(inside->second.y) + "\"" +
                    (line.dashed ? " stroke-dasharray=\"" + num(6 * thin) + " " + num(4 * thin) + "\""
                                 : std::string());
                html += place + " stroke=\"#10181e\" stroke-width=\"" + num(2.2 * thin) + "\"/>" + place +
                        " stroke=\"" + colour(line.ink) + "\" stroke-width=\"" + num(thin) + "\"/>";
            }
            for (const base::Vec2 point : marks.points) {
                const base::Vec2 p = point - still.corner;
                if (box.contains(p)) {
                    const std::string cross = "d=\"M" + num(p.x - 2.2 * thin) + " " + num(p.y) + "h" +
                                              num(4.4 * thin) + "M" + num(p.x) + " " + num(p.y - 2.2 * thin) +
                                              "v" + num(4.4 * thin) + "\"";
                    html += "<path stroke=\"#000\" stroke-width=\"" + num(1.4 * thin) + "\" " + cross +
                            "/><path stroke=\"#fff\" stroke-width=\"" + num(0.6 * thin) + "\" " + cross +
                            "/>";
                }
            }
            html += "</svg>";
        }
    }
    html += "<figcaption><b>" + htmlText(label) + "</b>";
    if (moment != nullptr) {
        for (const auto* m : tellingNumbers(outcome, still.moment, 4)) {
            html += htmlText(measurementLabel(m->id) + " " +
                             valueText(m->id, *m->value, outcome.context.statureMetres)) +
                    "<br>";
        }
    }
    return html + "</figcaption></figure>";
}

std::string definition(std::string_view term, const std::string& words) {
    return words.empty() ? "" : "<dt>" + std::string(term) + "</dt><dd>" + own(words) + "</dd>";
}

std::string planHtml(const records::Plan& plan) {
    if (plan.items.empty()) {
        return "";
    }
    std::string html = "<h2>Your plan</h2><ol>";
    for (const records::PlanItem& item : plan.items) {
        html += "<li><dl>" + definition("Feel", item.feel) + definition("Drill", item.drill) +
                definition("How much", item.dose) +
                definition("It decides", checkpointWords(item.checkpoint)) +
                definition("Must not get worse", checkpointWords(item.guard)) + "</dl></li>";
    }
    return html + "</ol>";
}

} // namespace

std::string htmlText(std::string_view utf8) {
    std::string html;
    for (std::size_t i = 0; i < utf8.size();) {
        const std::size_t length = utf8Length(utf8.substr(i));
        if (length == 0) {
            html += "\ufffd";
            ++i;
            continue;
        }
        const std::string_view letter = utf8.substr(i, length);
        i += length;
        if (length == 1) {
            switch (letter[0]) {
            case '&':
                html += "&amp;";
                break;
            case '<':
                html += "&lt;";
                break;
            case '>':
                html += "&gt;";
                break;
            case '"':
                html += "&quot;";
                break;
            case '\'':
                html += "&#39;";
                break;
            case '\n':
                html += "<br>";
                break;
            case '\t':
                html += ' ';
                break;
            default:
                if (static_cast<unsigned char>(letter[0]) >= 0x20 && letter[0] != 0x7f) {
                    html += letter;
                }
            }
            continue;
        }
        const bool control =
            length == 2 && letter[0] == '\xc2' && static_cast<unsigned char>(letter[1]) < 0xa0;
        const bool embeds = letter >= "\u202a" && letter <= "\u202e";
        const bool isolates = letter >= "\u2066" && letter <= "\u2069";
        if (!control && !embeds && !isolates && letter != "\ufeff") {
            html += letter;
        }
    }
    return html;
}

std::string htmlDocument(std::string_view title, std::string_view style, std::string_view body) {
    std::string safe = htmlText(title);
    for (std::size_t at = safe.find("<br>"); at != std::string::npos; at = safe.find("<br>", at)) {
        safe.replace(at, 4, " ");
    }
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
           "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src data:; "
           "style-src "
           "'" +
           policyHash(style) +
           "'; base-uri 'none'; form-action 'none'\">\n"
           "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
           "<meta name=\"referrer\" content=\"no-referrer\">\n<title>" +
           safe + "</title>\n<style>" + std::string(style) + "</style>\n</head>\n<body>\n" +
           std::string(body) + "\n</body>\n</html>\n";
}

std::string lessonPage(const LessonStory& story) {
    std::string body = "<header><h1>" + own(story.title) + "</h1><p>" + own(story.player) + ", " +
                       own(story.day) + "</p></header>\n";
    const std::string words = definition("What you want", story.wish) +
                              definition("Your own explanation", story.belief) +
                              definition("We saw", story.saw) + definition("You were told", story.said) +
                              definition("Next", story.next) + definition("Note", story.note);
    if (!words.empty()) {
        body += "<dl>" + words + "</dl>\n";
    }
    body += lightList(story, coaching::State::good, "Good: keep it");
    body += planHtml(story.plan);
    body += lightList(story, coaching::State::work, "Work on it");
    body += lightList(story, coaching::State::watch, "Watch");
    for (const LessonSwing& swing : story.swings) {
        body += "<h2>Swing " + std::to_string(swing.shotNumber) + ": " +
                htmlText(contextLine(swing.outcome->context)) + "</h2>\n";
        if (swing.stills.empty()) {
            body += "<p class=\"quiet\">The film is not in this library, so there are no pictures.</p>\n";
            continue;
        }
        body += "<div class=\"grid\">";
        for (const Still& still : swing.stills) {
            body += figure(*swing.outcome, still) + "\n";
        }
        body += "</div>\n";
        if (std::any_of(swing.stills.begin(), swing.stills.end(), [&](const Still& still) {
                return !marksAt(*swing.outcome, still.frame, still.moment).lines.empty();
            })) {
            body += "<p class=\"quiet\">" + linesLegend(swing.outcome->context.view) + "</p>\n";
        }
    }
    if (story.moreSwings > 0) {
        body += "<p class=\"quiet\">" + std::to_string(story.moreSwings) +
                (story.moreSwings == 1 ? " more clip belongs" : " more clips belong") +
                " to this lesson.</p>\n";
    }
    body += lightList(story, coaching::State::unknown, "Cannot tell from these clips");
    if (const auto advice = filmAdvice(story); !advice.empty()) {
        body += "<h2>Film it better</h2><ul>";
        for (const Advice& one : advice) {
            body += "<li><b>" + htmlText(one.change) + "</b><br><span class=\"quiet\">" +
                    htmlText(one.limited) + "</span></li>";
        }
        body += "</ul>\n";
    }
    body += "<h2>Your body</h2>\n";
    for (const coaching::Caution& caution : cautions(story)) {
        body += "<div class=\"caution\"><b>Body caution (" + htmlText(caution.grade) +
                "): " + htmlText(caution.seen) + "</b><p>" + htmlText(caution.ease) + " " +
                htmlText(caution.words) + "</p></div>\n";
    }
    body += "<p>" + std::string(usualWords()) + "</p>\n<footer class=\"quiet\"><p>" +
            std::string(sigmaWords()) + "</p></footer>";
    return htmlDocument(story.title + " - " + story.player, kStyle, body);
}

} // namespace plumbmark::exporting
