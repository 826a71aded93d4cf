#pragma once

#include "core/temporal/problem.h"

#include <cstddef>
#include <utility>
#include <vector>

namespace core::temporal {

/// The cheapest times for a set of lags: a simple temporal problem whose soft
/// lags have a price a second. Its linear dual is a minimum-cost circulation in
/// which every lag is an arc from `from` to `to` of cost `most`, a soft lag with
/// its price as capacity (Ahuja, Magnanti, Orlin, "Network Flows", 1993, section
/// 9.3 and 14; from memory). Kept optimal under adding lags by successive
/// shortest paths: node potentials are times, so the data being whole the times
/// are whole, and the lags that carry flow are the reason for the price.
class Timing {
public:
    explicit Timing(int points);

    /// False if the lag closes a negative cycle of lags without a price; then
    /// `explainPrice` names the literals of that cycle.
    bool add(const Lag& lag, Literal reason);
    void addSoft(const SoftLag& soft);

    /// The least price that any times which keep the lags can have.
    [[nodiscard]] Price price() const;

    /// Of all cheapest times the earliest: every point at its own minimum at
    /// once. The optimal face is a simple temporal problem itself (lags that
    /// carry flow are tight), and those have a least solution.
    const std::vector<Time>& earliest();

    /// The least count of whole `unit`s that the part of the circulation worth
    /// whole units proves, for a level of the objective; at most price() / unit.
    [[nodiscard]] Price bound(Price unit) const;
    /// Appends literals that force more than `above` whole `unit`s: any times that
    /// keep their lags cost that. `bound(unit)` must be above it.
    void explainMoreThan(Price above, Price unit, std::vector<Literal>& literals) const;
    /// Appends all literals that the price rests on: any times that keep their lags
    /// cost at least `price()`, and are as tight. After a failed `add`, the literals
    /// of the negative cycle.
    void explainPrice(std::vector<Literal>& literals) const;
    /// Appends the literals that, besides those of the price, keep `point` from
    /// being any earlier than in `earliest()`, which must have been called last.
    void explainEarliest(Point point, std::vector<Literal>& literals) const;

    /// What `restore` needs to take back all that was added since.
    struct Snapshot {
        std::size_t arcs = 0;
        std::vector<Time> times;
        std::vector<Price> flows;
    };
    void save(Snapshot& snapshot) const;
    void restore(const Snapshot& snapshot);

private:
    struct Arc {
        Point from;
        Point to;
        Time length;
        Price capacity;  ///< Below 0: without limit.
        Literal reason;
    };
    /// A way through the residual network: an arc forwards (`2 * arc`) or backwards (`2 * arc + 1`).
    using Step = int;
    static constexpr Step noStep = -1;

    [[nodiscard]] std::size_t size() const { return m_times.size(); }
    [[nodiscard]] Price room(Step step) const;
    [[nodiscard]] Point head(Step step) const { return m_ways[static_cast<std::size_t>(step)].head; }
    [[nodiscard]] Point tail(Step step) const { return m_ways[static_cast<std::size_t>(step ^ 1)].head; }
    [[nodiscard]] Time reducedLength(Step step) const
    {
        return m_ways[static_cast<std::size_t>(step)].length + m_times[static_cast<std::size_t>(tail(step))]
            - m_times[static_cast<std::size_t>(head(step))];
    }
    int append(const Arc& arc);
    void reopen(int arc);
    bool settle(int arc);
    Time shortestFrom(Point start, Point goal, Time bound);
    void lowerTimes(Time distance);
    Price bottleneck(int arc) const;
    void push(int arc, Price amount);
    void appendReason(Step step, std::vector<Literal>& literals) const;
    /// Flow round a cycle of arcs.
    struct Round {
        std::vector<int> arcs;
        Price worth = 0;  ///< What it adds to the bound.
    };
    [[nodiscard]] std::vector<Round> roundsOf(Price unit) const;

    /// What the shortest paths read of a step, kept together.
    struct Way {
        Point head;
        Time length;
        bool open;  ///< Something can flow.
    };

    std::vector<Arc> m_arcs;
    std::vector<Price> m_flows;
    std::vector<Way> m_ways;                    ///< By step.
    std::vector<std::vector<Step>> m_leaving;   ///< Steps by tail.
    std::vector<std::vector<Step>> m_arriving;  ///< Steps by head.
    std::vector<Time> m_times;
    std::vector<Time> m_earliest;
    std::vector<Step> m_towardsOrigin;  ///< The next step on the way that fixes a point's earliest time.
    std::vector<Time> m_reach;          ///< Scratch of the shortest paths.
    std::vector<Step> m_via;
    std::vector<std::pair<Time, Point>> m_heap;
    std::vector<int> m_cycle;  ///< Steps of the negative cycle of a failed `add`.
    bool m_failed = false;
};

}  // namespace core::temporal
