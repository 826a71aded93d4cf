#pragma once

#include "core/stagger/plan.h"

#include <chrono>
#include <cstdint>
#include <optional>

/// The scheduling rules once more, as a model for the constraint solver Gecode: another author, another
/// method and another engine than the planner's.
namespace oracle {

struct GecodeOptions {
    /// What is settled first: who comes before whom, or how far each zone is off its target. Neither is
    /// always the faster; the answer is the same.
    enum class First { Order, Deviation };

    First first = First::Order;
    bool restarts = false;                 ///< Begin again now and then, with what was learned.
    bool earliestStarts = false;           ///< Level 5 as well. For very small services.
    std::uint64_t mostFailures = 500'000;  ///< On each level; after that the answer is open.
    int mostOrders = 2'000;                ///< Looked at where lengths are uncertain; after that it is open.
    std::optional<std::chrono::milliseconds> longest = std::nullopt;  ///< On each level, of processor time.
    /// Only starts on this grid, counted from the first moment that matters. Without it the grid is one
    /// second, or the greatest length of which everything in the question is a multiple where that loses
    /// nothing.
    std::optional<core::measure::Seconds> grid = std::nullopt;
};

struct GecodeAnswer {
    enum class Kind { Best, NothingFits, Open };
    Kind kind = Kind::Open;
    std::optional<core::stagger::PlanData> plan;  ///< The best one found. Proved where the kind is `Best`.
    std::uint64_t failures = 0;
    /// Where lengths are uncertain and a guarantee is asked for: the greatest give in percent. Proved where
    /// the kind is `Best`; where it is `Open` the plan has at least this one.
    std::optional<int> give = std::nullopt;
    int orders = 0;  ///< That were found not to do, where lengths are uncertain.
};

/// Plans a question in which no limit may be broken. Some service must say from when or until when. Where
/// something has happened `now` must be given, every head must have something left to do, nothing may have
/// been done before what it needs, and of the plan the numbers of basins are not the lowest.
GecodeAnswer planWithGecode(const core::stagger::Question& question, const GecodeOptions& options = {});

}  // namespace oracle
