#include "app/desktop/lanes/notice.h"
#include "app/desktop/startup.h"
#include "app/desktop/tour/tour_window.h"
#include "tests/app/desktop/rig.h"

#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

// The tour shows the real pages, and leaves everything as it was.

using namespace app::desktop;

namespace {

using Stop = TourGuide::Stop;

class Tour : public testing::Test {
protected:
    Tour() { rig.window->document().replace(rig::Rig::service(), {}); }

    TourWindow* begin()
    {
        rig.find<QAction>("tourMenu")->trigger();
        auto* tour = rig.find<TourWindow>("tour");
        if (tour != nullptr) {
            tour->activateWindow();
            EXPECT_TRUE(QTest::qWaitForWindowActive(tour));
        }
        return tour;
    }
    static void press(TourWindow* tour, Qt::Key key)
    {
        QWidget* const keyboard = tour->focusWidget();
        QTest::keyClick(keyboard != nullptr ? keyboard : tour, key);
    }
    template <typename Part>
    static Part* find(const TourWindow* tour, const char* name)
    {
        return tour->findChild<Part*>(QLatin1String{name});
    }
    /// Enter, and again to be at the next stop at once.
    static void goOn(TourWindow* tour)
    {
        press(tour, Qt::Key_Return);
        if (tour->guide().isGoing())
            press(tour, Qt::Key_Return);
        ASSERT_FALSE(tour->guide().isGoing());
    }
    void expectAsBefore(const std::vector<core::service::Service>& services, const QStringList& keys) const
    {
        EXPECT_EQ(rig.window->document().services(), services);
        EXPECT_FALSE(rig.window->document().undoStack().canUndo());
        EXPECT_EQ(rig.settings->allKeys(), keys);
        EXPECT_FALSE(rig.session->current());
        EXPECT_TRUE(rig.session->past().empty());
        EXPECT_TRUE(rig.session->resumable().empty());
        EXPECT_TRUE(rig.sound.sounded.empty());
        EXPECT_FALSE(rig.sound.isReady);
        EXPECT_FALSE(rig.window->showsLanes());
    }

