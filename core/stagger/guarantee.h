#pragma once

#include "core/stagger/plan.h"
#include "core/temporal/search.h"

#include <functional>

/// The give: how far the plan holds whatever applying takes.
namespace core::stagger {

/// All of it: in tenths.
constexpr int wholeGive = 10;

/// The greatest give in tenths, from `least` on, for which `holds`; `least` is taken to. What holds for
/// longer ranges of lengths holds for shorter ones, so it is found by halving, the whole first.
int greatestHeld(int least, const std::function<bool(int give)>& holds);

/// What one search at one give came to.
struct Tried {
    std::optional<Plan> plan;
    bool complete = false;  ///< No plan, and none there is.
    std::uint64_t conflicts = 0;
};

/// Plans at a give, within so many conflicts; where asked only whether anything fits, any plan will do.
using TryGive = std::function<Tried(int give, bool onlyFits, std::uint64_t conflicts)>;

/// Of what fits with no give, the best plan with the greatest give that any has. `usual`
/// is the best plan with none.
Plan greatestGive(Plan usual, const TryGive& tryGive, std::uint64_t conflicts);

}  // namespace core::stagger
