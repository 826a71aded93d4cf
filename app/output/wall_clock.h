#pragma once

#include "core/measure/time.h"
#include "core/stagger/plan.h"

#include <string>

namespace app::output {

using core::measure::Instant;

/// Writes moments as somebody in one time zone reads them. It shows as much as is
/// needed to tell the moments of one paper apart: dates where they cross midnight,
/// the distance from UTC where the clocks change between them, seconds where they
/// are not whole minutes.
class WallClock {
public:
    /// For a paper whose moments lie from `first` to `last`.
    WallClock(const core::measure::TimeZones& zones, std::string zone, Instant first, Instant last);

    void showSeconds() { m_seconds = true; }

    /// "14:05", "Sun 25 Oct 01:30", "Sun 25 Oct 01:30 +01:00"
    [[nodiscard]] std::string text(Instant moment) const;

    /// "Saturday 14 March 2026"
    [[nodiscard]] std::string dayText(Instant moment) const;

    /// "2026-10-25T01:30:00+01:00": one moment, whoever reads it.
    [[nodiscard]] std::string isoText(Instant moment) const;

    [[nodiscard]] const std::string& zone() const { return m_zone; }
    [[nodiscard]] bool crossesMidnight() const { return m_dates; }
    [[nodiscard]] bool clocksChange() const { return m_offsets; }

private:
    [[nodiscard]] core::measure::LocalTime local(Instant moment) const;
    [[nodiscard]] std::string offsetText(Instant moment) const;

    const core::measure::TimeZones& m_zones;
    std::string m_zone;
    bool m_dates = false;
    bool m_offsets = false;
    bool m_seconds = false;
};

/// The clock for `plan`, in the time zone of `service`.
WallClock wallClockOf(const core::stagger::Plan& plan, const core::service::Service& service,
                      const core::measure::TimeZones& zones);

}  // namespace app::output
