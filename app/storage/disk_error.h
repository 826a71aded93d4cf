#pragma once

#include "app/session/journal.h"

#include <filesystem>

namespace app::storage {

/// What the system's error number means for somebody who wants to keep a run at `place`.
session::JournalError diskError(int systemError, const std::filesystem::path& place);

}  // namespace app::storage
