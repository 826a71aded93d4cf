#pragma once

#include "core/stagger/plan.h"

namespace core::stagger {

/// What is done while a new plan is still being worked out: the order of `plan`, told what has happened
/// since, by `question.progress` and `question.now`. What has begun or ended stands where it happened, what
/// was left out is gone, nothing that is open starts before now or before its hands are free, looks keep
/// their distance from their zone's clock, and water comes later by as much as the zone that was most held
/// up, but past no longest time. No search; a moment's work. Not proved to be the best, without a give, and
/// what the services have that `plan` did not know is not in it.
Plan carriedOn(const Plan& plan, const Question& question);

}  // namespace core::stagger
