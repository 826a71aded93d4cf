#pragma once

#include "core/stagger/plan.h"

namespace core::run {

/// The running task that must end before `id` can start, if there is one: what
/// `id` builds on, or what keeps its pair of hands. A look and the water wait for
/// no hands: for them something else can be left for a moment.
std::optional<stagger::TaskId> whatItWaitsFor(const std::vector<service::Service>& services,
                                              const stagger::Progress& progress, const stagger::Plan* plan,
                                              const stagger::TaskId& id);

}  // namespace core::run
