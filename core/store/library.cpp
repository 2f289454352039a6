// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "store/library.h"

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <map>
#include <mutex>
#include <set>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include "base/hash.h"
#include "store/detail/case_fold.h"
#include "store/detail/db.h"
#include "store/detail/schema.h"

namespace plumbmark::store {
namespace {

namespace fs = std::filesystem;
using base::Id;
using detail::Database;
using detail::Statement;
using detail::Transaction;
using records::Fact;

base::Error damaged() {
    return detail::databaseError(SQLITE_CORRUPT);
}

/// Held for as long as a library is open. Whoever gets it alone knows that nobody else is at work.
class Lock {
  public:
    static base::Result<Lock> take(const fs::path& file) {
        const int fd = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600);
        if (fd < 0) {
            return base::inputError("library.folder",
                                    "The library's folder cannot be written; check its permissions.");
        }
        Lock lock(fd);
        lock.alone_ = ::flock(fd, LOCK_EX | LOCK_NB) == 0;
        if (!lock.alone_ && !lock.share()) {
            return detail::databaseError(SQLITE_BUSY);
        }
        return lock;
    }
    Lock(Lock&& other) noexcept : fd_(std::exchange(other.fd_, -1)), alone_(other.alone_) {}
    Lock& operator=(Lock&&) = delete;
    ~Lock() {
        if (fd_ >= 0) {
            ::close(fd_);
        }
    }
    [[nodiscard]] bool alone() const { return alone_; }
    bool share() {
        alone_ = false;
        int code = 0;
        while ((code = ::flock(fd_, LOCK_SH)) != 0 && errno == EINTR) {
        }
        return code == 0;
    }

  private:
    explicit Lock(int fd) : fd_(fd) {}
    int fd_;
    bool alone_ = false;
};

bool isMaker(std::string_view kind) {
    return kind == records::kind::player || kind == records::kind::lesson || kind == records::kind::shot ||
           kind == records::kind::clip;
}

std::optional<Id> idOf(const Statement& statement, int column) {
    return Id::fromHex(statement.text(column));
}

/// Marks of a clip that two devices placed differently.
int disputedMarks(const std::vector<Fact>& marks) {
    std::map<std::pair<int, marks::Landmark>, std::vector<records::Object>> byPlace;
    for (const Fact& fact : records::heads(marks)) {
        if (const auto mark = records::markOf(fact.body)) {
            byPlace[{mark->frame, mark->landmark}].push_back(fact.body);
        }
    }
    return static_cast<int>(std::count_if(byPlace.begin(), byPlace.end(), [](const auto& entry) {
        const auto& bodies = entry.second;
        return std::any_of(bodies.begin(), bodies.end(),
                           [&](const records::Object& body) { return !(body == bodies.front()); });
    }));
}

class SqliteLibrary final : public Library {
  public:
    SqliteLibrary(LibraryOptions options, Lock lock, Database db, Id device, bool readOnly,
                  std::string notice)
        : options_(std::move(options)), lock_(std::move(lock)), db_(std::move(db)), device_(device),
          clock_(device, *options_.clock), readOnly_(readOnly), notice_(std::move(notice)) {}

    [[nodiscard]] bool readOnly() const override { return readOnly_; }
    [[nodiscard]] const std::string& notice() const override { return notice_; }
    [[nodiscard]] const Id& device() const override { return device_; }
    [[nodiscard]] const fs::path& folder() const override { return options_.folder; }

    base::Result<void> start();

