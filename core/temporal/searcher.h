#pragma once

#include "core/temporal/clauses.h"
#include "core/temporal/distances.h"
#include "core/temporal/search.h"
#include "core/temporal/timing.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace core::temporal {

/// The state of one search. Private to this folder; see `search`.
class Searcher {
public:
    Searcher(const Problem& problem, const Limits& limits)
        : m_problem{problem}
        , m_limits{limits}
        , m_distances{problem.points + static_cast<int>(problem.levels.size())}
        , m_timed{problem.placedFrom.value_or(problem.points)}
        , m_timing{m_timed}
    {
    }

    Outcome run();

private:
    enum class Step { Conflict, GoOn };
    enum class Asked { Fine, Broken, Conflict };
    enum class Drawn { Nothing, Something, Conflict };

    bool begin();
    bool addGiven(const Clause& clause);
    bool foundBetter();
    Step conclude();
    bool drawFromNetwork();
    Drawn drawFromBounds();
    std::optional<std::vector<Literal>> openLiterals(const Clause& clause);
    bool settleNetwork();
    bool tellDistances();
    bool tellTiming();
    bool isRankedOut();
    void blamePrice();
    void turnIntoClause();
    bool rankedWorse();
    [[nodiscard]] Price levelToBlame() const;
    bool record(const std::vector<Time>& times);
    std::optional<Literal> unsettledPresence();
    void raiseBound();
    std::optional<Literal> probe();
    bool isAboveProbe();
    [[nodiscard]] Price provedWorth() const;
    /// How much a level of the objective comes to, as a point of the network that no times are sought for.
    [[nodiscard]] Point worthPoint() const { return m_problem.points + static_cast<Point>(m_probed); }
    Asked askLazily();
    std::optional<Literal> supposeLowPrice();
    std::optional<Literal> choose() const;
    std::optional<Literal> next();
    bool takeTimes();
    bool resolve();
    void open(Literal literal);
    void goBackTo(int level);
    bool shouldStop();

    [[nodiscard]] bool isTimed(const Lag& lag) const { return std::max(lag.from, lag.to) < m_timed; }
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
    Point m_timed;  ///< Points from this one on have no times that `m_timing` could find.
    Timing m_timing;
    std::vector<std::vector<Literal>> m_given;  ///< The clauses of the problem, lazy ones included.
    std::size_t m_toldDistances = 0;            ///< How much of the trail the network has heard of.
    std::size_t m_toldTiming = 0;
    std::vector<Mark> m_marks;  ///< One a level.
    std::vector<Literal> m_conflict;
    const std::vector<Time>* m_times = nullptr;
    std::vector<Time> m_placed;  ///< The earliest times, and where the problem puts its other points.
    Price m_price = 0;
    Outcome m_outcome;
    std::vector<Time> m_bestRanks;
    std::size_t m_probed = 0;  ///< The level of the objective whose least worth is sought.
    std::optional<Price>
        m_worthZero;  ///< In its units: what the zero of its point stands for, once it is probed.
    bool m_probedSinceBest = false;
    std::uint64_t m_steps = 0;
};

}  // namespace core::temporal
