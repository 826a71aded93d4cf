#pragma once

#include "core/measure/time.h"
#include "core/service/findings.h"
#include "core/service/json/value.h"

#include <optional>
#include <string>
#include <string_view>

namespace core::service::reading {

/// A day such as "2026-10-25", or nothing.
std::optional<std::chrono::local_days> readDay(std::string_view text);

/// What turns the clock times of a file into moments.
struct Clock {
    const measure::TimeZones& zones;
    std::string zone;             ///< Known to `zones`, or empty: then every clock time is a stand-in.
    std::chrono::local_days day;  ///< Of "14:30".
};

/// The moment of "14:30", "2026-10-25T01:30" or, with an offset from UTC,
/// "2026-10-25T01:30+01:00" or "...Z"; seconds may follow the minutes. A time that
/// the change of the clocks skips or repeats is a problem, as is anything else.
measure::Instant readMoment(const json::Value& value, const Clock& clock, const std::string& place,
                            Findings& findings);

}  // namespace core::service::reading
