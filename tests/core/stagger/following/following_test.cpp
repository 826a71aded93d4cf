#include "tests/core/stagger/following/followed.h"
#include "tests/core/stagger/following/live.h"

#include <gtest/gtest.h>

// Following a plan's rule never breaks a limit, within the lengths that the plan holds for. More of the same
// is in following_long_test.cpp.

namespace core::stagger {
namespace {

TEST(FollowedPlan, KeepsEveryLimitForAllWholeMinutes)
{
    const FollowedPlans followed =
        followPlans({.seed = 1, .plans = 100, .zones = 4, .heads = 1, .everyLength = 300});
    EXPECT_EQ(followed.plans, 100);
    EXPECT_GT(followed.held, 50);
}

TEST(FollowedPlan, OfTwoHeadsKeepsEveryLimitForExtremeAndRandomLengths)
{
    const FollowedPlans followed = followPlans(
        {.seed = 1, .plans = 25, .zones = 3, .heads = 2, .extremeLengths = 64, .randomLengths = 50});
    EXPECT_EQ(followed.plans, 25);
    EXPECT_GT(followed.held, 10);
}

TEST(FollowedPlan, StaysGuaranteedWhilePlannedAgainAndAgain)
{
    EXPECT_EQ(liveThrough({.seed = 1, .plans = 25, .zones = 3, .heads = 1, .runs = 1}), 100);
}

}  // namespace
}  // namespace core::stagger
