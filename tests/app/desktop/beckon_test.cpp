#include "app/desktop/beckon.h"

#include "app/desktop/words.h"
#include "tests/app/desktop/fake_services.h"
#include "tests/app/desktop/fake_voice.h"
#include "tests/app/desktop/rig.h"
#include "tests/app/desktop/test_bus.h"

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// What calls somebody who does not look: with a window, a desktop and a voice that are stood in for.

namespace app::desktop {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

class Beckoning : public testing::Test {
protected:
    Beckoning()
    {
        EXPECT_TRUE(bus.start());
        EXPECT_TRUE(
            bus.connection("desktop").registerService(QStringLiteral("org.freedesktop.Notifications")));
        EXPECT_TRUE(bus.connection("desktop").registerObject(
            QStringLiteral("/org/freedesktop/Notifications"), &notices,
            QDBusConnection::ExportAllSlots | QDBusConnection::ExportAllSignals));
        rig.window->document().replace(rig::Rig::service(), {});
        rig.startLanes();
        beckon = std::make_unique<Beckon>(*rig.window, *rig.session, voice, bus.connection("program"));
    }

    void look(bool away)
    {
        if (!away)
            return rig.activate();
        other.show();
        other.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&other));
    }

    /// The first application is due, and answered so that its end is what comes next.
    void begin()
    {
        QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
        ASSERT_EQ(rig.session->state().prompts.front().asks, core::run::Prompt::Asks::Finish);
    }
    void goOnToDue()
    {
        const auto& prompt = rig.session->state().prompts.front();
        rig.goOn(std::max(rig::Seconds{0}, rig::Seconds{prompt.pressing - rig.clock->now()}));
    }

    rig::Rig rig;
    QWidget other;
    TestBus bus;
    fake::Notices notices;
    FakeVoice voice;
    std::unique_ptr<Beckon> beckon;
};

TEST_F(Beckoning, ShowsANoticeOnlyWhereTheWindowIsNotLookedAt)
{
    begin();
    goOnToDue();
    EXPECT_FALSE(rig::Rig::wait([&] { return !notices.shown.isEmpty(); }, 300));
    rig.settle();
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);

    look(true);
    goOnToDue();
    ASSERT_TRUE(rig::Rig::wait([&] { return !notices.shown.isEmpty(); }));
    EXPECT_THAT(notices.shown.back().toStdString(), HasSubstr("Apply Ends"));
    EXPECT_TRUE(rig::Rig::wait([&] { return beckon->notice().isShown(); }));
}

// The first step of a run is due as it begins, so an alarm brings the lanes before the window shows them.
TEST_F(Beckoning, LanesThatWereAskedForTakeTheFirstAnswer)
{
    rig.session->end();
    rig.session->leave();
    rig.find<QPushButton>("toSetup")->click();
    rig.startLanes();
    ASSERT_TRUE(rig.window->showsLanes());
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
    EXPECT_EQ(rig.session->facts().size(), 1u);
}

TEST_F(Beckoning, ANoticeGoesWithItsAlarmAndBringsTheWindowWhenItIsPressed)
{
    begin();
    look(true);
    goOnToDue();
    ASSERT_TRUE(rig::Rig::wait([&] { return beckon->notice().isShown(); }));
    Q_EMIT notices.ActionInvoked(notices.last, QStringLiteral("default"));
    EXPECT_TRUE(rig::Rig::wait([&] { return rig.window->isActiveWindow(); }));
    EXPECT_TRUE(rig::Rig::wait([&] { return !notices.closed.isEmpty(); })) << "it is seen now";

    look(true);
    rig.goOn(rig::Seconds{20});
    ASSERT_TRUE(rig::Rig::wait([&] { return beckon->notice().isShown(); }));
    core::run::Answer answer;
    answer.kind = core::run::Answer::Kind::Finish;
    answer.task = rig.session->state().prompts.front().task;
    ASSERT_FALSE(rig.session->answer(answer));
    ASSERT_FALSE(rig.session->answer({.kind = core::run::Answer::Kind::End}));
    EXPECT_TRUE(rig::Rig::wait([&] { return notices.closed.size() == 2; }));
}

TEST_F(Beckoning, WhatIsDueBringsTheLanesIntoViewAndWhatIsTypedMeanwhileAnswersNothing)
{
    begin();
    rig.find<QPushButton>("toSetup")->click();
    ASSERT_FALSE(rig.window->showsLanes());
    rig.goOn(rig::Seconds{60});
    EXPECT_FALSE(rig.window->showsLanes());
    goOnToDue();
    EXPECT_TRUE(rig.window->showsLanes());
    const std::size_t facts = rig.session->facts().size();
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
    EXPECT_EQ(rig.session->facts().size(), facts);
    QTest::qWait(1300);
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
    EXPECT_EQ(rig.session->facts().size(), facts + 1);
}

