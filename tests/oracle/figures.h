#pragma once

#include "tests/oracle/plan_view.h"

/// The figures of a plan, worked out from its tasks alone.
namespace oracle {

/// What each zone gets, in the order of the service.
std::vector<core::stagger::PlannedZone> zoneFigures(const PlanView& view);

/// Levels 2 to 4 of what is best. The breach of limits is not worked out: it is 0.
core::stagger::Worth worthOf(const PlanView& view);

/// Of the first task, and of the last, drying unattended included.
Instant startOf(const PlanView& view);
Instant endOf(const PlanView& view);

/// Level 5: starts in the order of ids, a look not due counting as later than any start. Heads first.
std::vector<Instant> startsInOrder(const Question& question, const PlanData& plan);

}  // namespace oracle
