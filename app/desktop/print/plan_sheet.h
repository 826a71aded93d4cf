#pragma once

#include "app/desktop/print/sheet.h"

#include "core/run/run.h"
#include "core/stagger/forecast.h"
#include "core/stagger/plan.h"

#include <memory>

namespace app::desktop {
class Theme;
}

namespace app::desktop::print {

/// What is printed of a plan, and with what.
struct PlanToPrint {
    std::vector<core::service::Service> services;
    core::stagger::Plan plan;
    std::optional<core::stagger::Forecast> forecast{};
    std::optional<core::run::State> state{};  ///< While it runs: what has happened is printed as it happened.
};

/// A sheet for each head that the plan has something of: its strands, who does what when, what each zone gets
/// beside its limits, and the bowls in the order in which they are mixed. `theme` must outlive the sheets.
std::vector<Sheet> planSheets(const PlanToPrint& planned, const Theme& theme,
                              const std::shared_ptr<const core::measure::TimeZones>& zones);

/// At the foot of all that is printed: that the product's leaflet comes first.
QString leafletFirst();

}  // namespace app::desktop::print
