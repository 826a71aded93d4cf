#pragma once

#include "core/stagger/draft.h"
#include "core/temporal/search.h"

#include <optional>

namespace core::stagger {

struct CoatByCoat {
    std::optional<Plan> plan;
    bool nothingFits = false;  ///< One of the coats does not fit, whatever the others do.
};

/// Plans the coats of one head one after another, which takes the sum of the
/// searches instead of their product. Exact where nothing but their order ties
/// coats together; neither where something else does (a helper's absence, a
/// booked basin, a longest gap, a promise that is not kept this way, several
/// heads), or where a coat does not fit or the search was stopped. The proof is
/// in docs/method.md.
CoatByCoat planCoatByCoat(const Question& question, const temporal::Limits& limits, int give = 0);

/// Where everything that is open starts in this plan.
Pins pinsOf(const Plan& plan);

/// A plan with these starts and this give, if it keeps every limit, promises included.
std::optional<Plan> settled(const Question& question, Pins pins, const temporal::Limits& limits, int give);

/// The search of a draft, crew included.
temporal::Outcome solve(Draft& draft, const temporal::Limits& limits);

}  // namespace core::stagger