    Fact make(std::string_view kind, std::vector<Id> path, records::Object body,
              std::vector<Id> replaces) override {
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

    base::Result<void> add(const std::vector<Fact>& facts) override;
    base::Result<MergeReceipt> merge(const std::vector<records::Record>& records) override;
    base::Result<void> erase(const Id& id) override;

    base::Result<std::vector<PlayerRow>> players(std::string_view search) override;
    base::Result<std::vector<LessonRow>> lessons(std::string_view search, std::optional<Id> player) override;
    base::Result<std::vector<ShotRow>> shots(const Id& lesson) override;
    base::Result<std::vector<ClipRow>> clips(const Id& shot) override;
    base::Result<std::optional<ClipRow>> clip(const Id& clip) override;
    base::Result<std::vector<ClipRow>> clipsOfFilm(std::string_view sha256) override;

    base::Result<std::optional<records::Entity>> entity(const Id& id) override;
    base::Result<std::optional<Fact>> fact(const Id& id) override;
    base::Result<std::vector<Fact>> factsOf(const Id& owner, std::string_view kind) override;
    base::Result<std::vector<std::string>> linesFor(const Id& id) override;
    base::Result<std::vector<std::string>> allLines() override;

    base::Result<Film> addFilm(const fs::path& file, const base::Progress& progress) override;
    base::Result<void> adoptFilm(const fs::path& staged, std::string_view sha256) override;
    [[nodiscard]] fs::path filmPath(std::string_view sha256) const override {
        return options_.folder / "media" / std::string(sha256.substr(0, 2)) / std::string(sha256);
    }
    base::Result<base::StagingFolder> staging() override {
        return base::StagingFolder::create(options_.folder / "staging", *options_.calls);
    }

    base::Result<std::vector<std::string>> check(bool readFilms, const base::Progress& progress) override;
    base::Result<void> rebuildIndex() override;

  private:
    base::Result<void> writable() const {
        if (readOnly_) {
            return base::inputError("library.read_only", notice_);
        }
        return {};
    }
    base::Result<bool> isErased(const Fact& fact);
    /// The stored line of an id, or nothing.
    base::Result<std::optional<std::string>> lineOf(const Id& id);
    base::Result<void> insert(const Fact& fact, const std::string& line);
    base::Result<void> index(const Fact& fact);
    base::Result<int> disputesOf(const Id& id);
    base::Result<int> refresh(const Id& id);
    base::Result<int> eraseRows(const records::Tombstone& tombstone, std::set<std::string>& films);
    base::Result<void> saveClock();
    base::Result<void> sweepFilms();
    base::Result<void> dropFilms(const std::set<std::string>& films);
    base::Result<std::vector<Fact>> factsFrom(Statement& statement, int column);
    base::Result<std::vector<ClipRow>> clipRows(Statement& statement);
    base::Result<std::vector<std::string>> linesFrom(Statement& statement);

    LibraryOptions options_;
    Lock lock_;
    Database db_;
    Id device_;
    records::HybridClock clock_;
    bool readOnly_;
    std::string notice_;
    std::recursive_mutex mutex_;
};

base::Result<void> SqliteLibrary::start() {
    auto query = db_.prepare("SELECT clock_ms, clock_n FROM device");
    if (!query) {
        return query.error();
    }
    const auto row = query->step();
    if (!row) {
        return row.error();
    }
    if (*row) {
        clock_.resume(query->integer(0), query->integer(1));
    }
    if (lock_.alone() && !readOnly_) {
        // Nobody else is at work: what an interrupted run left behind can go.
        std::error_code ignored;
        fs::remove_all(options_.folder / "staging", ignored);
        if (auto dropped = sweepFilms(); !dropped) {
            return dropped;
        }
    }
    if (!lock_.share()) {
        return detail::databaseError(SQLITE_BUSY);
    }
    return {};
}

base::Result<bool> SqliteLibrary::isErased(const Fact& fact) {
    auto query = db_.prepare("SELECT 1 FROM tombstone WHERE id = ?1");
    if (!query) {
        return query.error();
    }
    std::vector<Id> ids = fact.path;
    ids.push_back(fact.id);
    for (const Id& id : ids) {
        query->bind(1, id.hex());
        const auto row = query->step();
        if (!row) {
            return row.error();
        }
        query->reset();
        if (*row) {
            return true;
        }
    }
    return false;
}

base::Result<std::optional<std::string>> SqliteLibrary::lineOf(const Id& id) {
    auto query = db_.prepare("SELECT line FROM fact WHERE id = ?1");
    if (!query) {
        return query.error();
    }
    const auto row = query->bind(1, id.hex()).step();
    if (!row) {
        return row.error();
    }
    return *row ? std::optional(query->text(0)) : std::nullopt;
}

base::Result<void> SqliteLibrary::insert(const Fact& fact, const std::string& line) {
    auto insertion = db_.prepare("INSERT INTO fact(id, kind, owner, line) VALUES (?1, ?2, ?3, ?4)");
    if (!insertion) {
        return insertion.error();
    }
    insertion->bind(1, fact.id.hex()).bind(2, fact.kind).bind(4, line);
    if (fact.path.empty()) {
        insertion->bindNull(3);
    } else {
        insertion->bind(3, fact.path.back().hex());
    }
    if (auto done = insertion->run(); !done) {
        return done;
    }
    return index(fact);
}

/// The index rows that depend on this fact alone.
base::Result<void> SqliteLibrary::index(const Fact& fact) {
    auto belongs = db_.prepare("INSERT OR IGNORE INTO belongs(owner, fact) VALUES (?1, ?2)");
    if (!belongs) {
        return belongs.error();
    }
    for (const Id& owner : fact.path) {
        if (auto done = belongs->bind(1, owner.hex()).bind(2, fact.id.hex()).run(); !done) {
            return done;
        }
    }
    if (fact.kind == records::kind::findings && !fact.path.empty()) {
        auto row = db_.prepare(
            "INSERT INTO finding(fact, place, clip, measurement, moment, value, sigma, unit, method) "
            "VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)");
        if (!row) {
            return row.error();
        }
        const records::Findings findings = records::findingsOf(fact.body);
        std::int64_t place = 0;
        for (const measure::Measurement& m : findings.measurements) {
            if (!m.value || !(std::abs(m.value->value) <= 1e12) || !(m.value->sigma > 0) ||
                !(m.value->sigma < 1e12)) {
                continue;
            }
            row->bind(1, fact.id.hex()).bind(2, place++).bind(3, fact.path.back().hex()).bind(4, m.id);
            row->bind(5, m.moment ? momentName(*m.moment) : std::string_view());
            row->bind(6, m.value->value).bind(7, m.value->sigma).bind(8, unitName(m.value->unit));
            row->bind(9, std::int64_t{m.method});
            if (auto done = row->run(); !done) {
                return done;
            }
        }
    }
    return {};
}

base::Result<int> SqliteLibrary::disputesOf(const Id& id) {
    auto query = db_.prepare(
        "SELECT disputed FROM player WHERE id = ?1 UNION ALL SELECT disputed FROM lesson WHERE id "
        "= ?1 UNION ALL SELECT disputed FROM shot WHERE id = ?1 UNION ALL SELECT disputed FROM "
        "clip WHERE id = ?1");
    if (!query) {
        return query.error();
    }
    const auto row = query->bind(1, id.hex()).step();
    if (!row) {
        return row.error();
    }
    return *row ? static_cast<int>(query->integer(0)) : 0;
}

/// Makes the index row of a player, lesson, shot or clip again; how many things about it have two versions.
base::Result<int> SqliteLibrary::refresh(const Id& id) {
    const auto found = entity(id);
    if (!found) {
        return found.error();
    }
    if (!*found) {
        return 0; // not here yet, or a kind this version does not list
    }
    const records::Entity& e = **found;
    int disputed = static_cast<int>(e.disputed.size());
    const std::string hex = id.hex();
    const std::string owner = e.path.empty() ? std::string() : e.path.back().hex();
    const auto prepare = [&](std::string_view sql) { return db_.prepare(sql); };

    if (e.kind == records::kind::player) {
        auto row = prepare("INSERT OR REPLACE INTO player(id, name, words, hand, stature_m, disputed) "
                           "VALUES (?1, ?2, ?3, ?4, ?5, ?6)");
        if (!row) {
            return row.error();
        }
        const records::Player player = records::playerOf(e.fields);
        const bool sane = player.statureMetres && *player.statureMetres > 0 && *player.statureMetres < 10;
        row->bind(1, hex).bind(2, player.name).bind(3, detail::foldCase(player.name));
        row->bind(5, sane ? player.statureMetres : std::nullopt).bind(6, std::int64_t{disputed});
        if (player.hand) {
            row->bind(4, handName(*player.hand));
        } else {
            row->bindNull(4);
        }
        if (auto done = row->run(); !done) {
            return done.error();
        }
    } else if (e.kind == records::kind::lesson && !owner.empty()) {
        auto row = prepare("INSERT OR REPLACE INTO lesson(id, player, title, day, words, made_ms, disputed) "
                           "VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)");
        if (!row) {
            return row.error();
        }
        const records::Lesson lesson = records::lessonOf(e.fields);
        row->bind(1, hex).bind(2, owner).bind(3, lesson.title).bind(4, lesson.day);
        row->bind(
            5, detail::foldCase(lesson.title + "\n" + lesson.wish + "\n" + lesson.note + "\n" + lesson.day));
        row->bind(6, std::int64_t{e.made.ms}).bind(7, std::int64_t{disputed});
        if (auto done = row->run(); !done) {
            return done.error();
        }
    } else if (e.kind == records::kind::shot && !owner.empty()) {
        auto row = prepare(
            "INSERT OR REPLACE INTO shot(id, lesson, made_ms, made_n, made_device, kind, club, disputed) "
            "VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)");
        if (!row) {
            return row.error();
        }
        const records::Shot shot = records::shotOf(e.fields);
        row->bind(1, hex).bind(2, owner).bind(3, std::int64_t{e.made.ms}).bind(4, e.made.counter);
        row->bind(5, e.made.device.hex()).bind(6, shotKindName(shot.kind));
        row->bind(7, shot.club ? clubName(*shot.club) : std::string()).bind(8, std::int64_t{disputed});
        if (auto done = row->run(); !done) {
            return done.error();
        }
    } else if (e.kind == records::kind::clip && !owner.empty()) {
        const auto clip = records::clipOf(e.fields);
        if (!clip) {
            return 0;
        }
        const auto marks = factsOf(id, records::kind::mark);
        if (!marks) {
            return marks.error();
        }
        disputed += disputedMarks(*marks);
        auto row = prepare("INSERT OR REPLACE INTO clip(id, shot, made_ms, view, sha256, disputed) "
                           "VALUES (?1, ?2, ?3, ?4, ?5, ?6)");
        if (!row) {
            return row.error();
        }
        row->bind(1, hex).bind(2, owner).bind(3, std::int64_t{e.made.ms}).bind(4, viewName(clip->view));
        row->bind(5, clip->sha256).bind(6, std::int64_t{disputed});
        if (auto done = row->run(); !done) {
            return done.error();
        }
    } else {
        return 0;
    }
    return disputed;
}

base::Result<void> SqliteLibrary::saveClock() {
    auto update = db_.prepare("UPDATE device SET clock_ms = ?1, clock_n = ?2");
    if (!update) {
        return update.error();
    }
    return update->bind(1, std::int64_t{clock_.lastMs()}).bind(2, clock_.lastCounter()).run();
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
    std::set<Id> touched;
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
        touched.insert(isMaker(fact.kind) || fact.path.empty() ? fact.id : fact.path.back());
    }
    for (const Id& id : touched) {
        if (const auto done = refresh(id); !done) {
            return done.error();
        }
    }
    if (auto saved = saveClock(); !saved) {
        return saved;
    }
    return transaction->commit();
}

base::Result<int> SqliteLibrary::eraseRows(const records::Tombstone& tombstone,
                                           std::set<std::string>& films) {
    const std::string hex = tombstone.id.hex();
    auto clips = db_.prepare(
        "SELECT sha256 FROM clip WHERE id = ?1 OR id IN (SELECT fact FROM belongs WHERE owner = ?1)");
    if (!clips) {
        return clips.error();
    }
    clips->bind(1, hex);
    for (;;) {
        const auto row = clips->step();
        if (!row) {
            return row.error();
        }
        if (!*row) {
            break;
        }
        films.insert(clips->text(0));
    }
    // Where something small goes (a mark, a field), what it belonged to is listed anew.
    const auto target = fact(tombstone.id);
    if (!target) {
        return target.error();
    }
    auto grave = db_.prepare("INSERT INTO tombstone(id, day) VALUES (?1, ?2) "
                             "ON CONFLICT(id) DO UPDATE SET day = min(day, excluded.day)");
    if (!grave) {
        return grave.error();
    }
    if (auto done = grave->bind(1, hex).bind(2, tombstone.day).run(); !done) {
        return done.error();
    }
    auto rows =
        db_.prepare("DELETE FROM fact WHERE id = ?1 OR id IN (SELECT fact FROM belongs WHERE owner = ?1)");
    if (!rows) {
        return rows.error();
    }
    if (auto done = rows->bind(1, hex).run(); !done) {
        return done.error();
    }
    const int gone = sqlite3_changes(db_.handle());
    if (*target && !isMaker((*target)->kind) && !(*target)->path.empty()) {
        if (const auto listed = refresh((*target)->path.back()); !listed) {
            return listed.error();
        }
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
    std::map<Id, int> touched; // and the disputes there were before
    for (const records::Record& record : records) {
        if (!record.fact) {
            continue;
        }
        const Fact& fact = *record.fact;
        const auto erased = isErased(fact);
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
        const Id subject = isMaker(fact.kind) || fact.path.empty() ? fact.id : fact.path.back();
        if (touched.count(subject) == 0) {
            const auto before = disputesOf(subject);
            if (!before) {
                return before.error();
            }
            touched.emplace(subject, *before);
        }
        if (auto done = insert(fact, *line); !done) {
            return done.error();
        }
        clock_.learn(fact.at);
        ++receipt.added;
    }
    for (const auto& [id, before] : touched) {
        const auto now = refresh(id);
        if (!now) {
            return now.error();
        }
        receipt.needsYou += std::max(0, *now - before);
    }
    if (auto saved = saveClock(); !saved) {
        return saved.error();
    }
    if (auto committed = transaction->commit(); !committed) {
        return committed.error();
    }
    if (receipt.erased > 0) {
        if (auto dropped = dropFilms(films); !dropped) {
            return dropped.error();
        }
        (void)db_.exec("PRAGMA wal_checkpoint(TRUNCATE)");
    }
    return receipt;
}

base::Result<void> SqliteLibrary::erase(const Id& id) {
    const std::lock_guard guard(mutex_);
    if (auto may = writable(); !may) {
        return may;
    }
    auto transaction = Transaction::begin(db_);
    if (!transaction) {
        return transaction.error();
    }
    std::set<std::string> films;
    if (const auto gone = eraseRows({id, base::isoDate(options_.clock->now())}, films); !gone) {
        return gone.error();
    }
    if (auto committed = transaction->commit(); !committed) {
        return committed;
    }
    // secure_delete has written zeros over the rows; the write-ahead log still holds them until it is
    // emptied. When another program is reading, the log is emptied later: at its next checkpoint.
    (void)db_.exec("PRAGMA wal_checkpoint(TRUNCATE)");
    std::error_code ignored;
    const fs::path backups = options_.folder / "backups";
    if (fs::exists(backups, ignored) && !fs::is_empty(backups, ignored)) {
        // Old copies still hold what was erased: one fresh copy takes their place.
        const fs::path fresh = backups / ("after-erasing-" + options_.ids->next().hex() + ".db");
        auto copy = db_.prepare("VACUUM INTO ?1");
        if (!copy) {
            return copy.error();
        }
        if (auto copied = copy->bind(1, fresh.string()).run(); !copied) {
            return copied;
        }
        for (const auto& entry : fs::directory_iterator(backups, ignored)) {
            if (entry.path() != fresh) {
                fs::remove_all(entry.path(), ignored);
            }
        }
    }
    return dropFilms(films);
}

/// At a start alone on the library: films that an interrupted run copied in but never named.
base::Result<void> SqliteLibrary::sweepFilms() {
    std::error_code error;
    const fs::path media = options_.folder / "media";
    if (!fs::is_directory(media, error)) {
        return {};
    }
    auto query = db_.prepare("SELECT 1 FROM clip WHERE sha256 = ?1");
    if (!query) {
        return query.error();
    }
    std::vector<fs::path> unused;
    for (fs::recursive_directory_iterator it(media, error), end; !error && it != end; it.increment(error)) {
        const std::string name = it->path().filename().string();
        // Only what this program puts there: films and its own unfinished copies.
        const bool film = base::isSha256Hex(name);
        if (!it->is_regular_file(error) || !(film || name.rfind(".plumbmark-", 0) == 0)) {
            continue;
        }
        if (film) {
            const auto row = query->bind(1, name).step();
            if (!row) {
                return row.error();
            }
            query->reset();
            if (*row) {
                continue;
            }
        }
        unused.push_back(it->path());
    }
    for (const fs::path& path : unused) {
        options_.calls->remove(path);
    }
    return {};
}

/// Removes films that no clip names any more. Inside a writing transaction, so that nobody can begin to name
/// one meanwhile: add() looks for the film inside its own.
base::Result<void> SqliteLibrary::dropFilms(const std::set<std::string>& films) {
    if (films.empty()) {
        return {};
    }
    auto transaction = Transaction::begin(db_);
    if (!transaction) {
        return transaction.error();
    }
    auto query = db_.prepare("SELECT 1 FROM clip WHERE sha256 = ?1");
    if (!query) {
        return query.error();
    }
    for (const std::string& film : films) {
        const auto row = query->bind(1, film).step();
        if (!row) {
            return row.error();
        }
        query->reset();
        if (!*row) {
            options_.calls->remove(filmPath(film));
        }
    }
    return transaction->commit();
}

base::Result<std::vector<Fact>> SqliteLibrary::factsFrom(Statement& statement, int column) {
    std::vector<Fact> facts;
    for (;;) {
        const auto row = statement.step();
        if (!row) {
            return row.error();
        }
        if (!*row) {
            break;
        }
        auto record = records::recordFromText(statement.text(column));
        if (!record || !record->fact) {
            return damaged();
        }
        facts.push_back(std::move(*record->fact));
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
    auto query = db_.prepare("SELECT line FROM fact WHERE owner = ?1 AND kind = ?2");
    if (!query) {
        return query.error();
    }
    query->bind(1, owner.hex()).bind(2, kind);
    return factsFrom(*query, 0);
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
    auto query = db_.prepare(
        "SELECT id, name, hand, stature_m, (SELECT count(*) FROM lesson WHERE lesson.player = player.id), "
        "(SELECT max(day) FROM lesson WHERE lesson.player = player.id), disputed > 0 FROM player "
        "WHERE ?1 = '' OR instr(words, ?1) > 0 ORDER BY words, id");
    if (!query) {
        return query.error();
    }
    query->bind(1, detail::foldCase(search));
    std::vector<PlayerRow> rows;
    for (;;) {
        const auto row = query->step();
        if (!row) {
            return row.error();
        }
        if (!*row) {
            return rows;
        }
        const auto id = idOf(*query, 0);
        if (!id) {
            return damaged();
        }
        PlayerRow player{*id,
                         query->text(1),
                         marks::handFromName(query->text(2)),
                         std::nullopt,
                         static_cast<int>(query->integer(4)),
                         query->text(5),
                         query->integer(6) != 0};
        if (!query->isNull(3)) {
            player.statureMetres = query->number(3);
        }
        rows.push_back(std::move(player));
    }
}

base::Result<std::vector<LessonRow>> SqliteLibrary::lessons(std::string_view search,
                                                            std::optional<Id> player) {
    const std::lock_guard guard(mutex_);
    auto query = db_.prepare(
        "SELECT l.id, l.player, p.name, l.title, l.day, "
        "(SELECT count(*) FROM shot s WHERE s.lesson = l.id), "
        "(SELECT count(*) FROM shot s JOIN clip c ON c.shot = s.id WHERE s.lesson = l.id), "
        "l.disputed > 0 OR EXISTS (SELECT 1 FROM shot s WHERE s.lesson = l.id AND (s.disputed > 0 OR "
        "EXISTS (SELECT 1 FROM clip c WHERE c.shot = s.id AND c.disputed > 0))) "
        "FROM lesson l JOIN player p ON p.id = l.player "
        "WHERE (?1 = '' OR instr(l.words, ?1) > 0 OR instr(p.words, ?1) > 0) AND (?2 IS NULL OR l.player = "
        "?2) "
        "ORDER BY l.day DESC, l.made_ms DESC, l.id");
    if (!query) {
        return query.error();
    }
    query->bind(1, detail::foldCase(search));
    if (player) {
        query->bind(2, player->hex());
    } else {
        query->bindNull(2);
    }
    std::vector<LessonRow> rows;
    for (;;) {
        const auto row = query->step();
        if (!row) {
            return row.error();
        }
        if (!*row) {
            return rows;
        }
        const auto id = idOf(*query, 0);
        const auto owner = idOf(*query, 1);
        if (!id || !owner) {
            return damaged();
        }
        rows.push_back({*id, *owner, query->text(2), query->text(3), query->text(4),
                        static_cast<int>(query->integer(5)), static_cast<int>(query->integer(6)),
                        query->integer(7) != 0});
    }
}

base::Result<std::vector<ShotRow>> SqliteLibrary::shots(const Id& lesson) {
    const std::lock_guard guard(mutex_);
    auto query =
        db_.prepare("SELECT id, disputed > 0 OR EXISTS (SELECT 1 FROM clip c WHERE c.shot = shot.id AND "
                    "c.disputed > 0) FROM shot WHERE lesson = ?1 ORDER BY made_ms, made_n, made_device, id");
    if (!query) {
        return query.error();
    }
    query->bind(1, lesson.hex());
    std::vector<ShotRow> rows;
    for (;;) {
        const auto row = query->step();
        if (!row) {
            return row.error();
        }
        if (!*row) {
            return rows;
        }
        const auto id = idOf(*query, 0);
        if (!id) {
            return damaged();
        }
        const auto shot = entity(*id);
        if (!shot) {
            return shot.error();
        }
        if (*shot) {
            rows.push_back({*id, lesson, static_cast<int>(rows.size()) + 1, records::shotOf((*shot)->fields),
                            query->integer(1) != 0});
        }
    }
}

base::Result<std::vector<ClipRow>> SqliteLibrary::clipRows(Statement& query) {
    std::vector<ClipRow> rows;
    for (;;) {
        const auto row = query.step();
        if (!row) {
            return row.error();
        }
        if (!*row) {
            return rows;
        }
        const auto id = idOf(query, 0);
        const auto shot = idOf(query, 1);
        if (!id || !shot) {
            return damaged();
        }
        const auto found = entity(*id);
        if (!found) {
            return found.error();
        }
        const auto clip = *found ? records::clipOf((*found)->fields) : std::nullopt;
        if (clip) {
            const fs::path file = filmPath(clip->sha256);
            std::error_code ignored;
            rows.push_back(
                {*id, *shot, *clip, file, fs::is_regular_file(file, ignored), query.integer(2) > 0});
        }
    }
}

base::Result<std::vector<ClipRow>> SqliteLibrary::clips(const Id& shot) {
    const std::lock_guard guard(mutex_);
    auto query = db_.prepare("SELECT id, shot, disputed FROM clip WHERE shot = ?1 ORDER BY made_ms, id");
    if (!query) {
        return query.error();
    }
    query->bind(1, shot.hex());
    return clipRows(*query);
}

base::Result<std::optional<ClipRow>> SqliteLibrary::clip(const Id& clip) {
    const std::lock_guard guard(mutex_);
    auto query = db_.prepare("SELECT id, shot, disputed FROM clip WHERE id = ?1");
    if (!query) {
        return query.error();
    }
    query->bind(1, clip.hex());
    auto rows = clipRows(*query);
    if (!rows) {
        return rows.error();
    }
    return rows->empty() ? std::optional<ClipRow>() : std::optional(std::move(rows->front()));
}

base::Result<std::vector<ClipRow>> SqliteLibrary::clipsOfFilm(std::string_view sha256) {
    const std::lock_guard guard(mutex_);
    auto query = db_.prepare("SELECT id, shot, disputed FROM clip WHERE sha256 = ?1 ORDER BY made_ms, id");
    if (!query) {
        return query.error();
    }
    query->bind(1, sha256);
    return clipRows(*query);
}

base::Result<std::vector<std::string>> SqliteLibrary::linesFrom(Statement& statement) {
    std::vector<std::string> lines;
    for (;;) {
        const auto row = statement.step();
        if (!row) {
            return row.error();
        }
        if (!*row) {
            break;
        }
        lines.push_back(statement.text(0));
    }
    auto graves = db_.prepare("SELECT id, day FROM tombstone");
    if (!graves) {
        return graves.error();
    }
    for (;;) {
        const auto row = graves->step();
        if (!row) {
            return row.error();
        }
        if (!*row) {
            break;
        }
        const auto id = idOf(*graves, 0);
        if (!id) {
            return damaged();
        }
        lines.push_back(toText(records::Tombstone{*id, graves->text(1)}));
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
    std::string ids = "''";
    for (const Id& owner : (*self)->path) {
        ids += ",'" + owner.hex() + "'"; // hex digits only: nothing to escape
    }
    auto query = db_.prepare(
        "SELECT line FROM fact WHERE id = ?1 OR id IN (SELECT fact FROM belongs WHERE owner = ?1) "
        "OR id IN (" +
        ids + ") OR (kind = 'set' AND owner IN (" + ids + "))");
    if (!query) {
        return query.error();
    }
    query->bind(1, id.hex());
    return linesFrom(*query);
}

base::Result<std::vector<std::string>> SqliteLibrary::allLines() {
    const std::lock_guard guard(mutex_);
    auto query = db_.prepare("SELECT line FROM fact");
    if (!query) {
        return query.error();
    }
    return linesFrom(*query);
}

base::Result<Library::Film> SqliteLibrary::addFilm(const fs::path& file, const base::Progress& progress) {
    if (auto may = writable(); !may) {
        return may.error();
    }
    // Copied once while hashing; the name is known only afterwards. Long, so without holding up other calls.
    auto stage = staging();
    if (!stage) {
        return stage.error();
    }
    const fs::path staged = stage->path() / "film";
    const auto copied = base::copyFile(file, staged, progress, *options_.calls);
    if (!copied) {
        return copied.error();
    }
    std::error_code ignored;
    Film film{copied->sha256, copied->size, fs::is_regular_file(filmPath(copied->sha256), ignored)};
    if (auto moved = adoptFilm(staged, film.sha256); !moved) {
        return moved.error();
    }
    return film;
}

base::Result<void> SqliteLibrary::adoptFilm(const fs::path& staged, std::string_view sha256) {
    const std::lock_guard guard(mutex_);
    if (auto may = writable(); !may) {
        return may;
    }
    if (!base::isSha256Hex(sha256)) {
        return base::failure("film.name", "A film has no proper name; bring it in again.");
    }
    const fs::path target = filmPath(sha256);
    if (auto made = base::makeFolders(target.parent_path(), *options_.calls); !made) {
        return made;
    }
    // Also where a film of this name lies already: its bytes were just checked, those there perhaps long ago.
    return base::moveIntoPlace(staged, target, *options_.calls);
}

base::Result<std::vector<std::string>> SqliteLibrary::check(bool readFilms, const base::Progress& progress) {
    const std::lock_guard guard(mutex_);
    std::vector<std::string> troubles;
    const auto report = [&](std::string_view pragma, std::string_view good) -> base::Result<void> {
        auto query = db_.prepare(pragma);
        if (!query) {
            return query.error();
        }
        for (int i = 0; i < 20; ++i) {
            const auto row = query->step();
            if (!row) {
                return row.error();
            }
            if (!*row || query->text(0) == good) {
                return {};
            }
            troubles.push_back("The database is damaged: " + query->text(0) + ".");
        }
        return {};
    };
    if (auto done = report("PRAGMA integrity_check(20)", "ok"); !done) {
        return done.error();
    }
    if (auto done = report("PRAGMA foreign_key_check", ""); !done) {
        return done.error();
    }
    auto query = db_.prepare("SELECT id, kind, owner, line FROM fact");
    if (!query) {
        return query.error();
    }
    for (;;) {
        const auto row = query->step();
        if (!row) {
            return row.error();
        }
        if (!*row) {
            break;
        }
        const auto record = records::recordFromText(query->text(3));
        const bool good = record && record->fact && record->fact->id.hex() == query->text(0) &&
                          record->fact->kind == query->text(1) &&
                          (record->fact->path.empty() ? query->isNull(2)
                                                      : record->fact->path.back().hex() == query->text(2));
        if (!good) {
            troubles.push_back("The record " + query->text(0) + " is not as it was written.");
        }
    }
    auto films = db_.prepare("SELECT DISTINCT sha256 FROM clip");
    if (!films) {
        return films.error();
    }
    for (;;) {
        const auto row = films->step();
        if (!row) {
            return row.error();
        }
        if (!*row) {
            break;
        }
        std::error_code ignored;
        const fs::path file = filmPath(films->text(0));
        if (!readFilms || !fs::is_regular_file(file, ignored)) {
            continue; // a film may have stayed at home: that is no damage
        }
        const auto hash = base::sha256OfFile(file, progress);
        if (!hash) {
            return hash.error();
        }
        if (hash->sha256 != films->text(0)) {
            troubles.push_back("The film " + films->text(0) + " is damaged; bring it in again.");
        }
    }
    return troubles;
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
    if (auto made = detail::makeIndexTables(db_); !made) {
        return made;
    }
    std::set<Id> makers;
    {
        auto query = db_.prepare("SELECT line FROM fact");
        if (!query) {
            return query.error();
        }
        const auto facts = factsFrom(*query, 0);
        if (!facts) {
            return facts.error();
        }
        for (const Fact& fact : *facts) {
            if (auto done = index(fact); !done) {
                return done;
            }
            if (isMaker(fact.kind)) {
                makers.insert(fact.id);
            }
        }
    }
    for (const Id& id : makers) {
        if (const auto done = refresh(id); !done) {
            return done.error();
        }
    }
    return transaction->commit();
}

/// A new library appears in one piece: made aside, then renamed.
base::Result<void> makeLibrary(const fs::path& file, const LibraryOptions& options) {
    auto stage = base::StagingFolder::create(options.folder / "staging", *options.calls);
    if (!stage) {
        return stage.error();
    }
    const fs::path fresh = stage->path() / "library.db";
    {
        auto db = Database::open(fresh, Database::Mode::create);
        if (!db) {
            return db.error();
        }
        if (auto made = detail::upgrade(*db, detail::steps(), {}); !made) {
            return made;
        }
        auto row = db->prepare("INSERT INTO device(one, id, clock_ms, clock_n) VALUES (1, ?1, 0, 0)");
        if (!row) {
            return row.error();
        }
        if (auto done = row->bind(1, options.ids->next().hex()).run(); !done) {
            return done;
        }
    }
    // For its owner alone, whatever the folder allows; the log beside it takes over the same permissions.
    std::error_code error;
    fs::permissions(fresh, fs::perms::owner_read | fs::perms::owner_write, error);
    if (error) {
        return base::failure("library.failed",
                             "The library could not be made private; choose another folder.");
    }
    return base::moveIntoPlace(fresh, file, *options.calls);
}

} // namespace

base::Result<fs::path> defaultLibraryFolder() {
    const auto variable = [](const char* name) -> std::optional<fs::path> {
        const char* value = std::getenv(name);
        return value == nullptr || *value == '\0' ? std::nullopt : std::optional(fs::path(value));
    };
    if (const auto told = variable("PLUMBMARK_LIBRARY")) {
        return *told;
    }
    // The base directory specification: a relative path there is invalid and ignored.
    if (const auto data = variable("XDG_DATA_HOME"); data && data->is_absolute()) {
        return *data / "plumbmark";
    }
    if (const auto home = variable("HOME"); home && home->is_absolute()) {
        return *home / ".local" / "share" / "plumbmark";
    }
    return base::inputError("library.no_home",
                            "It is not known where your files lie; name a folder with --library.");
}

base::Result<std::unique_ptr<Library>> Library::open(const LibraryOptions& options) {
    std::error_code error;
    const fs::path file = options.folder / "library.db";
    if (fs::exists(options.folder, error) && !fs::is_directory(options.folder, error)) {
        return base::inputError("library.folder", "\"" + options.folder.string() +
                                                      "\" is not a folder; name a folder for the library.");
    }
    if (auto made = base::makeFolders(options.folder, *options.calls); !made) {
        return base::inputError("library.folder", "The library's folder \"" + options.folder.string() +
                                                      "\" cannot be made; choose another one.");
    }
    auto lock = Lock::take(options.folder / "lock");
    if (!lock) {
        return lock.error();
    }
    if (!fs::exists(file, error)) {
        const fs::path media = options.folder / "media";
        if (fs::is_directory(media, error) && !fs::is_empty(media, error)) {
            return base::failure("library.damaged",
                                 "The file library.db is missing although films are there; put it "
                                 "back from a backup, or choose another folder.");
        }
        if (!lock->alone()) {
            return detail::databaseError(SQLITE_BUSY);
        }
        if (auto made = makeLibrary(file, options); !made) {
            return made.error();
        }
    }
    if (fs::file_size(file, error) == 0 || error) {
        return damaged(); // a library of ours is never empty: it appears in one piece
    }
    // Looked at without the right to write first: a damaged, foreign or newer file stays as it is.
    bool readOnly = false;
    std::string notice;
    {
        auto look = Database::open(file, Database::Mode::readOnly);
        if (!look) {
            return look.error();
        }
        const auto application = look->number("PRAGMA application_id");
        const auto version = look->number("PRAGMA user_version");
        if (!application || !version) {
            return application ? version.error() : application.error();
        }
        if (*application != detail::kApplicationId || *version < 1) {
            return base::inputError("library.not_ours",
                                    "The file library.db in \"" + options.folder.string() +
                                        "\" is not a lesson library; choose another folder.");
        }
        if (*version > detail::kSchemaVersion) {
            readOnly = true;
            notice =
                "This library was made by a newer version of the program and can only be read here; update "
                "the program to change it.";
        }
    }
    auto db = Database::open(file, readOnly ? Database::Mode::readOnly : Database::Mode::readWrite);
    if (!db) {
        return db.error();
    }
    if (!readOnly) {
        const auto version = db->number("PRAGMA user_version");
        if (!version) {
            return version.error();
        }
        if (*version < detail::kSchemaVersion) {
            const fs::path backups = options.folder / "backups";
            if (auto made = base::makeFolders(backups, *options.calls); !made) {
                return made.error();
            }
            const fs::path backup = backups / ("before-version-" + std::to_string(detail::kSchemaVersion) +
                                               "-" + options.ids->next().hex() + ".db");
            if (auto done = detail::upgrade(*db, detail::steps(), backup); !done) {
                return done.error();
            }
        }
    }
    // What every question below relies on; a newer library may have changed it.
    for (const std::string_view needed :
         {"SELECT id, clock_ms, clock_n FROM device", "SELECT id, kind, owner, line FROM fact",
          "SELECT id, day FROM tombstone", "SELECT owner, fact FROM belongs",
          "SELECT id, name, words, hand, stature_m, disputed FROM player",
          "SELECT id, player, title, day, words, made_ms, disputed FROM lesson",
          "SELECT id, lesson, made_ms, made_n, made_device, disputed FROM shot",
          "SELECT id, shot, made_ms, sha256, disputed FROM clip"}) {
        if (auto query = db->prepare(needed); !query) {
            if (query.error().key != "library.failed") {
                return query.error();
            }
            return readOnly ? base::inputError(
                                  "library.newer_unreadable",
                                  "This library was made by a newer version of the program; update the "
                                  "program to open it.")
                            : damaged();
        }
    }
    std::optional<Id> device;
    {
        auto query = db->prepare("SELECT id FROM device");
        if (!query) {
            return query.error();
        }
        const auto row = query->step();
        if (!row) {
            return row.error();
        }
        device = *row ? idOf(*query, 0) : std::nullopt;
    }
    if (!device) {
        return damaged();
    }
    auto library = std::make_unique<SqliteLibrary>(options, std::move(*lock), std::move(*db), *device,
                                                   readOnly, std::move(notice));
    if (auto started = library->start(); !started) {
        return started.error();
    }
    return std::unique_ptr<Library>(std::move(library));
}

} // namespace plumbmark::store
