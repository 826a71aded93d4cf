#include "app/view/strand_picture.h"
#include "tests/app/view/samples.h"

#include <gmock/gmock.h>

using namespace app::view;
using samples::at;

namespace {

TEST(PlannedPicture, BringsEveryStrandToTheRinseLine)
{
    const StrandPicture picture = plannedPicture({samples::service()}, samples::plan(), {0, 0});

    ASSERT_EQ(picture.strands.size(), 2u);
    ASSERT_EQ(picture.rinseLines.size(), 1u);
    EXPECT_EQ(picture.rinseLines.front(), (RinseLine{at(30), "Both"}));
    for (const Strand& strand : picture.strands) {
        EXPECT_EQ(strand.water, at(30));
        EXPECT_EQ(strand.rinseEnd, at(35));
    }
}

TEST(PlannedPicture, DrawsOneLineForAGroupThatIsReachedOneAfterAnother)
{
    auto plan = samples::plan();
    plan.zones[1].water = at(32);  // The rinse takes 5 minutes.

    const StrandPicture picture = plannedPicture({samples::service()}, plan, {0, 0});

    ASSERT_EQ(picture.rinseLines.size(), 1u);
    EXPECT_EQ(picture.rinseLines.front().at, at(30));
    EXPECT_EQ(picture.strands[1].water, at(32));
}

TEST(PlannedPicture, DrawsALineOfItsOwnForAZoneRinsedAlone)
{
    auto plan = samples::plan();
    plan.zones[1].water = at(24);

    EXPECT_EQ(plannedPicture({samples::service()}, plan, {0, 0}).rinseLines.size(), 2u);
}

TEST(PlannedPicture, MarksTheWindowFromTheClocksStart)
{
    const Strand root = plannedPicture({samples::service()}, samples::plan(), {0, 0}).strands.front();

    EXPECT_EQ(root.leastAt, at(25));   // 10 + 15
    EXPECT_EQ(root.targetAt, at(30));  // 10 + 20
    EXPECT_EQ(root.mostAt, at(34));    // 10 + 24
    EXPECT_TRUE(root.keepsItsWindow());
}

TEST(PlannedPicture, TakesTheTighterLimitOfTheFirstStrand)
{
    auto service = samples::service();
    service.coats[0].zones[0].firstStrandMost = samples::minutes(29);

    const Strand root = plannedPicture({service}, samples::plan(), {0, 0}).strands.front();

    EXPECT_EQ(root.mostAt, at(29));  // Water at 30 is too late for the first strand.
    EXPECT_FALSE(root.keepsItsWindow());
}

TEST(PlannedPicture, PutsLooksOnTheirStrandAndJobsInTheHands)
{
    const StrandPicture picture = plannedPicture({samples::service()}, samples::plan(), {0, 0});

    EXPECT_TRUE(picture.strands[0].looks.empty());
    ASSERT_EQ(picture.strands[1].looks.size(), 1u);
    EXPECT_EQ(picture.strands[1].looks.front(), (LookMark{samples::lookAtEnds, at(20), false}));
    ASSERT_EQ(picture.hands.size(), 1u);
    EXPECT_EQ(picture.hands.front().jobs.size(), 4u);
}

TEST(PlannedPicture, ReachesFromTheFirstTaskToTheLastLimit)
{
    const StrandPicture picture = plannedPicture({samples::service()}, samples::plan(), {0, 0});

    EXPECT_EQ(picture.reach, (Span{at(0), at(35)}));
    EXPECT_FALSE(picture.now.has_value());
}

TEST(PlannedPicture, IsEmptyForACoatThatIsNotPlanned)
{
    EXPECT_TRUE(plannedPicture({samples::service()}, samples::plan(), {0, 1}).strands.empty());
}

TEST(LivePicture, DrawsEveryLaneAndNow)
{
    const StrandPicture picture = livePicture({samples::service()}, samples::developing(at(22)), {{0, 0}});

    ASSERT_EQ(picture.strands.size(), 2u);
    EXPECT_EQ(picture.strands[1].stage, core::run::Stage::Developing);
    EXPECT_EQ(picture.now, at(22));
    // Without a plan the rinse is taken to last as long as asked.
    EXPECT_EQ(picture.strands[0].rinseEnd, at(35));
}

TEST(LivePicture, StretchesToANowThatIsPastEverything)
{
    EXPECT_EQ(livePicture({samples::service()}, samples::developing(at(90)), {{0, 0}}).reach.until, at(90));
}

TEST(LivePicture, MarksALookThatWasAskedForAgain)
{
    auto state = samples::developing(at(22));
    state.extraLooks = {{samples::lookAtEnds, at(25)}};

    const StrandPicture picture = livePicture({samples::service()}, state, {{0, 0}});

    ASSERT_EQ(picture.strands[1].looks.size(), 1u);
    EXPECT_EQ(picture.strands[1].looks.front().at, at(25));
    EXPECT_TRUE(picture.strands[0].looks.empty());
}

TEST(LivePicture, DrawsNoRinseLineForAZoneThatWasLeftOut)
{
    auto state = samples::developing(at(22));
    state.lanes[1].stage = core::run::Stage::Dropped;
    state.lanes[1].water = at(60);

    EXPECT_EQ(livePicture({samples::service()}, state, {{0, 0}}).rinseLines.size(), 1u);
}

TEST(PlannedPicture, ShowsWhatHandsDoOnAnotherHeadAsFarAsItReaches)
{
    std::vector services{samples::service(), samples::service()};
    auto plan = samples::plan();
    const auto own = plannedPicture(services, plan, {0, 0});
    core::stagger::PlannedTask other = plan.tasks.front();
    other.id.service = 1;
    other.start = own.reach.from - samples::minutes(5);
    other.end = own.reach.from + samples::minutes(3);
    other.hands = 0;
    plan.tasks.push_back(other);

    const StrandPicture picture = plannedPicture(services, plan, {0, 0});

    EXPECT_EQ(picture.reach, own.reach);
    ASSERT_EQ(picture.hands.size(), 1u);
    ASSERT_EQ(picture.hands[0].jobs.size(), own.hands[0].jobs.size() + 1);
    const HandsJob& elsewhere = picture.hands[0].jobs.back();
    EXPECT_TRUE(elsewhere.elsewhere);
    EXPECT_EQ(elsewhere.span, (Span{own.reach.from, own.reach.from + samples::minutes(3)}));
    EXPECT_FALSE(picture.hands[0].jobs.front().elsewhere);
}

TEST(PlannedPicture, MarksTheForecastOfEachStrand)
{
    auto picture = plannedPicture({samples::service()}, samples::plan(), {0, 0});
    core::stagger::Forecast forecast;
    forecast.runs = 2000;
    forecast.zones.push_back({.zone = 1, .inside = 1940, .development = {}});
    forecast.rinses.push_back({samples::rinse, {at(28), at(29), at(30), at(32), at(35)}});
    addForecast(picture, {samples::service()}, forecast);
    EXPECT_FALSE(picture.strands[1].forecast);  // Nothing is uncertain, so there is nothing to forecast.

    forecast.influences.push_back({samples::applyRoot, 1.0});
    addForecast(picture, {samples::service()}, forecast);
    EXPECT_FALSE(picture.strands[0].forecast);
    ASSERT_TRUE(picture.strands[1].forecast);
    EXPECT_EQ(*picture.strands[1].forecast, (StrandForecast{1940, 2000, {at(29), at(32)}}));
}

}  // namespace
