#include "core/stagger/holds.h"

#include "tests/core/stagger/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// What keeps a plan off its targets. Worked out by hand, in minutes.

namespace core::stagger {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

constexpr std::int64_t zoneMinute = 6000;

// Both want 20 and take 10 to apply. One pair of hands: the first gets 10 more than the second, so they are
// off by 10 in all. Several pairs of hands apply both at once. No window is in the way.
TEST(Holds, NameWhatWouldHaveToGive)
{
    const oracle::Span wide{minutes{5}, minutes{20}, minutes{40}};
    const auto holding =
        holdsOf(ask(fromOpening({makeZone("Mids", minutes{10}, wide), makeZone("Ends", minutes{10}, wide)})));

    ASSERT_TRUE(holding);
    EXPECT_TRUE(holding->complete);
    EXPECT_EQ(holding->deviation.hundredthSeconds, 10 * zoneMinute);
    ASSERT_EQ(holding->holds.size(), 1u);
    EXPECT_EQ(holding->holds[0].demand.what, "one pair of hands");
    EXPECT_EQ(holding->holds[0].deviation.hundredthSeconds, 0);
}

// Wanted in one hour, with 20 to apply, 30 at best to develop, 5 to rinse: 5 short if the promise is at 50.
TEST(Holds, NameAPromise)
{
    Service service = fromOpening({makeZone("Root", minutes{20}, {minutes{20}, minutes{30}, minutes{40}})});
    service.readyBy = at(50);
    const auto holding = holdsOf(ask(service));

    ASSERT_TRUE(holding);
    EXPECT_EQ(holding->deviation.hundredthSeconds, 5 * zoneMinute);
    ASSERT_EQ(holding->holds.size(), 1u);
    EXPECT_EQ(holding->holds[0].demand.what, "ready by the promised time");
}

// Ends want 15 from the end of 10, mids 30 from the end of 10: the most of 20 for mids holds them off by 10.
TEST(Holds, AgreeWithThePlan)
{
    const Question question =
        ask(fromOpening({makeZone("Mids", minutes{10}, {minutes{5}, minutes{18}, minutes{18}}),
                         makeZone("Ends", minutes{10}, {minutes{12}, minutes{15}, minutes{16}}),
                         makeZone("Root", minutes{5}, {minutes{5}, minutes{15}, minutes{30}})}));
    const auto holding = holdsOf(question);

    ASSERT_TRUE(holding);
    EXPECT_EQ(holding->deviation, planned(question)->worth.deviation);
    for (const Hold& hold : holding->holds)
        EXPECT_LT(hold.deviation, holding->deviation) << hold.demand.what;
    EXPECT_FALSE(holding->holds.empty());
}

TEST(Holds, AreNoneWhereEveryZoneGetsItsTarget)
{
    const auto holding = holdsOf(ask(fromOpening({makeZone("Root", minutes{20}, exactly(30))})));

    ASSERT_TRUE(holding);
    EXPECT_EQ(holding->deviation.hundredthSeconds, 0);
    EXPECT_THAT(holding->holds, IsEmpty());
}

TEST(Holds, AreNotKnownWhereNothingFits)
{
    Service service = fromOpening({makeZone("Root", minutes{20}, exactly(30))});
    service.readyBy = at(50);
    EXPECT_FALSE(holdsOf(ask(service)));
}

}  // namespace
}  // namespace core::stagger
