#pragma once

#include "tests/oracle/plan_view.h"

/// The figures of a plan, worked out from its tasks alone.
namespace oracle {

/// What each zone gets, in the order of the service.
std::vector<core::stagger::PlannedZone> zoneFigures(const PlanView& view);

/// Levels 2 to 4 of what is best, and the breach where limits may be broken.
core::stagger::Worth worthOf(const PlanView& view);

/// By how much limits are passed that something open takes part in, each weighed.
core::measure::Harm breachOf(const PlanView& view);

/// Of the first task, and of the last, drying unattended included.
Instant startOf(const PlanView& view);
Instant endOf(const PlanView& view);

/// Level 5: starts in the order of ids, a look not due counting as later than any start. Heads first.
std::vector<Instant> startsInOrder(const Question& question, const PlanData& plan);

}  // namespace oracle
