#pragma once

#include "core/temporal/search.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

/// The general form of what the search is made for: activities of fixed lengths
/// with least and most time between their starts, and resources that several of
/// them share. In the literature: resource-constrained project scheduling with
/// minimal and maximal time lags, PS | temp | Cmax, or RCPSP/max.
namespace core::temporal {

/// What goes on for `duration`, 0 or more, from its start without a break, and
/// takes `demands[r]` of resource r all that while. One of duration 0 takes nothing.
struct Activity {
    Time duration = 0;
    std::vector<int> demands;  ///< 0 or more each; resources past its end are not needed.
};

struct Project {
    std::vector<Activity> activities;
    /// Between starts, as `startOf` names them, and the origin, before which nothing starts.
    std::vector<Lag> lags;
    std::vector<int> capacities;  ///< How much there is of each resource at any time, 0 or more.
};

/// The point of time at which an activity starts.
constexpr Point startOf(std::size_t activity)
{
    return static_cast<Point>(activity) + 1;
}

struct Schedule {
    std::vector<Time> starts;  ///< By activity.
    Time makespan = 0;         ///< When the last activity ends, or 0 if there is none.
};

struct ProjectOutcome {
    std::optional<Schedule> best;  ///< Nothing: nothing fits, or, unless `complete`, nothing was found.
    bool complete = false;         ///< `best` is proved shortest, or that nothing fits.
    Time bound = 0;                ///< No schedule is shorter.
    std::uint64_t conflicts = 0;
    std::uint64_t decisions = 0;
};

/// A schedule of least makespan, proved, or a proof that there is none; what it
/// has by then when `limits` say so, of which `known` is not looked at.
/// Deterministic. All durations and lags together must stay below `farTime`.
///
/// Which clauses the resources become stands in docs/method.md. Made for some
/// tens of activities: memory and each step cost the square of their number.
ProjectOutcome shortest(const Project& project, const Limits& limits);

}  // namespace core::temporal
