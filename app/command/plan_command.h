#pragma once

#include "app/command/options.h"
#include "app/command/outside.h"

namespace app::command {

int planCommand(const Options& options, Outside& outside);
int checkCommand(const Options& options, Outside& outside);

}  // namespace app::command
