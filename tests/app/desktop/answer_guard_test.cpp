#include "app/desktop/lanes/answer_guard.h"

#include "app/desktop/lanes/live_button.h"
#include "tests/app/desktop/rig.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QTest>

#include <gtest/gtest.h>

// What was pressed twice answers once; what was done twice is answered twice.

using namespace app::desktop;

namespace {

constexpr int anHonestMoment = AnswerGuard::moment + 100;

/// Two buttons of a panel, and how often each was pressed.
class Guarded : public testing::Test {
protected:
    Guarded()
    {
        auto* row = new QHBoxLayout{&panel};
        int* counts[] = {&pressed, &otherPressed};
        for (LiveButton* each : {button, other}) {
            row->addWidget(each);
            AnswerGuard::setStep(*each, QStringLiteral("mix"));
            QObject::connect(each, &QPushButton::clicked, &panel,
                             [count = counts[each == other ? 1 : 0]] { ++*count; });
        }
        other->setShortcut(Qt::Key_Delete);
        panel.show();
        panel.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&panel));
        guard.watch(panel);
    }
    /// An answer after which the button asks for something else, and the other for what it asked for before.
    void answer()
    {
        AnswerGuard::Steps before = guard.steps();
        AnswerGuard::setStep(*button, QStringLiteral("apply"));
        guard.answered(std::move(before));
    }

    QWidget panel;
    LiveButton* button = new LiveButton;
    LiveButton* other = new LiveButton;
    AnswerGuard guard{&panel};
    int pressed = 0;
    int otherPressed = 0;
};

TEST_F(Guarded, KeysAndClicksReachNoOtherStepInTheMomentAfterAnAnswer)
{
    answer();
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Enter, Qt::Key_Space})
        QTest::keyClick(button, key);
    QTest::mouseClick(button, Qt::LeftButton);
    QTest::mouseDClick(button, Qt::LeftButton);
    EXPECT_EQ(pressed, 0);
    QTest::qWait(anHonestMoment);
    QTest::keyClick(button, Qt::Key_Return);
    EXPECT_EQ(pressed, 1);
    QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_EQ(pressed, 2);
}

TEST_F(Guarded, WhatWasAskedForBeforeIsNeverSwallowed)
{
    answer();
    QTest::keyClick(other, Qt::Key_Return);
    EXPECT_EQ(otherPressed, 1);
    QTest::mouseClick(other, Qt::LeftButton);
    EXPECT_EQ(otherPressed, 2);
    QTest::keyClick(&panel, Qt::Key_Delete);
    EXPECT_TRUE(rig::Rig::wait([this] { return otherPressed == 3; }));
}

TEST_F(Guarded, AShortcutIsAKeyToo)
{
    AnswerGuard::Steps before = guard.steps();
    AnswerGuard::setStep(*other, QStringLiteral("look"));
    guard.answered(std::move(before));
    QTest::keyClick(&panel, Qt::Key_Delete);
    QTest::qWait(anHonestMoment);
    EXPECT_EQ(otherPressed, 0);
    QTest::keyClick(&panel, Qt::Key_Delete);
    EXPECT_TRUE(rig::Rig::wait([this] { return otherPressed == 1; }));
}

TEST_F(Guarded, WhatCameIntoViewWithTheAnswerIsAnotherStep)
{
    other->hide();
    answer();
    other->show();
    QTest::mouseClick(other, Qt::LeftButton);
    EXPECT_EQ(otherPressed, 0);
    guard.settled();
    QTest::mouseClick(other, Qt::LeftButton);
    EXPECT_EQ(otherPressed, 1);
}

class AnsweredTwice : public testing::Test {
protected:
    AnsweredTwice()
    {
        rig.window->document().replace(rig::Rig::service(), {});
        rig.startLanes();
    }
    LiveButton* button() const { return rig.find<LiveButton>("nowButton"); }
    std::size_t answers() const { return rig.session->facts().size(); }

    rig::Rig rig;
};

TEST_F(AnsweredTwice, ASecondEnterIsNoAnswerToTheNextStep)
{
    for (int times = 0; times < 3; ++times)
        QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
    EXPECT_EQ(answers(), 1U);
    EXPECT_FALSE(rig.find<QWidget>("warning")->isVisible()) << "it is said nowhere";
    QTest::qWait(anHonestMoment);
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
    EXPECT_EQ(answers(), 2U);
    EXPECT_EQ(rig.session->facts().back().kind, core::run::FactKind::Finished);
}

TEST_F(AnsweredTwice, ADoubleClickIsOneAnswer)
{
    QTest::mouseClick(button(), Qt::LeftButton);
    QTest::mouseDClick(button(), Qt::LeftButton);
    EXPECT_EQ(answers(), 1U);
    QTest::qWait(anHonestMoment);
    QTest::mouseClick(button(), Qt::LeftButton);
    EXPECT_EQ(answers(), 2U);
}

// It has asked for the button by what it says before it presses.
TEST_F(AnsweredTwice, AScreenReaderIsNotSlowed)
{
    const auto press = [this] {
        QAccessible::queryAccessibleInterface(button())->actionInterface()->doAction(
            QAccessibleActionInterface::pressAction());
    };
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
    ASSERT_EQ(answers(), 1U);
    press();
    EXPECT_TRUE(rig::Rig::wait([this] { return answers() == 2; }, AnswerGuard::moment - 100));
}

TEST_F(AnsweredTwice, AnAlarmThatCameWithTheAnswerWaitsAMomentForItsOwn)
{
    rig.sound.works = false;  // Every due step takes the window then.
    Q_EMIT rig.sound.healthChanged();
    rig.goOn(std::chrono::seconds{10});
    auto* alert = rig.find<LiveButton>("alertButton");
    ASSERT_TRUE(alert->isVisible());
    QTest::keyClick(alert, Qt::Key_Return);
    EXPECT_EQ(answers(), 1U) << "it stood there before, and is answered at once";
    rig.goOn(std::chrono::minutes{5} + std::chrono::seconds{5});
    ASSERT_TRUE(alert->isVisible());
    QTest::qWait(anHonestMoment);
    QTest::keyClick(alert, Qt::Key_Return);
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
    EXPECT_EQ(answers(), 2U);
}

}  // namespace
