#pragma once

#include "core/run/run.h"

namespace core::run {

/// `planner` with a memory of its last `most` answers. `stateAt` asks the same
/// questions again every second; planning is pure, so an answer that was given
/// once is the answer. Of a search that ended early it is kept where conflicts were counted,
/// not where somebody could stop it; "not yet" is no answer, and asked again. For one thread.
Planner remembering(Planner planner, std::size_t most = 256);
/// The same for safe starts.
SafeStarts remembering(SafeStarts safeStarts, std::size_t most = 16);

}  // namespace core::run
