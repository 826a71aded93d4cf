#pragma once

#include "core/temporal/project.h"

#include <optional>

namespace bench {

struct GecodeFound {
    std::optional<core::temporal::Time> makespan;
    bool proved = false;
};

/// A plain model of the same project in Gecode: a start a variable, a linear
/// constraint a lag, one `cumulative` a resource, branch and bound on the makespan,
/// halving the values of the start of greatest weighted degree. Stops after `seconds` of processor time.
GecodeFound shortestByGecode(const core::temporal::Project& project, double seconds);

}  // namespace bench
