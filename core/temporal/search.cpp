#include "core/temporal/search.h"

#include "core/temporal/searcher.h"

#include <algorithm>

namespace core::temporal {

bool Searcher::begin()
{
    for (const Lag& lag : m_problem.lags) {
        if (!m_distances.addForGood(lag))
            return false;
    }
    // With every lag known, only those that no others imply matter for the timing.
    for (const Lag& lag : m_problem.lags) {
        if (isTimed(lag) && lag.from != lag.to && !m_timing.add(lag, noLiteral))
            return false;
    }
    for (const SoftLag& soft : m_problem.softLags)
        m_timing.addSoft(soft);
    return std::ranges::all_of(m_problem.clauses, [this](const Clause& clause) { return addGiven(clause); });
}

/// False if the clause is a conflict, or the search has to start from level 0 and fails there.
bool Searcher::addGiven(const Clause& clause)
{
    std::vector<Literal> literals;
    for (const Lag& lag : clause) {
        if (lag.from == lag.to) {
            if (lag.most >= 0)
                return true;
            continue;
        }
        const Literal literal = m_table.of(lag);
        if (std::ranges::find(literals, literal) == literals.end())
            literals.push_back(literal);
    }
    m_clauses.growTo(m_table.variables());
    m_given.push_back(literals);
    if (literals.size() == 1)
        goBackTo(0);
    if (m_clauses.addClause(std::move(literals), Clauses::Source::Given))
        return true;
    m_conflict = m_clauses.conflict();
    return false;
}

void Searcher::open(Literal literal)
{
    Mark& mark = m_marks.emplace_back();
    mark.distances = m_distances.added();
    mark.toldDistances = m_toldDistances;
    mark.toldTiming = m_toldTiming;
    m_timing.save(mark.timing);
    m_clauses.decide(literal);
    ++m_outcome.decisions;
}

void Searcher::goBackTo(int level)
{
    m_clauses.backTo(level);
    if (static_cast<int>(m_marks.size()) <= level)
        return;
    const Mark& mark = m_marks[static_cast<std::size_t>(level)];
    m_distances.takeBackTo(mark.distances);
    m_timing.restore(mark.timing);
    m_toldDistances = mark.toldDistances;
    m_toldTiming = mark.toldTiming;
    m_marks.resize(static_cast<std::size_t>(level));
}

/// Of the clauses that the cheapest times break, the one that is furthest from
/// holding, the more so the more its literals were in conflicts lately; of its
/// literals the one that is nearest, and one about times before one about points
/// that the problem places: those have room as long as the times leave it.
std::optional<Literal> Searcher::choose() const
{
    std::optional<Literal> best;
    double highest = 0;
    for (const std::vector<Literal>& clause : m_given) {
        std::optional<Literal> nearest;
        Time least = 0;
        bool timed = false;
        double activity = 0;
        bool broken = true;
        for (const Literal literal : clause) {
            const Time stretched = stretch(literal);
            if (stretched <= 0) {
                broken = false;
                break;
            }
            if (!m_clauses.isOpen(literal))
                continue;
            activity = std::max(activity, m_clauses.activity(literal));
            const bool here = isTimed(m_table.lag(literal));
            if (nearest && (timed != here ? timed : stretched >= least))
                continue;
            nearest = literal;
            least = stretched;
            timed = here;
        }
        if (!broken || !nearest)
            continue;
        const double weight = static_cast<double>(least) * (1 + activity);
        if (weight <= highest)
            continue;
        best = nearest;
        highest = weight;
    }
    return best;
}

/// Whether the times break clauses that were not written down yet, or those contradict what is decided.
Searcher::Asked Searcher::askLazily()
{
    if (!m_problem.lazyClauses)
        return Asked::Fine;
    const std::vector<Clause> found = m_problem.lazyClauses(*m_times);
    if (found.empty())
        return Asked::Fine;
    return std::ranges::all_of(found, [this](const Clause& clause) { return addGiven(clause); })
        ? Asked::Broken
        : Asked::Conflict;
}

/// Learns from `m_conflict`. False if no decision is to blame: the search is over.
bool Searcher::resolve()
{
    ++m_outcome.conflicts;
    const int level =
        m_clauses.learn(m_conflict, [this](Literal literal, int moment, std::vector<Literal>& reasons) {
            const Lag& lag = m_table.lag(literal);
            m_distances.explain(lag.from, lag.to, moment, reasons);
        });
    if (level < 0)
        return false;
    goBackTo(level);
    return true;
}

bool Searcher::shouldStop()
{
    if (m_outcome.conflicts >= m_limits.conflicts)
        return true;
    return m_limits.stop && (++m_steps & 31U) == 0 && m_limits.stop();
}

/// What is to be decided next, where nothing is in the way of these times but what is still open.
std::optional<Literal> Searcher::next()
{
    if (m_clauses.level() == 0) {
        raiseBound();
        if (const std::optional<Literal> literal = m_problem.raisesBound ? supposeLowPrice() : probe())
            return literal;
    }
    return choose();
}

/// With no clause broken that is written down: looks at the others, and keeps the times if all is well.
/// False if the search is over.
bool Searcher::takeTimes()
{
    const Asked asked = askLazily();
    if (asked == Asked::Conflict)
        return resolve();
    if (asked == Asked::Broken || foundBetter())
        return true;
    if (const std::optional<Literal> literal = unsettledPresence())
        open(*literal);
    return true;
}

Outcome Searcher::run()
{
    m_outcome.complete = !begin();
    if (!m_outcome.complete && m_limits.known) {
        m_price = m_limits.known->price;
        record(m_limits.known->times);
    }
    while (!m_outcome.complete) {
        m_conflict.clear();
        if (conclude() == Step::Conflict) {
            m_outcome.complete = !resolve();
            continue;
        }
        if (shouldStop())
            break;
        if (const std::optional<Literal> literal = next())
            open(*literal);
        else
            m_outcome.complete = !takeTimes();
    }
    if (m_outcome.complete && m_outcome.best)
        m_outcome.bound = m_outcome.best->price;
    return m_outcome;
}

Outcome search(const Problem& problem, const Limits& limits)
{
    return Searcher{problem, limits}.run();
}

}  // namespace core::temporal
