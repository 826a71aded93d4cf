#pragma once

#include "core/run/planning.h"

namespace core::run {

/// What is to be done, in order of pressing. Where nothing could be planned, looks and
/// water are asked for by the zones' own clocks: they are what must not be forgotten.
std::vector<Prompt> promptsAt(PlanHistory& history, const std::vector<ExtraLook>& extra, Instant now);

}  // namespace core::run
