#pragma once

#include "core/measure/time.h"

#include <QDateTime>
#include <QString>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace app::desktop {

/// Clock times as they are typed in Set-up: of the day that is worked on unless they name another.
class Moments {
public:
    using Instant = core::measure::Instant;

    Moments() = default;
    Moments(std::shared_ptr<const core::measure::TimeZones> zones, std::function<Instant()> now);

    /// "13:30", or "2026-11-28 13:30" for another day than that of `base`, as a wall clock in `zone` shows
    /// it.
    [[nodiscard]] QString text(Instant moment, const std::string& zone, Instant base) const;

    /// What was typed: "13:30" or "2026-11-28 13:30". Nothing where it is neither, and for a time that the
    /// change of the clocks skips; of one that it repeats, the first.
    [[nodiscard]] std::optional<Instant> of(const QString& entry, const std::string& zone,
                                            Instant base) const;

    /// "13:00–13:30, 15:00–15:10", sorted; what overlaps or ends before it begins makes no sense.
    [[nodiscard]] QString text(const std::vector<core::measure::Interval>& spans, const std::string& zone,
                               Instant base) const;
    [[nodiscard]] std::optional<std::vector<core::measure::Interval>>
    spansOf(const QString& entry, const std::string& zone, Instant base) const;

    /// What a wall clock in `zone` shows, as if it were UTC; where the zone is not known, UTC itself.
    [[nodiscard]] QDateTime wall(Instant moment, const std::string& zone) const;

    [[nodiscard]] Instant now() const { return m_now ? m_now() : Instant{}; }

private:
    std::shared_ptr<const core::measure::TimeZones> m_zones = std::make_shared<core::measure::UtcOnly>();
    std::function<Instant()> m_now;
};

}  // namespace app::desktop
