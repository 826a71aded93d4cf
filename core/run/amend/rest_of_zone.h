#pragma once

#include "core/stagger/progress.h"

#include <vector>

namespace core::run {

/// `services` with the rest of a zone whose application was interrupted at `until`: a zone of its own at the
/// end of its coat, with the same window and looks, a clock of its own and what is left to apply. Its late
/// jobs stay with the first part, as they are done to both at once. `apply` must be under way.
std::vector<service::Service> withRestOf(std::vector<service::Service> services,
                                         const stagger::Progress& progress, const stagger::TaskId& apply,
                                         measure::Instant until);

}  // namespace core::run
