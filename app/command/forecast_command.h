#pragma once

#include "app/command/options.h"
#include "app/command/outside.h"

namespace app::command {

/// Says what a plan comes to where applying takes as long as it happens to take. The exit status.
int forecastCommand(const Options& options, Outside& outside);

}  // namespace app::command
