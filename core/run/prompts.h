#pragma once

#include "core/run/planning.h"

namespace core::run {

/// What is to be done, in order of pressing. Where nothing could be planned, looks and
/// water are asked for by the zones' own clocks: they are what must not be forgotten.
std::vector<Prompt> promptsAt(PlanHistory& history, const std::vector<ExtraLook>& extra,
                              const std::vector<Heat>& heats, Instant now);

/// Of what is due at the same moment, what harms most by waiting comes first: 0 for the most.
int harmOfWaiting(Prompt::Asks asks, stagger::TaskKind kind);

}  // namespace core::run
