#pragma once

#include "core/temporal/uncertain.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace core::temporal {

/// Runs a controllable network: what follows from it is drawn once, and then any
/// number of runs are made, each in O(points * (points + links)).
///
/// The rule: a point may be started once everything that must come before it has
/// happened, no wait holds it back, and what has happened lets it; and it must be
/// by the time that what has happened sets. In between it is started when it is
/// wished for, else as near to that as it may be. Because all lags that follow are
/// known, each choice that keeps those to what has happened can be carried on
/// (dispatchability; Muscettola, Morris, Tsamardinos 1998; Morris 2014), whatever
/// the lengths turn out to be.
class Executor {
public:
    /// Nothing if no strategy wins.
    static std::optional<Executor> of(const UncertainNetwork& network);

    /// `lengths` has one entry a link, `wished` one a point (those of ends are
    /// not read); `times` becomes the run. A length outside its link's bounds is
    /// taken as it is; then lags may be broken.
    void run(const std::vector<Time>& lengths, const std::vector<Time>& wished, std::vector<Time>& times);

private:
    explicit Executor(const UncertainNetwork& network)
        : m_network{network}
        , m_points{static_cast<std::size_t>(network.points)}
    {
    }
    struct Wait {
        int link = 0;
        Time length = 0;
    };

    void begin(std::vector<Time>& times);
    void happen(Point point, Time now, std::vector<Time>& times);
    void turnAround();
    [[nodiscard]] Time dueAt(Point point, Time wished, const std::vector<Time>& times) const;
    [[nodiscard]] std::size_t cell(Point row, Point column) const
    {
        return static_cast<std::size_t>(row) * m_points + static_cast<std::size_t>(column);
    }

    UncertainNetwork m_network;
    std::size_t m_points;
    std::vector<Time> m_ahead;  ///< Row by row: how long after the row's point at most.
    std::vector<Time> m_back;   ///< How long before it at most; below 0: so long after it at least.
    std::vector<std::vector<Wait>> m_waits;
    std::vector<std::vector<int>> m_startsLinks;  ///< By point.
    std::vector<char> m_isEnd;
    std::vector<int> m_mustComeBefore;  ///< How many points each must come after.
    // Of the run that is made:
    std::vector<int> m_before;  ///< How many of those are still to come.
    std::vector<Time> m_earliest;
    std::vector<Time> m_latest;
    std::vector<Point> m_free;     ///< What waits for no other point; ends are not among them.
    std::vector<int> m_runsLinks;  ///< The links that are under way.
    Time m_now = 0;
};

}  // namespace core::temporal
