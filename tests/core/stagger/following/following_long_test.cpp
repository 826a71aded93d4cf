#include "tests/core/stagger/following/followed.h"
#include "tests/core/stagger/following/live.h"

#include <gtest/gtest.h>

// What following_test.cpp does, for other plans and in numbers: all whole minutes for up to four zones, every
// extreme combination beyond, a million random runs, and thousands of runs planned again and again.

namespace core::stagger {
namespace {

/// Every kind of thing that can go wrong is there.
void expectVariety(const FollowedPlans& followed)
{
    EXPECT_GT(followed.held, followed.plans / 2);
    EXPECT_GT(followed.whole, followed.plans / 3);
    for (const int kind :
         {followed.looks, followed.mixes, followed.lateJobs, followed.twoHands, followed.rinses})
        EXPECT_GT(kind, followed.plans / 20);
}

TEST(FollowedPlanLong, KeepsEveryLimitForAllWholeMinutesOfUpToFourZones)
{
    const FollowedPlans followed =
        followPlans({.seed = 10'000, .plans = 1500, .zones = 4, .heads = 1, .everyLength = 20'000});
    expectVariety(followed);
    EXPECT_GT(followed.runs, 300'000);
}

TEST(FollowedPlanLong, KeepsEveryLimitForExtremeAndAMillionRandomLengths)
{
    const FollowedPlans one = followPlans(
        {.seed = 20'000, .plans = 500, .zones = 8, .heads = 1, .extremeLengths = 512, .randomLengths = 300});
    const FollowedPlans two = followPlans(
        {.seed = 30'000, .plans = 350, .zones = 4, .heads = 2, .extremeLengths = 512, .randomLengths = 300});
    expectVariety(one);
    expectVariety(two);
    EXPECT_GT(one.runs + two.runs, 1'000'000);
}

TEST(FollowedPlanLong, StaysGuaranteedWhilePlannedAgainAndAgain)
{
    EXPECT_EQ(liveThrough({.seed = 1'000, .plans = 600, .zones = 3, .heads = 1, .runs = 3}), 7200);
    EXPECT_EQ(liveThrough({.seed = 2'000, .plans = 150, .zones = 2, .heads = 2, .runs = 3}), 1800);
}

}  // namespace
}  // namespace core::stagger
