// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "store/detail/db.h"

#include <array>
#include <new>

#include "base/guarded.h"

namespace plumbmark::store::detail {

base::Error databaseError(int code) {
    switch (code & 0xff) {
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return base::failure("library.damaged",
                             "The library is damaged; nothing was changed. \"plumbmark restore\" "
                             "shows the backups and puts one in its place.");
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return base::failure("library.busy", "Another program is using the library; close it and try again.");
    case SQLITE_FULL:
        return base::failure("disk.full",
                             "The disk is full, so nothing was saved; free some space and try again.");
    case SQLITE_NOMEM:
        return base::outOfMemory();
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return base::inputError(
            "library.read_only",
            "The library may only be read, so nothing was saved; check the permissions of its "
            "folder.");
    case SQLITE_CANTOPEN:
        return base::inputError("library.folder",
                                "The library cannot be opened; check the permissions of its folder.");
    case SQLITE_CONSTRAINT:
        return base::failure("library.refused",
                             "The library refused a record that breaks its rules; nothing was saved.");
    default:
        return base::failure("library.failed",
                             "The library could not be read or written; check the disk and try again.");
    }
}

bool tellsWantOfMemory(std::string_view finding) {
    constexpr std::string_view kCode = "error code=";
    const std::size_t at = finding.rfind(kCode);
    if (at == std::string_view::npos) {
        return false;
    }
    const std::string_view code = finding.substr(at + kCode.size());
    return code == std::to_string(SQLITE_NOMEM) || code == std::to_string(SQLITE_IOERR_NOMEM);
}

StatementCache::~StatementCache() {
    for (const auto& [sql, handles] : idle_) {
        for (sqlite3_stmt* handle : handles) {
            sqlite3_finalize(handle);
        }
    }
}

sqlite3_stmt* StatementCache::take(std::string_view sql) {
    const auto found = idle_.find(std::string(sql));
    if (found == idle_.end() || found->second.empty()) {
        return nullptr;
    }
    sqlite3_stmt* handle = found->second.back();
    found->second.pop_back();
    --count_;
    return handle;
}

void StatementCache::giveBack(sqlite3_stmt* handle) {
    constexpr std::size_t kMost = 200; // far more than the program has; a leak would stop here
    const char* sql = sqlite3_sql(handle);
    if (sql == nullptr || count_ >= kMost) {
        sqlite3_finalize(handle);
        return;
    }
    try {
        idle_[sql].push_back(handle);
        ++count_;
    } catch (const std::bad_alloc&) {
        sqlite3_finalize(handle); // keeping it only saves time
    }
}

Statement::~Statement() {
    if (handle_ == nullptr) {
        return;
    }
    if (cache_ == nullptr) {
        sqlite3_finalize(handle_);
        return;
    }
    reset();
    cache_->giveBack(handle_);
}

Statement& Statement::bind(int place, std::string_view text) {
    if (trouble_ == SQLITE_OK) {
        trouble_ = sqlite3_bind_text64(handle_, place, text.data() == nullptr ? "" : text.data(), text.size(),
                                       SQLITE_TRANSIENT, SQLITE_UTF8);
    }
    return *this;
}

Statement& Statement::bind(int place, std::int64_t number) {
    if (trouble_ == SQLITE_OK) {
        trouble_ = sqlite3_bind_int64(handle_, place, number);
    }
    return *this;
}

Statement& Statement::bind(int place, double number) {
    if (trouble_ == SQLITE_OK) {
        trouble_ = sqlite3_bind_double(handle_, place, number);
    }
    return *this;
}

Statement& Statement::bind(int place, const std::optional<double>& number) {
    return number ? bind(place, *number) : bindNull(place);
}

Statement& Statement::bindNull(int place) {
    if (trouble_ == SQLITE_OK) {
        trouble_ = sqlite3_bind_null(handle_, place);
    }
    return *this;
}

base::Result<bool> Statement::step() {
    const int code = trouble_ == SQLITE_OK ? sqlite3_step(handle_) : trouble_;
    if (code == SQLITE_ROW) {
        return true;
    }
    if (code == SQLITE_DONE) {
        return false;
    }
    return databaseError(code);
}

base::Result<void> Statement::run() {
    const auto row = step();
    reset();
    if (!row) {
        return row.error();
    }
    return {};
}

base::Result<bool> Statement::any() {
    const auto row = step();
    reset();
    return row;
}

void Statement::reset() {
    if (handle_ != nullptr) { // else compiling failed, and that stays so
        sqlite3_reset(handle_);
        sqlite3_clear_bindings(handle_);
        trouble_ = SQLITE_OK;
    }
}

std::string_view Statement::view(int column) const {
    const unsigned char* text = sqlite3_column_text(handle_, column);
    if (text == nullptr) {
        return {};
    }
    return {reinterpret_cast<const char*>(text),
            static_cast<std::size_t>(sqlite3_column_bytes(handle_, column))};
}

std::string Statement::text(int column) const {
    return std::string(view(column));
}

std::int64_t Statement::integer(int column) const {
    return sqlite3_column_int64(handle_, column);
}
double Statement::number(int column) const {
    return sqlite3_column_double(handle_, column);
}
bool Statement::isNull(int column) const {
    return sqlite3_column_type(handle_, column) == SQLITE_NULL;
}

base::Result<Database> Database::open(const std::filesystem::path& file, Mode mode) {
    int flags = SQLITE_OPEN_FULLMUTEX | SQLITE_OPEN_EXRESCODE | SQLITE_OPEN_NOFOLLOW;
    switch (mode) {
    case Mode::readWrite:
    case Mode::recover:
        flags |= SQLITE_OPEN_READWRITE;
        break;
    case Mode::create:
        flags |= SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE;
        break;
    case Mode::readOnly:
        flags |= SQLITE_OPEN_READONLY;
        break;
    }
    std::error_code error;
    // The folder may be reached through a link (many home folders are); the database itself may not be one.
    const auto folder = std::filesystem::canonical(file.parent_path(), error);
    const auto real = error ? file : folder / file.filename();
    if (mode == Mode::create && std::filesystem::exists(real, error)) {
        return databaseError(SQLITE_CANTOPEN);
    }
    sqlite3* handle = nullptr;
    const int code = sqlite3_open_v2(real.c_str(), &handle, flags, nullptr);
    Database db(handle);
    if (code != SQLITE_OK) {
        return databaseError(code);
    }
    if (auto set = db.setSwitches(mode); !set) {
        return set.error();
    }
    return db;
}

base::Result<void> Database::setSwitches(Mode mode) {
    sqlite3* db = handle_.get();
    struct Config {
        int verb, value;
    };
    constexpr std::array configs{Config{SQLITE_DBCONFIG_DEFENSIVE, 1},
                                 Config{SQLITE_DBCONFIG_ENABLE_TRIGGER, 0},
                                 Config{SQLITE_DBCONFIG_ENABLE_VIEW, 0}, Config{SQLITE_DBCONFIG_DQS_DML, 0},
                                 Config{SQLITE_DBCONFIG_DQS_DDL, 0}};
    for (const Config& config : configs) {
        int now = -1;
        if (sqlite3_db_config(db, config.verb, config.value, &now) != SQLITE_OK || now != config.value) {
            return databaseError(SQLITE_ERROR);
        }
    }
    struct Pragma {
        std::string_view name, value;
        std::string_view reads;
        bool writing; ///< only where the database may be written
    };
    // A new database is made with a rollback journal, in one piece, and turned to WAL when it is in its
    // place.
    const std::string_view journal = mode == Mode::create ? "delete" : "wal";
    const std::array pragmas{
        Pragma{"busy_timeout", "5000", "5000", false},  Pragma{"trusted_schema", "OFF", "0", false},
        Pragma{"cell_size_check", "ON", "1", false},    Pragma{"mmap_size", "0", "0", false},
        Pragma{"foreign_keys", "ON", "1", false},       Pragma{"temp_store", "MEMORY", "2", false},
        Pragma{"secure_delete", "ON", "1", true},       Pragma{"journal_mode", journal, journal, true},
        Pragma{"synchronous", "FULL", "2", true},       Pragma{"fullfsync", "ON", "1", true},
        Pragma{"checkpoint_fullfsync", "ON", "1", true}};
    for (const Pragma& pragma : pragmas) {
        if (pragma.writing && (mode == Mode::readOnly || mode == Mode::recover)) {
            continue;
        }
        const std::string name(pragma.name);
        if (auto set = exec("PRAGMA " + name + "=" + std::string(pragma.value)); !set) {
            return set;
        }
        auto query = prepare("PRAGMA " + name);
        if (!query) {
            return query.error();
        }
        const auto row = query->step();
        if (!row) {
            return row.error();
        }
        if (!*row || query->text(0) != pragma.reads) {
            return base::failure("library.switch", "The database on this system does not support \"" + name +
                                                       "\", which keeping lessons safely needs.");
        }
    }
    return {};
}

Statement Database::query(std::string_view sql) {
    // Only questions and changes come again and again; the rest is compiled for one use.
    const bool keep = sql.starts_with("SELECT") || sql.starts_with("INSERT") || sql.starts_with("UPDATE") ||
                      sql.starts_with("DELETE");
    if (keep) {
        if (sqlite3_stmt* waiting = cache_->take(sql)) {
            return Statement(waiting, cache_);
        }
    }
    sqlite3_stmt* handle = nullptr;
    const int code = sqlite3_prepare_v3(handle_.get(), sql.data(), static_cast<int>(sql.size()),
                                        keep ? SQLITE_PREPARE_PERSISTENT : 0U, &handle, nullptr);
    if (code != SQLITE_OK) {
        return Statement(code);
    }
    return Statement(handle, keep ? cache_ : nullptr);
}

base::Result<Statement> Database::prepare(std::string_view sql) {
    Statement statement = query(sql);
    if (statement.trouble_ != SQLITE_OK) {
        return databaseError(statement.trouble_);
    }
    return statement;
}

base::Result<void> Database::exec(const std::string& sql) {
    const int code = sqlite3_exec(handle_.get(), sql.c_str(), nullptr, nullptr, nullptr);
    if (code != SQLITE_OK) {
        return databaseError(code);
    }
    return {};
}

base::Result<std::int64_t> Database::number(std::string_view sql) {
    Statement statement = query(sql);
    const auto row = statement.step();
    if (!row) {
        return row.error();
    }
    return *row ? statement.integer(0) : 0;
}

base::Result<Transaction> Transaction::begin(Database& db) {
    // One that could not be undone for want of memory is undone before the next begins.
    if (sqlite3_get_autocommit(db.handle()) == 0) {
        sqlite3_exec(db.handle(), "ROLLBACK", nullptr, nullptr, nullptr);
    }
    // IMMEDIATE: waits for other writers here, not in the middle of the work.
    if (auto begun = db.exec("BEGIN IMMEDIATE"); !begun) {
        return begun.error();
    }
    return Transaction(db);
}

Transaction::~Transaction() {
    if (db_ != nullptr && sqlite3_get_autocommit(db_->handle()) == 0) {
        sqlite3_exec(db_->handle(), "ROLLBACK", nullptr, nullptr, nullptr);
    }
}

base::Result<void> Transaction::commit() {
    if (auto done = db_->exec("COMMIT"); !done) {
        return done;
    }
    db_ = nullptr;
    return {};
}

base::Result<void> copyInto(Database& db, const std::filesystem::path& file) {
    std::error_code ignored;
    if (std::filesystem::exists(file, ignored)) {
        return databaseError(SQLITE_CANTOPEN);
    }
    auto done = db.query("VACUUM INTO ?1").bind(1, file.string()).run();
    if (!done) {
        std::filesystem::remove(file, ignored);
        std::filesystem::remove(file.string() + "-journal", ignored);
    }
    return done;
}

} // namespace plumbmark::store::detail
