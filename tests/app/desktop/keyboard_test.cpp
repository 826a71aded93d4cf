#include "tests/app/desktop/rig.h"

#include <QKeyEvent>
#include <QPushButton>
#include <QTest>
#include <QWindow>

#include <gtest/gtest.h>

// Whatever was opened and closed, Enter answers the one thing to do.

using namespace app::desktop;

namespace {

class Keyboard : public testing::Test {
protected:
    Keyboard()
    {
        rig.window->document().replace(rig::Rig::service(), {});
        rig.startLanes();
    }

    void press(Qt::Key key)
    {
        rig.settle();
        QTest::keyClick(rig.window->focusWidget(), key);
        QTest::qWait(200);  // A button that was clicked by its key lets go.
    }
    std::size_t answers() const { return rig.session->facts().size(); }
    bool shows(const char* name) const { return rig.find<QWidget>(name)->isVisible(); }

    rig::Rig rig;
};

TEST_F(Keyboard, ComesBackFromWhatWasEarlier)
{
    press(Qt::Key_Return);
    ASSERT_EQ(answers(), 1U);
    press(Qt::Key_E);
    ASSERT_TRUE(shows("ago1"));
    press(Qt::Key_E);
    EXPECT_FALSE(shows("ago1"));
    press(Qt::Key_Return);
    EXPECT_EQ(answers(), 2U);
    EXPECT_EQ(rig.session->facts().back().kind, core::run::FactKind::Finished);
}

TEST_F(Keyboard, ComesBackFromMoreAlsoWhereAnAlarmLeavesNoRoomForIt)
{
    rig.sound.works = false;
    Q_EMIT rig.sound.healthChanged();
    rig.window->resize(1000, 640);
    rig.goOn(std::chrono::seconds{10});
    ASSERT_TRUE(shows("alert"));
    press(Qt::Key_M);
    ASSERT_FALSE(shows("more"));
    press(Qt::Key_Return);
    EXPECT_EQ(answers(), 1U);
}

/// Somebody who presses twice what was to be pressed once.
class PressedTwice : public testing::Test {
protected:
    PressedTwice()
    {
        rig.window->document().replace(rig::Rig::service(), {});
        EXPECT_TRUE(rig::Rig::wait([this] { return start()->isEnabled(); }));
        rig.pressInDialog("soundCheck", "heard");
        QTest::keyClick(rig.window.get(), Qt::Key_F3);
        rig.activate();
    }

    QPushButton* start() const { return rig.find<QPushButton>("start"); }
    bool runs() const { return rig.session->current() && rig.window->showsLanes(); }
    std::size_t answers() const { return rig.session->facts().size(); }
    bool shows(const char* name) const { return rig.find<QWidget>(name)->isVisible(); }
    void press(Qt::Key key, Qt::KeyboardModifiers with = {})
    {
        QTest::keyClick(rig.window->focusWidget(), key, with);
    }
    /// Through the screen, as a mouse and a finger do.
    void click(QPoint where) { QTest::mouseClick(rig.window->windowHandle(), Qt::LeftButton, {}, where); }
    QPoint placeOf(const char* name) const
    {
        const auto* part = rig.find<QWidget>(name);
        return part->mapTo(rig.window.get(), part->rect().center());
    }
    /// Nothing was answered; a moment later the same press counts.
    void expectGuarded(Qt::Key key)
    {
        ASSERT_TRUE(runs());
        EXPECT_EQ(answers(), 0U);
        QTest::qWait(settled);
        press(key);
        EXPECT_TRUE(rig::Rig::wait([this] { return answers() == 1; }));
    }

    static constexpr int settled = 1500;
    rig::Rig rig;
};

TEST_F(PressedTwice, TheKeyThatStartsTheLanesAnswersNothing)
{
    start()->setFocus();
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(runs());
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_Return);  // A finger that left Ctrl too early.
    press(Qt::Key_Enter);
    expectGuarded(Qt::Key_Return);
}

TEST_F(PressedTwice, TheSpaceBarOnTheButtonAnswersNothing)
{
    start()->setFocus();
    press(Qt::Key_Space);
    ASSERT_TRUE(runs());
    press(Qt::Key_Space);
    QTest::qWait(200);  // A button that was pressed by its key lets go.
    expectGuarded(Qt::Key_Space);
}

TEST_F(PressedTwice, AKeyThatIsHeldAnswersNothingHoweverLong)
{
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(runs());
    QTest::qWait(settled);
    for (int times = 0; times < 3; ++times) {
        QKeyEvent repeated{QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, QStringLiteral("\r"), true};
        QCoreApplication::sendEvent(rig.window->focusWidget(), &repeated);
    }
    EXPECT_EQ(answers(), 0U);
    press(Qt::Key_Return);
    EXPECT_EQ(answers(), 1U);
}

// What skips a step, or leaves it, may be the key of a foot switch.
TEST_F(PressedTwice, KeysOfAFootSwitchAnswerNothing)
{
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(runs());
    for (const Qt::Key key : {Qt::Key_Delete, Qt::Key_1, Qt::Key_Space, Qt::Key_Return})
        press(key);
    QTest::qWait(200);
    expectGuarded(Qt::Key_Return);
}

TEST_F(PressedTwice, TheMouseReachesNothingThatCameUnderIt)
{
    click(placeOf("start"));
    ASSERT_TRUE(runs());
    rig.activate();
    for (const char* part : {"nowButton", "moreButton", "endRun"})
        click(placeOf(part));
    EXPECT_EQ(answers(), 0U);
    EXPECT_FALSE(shows("more"));
    QTest::qWait(settled);
    click(placeOf("nowButton"));
    EXPECT_EQ(answers(), 1U);
    click(placeOf("moreButton"));
    EXPECT_TRUE(shows("more"));
}

}  // namespace
