#include "app/desktop/lanes/lane_card.h"
#include "app/desktop/lanes/live_button.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/sound_check.h"
#include "app/desktop/startup.h"
#include "app/desktop/words.h"
#include "app/session/cautions.h"
#include "app/session/time_zones.h"
#include "tests/app/desktop/rig.h"

#include <QAction>
#include <QCloseEvent>
#include <QComboBox>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

using namespace app::desktop;
using core::run::Stage;

namespace {

class Window : public testing::Test {
protected:
    Window() { rig.window->document().replace(rig::Rig::service(), {}); }

    void start()
    {
        rig.startLanes();
        ASSERT_TRUE(rig.session->current());
    }

    Stage stage(const char* lane) const { return rig.find<LaneCard>(lane)->lane().stage; }
    QString sentence() const { return rig.find<QLabel>("nowSentence")->text(); }

    /// As a person does: the key goes to whatever has the keyboard.
    void press(Qt::Key key)
    {
        ASSERT_NE(rig.window->focusWidget(), nullptr);
        rig.settle();
        QTest::keyClick(rig.window->focusWidget(), key);
    }

    /// Answers the main step with Enter until the lane is at `goal`, going on to each step's time.
    void answerUntil(const char* lane, Stage goal)
    {
        for (int step = 0; step < 20 && stage(lane) != goal; ++step) {
            const auto& prompts = rig.session->state().prompts;
            ASSERT_FALSE(prompts.empty());
            rig.goOn(std::max(rig::Seconds{0}, rig::Seconds{prompts.front().due - rig.clock->now()}));
            press(Qt::Key_Return);
        }
        EXPECT_EQ(stage(lane), goal);
    }

