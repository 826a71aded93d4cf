#pragma once

#include "tests/oracle/gecode_model.h"
#include "tests/oracle/gecode_rows.h"

namespace oracle {

/// Level 1 and the levels below it, where lengths are uncertain. Share by share from 0 up: the best plan for
/// usual lengths; where its order cannot be kept for all lengths within the share, or those times are no run
/// of a strategy that keeps it, that is ruled out, and so on until a plan stands or none is left. What is
/// ruled out for a share is for every greater one.
GecodeAnswer giveWithGecode(const Rows& rows, const GecodeOptions& options);

}  // namespace oracle
