#include "app/desktop/lanes/lanes_grid.h"

#include "app/desktop/lanes/card_layout.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <QApplication>
#include <QLabel>
#include <QTest>

#include <gtest/gtest.h>

using namespace app::desktop;
using app::view::CountsTo;
using app::view::LanesView;
using app::view::LaneView;
using app::view::Urgency;

namespace {

LanesView lanes(int count)
{
    LanesView view;
    for (int place = 0; place < count; ++place) {
        LaneView lane;
        lane.title = "Section " + std::to_string(place + 1);
        lane.countsTo = CountsTo::Water;
        lane.left = std::chrono::minutes{40 - place};
        view.lanes.push_back(lane);
    }
    return view;
}

class CompactLanes : public testing::Test {
protected:
    void show(const LanesView& view, const QSize& size)
    {
        window.resize(size);
        grid.resize(size);
        grid.showLanes(view, WallClock{});
        window.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    }

    std::vector<std::string> shown() const
    {
        std::vector<std::string> names;
        for (const LaneCard* card : grid.cards())
            if (card->isVisible())
                names.push_back(card->lane().title);
        return names;
    }

    const QLabel& rest() const { return *grid.findChild<QLabel*>(QStringLiteral("otherLanes")); }

    Theme theme{*qobject_cast<QApplication*>(QCoreApplication::instance())};
    QWidget window;
    LanesGrid grid{theme, true, &window};
};

TEST_F(CompactLanes, AreSetOutSoThatTheirDigitsAreAsLargeAsTheyCanBe)
{
    show(lanes(6), {984, 300});
    EXPECT_EQ(shown().size(), 6u);
    EXPECT_FALSE(rest().isVisible());
    const LaneCard& card = *grid.cards().front();
    EXPECT_GT(card.width(), 300);  // Three beside one another, not six.
    EXPECT_LE(card.width(), 340);
    EXPECT_GE(LaneCard::compactDigits(card.size()), metrics::textDigits);

    grid.resize(984, 90);
    QTest::qWait(20);
    EXPECT_EQ(shown().size(), 6u);
    EXPECT_LT(card.width(), 170);
}

TEST_F(CompactLanes, AreTheOnesThatPressMostWhereThereIsNoRoomForAll)
{
    LanesView view = lanes(16);
    view.lanes[2].urgency = Urgency::Late;
    view.lanes[2].left = std::chrono::minutes{-1};
    show(view, {984, 172});  // Two rows of six.

    const auto names = shown();
    ASSERT_EQ(names.size(), 11u);
    EXPECT_EQ(names.front(), "Section 3");  // Late; of the others, the ten that come first.
    EXPECT_EQ(names[1], "Section 7");
    EXPECT_EQ(names.back(), "Section 16");
    EXPECT_TRUE(rest().isVisible());
    EXPECT_TRUE(rest().text().contains(QStringLiteral("5"))) << rest().text().toStdString();
    EXPECT_TRUE(rest().text().contains(QStringLiteral("35"))) << rest().text().toStdString();

    view.lanes[0].urgency = Urgency::Due;
    grid.showLanes(view, WallClock{});
    EXPECT_EQ(shown().front(), "Section 1");
    EXPECT_EQ(shown().size(), 11u);
}

TEST_F(CompactLanes, FillALargePageAndNotItsLeftEdge)
{
    for (const int count : {2, 3, 5}) {
        show(lanes(count), {3800, 1700});
        QTest::qWait(20);
        const LaneCard& card = *grid.cards().front();
        EXPECT_LE(card.width(), 3800 / 2) << count;
        EXPECT_GE(LaneCard::compactDigits(card.size()), 380) << count;
        const auto parts = card_layout::compact(card.size());
        EXPECT_GE(parts.enlarged * parts.title, 3 * metrics::textLarge) << count;
    }
}

TEST_F(CompactLanes, StayWhereTheyAreOnceNoneOfThemCounts)
{
    const auto columnsIn = [this](const LanesView& view, int height) {
        show(view, {984, height});
        QTest::qWait(20);
        return 984 / grid.cards().front()->width();
    };
    LanesView view = lanes(3);
    EXPECT_EQ(columnsIn(view, 400), 2) << "with larger digits than three beside one another";
    EXPECT_EQ(columnsIn(view, 190), 3);
    for (LaneView& lane : view.lanes)
        lane.countsTo = CountsTo::Nothing;
    EXPECT_EQ(columnsIn(view, 400), 3);
    EXPECT_EQ(columnsIn(view, 190), 3);
}

TEST_F(CompactLanes, HaveNamesOfOneSizeSideBySide)
{
    LanesView view = lanes(2);
    view.lanes[0].title = "Root";
    view.lanes[1].title = "A section with a name too long for large letters";
    show(view, {984, 300});
    const QImage beside = grid.cards()[0]->grab().toImage();
    view.lanes[1].title = "Ends";
    grid.showLanes(view, WallClock{});
    EXPECT_NE(beside, grid.cards()[0]->grab().toImage()) << "larger, once both have room for it";
}

TEST_F(CompactLanes, LeaveRoomForWhatMattersMore)
{
    show(lanes(40), {984, 172});
    EXPECT_LE(grid.minimumSizeHint().height(), 172);
}

}  // namespace
