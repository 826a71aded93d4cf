#pragma once

#include "app/desktop/main_window.h"
#include "app/desktop/options.h"

namespace app::desktop {

/// What the window shows first: an unfinished run before anything else, then
/// the file, the demo, or what was open last.
void openFirst(MainWindow& window, session::Session& session, const Options& options,
               const QSettings& settings);

}  // namespace app::desktop
