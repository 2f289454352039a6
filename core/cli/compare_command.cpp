// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>

#include <nlohmann/json.hpp>

#include "cli/commands.h"
#include "cli/library_access.h"
#include "cli/text.h"
#include "comparison/swing_set.h"
#include "exporting/output_file.h"
#include "exporting/words.h"
#include "session/clip_intake.h"
#include "session/stored_swings.h"
#include "session/swing_comparison.h"
#include "video/clip.h"

namespace plumbmark::cli {
namespace fs = std::filesystem;
namespace {
using Json = nlohmann::ordered_json;

/// Options that describe the film rather than the player: the second clip never inherits them.
constexpr std::array<std::string_view, 6> kOfTheFilm{"--roll",     "--plumb", "--capture-fps",
                                                     "--mirrored", "--marks", "--swing"};

/// The second clip's own options: "--other-hand" where given, else "--hand".
base::Result<Arguments> secondArguments(const Arguments& args) {
    static const CommandForm form = [] {
        CommandForm made{"compare", "", {}, swingOptions(), {}};
        made.options.push_back({"--swing", "N", ""});
        return made;
    }();
    std::vector<std::string> list;
    for (const Option& option : form.options) {
        const std::string other = "--other-" + std::string(option.name.substr(2));
        const bool inherits =
            std::find(kOfTheFilm.begin(), kOfTheFilm.end(), option.name) == kOfTheFilm.end();
        const std::string from = args.has(other) ? other : inherits ? std::string(option.name) : "";
        if (from.empty() || !args.has(from)) {
            continue;
        }
        list.emplace_back(option.name);
        if (!option.value.empty()) {
            list.back() += "=" + args.value(from).value_or("");
        }
    }
    return Arguments::read(form, list);
}

struct Swing {
    std::string name;
    analysis::Outcome outcome;
};

base::Result<Swing> analysedSwing(const std::string& name, const fs::path& path, analysis::Request request,
                                  const Arguments* told, const Services& services, Streams streams) {
    const auto number = told != nullptr ? readSwingNumber(*told) : base::Result<int>(0);
    if (!number) {
        return number.error();
    }
    auto analysed = analyseClip(path, std::move(request), told, services, streams, *number);
    if (!analysed) {
        return analysed.error();
    }
    return Swing{name, std::move(analysed->outcome)};
}

/// Opens the library once, when the first id asks for it.
struct Books {
    const Arguments& args;
    const Services& services;
    Streams streams;
    LibraryPointer library;

