#pragma once

#include "core/alarm/alarm.h"
#include "core/run/run.h"

namespace app::session {

/// The next moment after `state.now` at which something may change by itself, at most `limit`.
core::measure::Instant nextMoment(const core::run::State& state, const core::alarm::Manners& manners,
                                  core::measure::Instant limit);

}  // namespace app::session
