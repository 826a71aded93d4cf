#pragma once

#include "core/stagger/plan.h"

#include <optional>

namespace oracle {

/// The best plan of a tiny question, found by trying every start of every task in each second between the two
/// moments that each service must name (`notBefore` and `readyBy`), and asking the checker about each.
/// Nothing clever is done, so that nothing can go wrong. At most some millions of tries are sensible.
std::optional<core::stagger::PlanData> planByTryingAll(const core::stagger::Question& question);

}  // namespace oracle
