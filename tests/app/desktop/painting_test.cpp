#include "tests/app/desktop/rig.h"

#include <QApplication>
#include <QTest>

#include <gtest/gtest.h>

namespace {

/// Counts what is painted in any window.
class PaintCount final : public QObject {
public:
    PaintCount() { qApp->installEventFilter(this); }

    bool eventFilter(QObject*, QEvent* event) override
    {
        if (event->type() == QEvent::Paint)
            ++paints;
        return false;
    }

    int paints = 0;
};

// A computer in a wig room is often an old one, and its fan is heard.
TEST(Painting, IsDoneWhenSomethingChangesAndNotElse)
{
    rig::Rig rig;
    rig.window->document().replace(rig::Rig::service(), {});
    rig.startLanes();
    QTest::keyClick(rig.window->focusWidget(),
                    Qt::Key_Return);  // The first application is begun: nothing insists.
    rig.goOn(std::chrono::seconds{1});
    ASSERT_TRUE(rig.session->alarms().empty());
    QTest::qWait(1500);  // Until buttons have let go and everything is laid out.

    PaintCount count;
    QTest::qWait(500);
    EXPECT_EQ(count.paints, 0) << "the clock stands, nobody answers";
    rig.goOn(std::chrono::seconds{1});
    QTest::qWait(50);
    EXPECT_GT(count.paints, 0) << "digits went on";
}

TEST(Painting, IsNotDoneWhileNobodyAsksForAnotherPlan)
{
    rig::Rig rig;
    rig.window->document().replace(rig::Rig::service(), {});
    QTest::qWait(1500);
    PaintCount count;
    QTest::qWait(500);
    EXPECT_EQ(count.paints, 0);
}

}  // namespace
