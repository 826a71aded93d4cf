#include "core/temporal/searcher.h"

#include <algorithm>
#include <cassert>

/// How the search comes down to the best answer by leaps. Times that are found step
/// by step get better by little and little. So each better answer is followed by the
/// question whether the level of the objective that is not settled yet can be half
/// way between the best so far and what is proved: "it is worth at most so much" is a
/// decision of its own, the first of all. What is learned under it says so, which
/// keeps it true whatever the answer.
namespace core::temporal {

/// The least worth of the probed level that refuted probes leave, in its units from its zero.
Price Searcher::provedWorth() const
{
    const Time refuted = m_distances.between(worthPoint(), origin);
    return std::max(m_timing.bound(m_problem.levels[m_probed]) - *m_worthZero,
                    refuted < 0 ? Price{-refuted} : Price{0});
}

/// With nothing decided: what no answer can be cheaper than.
void Searcher::raiseBound()
{
    m_outcome.bound = std::max(m_outcome.bound, m_price);
    if (m_worthZero)
        m_outcome.bound =
            std::max(m_outcome.bound, (*m_worthZero + provedWorth()) * m_problem.levels[m_probed]);
}

/// With nothing decided: what to ask of the first level that is not settled. Once for each
/// better answer: from a refuted probe on every answer that is found ends the doubt.
std::optional<Literal> Searcher::probe()
{
    for (; m_outcome.best && m_probed < m_problem.levels.size(); ++m_probed, m_worthZero.reset()) {
        const Price unit = m_problem.levels[m_probed];
        if (!m_worthZero)
            m_worthZero = std::max(m_timing.bound(unit), m_outcome.bound / unit);
        const Price best = m_outcome.best->price / unit - *m_worthZero;
        const Price least = provedWorth();
        if (best <= least || best >= farTime)
            continue;
        if (m_probedSinceBest)
            break;
        m_probedSinceBest = true;
        const Literal literal =
            m_table.of({origin, worthPoint(), static_cast<Time>(least + (best - 1 - least) / 2)});
        m_clauses.growTo(m_table.variables());
        if (m_clauses.isOpen(literal))
            return literal;
    }
    return std::nullopt;
}

/// With nothing decided: that the price is no higher than it has to be, by the lag that has it.
std::optional<Literal> Searcher::supposeLowPrice()
{
    if (!m_outcome.best)
        return std::nullopt;
    assert(m_problem.softLags.size() == 1 && m_problem.softLags.front().price > 0);
    const SoftLag& soft = m_problem.softLags.front();
    Lag lag = soft.lag;
    lag.most += static_cast<Time>(m_price / soft.price);
    const Literal literal = m_table.of(lag);
    m_clauses.growTo(m_table.variables());
    return m_clauses.isOpen(literal) ? std::optional{literal} : std::nullopt;
}

/// Whether everything below this node is worth more than is asked for; then the conflict says why.
bool Searcher::isAboveProbe()
{
    if (!m_worthZero)
        return false;
    const Price unit = m_problem.levels[m_probed];
    const Time asked = m_distances.between(origin, worthPoint());
    if (asked >= Distances::unbounded || m_timing.bound(unit) <= *m_worthZero + asked)
        return false;
    m_conflict.clear();
    m_timing.explainMoreThan(*m_worthZero + asked, unit, m_conflict);
    m_distances.explain(origin, worthPoint(), m_distances.added(), m_conflict);
    turnIntoClause();
    return true;
}

/// Keeps these times if they are better; then the search begins at the top again, to ask for a leap.
bool Searcher::foundBetter()
{
    if (!record(*m_times) || (m_problem.levels.empty() && !m_problem.raisesBound))
        return false;
    m_probedSinceBest = false;
    goBackTo(0);
    return true;
}

}  // namespace core::temporal
