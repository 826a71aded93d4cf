#pragma once

#include "core/temporal/uncertain.h"

#include <optional>
#include <vector>

namespace core::temporal {

/// A point that has happened.
struct Seen {
    Point point = 0;
    Time time = 0;
};

/// Every time from `earliest` to `latest` is safe to decide upon now: a strategy
/// that starts the point then, come what may, can still win. A wait that an end
/// may lift counts in full, so once an end is seen ask again: what was safe stays
/// safe, and more may have become so.
struct SafeStart {
    Time earliest = 0;
    Time latest = 0;  ///< `farTime` where nothing sets a limit.

    friend bool operator==(const SafeStart&, const SafeStart&) = default;
};

/// The network as it is once `seen` has happened and nothing else has, up to and
/// in the unit `now`: what has happened stands where it did and lags between such
/// points bind no more; what has not happened is started now or later; a link
/// under way ends later than now. One that is past its most is taken to end in
/// the next unit: then nothing that is said of it is sure.
UncertainNetwork seenSoFar(const UncertainNetwork& network, const std::vector<Seen>& seen, Time now);

/// When `point`, which has not happened and ends no link, may be started. None:
/// it has to wait for the end of a link before anything can be decided, or no
/// strategy wins any more.
std::optional<SafeStart> safeStart(const UncertainNetwork& network, const std::vector<Seen>& seen, Time now,
                                   Point point);

/// When a point comes in the runs that winning strategies make where all lengths turn
/// out usual: at every time from `earliest` to `latest` in one of them, at no other.
///
/// For a network as `seenSoFar` gives it this is the rule to go by, asked again
/// whenever something has happened or a usual length has gone by: a point may be
/// started now if `earliest` is now, and has to be if `latest` is. For a point further
/// ahead it says between which times it can come if lengths turn out usual
/// until then, what comes before it being started in time for that.
struct UsualStart {
    Time earliest = 0;
    Time latest = 0;         ///< `farTime` where nothing sets a limit.
    Time latestIfQuick = 0;  ///< Whatever the lengths turn out to be, it is not too late before this.

    friend bool operator==(const UsualStart&, const UsualStart&) = default;
};

/// For every point of the network. None: no strategy wins. What follows is drawn once,
/// and then it is O(points * edges) for all points together.
std::optional<std::vector<UsualStart>> usualStarts(const UncertainNetwork& network);

/// What the runs keep that winning strategies make where all lengths turn out usual: times that keep
/// these lags, usual lengths among them, are such a run, and no others are. None: no strategy wins.
std::optional<std::vector<Lag>> usualLags(const UncertainNetwork& network);

}  // namespace core::temporal
