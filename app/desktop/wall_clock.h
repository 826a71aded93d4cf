#pragma once

#include "core/measure/time.h"

#include <QString>

#include <memory>
#include <string>

namespace app::desktop {

/// Shows moments as a wall clock in the service's time zone does.
class WallClock {
public:
    WallClock() = default;
    WallClock(std::shared_ptr<const core::measure::TimeZones> zones, std::string zone);

    /// "14:05". Empty while no time zones are known.
    [[nodiscard]] QString text(core::measure::Instant instant) const;

    [[nodiscard]] core::measure::LocalTime local(core::measure::Instant instant) const;

private:
    std::shared_ptr<const core::measure::TimeZones> m_zones;
    std::string m_zone = "UTC";
};

}  // namespace app::desktop
