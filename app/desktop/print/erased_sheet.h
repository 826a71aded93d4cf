#pragma once

#include "app/desktop/print/sheet.h"
#include "app/output/wall_clock.h"
#include "app/view/erased_run.h"

namespace app::desktop::print {

/// What is left of a run that was erased, which lasted from `began` until `ended`.
Sheet erasedSheet(const view::ErasedRun& run, core::measure::Instant began, core::measure::Instant ended,
                  const output::WallClock& clock);

}  // namespace app::desktop::print
