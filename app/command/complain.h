#pragma once

#include "app/command/outside.h"

#include <string>
#include <vector>

namespace app::command {

/// Says what is wrong with the input, a line each. The exit status.
int complain(Outside& outside, const std::vector<std::string>& lines);

/// The journal in `folder`, its warnings said; nothing where it cannot be opened, which is said too.
std::unique_ptr<session::Journal> openJournal(Outside& outside, const std::filesystem::path& folder);

}  // namespace app::command
