#pragma once

#include <chrono>
#include <string>
#include <string_view>
#include <vector>

/// Time, in the two kinds that must never be mixed up.
///
/// - A length is `Seconds`: elapsed time, whole seconds.
/// - A moment is `Instant`: seconds since 1970-01-01T00:00:00Z without leap
///   seconds. Subtracting two instants gives elapsed time, so a development of
///   35 minutes is 35 minutes also on the night the clocks change.
///
/// What a wall clock shows is `LocalTime`. It becomes an instant only through
/// the rules of a time zone, which the caller hands in: core owns no such table
/// and reads no clock.
namespace core::measure {

using Seconds = std::chrono::seconds;
using Instant = std::chrono::sys_seconds;
using LocalTime = std::chrono::local_seconds;

/// Half-open: `from` belongs to it, `until` does not.
struct Interval {
    Instant from;
    Instant until;

    friend bool operator==(const Interval&, const Interval&) = default;
};

/// The rules of the world's time zones, as the caller knows them.
class TimeZones {
public:
    TimeZones() = default;
    TimeZones(const TimeZones&) = delete;
    TimeZones& operator=(const TimeZones&) = delete;
    virtual ~TimeZones() = default;

    /// Whether `zone` (an IANA name such as "Europe/London") is known.
    [[nodiscard]] virtual bool knows(std::string_view zone) const = 0;

    /// Every instant at which a wall clock in `zone` shows `local`, earliest
    /// first: one as a rule, none in the gap when clocks go forward, two in the
    /// hour that is repeated when they go back. `zone` must be known.
    [[nodiscard]] virtual std::vector<Instant> instantsOf(LocalTime local, std::string_view zone) const = 0;

    /// What a wall clock in `zone` shows at `instant`. `zone` must be known.
    [[nodiscard]] virtual LocalTime localAt(Instant instant, std::string_view zone) const = 0;
};

/// Knows "UTC" alone. For tests, and where nothing else is to be had.
class UtcOnly final : public TimeZones {
public:
    [[nodiscard]] bool knows(std::string_view zone) const override;
    [[nodiscard]] std::vector<Instant> instantsOf(LocalTime local, std::string_view zone) const override;
    [[nodiscard]] LocalTime localAt(Instant instant, std::string_view zone) const override;
};

/// A length for people: "30 min", "12 min 30 s", "45 s", "1 h 5 min", "0 min".
/// Negative lengths carry a leading minus sign. Exact: nothing is rounded.
std::string lengthText(Seconds length);

/// A length as the digits of a countdown: "4:05", "1:04:05", "-0:30".
std::string countdownText(Seconds length);

/// Hours and minutes of a wall clock, "14:05", and with seconds "14:05:30".
std::string clockText(LocalTime time);
std::string clockTextWithSeconds(LocalTime time);

/// ISO 8601 date and time, "2026-10-25T01:30:00".
std::string isoText(LocalTime time);

}  // namespace core::measure
