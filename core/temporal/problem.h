#pragma once

#include "core/temporal/lag.h"

#include <functional>
#include <optional>
#include <vector>

namespace core::temporal {

class Distances;

/// Prices are whole and wide enough for several levels of an objective in one
/// number, each scaled above all that the next can reach.
__extension__ typedef __int128 Price;

/// Stretching costs `price` for each second that t(to) - t(from) exceeds `most`.
struct SoftLag {
    Lag lag;
    Price price = 0;
};

/// A time point that counts in the last level: of two equally good answers the
/// one whose vector of such points is lexicographically less is better. A point
/// that is not present counts as later than any time.
struct Ranked {
    Point point = 0;
    std::optional<Lag> present;
};

/// Finds times for points 0..points-1 that keep every lag and every clause.
struct Problem {
    int points = 1;
    std::vector<Lag> lags;
    std::vector<Clause> clauses;  ///< At least one lag of each holds.
    std::vector<SoftLag> softLags;
    /// What one unit of each level of the objective is worth, most important first:
    /// every price is a sum of such units, and what lower levels can add up to is
    /// less than one unit of a higher. Only to find shorter reasons; may be empty.
    std::vector<Price> levels;
    std::vector<Ranked> ranking;
    /// A constraint too large to write down (who does what). Given times that
    /// keep all lags and clauses so far, returns clauses that every answer must
    /// keep and these times do not; none when the times are all right.
    std::function<std::vector<Clause>(const std::vector<Time>&)> lazyClauses;
    /// What such a constraint says before there are times, given how far apart points can still be: clauses
    /// that every answer keeps and of which at most one lag is still possible. Asked where nothing else
    /// follows.
    std::function<std::vector<Clause>(const Distances&)> boundClauses;
    /// Points from this one on are of another kind (who does what): only their own lags and clauses
    /// bind them, so each lag has both ends among them or none; they have no price and no rank.
    std::optional<Point> placedFrom;
    /// Puts those points anywhere that the distances between them allow, best where clauses hold at the
    /// times of all others, which are given and stay. There if `placedFrom` is.
    std::function<void(std::vector<Time>&, const Distances&)> place;
    /// Once there is an answer, suppose first that the price is as low as is not ruled out yet, and raise
    /// that where it is refuted (destructive bounds). There must be one soft lag, of a price above 0.
    bool raisesBound = false;
};

/// What stretching costs at `times`.
Price priceOf(const Problem& problem, const std::vector<Time>& times);

}  // namespace core::temporal
