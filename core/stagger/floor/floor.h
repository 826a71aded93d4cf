#pragma once

#include "core/stagger/plan.h"

#include <tl/expected.hpp>

/// Many heads at once: more than one search can settle. Every head's plan is
/// found by the exact search while the others' tasks stand, and is found again,
/// alone or a few together, as long as that makes the whole better.
namespace core::stagger::floor {

/// With more tasks than that the search for the whole is not tried first.
inline constexpr std::size_t mostTasksTogether = 60;

/// So many tasks are set free at once.
inline constexpr std::size_t mostTasksAtOnce = 90;

/// Whether several heads have more tasks still open than are settled at once.
bool isLarge(const Question& question);

/// A good plan of several heads and a bound that is proved. `known`, if there is
/// one, is where it begins; it is never worse. The same question with the same
/// number of conflicts has the same plan.
tl::expected<Plan, NoPlan> planFloor(const Question& question, const Budget& budget,
                                     const std::optional<Plan>& known = {});

}  // namespace core::stagger::floor
