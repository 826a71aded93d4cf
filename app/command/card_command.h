#pragma once

#include "app/command/options.h"
#include "app/command/outside.h"

namespace app::command {

/// Prints the record card of a run of the journal.
int cardCommand(const Options& options, Outside& outside);

}  // namespace app::command
