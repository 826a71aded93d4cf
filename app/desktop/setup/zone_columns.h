#pragma once

#include "app/desktop/setup/columns.h"

namespace app::desktop {

/// But for the clock time, which needs a clock.
std::vector<Column> zoneColumns();

}  // namespace app::desktop
