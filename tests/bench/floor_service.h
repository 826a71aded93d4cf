#pragma once

#include "core/stagger/plan.h"

#include <cstdint>

namespace bench {

/// A working day from eight to six in a large, made-up wig room: that many heads, each with two or three
/// coats of three to five zones, most of them promised for some time of the day; four pairs of hands that
/// each are away for half an hour around noon, one of whom applies and assesses nothing; three basins. Twelve
/// heads come to some five hundred hands-on tasks. In whole minutes, and the same each time it is asked for.
core::stagger::Question dayOnTheFloor(std::size_t heads, std::uint64_t seed = 1);

/// Tasks that take hands, looks that may not fall due included.
std::size_t taskCount(const core::stagger::Question& question);

}  // namespace bench
