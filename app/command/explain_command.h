#pragma once

#include "app/command/options.h"
#include "app/command/outside.h"

namespace app::command {

/// Why nothing fits, with cures; or what keeps a plan from being better.
int explainCommand(const Options& options, Outside& outside);

}  // namespace app::command
