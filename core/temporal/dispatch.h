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

}  // namespace core::temporal
