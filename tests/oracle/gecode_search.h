#pragma once

#include "tests/oracle/gecode_space.h"

#include <memory>

namespace oracle {

struct Found {
    std::unique_ptr<GecodeSpace> best;  ///< Nothing where nothing was found.
    bool proved = false;                ///< Nothing better exists.
    std::uint64_t failures = 0;
};

/// Makes one number of the aims of `root` least.
Found leastAt(GecodeSpace& root, int stage, const GecodeOptions& options);

}  // namespace oracle
