#pragma once

#include "app/desktop/setup/columns.h"

namespace app::desktop {

std::vector<Column> zoneColumns();

}  // namespace app::desktop
