#include "app/session/clock.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <thread>

namespace app::session {
namespace {

using std::chrono_literals::operator""ms;
using std::chrono_literals::operator""s;
using std::chrono_literals::operator""h;

const Instant start{std::chrono::sys_days{std::chrono::year{2026} / 3 / 14}};

TEST(SystemClock, IsTheTimeOfDay)
{
    const SystemClock clock;
    const auto before = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
    const Instant now = clock.now();
    EXPECT_GE(now, before - 1s);
    EXPECT_LE(now, before + 2s);
    EXPECT_FALSE(clock.isSimulated());
}

TEST(SystemClock, IsThereOnceItsSleepIsOver)
{
    const SystemClock clock;
    const Instant next = clock.now() + 1s;
    std::this_thread::sleep_for(clock.until(next));
    EXPECT_GE(clock.now(), next);
    EXPECT_EQ(clock.until(next), 0ms);
    EXPECT_GT(clock.until(next + 3600s), 3590s);
}

TEST(FastClock, BeginsAtItsStartAndRunsAtItsSpeed)
{
    const FastClock clock{1000, start};
    EXPECT_GE(clock.now(), start);
    std::this_thread::sleep_for(clock.until(start + 100s));
    EXPECT_GE(clock.now(), start + 100s);
    EXPECT_LE(FastClock(1000, start).until(start + 100s), 100ms);
    EXPECT_TRUE(clock.isSimulated());
}

TEST(FastClock, TakesAnAbsurdSpeedAsTheNearestSensibleOne)
{
    EXPECT_EQ(FastClock(0, start).speed(), FastClock::slowest);
    EXPECT_EQ(FastClock(-5, start).speed(), FastClock::slowest);
    EXPECT_EQ(FastClock(1e300, start).speed(), FastClock::fastest);
    EXPECT_EQ(FastClock(std::numeric_limits<double>::quiet_NaN(), start).speed(), 1.0);
}

}  // namespace
}  // namespace app::session
