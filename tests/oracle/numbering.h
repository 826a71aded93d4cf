#pragma once

#include "tests/oracle/plan_view.h"

#include <optional>
#include <vector>

/// Which hands and which basins: given all starts, the lowest numbers that are free.
///
/// Reading taken of "the lowest free number": tasks in the order of their starts, then of their ids; of all
/// ways to share them out that keep the rules, the one whose numbers in that order are least.
namespace oracle {

using Numbers = std::vector<std::optional<std::size_t>>;

/// Applications on the same head that are under way when `look` starts.
std::vector<const PlannedTask*> applicationsUnderWay(const PlanView& view, const PlannedTask& look);

/// Whether one pair of hands can do both, as they are placed: they do not overlap, or are looks on one head,
/// or one is made while applying the other.
bool canShareHands(const PlannedTask& a, const PlannedTask& b);

/// As the plan has them, and as they should be, in the order of starts and ids. Nothing where there is no
/// way.
Numbers handsInOrder(const PlanView& view);
std::optional<Numbers> lowestHands(const PlanView& view);
Numbers basinsInOrder(const PlanView& view);
Numbers lowestBasins(const PlanView& view);

/// Gives the tasks of `plan`, whose starts and ends are set, their order, hands and basins. False where there
/// are not enough hands.
bool number(const Question& question, PlanData& plan);

}  // namespace oracle
