#pragma once

#include "core/run/run.h"

namespace core::run {

/// The limits of every zone that has mixture on it at `now`, nearest first; without
/// those that water which is already on its way will keep.
std::vector<LimitWatch> limitsAt(const std::vector<service::Service>& services,
                                 const stagger::Progress& progress, const std::vector<Prompt>& prompts,
                                 Instant now);

}  // namespace core::run
