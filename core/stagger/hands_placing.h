#pragma once

#include "core/stagger/draft.h"
#include "core/temporal/distances.h"

#include <functional>
#include <vector>

namespace core::stagger {

/// Where hands and basins are decided by name: gives each task, at these times, the lowest
/// number of those still open that is free and does such work, one that stays free however long
/// applying takes before one that does not. `distances` says which are still open, and
/// every number that is given keeps to it.
void placeHands(const Draft& draft, std::vector<Time>& times, const temporal::Distances& distances);

/// That, for a search; nothing where hands are not decided by name. `draft` must stay where it is meanwhile.
std::function<void(std::vector<Time>&, const temporal::Distances&)> handsPlacing(const Draft& draft);

}  // namespace core::stagger
