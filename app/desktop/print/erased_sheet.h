#pragma once

#include "app/desktop/print/sheet.h"
#include "app/view/erased_run.h"

namespace app::desktop::print {

/// What is left of a run that was erased, which lasted from `began` until `ended`, in the time zone `zone`.
Sheet erasedSheet(const view::ErasedRun& run, core::measure::Instant began, core::measure::Instant ended,
                  const core::measure::TimeZones& zones, const std::string& zone);

}  // namespace app::desktop::print
