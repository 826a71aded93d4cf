#include "tests/core/run/support.h"

#include <gtest/gtest.h>

namespace core::run {
namespace {

using Kind = Answer::Kind;

TEST(Lanes, BeforeTheStartTheyShowThePlan)
{
    const Teller teller{wig()};
    const State state = teller.at(clockAt(0));
    ASSERT_EQ(state.lanes.size(), 3u);
    EXPECT_EQ(state.lanes[2].stage, Stage::Waiting);
    EXPECT_EQ(state.lanes[2].firstContact, clockAt(16));
    EXPECT_EQ(state.lanes[2].clockStart, clockAt(21));
    EXPECT_EQ(state.lanes[2].water, clockAt(45));
    EXPECT_EQ(state.lanes[2].nextLook, clockAt(29));
    EXPECT_EQ(state.lanes[2].development, Seconds{0});
}

TEST(Lanes, GoThroughTheirStages)
{
    Teller teller{wig()};
    teller.mustTell(Kind::Start, apply(0), clockAt(0));
    EXPECT_EQ(teller.at(clockAt(3)).lanes[0].stage, Stage::Applying);
    EXPECT_EQ(teller.at(clockAt(3)).lanes[0].development, Seconds{0});
    teller.mustTell(Kind::Finish, apply(0), clockAt(9));
    EXPECT_EQ(teller.at(clockAt(20)).lanes[0].stage, Stage::Developing);
    EXPECT_EQ(teller.at(clockAt(20)).lanes[0].development, minutes(11));
    EXPECT_EQ(teller.at(clockAt(20)).lanes[0].leastAt, clockAt(39));
    EXPECT_EQ(teller.at(clockAt(20)).lanes[0].targetAt, clockAt(44));
    EXPECT_EQ(teller.at(clockAt(20)).lanes[0].mostAt, clockAt(54));
    applyZone(teller, 1, clockAt(9), clockAt(15));
    applyZone(teller, 2, clockAt(15), clockAt(20));
    teller.mustTell(Kind::Start, task(TaskKind::Rinse), clockAt(44));
    EXPECT_EQ(teller.at(clockAt(46)).lanes[0].stage, Stage::Rinsing);
    EXPECT_EQ(teller.at(clockAt(46)).lanes[0].development, minutes(35));
    teller.mustTell(Kind::Finish, task(TaskKind::Rinse), clockAt(48));
    EXPECT_EQ(teller.at(clockAt(60)).lanes[0].stage, Stage::Rinsed);
    EXPECT_EQ(teller.at(clockAt(60)).lanes[0].development, minutes(35));
}

TEST(Lanes, AZoneThatIsReachedLateDevelopsUntilThen)
{
    Service service = wig();
    service.coats[0].zones[1].reach = minutes(2);
    Teller teller{service};
    for (std::size_t each = 0; each < 3; ++each)
        applyZone(teller, each, clockAt(0), clockAt(5));
    teller.mustTell(Kind::Start, task(TaskKind::Rinse), clockAt(40));
    EXPECT_EQ(teller.at(clockAt(41)).lanes[0].stage, Stage::Rinsing);
    EXPECT_EQ(teller.at(clockAt(41)).lanes[1].stage, Stage::Developing);
    EXPECT_EQ(teller.at(clockAt(43)).lanes[1].stage, Stage::Rinsing);
    EXPECT_EQ(teller.at(clockAt(43)).lanes[1].development, minutes(37));
}

TEST(Lanes, FirstContactStartsTheClockAndTheFirstStrandHasItsOwnLimit)
{
    Service service = wig();
    service.coats[0].zones[0].clock = service::ClockStart::FirstContact;
    service.coats[0].zones[1].firstStrandMost = minutes(30);
    Teller teller{service};
    teller.mustTell(Kind::Start, apply(0), clockAt(1));
    EXPECT_EQ(teller.at(clockAt(4)).lanes[0].stage, Stage::Applying);
    EXPECT_EQ(teller.at(clockAt(4)).lanes[0].development, minutes(3));
    teller.mustTell(Kind::Finish, apply(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    // From the end 16 + 35 = 51; from the first strand 10 + 30 = 40, which is tighter.
    EXPECT_EQ(teller.at(clockAt(16)).lanes[1].mostAt, clockAt(40));
}

TEST(Lanes, AZoneRinsedAloneLeavesItsGroup)
{
    Teller teller{wig()};
    for (std::size_t each = 0; each < 3; ++each)
        applyZone(teller, each, clockAt(static_cast<std::int64_t>(each) * 5),
                  clockAt(5 * static_cast<std::int64_t>(each) + 5));
    teller.mustTell(Kind::RinseZoneNow, look(2), clockAt(23));
    teller.mustTell(Kind::Finish, task(TaskKind::RinseAlone, 2), clockAt(27));
    teller.mustTell(Kind::Start, task(TaskKind::Rinse), clockAt(40));
    const State state = teller.at(clockAt(41));
    EXPECT_EQ(state.lanes[2].stage, Stage::Rinsed);
    EXPECT_EQ(state.lanes[2].development, minutes(8));
    EXPECT_EQ(state.lanes[0].stage, Stage::Rinsing);
}

TEST(Lanes, ADroppedZoneSaysSo)
{
    Teller teller{wig()};
    teller.mustTell(Kind::Drop, apply(1), clockAt(0));
    EXPECT_EQ(teller.at(clockAt(1)).lanes[1].stage, Stage::Dropped);
}

}  // namespace
}  // namespace core::run
