#include "app/session/clock.h"

#include "app/session/text.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <fstream>

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

/// Linux gives each start of the machine a name of its own.
std::string bootName()
{
    std::ifstream file{"/proc/sys/kernel/random/boot_id"};
    std::string name;
    std::getline(file, name);
    return name;
}

}  // namespace

Machine thisMachine()
{
    return {.elapsed = elapsed, .wall = [] { return read(CLOCK_REALTIME); }, .boot = bootName()};
}

std::shared_ptr<const Clock> Clock::by(const TimeBase&) const
{
    return nullptr;
}

std::shared_ptr<const Clock> Clock::afresh() const
{
    return nullptr;
}

SystemClock::SystemClock(Machine machine)
    : m_machine{std::move(machine)}
    , m_wallMinusElapsed{m_machine.wall() - m_machine.elapsed()}
{
}

SystemClock::SystemClock(Machine machine, const TimeBase& base)
    : m_machine{std::move(machine)}
    , m_wallMinusElapsed{base.wallMinusElapsed}
{
}

Instant SystemClock::now() const
{
    return Instant{std::chrono::floor<std::chrono::seconds>(m_machine.elapsed() + m_wallMinusElapsed)};
}

milliseconds SystemClock::until(Instant moment) const
{
    return wait(moment.time_since_epoch() - (m_machine.elapsed() + m_wallMinusElapsed));
}

std::optional<TimeBase> SystemClock::base() const
{
    if (m_machine.boot.empty())
        return std::nullopt;
    return TimeBase{m_machine.boot, m_wallMinusElapsed};
}

std::shared_ptr<const Clock> SystemClock::by(const TimeBase& base) const
{
    if (base.boot.empty() || base.boot != m_machine.boot)
        return nullptr;
    return std::make_shared<SystemClock>(m_machine, base);
}

std::shared_ptr<const Clock> SystemClock::afresh() const
{
    return std::make_shared<SystemClock>(m_machine);
}

core::measure::Seconds SystemClock::wallAhead() const
{
    return std::chrono::round<core::measure::Seconds>(m_machine.wall() - m_machine.elapsed()
                                                      - m_wallMinusElapsed);
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

std::optional<std::string> setClockText(core::measure::Seconds ahead, core::measure::Seconds told)
{
    constexpr core::measure::Seconds leastTold{30};
    if (std::chrono::abs(ahead - told) < leastTold)
        return std::nullopt;
    if (std::chrono::abs(ahead) < leastTold)
        return Text::tr("The clock of this machine agrees with this run again.").toStdString();
    const QString by = QString::fromStdString(core::measure::lengthText(std::chrono::abs(ahead)));
    const QString set = ahead > core::measure::Seconds{0}
        ? Text::tr("The clock of this machine was set, or is wrong: it is %1 ahead of this run.")
        : Text::tr("The clock of this machine was set, or is wrong: it is %1 behind this run.");
    return (set.arg(by) + QLatin1Char{' '}
            + Text::tr("Nothing is lost: the run goes on by the time that really passes, and by the clock as "
                       "it was."))
        .toStdString();
}

}  // namespace app::session
