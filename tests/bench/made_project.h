#pragma once

#include "core/temporal/project.h"

#include <cstdint>

namespace bench {

/// An invented project with five resources, of the kind of the published sets:
/// lengths of 1 to 10, least lags forwards near a length, longest lags back over
/// some ways of them, capacities between the greatest demand and what the
/// earliest starts would take. The same for the same seed on every machine.
core::temporal::Project madeProject(int activities, std::uint64_t seed);

}  // namespace bench
