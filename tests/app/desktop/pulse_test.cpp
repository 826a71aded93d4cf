#include "app/desktop/lanes/pulse.h"
#include "tests/app/desktop/rig.h"

#include <QElapsedTimer>

#include <gtest/gtest.h>

// What insists comes and goes, and no faster than anybody can look at.

using app::desktop::Pulse;

namespace {

TEST(Pulse, IsLitFromTheFirstMomentAndFlashesLessThanOnceASecond)
{
    Pulse pulse;
    EXPECT_FALSE(pulse.isLit());
    pulse.setBeating(true);
    EXPECT_TRUE(pulse.isLit());
    QElapsedTimer timer;
    timer.start();
    EXPECT_TRUE(rig::Rig::wait([&] { return !pulse.isLit(); }));
    EXPECT_TRUE(rig::Rig::wait([&] { return pulse.isLit(); }));
    EXPECT_GT(timer.elapsed(), 1000) << "WCAG 2.2, 2.3.1 allows three flashes a second";
}

TEST(Pulse, StandsLitOnceItIsHeld)
{
    Pulse pulse;
    pulse.setBeating(true);
    ASSERT_TRUE(rig::Rig::wait([&] { return !pulse.isLit(); }));
    pulse.hold();
    EXPECT_TRUE(pulse.isLit());
    EXPECT_FALSE(rig::Rig::wait([&] { return !pulse.isLit(); }, 1500));
    pulse.setBeating(false);
    pulse.setBeating(true);
    EXPECT_FALSE(rig::Rig::wait([&] { return !pulse.isLit(); }, 1500));
}

}  // namespace
