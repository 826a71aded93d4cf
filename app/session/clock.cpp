#include "app/session/clock.h"

#include <algorithm>
#include <cmath>

#include <time.h>

namespace app::session {

using std::chrono::milliseconds;
using std::chrono::nanoseconds;

namespace {

nanoseconds read(clockid_t clock)
{
    timespec time{};
    clock_gettime(clock, &time);
    return std::chrono::seconds{time.tv_sec} + nanoseconds{time.tv_nsec};
}

/// Goes on while the machine sleeps, and nobody can set it.
nanoseconds elapsed()
{
    return read(CLOCK_BOOTTIME);
}

milliseconds wait(nanoseconds time)
{
    return std::max(milliseconds{0}, std::chrono::ceil<milliseconds>(time));
}

}  // namespace

SystemClock::SystemClock()
    : m_wallMinusElapsed{read(CLOCK_REALTIME) - elapsed()}
{
}

Instant SystemClock::now() const
{
    return Instant{std::chrono::floor<std::chrono::seconds>(elapsed() + m_wallMinusElapsed)};
}

milliseconds SystemClock::until(Instant moment) const
{
    return wait(moment.time_since_epoch() - (elapsed() + m_wallMinusElapsed));
}

FastClock::FastClock(double speed, Instant start)
    : m_speed{std::clamp(std::isnan(speed) ? 1.0 : speed, slowest, fastest)}
    , m_start{start}
{
}

nanoseconds FastClock::running() const
{
    const nanoseconds now = elapsed();
    if (!m_elapsedAtStart)
        m_elapsedAtStart = now;
    return now - *m_elapsedAtStart;
}

Instant FastClock::now() const
{
    const std::chrono::duration<double> real = running();
    return m_start + std::chrono::floor<std::chrono::seconds>(real * m_speed);
}

milliseconds FastClock::until(Instant moment) const
{
    const std::chrono::duration<double> real = std::chrono::duration<double>{moment - m_start} / m_speed;
    return wait(std::chrono::ceil<nanoseconds>(real) - running());
}

}  // namespace app::session
