#pragma once

#include "core/stagger/draft.h"

#include <optional>
#include <vector>

namespace core::stagger {

/// Times for a draft in which all that a plan says is settled by lags: the earliest, and where a clause
/// does not hold then, what makes it hold the soonest. Linear in lags and clauses, mostly; no search.
/// Nothing where that leads nowhere, or hands and basins do not suffice. Private to this folder and its
/// tests.
std::optional<std::vector<Time>> plannedTimes(const Draft& draft);

}  // namespace core::stagger
