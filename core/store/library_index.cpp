// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// The tables that lists are made from. Everything here can be made again from the facts.
#include <algorithm>
#include <array>
#include <cmath>

#include "base/hash.h"
#include "records/consent.h"
#include "records/film_copy.h"
#include "store/detail/case_fold.h"
#include "store/detail/schema.h"
#include "store/detail/sqlite_library.h"

namespace plumbmark::store::detail {

using base::Id;
using records::Entity;
using records::Fact;

namespace {

/// The place in a clip that a mark, key moment or drawing speaks of; a consent speaks of one thing.
std::optional<std::string> placeOf(const Fact& fact) {
    if (fact.kind == records::kind::mark) {
        const auto mark = records::markOf(fact.body);
        return mark ? std::optional(std::to_string(mark->frame) + "/" +
                                    std::string(marks::landmarkName(mark->landmark)))
                    : std::nullopt;
    }
    if (fact.kind == records::kind::moment) {
        const auto moment = records::momentOf(fact.body);
        return moment ? std::optional(std::string(marks::momentName(moment->id))) : std::nullopt;
    }
    if (fact.kind == records::kind::drawing) {
        const auto drawing = records::drawingOf(fact.body);
        return drawing ? std::optional(drawing->name) : std::nullopt;
    }
    return std::string();
}

/// Places at which facts of one kind stand that two devices put differently.
int disputedPlaces(const std::vector<Fact>& facts) {
    std::map<std::string, std::vector<records::Object>> byPlace;
    for (const Fact& fact : records::heads(facts)) {
        if (const auto place = placeOf(fact)) {
            records::Object body = fact.body;
            if (const auto step = body.find("step"); step != body.end()) {
                body.erase(step); // how the desk came there is not what it says
            }
            byPlace[*place].push_back(std::move(body));
        }
    }
    return static_cast<int>(std::count_if(byPlace.begin(), byPlace.end(), [](const auto& entry) {
        const auto& bodies = entry.second;
        return std::any_of(bodies.begin(), bodies.end(),
                           [&](const records::Object& body) { return !(body == bodies.front()); });
    }));
}

/// `disputed` when the row is written, or why it is not.
base::Result<int> written(Statement& row, int disputed) {
    if (auto done = row.run(); !done) {
        return done.error();
    }
    return disputed;
}

} // namespace

bool isMaker(std::string_view kind) {
    return kind == records::kind::player || kind == records::kind::lesson || kind == records::kind::shot ||
           kind == records::kind::clip;
}

/// The index rows that depend on this fact alone.
base::Result<void> SqliteLibrary::index(const Fact& fact) {
    const std::string hex = fact.id.hex();
    if (!fact.path.empty()) {
        auto belongs = db_.query("INSERT OR IGNORE INTO belongs(owner, fact) VALUES (?1, ?2)");
        for (const Id& owner : fact.path) {
            if (auto done = belongs.bind(1, owner.hex()).bind(2, hex).run(); !done) {
                return done;
            }
        }
    }
    if (fact.kind == records::kind::filmCopy) {
        return indexFilmCopy(db_, fact);
    }
    if (fact.kind != records::kind::findings || fact.path.empty()) {
        return {};
    }
    auto row =
        db_.query("INSERT INTO finding(fact, place, clip, measurement, moment, value, sigma, unit, method) "
                  "VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)");
    std::int64_t place = 0;
    for (const measure::Measurement& m : records::findingsOf(fact.body).measurements) {
        if (!m.value || !(std::abs(m.value->value) <= 1e12) || !(m.value->sigma > 0) ||
            !(m.value->sigma < 1e12)) {
            continue;
        }
        row.bind(1, hex).bind(2, place++).bind(3, fact.path.back().hex()).bind(4, m.id);
        row.bind(5, m.moment ? momentName(*m.moment) : std::string_view());
        row.bind(6, m.value->value).bind(7, m.value->sigma).bind(8, unitName(m.value->unit));
        if (auto done = row.bind(9, std::int64_t{m.method}).run(); !done) {
            return done;
        }
    }
    return {};
}

base::Result<int> SqliteLibrary::disputesOf(const Id& id) {
    auto query =
        db_.query("SELECT disputed FROM player WHERE id = ?1 UNION ALL SELECT disputed FROM lesson WHERE "
                  "id = ?1 UNION ALL SELECT disputed FROM shot WHERE id = ?1 UNION ALL SELECT disputed "
                  "FROM clip WHERE id = ?1");
    const auto row = query.bind(1, id.hex()).step();
    if (!row) {
        return row.error();
    }
    return *row ? static_cast<int>(query.integer(0)) : 0;
}

base::Result<int> SqliteLibrary::listPlayer(const Entity& e) {
    const records::Player player = records::playerOf(e.fields);
    const bool sane = player.statureMetres && *player.statureMetres > 0 && *player.statureMetres < 10;
    auto row = db_.query("INSERT OR REPLACE INTO player(id, name, words, hand, stature_m, disputed) "
                         "VALUES (?1, ?2, ?3, ?4, ?5, ?6)");
    row.bind(1, e.id.hex())
        .bind(2, player.name)
        .bind(3, foldCase(player.group.empty() ? player.name : player.name + "\n" + player.group));
    row.bind(5, sane ? player.statureMetres : std::nullopt);
    if (player.hand) {
        row.bind(4, handName(*player.hand));
    } else {
        row.bindNull(4);
    }
    const auto consents = factsOf(e.id, records::kind::consent);
    if (!consents) {
        return consents.error();
    }
    const int disputed = static_cast<int>(e.disputed.size()) + disputedPlaces(*consents);
    return written(row.bind(6, std::int64_t{disputed}), disputed);
}

base::Result<int> SqliteLibrary::listLesson(const Entity& e) {
    const records::Lesson lesson = records::lessonOf(e.fields);
    auto row = db_.query("INSERT OR REPLACE INTO lesson(id, player, title, day, words, made_ms, disputed) "
                         "VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)");
    row.bind(1, e.id.hex()).bind(2, e.path.back().hex()).bind(3, lesson.title).bind(4, lesson.day);
    row.bind(5, foldCase(lesson.title + "\n" + lesson.wish + "\n" + lesson.note + "\n" + lesson.day));
    const int disputed = static_cast<int>(e.disputed.size());
    return written(row.bind(6, std::int64_t{e.made.ms}).bind(7, std::int64_t{disputed}), disputed);
}

base::Result<int> SqliteLibrary::listShot(const Entity& e) {
    const records::Shot shot = records::shotOf(e.fields);
    auto row = db_.query(
        "INSERT OR REPLACE INTO shot(id, lesson, made_ms, made_n, made_device, kind, club, disputed) "
        "VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)");
    row.bind(1, e.id.hex()).bind(2, e.path.back().hex()).bind(3, std::int64_t{e.made.ms});
    row.bind(4, e.made.counter).bind(5, e.made.device.hex()).bind(6, shotKindName(shot.kind));
    row.bind(7, shot.club ? clubName(*shot.club) : std::string());
    const int disputed = static_cast<int>(e.disputed.size());
    return written(row.bind(8, std::int64_t{disputed}), disputed);
}

base::Result<int> SqliteLibrary::listClip(const Entity& e) {
    const auto clip = records::clipOf(e.fields);
    if (!clip) {
        return 0;
    }
    int disputed = static_cast<int>(e.disputed.size());
    auto placed =
        db_.query("SELECT line FROM fact WHERE owner = ?1 AND kind IN ('mark', 'moment', 'drawing')");
    placed.bind(1, e.id.hex());
    const auto facts = factsFrom(placed, 0);
    if (!facts) {
        return facts.error();
    }
    if (!facts->empty()) {
        std::map<std::string, std::vector<Fact>> byKind;
        for (const Fact& fact : *facts) {
            byKind[fact.kind].push_back(fact);
        }
        for (const auto& [kind, some] : byKind) {
            disputed += disputedPlaces(some);
        }
    }
    auto row = db_.query("INSERT OR REPLACE INTO clip(id, shot, made_ms, view, sha256, disputed) "
                         "VALUES (?1, ?2, ?3, ?4, ?5, ?6)");
    row.bind(1, e.id.hex()).bind(2, e.path.back().hex()).bind(3, std::int64_t{e.made.ms});
    row.bind(4, viewName(clip->view)).bind(5, clip->sha256);
    return written(row.bind(6, std::int64_t{disputed}), disputed);
}

/// Makes the index row of a player, lesson, shot or clip again; how many things about it have two versions.
base::Result<int> SqliteLibrary::refresh(const Id& id, const Fact* maker) {
    base::Result<std::optional<Entity>> found = std::optional<Entity>();
    if (maker != nullptr) {
        const auto about = factsOf(id, records::kind::set);
        found = about ? base::Result<std::optional<Entity>>(records::foldEntity(*maker, *about))
                      : base::Result<std::optional<Entity>>(about.error());
    } else {
        found = entity(id);
    }
    if (!found) {
        return found.error();
    }
    if (!*found) {
        return 0; // not here yet, or a kind this version does not list
    }
    const Entity& e = **found;
    if (e.kind == records::kind::player) {
        return listPlayer(e);
    }
    if (e.path.empty()) {
        return 0; // belongs to nothing: no list shows it
    }
    return e.kind == records::kind::lesson ? listLesson(e)
           : e.kind == records::kind::shot ? listShot(e)
                                           : listClip(e);
}

/// Counts kept with each lesson, so that a list of ten thousand needs no other table. Ids that are no
/// lesson's do nothing.
base::Result<void> SqliteLibrary::recount(const std::set<Id>& lessons) {
    auto update =
        db_.query(std::string("UPDATE lesson SET ") + std::string(kLessonCounts) + " WHERE id = ?1");
    for (const Id& id : lessons) {
        if (auto done = update.bind(1, id.hex()).run(); !done) {
            return done;
        }
    }
    return {};
}

/// Inside a transaction.
base::Result<void> SqliteLibrary::fillIndex() {
    if (auto made = makeIndexTables(db_); !made) {
        return made;
    }
    std::set<Id> makers, lessons;
    auto query = db_.query("SELECT line FROM fact");
    auto read = forEachRow(query, [&](Statement& row) -> base::Result<void> {
        const auto record = records::recordFromText(row.view(0));
        if (!record || !record->fact) {
            return damaged();
        }
        const Fact& fact = *record->fact;
        if (isMaker(fact.kind)) {
            makers.insert(fact.id);
        }
        if (fact.kind == records::kind::lesson) {
            lessons.insert(fact.id);
        }
        return index(fact);
    });
    if (!read) {
        return read;
    }
    for (const Id& id : makers) {
        if (const auto done = refresh(id); !done) {
            return done.error();
        }
    }
    return recount(lessons);
}

base::Result<void> SqliteLibrary::rebuildIndex() {
    const std::lock_guard guard(mutex_);
    if (auto may = writable(); !may) {
        return may;
    }
    auto transaction = Transaction::begin(db_);
    if (!transaction) {
        return transaction.error();
    }
    if (auto filled = fillIndex(); !filled) {
        return filled;
    }
    return transaction->commit();
}

/// One hash over all index tables.
base::Result<std::string> SqliteLibrary::indexDigest() {
    constexpr std::array tables{"belongs ORDER BY owner, fact",
                                "player ORDER BY id",
                                "lesson ORDER BY id",
                                "shot ORDER BY id",
                                "clip ORDER BY id",
                                "film_copy ORDER BY fact",
                                "finding ORDER BY fact, place"};
    base::Sha256 hash;
    for (const char* table : tables) {
        auto query = db_.query(std::string("SELECT * FROM ") + table);
        auto read = forEachRow(query, [&](Statement& row) {
            for (int column = 0; column < row.columns(); ++column) {
                hash.add(row.view(column));
                hash.add("\x1f");
            }
            hash.add("\n");
        });
        if (!read) {
            return read.error();
        }
    }
    return hash.finishHex();
}

} // namespace plumbmark::store::detail