    rig::Rig rig;
};

TEST_F(Window, StartsTheLanesOfWhatIsInSetUp)
{
    start();

    EXPECT_TRUE(rig.find<QWidget>("lanesPage")->isVisible());
    EXPECT_TRUE(sentence().contains(QStringLiteral("Apply Root"))) << sentence().toStdString();
    EXPECT_EQ(stage("lane1"), Stage::Waiting);
    EXPECT_TRUE(rig.sound.isReady);
}

TEST_F(Window, TakesEnterForTheOneThingToDo)
{
    start();
    press(Qt::Key_Return);

    EXPECT_EQ(stage("lane1"), Stage::Applying);
    EXPECT_EQ(sentence(), QStringLiteral("Applying Root"));
    rig.goOn(std::chrono::minutes{5});
    press(Qt::Key_Space);
    EXPECT_EQ(stage("lane1"), Stage::Developing);
}

TEST_F(Window, CountsDownWhileTimeGoesOn)
{
    start();
    answerUntil("lane1", Stage::Developing);
    const auto before = rig.find<LaneCard>("lane1")->lane().left;
    rig.goOn(std::chrono::minutes{2});

    EXPECT_EQ(before - rig.find<LaneCard>("lane1")->lane().left, std::chrono::minutes{2});
}

TEST_F(Window, CountsDownToTheLatestSafeStartOfEachStep)
{
    start();
    const auto* main = rig.find<QLabel>("nowLatest");
    EXPECT_FALSE(main->isVisible());  // Nothing is on the hair yet, so nothing sets a limit.
    answerUntil("lane1", Stage::Developing);
    const auto safeOf = [this](std::size_t place) { return rig.session->state().prompts[place].safe; };
    ASSERT_TRUE(safeOf(0) && safeOf(0)->latest && safeOf(1) && safeOf(1)->latest);
    ASSERT_TRUE(main->isVisible());
    const auto left = [this, safeOf](std::size_t place) { return *safeOf(place)->latest - rig.clock->now(); };
    EXPECT_TRUE(main->text().contains(words::when(left(0)))) << main->text().toStdString();
    const auto* next = rig.find<QPushButton>("next1");
    EXPECT_TRUE(next->accessibleDescription().contains(words::when(left(1))));
    EXPECT_GE(next->height(), metrics::target);

    rig.goOn(std::chrono::seconds{7});
    EXPECT_TRUE(main->text().contains(words::when(left(0)))) << main->text().toStdString();

    press(Qt::Key_Return);  // What runs cannot be put off.
    EXPECT_FALSE(main->isVisible());
}

TEST_F(Window, AsksWhatCameOfALookAndTakesAKeyForIt)
{
    start();
    answerUntil("lane2", Stage::Developing);
    const auto due = rig.find<LaneCard>("lane2")->lane().untilLook;
    ASSERT_TRUE(due);
    rig.goOn(*due);

    ASSERT_TRUE(rig.find<LiveButton>("leave")->isVisible());
    EXPECT_FALSE(rig.find<LiveButton>("nowButton")->isVisible());
    const std::size_t facts = rig.session->facts().size();
    rig.settle();
    QTest::keyClick(rig.window.get(), Qt::Key_1);
    EXPECT_TRUE(rig::Rig::wait([&] { return rig.session->facts().size() == facts + 1; }));
    EXPECT_EQ(rig.session->facts().back().kind, core::run::FactKind::Looked);
    EXPECT_FALSE(rig.find<LiveButton>("leave")->isVisible());
}

TEST_F(Window, LooksAgainAfterTheMinutesThatAreAskedFor)
{
    start();
    answerUntil("lane2", Stage::Developing);
    rig.goOn(*rig.find<LaneCard>("lane2")->lane().untilLook);
    rig.find<LiveButton>("sooner")->click();
    auto* tone = rig.find<QComboBox>("tone");
    ASSERT_NE(tone, nullptr);
    tone->setEditText(QStringLiteral(" still  yellow "));
    rig.find<LiveButton>("lookAgain")->click();
    EXPECT_EQ(rig.session->facts().back().tone, "still yellow");
    EXPECT_TRUE(tone->currentText().isEmpty()) << "what was seen goes with one answer";

    EXPECT_EQ(rig.find<LaneCard>("lane2")->lane().untilLook, std::chrono::minutes{2});
}

TEST_F(Window, LetsWaterTakeTheWindowAndKeepsTheLanesInView)
{
    start();
    answerUntil("lane2", Stage::Developing);
    rig.goOn(*rig.find<LaneCard>("lane2")->lane().untilLook);
    rig.find<LiveButton>("leave")->click();
    rig.goOn(rig.find<LaneCard>("lane1")->lane().left);

    ASSERT_TRUE(rig.find<QWidget>("alert")->isVisible());
    EXPECT_TRUE(rig.find<QLabel>("alertHeadline")->text().contains(QStringLiteral("Root and Ends")));
    EXPECT_TRUE(rig.find<LaneCard>("strip1")->isVisible());
    EXPECT_GE(rig.find<LiveButton>("alertButton")->height(), 76);
    press(Qt::Key_Return);
    EXPECT_FALSE(rig.find<QWidget>("alert")->isVisible());
    EXPECT_EQ(stage("lane1"), Stage::Rinsing);
}

TEST_F(Window, LetsAStepThatNobodyBeginsTakeTheWindowAfterAMoment)
{
    start();
    const auto* alert = rig.find<QWidget>("alert");
    rig.goOn(std::chrono::seconds{4});
    EXPECT_FALSE(alert->isVisible()) << "whoever stands before the screen is not startled";
    rig.goOn(std::chrono::seconds{1});

    ASSERT_TRUE(alert->isVisible());
    EXPECT_FALSE(rig.find<QWidget>("now")->isVisible()) << "asked for once";
    EXPECT_TRUE(rig.find<LaneCard>("strip1")->isVisible());
    const QString asked = rig.find<QLabel>("alertHeadline")->text();
    EXPECT_TRUE(asked.contains(QStringLiteral("Root"))) << asked.toStdString();
    const auto begun = rig.session->state().prompts.front().task;
    rig.find<LiveButton>("alertButton")->click();
    ASSERT_EQ(rig.session->facts().size(), 1u);
    EXPECT_EQ(rig.session->facts().back().task, begun);
    EXPECT_FALSE(alert->isVisible());

    // What is in hand is not hidden by what should have been begun meanwhile.
    rig.goOn(std::chrono::minutes{40});
    EXPECT_TRUE(rig.find<QWidget>("now")->isVisible() || alert->isVisible());
    EXPECT_EQ(rig.session->state().prompts.front().asks, core::run::Prompt::Asks::Finish);
    EXPECT_TRUE(rig.find<LiveButton>("nowButton")->isVisible());
}

// WCAG 2.2, success criterion 2.3.1, allows three flashes a second; we allow one.
TEST_F(Window, FlashesAtMostOnceASecond)
{
    start();
    rig.goOn(std::chrono::seconds{5});
    auto* alert = rig.find<QWidget>("alert");
    ASSERT_TRUE(alert->isVisible());
    constexpr QPoint onTheFrame{12, 60};
    std::vector<std::chrono::milliseconds> changes;
    QRgb before = alert->grab().toImage().pixel(onTheFrame);
    QElapsedTimer since;
    since.start();
    while (since.elapsed() < 4500) {
        QTest::qWait(20);
        const QRgb now = alert->grab().toImage().pixel(onTheFrame);
        if (now != before)
            changes.emplace_back(since.elapsed());
        before = now;
    }
    ASSERT_GE(changes.size(), 2u) << "it does flash";
    for (std::size_t change = 2; change < changes.size(); ++change)
        EXPECT_GE(changes[change] - changes[change - 2], std::chrono::milliseconds{1000});
}

TEST_F(Window, PutsTheRunAwayWhenAllIsDone)
{
    start();
    for (int step = 0; step < 30 && !rig.session->state().finished; ++step) {
        const core::run::Prompt prompt = rig.session->state().prompts.front();
        rig.goOn(std::max(rig::Seconds{0}, rig::Seconds{prompt.due - rig.clock->now()}));
        if (prompt.asks == core::run::Prompt::Asks::Look)
            rig.find<LiveButton>("leave")->click();
        else
            press(Qt::Key_Return);
    }
    EXPECT_EQ(sentence(), QStringLiteral("All done"));
    EXPECT_FALSE(rig.sound.isReady);
    EXPECT_EQ(rig.window->focusWidget()->objectName(), QStringLiteral("nowButton"));
    press(Qt::Key_Return);
    EXPECT_FALSE(rig.session->current());
    EXPECT_TRUE(rig.find<QWidget>("setupPage")->isVisible());
}

TEST_F(Window, UndoesTheLastAnswer)
{
    start();
    press(Qt::Key_Return);
    ASSERT_EQ(stage("lane1"), Stage::Applying);
    rig.find<QPushButton>("undoLast")->click();

    EXPECT_EQ(stage("lane1"), Stage::Waiting);
}

TEST_F(Window, TakesThatItWasEarlier)
{
    start();
    rig.goOn(std::chrono::minutes{3});
    press(Qt::Key_Return);
    rig.find<QPushButton>("earlier")->click();
    rig.find<QPushButton>("ago2")->click();

    EXPECT_EQ(rig.session->state().lanes[0].firstContact, rig.clock->now() - std::chrono::minutes{2});
}

TEST_F(Window, SaysWhyAnAnswerIsNotTaken)
{
    start();
    rig.find<QPushButton>("ago10");
    press(Qt::Key_Return);
    rig.find<QPushButton>("undoLast")->click();
    rig.window->findChild<QPushButton*>(QStringLiteral("undoLast"))->setEnabled(true);
    rig.find<QPushButton>("undoLast")->click();  // There is nothing left to undo.

    EXPECT_TRUE(rig.find<QWidget>("warning")->isVisible());
}

TEST_F(Window, WarnsWhenNoAlarmCanBeHeard)
{
    start();
    EXPECT_FALSE(rig.find<QWidget>("soundWarning")->isVisible());
    rig.sound.works = false;
    Q_EMIT rig.sound.healthChanged();

    EXPECT_TRUE(rig.find<QWidget>("soundWarning")->isVisible());
}

TEST_F(Window, ShowsEveryDueAlarmLargeWhenNoneCanBeHeard)
{
    rig.sound.works = false;
    start();
    rig.goOn(std::chrono::minutes{2});  // The first application has been due for a while.

    EXPECT_TRUE(rig.find<QWidget>("alert")->isVisible());
}

TEST_F(Window, LetsNobodySayTheyHeardWhatCannotBeSounded)
{
    rig.sound.works = false;
    SoundCheck check{*rig.theme, rig.sound, rig.window.get()};
    const auto* heard = check.findChild<QPushButton*>(QStringLiteral("heard"));
    const auto* passOver = check.findChild<QPushButton*>(QStringLiteral("passOver"));
    EXPECT_FALSE(heard->isEnabled());
    EXPECT_TRUE(passOver->isDefault());

    rig.sound.works = true;  // A loudspeaker is plugged in.
    Q_EMIT rig.sound.healthChanged();
    EXPECT_TRUE(heard->isEnabled());
    EXPECT_TRUE(heard->isDefault());
}

TEST_F(Window, ShowsTheCautionsBeforeTheFirstRunOnAPersonOnly)
{
    rig.window->document().edit(QStringLiteral("head"),
                                [](auto& service) { service.head.kind = core::service::HeadKind::Person; });
    ASSERT_TRUE(rig::Rig::wait([this] { return rig.find<QPushButton>("start")->isEnabled(); }));
    rig.pressInDialog("cautionsDialog", "cautionsNotYet");
    rig.window->start();
    EXPECT_FALSE(rig.session->current());

    rig.pressInDialog("cautionsDialog", "cautionsRead");
    start();
    EXPECT_TRUE(app::session::cautionsWereShown(rig.folder.path().toStdString()));
}

// A screen reader triggers what is in a menu, which is no click.
TEST_F(Window, ClosesAMenuOnceSomethingInItIsTriggered)
{
    auto* const menu = rig.window->files().menu();
    menu->popup(rig.window->mapToGlobal(QPoint{}));
    ASSERT_TRUE(rig::Rig::wait([&] { return menu->isVisible(); }));
    rig.find<QAction>("fileNew")->trigger();
    EXPECT_FALSE(menu->isVisible());
}

TEST_F(Window, TakesUpAnUnfinishedRunAtOnce)
{
    start();
    press(Qt::Key_Return);
    rig.window.reset();
    rig.session->leave();
    rig.clock->goOn(std::chrono::minutes{1});
    rig.openWindow();
    openFirst(*rig.window, *rig.session, Options{}, *rig.settings);

    EXPECT_TRUE(rig.find<QWidget>("lanesPage")->isVisible());
    EXPECT_EQ(stage("lane1"), Stage::Applying);
    EXPECT_TRUE(rig.find<QWidget>("resumed")->isVisible());
}

TEST_F(Window, AsksBeforeItClosesWhileLanesRun)
{
    start();
    rig.pressInDialog("closeQuestion", "Keep it open");
    QCloseEvent event;
    QApplication::sendEvent(rig.window.get(), &event);

    EXPECT_FALSE(event.isAccepted());
}

TEST_F(Window, SavesAndOpensWhatWasSaved)
{
    const QString path = rig.folder.filePath(QStringLiteral("saved.json"));
    ServiceFiles files{std::make_shared<app::session::QtTimeZones>(), "UTC"};
    ASSERT_FALSE(files.write(path, rig.window->document().service()));
    rig.window->document().replace(core::service::Service{}, {});

    ASSERT_TRUE(rig.window->files().open(path));
    EXPECT_EQ(rig.window->document().service(), rig::Rig::service());
    EXPECT_FALSE(rig.window->document().isChanged());
}

TEST_F(Window, SaysWhatIsWrongWithAFileAndKeepsWhatItHad)
{
    const QString path = rig.folder.filePath(QStringLiteral("broken.json"));
    QFile file{path};
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("{ \"basinbell\": 1 }");
    file.close();
    rig.pressInDialog("notOpened", "OK");

    EXPECT_FALSE(rig.window->files().open(path));
    EXPECT_EQ(rig.window->document().service().name, "Rig");
}

TEST_F(Window, OpensEveryDemo)
{
    ASSERT_GE(FileMenu::demoNames().size(), 4);
    for (const QString& demo : FileMenu::demoNames())
        EXPECT_TRUE(rig.window->files().openDemo(demo)) << demo.toStdString();
}

}  // namespace
