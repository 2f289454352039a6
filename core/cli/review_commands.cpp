// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <filesystem>
#include <iomanip>
#include <locale>
#include <sstream>

#include "cli/commands.h"
#include "cli/library_access.h"
#include "exporting/key_position_sheet.h"
#include "exporting/lesson_sheet.h"
#include "exporting/output_file.h"
#include "exporting/request_card.h"
#include "exporting/review_film.h"
#include "exporting/tables.h"
#include "exporting/words.h"
#include "records/review.h"
#include "records/review_edit.h"
#include "session/inbox.h"
#include "session/lesson_book.h"
#include "session/lesson_exchange.h"
#include "session/review_desk.h"
#include "video/still.h"
#include "video/voice.h"

namespace plumbmark::cli {
namespace fs = std::filesystem;
namespace {

constexpr Option kShot{"--shot", "N", "the shot's number in the lesson; without it the first clip that fits"};
constexpr Option kView{"--view", "face-on|down-the-line", "which of the shot's clips"};

std::string ending(const fs::path& path) {
    std::string extension = path.extension().string();
    std::transform(extension.begin(), extension.end(), extension.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return extension;
}

/// The ending says what is made; another one is refused before the long work, as is a place that can't be
/// written to.
base::Result<std::string> checkedEnding(const fs::path& path, std::initializer_list<std::string_view> known) {
    const std::string extension = ending(path);
    if (std::find(known.begin(), known.end(), extension) == known.end()) {
        std::string words;
        for (const auto& word : known) {
            words += (words.empty() ? "" : word == *(known.end() - 1) ? " or " : ", ") + std::string(word);
        }
        return base::inputError("output.kind",
                                "Give a file name that ends in " + words + ": the ending says what is made.");
    }
    if (auto writable = exporting::checkWritable(path); !writable) {
        return writable.error();
    }
    return extension;
}

/// The lesson's clip that --shot and --view name; without them the first one whose film is here.
base::Result<session::ReviewDesk::Choice> chosenClip(const Arguments& args, session::ReviewDesk& desk,
                                                     const base::Id& lesson) {
    const auto shot = args.number("--shot", 1, 10000, "(a shot's number)");
    if (!shot) {
        return shot.error();
    }
    std::optional<marks::View> view;
    if (const auto text = args.value("--view")) {
        view = marks::viewFromName(*text);
        if (!view) {
            return base::inputError("arguments.word", "--view knows face-on and down-the-line, not \"" +
                                                          shown(*text, 40) + "\".");
        }
    }
    const auto clips = desk.clips(lesson);
    if (!clips) {
        return clips.error();
    }
    bool fits = false;
    for (const auto& clip : *clips) {
        if ((*shot && clip.shotNumber != static_cast<int>(**shot)) || (view && clip.view != *view)) {
            continue;
        }
        fits = true;
        if (clip.filmHere) {
            return clip;
        }
    }
    if (fits) {
        return base::inputError("film.missing", "The film did not travel with this lesson; import a lesson "
                                                "file that holds it.");
    }
    return base::inputError("review.no_clip", "The lesson has no such clip; \"plumbmark lesson show\" lists "
                                              "them.");
}

base::Result<int> landmarkTable(const Arguments& args, const Services& services, Streams streams,
                                const fs::path& target, const std::string& kind) {
    if (!args.has("--lesson")) {
        return base::inputError("arguments.missing", "Landmarks belong to one clip; tell --lesson too.");
    }
    const auto network = fetchNetwork(services);
    if (!network) {
        return network.error();
    }
    auto open = openLesson(args, *args.value("--lesson"), services, streams);
    if (!open) {
        return open.error();
    }
    session::ReviewDesk desk(*open->library, *network);
    const auto clip = chosenClip(args, desk, open->lesson.id);
    if (!clip) {
        return clip.error();
    }
    base::Result<std::optional<analysis::Outcome>> outcome = std::optional<analysis::Outcome>();
    {
        const ProgressLine line(services, streams.err);
        outcome = desk.measured(clip->clip, line.progress());
    }
    if (!outcome) {
        return outcome.error();
    }
    if (!*outcome) {
        return stopped();
    }
    std::string text;
    if (kind == ".trc") {
        auto trc = exporting::landmarksTrc(**outcome, target.filename().string());
        if (!trc) {
            return trc.error();
        }
        text = std::move(*trc);
    } else {
        text = exporting::landmarksCsv(**outcome);
    }
    if (auto written = exporting::writeWhole(target, text); !written) {
        return written.error();
    }
    streams.out << (*outcome)->track.size() << " frames written.\n";
    return kDone;
}

base::Result<int> runTables(const Arguments& args, const Services& services, Streams streams) {
    const fs::path target = *args.operand(0);
    const auto kind = checkedEnding(target, {".csv", ".json", ".trc"});
    if (!kind) {
        return kind.error();
    }
    if (args.has("--landmarks") || *kind == ".trc") {
        if (*kind == ".json") {
            return base::inputError("output.kind",
                                    "Landmarks over time become a .csv or a .trc file; \"plumbmark measure "
                                    "--landmarks\" writes them as JSON.");
        }
        return landmarkTable(args, services, streams, target, *kind);
    }
    if (args.has("--player") && args.has("--lesson")) {
        return base::inputError("arguments.extra", "A lesson has its player; leave --player out.");
    }
    if (args.has("--shot") || args.has("--view")) {
        return base::inputError("arguments.extra", "--shot and --view choose a clip for --landmarks.");
    }
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    session::LessonBook book(**library);
    std::optional<base::Id> player, lesson;
    if (const auto typed = args.value("--lesson")) {
        const auto row = findLesson(book, *typed);
        if (!row) {
            return row.error();
        }
        lesson = row->id;
    }
    if (const auto name = args.value("--player")) {
        const auto found = findPlayer(**library, *name);
        if (!found) {
            return found.error();
        }
        player = *found;
    }
    session::ReviewDesk desk(**library, nullptr);
    const auto rows = desk.numbers(player, lesson);
    if (!rows) {
        return rows.error();
    }
    const std::string text =
        *kind == ".csv" ? exporting::measurementsCsv(*rows) : exporting::measurementsJson(*rows);
    if (auto written = exporting::writeWhole(target, text); !written) {
        return written.error();
    }
    streams.out << rows->size() << " numbers written.\n";
    return kDone;
}

constexpr double kDotsPerMm = 8.0; ///< about 200 dots an inch

base::Result<std::vector<exporting::Page>> keyPages(const exporting::LessonStory& story,
                                                    const exporting::Painter& painter,
                                                    exporting::SheetFormat format) {
    std::vector<exporting::Page> pages;
    for (const auto& swing : story.swings) {
        if (!swing.stills.empty()) {
            const std::string heading =
                story.player + ", " + story.day + ", swing " + std::to_string(swing.shotNumber);
            pages.push_back(exporting::keyPositionSheet(*swing.outcome, swing.stills, painter,
                                                        {.format = format, .heading = heading}));
        }
    }
    if (pages.empty()) {
        return base::inputError("film.missing", "No film of this lesson is in the library; import a lesson "
                                                "file that holds them.");
    }
    return pages;
}

base::Result<int> runSheet(const Arguments& args, const Services& services, Streams streams) {
    const fs::path target = *args.operand(1);
    if (services.painter == nullptr) {
        return base::inputError("output.no_painter",
                                "This build has no painter, so it can't draw sheets; use the build with Qt.");
    }
    const auto kind = checkedEnding(target, {".pdf", ".png"});
    if (!kind) {
        return kind.error();
    }
    auto format = exporting::SheetFormat::paper;
    if (const auto word = args.value("--format")) {
        if (*word != "a4" && *word != "phone") {
            return base::inputError("arguments.word",
                                    "--format knows a4 and phone, not \"" + shown(*word, 40) + "\".");
        }
        format = *word == "phone" ? exporting::SheetFormat::phone : exporting::SheetFormat::paper;
    }
    const auto network = fetchNetwork(services);
    if (!network) {
        return network.error();
    }
    auto open = openLesson(args, *args.operand(0), services, streams);
    if (!open) {
        return open.error();
    }
    base::Result<std::optional<exporting::LessonStory>> story = std::optional<exporting::LessonStory>();
    {
        const ProgressLine line(services, streams.err);
        session::ReviewDesk desk(*open->library, *network);
        const auto cover = desk.coversHeads(open->lesson.id);
        if (!cover) {
            return cover.error();
        }
        story = desk.story(open->lesson.id, {.measureAgain = true, .coverHeads = *cover}, line.progress());
    }
    if (!story) {
        return story.error();
    }
    if (!*story) {
        return stopped();
    }
    auto pages = args.has("--keys")
                     ? keyPages(**story, *services.painter, format)
                     : base::Result(exporting::lessonSheet(**story, *services.painter, format));
    if (!pages) {
        return pages.error();
    }
    const std::size_t count = pages->size();
    const auto drawn = *kind == ".pdf"
                           ? services.painter->pdf(*pages)
                           : services.painter->png(exporting::stacked(std::move(*pages)), kDotsPerMm);
    if (!drawn) {
        return drawn.error();
    }
    if (auto written = exporting::writeWhole(target, std::span<const std::byte>(*drawn)); !written) {
        return written.error();
    }
    streams.out << count << (count == 1 ? " page written.\n" : " pages written.\n");
    return kDone;
}

base::Result<int> runRequest(const Arguments& args, const Services& services, Streams streams) {
    const fs::path target = *args.operand(0);
    const auto kind = checkedEnding(target, {".html", ".pdf"});
    if (!kind) {
        return kind.error();
    }
    exporting::RequestCard card;
    card.player = args.value("--player").value_or("");
    card.coach = args.value("--coach").value_or("");
    card.due = args.value("--due").value_or("");
    card.question = args.value("--question").value_or("");
    if (auto written = session::writeRequestCard(card, services.painter, target); !written) {
        return written.error();
    }
    streams.out << "Card written.\n";
    return kDone;
}

std::string days(int n) {
    return std::to_string(n) + (n == 1 ? " day" : " days");
}

/// "Please film again because ...": typed, or the advice of the lesson's clips.
base::Result<std::string> filmAgain(const Arguments& args, const Services& services, Streams streams,
                                    store::Library& library, const base::Id& lesson) {
    if (const auto typed = args.value("--because")) {
        return *typed;
    }
    const auto network = fetchNetwork(services);
    if (!network) {
        return network.error();
    }
    base::Result<std::optional<std::string>> words = std::optional<std::string>();
    {
        const ProgressLine line(services, streams.err);
        session::ReviewDesk desk(library, *network);
        words = desk.filmAgainWords(lesson, line.progress());
    }
    if (!words) {
        return words.error();
    }
    if (!*words) {
        return stopped();
    }
    if ((*words)->empty()) {
        return base::inputError("review.no_advice",
                                "These clips were filmed as they should be; tell the reason "
                                "with --because.");
    }
    return **words;
}

/// The answer as one lesson file that says it is one; when it cannot be written the student still waits.
base::Result<void> answerFile(store::Library& library, const base::Id& lesson, session::InboxDesk& inbox,
                              const fs::path& file, const Services& services, Streams streams) {
    session::LessonExchange exchange(library, *services.clock);
    const auto rows = inbox.open();
    if (!rows) {
        return rows.error();
    }
    if (auto answered = inbox.answered(lesson); !answered) {
        return answered;
    }
    base::Result<lessonfile::Summary> summary = lessonfile::Summary{};
    {
        const ProgressLine line(services, streams.err);
        summary = exchange.exportLesson(lesson, file, {}, line.progress());
    }
    if (!summary) {
        for (const auto& row : *rows) {
            if (row.lesson.id == lesson) {
                if (auto back = row.inbox.state == records::InboxState::waiting
                                    ? inbox.wait(lesson, row.inbox.due)
                                    : inbox.filmAgain(lesson, row.inbox.because);
                    !back) {
                    return back;
                }
            }
        }
        return summary.error();
    }
    streams.out << "Answer written. Once the student has opened it, the lesson that comes back says so.\n";
    return {};
}

base::Result<int> runInbox(const Arguments& args, const Services& services, Streams streams) {
    const int doing =
        (args.has("--wait") ? 1 : 0) + (args.has("--again") ? 1 : 0) + (args.has("--answered") ? 1 : 0);
    if (doing > 1) {
        return base::inputError("arguments.extra", "Give one of --wait, --again and --answered.");
    }
    if ((args.has("--due") && !args.has("--wait")) || (args.has("--because") && !args.has("--again"))) {
        return base::inputError("arguments.missing", "--due belongs to --wait, --because to --again.");
    }
    if (args.has("--file") && !args.has("--answered")) {
        return base::inputError("arguments.missing", "--file belongs to --answered.");
    }
    if (const auto file = args.value("--file")) {
        if (auto writable = exporting::checkWritable(*file); !writable) {
            return writable.error();
        }
    }
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    session::LessonBook book(**library);
    session::InboxDesk inbox(**library, *services.clock);
    for (const char* option : {"--wait", "--again", "--answered"}) {
        const auto typed = args.value(option);
        if (!typed) {
            continue;
        }
        const auto lesson = findLesson(book, *typed);
        if (!lesson) {
            return lesson.error();
        }
        base::Result<void> done;
        std::string told;
        if (std::string_view(option) == "--wait") {
            done = inbox.wait(lesson->id, args.value("--due").value_or(""));
        } else if (std::string_view(option) == "--answered") {
            if (const auto file = args.value("--file")) {
                if (auto sent = answerFile(**library, lesson->id, inbox, *file, services, streams); !sent) {
                    return sent.error();
                }
                return kDone;
            }
            done = inbox.answered(lesson->id);
        } else {
            const auto because = filmAgain(args, services, streams, **library, lesson->id);
            if (!because) {
                return because.error();
            }
            done = inbox.filmAgain(lesson->id, *because);
            told = *because;
        }
        if (!done) {
            return done.error();
        }
        if (!told.empty()) { // ready to be sent
            for (std::size_t from = 0; from <= told.size();) {
                const std::size_t end = std::min(told.find('\n', from), told.size());
                streams.out << shown(told.substr(from, end - from), 2000) << "\n";
                from = end + 1;
            }
        }
        return kDone;
    }
    const auto rows = inbox.open();
    const auto answers = inbox.answers();
    if (!rows || !answers) {
        return rows ? answers.error() : rows.error();
    }
    if (rows->empty()) {
        streams.out << "Nobody is waiting.\n";
    }
    for (const auto& row : *rows) {
        streams.out << row.lesson.id.hex().substr(0, kShortId) << "  "
                    << (row.inbox.state == records::InboxState::waiting ? "waits for you" : "films again ")
                    << "  since " << days(row.days);
        if (row.daysLeft) {
            streams.out << (*row.daysLeft < 0    ? ", overdue by " + days(-*row.daysLeft)
                            : *row.daysLeft == 0 ? std::string(", due today")
                                                 : ", due in " + days(*row.daysLeft));
        }
        streams.out << "  " << shown(row.lesson.playerName, 60) << ", " << shown(row.lesson.title, 80)
                    << "\n";
    }
    for (const auto& answer : *answers) {
        streams.out << answer.lesson.id.hex().substr(0, kShortId) << "  answered " << answer.day << ", "
                    << (answer.opened ? "opened " + *answer.opened : std::string("not known to be opened"))
                    << "  " << shown(answer.lesson.playerName, 60) << ", " << shown(answer.lesson.title, 80)
                    << "\n";
    }
    return kDone;
}

/// The timeline as typed or made by a program: clips by the shot's number (and view) or by their id.
base::Result<records::Review> readTimeline(const std::string& text,
                                           const std::vector<session::ReviewDesk::Choice>& clips) {
    auto parsed = records::parseJson(text);
    records::Object* body = parsed ? parsed->object() : nullptr;
    if (body == nullptr) {
        return base::inputError("review.not_json",
                                "The timeline is no JSON object; docs/review.md shows one.");
    }
    const records::Value* acts = records::member(*body, "acts");
    records::Array named;
    for (const records::Value& value :
         acts != nullptr && acts->array() != nullptr ? *acts->array() : records::Array()) {
        const std::string which = "Act " + std::to_string(named.size() + 1);
        records::Object act = value.object() != nullptr ? *value.object() : records::Object();
        const std::string name = records::textMember(act, "act").value_or("");
        if (!records::actFromName(name) || !records::integerMember(act, "at_ms")) {
            return base::inputError("review.form",
                                    which + " needs \"at_ms\" (whole milliseconds) and \"act\": go, "
                                            "play, freeze, zoom, draw, clear, marks, beside or "
                                            "light.");
        }
        if (const auto shot = records::integerMember(act, "shot")) {
            const auto view = records::textMember(act, "view");
            const auto clip = std::find_if(clips.begin(), clips.end(), [&](const auto& c) {
                return c.shotNumber == *shot && (!view || marks::viewName(c.view) == *view);
            });
            if (clip == clips.end()) {
                return base::inputError("review.no_clip", which +
                                                              " names a shot that this lesson does not hold; "
                                                              "\"plumbmark lesson show\" lists them.");
            }
            act.insert_or_assign("clip", records::Value(clip->clip.hex()));
        }
        named.emplace_back(std::move(act));
    }
    const std::size_t wanted = named.size();
    body->insert_or_assign("acts", records::Value(std::move(named)));
    auto review = records::reviewOf(*body);
    if (!review) {
        return base::inputError(
            "review.form", "The timeline needs \"length_ms\", whole milliseconds; docs/review.md shows one.");
    }
    if (review->acts.size() != wanted) {
        return base::inputError("review.form",
                                "One of the acts has a field of a wrong kind; docs/review.md shows "
                                "their forms.");
    }
    return std::move(*review);
}

/// "2.5-4": seconds of the review.
base::Result<std::pair<std::int64_t, std::int64_t>> stretchOf(const std::string& typed) {
    const std::size_t dash = typed.find('-', 1);
    const auto from = readNumber(std::string_view(typed).substr(0, dash));
    const auto to =
        dash == std::string::npos ? std::nullopt : readNumber(std::string_view(typed).substr(dash + 1));
    const double most = static_cast<double>(records::kMostReviewMs) / 1000.0;
    if (!from || !to || *from < 0.0 || *to < *from || *to > most) {
        return base::inputError("arguments.stretch",
                                "Give a stretch in seconds of the review, like 2.5-4, not \"" +
                                    shown(typed, 40) + "\".");
    }
    return std::pair<std::int64_t, std::int64_t>(std::llround(*from * 1000.0), std::llround(*to * 1000.0));
}

std::string secondsWords(std::int64_t ms) {
    std::ostringstream words;
    words.imbue(std::locale::classic());
    words << std::fixed << std::setprecision(2) << static_cast<double>(ms) / 1000.0 << " s";
    return words.str();
}

base::Result<int> runShow(const Arguments& args, const Services& services, Streams streams) {
    auto open = openLesson(args, *args.operand(0), services, streams);
    if (!open) {
        return open.error();
    }
    session::ReviewDesk desk(*open->library, nullptr);
    const auto standing = desk.review(open->lesson.id);
    const auto clips = desk.clips(open->lesson.id);
    if (!standing || !clips) {
        return standing ? clips.error() : standing.error();
    }
    if (!*standing) {
        streams.out << "No review and no note yet.\n";
        return kDone;
    }
    const records::Review& review = **standing;
    if (args.has("--json")) {
        const auto text = records::canonicalText(records::Value(bodyOf(review)));
        if (!text) {
            return text.error();
        }
        streams.out << *text << "\n";
        return kDone;
    }
    for (const auto& [name, text] :
         {std::pair{"saw", &review.saw}, {"said", &review.said}, {"next", &review.next}}) {
        if (!text->empty()) {
            streams.out << name << ": " << shown(*text, 500) << "\n";
        }
    }
    if (records::spoken(review)) {
        streams.out << "spoken review: " << secondsWords(review.lengthMs) << ", " << review.acts.size()
                    << " acts, " << (records::hasVoice(review) ? "with a voice" : "silent") << "\n";
    }
    for (const records::ReviewCaption& caption : review.captions) {
        streams.out << "caption " << secondsWords(caption.fromMs) << " to " << secondsWords(caption.toMs)
                    << ": " << shown(caption.text, 500) << "\n";
    }
    return kDone;
}

base::Result<int> runStar(const Arguments& args, const Services& services, Streams streams) {
    if (args.has("--at") && args.has("--moment")) {
        return base::inputError("arguments.extra", "Give --at or --moment.");
    }
    const auto seconds = args.number("--at", 0, 1e6, "s");
    if (!seconds) {
        return seconds.error();
    }
    auto open = openLesson(args, *args.operand(0), services, streams);
    if (!open) {
        return open.error();
    }
    session::ReviewDesk desk(*open->library, nullptr);
    if (*seconds || args.has("--moment")) {
        const auto clip = chosenClip(args, desk, open->lesson.id);
        if (!clip) {
            return clip.error();
        }
        std::optional<base::Seconds> time;
        if (*seconds) {
            time = base::Seconds{**seconds};
        } else {
            session::LessonBook book(*open->library);
            const auto findings = book.findings(clip->clip);
            if (!findings) {
                return findings.error();
            }
            const auto id = marks::momentFromName(*args.value("--moment"));
            for (const marks::Moment& moment :
                 *findings ? (*findings)->moments : std::vector<marks::Moment>()) {
                if (moment.id == id) {
                    time = moment.time;
                }
            }
        }
        if (!time) {
            return base::inputError("arguments.word",
                                    "The clip has no key moment of that name; \"plumbmark lesson "
                                    "show\" lists the moments, like top or impact.");
        }
        if (auto done = desk.star(clip->clip, *time, !args.has("--off")); !done) {
            return done.error();
        }
    }
    const auto stars = desk.stars(open->lesson.id);
    if (!stars) {
        return stars.error();
    }
    if (args.has("--so-far")) {
        const auto kept = desk.lessonSoFar(open->lesson.id);
        if (!kept) {
            return kept.error();
        }
        streams.out << "Review kept of " << stars->size() << (stars->size() == 1 ? " instant" : " instants")
                    << "; \"plumbmark review edit\" finishes it.\n";
        return kDone;
    }
    for (const auto& star : *stars) {
        streams.out << "swing " << star.shotNumber << " at "
                    << secondsWords(std::llround(star.time.value() * 1000.0))
                    << (star.moment ? ", " + std::string(exporting::momentLabel(*star.moment))
                                    : std::string())
                    << "\n";
    }
    if (stars->empty()) {
        streams.out << "No stars yet.\n";
    }
    return kDone;
}

base::Result<int> runEdit(const Arguments& args, const Services& services, Streams streams) {
    static constexpr std::array kWays{"--trim", "--cut", "--pause", "--again", "--caption", "--undo"};
    const auto ways =
        std::count_if(kWays.begin(), kWays.end(), [&](const char* way) { return args.has(way); });
    if (ways != 1) {
        return base::inputError("arguments.missing",
                                "Give one of --trim, --cut, --pause, --again, --caption and --undo.");
    }
    const auto seconds = args.number("--for", 0.001, 1800, "s");
    if (!seconds) {
        return seconds.error();
    }
    if (args.has("--pause") != args.has("--for") || args.has("--again") != args.has("--timeline") ||
        (args.has("--voice") && !args.has("--again")) || args.has("--caption") != args.has("--text")) {
        return base::inputError("arguments.missing", "--for belongs to --pause, --timeline and --voice to "
                                                     "--again, --text to --caption.");
    }
    auto open = openLesson(args, *args.operand(0), services, streams);
    if (!open) {
        return open.error();
    }
    session::ReviewDesk desk(*open->library, nullptr);
    const base::Id lesson = open->lesson.id;
    base::Result<base::Id> done = lesson;
    if (args.has("--undo")) {
        done = desk.undo(lesson);
    } else if (const auto at = args.value("--pause")) {
        const auto place = args.number("--pause", 0, 1800, "s");
        if (!place) {
            return place.error();
        }
        done = desk.edit(lesson, [&](const records::Review& review) {
            return records::paused(review, std::llround(**place * 1000.0), std::llround(**seconds * 1000.0));
        });
    } else {
        const char* way = args.has("--trim")    ? "--trim"
                          : args.has("--cut")   ? "--cut"
                          : args.has("--again") ? "--again"
                                                : "--caption";
        const auto stretch = stretchOf(*args.value(way));
        if (!stretch) {
            return stretch.error();
        }
        const auto [from, to] = *stretch;
        if (args.has("--again")) {
            const auto text = readText(*args.value("--timeline"), std::size_t{8} << 20);
            const auto clips = desk.clips(lesson);
            if (!text || !clips) {
                return text ? clips.error() : text.error();
            }
            const auto again = readTimeline(*text, *clips);
            if (!again) {
                return again.error();
            }
            std::optional<video::Sound> voice;
            if (const auto file = args.value("--voice")) {
                auto sound = video::loadSound(fs::path(*file));
                if (!sound) {
                    return sound.error();
                }
                voice = std::move(*sound);
            }
            done = desk.recordAgain(lesson, from, to, *again, voice);
        } else {
            done = desk.edit(lesson, [&](const records::Review& review) {
                return args.has("--trim")  ? records::trimmed(review, from, to)
                       : args.has("--cut") ? records::cutOut(review, from, to)
                                           : records::captioned(review, {from, to, *args.value("--text")});
            });
        }
    }
    if (!done) {
        return done.error();
    }
    const auto now = desk.review(lesson);
    if (!now) {
        return now.error();
    }
    streams.out << (args.has("--undo") ? "Back: " : "Kept: ")
                << (*now && records::spoken(**now) ? "the review lasts " + secondsWords((*now)->lengthMs)
                                                   : std::string("a note"))
                << (args.has("--undo") ? ".\n" : "; --undo takes it back.\n");
    return kDone;
}

base::Result<int> runRecord(const Arguments& args, const Services& services, Streams streams) {
    const auto text = readText(*args.operand(1), std::size_t{8} << 20);
    if (!text) {
        return text.error();
    }
    auto open = openLesson(args, *args.operand(0), services, streams);
    if (!open) {
        return open.error();
    }
    session::ReviewDesk desk(*open->library, nullptr);
    const auto clips = desk.clips(open->lesson.id);
    if (!clips) {
        return clips.error();
    }
    auto review = readTimeline(*text, *clips);
    if (!review) {
        return review.error();
    }
    std::optional<fs::path> voice;
    if (const auto file = args.value("--voice")) {
        voice = *file;
    }
    const std::size_t acts = review->acts.size();
    const auto kept = desk.keep(open->lesson.id, std::move(*review), voice);
    if (!kept) {
        return kept.error();
    }
    streams.out << "Review kept: " << acts << (acts == 1 ? " act" : " acts")
                << (voice ? " and the voice.\n" : ".\n");
    return kDone;
}

base::Result<int> runNote(const Arguments& args, const Services& services, Streams streams) {
    auto open = openLesson(args, *args.operand(0), services, streams);
    if (!open) {
        return open.error();
    }
    session::ReviewDesk desk(*open->library, nullptr);
    const auto standing = desk.review(open->lesson.id);
    if (!standing) {
        return standing.error();
    }
    records::Review review = *standing ? **standing : records::Review{};
    if (!args.has("--saw") && !args.has("--said") && !args.has("--next")) {
        return base::inputError("arguments.missing", "Tell --saw, --said or --next.");
    }
    review.saw = args.value("--saw").value_or(review.saw);
    review.said = args.value("--said").value_or(review.said);
    review.next = args.value("--next").value_or(review.next);
    if (const auto kept = desk.keep(open->lesson.id, std::move(review), std::nullopt); !kept) {
        return kept.error();
    }
    streams.out << "Note kept.\n";
    return kDone;
}

base::Result<int> runRender(const Arguments& args, const Services& services, Streams streams) {
    const fs::path target = *args.operand(1);
    if (services.painter == nullptr) {
        return base::inputError("output.no_painter",
                                "This build has no painter, so it can't draw films; use the build with Qt.");
    }
    if (const auto kind = checkedEnding(target, {".mp4"}); !kind) {
        return kind.error();
    }
    std::optional<fs::path> captions;
    if (const auto file = args.value("--captions")) {
        captions = *file;
        if (const auto kind = checkedEnding(*captions, {".vtt"}); !kind) {
            return kind.error();
        }
    }
    const auto network = fetchNetwork(services);
    if (!network) {
        return network.error();
    }
    auto open = openLesson(args, *args.operand(0), services, streams);
    if (!open) {
        return open.error();
    }
    session::ReviewDesk desk(*open->library, *network);
    session::ReviewDesk::FilmRequest request;
    const auto standing = desk.review(open->lesson.id);
    if (!standing) {
        return standing.error();
    }
    if (!*standing || !records::spoken(**standing) || args.has("--tour") || args.has("--shot") ||
        args.has("--view") || args.has("--beside")) {
        const auto clip = chosenClip(args, desk, open->lesson.id);
        if (!clip) {
            return clip.error();
        }
        request.clip = clip->clip;
        const auto beside = args.number("--beside", 1, 10000, "(a shot's number)");
        if (!beside) {
            return beside.error();
        }
        if (*beside) {
            const auto all = desk.clips(open->lesson.id);
            if (!all) {
                return all.error();
            }
            for (const auto& other : *all) {
                if (other.shotNumber == static_cast<int>(**beside) && other.view == clip->view &&
                    other.clip != clip->clip) {
                    request.beside = other.clip;
                }
            }
            if (!request.beside) {
                return base::inputError("review.no_clip", "--beside names no other clip of the same view; "
                                                          "\"plumbmark lesson show\" lists them.");
            }
        }
    }
    request.coverHeads = args.has("--cover-heads");
    const auto consent = desk.coversHeads(open->lesson.id);
    if (!consent) {
        return consent.error();
    }
    const auto strip = args.value("--strip");
    if ((*consent || request.coverHeads) && !strip) {
        return base::inputError("review.strip",
                                "The head is covered in this film; add --strip PNG, and look at "
                                "every still before the film goes anywhere.");
    }
    if (strip) {
        if (const auto kind = checkedEnding(*strip, {".png"}); !kind) {
            return kind.error();
        }
    }
    base::Result<std::optional<session::ReviewDesk::FilmMade>> made =
        std::optional<session::ReviewDesk::FilmMade>();
    {
        const ProgressLine line(services, streams.err);
        made = desk.film(open->lesson.id, request, *services.painter, target, line.progress());
    }
    if (!made) {
        return made.error();
    }
    if (!*made) {
        return stopped();
    }
    if (captions) {
        if (auto written = exporting::writeWhole(*captions, exporting::captionsVtt((*made)->captions));
            !written) {
            return written.error();
        }
    }
    if (strip && (*made)->covered) {
        const auto png = video::encodePng(session::contactSheet((*made)->strip));
        if (!png) {
            return png.error();
        }
        if (auto written = exporting::writeWhole(*strip, std::as_bytes(std::span(*png))); !written) {
            return written.error();
        }
    }
    streams.out << "Film of " << std::lround((*made)->seconds) << " seconds written.\n";
    if ((*made)->covered) {
        streams.out << "Heads are covered; look at every still of the strip before the film goes anywhere.\n";
    }
    return kDone;
}

} // namespace

std::vector<Command> reviewCommands() {
    return {
        {{"review request",
          "Writes the card for students who send swings in: how to film, what to answer.",
          {"OUT"},
          {{"--player", "NAME", "whom it is for"},
           {"--coach", "NAME", "whom to send the films to"},
           {"--due", "DAY", "by when"},
           {"--question", "TEXT", "what you want to see, in your words"}},
          {"plumbmark review request card.html --player Kim --due Friday",
           "plumbmark review request card.pdf"}},
         runRequest},
        {{"review inbox",
          "Lists who waits, for how long, and which answers were opened; or says where a lesson stands.",
          {},
          {{"--wait", "LESSON", "the student waits for you from today on"},
           {"--due", "DAY", "with --wait: the day you promised, like 2026-11-25"},
           {"--again", "LESSON", "please film again: because of --because, else what limited the clips"},
           {"--because", "TEXT", "with --again: the reason in your words"},
           {"--answered", "LESSON", "done"},
           {"--file", "OUT", "with --answered: writes the answer as one lesson file"},
           kLibrary},
          {"plumbmark review inbox", "plumbmark review inbox --wait latest --due 2026-11-28",
           "plumbmark review inbox --again latest",
           "plumbmark review inbox --answered latest --file answer.plumbmark"}},
         runInbox},
        {{"review record",
          "Keeps a spoken review: a timeline of acts and the voice that was recorded with it.",
          {"LESSON", "TIMELINE"},
          {{"--voice", "FILE", "the voice: any sound file, up to ten minutes"}, kLibrary},
          {"plumbmark review record latest timeline.json --voice voice.wav"}},
         runRecord},
        {{"review show",
          "Tells what stands: the note, how long the spoken review is, its captions.",
          {"LESSON"},
          {{"--json", "", "the whole timeline as JSON, as \"review record\" takes it"}, kLibrary},
          {"plumbmark review show latest"}},
         runShow},
        {{"review star",
          "Stars instants of the lesson's films and lists them; --so-far makes a first review of them.",
          {"LESSON"},
          {{"--at", "SECONDS", "this instant of the film"},
           {"--moment", "NAME", "this key moment, like top or impact"},
           {"--off", "", "takes the star away"},
           {"--so-far", "", "keeps a silent review of the starred instants, to be finished later"},
           kShot,
           kView,
           kLibrary},
          {"plumbmark review star latest --shot 2 --moment impact", "plumbmark review star latest --so-far"}},
         runStar},
        {{"review edit",
          "Trims, cuts, pauses or does a stretch of the spoken review again. Nothing is coded anew.",
          {"LESSON"},
          {{"--trim", "FROM-TO", "only these seconds of the review stay"},
           {"--cut", "FROM-TO", "these seconds go"},
           {"--pause", "AT", "with --for: the picture stands there, in silence"},
           {"--for", "SECONDS", "how long the pause is"},
           {"--again", "FROM-TO", "with --timeline: these seconds are done again"},
           {"--timeline", "FILE", "what happens in them, as for \"review record\""},
           {"--voice", "FILE", "and what is said"},
           {"--caption", "FROM-TO", "with --text: a caption; an empty text takes captions away"},
           {"--text", "TEXT", "what the caption says"},
           {"--undo", "", "takes the last change back"},
           kLibrary},
          {"plumbmark review edit latest --trim 0.8-42", "plumbmark review edit latest --cut 12.5-14",
           "plumbmark review edit latest --again 20-31 --timeline better.json --voice better.wav",
           "plumbmark review edit latest --caption 2-5 --text \"One shoe wider\"",
           "plumbmark review edit latest --undo"}},
         runEdit},
        {{"review note",
          "Keeps three lines with a lesson: what you saw, what you said, what comes next.",
          {"LESSON"},
          {{"--saw", "TEXT", "what you saw"},
           {"--said", "TEXT", "what you told the student"},
           {"--next", "TEXT", "what comes next"},
           kLibrary},
          {"plumbmark review note latest --saw \"narrow stance\" --said \"one shoe wider\" --next \"in two "
           "weeks\""}},
         runNote},
        {{"review render",
          "Makes a film that plays anywhere: the spoken review, or a tour of a swing.",
          {"LESSON", "OUT"},
          {{"--tour", "", "a tour of a swing also where there is a spoken review"},
           kShot,
           kView,
           {"--beside", "N", "another shot next to it, at the same positions"},
           {"--captions", "OUT.vtt", "also writes the captions, as WebVTT"},
           {"--cover-heads", "",
            "an opaque box over the head; always so where the guardian of a minor did not "
            "agree to the face"},
           {"--strip", "PNG", "with covered heads: stills from the finished film: look at every one"},
           kLibrary},
          {"plumbmark review render latest lesson.mp4",
           "plumbmark review render latest tour.mp4 --shot 1 --beside 2 --captions tour.vtt"}},
         runRender},
        {{"review sheet",
          "Draws the lesson to take home: what is good, the plan, pictures with marks, numbers.",
          {"LESSON", "OUT"},
          {{"--format", "a4|phone", "pages to print, or one page as wide as a phone; without it a4"},
           {"--keys", "", "instead: the key positions of every swing, one page each"},
           kLibrary},
          {"plumbmark review sheet latest lesson.pdf",
           "plumbmark review sheet 3f2a91c0 lesson.png --format phone",
           "plumbmark review sheet latest positions.pdf --keys"}},
         runSheet},
        {{"review tables",
          "Writes numbers over lessons, or a clip's landmarks over time, for other programs.",
          {"OUT"},
          {{"--player", "NAME", "only this player's lessons"},
           {"--lesson", "LESSON", "only this lesson"},
           {"--landmarks", "",
            "a clip's landmarks over time (needs --lesson); a .trc file always holds them"},
           kShot,
           kView,
           kLibrary},
          {"plumbmark review tables numbers.csv --player \"Demo player\"",
           "plumbmark review tables numbers.json",
           "plumbmark review tables markers.trc --lesson latest --shot 1 --view face-on"}},
         runTables},
    };
}

} // namespace plumbmark::cli
