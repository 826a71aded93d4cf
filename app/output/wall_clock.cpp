#include "app/output/wall_clock.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace app::output {

using core::measure::LocalTime;
using core::measure::Seconds;

namespace {

constexpr std::array days{"Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"};
constexpr std::array months{"January", "February", "March",     "April",   "May",      "June",
                            "July",    "August",   "September", "October", "November", "December"};

struct Date {
    std::string weekday;
    std::string day;
    std::string month;
    std::string year;
};

Date dateOf(LocalTime local)
{
    const auto day = std::chrono::floor<std::chrono::days>(local);
    const std::chrono::year_month_day date{day};
    return {
        days.at(std::chrono::weekday{day}.c_encoding()), std::to_string(static_cast<unsigned>(date.day())),
        months.at(static_cast<unsigned>(date.month()) - 1), std::to_string(static_cast<int>(date.year()))};
}

bool isWholeMinute(Instant moment)
{
    return moment == std::chrono::floor<std::chrono::minutes>(moment);
}

}  // namespace

WallClock::WallClock(const core::measure::TimeZones& zones, std::string zone, Instant first, Instant last)
    : m_zones{zones}
    , m_zone{std::move(zone)}
{
    using std::chrono::days;
    m_dates = std::chrono::floor<days>(local(first)) != std::chrono::floor<days>(local(last));
    m_offsets = local(last) - local(first) != last - first;
    m_dates = m_dates || m_offsets;
}

LocalTime WallClock::local(Instant moment) const
{
    return m_zones.localAt(moment, m_zone);
}

std::string WallClock::offsetText(Instant moment) const
{
    const Seconds offset = local(moment).time_since_epoch() - moment.time_since_epoch();
    const std::string distance = core::measure::clockText(LocalTime{std::chrono::abs(offset)});
    return (offset < Seconds{0} ? "-" : "+") + distance;
}

std::string WallClock::text(Instant moment) const
{
    const LocalTime time = local(moment);
    std::string text = m_seconds ? core::measure::clockTextWithSeconds(time) : core::measure::clockText(time);
    if (m_dates) {
        const Date date = dateOf(time);
        text = date.weekday.substr(0, 3) + " " + date.day + " " + date.month.substr(0, 3) + " " + text;
    }
    return m_offsets ? text + " " + offsetText(moment) : text;
}

std::string WallClock::dayText(Instant moment) const
{
    const Date date = dateOf(local(moment));
    return date.weekday + " " + date.day + " " + date.month + " " + date.year;
}

std::string WallClock::isoText(Instant moment) const
{
    return core::measure::isoText(local(moment)) + offsetText(moment);
}

WallClock wallClockOf(const core::stagger::Plan& plan, const core::service::Service& service,
                      const core::measure::TimeZones& zones)
{
    WallClock clock{zones, service.timeZone, plan->start, plan->end};
    const bool whole = std::all_of(plan->tasks.begin(), plan->tasks.end(), [](const auto& task) {
        return isWholeMinute(task.start) && isWholeMinute(task.end);
    });
    if (!whole)
        clock.showSeconds();
    return clock;
}

}  // namespace app::output
