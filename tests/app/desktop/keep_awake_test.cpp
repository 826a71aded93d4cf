#include "app/desktop/keep_awake.h"

#include "tests/app/desktop/fake_services.h"
#include "tests/app/desktop/private_bus.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// A bus of its own, with services of a desktop that are stood in for.

namespace app::desktop {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

class KeepAwakeTest : public PrivateBus {
protected:
    void offerScreen()
    {
        ASSERT_TRUE(bus("services").registerService(QStringLiteral("org.freedesktop.ScreenSaver")));
        ASSERT_TRUE(bus("services")
                        .registerObject(QStringLiteral("/org/freedesktop/ScreenSaver"), &screen,
                                        QDBusConnection::ExportAllSlots));
    }

    void offerMachine()
    {
        ASSERT_TRUE(bus("services").registerService(QStringLiteral("org.freedesktop.login1")));
        ASSERT_TRUE(bus("services")
                        .registerObject(QStringLiteral("/org/freedesktop/login1"), &machine,
                                        QDBusConnection::ExportAllSlots));
    }

    fake::Screen screen;
    fake::Machine machine;
};

TEST_F(KeepAwakeTest, HoldsScreenAndMachineUntilItLetsGo)
{
    offerScreen();
    offerMachine();
    KeepAwake awake{bus("asker"), bus("asker")};
    awake.hold(QStringLiteral("Lanes are running"));
    awake.hold(QStringLiteral("Lanes are running"));
    ASSERT_TRUE(waitUntil([&] { return awake.keepsScreenOn() && awake.keepsMachineUp(); }));
    EXPECT_THAT(screen.asked, ElementsAre(QStringLiteral("Basinbell: Lanes are running")));
    EXPECT_THAT(machine.asked,
                ElementsAre(QStringLiteral("sleep:idle"), QStringLiteral("Basinbell"),
                            QStringLiteral("Lanes are running"), QStringLiteral("block")));
    EXPECT_TRUE(machine.isHeld());

    awake.letGo();
    EXPECT_TRUE(waitUntil([&] { return screen.letGo.size() == 1 && !machine.isHeld(); }));
    EXPECT_THAT(screen.letGo, ElementsAre(41U));
}

TEST_F(KeepAwakeTest, LetsGoWhenItGoes)
{
    offerScreen();
    offerMachine();
    {
        KeepAwake awake{bus("asker"), bus("asker")};
        awake.hold(QStringLiteral("Lanes are running"));
        ASSERT_TRUE(waitUntil([&] { return awake.keepsScreenOn() && awake.keepsMachineUp(); }));
    }
    EXPECT_TRUE(waitUntil([&] { return screen.letGo.size() == 1 && !machine.isHeld(); }));
}

// The run may be over before the desktop has answered.
TEST_F(KeepAwakeTest, GivesBackWhatComesTooLate)
{
    offerScreen();
    KeepAwake awake{bus("asker"), bus("asker")};
    awake.hold(QStringLiteral("Lanes are running"));
    awake.letGo();
    EXPECT_TRUE(waitUntil([&] { return screen.letGo.size() == 1; }));
    EXPECT_FALSE(awake.keepsScreenOn());
}

// One run ends and the next begins before the desktop has answered: what is late for the first is not the
// second's.
TEST_F(KeepAwakeTest, HoldsForTheNextRunThoughTheAnswerToTheLastComesLate)
{
    offerScreen();
    offerMachine();
    KeepAwake awake{bus("asker"), bus("asker")};
    awake.hold(QStringLiteral("one"));
    awake.letGo();
    awake.hold(QStringLiteral("two"));
    ASSERT_TRUE(waitUntil([&] { return awake.keepsScreenOn() && awake.keepsMachineUp(); }));
    EXPECT_TRUE(waitUntil([&] { return screen.letGo.size() == 1; }));
    EXPECT_THAT(screen.letGo, ElementsAre(41U));
    EXPECT_TRUE(awake.keepsScreenOn());
}

TEST_F(KeepAwakeTest, DoesWithoutEither)
{
    KeepAwake awake{bus("asker"), QDBusConnection{QStringLiteral("no such bus")}};
    awake.hold(QStringLiteral("Lanes are running"));
    QDeadlineTimer awhile{300};
    waitUntil([&] { return awhile.hasExpired(); });
    EXPECT_FALSE(awake.keepsScreenOn());
    EXPECT_FALSE(awake.keepsMachineUp());
    awake.letGo();
    EXPECT_THAT(screen.letGo, IsEmpty());
}

}  // namespace
}  // namespace app::desktop
