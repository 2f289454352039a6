// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "cli/library_access.h"

#include <algorithm>

#include "cli/text.h"

namespace plumbmark::cli {

base::Result<store::LibraryOptions> libraryOptions(const Arguments& args, const Services& services) {
    store::LibraryOptions options;
    options.clock = services.clock;
    options.ids = services.ids;
    if (const auto folder = args.value("--library")) {
        options.folder = *folder;
        return options;
    }
    const auto usual = services.libraryFolder ? services.libraryFolder() : store::defaultLibraryFolder();
    if (!usual) {
        return usual.error();
    }
    options.folder = *usual;
    return options;
}

base::Result<LibraryPointer> openLibrary(const Arguments& args, const Services& services, Streams streams) {
    const auto options = libraryOptions(args, services);
    if (!options) {
        return options.error();
    }
    auto library = store::Library::open(*options);
    if (library && !(*library)->notice().empty()) {
        streams.err << "plumbmark: Note: " << (*library)->notice() << "\n";
    }
    return library;
}

bool looksLikeId(const std::string& typed) {
    return typed.size() >= 4 && typed.size() <= 32 && std::all_of(typed.begin(), typed.end(), [](char c) {
               return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
           });
}

base::Result<store::LessonRow> findLesson(session::LessonBook& book, const std::string& typed) {
    if (typed == "latest") {
        const auto lessons = book.lessons();
        if (!lessons) {
            return lessons.error();
        }
        if (lessons->empty()) {
            return base::inputError("lesson.none",
                                    "There is no lesson yet; \"plumbmark lesson add\" makes one.");
        }
        return lessons->front();
    }
    if (!looksLikeId(typed)) {
        return base::inputError("lesson.id",
                                "\"" + shown(typed, 40) +
                                    "\" is no lesson's id; \"plumbmark lesson list\" shows them.");
    }
    const auto lessons = book.lessons();
    if (!lessons) {
        return lessons.error();
    }
    const store::LessonRow* found = nullptr;
    for (const auto& row : *lessons) {
        if (row.id.hex().starts_with(typed)) {
            if (found != nullptr) {
                return base::inputError("lesson.id", "More than one lesson's id begins with " + typed +
                                                         "; type more of it.");
            }
            found = &row;
        }
    }
    if (found == nullptr) {
        return base::inputError("lesson.id", "No lesson's id begins with " + typed +
                                                 "; \"plumbmark lesson list\" shows them.");
    }
    return *found;
}

base::Result<base::Id> findPlayer(store::Library& library, const std::string& name) {
    const auto players = library.players(name);
    if (!players) {
        return players.error();
    }
    std::optional<base::Id> found;
    for (const store::PlayerRow& row : *players) {
        if (row.name == name) {
            if (found) {
                return base::inputError("player.several",
                                        "There are several players of the name \"" + shown(name, 60) +
                                            "\"; give them different names in the app first.");
            }
            found = row.id;
        }
    }
    if (!found) {
        return base::inputError("player.none", "There is no player \"" + shown(name, 60) +
                                                   "\"; \"plumbmark lesson list\" shows the names.");
    }
    return *found;
}

base::Result<OpenLesson> openLesson(const Arguments& args, const std::string& typed, const Services& services,
                                    Streams streams) {
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    session::LessonBook book(**library);
    auto lesson = findLesson(book, typed);
    if (!lesson) {
        return lesson.error();
    }
    return OpenLesson{std::move(*library), std::move(*lesson)};
}

base::Result<std::optional<store::ClipRow>> findClip(session::LessonBook& book, const std::string& typed) {
    std::optional<store::ClipRow> found;
    const auto lessons = book.lessons();
    if (!lessons) {
        return lessons.error();
    }
    for (const auto& lesson : *lessons) {
        const auto shots = book.shots(lesson.id);
        if (!shots) {
            return shots.error();
        }
        for (const auto& shot : *shots) {
            const auto clips = book.clips(shot.id);
            if (!clips) {
                return clips.error();
            }
            for (const auto& clip : *clips) {
                if (!clip.id.hex().starts_with(typed)) {
                    continue;
                }
                if (found) {
                    return base::inputError("clip.id", "More than one clip's id begins with " + typed +
                                                           "; type more of it.");
                }
                found = clip;
            }
        }
    }
    return found;
}

} // namespace plumbmark::cli