// It comes once: somebody who went back to Set-up on purpose stays there while it sounds again.
TEST_F(Beckoning, IsNotPulledAwayByEachRepeat)
{
    begin();
    goOnToDue();
    rig.find<QPushButton>("toSetup")->click();
    rig.goOn(rig::Seconds{20});
    EXPECT_FALSE(rig.window->showsLanes());
}

TEST_F(Beckoning, ANoticeAheadOfTimeTakesNothing)
{
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
    goOnToDue();
    rig.settle();
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);  // Applied: the next begins.
    goOnToDue();
    rig.settle();
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
    goOnToDue();
    rig.settle();
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);  // Both develop.
    rig.find<QPushButton>("toSetup")->click();
    const auto& look = rig.session->state().prompts.front();
    ASSERT_EQ(look.asks, core::run::Prompt::Asks::Look);
    rig.goOn(std::max(rig::Seconds{0}, rig::Seconds{look.due - rig.clock->now() - rig::Seconds{60}}));
    ASSERT_FALSE(rig.session->alarms().empty());
    EXPECT_EQ(rig.session->alarms().front().kind, core::alarm::Kind::GetReady);
    EXPECT_FALSE(rig.window->showsLanes());
}

TEST_F(Beckoning, ComesBackFromTheTaskBar)
{
    begin();
    rig.window->showMinimized();
    goOnToDue();
    EXPECT_FALSE(rig.window->isMinimized());
    EXPECT_TRUE(rig.window->isVisible());
}

TEST_F(Beckoning, TellsTheMostUrgentLaneInTheTray)
{
    begin();
    rig.goOn(rig::Seconds{60});
    const std::string text = beckon->tray().toolTip().toStdString();
    EXPECT_THAT(text, HasSubstr("Applying Root"));
    EXPECT_THAT(text, HasSubstr("Root: 4:00"));
    look(true);
    Q_EMIT beckon->tray().activated(QSystemTrayIcon::Trigger);
    EXPECT_TRUE(rig::Rig::wait([&] { return rig.window->isActiveWindow(); }));
    rig.session->leave();
    EXPECT_FALSE(beckon->tray().isVisible());
}

TEST_F(Beckoning, SaysWhatItIsAbout)
{
    begin();
    goOnToDue();
    EXPECT_TRUE(rig::Rig::wait([&] { return !voice.said.empty(); }));
    EXPECT_THAT(voice.said, Contains(QStringLiteral("Apply Root: has it ended?")));
    rig.session->mute(rig.session->calls().front());
    const std::size_t said = voice.said.size();
    rig.goOn(rig::Seconds{60});
    QTest::qWait(1600);
    EXPECT_EQ(voice.said.size(), said) << "what is muted is not spoken either";
}

TEST_F(Beckoning, DoesWithoutADesktopThatShowsNotices)
{
    Beckon alone{*rig.window, *rig.session, voice, QDBusConnection{QStringLiteral("no such bus")}};
    begin();
    look(true);
    goOnToDue();
    EXPECT_FALSE(alone.notice().isShown());
}

TEST(CallWords, AreShort)
{
    const auto services = std::vector{rig::Rig::service()};
    const auto about = [](core::alarm::Kind kind, core::alarm::Subject subject, core::stagger::TaskKind task,
                          const std::vector<std::string>& zones) {
        view::AlarmAbout one;
        one.alarm.kind = kind;
        one.alarm.subject = subject;
        one.alarm.task.kind = task;
        if (subject == core::alarm::Subject::Look)
            one.alarm.asks = core::run::Prompt::Asks::Look;
        one.zones = zones;
        return one;
    };
    using core::alarm::Kind;
    using core::alarm::Subject;
    using core::stagger::TaskKind;
    const auto root = about(Kind::Due, Subject::Look, TaskKind::Look, {"Root"});
    const auto ends = about(Kind::Due, Subject::Look, TaskKind::Look, {"Ends"});
    EXPECT_EQ(words::call(services, {ends}), QStringLiteral("Ends: strand test"));
    EXPECT_EQ(words::call(services, {root, ends}), QStringLiteral("Root and Ends: strand test"));
    EXPECT_EQ(
        words::call(services, {about(Kind::Due, Subject::Water, TaskKind::Rinse, {"Root", "Ends"}), ends}),
        QStringLiteral("Rinse now: Root and Ends. Ends: strand test"));
    EXPECT_EQ(words::call(services, {about(Kind::LimitPassed, Subject::Water, TaskKind::Apply, {"Root"})}),
              QStringLiteral("Root is past its limit"));
}

}  // namespace
}  // namespace app::desktop
