#include "tests/app/desktop/rig.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QDialog>
#include <QPushButton>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

using namespace app::desktop;

namespace {

/// What is asked while lanes run.
class AskedWhileLanesRun : public testing::Test {
protected:
    AskedWhileLanesRun()
    {
        rig.window->document().replace(rig::Rig::service(), {});
        rig.startLanes();
    }

    QDialog* dialog(const char* name) const { return rig.window->findChild<QDialog*>(QLatin1String{name}); }

    /// Asks `what`, which waits for its answer, does `meanwhile` once it is there, and turns it down.
    void ask(const char* what, const std::function<void()>& asking, const std::function<void()>& meanwhile)
    {
        rig.activate();
        bool wasThere = false;
        QTimer::singleShot(0, rig.window.get(), [&] {
            ASSERT_TRUE(rig::Rig::wait([&] { return dialog(what) != nullptr && dialog(what)->isVisible(); }));
            wasThere = true;
            meanwhile();
            if (dialog(what) != nullptr)
                dialog(what)->reject();
        });
        asking();
        EXPECT_TRUE(wasThere) << what;
    }
    void askEach(const std::function<void()>& meanwhile)
    {
        ask(
            "endQuestion", [this] { rig.find<QPushButton>("endRun")->click(); }, meanwhile);
        ask(
            "cautionsDialog", [this] { rig.find<QPushButton>("cautions")->click(); }, meanwhile);
        ask(
            "soundCheck", [this] { QTest::keyClick(rig.window.get(), Qt::Key_F3); }, meanwhile);
        ask(
            "closeQuestion", [this] { rig.window->close(); }, meanwhile);
        ask(
            "openDialog", [this] { rig.find<QAction>("fileOpen")->trigger(); }, meanwhile);
    }

    rig::Rig rig;
};

TEST_F(AskedWhileLanesRun, IsInNobodysWay)
{
    askEach([] { EXPECT_EQ(QApplication::activeModalWidget(), nullptr); });
    EXPECT_TRUE(rig.session->current());
}

TEST_F(AskedWhileLanesRun, GivesWayToWhatMustBeSeen)
{
    askEach([this] {
        rig.window->takeWindow();
        for (const QDialog* each : rig.window->findChildren<QDialog*>())
            EXPECT_FALSE(each->isVisible()) << each->objectName().toStdString();
        EXPECT_TRUE(rig.window->showsLanes());
    });
    EXPECT_TRUE(rig.session->current());
}

TEST_F(AskedWhileLanesRun, IsOneThingAtATime)
{
    ask(
        "endQuestion", [this] { rig.find<QPushButton>("endRun")->click(); },
        [this] {
            QCloseEvent close;
            QApplication::sendEvent(rig.window.get(), &close);
            EXPECT_FALSE(close.isAccepted());
            EXPECT_TRUE(dialog("endQuestion")->isVisible());
        });
}

// The check ends as an alarm begins; what sounds then is no check.
TEST_F(AskedWhileLanesRun, SilencesNoAlarm)
{
    EXPECT_EQ(rig.sound.silenced, 1) << "after the check before the start";
    rig.goOn(std::chrono::minutes{2});  // The first application has been due for a while.
    ASSERT_FALSE(rig.session->audible().empty());
    ask(
        "soundCheck", [this] { QTest::keyClick(rig.window.get(), Qt::Key_F3); },
        [this] { rig.window->takeWindow(); });
    EXPECT_EQ(rig.sound.silenced, 1);
}

TEST_F(AskedWhileLanesRun, RecordCardsComeBackAsTheyWere)
{
    rig.find<QAction>("fileRecords")->trigger();
    ASSERT_TRUE(dialog("records")->isVisible());
    rig.window->takeWindow();
    ASSERT_FALSE(dialog("records")->isVisible());
    QDialog* const before = dialog("records");
    rig.find<QAction>("fileRecords")->trigger();
    EXPECT_EQ(dialog("records"), before);
    EXPECT_TRUE(before->isVisible());
}

}  // namespace
