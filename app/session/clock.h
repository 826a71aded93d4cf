#pragma once

#include "core/measure/time.h"

#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace app::session {

using core::measure::Instant;

/// What a machine says of time; stood in for in tests.
struct Machine {
    std::function<std::chrono::nanoseconds()> elapsed;  ///< Since it was started, its sleep included.
    std::function<std::chrono::nanoseconds()> wall;     ///< The time of day. Anybody can set it.
    std::string boot;  ///< Another each time it is started; empty where that is not known.
};

/// This one.
Machine thisMachine();

/// What ties elapsed time to the time of day, until the machine is started anew.
struct TimeBase {
    std::string boot;
    std::chrono::nanoseconds wallMinusElapsed{0};

    friend bool operator==(const TimeBase&, const TimeBase&) = default;
};

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

    /// What another program can go on by, when this one has been killed. Nothing where there is no such
    /// thing.
    [[nodiscard]] virtual std::optional<TimeBase> base() const { return std::nullopt; }

    /// The same clock going on by `base`; nothing where the machine was started anew since, or for another
    /// kind.
    [[nodiscard]] virtual std::shared_ptr<const Clock> by(const TimeBase& base) const;

    /// The same clock, put right by the time of day as it is now; nothing for another kind.
    [[nodiscard]] virtual std::shared_ptr<const Clock> afresh() const;

    /// How far the time of day has come to be ahead of `now`, because somebody set it.
    [[nodiscard]] virtual core::measure::Seconds wallAhead() const { return core::measure::Seconds{0}; }
};

/// The time of day when the program started, and from then on elapsed time: also
/// while the machine sleeps, and whatever happens to the wall clock meanwhile.
/// A development that has ten minutes left has ten minutes left when somebody
/// puts the clock right.
class SystemClock final : public Clock {
public:
    explicit SystemClock(Machine machine = thisMachine());
    SystemClock(Machine machine, const TimeBase& base);

    [[nodiscard]] Instant now() const override;
    [[nodiscard]] std::chrono::milliseconds until(Instant moment) const override;
    [[nodiscard]] double speed() const override { return 1.0; }
    [[nodiscard]] bool isSimulated() const override { return false; }
    [[nodiscard]] std::optional<TimeBase> base() const override;
    [[nodiscard]] std::shared_ptr<const Clock> by(const TimeBase& base) const override;
    [[nodiscard]] std::shared_ptr<const Clock> afresh() const override;
    [[nodiscard]] core::measure::Seconds wallAhead() const override;

private:
    Machine m_machine;
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

/// What to say when the time of day has come to be `ahead` of a clock, `told` having been said last; nothing
/// where it is off by no more than is worth a word.
std::optional<std::string> setClockText(core::measure::Seconds ahead, core::measure::Seconds told);

}  // namespace app::session
