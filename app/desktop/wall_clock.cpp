#include "app/desktop/wall_clock.h"

namespace app::desktop {

WallClock::WallClock(std::shared_ptr<const core::measure::TimeZones> zones, std::string zone)
    : m_zones{std::move(zones)}
    , m_zone{m_zones->knows(zone) ? std::move(zone) : "UTC"}
{
}

QString WallClock::text(core::measure::Instant instant) const
{
    return m_zones ? QString::fromStdString(core::measure::clockText(local(instant))) : QString{};
}

core::measure::LocalTime WallClock::local(core::measure::Instant instant) const
{
    if (m_zones && m_zones->knows(m_zone))
        return m_zones->localAt(instant, m_zone);
    return core::measure::LocalTime{instant.time_since_epoch()};
}

}  // namespace app::desktop
