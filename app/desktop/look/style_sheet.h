#pragma once

#include "app/desktop/look/colours.h"

#include <QString>

namespace app::desktop {

/// The window's parts in these colours, with text at `textSize` percent. What a part is, its "role" property
/// says: main, live, alert, quiet, card, banner, warning, title, step, small.
QString styleSheet(const Colours& colours, int textSize = 100);

}  // namespace app::desktop
