#pragma once

#include "core/temporal/lag.h"

#include <cstddef>
#include <vector>

namespace core::temporal {

/// The tightest lag between every two points that follows from the lags added
/// so far: all pairs of shortest paths in the distance graph of a simple
/// temporal problem (Dechter, Meiri, Pearl 1991), kept up to date one lag at a
/// time in O(points^2) and taken back in the order of adding.
class Distances {
public:
    explicit Distances(int points);

    /// Adds a lag that always holds, before the first `add`. False if it closes
    /// a negative cycle: nothing keeps all lags.
    bool addForGood(const Lag& lag);

    /// Adds the lag of a literal. It must not close a negative cycle: ask `between` first.
    void add(const Lag& lag, Literal reason);

    /// The largest t(to) - t(from) that is left; `unbounded` or more when nothing bounds it.
    [[nodiscard]] Time between(Point from, Point to) const { return m_distance[cell(from, to)]; }
    static constexpr Time unbounded = farTime;

    /// How many lags have been added by `add`: a moment in the history.
    [[nodiscard]] int added() const { return static_cast<int>(m_added.size()); }
    void takeBackTo(int added);

    /// Appends the literals whose lags made `between(from, to)` what it was when
    /// `asOf` lags had been added.
    void explain(Point from, Point to, int asOf, std::vector<Literal>& literals) const;

private:
    struct Added {
        Lag lag;
        Literal reason;
        std::size_t changes;  ///< Length of the history before it.
    };
    struct Change {
        std::size_t cell;
        Time before;
        int lastBefore;  ///< The change of this cell before this one, -1 for none.
        int added;       ///< Which added lag caused it.
    };

    [[nodiscard]] std::size_t cell(Point from, Point to) const
    {
        return static_cast<std::size_t>(from) * m_points + static_cast<std::size_t>(to);
    }
    void tighten(const Lag& lag, bool record);

    std::size_t m_points;
    std::vector<Time> m_distance;
    std::vector<int> m_last;  ///< The latest change of each cell, -1 for none.
    std::vector<Change> m_changes;
    std::vector<Added> m_added;
    std::vector<Point> m_before;  ///< Scratch: points whose way to the lag's head gets shorter.
    std::vector<Point> m_after;
};

}  // namespace core::temporal
