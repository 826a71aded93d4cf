#pragma once

#include "core/service/service.h"
#include "core/stagger/plan.h"

#include <string>

/// What the tests of output share.
namespace app::output::samples {

/// 14:00 in London.
inline constexpr core::measure::Instant twoOClock =
    std::chrono::sys_days{std::chrono::year{2026} / 7 / 1} + std::chrono::hours{13};

/// In 2026.
inline core::measure::Instant utc(int month, int day, int hour, int minute)
{
    return std::chrono::sys_days{std::chrono::year{2026} / month / day} + std::chrono::hours{hour}
    + std::chrono::minutes{minute};
}

/// Reads a service; the test fails where it cannot be read.
core::service::Service service(const std::string& text, const core::measure::TimeZones& zones);

/// One zone, a bowl mixed before it, looked at once: 5 min mixing, 20 min applying, 35 min development from
/// the end, 6 min rinsing. `more` goes into the service, such as "\"ready_by\": \"2026-03-14T15:00\",".
std::string oneZone(const std::string& more, const std::string& zone = "Europe/London");

core::stagger::Plan planOf(const core::service::Service& service, core::measure::Instant now);

}  // namespace app::output::samples
