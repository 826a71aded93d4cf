#include "tests/core/run/support.h"

#include <gtest/gtest.h>

namespace core::run {
namespace {

using Kind = Answer::Kind;

TEST(Limits, BeginWithTheClockAndAreSortedByTime)
{
    Service service = wig();
    service.coats[0].zones[0].firstStrandMost = minutes(50);
    Teller teller{service};
    teller.mustTell(Kind::Start, apply(0), clockAt(0));
    ASSERT_EQ(teller.at(clockAt(1)).limits.size(), 1u);
    EXPECT_EQ(teller.at(clockAt(1)).limits[0].what, "first strand at most 50 min");
    teller.mustTell(Kind::Finish, apply(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    const auto limits = teller.at(clockAt(16)).limits;
    ASSERT_EQ(limits.size(), 3u);
    EXPECT_EQ(limits[0].at, clockAt(50));
    EXPECT_EQ(limits[1].at, clockAt(51));
    EXPECT_EQ(limits[1].what, "at most 35 min development");
    EXPECT_EQ(limits[2].at, clockAt(55));
    EXPECT_EQ(limits[0].expected, clockAt(45));
}

TEST(Limits, StandUntilTheWaterEvenWhenPassed)
{
    Teller teller{wig()};
    for (std::size_t each = 0; each < 3; ++each)
        applyZone(teller, each, clockAt(0), clockAt(5));
    EXPECT_EQ(teller.at(clockAt(90)).limits.size(), 3u);
    teller.mustTell(Kind::Start, task(TaskKind::Rinse), clockAt(90));
    EXPECT_TRUE(teller.at(clockAt(90)).limits.empty());
}

TEST(Limits, WaterOnItsWayKeepsALimitOnlyIfItComesInTime)
{
    Service service = wig();
    service.coats[0].zones[0].reach = minutes(3);  // Root: at most until 5 + 45 = 50.
    Teller teller{service};
    for (std::size_t each = 0; each < 3; ++each)
        applyZone(teller, each, clockAt(0), clockAt(5));
    Teller late = teller;
    teller.mustTell(Kind::Start, task(TaskKind::Rinse), clockAt(47));
    EXPECT_TRUE(teller.at(clockAt(47)).limits.empty());
    late.mustTell(Kind::Start, task(TaskKind::Rinse), clockAt(48));
    EXPECT_EQ(late.at(clockAt(48)).limits.size(), 1u);
    EXPECT_TRUE(late.at(clockAt(51)).limits.empty());
}

}  // namespace
}  // namespace core::run
