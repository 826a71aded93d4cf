#pragma once

#include "app/command/outside.h"

#include <string>
#include <vector>

namespace app::command {

/// Says what is wrong with the input, a line each. The exit status.
int complain(Outside& outside, const std::vector<std::string>& lines);

}  // namespace app::command
