#pragma once

#include "app/output/wall_clock.h"
#include "app/view/outcome_view.h"

#include <QString>

/// What came of a coat, in the person's language.
namespace app::desktop::words {

/// "too warm"
QString turnedOut(core::run::Outcome outcome);

/// "too warm, brassy at the nape"; empty where nothing was said.
QString result(const view::ZoneResult& result);

/// "on target", "3 min short", "2 min over"
QString offTarget(const core::service::Window& window, core::measure::Seconds developed);

/// "Friday, 15 January 2027", as the language writes it.
QString day(core::measure::Instant moment, const core::measure::TimeZones& zones, const std::string& zone);

}  // namespace app::desktop::words
