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

/// From the first column to the last that has ink in the middle of the digits; what frames the card has none.
std::pair<int, int> inkOfDigits(const QImage& drawn, int middle, int height)
{
    constexpr int frame = 5;
    std::pair<int, int> ink{drawn.width(), 0};
    for (int y = middle - height / 2; y < middle + height / 2; ++y)
        for (int x = frame; x < drawn.width() - frame; ++x)
            if (qGray(drawn.pixel(x, y)) < 128)
                ink = {std::min(ink.first, x), std::max(ink.second, x)};
    return ink;
}

struct CardLook {
    const char* name;
    bool compact;
    QSize size;
    int text;
};

/// Beside one another in a window of 1024 by 700, and as large as they get.
class CardsSideBySide : public testing::TestWithParam<CardLook> {
protected:
    CardsSideBySide() { theme.setTextSize(GetParam().text); }
    ~CardsSideBySide() override { theme.setTextSize(100); }

    Theme theme{*qApp};
};

TEST_P(CardsSideBySide, LeaveAThirdOfAFigureFreeBesideTheirDigits)
{
    LaneCard card{theme, GetParam().compact};
    card.resize(GetParam().size);
    app::view::LaneView lane = developing();
    lane.untilLook.reset();
    for (const int seconds : {20 * 60, 28 * 60 + 48, 48 * 60 + 20, -15, -(10 * 60 + 20)}) {
        lane.left = core::measure::Seconds{seconds};
        card.showLane(lane, 0, {});
        const QImage drawn = card.grab().toImage();
        const int middle = GetParam().compact ? card.height() * 2 / 3 : card.height() / 2 - 10;
        const auto [first, last] = inkOfDigits(drawn, middle, 24);
        // Of four figures and a colon, and with a plus.
        const int third = (last - first) / (seconds < -600 ? 18 : 14);
        EXPECT_GE(first, third) << seconds;
        EXPECT_GE(card.width() - 1 - last, third) << seconds;
    }
}

INSTANTIATE_TEST_SUITE_P(
    Cards, CardsSideBySide,
    testing::Values(CardLook{"Least", false, {318, 250}, 100}, CardLook{"Usual", false, {322, 334}, 100},
                    CardLook{"High", true, {322, 278}, 100}, CardLook{"HighLarge", true, {322, 198}, 150},
                    CardLook{"Low", true, {322, 90}, 100}, CardLook{"LowLarge", true, {322, 152}, 150},
                    CardLook{"LowLargest", true, {322, 132}, 200}, CardLook{"Narrow", true, {234, 125}, 100}),
    [](const auto& look) { return look.param.name; });

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
