#include "core/temporal/searcher.h"

#include <algorithm>

/// What follows at a node: from clauses, from lags, from the price.
namespace core::temporal {

bool Searcher::tellDistances()
{
    while (m_toldDistances < m_clauses.trail().size()) {
        const Literal literal = m_clauses.trail()[m_toldDistances++];
        if (m_clauses.isFromTheory(literal))
            continue;  // It follows from what the network knows already.
        const Lag& lag = m_table.lag(literal);
        if (m_distances.between(lag.to, lag.from) + lag.most < 0) {
            m_conflict.assign(1, ~literal);
            std::vector<Literal> reasons;
            m_distances.explain(lag.to, lag.from, m_distances.added(), reasons);
            for (const Literal reason : reasons)
                m_conflict.push_back(~reason);
            return false;
        }
        if (lag.most < m_distances.between(lag.from, lag.to))
            m_distances.add(lag, literal);
    }
    return true;
}

/// Assigns what the network implies. True if it found anything.
bool Searcher::drawFromNetwork()
{
    bool found = false;
    for (int variable = 0; variable < m_table.variables(); ++variable) {
        const Literal literal{2 * variable};
        if (!m_clauses.isOpen(literal))
            continue;
        const Lag& lag = m_table.lag(literal);
        const bool implied = m_distances.between(lag.from, lag.to) <= lag.most;
        const bool refuted = !implied && m_distances.between(lag.to, lag.from) + lag.most < 0;
        if (!implied && !refuted)
            continue;
        m_clauses.assignByTheory(implied ? literal : ~literal, m_distances.added());
        found = true;
    }
    return found;
}

/// The lags of a clause that were possible once; nothing if the clause holds already. The
/// network has not heard of a new literal yet, so what it says of it is written down here.
std::optional<std::vector<Literal>> Searcher::openLiterals(const Clause& clause)
{
    std::vector<Literal> literals;
    std::vector<Literal> reasons;
    for (const Lag& lag : clause) {
        const Literal literal = m_table.of(lag);
        m_clauses.growTo(m_table.variables());
        if (m_clauses.isTrue(literal) || m_distances.between(lag.from, lag.to) <= lag.most)
            return std::nullopt;
        if (m_distances.between(lag.to, lag.from) + lag.most < 0) {
            reasons.clear();
            m_distances.explain(lag.to, lag.from, m_distances.added(), reasons);
            if (reasons.empty())
                continue;
            if (m_clauses.isOpen(literal))
                m_clauses.assignByTheory(~literal, m_distances.added());
        }
        literals.push_back(literal);
    }
    return literals;
}

/// Adds what a constraint says about the bounds. It may be forgotten, as it can be said again.
Searcher::Drawn Searcher::drawFromBounds()
{
    if (!m_problem.boundClauses)
        return Drawn::Nothing;
    const std::size_t known = m_clauses.trail().size();
    for (const Clause& clause : m_problem.boundClauses(m_distances)) {
        std::optional<std::vector<Literal>> literals = openLiterals(clause);
        if (!literals)
            continue;
        const bool forGood = literals->size() == 1;
        if (forGood)
            goBackTo(0);
        if (!m_clauses.addClause(std::move(*literals), Clauses::Source::Learned)) {
            m_conflict = m_clauses.conflict();
            return Drawn::Conflict;
        }
        if (forGood)
            return Drawn::Something;
    }
    return m_clauses.trail().size() > known ? Drawn::Something : Drawn::Nothing;
}

bool Searcher::tellTiming()
{
    while (m_toldTiming < m_clauses.trail().size()) {
        const Literal literal = m_clauses.trail()[m_toldTiming++];
        const Lag& lag = m_table.lag(literal);
        if (!isTimed(lag))
            continue;  // It is about what the times are worth, or about no times.
        if (m_clauses.isFromTheory(literal) || m_timing.add(lag, literal))
            continue;
        m_conflict.clear();
        m_timing.explainPrice(m_conflict);
        turnIntoClause();
        return false;
    }
    return true;
}

/// Draws all that clauses and lags allow. False on a conflict.
bool Searcher::settleNetwork()
{
    do {
        if (!m_clauses.propagate()) {
            m_conflict = m_clauses.conflict();
            return false;
        }
        if (!tellDistances())
            return false;
    } while (drawFromNetwork());
    return true;
}

Searcher::Step Searcher::conclude()
{
    Drawn drawn = Drawn::Nothing;
    do {
        if (!settleNetwork())
            return Step::Conflict;
        drawn = drawFromBounds();
        if (drawn == Drawn::Conflict)
            return Step::Conflict;
    } while (drawn == Drawn::Something);
    if (!tellTiming())
        return Step::Conflict;
    m_price = m_timing.price();
    if (isAboveProbe())
        return Step::Conflict;
    if (m_outcome.best && m_price > m_outcome.best->price) {
        blamePrice();
        return Step::Conflict;
    }
    m_times = &m_timing.earliest();
    if (isRankedOut())
        return Step::Conflict;
    if (m_problem.place) {
        m_placed = *m_times;
        m_placed.resize(static_cast<std::size_t>(m_problem.points));
        m_problem.place(m_placed, m_distances);
        m_times = &m_placed;
    }
    return Step::GoOn;
}

/// Whether everything below this node costs as much as the best so far and ranks no
/// better; then the conflict says why.
bool Searcher::isRankedOut()
{
    m_conflict.clear();
    if (!m_outcome.best || m_price < m_outcome.best->price || !rankedWorse())
        return false;
    m_timing.explainPrice(m_conflict);
    turnIntoClause();
    return true;
}

/// What makes everything below this node cost more than the best so far.
void Searcher::blamePrice()
{
    const Price unit = levelToBlame();
    m_conflict.clear();
    m_timing.explainMoreThan(m_outcome.best->price / unit, unit, m_conflict);
    turnIntoClause();
}

/// The conflict holds what is true: not all of it can be.
void Searcher::turnIntoClause()
{
    std::ranges::sort(m_conflict, {}, &Literal::code);
    m_conflict.erase(std::unique(m_conflict.begin(), m_conflict.end()), m_conflict.end());
    for (Literal& reason : m_conflict)
        reason = ~reason;
}

/// The highest level that alone is worse than in the best so far: its reason is the shortest.
Price Searcher::levelToBlame() const
{
    for (const Price unit : m_problem.levels) {
        if (m_timing.bound(unit) > m_outcome.best->price / unit)
            return unit;
    }
    return 1;
}

/// Whether every answer below this node of the same price ranks no better; the
/// earliest times are the least that each point can have in any of them.
bool Searcher::rankedWorse()
{
    std::vector<Literal> reasons;
    for (std::size_t place = 0; place < m_problem.ranking.size(); ++place) {
        const Ranked& ranked = m_problem.ranking[place];
        Time least = (*m_times)[static_cast<std::size_t>(ranked.point)];
        bool absent = false;
        if (ranked.present) {
            // Absent for good only where that is settled; otherwise the earliest start is a bound on both.
            const Lag lag = negation(*ranked.present);
            absent = m_distances.between(lag.from, lag.to) <= lag.most;
            if (absent) {
                least = farTime;
                m_distances.explain(lag.from, lag.to, m_distances.added(), reasons);
            }
        }
        if (least < m_bestRanks[place])
            return false;
        if (!absent)
            m_timing.explainEarliest(ranked.point, reasons);
        if (least > m_bestRanks[place])
            break;
    }
    m_conflict = std::move(reasons);
    return true;
}

/// Keeps the better of the two: below an equally good best, a node goes on as
/// long as points may yet be present, though these times leave them out. False if
/// these times are not kept.
bool Searcher::record(const std::vector<Time>& times)
{
    std::vector<Time> ranks;
    for (const Ranked& ranked : m_problem.ranking)
        ranks.push_back(rankOf(ranked, times));
    if (m_outcome.best && m_price == m_outcome.best->price && ranks >= m_bestRanks)
        return false;
    m_outcome.best = Answer{times, m_price};
    m_bestRanks = std::move(ranks);
    return true;
}

/// A point of the ranking that these times leave out but others below this node
/// might not: as long as that is open, the ranking proves nothing.
std::optional<Literal> Searcher::unsettledPresence()
{
    for (const Ranked& ranked : m_problem.ranking) {
        if (!ranked.present || ranked.present->from == ranked.present->to)
            continue;
        const Lag& lag = *ranked.present;
        const Lag absent = negation(lag);
        if (m_distances.between(lag.from, lag.to) <= lag.most
            || m_distances.between(absent.from, absent.to) <= absent.most)
            continue;
        const Literal literal = m_table.of(holds(lag, *m_times) ? lag : absent);
        m_clauses.growTo(m_table.variables());
        return literal;
    }
    return std::nullopt;
}

}  // namespace core::temporal
