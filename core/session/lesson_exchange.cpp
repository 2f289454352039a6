// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/lesson_exchange.h"

#include <set>

#include "exporting/lesson_page.h"
#include "records/fact.h"
#include "records/kinds.h"
#include "session/review_desk.h"

namespace plumbmark::session {

base::Result<lessonfile::Summary> LessonExchange::exportLesson(const base::Id& lesson,
                                                               const std::filesystem::path& target,
                                                               const ExportOptions& options,
                                                               const base::Progress& progress) {
    const auto entity = library_->entity(lesson);
    if (!entity) {
        return entity.error();
    }
    if (!*entity || (*entity)->kind != records::kind::lesson) {
        return base::inputError("book.no_such_thing",
                                "It is not in the library (any more); choose again from the list.");
    }
    lessonfile::Contents contents;
    contents.title = records::lessonOf((*entity)->fields).title;
    auto lines = library_->linesFor(lesson);
    if (!lines) {
        return lines.error();
    }
    contents.records = std::move(*lines);
    contents.sheet = options.sheet;
    if (options.withPage) {
        ReviewDesk desk(*library_, nullptr);
        const auto story = desk.story(lesson, {.mostStills = 4}, {nullptr, progress.cancel});
        if (!story) {
            return story.error();
        }
        if (!*story) {
            return base::failure("cancelled", "Stopped before the end; nothing was written.");
        }
        contents.page = exporting::lessonPage(**story);
    }
    if (options.withFilms) {
        const auto shots = library_->shots(lesson);
        if (!shots) {
            return shots.error();
        }
        for (const store::ShotRow& shot : *shots) {
            const auto clips = library_->clips(shot.id);
            if (!clips) {
                return clips.error();
            }
            for (const store::ClipRow& clip : *clips) {
                if (clip.filmHere) { // a lesson that came without its films goes on without them
                    contents.films.push_back({clip.clip.sha256, clip.file});
                }
            }
        }
    }
    return lessonfile::write(target, contents, {}, progress);
}

base::Result<lessonfile::Summary> LessonExchange::verify(const std::filesystem::path& file,
                                                         const base::Progress& progress) {
    return lessonfile::verify(file, {}, progress);
}

base::Result<LessonExchange::Receipt> LessonExchange::import(const std::filesystem::path& file,
                                                             const base::Progress& progress) {
    if (library_->readOnly()) {
        return base::inputError("library.read_only", library_->notice());
    }
    auto staging = library_->staging();
    if (!staging) {
        return staging.error();
    }
    auto staged = lessonfile::readInto(file, staging->path(), {}, progress);
    if (!staged) {
        return staged.error();
    }
    Receipt receipt;
    std::vector<records::Record> records;
    std::set<std::string> named;
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
        if (std::filesystem::is_regular_file(library_->filmPath(film.sha256), ignored)) {
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
    receipt.file = std::move(staged->summary);
    receipt.ignored.insert(receipt.ignored.end(), staged->ignored.begin(), staged->ignored.end());
    return receipt;
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

} // namespace plumbmark::session
