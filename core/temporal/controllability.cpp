#include "core/temporal/controllability.h"

#include "core/temporal/reductions.h"

#include <algorithm>
#include <cassert>

namespace core::temporal {

std::optional<Objection> notControllable(const UncertainNetwork& network)
{
    return Reductions{}.close(network);
}

std::vector<Objection> objectionsTo(const UncertainNetwork& network, const std::vector<Time>& times,
                                    std::size_t most)
{
    [[maybe_unused]] const auto at = [&](Point point) { return times[static_cast<std::size_t>(point)]; };
    assert(std::ranges::all_of(network.lags,
                               [&](const Lag& lag) { return at(lag.to) - at(lag.from) <= lag.most; }));
    assert(std::ranges::all_of(
        network.links, [&](const Uncertain& link) { return at(link.end) - at(link.start) == link.usual; }));
    return Reductions{}.closeAround(network, times, most);
}

}  // namespace core::temporal
