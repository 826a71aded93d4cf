#include "app/desktop/lanes/lane_card.h"

#include "app/desktop/lanes/lanes_grid.h"
#include "app/desktop/language.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <QApplication>
#include <QFontInfo>
#include <QFontMetrics>

#include <gtest/gtest.h>

using namespace app::desktop;

namespace {

app::view::LaneView developing()
{
    app::view::LaneView lane;
    lane.title = "Mids";
    lane.stage = core::run::Stage::Developing;
    lane.countsTo = app::view::CountsTo::Water;
    lane.left = core::measure::Seconds{605};
    lane.untilLook = core::measure::Seconds{120};
    lane.window = {core::measure::Seconds{600}, core::measure::Seconds{1200}, core::measure::Seconds{1500}};
    lane.development = core::measure::Seconds{595};
    return lane;
}

TEST(LaneCard, HasDigitsThatAreReadFromThreeMetres)
{
    const QFont font = Theme::font(metrics::textDigits);
    ASSERT_EQ(QFontInfo{font}.family(), QStringLiteral("DejaVu Sans"));
    for (const char* figure : {"0", "1", "7", "8"})
        EXPECT_GE(QFontMetrics{font}.tightBoundingRect(QLatin1String{figure}).height(), 76) << figure;
}

TEST(LaneCard, HasRoomForFourDigitsAtItsSmallest)
{
    Theme theme{*qApp};
    const LaneCard card{theme, false};
    const QFontMetrics metrics{Theme::font(metrics::textDigits)};

    EXPECT_LE(metrics.horizontalAdvance(QStringLiteral("88:88")), card.minimumSizeHint().width() - 8);
}

TEST(LaneCard, TellsTheSameToThoseWhoListen)
{
    Theme theme{*qApp};
    LaneCard card{theme, false};
    card.showLane(developing(), 0, {});

    EXPECT_EQ(card.accessibleName(), QStringLiteral("Mids, developing, 10:05 until water, Look in 2:00"));
}

TEST(LaneCard, ShowsAndTellsWhatWasSeen)
{
    Theme theme{*qApp};
    LaneCard card{theme, false};
    card.resize(card.sizeHint());
    app::view::LaneView lane = developing();
    card.showLane(lane, 0, {});
    const QImage before = card.grab().toImage();
    lane.tone = core::run::SeenTone{"still yellow", {}};
    card.showLane(lane, 0, {});

    EXPECT_NE(before, card.grab().toImage());
    EXPECT_TRUE(card.accessibleName().endsWith(QStringLiteral(", seen: still yellow")));
}

TEST(LaneCard, LooksOtherWhenItIsDueThanWhenItIsCalm)
{
    Theme theme{*qApp};
    LaneCard card{theme, false};
    card.resize(card.sizeHint());
    app::view::LaneView lane = developing();
    card.showLane(lane, 0, {});
    const QImage calm = card.grab().toImage();
    lane.urgency = app::view::Urgency::Due;
    card.showLane(lane, 0, {});

    EXPECT_NE(calm, card.grab().toImage());
}

/// What of a compact card lies behind its digits is of one colour: nothing is drawn there.
bool isEmptyBehindDigits(const LaneCard& card, const QImage& drawn)
{
    const QFontMetrics metrics{Theme::exactFont(LaneCard::compactDigits(card.size()), true)};
    const QRect behind{QPoint{14 + metrics.horizontalAdvance(QStringLiteral("+0:15")), card.height() / 2},
                       QPoint{card.width() - 8, card.height() - 8}};
    for (int y = behind.top(); y < behind.bottom(); ++y)
        for (int x = behind.left(); x < behind.right(); ++x)
            if (drawn.pixel(x, y) != drawn.pixel(behind.topLeft()))
                return false;
    return true;
}

TEST(LaneCard, HasNoBadgeWhereItsWordWouldCoverTheDigits)
{
    Theme theme{*qApp};
    LaneCard card{theme, true};
    card.resize(190, 78);
    app::view::LaneView lane = developing();
    lane.left = core::measure::Seconds{-15};
    lane.urgency = app::view::Urgency::Due;
    card.showLane(lane, 0, {});
    EXPECT_FALSE(isEmptyBehindDigits(card, card.grab().toImage())) << "\"now\" has room";

    language::use(QStringLiteral("fr"));
    EXPECT_TRUE(isEmptyBehindDigits(card, card.grab().toImage())) << "\"maintenant\" has none";
    card.resize(300, 78);
    EXPECT_FALSE(isEmptyBehindDigits(card, card.grab().toImage()));
    language::use(QStringLiteral("en"));
}

TEST(LanesGrid, KnowsItsLeastHeightForAnyWidthWhateverItsOwn)
{
    Theme theme{*qApp};
    LanesGrid grid{theme, false};
    EXPECT_EQ(grid.leastHeight(1000), 0);
    app::view::LanesView lanes;
    lanes.lanes.assign(4, developing());
    grid.resize(300, 2000);  // One below the other.
    grid.showLanes(lanes, {});

    const int card = LaneCard{theme, false}.minimumSizeHint().height();
    EXPECT_EQ(grid.leastHeight(1400), card);
    EXPECT_EQ(grid.leastHeight(984), 2 * card + metrics::gapSmall);
    EXPECT_EQ(grid.leastHeight(300), 4 * card + 3 * metrics::gapSmall);
}

}  // namespace
