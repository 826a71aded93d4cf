#include "core/temporal/search.h"

#include "core/temporal/clauses.h"
#include "core/temporal/distances.h"
#include "core/temporal/timing.h"

#include <algorithm>
#include <cassert>

namespace core::temporal {
namespace {

class Searcher {
public:
    Searcher(const Problem& problem, const Limits& limits)
        : m_problem{problem}
        , m_limits{limits}
        , m_distances{problem.points}
        , m_timing{problem.points}
    {
    }

    Outcome run();

private:
    enum class Step { Conflict, GoOn };

    bool begin();
    bool addGiven(const Clause& clause);
    Step conclude();
    bool drawFromNetwork();
    bool tellDistances();
    bool tellTiming();
    bool atBound();
    bool rankedWorse();
    void record(const std::vector<Time>& times);
    std::optional<Literal> unsettledPresence();
    bool askLazily();
    std::optional<Literal> choose() const;
    bool resolve();
    void open(Literal literal);
    void goBackTo(int level);
    bool shouldStop();

    [[nodiscard]] bool holds(const Lag& lag, const std::vector<Time>& times) const
    {
        return times[static_cast<std::size_t>(lag.to)] - times[static_cast<std::size_t>(lag.from)] <= lag.most;
    }
    [[nodiscard]] Time stretch(Literal literal) const
    {
        const Lag& lag = m_table.lag(literal);
        const std::vector<Time>& times = *m_times;
        return times[static_cast<std::size_t>(lag.to)] - times[static_cast<std::size_t>(lag.from)] - lag.most;
    }
    [[nodiscard]] Time rankOf(const Ranked& ranked, const std::vector<Time>& times) const
    {
        if (ranked.present && !holds(*ranked.present, times))
            return farTime;
        return times[static_cast<std::size_t>(ranked.point)];
    }

    struct Mark {
        int distances = 0;
        std::size_t toldDistances = 0;
        std::size_t toldTiming = 0;
        Timing::Snapshot timing;
    };

    const Problem& m_problem;
    const Limits& m_limits;
    LiteralTable m_table;
    Clauses m_clauses;
    Distances m_distances;
    Timing m_timing;
    std::vector<std::vector<Literal>> m_given;  ///< The clauses of the problem, lazy ones included.
    std::size_t m_toldDistances = 0;            ///< How much of the trail the network has heard of.
    std::size_t m_toldTiming = 0;
    std::vector<Mark> m_marks;                  ///< One a level.
    std::vector<Literal> m_conflict;
    const std::vector<Time>* m_times = nullptr;
    Price m_price = 0;
    Outcome m_outcome;
    std::vector<Time> m_bestRanks;
    std::uint64_t m_steps = 0;
};

bool Searcher::begin()
{
    for (const Lag& lag : m_problem.lags) {
        if (!m_distances.addForGood(lag))
            return false;
    }
    // With every lag known, only those that no others imply matter for the timing.
    for (const Lag& lag : m_problem.lags) {
        if (lag.from != lag.to && !m_timing.add(lag, noLiteral))
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

bool Searcher::tellTiming()
{
    while (m_toldTiming < m_clauses.trail().size()) {
        const Literal literal = m_clauses.trail()[m_toldTiming++];
        if (m_clauses.isFromTheory(literal) || m_timing.add(m_table.lag(literal), literal))
            continue;
        m_conflict.clear();
        m_timing.explainPrice(m_conflict);
        for (Literal& reason : m_conflict)
            reason = ~reason;
        return false;
    }
    return true;
}

Searcher::Step Searcher::conclude()
{
    do {
        if (!m_clauses.propagate()) {
            m_conflict = m_clauses.conflict();
            return Step::Conflict;
        }
        if (!tellDistances())
            return Step::Conflict;
    } while (drawFromNetwork());
    if (!tellTiming())
        return Step::Conflict;
    m_price = m_timing.price();
    m_times = &m_timing.earliest();
    return atBound() ? Step::Conflict : Step::GoOn;
}

/// Whether nothing below this node is better than the best so far; then the conflict says why.
bool Searcher::atBound()
{
    if (!m_outcome.best || m_price < m_outcome.best->price)
        return false;
    m_conflict.clear();
    if (m_price == m_outcome.best->price && !rankedWorse())
        return false;
    m_timing.explainPrice(m_conflict);
    std::ranges::sort(m_conflict, {}, &Literal::code);
    const auto repeated = std::ranges::unique(m_conflict);
    m_conflict.erase(repeated.begin(), repeated.end());
    for (Literal& reason : m_conflict)
        reason = ~reason;
    return true;
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

void Searcher::record(const std::vector<Time>& times)
{
    m_outcome.best = Answer{times, m_price};
    m_bestRanks.clear();
    for (const Ranked& ranked : m_problem.ranking)
        m_bestRanks.push_back(rankOf(ranked, times));
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

/// Of the clauses that the cheapest times break, the one that is furthest from
/// holding; of its literals the one that is nearest.
std::optional<Literal> Searcher::choose() const
{
    std::optional<Literal> best;
    Time furthest = 0;
    for (const std::vector<Literal>& clause : m_given) {
        std::optional<Literal> nearest;
        Time least = 0;
        bool broken = true;
        for (const Literal literal : clause) {
            const Time stretched = stretch(literal);
            if (stretched <= 0) {
                broken = false;
                break;
            }
            if (!m_clauses.isOpen(literal))
                continue;
            if (nearest && stretched >= least)
                continue;
            nearest = literal;
            least = stretched;
        }
        if (!broken || !nearest || least <= furthest)
            continue;
        best = nearest;
        furthest = least;
    }
    return best;
}

/// True if the times break clauses that were not written down yet.
bool Searcher::askLazily()
{
    if (!m_problem.lazyClauses)
        return false;
    const std::vector<Clause> found = m_problem.lazyClauses(*m_times);
    return !found.empty()
        && (std::ranges::all_of(found, [this](const Clause& clause) { return addGiven(clause); }) || true);
}

/// Learns from `m_conflict`. False if no decision is to blame: the search is over.
bool Searcher::resolve()
{
    ++m_outcome.conflicts;
    const int level = m_clauses.learn(
        m_conflict, [this](Literal literal, int moment, std::vector<Literal>& reasons) {
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

Outcome Searcher::run()
{
    if (!begin()) {
        m_outcome.complete = true;
        return m_outcome;
    }
    while (true) {
        m_conflict.clear();
        if (conclude() == Step::Conflict) {
            if (!resolve()) {
                m_outcome.complete = true;
                break;
            }
            continue;
        }
        if (m_clauses.level() == 0)
            m_outcome.bound = m_price;
        if (shouldStop())
            break;
        if (const std::optional<Literal> literal = choose()) {
            open(*literal);
            continue;
        }
        if (askLazily()) {
            if (!m_conflict.empty() && !resolve()) {
                m_outcome.complete = true;
                break;
            }
            continue;
        }
        record(*m_times);
        if (const std::optional<Literal> literal = unsettledPresence())
            open(*literal);
    }
    if (m_outcome.complete && m_outcome.best)
        m_outcome.bound = m_outcome.best->price;
    return m_outcome;
}

}  // namespace

Outcome search(const Problem& problem, const Limits& limits)
{
    return Searcher{problem, limits}.run();
}

}  // namespace core::temporal
