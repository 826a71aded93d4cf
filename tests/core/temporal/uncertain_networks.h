#pragma once

#include "core/temporal/controllability.h"
#include "tests/core/temporal/small_networks.h"

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace core::temporal {

/// What random networks are made of.
struct Shape {
    int links = 2;
    int free = 1;   ///< Points that neither start nor end a link.
    Time last = 8;  ///< Every point that is started lies in [0, last].
    int lags = 5;   ///< Random ones, besides those that say so.
    Time shortest = 1;
    Time longest = 3;    ///< A link's least is from shortest to this, its most up to as much again.
    Time lagLeast = -3;  ///< What the random lags lie between.
    Time lagMost = 5;
    bool chained = false;  ///< Links may start at the origin and where others end.
};

/// Point 1 + 2i starts link i unless it starts elsewhere, 2 + 2i ends it.
UncertainNetwork randomNetwork(Dice& dice, const Shape& shape);

/// `to` comes from `least` to `most` after `from`.
void window(UncertainNetwork& network, Point from, Point to, Time least, Time most);

/// A [1, 10] C, and X in [C - 3, C + 5]: X, decided upon before C, would not suit every C.
UncertainNetwork waitForAnEnd();

/// What is left of a network when only these lags and links bind; the others' ends come when they like.
UncertainNetwork only(const UncertainNetwork& network, const std::vector<int>& lags,
                      const std::vector<int>& links);

/// Calls `visit` with every choice of whole lengths, or with every choice of least or most only.
void forAllLengths(const UncertainNetwork& network,
                   const std::function<void(const std::vector<Time>&)>& visit);
void forExtremeLengths(const UncertainNetwork& network,
                       const std::function<void(const std::vector<Time>&)>& visit);

/// Wishes for the start of each point: as soon as may be, as late as may be, and at random.
std::vector<std::vector<Time>> someWishes(const UncertainNetwork& network, Dice& dice);

/// `times` have these lengths and keep all lags.
[[nodiscard]] bool isRunOf(const UncertainNetwork& network, const std::vector<Time>& lengths,
                           const std::vector<Time>& times);

/// Runs so many controllable networks of five to ten links for all extreme lengths and for so many random
/// ones, and expects each run to keep all lags. How many runs there were.
int runManyLinks(std::uint64_t seed, int networks, int randomRuns);

std::string textOf(const UncertainNetwork& network);
std::string textOf(const std::vector<Time>& times);
std::string textOf(const Objection& objection);

}  // namespace core::temporal
