#pragma once

#include "app/command/options.h"
#include "app/command/outside.h"

namespace app::command {

/// Erases from the journal whatever of one run could name a person, and says what stays.
int eraseCommand(const Options& options, Outside& outside);

}  // namespace app::command
