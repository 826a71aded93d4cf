#include "app/session/time_zones.h"

#include <QDateTime>
#include <QTimeZone>

#include <algorithm>

namespace app::session {

using core::measure::Instant;
using core::measure::LocalTime;
using core::measure::Seconds;

namespace {

QByteArray idOf(std::string_view zone)
{
    return QByteArray{zone.data(), static_cast<qsizetype>(zone.size())};
}

Seconds offsetAt(const QTimeZone& zone, Instant instant)
{
    const qint64 seconds = instant.time_since_epoch().count();
    return Seconds{zone.offsetFromUtc(QDateTime::fromSecsSinceEpoch(seconds, Qt::UTC))};
}

}  // namespace

bool QtTimeZones::knows(std::string_view zone) const
{
    if (zone == "UTC")
        return true;
    // Qt lists its own "UTC+01:00" and the like too; a file that travels needs a name of the world's table.
    return !zone.starts_with("UTC") && QTimeZone::availableTimeZoneIds().contains(idOf(zone));
}

std::vector<Instant> QtTimeZones::instantsOf(LocalTime local, std::string_view zone) const
{
    // Any instant that shows `local` has the offset in force some time within a day of it. So try each such
    // offset and keep those that lead back to `local`; Qt's own answer to a local time is silent about gaps
    // and repeats.
    const QTimeZone rules{idOf(zone)};
    const Instant asUtc{local.time_since_epoch()};
    std::vector<Instant> found;
    for (Instant near = asUtc - std::chrono::hours{26}; near <= asUtc + std::chrono::hours{26};
         near += std::chrono::minutes{30}) {
        const Instant candidate = asUtc - offsetAt(rules, near);
        if (candidate + offsetAt(rules, candidate) == asUtc)
            found.push_back(candidate);
    }
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

LocalTime QtTimeZones::localAt(Instant instant, std::string_view zone) const
{
    const QTimeZone rules{idOf(zone)};
    return LocalTime{(instant + offsetAt(rules, instant)).time_since_epoch()};
}

std::string localZone()
{
    const QByteArray id = QTimeZone::systemTimeZoneId();
    const std::string name = id.toStdString();
    return QtTimeZones{}.knows(name) ? name : "UTC";
}

}  // namespace app::session