    base::Result<store::Library*> get() {
        if (!library) {
            auto opened = openLibrary(args, services, streams);
            if (!opened) {
                return opened.error();
            }
            library = std::move(*opened);
        }
        return library.get();
    }
};

base::Result<Swing> swingOf(const std::string& typed, const Arguments& told, Books& books) {
    std::error_code error;
    if (fs::exists(typed, error) || !looksLikeId(typed)) {
        const auto request = readSwing(told);
        if (!request) {
            return request.error();
        }
        return analysedSwing(fs::path(typed).filename().string(), typed, *request, &told, books.services,
                             books.streams);
    }
    const auto library = books.get();
    if (!library) {
        return library.error();
    }
    session::LessonBook book(**library);
    const auto clip = findClip(book, typed);
    if (!clip) {
        return clip.error();
    }
    if (!*clip) {
        return base::inputError("clip.id", "There is no file \"" + shown(typed, 60) +
                                               "\" and no clip whose id begins with it; \"plumbmark lesson "
                                               "show\" tells the ids.");
    }
    if (!(*clip)->filmHere) {
        return base::inputError("film.missing",
                                "The film of this swing did not come with the lesson; ask for "
                                "the lesson with its films.");
    }
    const auto request = session::requestFor(**library, (*clip)->id);
    if (!request) {
        return request.error();
    }
    return analysedSwing("clip " + (*clip)->id.hex().substr(0, kShortId), (*clip)->file, *request, nullptr,
                         books.services, books.streams);
}

Json rounded(double value) {
    return std::isfinite(value) ? Json(std::round(value * 1e6) / 1e6 + 0.0) : Json(nullptr);
}

Json momentJson(const std::optional<marks::MomentId>& moment) {
    return moment ? Json(marks::momentName(*moment)) : Json(nullptr);
}

Json optionalTime(const std::optional<base::Seconds>& time) {
    return time ? rounded(time->value()) : Json(nullptr);
}

Json pairJson(const session::SwingComparison& c, const std::optional<base::Seconds>& at) {
    Json json{{"kind", "pair"},
              {"matched_by", comparison::featureName(c.matchedBy())},
              {"moments", Json::array()},
              {"differences", Json::array()},
              {"warnings", c.warnings()}};
    for (const auto& m : c.moments()) {
        json["moments"].push_back({{"name", marks::momentName(m.id)},
                                   {"first_s", rounded(m.first.value())},
                                   {"second_s", optionalTime(m.matched)},
                                   {"second_own_s", optionalTime(m.own)}});
    }
    for (const auto& d : c.rows()) {
        json["differences"].push_back({{"id", d.id},
                                       {"moment", momentJson(d.moment)},
                                       {"unit", base::unitName(d.first.unit)},
                                       {"first", rounded(d.first.value)},
                                       {"first_sigma", rounded(d.first.sigma)},
                                       {"second", rounded(d.second.value)},
                                       {"second_sigma", rounded(d.second.sigma)},
                                       {"difference", rounded(d.difference)},
                                       {"sigma", rounded(d.sigma)},
                                       {"beyond_doubt", d.beyondDoubt}});
    }
    if (at) {
        json["position"] = {{"first_s", rounded(at->value())}, {"second_s", optionalTime(c.inSecond(*at))}};
    }
    return json;
}

Json spreadJson(const std::optional<comparison::Spread>& s) {
    return s ? Json{{"swings", s->swings},
                    {"median", rounded(s->median)},
                    {"low", rounded(s->low)},
                    {"high", rounded(s->high)},
                    {"mean", rounded(s->mean)},
                    {"between_swings", rounded(s->betweenSwings)},
                    {"measurement_sigma", rounded(s->measurement)}}
             : Json(nullptr);
}

Json setsJson(const session::SwingKind& kind, const std::vector<comparison::SetRow>& rows) {
    Json json{{"kind", "sets"},
              {"view", marks::viewName(kind.view)},
              {"shot", marks::shotKindName(kind.shot)},
              {"club", kind.club ? Json(marks::clubName(*kind.club)) : Json(nullptr)},
              {"rows", Json::array()}};
    for (const auto& row : rows) {
        Json one{{"id", row.id},
                 {"moment", momentJson(row.moment)},
                 {"unit", base::unitName(row.unit)},
                 {"first", spreadJson(row.first)},
                 {"second", spreadJson(row.second)},
                 {"change", nullptr}};
        if (row.change) {
            one["change"] = {{"difference", rounded(row.change->difference)},
                             {"sigma", rounded(row.change->sigma)},
                             {"freedom", rounded(row.change->freedom)},
                             {"critical", rounded(row.change->critical)},
                             {"beyond_doubt", row.change->beyondDoubt}};
        }
        json["rows"].push_back(std::move(one));
    }
    return json;
}

base::Result<void> writeJson(const Json& json, const std::string& target, Streams streams) {
    const std::string text = json.dump(1) + "\n";
    if (target == "-") {
        streams.out << text;
        return {};
    }
    return exporting::writeWhole(target, text);
}

void printPair(std::ostream& out, const Swing& a, const Swing& b, const session::SwingComparison& c,
               bool unicode) {
    const exporting::Writing writing{unicode};
    const auto stature = a.outcome.context.statureMetres && b.outcome.context.statureMetres
                             ? a.outcome.context.statureMetres
                             : std::nullopt;
    out << "First:  " << shown(a.name) << ", " << exporting::contextLine(a.outcome.context) << "\n"
        << "Second: " << shown(b.name) << ", " << exporting::contextLine(b.outcome.context) << "\n"
        << "Matched by " << comparison::featureName(c.matchedBy())
        << ": the second swing is read where it is in the first one's position.\n\nSame position\n";
    for (const auto& m : c.moments()) {
        out << "  " << padded(std::string(exporting::momentLabel(m.id)), 24)
            << exporting::secondsText(m.first) << "  "
            << (m.matched ? exporting::secondsText(*m.matched) : "not in both clips");
        if (m.matched && m.own && std::abs((*m.matched - *m.own).value()) > 0.0005) {
            out << "  (its own: " << exporting::secondsText(*m.own) << ")";
        }
        out << "\n";
    }
    std::vector<std::array<std::string, 4>> lines;
    std::array<std::size_t, 4> width{28, 0, 0, 0};
    int called = 0;
    for (const auto& d : c.rows()) {
        called += d.beyondDoubt ? 1 : 0;
        base::Measured difference = d.first;
        difference.value = d.difference;
        difference.sigma = d.sigma;
        // The difference keeps its sign: words such as "forward" belong to values.
        lines.push_back({exporting::measurementLabel(d.id),
                         exporting::valueText(d.id, d.first, stature, writing),
                         exporting::valueText(d.id, d.second, stature, writing),
                         exporting::valueText("", difference, stature, writing)});
        for (std::size_t k = 0; k < width.size(); ++k) {
            width[k] = std::max(width[k], columns(lines.back()[k]) + 2);
        }
    }
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto& d = c.rows()[i];
        if (i == 0 || d.moment != c.rows()[i - 1].moment) {
            out << "\n"
                << padded(d.moment ? std::string(exporting::momentLabel(*d.moment)) : "Whole swing",
                          width[0] + 2)
                << padded("first", width[1]) << padded("second", width[2]) << "difference\n";
        }
        out << "  ";
        for (std::size_t k = 0; k < width.size(); ++k) {
            out << padded(lines[i][k], width[k]);
        }
        out << (d.beyondDoubt ? "beyond doubt" : "not proven") << "\n";
    }
    if (c.rows().empty()) {
        out << "\nNo number could be told in both swings.\n";
    } else {
        out << "\n"
            << called << " of " << c.rows().size()
            << " numbers differ beyond doubt (95 %, one by one). Of as many equal numbers about "
            << std::lround(0.05 * static_cast<double>(c.rows().size()))
            << " would be called by chance; one swing proves little, look at three to five.\n";
    }
    if (!c.warnings().empty()) {
        out << "\nHow far the cameras can be compared\n";
        for (const auto& warning : c.warnings()) {
            wrapped(out, warning, 2);
        }
    }
}

std::string spreadText(const comparison::SetRow& row, const std::optional<comparison::Spread>& s,
                       exporting::Writing writing) {
    if (!s) {
        return "cannot tell";
    }
    const base::Measured middle{s->median, std::max(s->measurement, 1e-9), row.unit, base::Origin::network};
    return exporting::valueText("", middle, std::nullopt, writing) + " (" +
           exporting::rangeText(s->low, s->high, middle, std::nullopt, writing) + ", n " +
           std::to_string(s->swings) + ")";
}

void printSets(std::ostream& out, const session::SwingKind& kind, const std::vector<comparison::SetRow>& rows,
               std::size_t first, std::size_t second, bool unicode) {
    const exporting::Writing writing{unicode};
    out << exporting::viewLabel(kind.view) << ", " << exporting::shotLabel(kind.shot);
    if (kind.club) {
        out << ", " << exporting::clubLabel(*kind.club);
    }
    out << ": " << plural(static_cast<int>(first), "swing", "swings") << " and "
        << plural(static_cast<int>(second), "swing", "swings") << "\n\n"
        << padded("median, measurement sigma (range, number)", 48) << padded("first", 40)
        << padded("second", 40) << "change of the mean\n";
    for (const auto& row : rows) {
        const std::string label =
            (row.moment ? std::string(exporting::momentLabel(*row.moment)) + ": " : "") +
            exporting::measurementLabel(row.id);
        out << "  " << padded(label + "  ", 46) << padded(spreadText(row, row.first, writing) + "  ", 40)
            << padded(spreadText(row, row.second, writing) + "  ", 40);
        if (row.change) {
            const base::Measured change{row.change->difference, row.change->sigma, row.unit,
                                        base::Origin::network};
            out << padded(exporting::valueText("", change, std::nullopt, writing), 20)
                << (row.change->beyondDoubt ? "changed beyond doubt" : "not proven");
        } else {
            out << "needs three swings on each side";
        }
        out << "\n";
    }
    wrapped(
        out,
        "Changed beyond doubt (95 %) counts the spread from swing to swing and the measurement's own error.",
        0);
}

base::Result<int> compareLessons(const Arguments& args, Books& books, Streams streams) {
    const auto library = books.get();
    if (!library) {
        return library.error();
    }
    session::LessonBook book(**library);
    std::vector<std::vector<session::StoredSwing>> sets;
    for (std::size_t i = 0; i < 2; ++i) {
        const auto lesson = findLesson(book, *args.operand(i));
        if (!lesson) {
            return lesson.error();
        }
        auto swings = session::storedSwings(**library, lesson->id);
        if (!swings) {
            return swings.error();
        }
        sets.push_back(std::move(*swings));
    }
    const auto kind = session::commonKind(sets[0], sets[1]);
    if (!kind) {
        return base::inputError("compare.kind",
                                "These two lessons hold no measured swings of one view, kind and "
                                "club; compare lessons with the same club.");
    }
    const auto first = session::ofKind(sets[0], *kind), second = session::ofKind(sets[1], *kind);
    const auto rows = comparison::compareSets(session::numbersOf(first), session::numbersOf(second));
    if (const auto target = args.value("--json")) {
        if (auto written = writeJson(setsJson(*kind, rows), *target, streams); !written) {
            return written.error();
        }
        if (*target == "-") {
            return kDone;
        }
    }
    printSets(streams.out, *kind, rows, first.size(), second.size(), books.services.unicode);
    return kDone;
}

} // namespace

