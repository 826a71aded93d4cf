#include "tests/app/desktop/rig.h"

#include <QPushButton>
#include <QTest>

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

}  // namespace
