#pragma once

#include "app/desktop/look/colours.h"

#include <QString>

namespace app::desktop {

/// The window's parts in these colours, with text at `textSize` percent. What a part is, its "role" property
/// says: main, live, alert, quiet, card, banner, warning, title, step, small.
QString styleSheet(const Colours& colours, int textSize = 100);

/// What makes those buttons of the window that `which` selects so many percent as large. They have their size
/// from the sheet of styles, so it is another sheet, of the part they are in, that makes them larger; empty
/// for 100.
QString enlargedButtons(const QString& which, int textSize, int percent);

}  // namespace app::desktop
