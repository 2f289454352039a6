// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cstdio>
#include <memory>

#include "base/files.h"
#include "cli/commands.h"
#include "cli/library_access.h"
#include "cli/passphrase.h"
#include "cli/text.h"
#include "exporting/output_file.h"
#include "exporting/words.h"
#include "lessonfile/seal.h"
#include "lessonfile/signature.h"
#include "session/clip_intake.h"
#include "session/film_sharing.h"
#include "session/inbox.h"
#include "session/lesson_book.h"
#include "session/lesson_exchange.h"
#include "store/library.h"
#include "video/clip.h"
#include "video/still.h"

namespace plumbmark::cli {
namespace fs = std::filesystem;
namespace {

/// The player of that name, made where there is none.
base::Result<base::Id> playerNamed(session::LessonBook& book, const std::string& name,
                                   const marks::ShotContext& context) {
    const auto players = book.players(name);
    if (!players) {
        return players.error();
    }
    for (const auto& row : *players) {
        if (row.name == name) {
            return row.id;
        }
    }
    records::Player player;
    player.name = name;
    player.hand = context.hand;
    player.statureMetres = context.statureMetres;
    return book.addPlayer(player);
}

/// The lesson that a new shot goes to: the one named, or a new one of today.
base::Result<base::Id> lessonFor(const Arguments& args, const Services& services, session::LessonBook& book,
                                 const marks::ShotContext& context) {
    if (const auto typed = args.value("--lesson")) {
        const auto row = findLesson(book, *typed);
        return row ? base::Result<base::Id>(row->id) : base::Result<base::Id>(row.error());
    }
    const auto player = playerNamed(book, args.value("--player").value_or("Player without a name"), context);
    if (!player) {
        return player.error();
    }
    records::Lesson lesson;
    lesson.day = base::isoDate(services.clock->now());
    lesson.title = args.value("--title").value_or("Lesson of " + lesson.day);
    return book.addLesson(*player, lesson);
}

std::string megabytes(std::int64_t bytes) {
    char text[40];
    if (bytes < 1'000'000) {
        std::snprintf(text, sizeof text, "%lld kB", static_cast<long long>((bytes + 999) / 1000));
    } else {
        std::snprintf(text, sizeof text, "%.1f MB", static_cast<double>(bytes) / 1e6);
    }
    return text;
}

void printSummary(std::ostream& out, const lessonfile::Summary& summary) {
    out << "\"" << shown(summary.title) << "\", " << plural(summary.records, "record", "records") << ", "
        << megabytes(summary.bytes) << ", made " << shown(summary.created.substr(0, 10)) << " by "
        << shown(summary.madeBy) << "\n";
    for (const auto& part : summary.parts) {
        out << "  " << padded(shown(part.role), 10) << padded(shown(part.path), 44) << " "
            << megabytes(part.size) << "\n";
    }
}

std::string shotLine(const records::Shot& shot) {
    std::string line(exporting::shotLabel(shot.kind));
    return shot.club ? exporting::clubLabel(*shot.club) + ", " + line : line;
}

base::Result<void> printClip(std::ostream& out, session::LessonBook& book, const store::ClipRow& clip) {
    const auto& facts = clip.clip;
    char text[160];
    std::snprintf(text, sizeof text, "%d x %d, %d frames, %.2f s", facts.width, facts.height, facts.frames,
                  facts.durationSeconds);
    out << "    " << clip.id.hex().substr(0, kShortId) << "  " << exporting::viewLabel(facts.view) << ": "
        << text << (clip.filmHere ? "" : ", film not here") << "\n";
    const auto findings = book.findings(clip.id);
    if (!findings) {
        return findings.error();
    }
    if (!*findings) {
        out << "      not measured yet\n";
        return {};
    }
    const auto told = std::count_if((*findings)->measurements.begin(), (*findings)->measurements.end(),
                                    [](const auto& m) { return m.value.has_value(); });
    out << "      " << plural(static_cast<int>((*findings)->moments.size()), "key moment", "key moments")
        << ", " << plural(static_cast<int>(told), "number", "numbers") << "\n";
    for (const auto state :
         {coaching::State::good, coaching::State::watch, coaching::State::work, coaching::State::unknown}) {
        std::string names;
        for (const auto& checkpoint : (*findings)->checkpoints) {
            if (coaching::stateFromName(checkpoint.state) == state) {
                names += (names.empty() ? "" : ", ") + exporting::measurementLabel(shown(checkpoint.id, 60));
            }
        }
        if (!names.empty()) {
            out << "      " << padded(std::string(exporting::stateWord(state)) + ":", 13) << names << "\n";
        }
    }
    return {};
}

} // namespace

base::Result<int> runLessonAdd(const Arguments& args, const Services& services, Streams streams) {
    const fs::path path = *args.operand(0);
    auto request = readSwing(args);
    if (!request) {
        return request.error();
    }
    if (args.has("--lesson") && (args.has("--player") || args.has("--title"))) {
        return base::inputError(
            "arguments.extra",
            "--lesson names a lesson that has its player and title; leave --player and --title out.");
    }
    auto outputs = Outputs::check(args, services, path);
    if (!outputs) {
        return outputs.error();
    }
    auto clip = video::Clip::open(path);
    if (!clip) {
        return clip.error();
    }
    if (auto complete = completeRequest(args, **clip, *request, streams); !complete) {
        return complete.error();
    }
    const auto network = fetchNetwork(services);
    if (!network) {
        return network.error();
    }
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    session::LessonBook book(**library);
    const bool newLesson = !args.has("--lesson");
    const auto lesson = lessonFor(args, services, book, request->context);
    if (!lesson) {
        return lesson.error();
    }
    records::Shot shot;
    shot.kind = request->context.shot;
    shot.club = request->context.club;
    const auto shotId = book.addShot(*lesson, shot);
    if (!shotId) {
        return shotId.error();
    }
    base::Result<std::optional<session::ClipIntake::Receipt>> receipt =
        std::optional<session::ClipIntake::Receipt>{};
    {
        const ProgressLine line(services, streams.err);
        session::ClipIntake intake(**library, *network);
        receipt = intake.bringIn(*shotId, path, *request, line.progress());
    }
    if (!receipt || !*receipt) {
        // What was made for this clip alone goes with it.
        const auto erased = book.erase(newLesson ? *lesson : *shotId);
        if (receipt) {
            return stopped();
        }
        return erased ? receipt.error() : erased.error();
    }
    const analysis::Outcome& outcome = (*receipt)->analysed.outcome;
    if (const auto row = findLesson(book, lesson->hex())) {
        outputs->setHeading(row->playerName + ", " + row->day);
    }
    const auto advice = adviceFor(**clip, outcome);
    if (!advice) {
        return advice.error();
    }
    if (auto written = outputs->write(**clip, outcome, *advice, services, streams); !written) {
        return written.error();
    }
    if (!outputs->jsonToTerminal()) {
        printOutcome(streams.out, outcome, *advice, services.unicode);
        streams.out << "\nKept in lesson " << lesson->hex().substr(0, kShortId) << ".\n";
    }
    return kDone;
}

base::Result<int> runLessonList(const Arguments& args, const Services& services, Streams streams) {
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    session::LessonBook book(**library);
    const auto lessons = book.lessons(args.operand(0).value_or(""));
    if (!lessons) {
        return lessons.error();
    }
    if (lessons->empty()) {
        streams.out << (args.operand(0) ? "No lesson holds these words.\n"
                                        : "There is no lesson yet; \"plumbmark lesson add\" makes one.\n");
        return kDone;
    }
    for (const auto& row : *lessons) {
        streams.out << row.id.hex().substr(0, kShortId) << "  " << padded(row.day, 10) << "  "
                    << padded(shown(row.playerName, 60), 20) << "  " << padded(shown(row.title, 80), 28)
                    << "  " << plural(row.shots, "shot", "shots") << ", "
                    << plural(row.clips, "clip", "clips")
                    << (row.needsYou ? "; two versions of something, look at it in the app" : "") << "\n";
    }
    return kDone;
}

base::Result<int> runLessonShow(const Arguments& args, const Services& services, Streams streams) {
    auto open = openLesson(args, *args.operand(0), services, streams);
    if (!open) {
        return open.error();
    }
    session::LessonBook book(*open->library);
    const auto lesson = book.lesson(open->lesson.id);
    if (!lesson) {
        return lesson.error();
    }
    if (const auto noted = session::InboxDesk(*open->library, *services.clock).noteOpened(open->lesson.id);
        !noted) {
        return noted.error();
    }
    std::ostream& out = streams.out;
    out << shown(lesson->title) << "\n"
        << shown(open->lesson.playerName) << ", " << open->lesson.day << ", lesson " << open->lesson.id.hex()
        << "\n";
    for (const auto& [what, text] : {std::pair{"Wish", &lesson->wish},
                                     {"The student's explanation", &lesson->belief},
                                     {"Note", &lesson->note}}) {
        if (!text->empty()) {
            out << what << ": " << shown(*text, 10000) << "\n";
        }
    }
    const auto shots = book.shots(open->lesson.id);
    if (!shots) {
        return shots.error();
    }
    for (const auto& shot : *shots) {
        out << "\n  Shot " << shot.number << ": " << shotLine(shot.shot) << "\n";
        const auto clips = book.clips(shot.id);
        if (!clips) {
            return clips.error();
        }
        for (const auto& clip : *clips) {
            if (auto printed = printClip(out, book, clip); !printed) {
                return printed.error();
            }
        }
    }
    return kDone;
}

base::Result<int> runLessonExport(const Arguments& args, const Services& services, Streams streams) {
    const fs::path target = *args.operand(1);
    if (auto writable = exporting::checkWritable(target); !writable) {
        return writable.error();
    }
    session::LessonExchange::ExportOptions options;
    options.withFilms = !args.has("--without-films");
    if (const auto sheet = args.value("--sheet")) {
        const auto png = readText(*sheet, std::size_t{64} << 20);
        if (!png) {
            return png.error();
        }
        if (!png->starts_with("\x89PNG\r\n\x1a\n")) {
            return base::inputError("sheet.not_png", "\"" + *sheet +
                                                         "\" is no PNG picture; draw one with \"plumbmark "
                                                         "measure --sheet\".");
        }
        options.sheet = *sheet;
    }
    options.withHealth = args.has("--with-health");
    options.coverHeads = args.has("--cover-heads");
    options.audience =
        args.has("--own-device") ? session::Audience::ownDevice : session::Audience::someoneElse;
    if (args.has("--seal") || args.has("--passphrase-file")) {
        const auto passphrase = readPassphrase(args, true);
        if (!passphrase) {
            return passphrase.error();
        }
        if (passphrase->empty()) {
            return base::inputError("seal.passphrase_needed",
                                    "To seal a lesson a passphrase is needed, for example: " +
                                        lessonfile::suggestPassphrase() + ".");
        }
        options.passphrase = *passphrase;
    }
    auto open = openLesson(args, *args.operand(0), services, streams);
    if (!open) {
        return open.error();
    }
    base::Result<lessonfile::Summary> summary = lessonfile::Summary{};
    {
        const ProgressLine line(services, streams.err);
        session::LessonExchange exchange(*open->library, *services.clock);
        summary = exchange.exportLesson(open->lesson.id, target, options, line.progress());
    }
    if (!summary) {
        return summary.error();
    }
    printSummary(streams.out, *summary);
    return kDone;
}

base::Result<int> runLessonCover(const Arguments& args, const Services& services, Streams streams) {
    const auto strip = args.value("--strip");
    if (strip.has_value() == args.has("--release")) {
        return base::inputError("arguments.missing",
                                "First make the copies and look at them (--strip PNG), then "
                                "release them (--release).");
    }
    if (strip) {
        if (auto writable = exporting::checkWritable(*strip); !writable) {
            return writable.error();
        }
    }
    auto open = openLesson(args, *args.operand(0), services, streams);
    if (!open) {
        return open.error();
    }
    const auto network = strip ? fetchNetwork(services) : base::Result<analysis::NetworkBytes>(nullptr);
    if (!network) {
        return network.error();
    }
    session::LessonBook book(*open->library);
    session::HeadCovering covering(*open->library, *network);
    const auto shots = book.shots(open->lesson.id);
    if (!shots) {
        return shots.error();
    }
    std::vector<session::HeadCovering::Still> stills;
    int films = 0;
    for (const auto& shot : *shots) {
        const auto clips = book.clips(shot.id);
        if (!clips) {
            return clips.error();
        }
        for (const auto& clip : *clips) {
            if (!clip.filmHere) {
                continue;
            }
            ++films;
            if (!strip) {
                if (auto released = covering.release(clip.id); !released) {
                    return released.error();
                }
                continue;
            }
            base::Result<std::optional<session::HeadCovering::Strip>> made =
                std::optional<session::HeadCovering::Strip>();
            {
                const ProgressLine line(services, streams.err);
                made = covering.make(clip.id, line.progress());
            }
            if (!made) {
                return made.error();
            }
            if (!*made) {
                return stopped();
            }
            streams.out << "Shot " << shot.number << ", clip " << clip.id.hex().substr(0, kShortId) << ": "
                        << plural((*made)->frames, "frame", "frames") << ", head uncertain in "
                        << (*made)->doubtful << "\n";
            for (auto& still : (*made)->stills) {
                stills.push_back(std::move(still));
            }
        }
    }
    if (films == 0) {
        streams.out << "There is no film in this lesson.\n";
        return kDone;
    }
    if (!strip) {
        streams.out << plural(films, "film", "films")
                    << " with the head covered may travel: plumbmark lesson export ... --cover-heads\n";
        return kDone;
    }
    if (auto saved = video::savePng(*strip, session::contactSheet(stills)); !saved) {
        return saved.error();
    }
    streams.out
        << "Look at every still in " << shown(*strip, 500)
        << ": other people in the picture are not covered.\nIs nobody to be recognised? Then: plumbmark "
           "lesson cover "
        << open->lesson.id.hex().substr(0, kShortId) << " --release\n";
    return kDone;
}

base::Result<int> runLessonImport(const Arguments& args, const Services& services, Streams streams) {
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    const fs::path file = *args.operand(0);
    const auto passphrase = readPassphrase(args, lessonfile::isSealed(file));
    if (!passphrase) {
        return passphrase.error();
    }
    session::LessonExchange exchange(**library, *services.clock);
    base::Result<session::LessonExchange::Receipt> receipt = session::LessonExchange::Receipt{};
    {
        const ProgressLine line(services, streams.err);
        receipt = exchange.import(file, line.progress(), *passphrase);
    }
    if (!receipt) {
        return receipt.error();
    }
    if (const auto name = args.value("--remember")) {
        if (auto noted = exchange.rememberSender(receipt->file.signedBy, *name); !noted) {
            return noted.error();
        }
        receipt->sender = session::Sender::known;
        receipt->senderName = shown(*name);
    }
    streams.out << shown(receipt->origin()) << " " << receipt->sentence() << "\n";
    for (const auto& id : receipt->lessons) {
        streams.out << "Lesson " << id.hex().substr(0, kShortId) << "\n";
    }
    for (const auto& part : receipt->ignored) {
        streams.out << "Not used, no record names it: " << shown(part) << "\n";
    }
    for (const auto& part : receipt->carried) {
        streams.out << "Kept and passed on, this version does not know it: " << shown(part) << "\n";
    }
    return kDone;
}

base::Result<int> runLessonMerge(const Arguments& args, const Services& services, Streams streams) {
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    session::LessonExchange exchange(**library, *services.clock);
    // All of them are looked at before the first is taken in.
    std::vector<std::pair<fs::path, std::string>> files;
    for (std::size_t i = 0; args.operand(i); ++i) {
        const fs::path file = *args.operand(i);
        const auto passphrase = readPassphrase(args, lessonfile::isSealed(file));
        if (!passphrase) {
            return passphrase.error();
        }
        const ProgressLine line(services, streams.err);
        if (const auto good = exchange.verify(file, line.progress(), *passphrase); !good) {
            return good.error();
        }
        files.emplace_back(file, *passphrase);
    }
    int needYou = 0;
    for (const auto& [file, passphrase] : files) {
        const ProgressLine line(services, streams.err);
        const auto receipt = exchange.import(file, line.progress(), passphrase);
        if (!receipt) {
            return receipt.error(); // those before it are in, whole
        }
        streams.out << shown(file.filename().string(), 200) << ": " << shown(receipt->origin()) << " "
                    << receipt->sentence() << "\n";
        needYou += receipt->records.needsYou;
    }
    if (needYou > 0) {
        streams.out << "Two devices said different things: \"plumbmark settle\" shows both.\n";
    }
    return kDone;
}

base::Result<int> runLessonVerify(const Arguments& args, const Services& services, Streams streams) {
    const fs::path file = *args.operand(0);
    base::Result<lessonfile::Summary> summary = lessonfile::Summary{};
    {
        const ProgressLine line(services, streams.err);
        if (lessonfile::isSealed(file)) {
            const auto passphrase = readPassphrase(args, true);
            if (!passphrase) {
                return passphrase.error();
            }
            auto stage = base::StagingFolder::create(fs::temp_directory_path() / "plumbmark");
            if (!stage) {
                return stage.error();
            }
            const fs::path opened = stage->path() / "opened";
            if (auto done = lessonfile::unseal(file, opened, *passphrase, line.progress()); !done) {
                return done.error();
            }
            summary = lessonfile::verify(opened, {}, line.progress());
        } else {
            summary = lessonfile::verify(file, {}, line.progress());
        }
    }
    if (!summary) {
        return summary.error();
    }
    streams.out << "Whole and unchanged since it was written"
                << (summary->signedBy.empty()
                        ? "; not signed"
                        : "; signed with key " + lessonfile::keyForPeople(summary->signedBy))
                << ".\n";
    printSummary(streams.out, *summary);
    return kDone;
}

} // namespace plumbmark::cli
