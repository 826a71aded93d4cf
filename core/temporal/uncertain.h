#pragma once

#include "core/temporal/lag.h"

#include <vector>

namespace core::temporal {

/// A length that nobody controls: t(end) - t(start) turns out somewhere in
/// [least, most], and which is seen when it ends. 0 <= least <= usual <= most;
/// an `end` ends one link only and is never the origin.
struct Uncertain {
    Point start = 0;
    Point end = 0;
    Time least = 0;
    Time usual = 0;
    Time most = 0;

    friend bool operator==(const Uncertain&, const Uncertain&) = default;
};

/// A simple temporal network with uncertainty (STNU): lags that must hold and
/// links whose lengths turn out. Points that end no link are started by
/// whoever follows the network; point 0 is the origin, a moment of the clock. As
/// no strategy can put that off, nothing else may be able to come before it: give
/// every point a lag that says so.
struct UncertainNetwork {
    int points = 1;
    std::vector<Lag> lags;
    std::vector<Uncertain> links;
};

}  // namespace core::temporal
