#include "core/service/service.h"

#include <gtest/gtest.h>

namespace core::service {
namespace {

using std::chrono::minutes;

TEST(Looks, AreOneWithoutEvery)
{
    const Looks looks{minutes{5}, {}, minutes{1}, minutes{2}, minutes{20}};
    EXPECT_EQ(looks.moments(), std::vector<Seconds>{minutes{5}});
}

// First 5, every 5, until 20: 5, 10, 15; the one at 20 is not before 20.
TEST(Looks, EndBeforeUntil)
{
    const Looks looks{minutes{5}, minutes{5}, minutes{1}, minutes{2}, minutes{20}};
    EXPECT_EQ(looks.moments(), (std::vector<Seconds>{minutes{5}, minutes{10}, minutes{15}}));
}

TEST(Looks, AreNoneWhenTheFirstIsNotBeforeUntil)
{
    EXPECT_TRUE((Looks{minutes{20}, minutes{5}, minutes{1}, minutes{2}, minutes{20}}.moments().empty()));
}

TEST(Looks, TolerateTwoMinutesOrHalfOfEvery)
{
    EXPECT_EQ(defaultTolerance({}), minutes{2});
    EXPECT_EQ(defaultTolerance(minutes{5}), minutes{2});
    EXPECT_EQ(defaultTolerance(minutes{3}), Seconds{90});
    EXPECT_EQ(defaultTolerance(Seconds{15}), Seconds{7});  // rounded down to whole seconds
}

TEST(Hands, WithoutKindsDoEverything)
{
    EXPECT_TRUE((Hands{"A", {}, {}}.does(Work::Rinse)));
    const Hands helper{"B", {}, {Work::Mix, Work::Look}};
    EXPECT_TRUE(helper.does(Work::Look));
    EXPECT_FALSE(helper.does(Work::Apply));
}

}  // namespace
}  // namespace core::service
