// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/lesson_exchange.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <sstream>

#include "base/files.h"
#include "base/guarded.h"
#include "exporting/lesson_page.h"
#include "lessonfile/seal.h"
#include "lessonfile/signature.h"
#include "records/coaching_kinds.h"
#include "records/fact.h"
#include "records/film_copy.h"
#include "records/kinds.h"
#include "records/merge.h"
#include "records/review.h"
#include "session/demonstration.h"
#include "session/detail/no_such_thing.h"
#include "session/film_sharing.h"
#include "session/review_desk.h"

namespace plumbmark::session {

namespace fs = std::filesystem;

namespace {

constexpr const char* kKeyFile = "device.key";
constexpr const char* kSendersFile = "known-devices.txt"; // <public key> <name>, a line each

/// The lesson's clips whose film is here; a lesson that came without its films goes on without them.
base::Result<std::vector<store::ClipRow>> clipsHere(store::Library& library, const base::Id& lesson) {
    std::vector<store::ClipRow> here;
    const auto shots = library.shots(lesson);
    if (!shots) {
        return shots.error();
    }
    for (const store::ShotRow& shot : *shots) {
        const auto clips = library.clips(shot.id);
        if (!clips) {
            return clips.error();
        }
        std::copy_if(clips->begin(), clips->end(), std::back_inserter(here),
                     [](const store::ClipRow& clip) { return clip.filmHere; });
    }
    return here;
}

base::Error faceStays() {
    return base::inputError("consent.face",
                            "Nothing was shared: the guardian did not agree to the face being "
                            "seen. Cover the heads, or leave the clips out.");
}

/// Reviews that were replaced and voices that none of the standing ones names: what the coach took back is
/// nobody else's.
base::Result<std::set<base::Id>> takenBack(store::Library& library, const base::Id& lesson) {
    const auto reviews = library.factsOf(lesson, records::kind::review);
    const auto voices = library.factsOf(lesson, records::kind::voice);
    if (!reviews || !voices) {
        return reviews ? voices.error() : reviews.error();
    }
    std::set<base::Id> back;
    for (const auto* facts : {&*reviews, &*voices}) {
        for (const records::Fact& fact : *facts) {
            back.insert(fact.id);
        }
    }
    for (const records::Fact& fact : records::heads(*reviews)) {
        back.erase(fact.id);
        if (const auto review = records::reviewOf(fact.body)) {
            if (review->voice) {
                back.erase(*review->voice);
            }
            for (const records::VoicePiece& piece : review->pieces) {
                back.erase(piece.voice);
            }
        }
    }
    return back;
}

/// What of the lesson's records travels: all but what tells about health, unless that was chosen, and, to
/// others, what was taken back; of the player the consents.
base::Result<std::vector<std::string>> linesOf(store::Library& library, const base::Id& lesson,
                                               const base::Id& player, bool withHealth, bool toOthers) {
    const auto back = toOthers ? takenBack(library, lesson) : base::Result(std::set<base::Id>());
    if (!back) {
        return back.error();
    }
    auto lines = library.linesFor(lesson);
    if (!lines) {
        return lines.error();
    }
    std::vector<std::string> chosen;
    for (std::string& line : *lines) {
        const auto record = records::recordFromText(line);
        if (!record) {
            return record.error();
        }
        if (record->fact && back->contains(record->fact->id)) {
            continue;
        }
        if (withHealth || !record->fact || !tellsHealth(*record->fact)) {
            chosen.push_back(std::move(line));
        }
    }
    std::vector<std::string_view> kinds{records::kind::consent};
    if (withHealth) {
        kinds.insert(kinds.end(), records::healthKinds().begin(), records::healthKinds().end());
    }
    for (const std::string_view kind : kinds) {
        const auto facts = library.factsOf(player, kind);
        if (!facts) {
            return facts.error();
        }
        for (const records::Fact& fact : *facts) {
            auto line = toText(fact);
            if (!line) {
                return line.error();
            }
            chosen.push_back(std::move(*line));
        }
    }
    std::sort(chosen.begin(), chosen.end());
    chosen.erase(std::unique(chosen.begin(), chosen.end()), chosen.end());
    return chosen;
}

} // namespace

base::Result<std::vector<records::Fact>> LessonExchange::consents(const base::Id& player) {
    return base::guarded([&]() -> base::Result<std::vector<records::Fact>> {
        auto facts = library_->factsOf(player, records::kind::consent);
        if (!facts) {
            return facts.error();
        }
        return records::heads(*facts);
    });
}

base::Result<void> LessonExchange::mayShare(const base::Id& player) {
    return base::guarded([&]() -> base::Result<void> {
        const auto standing = standingOf(player);
        if (!standing) {
            return standing.error();
        }
        return records::allows(standing->consents, records::scope::share, base::isoDate(clock_->now()),
                               standing->birthYear);
    });
}

base::Result<LessonExchange::Standing> LessonExchange::standingOf(const base::Id& player) {
    auto standing = consents(player);
    if (!standing) {
        return standing.error();
    }
    const auto cards = library_->factsOf(player, records::kind::body_card);
    if (!cards) {
        return cards.error();
    }
    Standing answer{std::move(*standing), std::nullopt};
    // Where two devices tell different years, the younger one counts.
    for (const records::Fact& card : records::heads(*cards)) {
        const auto year = records::bodyCardOf(card.body).birthYear;
        answer.birthYear = std::max(answer.birthYear, year);
    }
    return answer;
}

base::Result<records::Age> LessonExchange::ageOf(const base::Id& player) {
    return base::guarded([&]() -> base::Result<records::Age> {
        const auto standing = standingOf(player);
        if (!standing) {
            return standing.error();
        }
        return records::ageOf(standing->consents, standing->birthYear, base::isoDate(clock_->now()));
    });
}

base::Result<bool> LessonExchange::mayShowFace(const base::Id& player) {
    return base::guarded([&]() -> base::Result<bool> {
        const auto standing = standingOf(player);
        if (!standing) {
            return standing.error();
        }
        return records::mayShowFace(standing->consents, base::isoDate(clock_->now()), standing->birthYear);
    });
}

base::Result<void> LessonExchange::noteConsent(const base::Id& player, const records::Consent& consent) {
    return base::guarded([&] { return noted(player, consent); });
}

base::Result<void> LessonExchange::noted(const base::Id& player, const records::Consent& consent) {
    if (auto good = check(consent); !good) {
        return good;
    }
    const auto entity = library_->entity(player);
    if (!entity) {
        return entity.error();
    }
    if (!*entity || (*entity)->kind != records::kind::player) {
        return detail::noSuchThing();
    }
    const auto standing = standingOf(player);
    if (!standing) {
        return standing.error();
    }
    if (!consent.minor && !consent.withdrawn &&
        records::ageOf({}, standing->birthYear, consent.day) == records::Age::minor) {
        return base::inputError("consent.guardian",
                                "By the year of birth on the body card the player is not of age yet, so a "
                                "guardian must agree; say who.");
    }
    std::vector<base::Id> before;
    for (const records::Fact& fact : standing->consents) {
        before.push_back(fact.id);
    }
    return library_->add({library_->make(records::kind::consent, {player}, bodyOf(consent), before)});
}

/// The lesson's films into `contents`; copies made for this export lie in `staging`.
base::Result<void> LessonExchange::addFilms(const base::Id& lesson, const ExportOptions& options,
                                            const fs::path& staging, const base::Progress& progress,
                                            lessonfile::Contents& contents) {
    const auto clips = clipsHere(*library_, lesson);
    if (!clips) {
        return clips.error();
    }
    std::vector<records::Record> copies;
    std::set<std::string> taken;
    for (const store::ClipRow& clip : *clips) {
        lessonfile::Film film{clip.film, clip.file};
        if (options.audience == Audience::someoneElse || options.coverHeads) {
            auto shared = filmForSomebody(*library_, clip, options.coverHeads, staging, progress);
            if (!shared) {
                return shared.error();
            }
            if (!*shared) {
                continue;
            }
            film = std::move((*shared)->film);
            if ((*shared)->copy) {
                auto line = toText(*(*shared)->copy);
                if (!line) {
                    return line.error();
                }
                contents.records.push_back(std::move(*line));
                copies.push_back({std::move((*shared)->copy), std::nullopt});
            }
        }
        if (taken.insert(film.sha256).second) {
            contents.films.push_back(std::move(film));
        }
    }
    std::sort(contents.records.begin(), contents.records.end());
    contents.records.erase(std::unique(contents.records.begin(), contents.records.end()),
                           contents.records.end());
    // Known here too: what comes back under the copy's hash is then the same clip.
    if (!copies.empty() && !library_->readOnly()) {
        if (const auto kept = library_->merge(copies); !kept) {
            return kept.error();
        }
    }
    return {};
}

base::Result<lessonfile::Summary> LessonExchange::exportLesson(const base::Id& lesson, const fs::path& target,
                                                               const ExportOptions& options,
                                                               const base::Progress& progress) {
    return base::guarded([&] { return exported(lesson, target, options, progress); });
}

base::Result<lessonfile::Summary> LessonExchange::exported(const base::Id& lesson, const fs::path& target,
                                                           const ExportOptions& options,
                                                           const base::Progress& progress) {
    const auto entity = library_->entity(lesson);
    if (!entity) {
        return entity.error();
    }
    if (!*entity || (*entity)->kind != records::kind::lesson || (*entity)->path.empty()) {
        return detail::noSuchThing();
    }
    const base::Id player = (*entity)->path.front();
    bool showFaces = true;
    if (options.audience == Audience::someoneElse) {
        if (auto may = mayShare(player); !may) {
            return may.error();
        }
        const auto face = mayShowFace(player);
        if (!face) {
            return face.error();
        }
        if (!*face && !options.coverHeads && (options.withFilms || options.sheet)) {
            return faceStays();
        }
        showFaces = *face && !options.coverHeads;
        if (options.withFilms) {
            if (auto may = Demonstrations(*library_, *clock_).mayGoOut(lesson); !may) {
                return may.error();
            }
        }
    } else {
        showFaces = !options.coverHeads;
    }
    if (!showFaces && options.sheet) {
        return base::inputError("sheet.face", "The key-position sheet shows the face; leave it out.");
    }
    const bool toOthers = options.audience == Audience::someoneElse;
    if (toOthers && !library_->readOnly()) {
        if (auto forgotten = ReviewDesk(*library_, nullptr).forgetCutWords(lesson); !forgotten) {
            return forgotten.error();
        }
    }
    lessonfile::Contents contents;
    contents.title = records::lessonOf((*entity)->fields).title;
    auto lines = linesOf(*library_, lesson, player, options.withHealth, toOthers);
    if (!lines) {
        return lines.error();
    }
    contents.records = std::move(*lines);
    contents.sheet = options.sheet;
    if (options.withPage) {
        ReviewDesk desk(*library_, nullptr);
        const auto story = desk.story(
            lesson,
            {.mostStills = showFaces ? std::size_t{4} : std::size_t{0}, .withHealth = options.withHealth},
            {nullptr, progress.cancel});
        if (!story) {
            return story.error();
        }
        if (!*story) {
            return base::failure("cancelled", "Stopped before the end; nothing was written.");
        }
        contents.page = exporting::lessonPage(**story);
    }
    auto stage = library_->staging();
    if (!stage) {
        return stage.error();
    }
    if (options.withFilms) {
        if (auto added = addFilms(lesson, options, stage->path(), progress, contents); !added) {
            return added.error();
        }
    }
    const auto carried = library_->carried(lesson);
    if (!carried) {
        return carried.error();
    }
    for (const store::CarriedPart& part : *carried) {
        std::error_code ignored;
        if (showFaces && fs::is_regular_file(part.file, ignored)) {
            contents.carried.push_back({{part.path, part.role, part.bytes, part.sha256}, part.file});
        }
    }
    lessonfile::WriteOptions write;
    write.clock = clock_;
    std::optional<lessonfile::DeviceKey> key;
    if (!library_->readOnly()) {
        auto opened = lessonfile::DeviceKey::open(library_->folder() / kKeyFile);
        if (!opened) {
            return opened.error();
        }
        key = std::move(*opened);
        write.key = &*key;
    }
    if (options.passphrase.empty()) {
        return lessonfile::write(target, contents, write, progress);
    }
    const auto written = lessonfile::write(stage->path() / "plain", contents, write, progress);
    if (!written) {
        return written;
    }
    if (auto sealed = lessonfile::seal(stage->path() / "plain", target, options.passphrase, {}, progress);
        !sealed) {
        return sealed.error();
    }
    return written;
}

/// The file itself, or what is in it when it is sealed.
base::Result<void> LessonExchange::readFrom(const fs::path& file, const fs::path& staging,
                                            const std::string& passphrase, const base::Progress& progress,
                                            fs::path& plain) {
    plain = file;
    if (!lessonfile::isSealed(file)) {
        return {};
    }
    if (passphrase.empty()) {
        return base::inputError("seal.passphrase_needed",
                                "This lesson file is sealed; give the passphrase it was sealed with.");
    }
    plain = staging / "opened";
    return lessonfile::unseal(file, plain, passphrase, progress);
}

base::Result<lessonfile::Summary> LessonExchange::verify(const fs::path& file, const base::Progress& progress,
                                                         const std::string& passphrase) {
    return base::guarded([&]() -> base::Result<lessonfile::Summary> {
        auto staging = library_->staging();
        if (!staging) {
            return staging.error();
        }
        fs::path plain;
        if (auto opened = readFrom(file, staging->path(), passphrase, progress, plain); !opened) {
            return opened.error();
        }
        return lessonfile::verify(plain, {}, progress);
    });
}

base::Result<LessonExchange::Receipt>
LessonExchange::import(const fs::path& file, const base::Progress& progress, const std::string& passphrase) {
    return base::guarded([&] { return imported(file, progress, passphrase); });
}

base::Result<LessonExchange::Receipt> LessonExchange::imported(const fs::path& file,
                                                               const base::Progress& progress,
                                                               const std::string& passphrase) {
    if (library_->readOnly()) {
        return base::inputError("library.read_only", library_->notice());
    }
    auto staging = library_->staging();
    if (!staging) {
        return staging.error();
    }
    fs::path plain;
    if (auto opened = readFrom(file, staging->path(), passphrase, progress, plain); !opened) {
        return opened.error();
    }
    auto staged = lessonfile::readInto(plain, staging->path(), {}, progress);
    if (!staged) {
        return staged.error();
    }
    Receipt receipt;
    std::vector<records::Record> records;
    std::set<std::string> named;
    std::map<std::string, std::string> copyOf; // a copy's hash, and that of the film it stands for
    for (const std::string& line : staged->records) {
        auto record = records::recordFromText(line);
        if (!record) {
            return record.error();
        }
        if (record->fact && record->fact->kind == records::kind::lesson) {
            receipt.lessons.push_back(record->fact->id);
        }
        if (record->fact && record->fact->kind == records::kind::clip) {
            named.insert(records::textMember(record->fact->body, "sha256").value_or(""));
        }
        if (record->fact && record->fact->kind == records::kind::filmCopy) {
            if (const auto copy = records::filmCopyOf(record->fact->body)) {
                named.insert(copy->sha256);
                copyOf[copy->sha256] = copy->of;
            }
        }
        records.push_back(std::move(*record));
    }
    // Films first, records after: a record never names a film that is not there yet. A film without its
    // record, should the power fail between the two, goes with the next start.
    for (const lessonfile::Film& film : staged->films) {
        if (named.count(film.sha256) == 0) {
            receipt.ignored.push_back("films/" + film.sha256);
            continue;
        }
        std::error_code ignored;
        // A copy of a film that is here brings nothing new.
        const auto copy = copyOf.find(film.sha256);
        if (fs::is_regular_file(library_->filmPath(film.sha256), ignored) ||
            (copy != copyOf.end() && fs::is_regular_file(library_->filmPath(copy->second), ignored))) {
            ++receipt.filmsSame;
            continue;
        }
        if (auto adopted = library_->adoptFilm(film.file, film.sha256); !adopted) {
            return adopted.error();
        }
        ++receipt.filmsNew;
    }
    const auto merged = library_->merge(records);
    if (!merged) {
        return merged.error();
    }
    receipt.records = *merged;
    // Parts of a newer version stay with the lesson and go out with it again.
    std::vector<store::CarriedPart> parts;
    for (const lessonfile::Carried& carried : staged->carried) {
        receipt.carried.push_back(carried.part.path);
        if (auto adopted = library_->adoptFilm(carried.file, carried.part.sha256); !adopted) {
            return adopted.error();
        }
        parts.push_back({carried.part.path, carried.part.role, carried.part.sha256, carried.part.size, {}});
    }
    for (const base::Id& lesson : receipt.lessons) {
        const auto here = library_->fact(lesson);
        if (!here) {
            return here.error();
        }
        if (!*here) {
            continue; // erased here
        }
        if (auto kept = library_->carry(lesson, parts); !kept) {
            return kept.error();
        }
    }
    receipt.file = std::move(staged->summary);
    receipt.lines = std::move(staged->records);
    if (const auto name = senderOf(receipt.file.signedBy)) {
        receipt.sender = Sender::known;
        receipt.senderName = *name;
    }
    return receipt;
}

std::optional<std::string> LessonExchange::senderOf(const std::string& publicKey) const {
    if (publicKey.empty()) {
        return std::nullopt;
    }
    std::ifstream in(library_->folder() / kSendersFile);
    for (std::string line; std::getline(in, line);) {
        if (line.size() > publicKey.size() && line.starts_with(publicKey) && line[publicKey.size()] == ' ') {
            return line.substr(publicKey.size() + 1);
        }
    }
    return std::nullopt;
}

base::Result<void> LessonExchange::rememberSender(const std::string& publicKey, const std::string& name) {
    if (publicKey.size() != 64 || name.empty() || name.size() > 200 || name.find('\n') != std::string::npos) {
        return base::inputError("sender.bad", "A sender needs a signed file and a short name; try again.");
    }
    return base::guarded([&]() -> base::Result<void> {
        const fs::path file = library_->folder() / kSendersFile;
        std::string text;
        std::error_code error;
        if (fs::exists(file, error)) {
            std::ifstream in(file);
            for (std::string line; std::getline(in, line);) {
                if (!line.starts_with(publicKey)) {
                    text += line + "\n";
                }
            }
            if (!in.eof()) { // written anew from half of it, names would be lost
                return base::failure("file.unreadable",
                                     "The names of known devices cannot be read, so nothing "
                                     "was changed; check the disk and try again.");
            }
        }
        return base::replaceFile(file, text + publicKey + " " + name + "\n");
    });
}

std::string LessonExchange::Receipt::sentence() const {
    std::string text = std::to_string(records.added) + " new, " + std::to_string(records.same) + " the same";
    if (records.erased > 0) {
        text += ", " + std::to_string(records.erased) + " erased";
    }
    if (records.refused > 0) {
        text += ", " + std::to_string(records.refused) + " not taken because they were erased here";
    }
    if (records.needsYou > 0) {
        text +=
            ", " + std::to_string(records.needsYou) + (records.needsYou == 1 ? " needs you" : " need you");
    }
    return text + ".";
}

std::string LessonExchange::Receipt::origin() const {
    if (sender == Sender::known) {
        return "Whole, from " + senderName + ".";
    }
    return file.signedBy.empty()
               ? "Whole, sender unknown (not signed)."
               : "Whole, sender unknown (key " + lessonfile::keyForPeople(file.signedBy) + ").";
}

} // namespace plumbmark::session
