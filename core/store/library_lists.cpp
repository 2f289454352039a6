// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Questions to the library: lists, single things, lines.
#include <algorithm>

#include "store/detail/case_fold.h"
#include "store/detail/sqlite_library.h"

namespace plumbmark::store::detail {

namespace fs = std::filesystem;
using base::Id;
using records::Fact;

base::Error damaged() {
    return databaseError(SQLITE_CORRUPT);
}

std::optional<Id> idOf(const Statement& statement, int column) {
    return Id::fromHex(statement.view(column));
}

base::Result<std::vector<Fact>> SqliteLibrary::factsFrom(Statement& statement, int column) {
    std::vector<Fact> facts;
    auto read = forEachRow(statement, [&](Statement& row) -> base::Result<void> {
        auto record = records::recordFromText(row.view(column));
        if (!record || !record->fact) {
            return damaged();
        }
        facts.push_back(std::move(*record->fact));
        return {};
    });
    if (!read) {
        return read.error();
    }
    std::sort(facts.begin(), facts.end(), [](const Fact& a, const Fact& b) {
        return earlier(a.at, b.at) || (!earlier(b.at, a.at) && a.id < b.id);
    });
    return facts;
}

base::Result<std::optional<Fact>> SqliteLibrary::fact(const Id& id) {
    const std::lock_guard guard(mutex_);
    const auto line = lineOf(id);
    if (!line) {
        return line.error();
    }
    if (!*line) {
        return std::optional<Fact>();
    }
    auto record = records::recordFromText(**line);
    if (!record || !record->fact) {
        return damaged();
    }
    return std::move(record->fact);
}

base::Result<std::vector<Fact>> SqliteLibrary::factsOf(const Id& owner, std::string_view kind) {
    const std::lock_guard guard(mutex_);
    auto query = db_.query("SELECT line FROM fact WHERE owner = ?1 AND kind = ?2");
    query.bind(1, owner.hex()).bind(2, kind);
    return factsFrom(query, 0);
}

base::Result<std::optional<records::Entity>> SqliteLibrary::entity(const Id& id) {
    const std::lock_guard guard(mutex_);
    const auto maker = fact(id);
    if (!maker) {
        return maker.error();
    }
    if (!*maker || !isMaker((*maker)->kind)) {
        return std::optional<records::Entity>();
    }
    const auto about = factsOf(id, records::kind::set);
    if (!about) {
        return about.error();
    }
    return std::optional(records::foldEntity(**maker, *about));
}

base::Result<std::vector<PlayerRow>> SqliteLibrary::players(std::string_view search) {
    const std::lock_guard guard(mutex_);
    auto query = db_.query(
        "SELECT id, name, hand, stature_m, (SELECT count(*) FROM lesson WHERE lesson.player = player.id), "
        "(SELECT max(day) FROM lesson WHERE lesson.player = player.id), disputed > 0 FROM player "
        "WHERE ?1 = '' OR instr(words, ?1) > 0 ORDER BY words, id");
    query.bind(1, foldCase(search));
    std::vector<PlayerRow> rows;
    auto read = forEachRow(query, [&](Statement& row) -> base::Result<void> {
        const auto id = idOf(row, 0);
        if (!id) {
            return damaged();
        }
        rows.push_back({*id, row.text(1), marks::handFromName(row.text(2)),
                        row.isNull(3) ? std::nullopt : std::optional(row.number(3)),
                        static_cast<int>(row.integer(4)), row.text(5), row.integer(6) != 0});
        return {};
    });
    if (!read) {
        return read.error();
    }
    return rows;
}

base::Result<std::vector<LessonRow>> SqliteLibrary::lessons(std::string_view search,
                                                            std::optional<Id> player) {
    const std::lock_guard guard(mutex_);
    auto query = db_.query(
        "SELECT l.id, l.player, p.name, l.title, l.day, l.shots, l.clips, l.disputed + l.within > 0 "
        "FROM lesson l JOIN player p ON p.id = l.player "
        "WHERE (?1 = '' OR instr(l.words, ?1) > 0 OR instr(p.words, ?1) > 0) AND (?2 IS NULL OR l.player = "
        "?2) "
        "ORDER BY l.day DESC, l.made_ms DESC, l.id");
    query.bind(1, foldCase(search));
    if (player) {
        query.bind(2, player->hex());
    } else {
        query.bindNull(2);
    }
    std::vector<LessonRow> rows;
    auto read = forEachRow(query, [&](Statement& row) -> base::Result<void> {
        const auto id = idOf(row, 0);
        const auto owner = idOf(row, 1);
        if (!id || !owner) {
            return damaged();
        }
        rows.push_back({*id, *owner, row.text(2), row.text(3), row.text(4), static_cast<int>(row.integer(5)),
                        static_cast<int>(row.integer(6)), row.integer(7) != 0});
        return {};
    });
    if (!read) {
        return read.error();
    }
    return rows;
}

base::Result<std::vector<ShotRow>> SqliteLibrary::shots(const Id& lesson) {
    const std::lock_guard guard(mutex_);
    auto query =
        db_.query("SELECT id, disputed > 0 OR EXISTS (SELECT 1 FROM clip c WHERE c.shot = shot.id AND "
                  "c.disputed > 0) FROM shot WHERE lesson = ?1 ORDER BY made_ms, made_n, made_device, id");
    query.bind(1, lesson.hex());
    std::vector<ShotRow> rows;
    auto read = forEachRow(query, [&](Statement& row) -> base::Result<void> {
        const auto id = idOf(row, 0);
        if (!id) {
            return damaged();
        }
        const auto shot = entity(*id);
        if (!shot) {
            return shot.error();
        }
        if (*shot) {
            rows.push_back({*id, lesson, static_cast<int>(rows.size()) + 1, records::shotOf((*shot)->fields),
                            row.integer(1) != 0});
        }
        return {};
    });
    if (!read) {
        return read.error();
    }
    return rows;
}

base::Result<std::vector<ClipRow>> SqliteLibrary::clipRows(Statement& query) {
    std::vector<ClipRow> rows;
    auto read = forEachRow(query, [&](Statement& row) -> base::Result<void> {
        const auto id = idOf(row, 0);
        const auto shot = idOf(row, 1);
        if (!id || !shot) {
            return damaged();
        }
        const auto found = entity(*id);
        if (!found) {
            return found.error();
        }
        const auto clip = *found ? records::clipOf((*found)->fields) : std::nullopt;
        if (!clip) {
            return {};
        }
        std::error_code ignored;
        ClipRow made{*id, *shot, *clip, filmPath(clip->sha256), false, clip->sha256, row.integer(2) > 0};
        made.filmHere = fs::is_regular_file(made.file, ignored);
        if (!made.filmHere) {
            // A copy shows the same frames; one with nothing covered shows more of them.
            auto copies = db_.query("SELECT sha256 FROM film_copy WHERE clip = ?1 ORDER BY covered, sha256");
            copies.bind(1, id->hex());
            auto seen = forEachRow(copies, [&](Statement& copy) {
                const fs::path file = filmPath(copy.view(0));
                if (!made.filmHere && fs::is_regular_file(file, ignored)) {
                    made.file = file;
                    made.film = copy.text(0);
                    made.filmHere = true;
                }
            });
            if (!seen) {
                return seen;
            }
        }
        rows.push_back(std::move(made));
        return {};
    });
    if (!read) {
        return read.error();
    }
    return rows;
}

base::Result<std::vector<ClipRow>> SqliteLibrary::clips(const Id& shot) {
    const std::lock_guard guard(mutex_);
    auto query = db_.query("SELECT id, shot, disputed FROM clip WHERE shot = ?1 ORDER BY made_ms, id");
    return clipRows(query.bind(1, shot.hex()));
}

base::Result<std::optional<ClipRow>> SqliteLibrary::clip(const Id& clip) {
    const std::lock_guard guard(mutex_);
    auto query = db_.query("SELECT id, shot, disputed FROM clip WHERE id = ?1");
    auto rows = clipRows(query.bind(1, clip.hex()));
    if (!rows) {
        return rows.error();
    }
    return rows->empty() ? std::optional<ClipRow>() : std::optional(std::move(rows->front()));
}

base::Result<std::vector<ClipRow>> SqliteLibrary::clipsOfFilm(std::string_view sha256) {
    const std::lock_guard guard(mutex_);
    auto query = db_.query("SELECT id, shot, disputed FROM clip WHERE sha256 = ?1 OR id IN (SELECT clip FROM "
                           "film_copy WHERE sha256 = ?1) ORDER BY made_ms, id");
    return clipRows(query.bind(1, sha256));
}

base::Result<void> SqliteLibrary::addGraves(Statement&& idAndDay, std::vector<std::string>& lines) {
    return forEachRow(idAndDay, [&](Statement& row) -> base::Result<void> {
        const auto id = idOf(row, 0);
        if (!id) {
            return damaged();
        }
        lines.push_back(toText(records::Tombstone{*id, row.text(1)}));
        return {};
    });
}

base::Result<std::vector<std::string>> SqliteLibrary::linesFrom(Statement& statement) {
    std::vector<std::string> lines;
    auto read = forEachRow(statement, [&](Statement& row) { lines.push_back(row.text(0)); });
    if (!read) {
        return read.error();
    }
    if (auto graves = addGraves(db_.query("SELECT id, day FROM tombstone"), lines); !graves) {
        return graves.error();
    }
    std::sort(lines.begin(), lines.end());
    return lines;
}

base::Result<std::vector<std::string>> SqliteLibrary::linesFor(const Id& id) {
    const std::lock_guard guard(mutex_);
    const auto self = fact(id);
    if (!self) {
        return self.error();
    }
    if (!*self) {
        return std::vector<std::string>();
    }
    // Of what it belongs to, only the makers and their fields travel: a student's lesson does not carry the
    // other lessons, nor health notes that hang on the player.
    static_assert(records::kMostPath == 8, "the statement below has a place for every owner");
    auto query =
        db_.query("SELECT line FROM fact WHERE id = ?1 OR id IN (SELECT fact FROM belongs WHERE owner = ?1) "
                  "OR id IN (?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9) "
                  "OR (kind = 'set' AND owner IN (?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9))");
    query.bind(1, id.hex());
    int place = 2;
    for (const Id& owner : (*self)->path) {
        query.bind(place++, owner.hex());
    }
    return linesFrom(query);
}

base::Result<std::vector<std::string>> SqliteLibrary::allLines() {
    const std::lock_guard guard(mutex_);
    auto query = db_.query("SELECT line FROM fact");
    return linesFrom(query);
}

} // namespace plumbmark::store::detail
