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

    /// "14:05", or as the language of the window writes it. Empty while no time zones are known.
    [[nodiscard]] QString text(core::measure::Instant instant) const;

    /// What a wall clock shows, written the same way.
    [[nodiscard]] static QString text(core::measure::LocalTime shown);

    /// How that is written, for QTime: "HH:mm".
    [[nodiscard]] static QString format();

    [[nodiscard]] core::measure::LocalTime local(core::measure::Instant instant) const;

private:
    std::shared_ptr<const core::measure::TimeZones> m_zones;
    std::string m_zone = "UTC";
};

}  // namespace app::desktop
