#pragma once

#include "app/command/options.h"
#include "app/command/outside.h"

namespace app::command {

/// Needs a QCoreApplication.
int runCommand(const Options& options, Outside& outside);

int cautionsCommand(Outside& outside);

}  // namespace app::command
