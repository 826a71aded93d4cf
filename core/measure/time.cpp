#include "core/measure/time.h"

namespace core::measure {
namespace {

std::string padded(long long value, int digits)
{
    std::string text = std::to_string(value);
    while (text.size() < static_cast<std::size_t>(digits))
        text.insert(text.begin(), '0');
    return text;
}

}  // namespace

bool UtcOnly::knows(std::string_view zone) const
{
    return zone == "UTC";
}

std::vector<Instant> UtcOnly::instantsOf(LocalTime local, std::string_view /*zone*/) const
{
    return {Instant{local.time_since_epoch()}};
}

LocalTime UtcOnly::localAt(Instant instant, std::string_view /*zone*/) const
{
    return LocalTime{instant.time_since_epoch()};
}

std::string lengthText(Seconds length)
{
    if (length < Seconds{0})
        return "-" + lengthText(-length);
    const auto hours = length.count() / 3600;
    const auto minutes = length.count() / 60 % 60;
    const auto seconds = length.count() % 60;
    std::string text;
    const auto append = [&text](long long value, const char* unit) {
        if (!text.empty())
            text += ' ';
        text += std::to_string(value) + unit;
    };
    if (hours > 0)
        append(hours, " h");
    if (minutes > 0 || (hours == 0 && seconds == 0))
        append(minutes, " min");
    if (seconds > 0)
        append(seconds, " s");
    return text;
}

std::string countdownText(Seconds length)
{
    if (length < Seconds{0})
        return "-" + countdownText(-length);
    const auto hours = length.count() / 3600;
    const auto minutes = length.count() / 60 % 60;
    const auto seconds = padded(length.count() % 60, 2);
    if (hours > 0)
        return std::to_string(hours) + ":" + padded(minutes, 2) + ":" + seconds;
    return std::to_string(minutes) + ":" + seconds;
}

std::string clockText(LocalTime time)
{
    return clockTextWithSeconds(time).substr(0, 5);
}

std::string clockTextWithSeconds(LocalTime time)
{
    return isoText(time).substr(11);
}

std::string isoText(LocalTime time)
{
    const auto day = std::chrono::floor<std::chrono::days>(time);
    const std::chrono::year_month_day date{day};
    const std::chrono::hh_mm_ss clock{time - day};
    return padded(static_cast<int>(date.year()), 4) + "-" + padded(static_cast<unsigned>(date.month()), 2)
        + "-" + padded(static_cast<unsigned>(date.day()), 2) + "T" + padded(clock.hours().count(), 2) + ":"
        + padded(clock.minutes().count(), 2) + ":" + padded(clock.seconds().count(), 2);
}

}  // namespace core::measure
