#pragma once

#include "app/session/journal.h"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

struct sqlite3;
struct sqlite3_stmt;

namespace app::storage {

/// One SQLite file, opened by this program. What can go wrong comes back as words.
class Database {
public:
    template <typename T>
    using Result = session::Journal::Result<T>;

    static Result<std::unique_ptr<Database>> open(const std::filesystem::path& file);
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;
    ~Database();

    /// Runs commands that give nothing back.
    Result<void> run(const std::string& commands);

    /// The first column of the first row.
    Result<std::string> ask(const std::string& question);

    /// The newest id that an INSERT made.
    [[nodiscard]] std::int64_t newestId() const;

    /// What SQLite's latest failure means, in words.
    [[nodiscard]] session::JournalError error() const;

private:
    friend class Statement;
    Database(sqlite3* handle, std::filesystem::path file);

    sqlite3* m_handle;
    std::filesystem::path m_file;
};

/// One command with places to fill in. Binding counts from 1, columns from 0, as
/// in SQLite.
class Statement {
public:
    /// The command may come in two or three parts.
    Statement(Database& database, std::string_view command, std::string_view more = {},
              std::string_view rest = {});
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;
    ~Statement();

    Statement& bind(int place, std::int64_t value);
    Statement& bind(int place, const std::string& value);
    Statement& bind(int place, std::optional<std::int64_t> value);

    /// Whether there is a row to read.
    Database::Result<bool> step();
    /// For commands without rows.
    Database::Result<void> finish();

    [[nodiscard]] std::int64_t number(int column) const;
    [[nodiscard]] std::optional<std::int64_t> numberIfAny(int column) const;
    [[nodiscard]] std::string text(int column) const;

private:
    Database& m_database;
    sqlite3_stmt* m_statement = nullptr;
    bool m_failed = false;
};

/// All that is done while it lives is done together at `commit`, or not at all.
class Transaction {
public:
    explicit Transaction(Database& database)
        : m_database{database}
        , m_begun{database.run("BEGIN IMMEDIATE")}
    {
    }
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    ~Transaction();

    [[nodiscard]] const Database::Result<void>& begun() const { return m_begun; }
    Database::Result<void> commit();

private:
    Database& m_database;
    Database::Result<void> m_begun;
    bool m_committed = false;
};

}  // namespace app::storage
