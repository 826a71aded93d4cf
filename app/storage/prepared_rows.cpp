#include "app/storage/prepared_rows.h"

#include "app/storage/run_rows.h"
#include "app/storage/seal.h"
#include "app/storage/words.h"

#include <string>
#include <utility>

namespace app::storage {

using core::run::Prepared;
using core::run::Preparing;
using session::RunId;
using session::StoredRun;

namespace {

using State = Prepared::State;

constexpr Words<Preparing, 4> preparingWords{{
    {Preparing::Sound, "sound"},
    {Preparing::Tests, "tests"},
    {Preparing::Protection, "protection"},
    {Preparing::Bowls, "bowls"},
}};

constexpr Words<State, 3> stateWords{{
    {State::Open, "open"},
    {State::Done, "done"},
    {State::Skipped, "skipped"},
}};

std::optional<std::int64_t> secondsSaid(const Prepared& prepared)
{
    if (!prepared.at)
        return std::nullopt;
    return std::int64_t{prepared.at->time_since_epoch().count()};
}

/// All columns but the seal. What is in words comes last, for it may hold anything.
std::int64_t sealOfPrepared(RunId run, std::int64_t place, const Prepared& prepared)
{
    std::string text = std::to_string(place) + '\n' + wordOf(preparingWords, prepared.what) + '\n'
        + wordOf(stateWords, prepared.state) + '\n';
    if (const auto at = secondsSaid(prepared))
        text += std::to_string(*at);
    return sealOf(numberOf(run), text + '\n' + prepared.why);
}

/// Nothing where it is of words that nobody wrote.
std::optional<Prepared> preparedIn(const Statement& row)
{
    const auto what = valueOf(preparingWords, row.text(1));
    const auto state = valueOf(stateWords, row.text(2));
    if (!what || !state)
        return std::nullopt;
    Prepared prepared{.what = *what, .state = *state, .why = row.text(4)};
    if (const auto at = row.numberIfAny(3))
        prepared.at = core::measure::Instant{core::measure::Seconds{*at}};
    return prepared;
}

}  // namespace

Database::Result<void> insertPrepared(Database& database, RunId run, const std::vector<Prepared>& prepared)
{
    for (std::size_t place = 0; place < prepared.size(); ++place) {
        Statement statement{
            database, "INSERT INTO prepared (run, place, what, state, at, why, seal) VALUES (?,?,?,?,?,?,?)"};
        const auto number = static_cast<std::int64_t>(place);
        statement.bind(1, numberOf(run))
            .bind(2, number)
            .bind(3, wordOf(preparingWords, prepared[place].what))
            .bind(4, wordOf(stateWords, prepared[place].state))
            .bind(5, secondsSaid(prepared[place]))
            .bind(6, prepared[place].why)
            .bind(7, sealOfPrepared(run, number, prepared[place]));
        if (auto done = statement.finish(); !done)
            return done;
    }
    return {};
}

Database::Result<void> readPrepared(Database& database, StoredRun& stored, std::int64_t count)
{
    Statement rows{database,
                   "SELECT place, what, state, at, why, seal FROM prepared WHERE run = ? ORDER BY place"};
    rows.bind(1, numberOf(stored.id));
    auto more = rows.step();
    for (; more && *more; more = rows.step()) {
        auto prepared = preparedIn(rows);
        stored.damaged = stored.damaged || !prepared
            || sealOfPrepared(stored.id, rows.number(0), *prepared) != rows.number(5);
        if (prepared)
            stored.run.prepared.push_back(std::move(*prepared));
    }
    if (!more)
        return tl::unexpected{more.error()};
    const bool erased = stored.run.services.empty();
    stored.damaged =
        stored.damaged || static_cast<std::int64_t>(stored.run.prepared.size()) != (erased ? 0 : count);
    return {};
}

}  // namespace app::storage
