#pragma once

#include "core/stagger/plan.h"

#include <string>
#include <vector>

/// A second opinion on plans, written from the scheduling rules (docs/method.md)
/// and from nothing of the planner but its face. It searches nothing: it looks
/// at a finished plan and says what is wrong with it.
namespace oracle {

/// Every rule that `plan` breaks as an answer to `question`, in words that begin
/// with the rule ("rule 2: ..."); empty means that the plan is sound.
///
/// Checked are rules 1 to 9, the figures of the plan (what each zone gets, its
/// worth, start and end), its order, that hands and basins bear the lowest
/// numbers that are free, and of up to 60 tasks of which none has begun, that the plan holds with the
/// give it names. Whether something better exists is not checked here.
///
/// What has happened is exempt: a rule that no open task takes part in binds
/// nobody. Where limits may be broken, a limit that the plan itself lists as
/// broken is not reported again.
std::vector<std::string> violations(const core::stagger::Question& question,
                                    const core::stagger::PlanData& plan);

}  // namespace oracle
