#include "app/view/lane_view.h"
#include "tests/app/view/samples.h"

#include <gtest/gtest.h>

using namespace app::view;
using core::run::Stage;
using samples::at;

namespace {

LaneView ends(const core::run::State& state)
{
    return lanesView({samples::service()}, state).lanes.at(1);
}

TEST(LanesView, CountsDevelopingLanesDownToWater)
{
    const LanesView view = lanesView({samples::service()}, samples::developing(at(22)));

    ASSERT_EQ(view.lanes.size(), 2u);
    EXPECT_EQ(view.lanes[0].title, "Root");
    EXPECT_EQ(view.lanes[0].countsTo, CountsTo::Water);
    EXPECT_EQ(view.lanes[0].left, samples::minutes(8));
    EXPECT_EQ(view.lanes[0].development, samples::minutes(12));
    EXPECT_DOUBLE_EQ(view.lanes[0].filled, 12.0 / 20.0);
}

TEST(LanesView, CountsAWaitingLaneDownToItsApplication)
{
    auto state = samples::developing(at(5));
    state.lanes[1].stage = Stage::Waiting;

    EXPECT_EQ(ends(state).countsTo, CountsTo::Application);
    EXPECT_EQ(ends(state).left, samples::minutes(6));
}

TEST(LanesView, CountsNothingOnceALaneIsUnderWater)
{
    auto state = samples::developing(at(31));
    state.lanes[1].stage = Stage::Rinsing;

    EXPECT_EQ(ends(state).countsTo, CountsTo::Nothing);
    EXPECT_EQ(ends(state).urgency, Urgency::Calm);
}

TEST(LanesView, SaysHowLongUntilTheNextLook)
{
    EXPECT_EQ(ends(samples::developing(at(18))).untilLook, samples::minutes(2));
    EXPECT_EQ(ends(samples::developing(at(21))).untilLook, -samples::minutes(1));
    EXPECT_EQ(ends(samples::developing(at(18))).look, samples::lookAtEnds);
}

TEST(LanesView, BecomesMoreUrgentAsWaterNears)
{
    EXPECT_EQ(ends(samples::developing(at(27))).urgency, Urgency::Calm);
    EXPECT_EQ(ends(samples::developing(at(28))).urgency, Urgency::Soon);
    EXPECT_EQ(ends(samples::developing(at(30))).urgency, Urgency::Due);
}

TEST(LanesView, IsLateOnlyPastTheLimit)
{
    // Water was planned at 30 and the limit of the ends is at 33.
    EXPECT_EQ(ends(samples::developing(at(33))).urgency, Urgency::Due);
    EXPECT_EQ(ends(samples::developing(at(34))).urgency, Urgency::Late);
}

TEST(LanesView, ShowsTheCoatThatIsWorkedOn)
{
    auto service = samples::service();
    service.coats.push_back(service.coats.front());
    service.coats.back().name = "Second";
    auto state = samples::developing(at(40));
    for (core::run::Lane& lane : state.lanes)
        lane.stage = Stage::Rinsed;
    core::run::Lane next;
    next.coat = 1;
    state.lanes.push_back(next);

    const LanesView view = lanesView({service}, state);

    ASSERT_EQ(view.heads.size(), 1u);
    EXPECT_EQ(view.heads[0].coat, 1u);
    EXPECT_EQ(view.heads[0].coatName, "Second");
    EXPECT_EQ(view.lanes.size(), 1u);
}

TEST(LanesView, ShowsTheLanesOfEveryHeadWithItsName)
{
    std::vector services{samples::service(), samples::service()};
    services[1].head.name = "The ghost";
    services[1].coats.push_back(services[1].coats.front());
    auto state = samples::developing(at(22));
    const auto first = state.lanes;
    for (core::run::Lane lane : first) {
        lane.service = 1;
        lane.stage = Stage::Rinsed;
        state.lanes.push_back(lane);
    }
    core::run::Lane next;
    next.service = 1;
    next.coat = 1;
    state.lanes.push_back(next);

    const LanesView view = lanesView(services, state);

    ASSERT_EQ(view.heads.size(), 2u);
    EXPECT_EQ(view.heads[0].coat, 0u);
    EXPECT_EQ(view.heads[1].coat, 1u);  // The second head is past its first coat.
    ASSERT_EQ(view.lanes.size(), 3u);
    EXPECT_EQ(view.lanes[0].head, headOf(services, 0));
    EXPECT_EQ(view.lanes[2].head, "The ghost");
    EXPECT_EQ(view.lanes[2].zone.coat, 1u);
}

TEST(LanesView, NamesNoHeadWhereThereIsOne)
{
    EXPECT_EQ(ends(samples::developing(at(22))).head, "");
}

LaneView laneOf(Urgency urgency, CountsTo countsTo, int left, std::optional<Seconds> untilLook = {})
{
    LaneView lane;
    lane.urgency = urgency;
    lane.countsTo = countsTo;
    lane.left = samples::minutes(left);
    lane.untilLook = untilLook;
    return lane;
}

TEST(MostPressing, PutsWhatIsLateFirstAndWhatIsRinsedLast)
{
    const std::vector<LaneView> lanes{
        laneOf(Urgency::Calm, CountsTo::Nothing, 0),
        laneOf(Urgency::Calm, CountsTo::Water, 20),
        laneOf(Urgency::Late, CountsTo::Water, -2),
        laneOf(Urgency::Calm, CountsTo::Water, 25, samples::minutes(3)),
        laneOf(Urgency::Due, CountsTo::Water, 0),
    };

    EXPECT_EQ(mostPressing(lanes, 1), (std::vector<std::size_t>{2}));
    EXPECT_EQ(mostPressing(lanes, 2), (std::vector<std::size_t>{2, 4}));
    EXPECT_EQ(mostPressing(lanes, 3), (std::vector<std::size_t>{2, 3, 4}));
    EXPECT_EQ(mostPressing(lanes, 4), (std::vector<std::size_t>{1, 2, 3, 4}));
    EXPECT_EQ(mostPressing(lanes, 9).size(), 5u);
    EXPECT_TRUE(mostPressing({}, 3).empty());
}

TEST(MostPressing, AsksForTheLookWhereThatComesBeforeWater)
{
    EXPECT_EQ(untilAsked(laneOf(Urgency::Calm, CountsTo::Water, 25, samples::minutes(3))),
              samples::minutes(3));
    EXPECT_EQ(untilAsked(laneOf(Urgency::Calm, CountsTo::Water, 2, samples::minutes(3))),
              samples::minutes(2));
    EXPECT_EQ(untilAsked(laneOf(Urgency::Calm, CountsTo::Nothing, 0)), std::nullopt);
}

TEST(LanesView, StaysOnTheLastCoatWhenEverythingIsRinsed)
{
    auto state = samples::developing(at(40));
    for (core::run::Lane& lane : state.lanes)
        lane.stage = Stage::Rinsed;

    EXPECT_EQ(currentCoat(state), 0u);
}

}  // namespace
