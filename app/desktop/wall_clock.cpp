#include "app/desktop/wall_clock.h"

#include <QLocale>
#include <QTime>

namespace app::desktop {

WallClock::WallClock(std::shared_ptr<const core::measure::TimeZones> zones, std::string zone)
    : m_zones{std::move(zones)}
    , m_zone{m_zones->knows(zone) ? std::move(zone) : "UTC"}
{
}

QString WallClock::text(core::measure::Instant instant) const
{
    return m_zones ? text(local(instant)) : QString{};
}

QString WallClock::text(core::measure::LocalTime shown)
{
    constexpr int secondsOfADay = 24 * 3600;
    const auto passed = shown.time_since_epoch() % std::chrono::seconds{secondsOfADay};
    return QLocale{}.toString(QTime{0, 0}.addSecs(static_cast<int>(passed.count())), format());
}

QString WallClock::format()
{
    // Qt has a format with seconds for nobody's language, which tests and programs without a language use.
    const QLocale locale;
    return locale.language() == QLocale::C ? QStringLiteral("HH:mm")
                                           : locale.timeFormat(QLocale::ShortFormat);
}

core::measure::LocalTime WallClock::local(core::measure::Instant instant) const
{
    if (m_zones && m_zones->knows(m_zone))
        return m_zones->localAt(instant, m_zone);
    return core::measure::LocalTime{instant.time_since_epoch()};
}

}  // namespace app::desktop
