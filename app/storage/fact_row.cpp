#include "app/storage/fact_row.h"

#include "app/storage/seal.h"
#include "app/storage/words.h"

#include <algorithm>
#include <sstream>
#include <string>

namespace app::storage {

using core::run::Fact;
using core::run::FactKind;
using core::run::FactNumber;
using core::run::Outcome;
using core::run::Verdict;

namespace {

constexpr Words<FactKind, 10> kindWords{{
    {FactKind::Started, "started"},
    {FactKind::Finished, "finished"},
    {FactKind::Looked, "looked"},
    {FactKind::Dropped, "dropped"},
    {FactKind::Undone, "undone"},
    {FactKind::Moved, "moved"},
    {FactKind::Ended, "ended"},
    {FactKind::Amended, "amended"},
    {FactKind::TurnedOut, "turned out"},
    {FactKind::Noted, "noted"},
}};

constexpr Words<Verdict, 3> verdictWords{{
    {Verdict::Leave, "leave"},
    {Verdict::Again, "again"},
    {Verdict::RinseNow, "rinse now"},
}};

constexpr Words<Outcome, 6> outcomeWords{{
    {Outcome::AsWanted, "as wanted"},
    {Outcome::TooLight, "too light"},
    {Outcome::TooDark, "too dark"},
    {Outcome::TooWarm, "too warm"},
    {Outcome::TooCool, "too cool"},
    {Outcome::Uneven, "uneven"},
}};

std::int64_t secondsOf(core::measure::Instant moment)
{
    return moment.time_since_epoch().count();
}

std::optional<std::int64_t> aboutOf(const Fact& fact)
{
    if (!fact.about)
        return std::nullopt;
    return static_cast<std::int64_t>(*fact.about);
}

/// Empty where there is none.
std::string outcomeOf(const Fact& fact)
{
    return fact.outcome ? wordOf(outcomeWords, *fact.outcome) : std::string{};
}

/// All columns but the seal, parted by a character that stands in none of them.
std::string sealedText(session::RunId run, const Fact& fact, bool hasWords)
{
    std::ostringstream text;
    text << static_cast<std::int64_t>(run) << '\n' << static_cast<std::int64_t>(fact.number) << '\n';
    text << wordOf(kindWords, fact.kind) << '\n' << core::stagger::taskIdText(fact.task) << '\n';
    if (const auto about = aboutOf(fact))
        text << *about;
    text << '\n' << secondsOf(fact.happened) << '\n' << secondsOf(fact.recorded) << '\n';
    text << wordOf(verdictWords, fact.verdict) << '\n' << fact.again.count() << '\n';
    // A column that came later has no part in the seals of what was written before it.
    if (fact.revision != 0)
        text << fact.revision << '\n';
    if (hasWords)
        text << "words\n";
    if (fact.outcome)
        text << "outcome " << outcomeOf(fact) << '\n';
    return text.str();
}

}  // namespace

FactRow::FactRow(session::RunId run, const Fact& fact, std::int64_t sealBefore)
    : FactRow{run, fact, !fact.tone.empty(), sealBefore}
{
}

FactRow::FactRow(session::RunId run, const Fact& fact, bool hasWords, std::int64_t sealBefore)
    : m_run{run}
    , m_fact{fact}
    , m_hasWords{hasWords}
    , m_seal{storage::sealOf(sealBefore, sealedText(run, fact, hasWords))}
{
}

std::int64_t FactRow::sealOfWords(session::RunId run, FactNumber fact, const std::string& words)
{
    std::ostringstream text;
    text << static_cast<std::int64_t>(run) << '\n'
         << static_cast<std::int64_t>(fact) << '\n'
         << words << '\n';
    return storage::sealOf(0, text.str());
}

Database::Result<void> FactRow::insertWords(Database& database) const
{
    Statement statement{database, "INSERT INTO said (run, fact, words, seal) VALUES (?,?,?,?)"};
    statement.bind(1, static_cast<std::int64_t>(m_run))
        .bind(2, static_cast<std::int64_t>(m_fact.number))
        .bind(3, m_fact.tone)
        .bind(4, sealOfWords(m_run, m_fact.number, m_fact.tone));
    return statement.finish();
}

Database::Result<void> FactRow::insert(Database& database) const
{
    Statement statement{database, "INSERT INTO fact (run, ", columns, ") VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?)"};
    statement.bind(1, static_cast<std::int64_t>(m_run))
        .bind(2, static_cast<std::int64_t>(m_fact.number))
        .bind(3, wordOf(kindWords, m_fact.kind))
        .bind(4, core::stagger::taskIdText(m_fact.task))
        .bind(5, aboutOf(m_fact))
        .bind(6, secondsOf(m_fact.happened))
        .bind(7, secondsOf(m_fact.recorded))
        .bind(8, wordOf(verdictWords, m_fact.verdict))
        .bind(9, std::int64_t{m_fact.again.count()})
        .bind(10, m_seal)
        .bind(11, static_cast<std::int64_t>(m_fact.revision))
        .bind(12, std::int64_t{m_hasWords})
        .bind(13, outcomeOf(m_fact));
    const auto done = statement.finish();
    return done && m_hasWords ? insertWords(database) : done;
}

std::optional<Fact> FactRow::read(const Statement& statement)
{
    const auto kind = valueOf(kindWords, statement.text(1));
    const auto verdict = valueOf(verdictWords, statement.text(6));
    Fact fact;
    if (!kind || !verdict || !core::stagger::readTaskId(statement.text(2), fact.task))
        return std::nullopt;
    if (const std::string outcome = statement.text(11); !outcome.empty()) {
        fact.outcome = valueOf(outcomeWords, outcome);
        if (!fact.outcome)
            return std::nullopt;
    }
    fact.number = FactNumber{statement.number(0)};
    fact.kind = *kind;
    if (const auto about = statement.numberIfAny(3))
        fact.about = FactNumber{*about};
    fact.happened = core::measure::Instant{core::measure::Seconds{statement.number(4)}};
    fact.recorded = core::measure::Instant{core::measure::Seconds{statement.number(5)}};
    fact.verdict = *verdict;
    fact.again = core::measure::Seconds{statement.number(7)};
    fact.revision = static_cast<std::size_t>(std::max(std::int64_t{0}, statement.number(9)));
    return fact;
}

}  // namespace app::storage
