#include "app/storage/database.h"

#include "app/storage/disk_error.h"
#include "app/storage/text.h"

#include <QCoreApplication>

#include <cerrno>

#include <sqlite3.h>

namespace app::storage {

using session::JournalError;

namespace {

JournalError damaged(const std::filesystem::path& file, const std::string& detail)
{
    return {JournalError::Kind::Damaged,
            Text::tr(
                "The journal %1 is damaged (%2). It has been left as it is. Bring back a copy of it, or give "
                "another folder with --data.")
                .arg(QString::fromStdString(file.string()), QString::fromStdString(detail))
                .toStdString()};
}

JournalError locked(const std::filesystem::path& file)
{
    return {JournalError::Kind::InUse,
            Text::tr("Another program has %1 open and locked. Close it, or give another folder with --data.")
                .arg(QString::fromStdString(file.string()))
                .toStdString()};
}

}  // namespace

Database::Database(sqlite3* handle, std::filesystem::path file)
    : m_handle{handle}
    , m_file{std::move(file)}
{
}

Database::~Database()
{
    sqlite3_close(m_handle);
}

Database::Result<std::unique_ptr<Database>> Database::open(const std::filesystem::path& file)
{
    sqlite3* handle = nullptr;
    const int flags =
        SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | SQLITE_OPEN_NOFOLLOW | SQLITE_OPEN_EXRESCODE;
    const int status = sqlite3_open_v2(file.c_str(), &handle, flags, nullptr);
    std::unique_ptr<Database> database{new Database{handle, file}};
    if (status != SQLITE_OK)
        return tl::unexpected{database->error()};
    sqlite3_busy_timeout(handle, 2000);
    return database;
}

Database::Result<void> Database::run(const std::string& commands)
{
    if (sqlite3_exec(m_handle, commands.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
        return tl::unexpected{error()};
    return {};
}

Database::Result<std::string> Database::ask(const std::string& question)
{
    Statement statement{*this, question};
    const auto row = statement.step();
    if (!row)
        return tl::unexpected{row.error()};
    return *row ? statement.text(0) : std::string{};
}

std::int64_t Database::newestId() const
{
    return sqlite3_last_insert_rowid(m_handle);
}

JournalError Database::error() const
{
    const int lastSystemError = errno;
    const int status = sqlite3_extended_errcode(m_handle);
    switch (status & 0xff) {
    case SQLITE_FULL: return diskError(ENOSPC, m_file);
    case SQLITE_READONLY:
    case SQLITE_PERM: return diskError(EROFS, m_file);
    case SQLITE_BUSY:
    case SQLITE_LOCKED: return locked(m_file);
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB: return damaged(m_file, sqlite3_errmsg(m_handle));
    case SQLITE_CANTOPEN:
    case SQLITE_IOERR:
        // SQLite does not always pass on why a write failed; then it is still what the system said last.
        if (const int cause = sqlite3_system_errno(m_handle); cause != 0)
            return diskError(cause, m_file);
        if (lastSystemError != 0)
            return diskError(lastSystemError, m_file);
        break;
    default: break;
    }
    return {JournalError::Kind::Other,
            Text::tr("The journal %1 failed: %2.")
                .arg(QString::fromStdString(m_file.string()), QString::fromUtf8(sqlite3_errmsg(m_handle)))
                .toStdString()};
}

Statement::Statement(Database& database, std::string_view command, std::string_view more,
                     std::string_view rest)
    : m_database{database}
{
    std::string text;
    text.append(command).append(more).append(rest);
    m_failed = sqlite3_prepare_v2(database.m_handle, text.c_str(), -1, &m_statement, nullptr) != SQLITE_OK;
}

Statement::~Statement()
{
    sqlite3_finalize(m_statement);
}

Statement& Statement::bind(int place, std::int64_t value)
{
    m_failed = m_failed || sqlite3_bind_int64(m_statement, place, value) != SQLITE_OK;
    return *this;
}

Statement& Statement::bind(int place, const std::string& value)
{
    // The text is copied only when the statement outlives it; ours are stepped at once, but a copy cannot go
    // wrong.
    m_failed = m_failed
        || sqlite3_bind_text64(m_statement, place, value.data(), value.size(), SQLITE_TRANSIENT, SQLITE_UTF8)
            != SQLITE_OK;
    return *this;
}

Statement& Statement::bind(int place, std::optional<std::int64_t> value)
{
    if (value)
        return bind(place, *value);
    m_failed = m_failed || sqlite3_bind_null(m_statement, place) != SQLITE_OK;
    return *this;
}

Database::Result<bool> Statement::step()
{
    if (m_failed)
        return tl::unexpected{m_database.error()};
    switch (sqlite3_step(m_statement)) {
    case SQLITE_ROW: return true;
    case SQLITE_DONE: return false;
    default: return tl::unexpected{m_database.error()};
    }
}

Database::Result<void> Statement::finish()
{
    return step().map([](bool) {});
}

std::int64_t Statement::number(int column) const
{
    return sqlite3_column_int64(m_statement, column);
}

std::optional<std::int64_t> Statement::numberIfAny(int column) const
{
    if (sqlite3_column_type(m_statement, column) == SQLITE_NULL)
        return std::nullopt;
    return number(column);
}

std::string Statement::text(int column) const
{
    const void* bytes = sqlite3_column_blob(m_statement, column);
    const int length = sqlite3_column_bytes(m_statement, column);
    return bytes ? std::string{static_cast<const char*>(bytes), static_cast<std::size_t>(length)}
                 : std::string{};
}

Transaction::~Transaction()
{
    // A failure here leaves nothing to do: SQLite rolls back by itself when it closes.
    if (m_begun && !m_committed)
        (void)m_database.run("ROLLBACK");
}

Database::Result<void> Transaction::commit()
{
    auto done = m_database.run("COMMIT");
    m_committed = done.has_value();
    return done;
}

}  // namespace app::storage