    rig::Rig rig;
};

TEST_F(Tour, WalksAllItsStopsByOneKeyAndLeavesNothingBehind)
{
    const auto services = rig.window->document().services();
    const QStringList keys = rig.settings->allKeys();
    QPointer<TourWindow> tour = begin();
    ASSERT_TRUE(tour);
    QStringList said;
    for (const Stop stop : {Stop::Plan, Stop::OneThing, Stop::Change, Stop::Look, Stop::Alarm, Stop::End}) {
        ASSERT_EQ(tour->guide().stop(), stop);
        ASSERT_FALSE(tour->guide().isGoing());
        EXPECT_TRUE(find<QWidget>(tour, "tourBand")->isVisible());
        EXPECT_TRUE(
            find<QLabel>(tour, "tourNotReal")->text().contains(QStringLiteral("nothing of this is real")));
        EXPECT_EQ(find<QLabel>(tour, "tourPlace")->text(),
                  QStringLiteral("%1 of 6").arg(static_cast<int>(stop) + 1));
        said << find<QLabel>(tour, "tourWords")->text();
        if (stop != Stop::End)
            goOn(tour);
    }
    EXPECT_EQ(said.removeDuplicates(), 0);
    press(tour, Qt::Key_Return);
    EXPECT_TRUE(rig::Rig::wait([&] { return !tour; }));
    expectAsBefore(services, keys);
}

TEST_F(Tour, StandsStillAtWhatItTellsOf)
{
    TourWindow* const tour = begin();
    const auto shows = [&](const char* name) { return find<QWidget>(tour, name)->isVisible(); };
    ASSERT_TRUE(shows("setupPage"));
    EXPECT_FALSE(shows("lanesPage"));

    goOn(tour);
    ASSERT_TRUE(shows("lanesPage"));
    EXPECT_TRUE(shows("nowButton"));
    EXPECT_TRUE(tour->guide().session().facts().empty());

    press(tour, Qt::Key_Return);  // Nobody skips ahead: time goes by by itself.
    ASSERT_TRUE(rig::Rig::wait([&] { return !tour->guide().isGoing(); }, 60'000));
    EXPECT_TRUE(shows("changes"));
    EXPECT_FALSE(tour->guide().session().state().changes.empty());

    goOn(tour);
    EXPECT_TRUE(shows("leave"));
    const auto& look = tour->guide().session().state().prompts.front();
    EXPECT_EQ(look.asks, core::run::Prompt::Asks::Look);
    EXPECT_EQ(look.due, tour->guide().session().state().now) << "to the second";

    goOn(tour);
    EXPECT_TRUE(shows("alert"));
    EXPECT_EQ(tour->guide().session().state().prompts.front().task.kind, core::stagger::TaskKind::Rinse);

    goOn(tour);
    EXPECT_TRUE(tour->guide().session().state().finished);
    tour->close();
}

TEST_F(Tour, CanBeLeftAtAnyTime)
{
    const auto services = rig.window->document().services();
    const QStringList keys = rig.settings->allKeys();
    for (int presses = 0; presses < 5; ++presses) {
        QPointer<TourWindow> tour = begin();
        for (int stop = 0; stop < presses; ++stop)
            goOn(tour);
        press(tour, Qt::Key_Return);  // Under way to the next.
        press(tour, Qt::Key_Escape);
        EXPECT_TRUE(rig::Rig::wait([&] { return !tour; })) << presses;
        expectAsBefore(services, keys);
    }
}

TEST_F(Tour, TakesNoKeyAndNoPressForItsPages)
{
    TourWindow* const tour = begin();
    goOn(tour);
    for (const Qt::Key key :
         {Qt::Key_F, Qt::Key_M, Qt::Key_E, Qt::Key_Q, Qt::Key_1, Qt::Key_Delete, Qt::Key_F1})
        press(tour, key);
    QTest::keyClick(tour->focusWidget(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(find<QWidget>(tour, "more")->isVisible());
    EXPECT_FALSE(find<QWidget>(tour, "lanesHelp")->isVisible());
    EXPECT_TRUE(tour->guide().session().facts().empty());
    EXPECT_EQ(tour->guide().stop(), Stop::OneThing);

    // As a pointer does: whatever lies there gets it.
    const QWidget* const button = find<QPushButton>(tour, "nowButton");
    const QPoint middle = button->mapTo(tour, button->rect().center());
    QWidget* const hit = tour->childAt(middle);
    EXPECT_FALSE(hit == button || button->isAncestorOf(hit));
    tour->close();
}

TEST_F(Tour, LeavesWhatIsNotSavedAlone)
{
    rig.window->document().edit(QStringLiteral("its name"), [](auto& service) { service.name = "Mine"; });
    ASSERT_TRUE(rig.window->document().isChanged());
    TourWindow* const tour = begin();
    goOn(tour);
    EXPECT_NE(tour->guide().session().services().front().name, "Mine");
    tour->close();
    EXPECT_EQ(rig.window->document().service().name, "Mine");
    EXPECT_TRUE(rig.window->document().isChanged());
    EXPECT_TRUE(rig.window->document().undoStack().canUndo());
}

TEST_F(Tour, IsRefusedWhileLanesRun)
{
    rig.startLanes();
    auto* const action = rig.find<QAction>("tourMenu");
    EXPECT_FALSE(action->isEnabled());
    EXPECT_TRUE(action->text().contains(QStringLiteral("not while lanes run")))
        << action->text().toStdString();
    rig.window->startTour();
    EXPECT_EQ(rig.find<TourWindow>("tour"), nullptr);
    rig.session->end();
    EXPECT_TRUE(action->isEnabled());
}

TEST_F(Tour, IsOfferedToWhoeverStartsForTheFirstTimeOnly)
{
    const auto* const offer = rig.find<Notice>("tourOffer");
    EXPECT_FALSE(offer->isVisible());
    openFirst(*rig.window, *rig.session, {}, *rig.settings);
    EXPECT_TRUE(offer->isVisible());
    EXPECT_EQ(rig.find<TourWindow>("tour"), nullptr) << "offered, not forced";
    rig.find<QPushButton>("tourOfferOffer2")->click();
    EXPECT_FALSE(offer->isVisible());
    openFirst(*rig.window, *rig.session, {}, *rig.settings);
    EXPECT_FALSE(offer->isVisible()) << "asked once";
}

TEST_F(Tour, BeginsFromTheOffer)
{
    openFirst(*rig.window, *rig.session, {}, *rig.settings);
    rig.find<QPushButton>("tourOfferOffer1")->click();
    auto* const tour = rig.find<TourWindow>("tour");
    ASSERT_NE(tour, nullptr);
    EXPECT_FALSE(rig.find<Notice>("tourOffer")->isVisible());
    tour->close();
}

}  // namespace
