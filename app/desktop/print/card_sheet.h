#pragma once

#include "app/desktop/print/sheet.h"
#include "app/view/record_card.h"

#include <memory>

namespace app::desktop {
class Theme;
}

namespace app::desktop::print {

/// The record card of each head: the strands as they really went, what each zone got, what was seen, how it
/// turned out. `services` are those of the run in the end; `theme` must outlive the sheets.
std::vector<Sheet> cardSheets(const view::RecordCard& card,
                              const std::vector<core::service::Service>& services, const Theme& theme,
                              const std::shared_ptr<const core::measure::TimeZones>& zones);

}  // namespace app::desktop::print
