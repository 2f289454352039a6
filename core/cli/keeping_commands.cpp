// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Keeping and moving lessons: consent, backup, restore, check, sync, send, receive.
#include <chrono>
#include <sstream>
#include <thread>

#include "cli/commands.h"
#include "cli/library_access.h"
#include "cli/passphrase.h"
#include "cli/text.h"
#include "lessonfile/lessonfile.h"
#include "lessonfile/seal.h"
#include "session/disagreements.h"
#include "session/folder_sync.h"
#include "session/lesson_exchange.h"
#include "session/retention.h"
#include "store/backup.h"
#include "transfer/direct.h"
#include "transfer/qr.h"
#include "video/clip.h"

namespace plumbmark::cli {
namespace fs = std::filesystem;
namespace {

/// Never asked for: a folder is kept in step without anybody at the terminal.
constexpr Option kPassphrase{"--passphrase-file", "FILE",
                             "the passphrase of sealed files; else $PLUMBMARK_PASSPHRASE"};

std::string kindWord(store::BackupKind kind) {
    switch (kind) {
    case store::BackupKind::daily:
        return "daily";
    case store::BackupKind::byHand:
        return "by hand";
    case store::BackupKind::beforeStep:
        return "before an update";
    case store::BackupKind::afterErasing:
        return "after erasing";
    case store::BackupKind::beforeRestore:
        return "before a restore";
    }
    return {};
}

base::Result<int> runConsent(const Arguments& args, const Services& services, Streams streams) {
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    const auto player = findPlayer(**library, *args.operand(0));
    if (!player) {
        return player.error();
    }
    session::LessonExchange exchange(**library, *services.clock);
    const std::string today = base::isoDate(services.clock->now());
    if (args.has("--scope") || args.has("--withdraw")) {
        records::Consent consent;
        std::istringstream words(args.value("--scope").value_or(""));
        for (std::string word; std::getline(words, word, ',');) {
            consent.scopes.insert(word);
        }
        consent.day = today;
        consent.minor = args.has("--guardian");
        consent.guardian = args.value("--guardian").value_or("");
        consent.withdrawn = args.has("--withdraw");
        const auto inAYear = services.clock->now() + 365LL * 24 * 3600 * 1000;
        consent.until = args.value("--until").value_or(consent.withdrawn ? today : base::isoDate(inAYear));
        if (auto noted = exchange.noteConsent(*player, consent); !noted) {
            return noted.error();
        }
    }
    const auto standing = exchange.consents(*player);
    if (!standing) {
        return standing.error();
    }
    if (standing->empty()) {
        streams.out << "No consent on record.\n";
    }
    for (const records::Fact& fact : *standing) {
        const records::Consent consent = records::consentOf(fact.body);
        std::string scopes;
        for (const std::string& word : consent.scopes) {
            scopes += (scopes.empty() ? "" : ", ") + shown(word, 40);
        }
        streams.out << (consent.withdrawn ? "Withdrawn on " + shown(consent.day, 20)
                                          : "Given on " + shown(consent.day, 20) + " until " +
                                                shown(consent.until, 20) + " for " + scopes)
                    << (consent.minor ? ", by the guardian " + shown(consent.guardian) : "") << "\n";
    }
    const auto may = exchange.mayShare(*player);
    streams.out << (may ? "Lessons may be shared." : may.error().sentence) << "\n";
    return kDone;
}

base::Result<int> runBackup(const Arguments& args, const Services& services, Streams streams) {
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    const ProgressLine line(services, streams.err);
    auto backup = (*library)->backup(store::BackupKind::byHand, line.progress());
    if (!backup) {
        return backup.error();
    }
    if (const auto folder = args.operand(0)) {
        backup = store::copyBackup(*backup, *folder, line.progress());
        if (!backup) {
            return backup.error();
        }
    }
    const auto state = store::checkBackup(backup->folder, args.has("--films"), line.progress());
    if (!state) {
        return state.error();
    }
    streams.out << "Backup " << backup->name << ": " << plural(state->lessons, "lesson", "lessons") << ", "
                << plural(state->records, "record", "records") << ", "
                << plural(state->films, "film", "films") << "; opened and checked.\n"
                << shown(backup->folder.string(), 500) << "\n";
    return kDone;
}

base::Result<int> runRestore(const Arguments& args, const Services& services, Streams streams) {
    const auto options = libraryOptions(args, services);
    if (!options) {
        return options.error();
    }
    const auto backups = store::listBackups(options->folder);
    if (!args.operand(0)) {
        if (backups.empty()) {
            streams.out << "There is no backup beside this library.\n";
        }
        for (const store::Backup& backup : backups) {
            const auto state = store::checkBackup(backup.folder);
            streams.out << padded(backup.name, 44) << padded(kindWord(backup.kind), 18)
                        << (state ? plural(state->lessons, "lesson", "lessons") : state.error().sentence)
                        << "\n";
        }
        return kDone;
    }
    fs::path chosen = *args.operand(0);
    if (chosen == "latest") {
        if (backups.empty()) {
            return base::inputError("backup.missing",
                                    "There is no backup beside this library; name a folder.");
        }
        chosen = backups.front().folder;
    }
    for (const store::Backup& backup : backups) {
        if (backup.name == chosen.string()) {
            chosen = backup.folder;
        }
    }
    const ProgressLine line(services, streams.err);
    const auto receipt = store::restoreBackup(*options, chosen, line.progress());
    if (!receipt) {
        return receipt.error();
    }
    streams.out << "Restored: " << plural(receipt->state.lessons, "lesson", "lessons") << ", "
                << plural(receipt->state.records, "record", "records") << ", "
                << plural(receipt->state.films, "film", "films") << ".\n";
    if (!receipt->before.empty()) {
        streams.out << "What was there before lies in " << shown(receipt->before.string(), 500) << "\n";
    }
    return kDone;
}

base::Result<int> runCheck(const Arguments& args, const Services& services, Streams streams) {
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    const ProgressLine line(services, streams.err);
    if (args.has("--repair")) {
        if (auto done = (*library)->rebuildIndex(); !done) {
            return done.error();
        }
    }
    const auto troubles = (*library)->check(args.has("--films"), line.progress());
    if (!troubles) {
        return troubles.error();
    }
    for (const std::string& trouble : *troubles) {
        streams.out << shown(trouble, 500) << "\n";
    }
    if (troubles->empty()) {
        streams.out << "All is well.\n";
        return kDone;
    }
    return kFailed;
}

base::Result<int> runSync(const Arguments& args, const Services& services, Streams streams) {
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    session::FolderSync::Options options;
    options.folder = *args.operand(0);
    options.withFilms = !args.has("--without-films");
    options.withHealth = args.has("--with-health");
    options.coverHeads = args.has("--cover-heads");
    if (const auto name = args.value("--player")) {
        const auto player = findPlayer(**library, *name);
        if (!player) {
            return player.error();
        }
        options.player = *player;
    }
    const auto passphrase = readPassphrase(args, false);
    if (!passphrase) {
        return passphrase.error();
    }
    options.passphrase = *passphrase;
    const auto wait = args.number("--wait", 0, 7 * 24 * 3600, "seconds");
    if (!wait) {
        return wait.error();
    }
    session::FolderSync sync(**library, *services.clock);
    const ProgressLine line(services, streams.err);
    const auto end = std::chrono::steady_clock::now() + std::chrono::duration<double>(wait->value_or(0));
    base::Result<session::FolderSync::Receipt> receipt = sync.run(options, line.progress());
    while (receipt && receipt->away && std::chrono::steady_clock::now() < end) {
        if (line.progress().cancelled()) {
            return stopped();
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(500));
        receipt = sync.run(options, line.progress());
    }
    if (!receipt) {
        return receipt.error();
    }
    if (receipt->away) {
        streams.out << "The folder is not there now. Nothing is lost: the next sync catches up.\n";
        return kDone;
    }
    streams.out << "Taken in: " << plural(receipt->filesTaken, "file", "files") << ", "
                << plural(receipt->recordsNew, "new record", "new records")
                << (receipt->needsYou > 0
                        ? ", " + std::to_string(receipt->needsYou) + " to settle (\"plumbmark settle\")"
                        : "")
                << ". Sent: " << plural(receipt->filesSent, "file", "files") << ", "
                << plural(receipt->recordsSent, "record", "records") << ".\n";
    if (receipt->filesTakenBack > 0) {
        streams.out << "Taken back because something in it was erased: "
                    << plural(receipt->filesTakenBack, "file", "files") << ".\n";
    }
    for (const std::string& note : receipt->notes) {
        streams.out << shown(note, 500) << "\n";
    }
    return kDone;
}

base::Result<int> runSettle(const Arguments& args, const Services& services, Streams streams) {
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    session::Disagreements disagreements(**library);
    auto all = disagreements.all();
    if (!all) {
        return all.error();
    }
    if (const auto typed = args.operand(0)) {
        std::vector<base::Id> chosen;
        for (const session::Disagreement& one : *all) {
            for (const auto& version : one.versions) {
                if (looksLikeId(*typed) && version.fact.hex().starts_with(*typed)) {
                    chosen.push_back(version.fact);
                }
            }
        }
        if (chosen.size() != 1) {
            return base::inputError("settle.none", "\"" + shown(*typed, 60) +
                                                       "\" names no version of the list, or several; type "
                                                       "more of it (\"plumbmark settle\" shows the list).");
        }
        if (auto settled = disagreements.settle(chosen.front()); !settled) {
            return settled.error();
        }
        all = disagreements.all();
        if (!all) {
            return all.error();
        }
        streams.out << "Settled. " << all->size() << " left.\n";
        return kDone;
    }
    if (all->empty()) {
        streams.out << "Nothing to settle: all devices agree.\n";
    }
    for (const session::Disagreement& one : *all) {
        streams.out << shown(one.playerName, 60)
                    << (one.lessonTitle.empty() ? "" : ", " + shown(one.lessonTitle, 80)) << ": "
                    << (one.kind == records::kind::set ? "" : one.kind + " ") << shown(one.what, 80) << "\n";
        for (const auto& version : one.versions) {
            streams.out << "  " << version.fact.hex().substr(0, kShortId) << "  "
                        << base::isoDate(version.made) << (version.here ? " here   " : " elsewhere ")
                        << shown(version.text, 200) << "\n";
        }
    }
    return kDone;
}

base::Result<int> runTidy(const Arguments& args, const Services& services, Streams streams) {
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    const auto overdue = session::Retention(**library, *services.clock).overdue();
    if (!overdue) {
        return overdue.error();
    }
    if (const auto typed = args.value("--erase")) {
        std::vector<base::Id> chosen;
        for (const session::Overdue& one : *overdue) {
            if (*typed == "all" || (looksLikeId(*typed) && one.clip.hex().starts_with(*typed))) {
                chosen.push_back(one.clip);
            }
        }
        if (chosen.empty()) {
            return base::inputError("tidy.none",
                                    "\"" + shown(*typed, 60) +
                                        "\" names no clip of the list; \"plumbmark tidy\" shows it.");
        }
        for (const base::Id& clip : chosen) {
            if (auto erased = (*library)->erase(clip); !erased) {
                return erased.error();
            }
        }
        streams.out << "Erased: " << plural(static_cast<int>(chosen.size()), "clip", "clips")
                    << " with marks and numbers, here and at the next exchange elsewhere.\n";
        return kDone;
    }
    if (overdue->empty()) {
        streams.out << "Nothing is kept past its time (" << session::kKeepMinorsFilmsDays
                    << " days for clips of minors and where no age is known, " << session::kKeepFilmsDays
                    << " for others).\n";
    }
    for (const session::Overdue& one : *overdue) {
        streams.out << one.clip.hex().substr(0, kShortId) << "  " << one.day << "  "
                    << shown(one.playerName, 60) << ", " << shown(one.lessonTitle, 80)
                    << (one.minor        ? " (minor)"
                        : one.ageUnknown ? " (age not known)"
                                         : "")
                    << ": past its time since " << one.since << "\n";
    }
    return kDone;
}

base::Result<int> runSend(const Arguments& args, const Services& services, Streams streams) {
    transfer::SendOptions options;
    options.address = args.value("--address").value_or("");
    const auto wait = args.number("--wait", 1, 3600, "seconds");
    const auto speed = args.number("--most-speed", 1, 1e9, "bytes a second");
    if (!wait || !speed) {
        return wait ? speed.error() : wait.error();
    }
    options.patienceSeconds = static_cast<int>(wait->value_or(120));
    options.mostBytesASecond = static_cast<int>(speed->value_or(0));
    auto open = openLesson(args, *args.operand(0), services, streams);
    if (!open) {
        return open.error();
    }
    auto stage = open->library->staging();
    if (!stage) {
        return stage.error();
    }
    session::LessonExchange::ExportOptions what;
    what.audience = args.has("--own-device") ? session::Audience::ownDevice : session::Audience::someoneElse;
    what.withFilms = !args.has("--without-films");
    what.withHealth = args.has("--with-health");
    what.coverHeads = args.has("--cover-heads");
    const fs::path file = stage->path() / "lesson";
    base::Result<transfer::SendReceipt> receipt = transfer::SendReceipt{};
    {
        const ProgressLine line(services, streams.err);
        session::LessonExchange exchange(*open->library, *services.clock);
        const auto written = exchange.exportLesson(open->lesson.id, file, what, line.progress());
        if (!written) {
            return written.error();
        }
        options.ready = [&](const transfer::Ticket& ticket) {
            const std::string text = ticket.text();
            if (services.unicode && services.showProgress) {
                if (const auto code = transfer::qrCode(text)) {
                    for (const std::string& row_ : transfer::qrLines(*code)) {
                        streams.out << row_ << "\n";
                    }
                }
            }
            streams.out << "On the other device: plumbmark receive " << text << std::endl;
        };
        receipt = transfer::sendFile(file, options, line.progress());
    }
    if (!receipt) {
        return receipt.error();
    }
    streams.out << "Sent and received, " << plural(receipt->connections, "connection", "connections")
                << ".\n";
    return kDone;
}

/// The ticket in a photo or film of the other device's screen.
base::Result<std::string> ticketInPicture(const std::string& file) {
    auto clip = video::Clip::open(fs::path(file));
    if (!clip) {
        return clip.error();
    }
    std::optional<std::string> text;
    const auto read = (*clip)->stream(0, (*clip)->info().frames - 1, [&](const video::Frame& frame) {
        const video::PlaneView grey = frame.luma();
        text = transfer::textInQrCode({grey.data, grey.width, grey.height, grey.stride},
                                      transfer::kTicketBeginning);
        return !text;
    });
    if (text) {
        return *text;
    }
    if (!read) {
        return read.error();
    }
    return base::inputError(
        "transfer.no_code",
        "No code of a sending can be read in \"" + fs::path(file).filename().string() +
            "\"; hold the camera so that the code is sharp and fills a third of the picture.");
}

base::Result<int> runReceive(const Arguments& args, const Services& services, Streams streams) {
    const auto picture = args.value("--picture");
    if (picture.has_value() == args.operand(0).has_value()) {
        return base::inputError("transfer.ticket",
                                "Give the ticket that the other device shows, or a picture of its code with "
                                "--picture (one of the two).");
    }
    const auto text = picture ? ticketInPicture(*picture) : base::Result<std::string>(*args.operand(0));
    if (!text) {
        return text.error();
    }
    const auto ticket = transfer::Ticket::fromText(*text);
    if (!ticket) {
        return base::inputError("transfer.ticket",
                                "This is no ticket of a sending; copy all of it, from plumbmark: to "
                                "its end.");
    }
    const auto wait = args.number("--wait", 1, 3600, "seconds");
    if (!wait) {
        return wait.error();
    }
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    transfer::ReceiveOptions options;
    options.folder = (*library)->folder() / "receiving";
    options.patienceSeconds = static_cast<int>(wait->value_or(60));
    if (auto made = base::makeFolders(options.folder); !made) {
        return made.error();
    }
    const ProgressLine line(services, streams.err);
    const auto received = transfer::receiveFile(*ticket, options, line.progress());
    if (!received) {
        return received.error();
    }
    session::LessonExchange exchange(**library, *services.clock);
    const auto receipt = exchange.import(received->file, line.progress());
    std::error_code ignored;
    fs::remove(received->file, ignored);
    if (!receipt) {
        return receipt.error();
    }
    if (const auto name = args.value("--remember"); name && !receipt->file.signedBy.empty()) {
        if (auto noted = exchange.rememberSender(receipt->file.signedBy, *name); !noted) {
            return noted.error();
        }
    }
    streams.out << receipt->origin() << " " << receipt->sentence() << "\n";
    for (const auto& id : receipt->lessons) {
        streams.out << "Lesson " << id.hex().substr(0, kShortId) << "\n";
    }
    return kDone;
}

} // namespace

std::vector<Command> keepingCommands() {
    return {
        {{"consent",
          "Notes what a player agreed to, and shows what is on record.",
          {"PLAYER"},
          {{"--scope", "WORDS", "film,analyse,keep,share,teach,face: what it is for"},
           {"--until", "DAY", "its last day; without it a year"},
           {"--guardian", "NAME", "who agreed, for a minor"},
           {"--withdraw", "", "the consent was taken back"},
           kLibrary},
          {"plumbmark consent \"Demo player\" --scope film,analyse,keep,share --until 2027-06-30",
           "plumbmark consent \"Demo player\" --withdraw"}},
         runConsent},
        {{"backup",
          "Makes a whole, checked copy of the library, beside it or in FOLDER.",
          {"[FOLDER]"},
          {{"--films", "", "read every film again while checking"}, kLibrary},
          {"plumbmark backup", "plumbmark backup /media/stick"}},
         runBackup},
        {{"restore",
          "Shows the backups, or puts one in the library's place; what was there is kept.",
          {"[BACKUP]"},
          {kLibrary},
          {"plumbmark restore", "plumbmark restore latest"}},
         runRestore},
        {{"check",
          "Checks the library: database, records, lists and, if asked, every film.",
          {},
          {{"--films", "", "read every film's bytes"},
           {"--repair", "", "make the lists anew first"},
           kLibrary},
          {"plumbmark check --films"}},
         runCheck},
        {{"sync",
          "Exchanges with other devices through a shared folder; what was missed is caught up with.",
          {"FOLDER"},
          {{"--player", "NAME",
            "send only this player's lessons (needs a consent to share); else everything"},
           {"--with-health", "", "with --player: pain and body notes too"},
           {"--cover-heads", "", "with --player: only clips with the head covered (see \"lesson cover\")"},
           {"--without-films", "", "leave the clips out"},
           {"--wait", "SECONDS", "wait so long for the folder to be there"},
           kPassphrase,
           kLibrary},
          {"plumbmark sync /media/stick", "plumbmark sync ~/Shared --player \"Demo player\""}},
         runSync},
        {{"tidy",
          "Shows clips that are kept past their time, those of minors first, or erases them.",
          {},
          {{"--erase", "CLIP", "one of the list with marks and numbers, or all"}, kLibrary},
          {"plumbmark tidy", "plumbmark tidy --erase 3f2a91c0"}},
         runTidy},
        {{"settle",
          "Shows what two devices put differently, or says which VERSION holds.",
          {"[VERSION]"},
          {kLibrary},
          {"plumbmark settle", "plumbmark settle 3f2a91c0"}},
         runSettle},
        {{"send",
          "Sends a lesson to a device beside this one, encrypted, with a ticket for this one time.",
          {"LESSON"},
          {{"--own-device", "", "it is a device of yours: no consent to share is needed"},
           {"--with-health", "", "pain and body notes too"},
           {"--cover-heads", "", "clips with the head covered (see \"lesson cover\")"},
           {"--without-films", "", "leave the clips out"},
           {"--address", "IPV4", "use this network only"},
           {"--wait", "SECONDS", "how long the ticket holds; without it 120"},
           {"--most-speed", "BYTES", "a second, at most"},
           kLibrary},
          {"plumbmark send latest --own-device"}},
         runSend},
        {{"receive",
          "Takes a lesson from the device that shows the ticket; after a cut it goes on.",
          {"[TICKET]"},
          {{"--picture", "FILE", "a photo or film of the other device's code, instead of the ticket"},
           {"--remember", "NAME", "whose device it is: its lessons are then told as \"from NAME\""},
           {"--wait", "SECONDS", "how long to try without getting further; without it 60"},
           kLibrary},
          {"plumbmark receive plumbmark:192.168.1.7:40123:...", "plumbmark receive --picture photo.jpg"}},
         runReceive},
    };
}

} // namespace plumbmark::cli
