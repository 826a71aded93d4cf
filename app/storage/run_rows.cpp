#include "app/storage/run_rows.h"

#include "app/storage/prepared_rows.h"
#include "app/storage/seal.h"
#include "app/storage/words.h"

#include <algorithm>
#include <string_view>
#include <utility>

namespace app::storage {

using core::stagger::Preference;
using session::NewRun;
using session::RunId;
using session::StoredRun;

namespace {

constexpr Words<Preference, 3> preferenceWords{{
    {Preference::AsAsked, "as asked"},
    {Preference::StartLate, "start late"},
    {Preference::EndEarly, "end early"},
}};

core::measure::Instant instantOf(std::int64_t seconds)
{
    return core::measure::Instant{core::measure::Seconds{seconds}};
}

constexpr const char* runColumns =
    "SELECT id, preference, began, simulated, ended, boot, wall_minus_elapsed, seal, prepared FROM run";

/// What a run was begun with, but for its services: none of it ever changes. Of so many things something was
/// said before.
std::int64_t sealOfRun(const NewRun& run, std::int64_t prepared)
{
    std::string text = wordOf(preferenceWords, run.preference) + '\n'
        + std::to_string(run.began.time_since_epoch().count()) + '\n' + std::to_string(int{run.simulated});
    // A column that came later has no part in the seals of what was written before it.
    if (prepared != 0)
        text += '\n' + std::to_string(prepared);
    return sealOf(0, text);
}

/// A service file at its place in a run, or in one of its revisions; that of the run itself is 0.
std::int64_t sealOfFile(RunId run, std::size_t revision, std::int64_t place, const std::string& file)
{
    return sealOf(numberOf(run), std::to_string(revision) + '\n' + std::to_string(place) + '\n' + file);
}

/// Whether a row is as it was written. What an older program wrote has no seal.
bool isWhole(std::optional<std::int64_t> seal, std::int64_t expected)
{
    return !seal || *seal == expected;
}

Database::Result<void> readRevisions(Database& database, StoredRun& stored)
{
    Statement rows{database,
                   "SELECT number, file, place, seal FROM revision WHERE run = ? ORDER BY number, place"};
    rows.bind(1, numberOf(stored.id));
    auto more = rows.step();
    for (; more && *more; more = rows.step()) {
        const auto number = static_cast<std::size_t>(std::max(std::int64_t{1}, rows.number(0)));
        const bool next = number <= stored.revisions.size() + 1;
        stored.damaged = stored.damaged || !next
            || !isWhole(rows.numberIfAny(3), sealOfFile(stored.id, number, rows.number(2), rows.text(1)));
        if (!next)
            return {};
        stored.revisions.resize(std::max(stored.revisions.size(), number));
        stored.revisions.back().push_back(rows.text(1));
    }
    if (!more)
        return tl::unexpected{more.error()};
    return {};
}

Database::Result<void> readServices(Database& database, StoredRun& stored)
{
    Statement rows{database, "SELECT file, place, seal FROM service WHERE run = ? ORDER BY place"};
    rows.bind(1, numberOf(stored.id));
    auto more = rows.step();
    for (; more && *more; more = rows.step()) {
        stored.damaged = stored.damaged
            || !isWhole(rows.numberIfAny(2), sealOfFile(stored.id, 0, rows.number(1), rows.text(0)));
        stored.run.services.push_back(rows.text(0));
    }
    if (!more)
        return tl::unexpected{more.error()};
    return {};
}

Database::Result<StoredRun> readRun(Database& database, const Statement& row)
{
    StoredRun stored;
    stored.id = RunId{row.number(0)};
    stored.run.preference = valueOf(preferenceWords, row.text(1)).value_or(Preference::AsAsked);
    stored.run.began = instantOf(row.number(2));
    stored.run.simulated = row.number(3) != 0;
    if (const auto ended = row.numberIfAny(4))
        stored.ended = instantOf(*ended);
    if (const auto wallMinusElapsed = row.numberIfAny(6))
        stored.run.base = session::TimeBase{row.text(5), std::chrono::nanoseconds{*wallMinusElapsed}};

    stored.damaged = !isWhole(row.numberIfAny(7), sealOfRun(stored.run, row.number(8)));
    return readServices(database, stored)
        .and_then([&] { return readRevisions(database, stored); })
        .and_then([&] { return readPrepared(database, stored, row.number(8)); })
        .map([&] { return std::move(stored); });
}

}  // namespace

std::int64_t numberOf(RunId run)
{
    return static_cast<std::int64_t>(run);
}

Database::Result<std::vector<StoredRun>> readRuns(Database& database, const char* which,
                                                  std::optional<RunId> id)
{
    Statement rows{database, runColumns, which};
    if (id)
        rows.bind(1, numberOf(*id));
    std::vector<StoredRun> runs;
    auto more = rows.step();
    for (; more && *more; more = rows.step()) {
        auto stored = readRun(database, rows);
        if (!stored)
            return tl::unexpected{stored.error()};
        runs.push_back(std::move(*stored));
    }
    if (!more)
        return tl::unexpected{more.error()};
    return runs;
}

Database::Result<void> insertServices(Database& database, RunId run, const std::vector<std::string>& services)
{
    for (std::size_t place = 0; place < services.size(); ++place) {
        Statement statement{database, "INSERT INTO service (run, place, file, seal) VALUES (?, ?, ?, ?)"};
        const auto number = static_cast<std::int64_t>(place);
        statement.bind(1, numberOf(run))
            .bind(2, number)
            .bind(3, services[place])
            .bind(4, sealOfFile(run, 0, number, services[place]));
        if (auto done = statement.finish(); !done)
            return done;
    }
    return {};
}

Database::Result<RunId> insertRun(Database& database, const NewRun& run)
{
    Statement statement{
        database, "INSERT INTO run (preference, began, simulated, seal, prepared) VALUES (?, ?, ?, ?, ?)"};
    const auto prepared = static_cast<std::int64_t>(run.prepared.size());
    statement.bind(1, wordOf(preferenceWords, run.preference))
        .bind(2, std::int64_t{run.began.time_since_epoch().count()})
        .bind(3, std::int64_t{run.simulated})
        .bind(4, sealOfRun(run, prepared))
        .bind(5, prepared);
    return statement.finish().map([&] { return RunId{database.newestId()}; });
}

Database::Result<void> insertRevision(Database& database, RunId run, std::size_t revision,
                                      const std::vector<std::string>& services)
{
    for (std::size_t place = 0; place < services.size(); ++place) {
        Statement statement{
            database,
            "INSERT OR REPLACE INTO revision (run, number, place, file, seal) VALUES (?, ?, ?, ?, ?)"};
        const auto number = static_cast<std::int64_t>(place);
        statement.bind(1, numberOf(run))
            .bind(2, static_cast<std::int64_t>(revision))
            .bind(3, number)
            .bind(4, services[place])
            .bind(5, sealOfFile(run, revision, number, services[place]));
        if (auto done = statement.finish(); !done)
            return done;
    }
    return {};
}

}  // namespace app::storage
