#pragma once

#include "core/temporal/uncertain.h"

#include <cstdint>
#include <optional>
#include <vector>

/// Dynamic controllability of a network with lengths that turn out, and which
/// runs a winning strategy can make. docs/controllability.md is its mathematics.
///
/// The game: time goes on in whole units. In each unit first the links end that
/// happen to end in it, and that is seen; then points are started, in answer or
/// not, in the same unit. A strategy wins if it keeps every lag whatever the
/// lengths turn out to be.
///
/// The method: the reductions of Morris, Muscettola 2005 with instantaneous
/// reaction, closed link by link in the manner of RUL- and RUL2021 (Cairo,
/// Hunsberger, Rizzi 2018; Hunsberger, Posenato): a table of distances for each
/// link and a potential that keeps lengths from being negative. With n points, m
/// lags and k links a pass over one table costs O(k (m + n log n)), mostly
/// O(m + n log n), and there are 2k tables. A table is gone over again only where
/// a derived lag makes it tighter; that nests at most k deep (Morris 2006).
namespace core::temporal {

/// Why not. Without `lag`: these lags and links (indices into the network) leave
/// no winning strategy, whatever else there is. With `lag`: as long as they are
/// in the network, every winning strategy whose links all turn out usual makes a
/// run that keeps `lag`.
struct Objection {
    std::optional<Lag> lag;
    std::vector<int> lags;
    std::vector<int> links;
};

/// Nothing if some strategy wins whatever the lengths; else why none does.
std::optional<Objection> notControllable(const UncertainNetwork& network);

/// Objections to `times`, one for each point, being the run that one winning
/// strategy makes when every length turns out usual. They must keep all lags and
/// have the usual lengths. None: they are such a run. Each with a lag names one
/// that `times` break; one without a lag says that nothing wins. Not all there
/// are: those that follow from others, or could only be drawn from them, are
/// left out. Sought no longer than until there are `most`.
std::vector<Objection> objectionsTo(const UncertainNetwork& network, const std::vector<Time>& times,
                                    std::size_t most = SIZE_MAX);

}  // namespace core::temporal
