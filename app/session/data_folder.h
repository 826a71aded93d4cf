#pragma once

#include "app/session/journal.h"

#include <filesystem>
#include <string>

namespace app::session {

/// Where the program keeps its journal: `asked` if given (--data), else the
/// environment's BASINBELL_DATA, else the system's place for a program's data.
std::filesystem::path dataFolder(const std::string& asked = {});

}  // namespace app::session
