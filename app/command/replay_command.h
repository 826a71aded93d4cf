#pragma once

#include "app/command/options.h"
#include "app/command/outside.h"

namespace app::command {

/// Tells a run of the journal again, from its facts alone: what was said, what that changed, what sounded; or
/// how everything stood at one moment.
int replayCommand(const Options& options, Outside& outside);

}  // namespace app::command
