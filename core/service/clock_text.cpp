#include "core/service/clock_text.h"

namespace core::service {

using measure::Instant;
using measure::LocalTime;
using measure::Seconds;

std::string momentText(LocalTime local)
{
    const std::string text = measure::isoText(local);
    return text.ends_with(":00") ? text.substr(0, text.size() - 3) : text;
}

std::string offsetText(LocalTime local, Instant instant)
{
    const Seconds offset = local.time_since_epoch() - instant.time_since_epoch();
    const Seconds size = offset < Seconds{0} ? -offset : offset;
    return (offset < Seconds{0} ? "-" : "+") + measure::clockText(LocalTime{size});
}

std::string momentText(Instant instant, const measure::TimeZones& zones, const std::string& zone)
{
    if (!zones.knows(zone))
        return momentText(LocalTime{instant.time_since_epoch()}) + "Z";
    const LocalTime local = zones.localAt(instant, zone);
    const bool isPlain = zones.instantsOf(local, zone) == std::vector<Instant>{instant};
    return momentText(local) + (isPlain ? "" : offsetText(local, instant));
}

DayAndTime dayAndTime(LocalTime local)
{
    const std::string text = momentText(local);
    return {text.substr(0, 10), text.substr(11)};
}

}  // namespace core::service
