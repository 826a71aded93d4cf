#pragma once

#include "app/desktop/look/strand_painter.h"
#include "app/desktop/wall_clock.h"

namespace app::desktop {

class Theme;

/// The words of `picture`, whether it is drawn on the screen or on paper. `jobs` names tasks in the rows of
/// the hands; `theme` must outlive what is returned.
StrandWords strandWords(const Theme& theme, const view::StrandPicture& picture, const WallClock& clock,
                        std::function<QString(const view::TaskId&)> jobs);

}  // namespace app::desktop
