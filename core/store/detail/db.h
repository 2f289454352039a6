// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include <sqlite3.h>

#include "base/result.h"

namespace plumbmark::store::detail {

/// A result code of the database as one plain sentence.
base::Error databaseError(int code);

class Statement {
  public:
    explicit Statement(sqlite3_stmt* handle) : handle_(handle) {}
    Statement& bind(int place, std::string_view text);
    Statement& bind(int place, std::int64_t number);
    Statement& bind(int place, double number);
    Statement& bind(int place, const std::optional<double>& number);
    Statement& bindNull(int place);
    /// true: a row is there; false: done.
    base::Result<bool> step();
    /// For statements that give no rows.
    base::Result<void> run();
    /// Ready for the next values.
    void reset();
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] double number(int column) const;
    [[nodiscard]] bool isNull(int column) const;

  private:
    struct Finalise {
        void operator()(sqlite3_stmt* s) const { sqlite3_finalize(s); }
    };
    std::unique_ptr<sqlite3_stmt, Finalise> handle_;
    int trouble_ = SQLITE_OK; ///< of binding, told by the next step
};

class Database {
  public:
    enum class Mode { readWrite, create, readOnly };
    /// The only place in the program that opens a database. Sets every switch whose default is the wrong way
    /// and reads each back. `create` fails when the file is there.
    static base::Result<Database> open(const std::filesystem::path& file, Mode mode);

    base::Result<Statement> prepare(std::string_view sql);
    /// One or more statements without values or rows.
    base::Result<void> exec(const std::string& sql);
    base::Result<std::int64_t> number(std::string_view sql); ///< first column of the first row
    [[nodiscard]] sqlite3* handle() const { return handle_.get(); }

  private:
    struct Close {
        void operator()(sqlite3* db) const { sqlite3_close_v2(db); }
    };
    explicit Database(sqlite3* handle) : handle_(handle) {}
    base::Result<void> setSwitches(Mode mode);
    std::unique_ptr<sqlite3, Close> handle_;
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

} // namespace plumbmark::store::detail
