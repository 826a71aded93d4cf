#pragma once

#include "core/measure/time.h"

#include <chrono>
#include <optional>

namespace app::session {

using core::measure::Instant;

/// Where the program gets the time from. There is one, at the edge.
class Clock {
public:
    Clock() = default;
    Clock(const Clock&) = delete;
    Clock& operator=(const Clock&) = delete;
    virtual ~Clock() = default;

    /// The whole second that it is. Never goes back.
    [[nodiscard]] virtual Instant now() const = 0;

    /// How long to sleep, really, until `now()` is `moment`; 0 when it is already.
    [[nodiscard]] virtual std::chrono::milliseconds until(Instant moment) const = 0;

    /// Seconds of this clock in a real second.
    [[nodiscard]] virtual double speed() const = 0;

    /// Whether it only plays at being the time of day, so that nothing that a
    /// listener should have heard may be jumped over to catch up.
    [[nodiscard]] virtual bool isSimulated() const = 0;
};

/// The time of day when the program started, and from then on elapsed time: also
/// while the machine sleeps, and whatever happens to the wall clock meanwhile.
/// A development that has ten minutes left has ten minutes left when somebody
/// puts the clock right.
class SystemClock final : public Clock {
public:
    SystemClock();

    [[nodiscard]] Instant now() const override;
    [[nodiscard]] std::chrono::milliseconds until(Instant moment) const override;
    [[nodiscard]] double speed() const override { return 1.0; }
    [[nodiscard]] bool isSimulated() const override { return false; }

private:
    std::chrono::nanoseconds m_wallMinusElapsed;
};

/// Runs `speed` times as fast as the world, for demonstrations and tests. It is
/// `start` when it is first asked, so a fast clock that is made early loses nothing.
class FastClock final : public Clock {
public:
    /// `speed` is from 0.01 to 1,000,000; what lies outside is taken as the nearer end.
    FastClock(double speed, Instant start);

    [[nodiscard]] Instant now() const override;
    [[nodiscard]] std::chrono::milliseconds until(Instant moment) const override;
    [[nodiscard]] double speed() const override { return m_speed; }
    [[nodiscard]] bool isSimulated() const override { return true; }

    static constexpr double slowest = 0.01;
    static constexpr double fastest = 1'000'000.0;

private:
    [[nodiscard]] std::chrono::nanoseconds running() const;

    double m_speed;
    Instant m_start;
    mutable std::optional<std::chrono::nanoseconds> m_elapsedAtStart;
};

}  // namespace app::session
