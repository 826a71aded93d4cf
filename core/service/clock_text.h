#pragma once

#include "core/measure/time.h"

#include <string>

/// Moments as a service file writes them.
namespace core::service {

/// "2026-10-25T01:30", with seconds only where there are some.
std::string momentText(measure::LocalTime local);

/// "+01:00", "-03:30" or "+00:00": how far a clock that shows `local` at `instant` is ahead of UTC.
std::string offsetText(measure::LocalTime local, measure::Instant instant);

/// The moment on a clock in `zone`, with its offset where that clock shows the
/// same time twice. In UTC, with a Z, where the zone is not known.
std::string momentText(measure::Instant instant, const measure::TimeZones& zones, const std::string& zone);

struct DayAndTime {
    std::string day;   ///< "2026-10-25"
    std::string time;  ///< "01:30", with seconds only where there are some.
};

DayAndTime dayAndTime(measure::LocalTime local);

}  // namespace core::service
