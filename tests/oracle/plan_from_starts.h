#pragma once

#include "core/stagger/plan.h"

#include <map>
#include <optional>

namespace oracle {

/// When each task that is done starts; looks that are not due are left out.
using Starts = std::map<core::stagger::TaskId, core::measure::Instant>;

/// A whole plan from its starts: usual lengths, numbers of hands and basins, and all figures, worked out with
/// what the checker uses. Nothing has happened yet in `question`. No plan where the hands do not suffice.
/// Whether any other rule holds is left to the checker.
std::optional<core::stagger::PlanData> planFromStarts(const core::stagger::Question& question,
                                                      const Starts& starts);

}  // namespace oracle