base::Result<int> runCompare(const Arguments& args, const Services& services, Streams streams) {
    const std::string feature = args.value("--by").value_or("hands");
    const auto by = comparison::featureFromName(feature == "time" ? "time-from-impact" : feature);
    if (!by) {
        return base::inputError("arguments.word",
                                "--by knows hands, shaft, time or body, not \"" + shown(feature, 40) + "\".");
    }
    const auto at = args.number("--at", 0, 1e6, "s");
    if (!at) {
        return at.error();
    }
    if (const auto json = args.value("--json"); json && *json != "-") {
        if (auto writable = exporting::checkWritable(*json); !writable) {
            return writable.error();
        }
    }
    Books books{args, services, streams, nullptr};
    if (args.has("--lessons")) {
        return compareLessons(args, books, streams);
    }
    const auto second = secondArguments(args);
    if (!second) {
        return second.error();
    }
    const auto a = swingOf(*args.operand(0), args, books);
    if (!a) {
        return a.error();
    }
    const auto b = swingOf(*args.operand(1), *second, books);
    if (!b) {
        return b.error();
    }
    const auto compared = session::SwingComparison::make(a->outcome, b->outcome, *by);
    if (!compared) {
        return compared.error();
    }
    const auto instant = *at ? std::optional(base::Seconds{**at}) : std::nullopt;
    if (instant && !compared->inSecond(*instant)) {
        return base::inputError("compare.position", "At " + exporting::secondsText(*instant) +
                                                        " the two clips do not both show the swing; choose a "
                                                        "time between address and finish of the first clip.");
    }
    if (const auto target = args.value("--json")) {
        if (auto written = writeJson(pairJson(*compared, instant), *target, streams); !written) {
            return written.error();
        }
        if (*target == "-") {
            return kDone;
        }
    }
    if (instant) {
        streams.out << "The position at " << exporting::secondsText(*instant) << " of the first clip is at "
                    << exporting::secondsText(*compared->inSecond(*instant)) << " of the second (matched by "
                    << comparison::featureName(*by) << ").\n";
        return kDone;
    }
    printPair(streams.out, *a, *b, *compared, services.unicode);
    return kDone;
}

} // namespace plumbmark::cli
