// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <unordered_map>
#include <utility>
#include <vector>

#include <sqlite3.h>

#include "base/result.h"

namespace plumbmark::store::detail {

/// A result code of the database as one plain sentence.
base::Error databaseError(int code);

/// Whether a row of SQLite's integrity check tells only that memory ran out ("unable to get the page. error
/// code=7", SQLITE_NOMEM): that is no damage.
[[nodiscard]] bool tellsWantOfMemory(std::string_view finding);

/// Compiled statements that wait for their next use. Compiling one costs more than most of them cost to run,
/// and a merge runs the same dozen a hundred thousand times. Shared with the statements that are out, so that
/// the order in which they and the database go does not matter.
class StatementCache {
  public:
    StatementCache() = default;
    StatementCache(const StatementCache&) = delete;
    StatementCache& operator=(const StatementCache&) = delete;
    ~StatementCache();
    /// nullptr when none of that text waits.
    sqlite3_stmt* take(std::string_view sql);
    void giveBack(sqlite3_stmt* handle);

  private:
    std::unordered_map<std::string, std::vector<sqlite3_stmt*>> idle_;
    std::size_t count_ = 0;
};

/// A statement at work. When it goes it is reset, so that no forgotten reader keeps the log from being
/// emptied.
class Statement {
  public:
    Statement(sqlite3_stmt* handle, std::shared_ptr<StatementCache> cache)
        : handle_(handle), cache_(std::move(cache)) {}
    explicit Statement(int trouble) : trouble_(trouble) {}
    Statement(Statement&& other) noexcept
        : handle_(std::exchange(other.handle_, nullptr)), cache_(std::move(other.cache_)),
          trouble_(other.trouble_) {}
    Statement& operator=(Statement&&) = delete;
    ~Statement();

    Statement& bind(int place, std::string_view text);
    Statement& bind(int place, std::int64_t number);
    Statement& bind(int place, double number);
    Statement& bind(int place, const std::optional<double>& number);
    Statement& bindNull(int place);
    /// true: a row is there; false: done. Also tells of trouble with compiling or binding.
    base::Result<bool> step();
    /// For statements that give no rows.
    base::Result<void> run();
    /// Whether there is a row; ready for the next values afterwards.
    base::Result<bool> any();
    /// Ready for the next values.
    void reset();
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] std::string_view view(int column) const; ///< until the next step
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] double number(int column) const;
    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] int columns() const { return sqlite3_column_count(handle_); }

  private:
    friend class Database;
    sqlite3_stmt* handle_ = nullptr;
    std::shared_ptr<StatementCache> cache_; ///< none: the statement is thrown away after use
    int trouble_ = SQLITE_OK;               ///< of compiling or binding, told by the next step
};

/// Calls `row(statement)` for every row; it gives nothing, or a Result<void> whose error ends the loop.
template <class Row> base::Result<void> forEachRow(Statement& statement, Row&& row) {
    for (;;) {
        const auto more = statement.step();
        if (!more) {
            return more.error();
        }
        if (!*more) {
            return {};
        }
        if constexpr (std::is_void_v<std::invoke_result_t<Row, Statement&>>) {
            row(statement);
        } else if (base::Result<void> done = row(statement); !done) {
            return done;
        }
    }
}

class Database {
  public:
    /// `recover` looks like readOnly but may undo what an interrupted writer left in a rollback journal.
    enum class Mode { readWrite, create, readOnly, recover };
    /// The only place in the program that opens a database. Sets every switch whose default is the wrong way
    /// and reads each back. `create` fails when the file is there.
    static base::Result<Database> open(const std::filesystem::path& file, Mode mode);

    /// A statement to bind and step; trouble with compiling it is told by the first step.
    Statement query(std::string_view sql);
    /// As query, but tells trouble with compiling at once.
    base::Result<Statement> prepare(std::string_view sql);
    /// One or more statements without values or rows.
    base::Result<void> exec(const std::string& sql);
    base::Result<std::int64_t> number(std::string_view sql); ///< first column of the first row
    [[nodiscard]] int changes() const { return sqlite3_changes(handle_.get()); }
    [[nodiscard]] sqlite3* handle() const { return handle_.get(); }

  private:
    struct Close {
        void operator()(sqlite3* db) const { sqlite3_close_v2(db); }
    };
    explicit Database(sqlite3* handle) : handle_(handle) {}
    base::Result<void> setSwitches(Mode mode);
    std::unique_ptr<sqlite3, Close> handle_;
    std::shared_ptr<StatementCache> cache_ = std::make_shared<StatementCache>();
};

/// Rolls back unless commit() succeeded.
class Transaction {
  public:
    static base::Result<Transaction> begin(Database& db);
    Transaction(Transaction&& other) noexcept : db_(std::exchange(other.db_, nullptr)) {}
    Transaction& operator=(Transaction&&) = delete;
    ~Transaction();
    base::Result<void> commit();

  private:
    explicit Transaction(Database& db) : db_(&db) {}
    Database* db_;
};

/// A consistent copy of the whole database in one new file, on the disk when this returns. Nothing is left on
/// an error.
base::Result<void> copyInto(Database& db, const std::filesystem::path& file);

} // namespace plumbmark::store::detail
