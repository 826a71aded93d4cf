#pragma once

#include "core/temporal/problem.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace core::temporal {

struct Answer {
    std::vector<Time> times;
    Price price = 0;
};

struct Limits {
    std::uint64_t conflicts = UINT64_MAX;
    std::function<bool()> stop;  ///< Asked every few dozen steps.
    std::optional<Answer>
        known{};  ///< An answer to begin with: it keeps all lags and clauses, lazy ones too.
};

struct Outcome {
    std::optional<Answer> best;  ///< Nothing: nothing fits, or, unless `complete`, nothing was found.
    bool complete = false;       ///< `best` is proved best, or that nothing fits.
    Price bound = 0;             ///< No answer has a lower price.
    std::uint64_t conflicts = 0;
    std::uint64_t decisions = 0;
};

/// Finds the answer of least price and, among those, the one that is first by
/// the ranking; or proves that there is none. Deterministic.
///
/// Conflict-driven search over lags (lazy clause generation in the sense of
/// Schutt, Feydy, Stuckey, Wallace 2013), with two theories: `Distances` draws
/// every conclusion that lags alone allow, `Timing` gives the exact least price
/// of what is decided. A node whose cheapest, earliest times break no clause is
/// solved without deciding the rest; otherwise the search branches on a clause
/// that they break.
Outcome search(const Problem& problem, const Limits& limits);

}  // namespace core::temporal
