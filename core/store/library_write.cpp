// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Facts in, and out for good: add, merge, erase. Each is one transaction.
#include <algorithm>

#include "store/backup.h"
#include "store/detail/backup_folder.h"
#include "store/detail/sqlite_library.h"

namespace plumbmark::store::detail {

namespace fs = std::filesystem;
using base::Id;
using records::Fact;

namespace {

/// The thing whose list row a fact changes.
Id subjectOf(const Fact& fact) {
    return isMaker(fact.kind) || fact.path.empty() ? fact.id : fact.path.back();
}

/// Everything that may be a lesson whose counts a fact changes.
void noteOwners(const Fact& fact, std::set<Id>& owners) {
    owners.insert(fact.path.begin(), fact.path.end());
    if (fact.kind == records::kind::lesson) {
        owners.insert(fact.id);
    }
}

} // namespace

Fact SqliteLibrary::make(std::string_view kind, std::vector<Id> path, records::Object body,
                         std::vector<Id> replaces) {
    const std::lock_guard guard(mutex_);
    Fact fact;
    fact.id = options_.ids->next();
    fact.kind = kind;
    fact.path = std::move(path);
    fact.at = clock_.next();
    std::sort(replaces.begin(), replaces.end());
    replaces.erase(std::unique(replaces.begin(), replaces.end()), replaces.end());
    fact.replaces = std::move(replaces);
    fact.body = std::move(body);
    return fact;
}

base::Result<bool> SqliteLibrary::isErased(const Fact& fact) {
    auto query = db_.query("SELECT 1 FROM tombstone WHERE id = ?1");
    for (const Id& id : fact.path) {
        if (const auto found = query.bind(1, id.hex()).any(); !found || *found) {
            return found;
        }
    }
    return query.bind(1, fact.id.hex()).any();
}

base::Result<std::optional<std::string>> SqliteLibrary::lineOf(const Id& id) {
    auto query = db_.query("SELECT line FROM fact WHERE id = ?1");
    const auto row = query.bind(1, id.hex()).step();
    if (!row) {
        return row.error();
    }
    return *row ? std::optional(query.text(0)) : std::nullopt;
}

base::Result<void> SqliteLibrary::insert(const Fact& fact, const std::string& line) {
    auto insertion = db_.query("INSERT INTO fact(id, kind, owner, line) VALUES (?1, ?2, ?3, ?4)");
    insertion.bind(1, fact.id.hex()).bind(2, fact.kind).bind(4, line);
    if (fact.path.empty()) {
        insertion.bindNull(3);
    } else {
        insertion.bind(3, fact.path.back().hex());
    }
    if (auto done = insertion.run(); !done) {
        return done;
    }
    return index(fact);
}

base::Result<void> SqliteLibrary::saveClock() {
    return db_.query("UPDATE device SET clock_ms = ?1, clock_n = ?2")
        .bind(1, std::int64_t{clock_.lastMs()})
        .bind(2, clock_.lastCounter())
        .run();
}

base::Result<void> SqliteLibrary::add(const std::vector<Fact>& facts) {
    const std::lock_guard guard(mutex_);
    if (auto may = writable(); !may) {
        return may;
    }
    auto transaction = Transaction::begin(db_);
    if (!transaction) {
        return transaction.error();
    }
    std::set<Id> touched, owners;
    for (const Fact& fact : facts) {
        const auto erased = isErased(fact);
        if (!erased) {
            return erased.error();
        }
        if (*erased) {
            return base::inputError("record.erased",
                                    "This belongs to something that was erased; nothing was saved.");
        }
        const auto line = toText(fact);
        if (!line) {
            return line.error();
        }
        if (line->size() > records::kMostRecordBytes) {
            return base::inputError("record.bad_value", "This is too much for one record; make it shorter.");
        }
        if (fact.kind == records::kind::clip) {
            const auto clip = records::clipOf(fact.body);
            std::error_code ignored;
            if (!clip || !fs::is_regular_file(filmPath(clip->sha256), ignored)) {
                return base::inputError("film.missing",
                                        "The film of this clip is not in the library; bring it in "
                                        "again.");
            }
        }
        if (auto done = insert(fact, *line); !done) {
            return done;
        }
        touched.insert(subjectOf(fact));
        noteOwners(fact, owners);
    }
    for (const Id& id : touched) {
        if (const auto done = refresh(id); !done) {
            return done.error();
        }
    }
    if (auto counted = recount(owners); !counted) {
        return counted;
    }
    if (auto saved = saveClock(); !saved) {
        return saved;
    }
    return transaction->commit();
}

base::Result<int> SqliteLibrary::eraseRows(const records::Tombstone& tombstone,
                                           std::set<std::string>& films) {
    const std::string hex = tombstone.id.hex();
    {
        // All tombstones travel with every lesson: most are old news.
        auto known = db_.query("SELECT 1 FROM tombstone WHERE id = ?1 AND day <= ?2");
        const auto found = known.bind(1, hex).bind(2, tombstone.day).any();
        if (!found) {
            return found.error();
        }
        if (*found) {
            return 0;
        }
    }
    auto clips = db_.query(
        "SELECT sha256 FROM clip WHERE id = ?1 OR id IN (SELECT fact FROM belongs WHERE owner = ?1) "
        "UNION SELECT sha256 FROM film_copy WHERE fact = ?1 OR fact IN (SELECT fact FROM belongs WHERE owner "
        "= ?1) "
        "UNION SELECT sha256 FROM carried WHERE lesson = ?1 OR lesson IN (SELECT fact FROM belongs WHERE "
        "owner "
        "= ?1)");
    clips.bind(1, hex);
    if (auto read = forEachRow(clips, [&](Statement& row) { films.insert(row.text(0)); }); !read) {
        return read.error();
    }
    // Lessons that lose something are counted anew.
    std::set<Id> owners;
    auto above =
        db_.query("SELECT DISTINCT owner FROM belongs WHERE fact = ?1 OR fact IN (SELECT fact FROM belongs "
                  "WHERE owner = ?1)");
    above.bind(1, hex);
    auto read = forEachRow(above, [&](Statement& row) {
        if (const auto id = idOf(row, 0)) {
            owners.insert(*id);
        }
    });
    if (!read) {
        return read.error();
    }
    // Where something small goes (a mark, a field), what it belonged to is listed anew.
    const auto target = fact(tombstone.id);
    if (!target) {
        return target.error();
    }
    auto grave = db_.query("INSERT INTO tombstone(id, day) VALUES (?1, ?2) "
                           "ON CONFLICT(id) DO UPDATE SET day = min(day, excluded.day)");
    if (auto done = grave.bind(1, hex).bind(2, tombstone.day).run(); !done) {
        return done.error();
    }
    auto rows =
        db_.query("DELETE FROM fact WHERE id = ?1 OR id IN (SELECT fact FROM belongs WHERE owner = ?1)");
    if (auto done = rows.bind(1, hex).run(); !done) {
        return done.error();
    }
    const int gone = db_.changes();
    if (*target && !isMaker((*target)->kind) && !(*target)->path.empty()) {
        if (const auto listed = refresh((*target)->path.back()); !listed) {
            return listed.error();
        }
    }
    if (auto counted = recount(owners); !counted) {
        return counted.error();
    }
    return gone;
}

base::Result<MergeReceipt> SqliteLibrary::merge(const std::vector<records::Record>& records) {
    const std::lock_guard guard(mutex_);
    if (auto may = writable(); !may) {
        return may.error();
    }
    auto transaction = Transaction::begin(db_);
    if (!transaction) {
        return transaction.error();
    }
    MergeReceipt receipt;
    std::set<std::string> films;
    for (const records::Record& record : records) {
        if (record.tombstone) {
            const auto gone = eraseRows(*record.tombstone, films);
            if (!gone) {
                return gone.error();
            }
            receipt.erased += *gone;
        }
    }
    const auto graves = db_.query("SELECT 1 FROM tombstone LIMIT 1").any();
    if (!graves) {
        return graves.error();
    }
    std::map<Id, int> touched; // and the disputes there were before
    std::map<Id, const Fact*> made;
    std::set<Id> owners;
    for (const records::Record& record : records) {
        if (!record.fact) {
            continue;
        }
        const Fact& fact = *record.fact;
        const auto erased = *graves ? isErased(fact) : base::Result<bool>(false);
        if (!erased) {
            return erased.error();
        }
        if (*erased) {
            ++receipt.refused;
            continue;
        }
        const auto line = toText(fact);
        if (!line) {
            return line.error();
        }
        const auto here = lineOf(fact.id);
        if (!here) {
            return here.error();
        }
        if (*here) {
            if (**here != *line) {
                return base::inputError("record.changed",
                                        "A record in the file differs from the one of the same name "
                                        "in the library; the file was changed, nothing was taken.");
            }
            ++receipt.same;
            continue;
        }
        const Id subject = subjectOf(fact);
        if (isMaker(fact.kind)) {
            touched.emplace(subject, 0); // new here: nothing was disputed about it
        } else if (touched.count(subject) == 0) {
            const auto before = disputesOf(subject);
            if (!before) {
                return before.error();
            }
            touched.emplace(subject, *before);
        }
        noteOwners(fact, owners);
        if (auto done = insert(fact, *line); !done) {
            return done.error();
        }
        if (isMaker(fact.kind)) {
            made.emplace(fact.id, &fact);
        }
        clock_.learn(fact.at);
        ++receipt.added;
    }
    for (const auto& [id, before] : touched) {
        const auto maker = made.find(id);
        const auto now = refresh(id, maker == made.end() ? nullptr : maker->second);
        if (!now) {
            return now.error();
        }
        receipt.needsYou += std::max(0, *now - before);
    }
    if (auto counted = recount(owners); !counted) {
        return counted.error();
    }
    if (auto saved = saveClock(); !saved) {
        return saved.error();
    }
    if (receipt.erased > 0) {
        if (auto marked = markErasing(); !marked) {
            return marked.error();
        }
    }
    if (auto committed = transaction->commit(); !committed) {
        return committed.error();
    }
    if (receipt.erased > 0) {
        if (auto gone = leaveNoTrace(films); !gone) {
            return gone.error();
        }
    }
    return receipt;
}

base::Result<void> SqliteLibrary::erase(const Id& id) {
    const std::lock_guard guard(mutex_);
    if (auto may = writable(); !may) {
        return may;
    }
    std::set<std::string> films;
    {
        auto transaction = Transaction::begin(db_);
        if (!transaction) {
            return transaction.error();
        }
        if (const auto gone = eraseRows({id, base::isoDate(options_.clock->now())}, films); !gone) {
            return gone.error();
        }
        if (auto marked = markErasing(); !marked) {
            return marked;
        }
        if (auto committed = transaction->commit(); !committed) {
            return committed;
        }
    }
    return leaveNoTrace(films);
}

/// Should the power fail in the middle of an erasing, the next start goes on with it.
base::Result<void> SqliteLibrary::markErasing() {
    return base::replaceFile(options_.folder / kErasing,
                             "Something was erased; its traces are being removed.\n", *options_.calls);
}

/// After rows were deleted: their films go, their bytes go from the database's free pages (VACUUM writes the
/// file anew, secure_delete has written zeros before), from the write-ahead log and from the backups. When
/// another program reads at this moment, file and log are emptied at its next checkpoint; the rows are gone
/// now.
base::Result<void> SqliteLibrary::leaveNoTrace(const std::set<std::string>& films) {
    if (auto dropped = dropFilms(films); !dropped) {
        return dropped;
    }
    const auto emptied = db_.exec("VACUUM");
    const auto written = db_.exec("PRAGMA wal_checkpoint(TRUNCATE)");
    // Old copies still hold what was erased: one fresh copy takes their place.
    const auto old = base::listFolder(options_.folder / "backups");
    if (!old) {
        return old.error(); // the next start goes on with it
    }
    if (!old->empty()) {
        if (auto fresh = makeBackup(db_, options_, BackupKind::afterErasing); !fresh) {
            return fresh.error();
        }
        for (const fs::path& copy : *old) {
            removeBackup(copy);
        }
    }
    if (emptied && written) { // else the next start alone on the library goes on with it
        options_.calls->remove(options_.folder / kErasing);
    }
    return {};
}

} // namespace plumbmark::store::detail
