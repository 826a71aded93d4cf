#pragma once

#include "app/session/clock.h"

namespace app::desktop {

/// A clock that goes on only when it is told to, so that a tour stands still at exactly the moment it is
/// about. One that runs by itself has gone past it by the time anybody looks.
class TourClock final : public session::Clock {
public:
    /// `speed` is how fast it is shown, in seconds of this clock in a real second.
    TourClock(session::Instant start, double speed)
        : m_now{start}
        , m_speed{speed}
    {
    }

    [[nodiscard]] session::Instant now() const override { return m_now; }
    /// Whoever lets it go on wakes the session.
    [[nodiscard]] std::chrono::milliseconds until(session::Instant moment) const override
    {
        return moment > m_now ? std::chrono::hours{1} : std::chrono::milliseconds{0};
    }
    [[nodiscard]] double speed() const override { return m_speed; }
    [[nodiscard]] bool isSimulated() const override { return true; }
    void goOn(core::measure::Seconds length) { m_now += length; }

private:
    session::Instant m_now;
    double m_speed;
};

}  // namespace app::desktop
