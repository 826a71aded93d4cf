#include "app/storage/sqlite_journal.h"

#include "app/storage/database.h"
#include "app/storage/fact_row.h"
#include "app/storage/folder_lock.h"
#include "app/storage/prepared_rows.h"
#include "app/storage/run_rows.h"
#include "app/storage/said_words.h"
#include "app/storage/schema.h"
#include "app/storage/text.h"

#include <QCoreApplication>

#include <system_error>
#include <utility>

namespace app::storage {

using core::run::FactKind;
using session::Fact;
using session::FactNumber;
using session::JournalError;
using session::NewRun;
using session::RunId;
using session::StoredRun;

namespace {

JournalError notThere(RunId run)
{
    return {JournalError::Kind::NotThere,
            Text::tr("The journal knows no run %1.").arg(numberOf(run)).toStdString()};
}

JournalError damagedAt(RunId run, std::size_t place)
{
    return {
        JournalError::Kind::Damaged,
        Text::tr("Run %1 is damaged in the journal: its record %2 is missing or was changed. It cannot be "
                 "taken up again; the journal has been left as it is.")
            .arg(numberOf(run))
            .arg(place)
            .toStdString()};
}

/// Whether a file is too short to be a database, though not empty. SQLite would take it for a new one and
/// write over it.
bool isStump(const std::filesystem::path& file)
{
    constexpr std::uintmax_t smallestPage = 512;
    std::error_code error;
    const std::uintmax_t size = std::filesystem::file_size(file, error);
    return !error && size > 0 && size < smallestPage;
}

/// Where the chain of a run's facts stands: how many there are, and the seal of the last.
struct ChainEnd {
    std::int64_t count = 0;
    std::int64_t seal = 0;
};

Database::Result<ChainEnd> chainEnd(Database& database, RunId run)
{
    Statement known{database, "SELECT count(*) FROM run WHERE id = ?"};
    known.bind(1, numberOf(run));
    const auto there = known.step();
    if (!there)
        return tl::unexpected{there.error()};
    if (known.number(0) == 0)
        return tl::unexpected{notThere(run)};

    Statement last{database, "SELECT number, seal FROM fact WHERE run = ? ORDER BY number DESC LIMIT 1"};
    last.bind(1, numberOf(run));
    const auto any = last.step();
    if (!any)
        return tl::unexpected{any.error()};
    return *any ? ChainEnd{last.number(0), last.number(1)} : ChainEnd{};
}

Database::Result<void> setBase(Database& database, RunId run, const session::TimeBase& base)
{
    Statement statement{database, "UPDATE run SET boot = ?, wall_minus_elapsed = ? WHERE id = ?"};
    statement.bind(1, base.boot).bind(2, std::int64_t{base.wallMinusElapsed.count()}).bind(3, numberOf(run));
    return statement.finish();
}

Database::Result<void> markEnded(Database& database, RunId run, core::measure::Instant ended)
{
    Statement statement{database, "UPDATE run SET ended = ? WHERE id = ?"};
    statement.bind(1, std::int64_t{ended.time_since_epoch().count()}).bind(2, numberOf(run));
    return statement.finish();
}

Database::Result<std::vector<FactNumber>> insertFacts(Database& database, RunId run,
                                                      std::span<const Fact> facts)
{
    auto end = chainEnd(database, run);
    if (!end)
        return tl::unexpected{end.error()};
    std::vector<FactNumber> numbers;
    for (Fact fact : facts) {
        fact.number = FactNumber{++end->count};
        const FactRow row{run, fact, end->seal};
        auto done = row.insert(database);
        if (done && fact.kind == FactKind::Ended)
            done = markEnded(database, run, fact.happened);
        if (!done)
            return tl::unexpected{done.error()};
        end->seal = row.seal();
        numbers.push_back(fact.number);
    }
    return numbers;
}

Database::Result<void> eraseFrom(Database& database, const std::string& table, RunId run)
{
    Statement statement{database, "DELETE FROM ", table, " WHERE run = ?"};
    statement.bind(1, numberOf(run));
    return statement.finish();
}

}  // namespace

SqliteJournal::SqliteJournal(std::unique_ptr<FolderLock> lock, std::unique_ptr<Database> database)
    : m_lock{std::move(lock)}
    , m_database{std::move(database)}
{
}

SqliteJournal::~SqliteJournal() = default;

SqliteJournal::Result<std::unique_ptr<SqliteJournal>> SqliteJournal::open(const std::filesystem::path& folder)
{
    auto lock = FolderLock::take(folder);
    if (!lock)
        return tl::unexpected{lock.error()};
    if (isStump(folder / fileName))
        return tl::unexpected{JournalError{JournalError::Kind::Damaged,
                                           Text::tr("The journal %1 was cut off.")
                                               .arg(QString::fromStdString((folder / fileName).string()))
                                               .toStdString()}};
    auto database = Database::open(folder / fileName);
    if (!database)
        return tl::unexpected{database.error()};
    if (auto ready = prepareSchema(**database); !ready)
        return tl::unexpected{ready.error()};
    return std::unique_ptr<SqliteJournal>{new SqliteJournal{std::move(*lock), std::move(*database)}};
}

SqliteJournal::Result<RunId> SqliteJournal::begin(const NewRun& run)
{
    Transaction transaction{*m_database};
    if (!transaction.begun())
        return tl::unexpected{transaction.begun().error()};
    const auto inserted = insertRun(*m_database, run);
    if (!inserted)
        return tl::unexpected{inserted.error()};
    const RunId id = *inserted;
    return insertServices(*m_database, id, run.services)
        .and_then([&] { return insertPrepared(*m_database, id, run.prepared); })
        .and_then([&] { return run.base ? setBase(*m_database, id, *run.base) : Result<void>{}; })
        .and_then([&] { return transaction.commit(); })
        .map([&] { return id; });
}

SqliteJournal::Result<void> SqliteJournal::amend(RunId run, std::size_t revision,
                                                 const std::vector<std::string>& services)
{
    Transaction transaction{*m_database};
    if (!transaction.begun())
        return tl::unexpected{transaction.begun().error()};
    if (const auto known = chainEnd(*m_database, run); !known)
        return tl::unexpected{known.error()};
    return insertRevision(*m_database, run, revision, services).and_then([&] {
        return transaction.commit();
    });
}

SqliteJournal::Result<std::vector<FactNumber>> SqliteJournal::append(RunId run, std::span<const Fact> facts)
{
    Transaction transaction{*m_database};
    if (!transaction.begun())
        return tl::unexpected{transaction.begun().error()};
    auto numbers = insertFacts(*m_database, run, facts);
    if (!numbers)
        return numbers;
    return transaction.commit().map([&] { return std::move(*numbers); });
}

SqliteJournal::Result<std::vector<Fact>> SqliteJournal::facts(RunId run)
{
    const auto words = SaidWords::read(*m_database, run);
    if (!words)
        return tl::unexpected{words.error()};
    Statement rows{*m_database, "SELECT ", FactRow::columns, " FROM fact WHERE run = ? ORDER BY number"};
    rows.bind(1, numberOf(run));
    std::vector<Fact> facts;
    std::int64_t seal = 0;
    auto more = rows.step();
    for (; more && *more; more = rows.step()) {
        const std::size_t place = facts.size() + 1;
        const bool hasWords = FactRow::hasWords(rows);
        auto fact = FactRow::read(rows);
        if (!fact || fact->number != FactNumber{static_cast<std::int64_t>(place)}
            || FactRow(run, *fact, hasWords, seal).seal() != FactRow::sealOf(rows)
            || !words->goWith(hasWords, *fact))
            return tl::unexpected{damagedAt(run, place)};
        seal = FactRow::sealOf(rows);
        facts.push_back(std::move(*fact));
    }
    if (!more)
        return tl::unexpected{more.error()};
    return facts;
}

SqliteJournal::Result<std::vector<StoredRun>> SqliteJournal::unfinished()
{
    return readRuns(*m_database, " WHERE ended IS NULL ORDER BY began DESC, id DESC");
}

SqliteJournal::Result<std::vector<StoredRun>> SqliteJournal::runs()
{
    return readRuns(*m_database, " ORDER BY began DESC, id DESC");
}

SqliteJournal::Result<StoredRun> SqliteJournal::run(RunId run)
{
    auto runs = readRuns(*m_database, " WHERE id = ?", run);
    if (!runs)
        return tl::unexpected{runs.error()};
    if (runs->empty())
        return tl::unexpected{notThere(run)};
    return std::move(runs->front());
}

SqliteJournal::Result<void> SqliteJournal::rebase(RunId run, const session::TimeBase& base)
{
    if (const auto known = this->run(run); !known)
        return tl::unexpected{known.error()};
    return setBase(*m_database, run, base);
}

SqliteJournal::Result<void> SqliteJournal::eraseServices(RunId run)
{
    const auto stored = this->run(run);
    if (!stored)
        return tl::unexpected{stored.error()};
    if (!stored->ended)
        return tl::unexpected{
            JournalError{JournalError::Kind::Other,
                         Text::tr("The run is still open. End it before erasing it.").toStdString()}};
    Transaction transaction{*m_database};
    auto done = transaction.begun();
    for (const char* const table : {"prepared", "said", "revision", "service"})
        done = done.and_then([&] { return eraseFrom(*m_database, table, run); });
    // The write-ahead file still holds the old text until it is folded in and cut.
    return done.and_then([&] { return transaction.commit(); }).and_then([&] {
        return m_database->run("PRAGMA wal_checkpoint(TRUNCATE)");
    });
}

SqliteJournal::Result<std::string> SqliteJournal::flushing()
{
    return m_database->ask("PRAGMA synchronous");
}

}  // namespace app::storage
