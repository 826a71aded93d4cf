#include "core/alarm/words.h"

#include "tests/core/run/support.h"

#include <gtest/gtest.h>

namespace core::alarm {
namespace {

using namespace run;

std::string first(const Teller& teller, Instant now)
{
    const State state = teller.at(now);
    const auto alarms = alarmsAt(state, {}, now);
    return alarms.empty() ? "(silence)" : alarmText(teller.setup.services, state, alarms[0]);
}

TEST(Words, SayWhatToDo)
{
    Teller teller{wig()};
    EXPECT_EQ(first(teller, clockAt(0)), "Apply Root now");
    teller.mustTell(Answer::Kind::Start, apply(0), clockAt(0));
    EXPECT_EQ(first(teller, clockAt(10)), "Apply Root: has it ended?");
    teller.mustTell(Answer::Kind::Finish, apply(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    applyZone(teller, 2, clockAt(16), clockAt(21));
    EXPECT_EQ(first(teller, clockAt(27)), "Ends: look soon");
    EXPECT_EQ(first(teller, clockAt(29)), "Ends: look now");
    teller.mustTell(Answer::Kind::Leave, look(2), clockAt(29));
    EXPECT_EQ(first(teller, clockAt(43)), "Water soon: Root, Mids, Ends");
    EXPECT_EQ(first(teller, clockAt(45)), "Water on: Root, Mids, Ends");
    EXPECT_EQ(first(teller, clockAt(49)), "Mids: limit near (at most 35 min development)");
    EXPECT_EQ(first(teller, clockAt(51)), "Mids: limit passed (at most 35 min development)");
    teller.mustTell(Answer::Kind::Start, task(TaskKind::Rinse), clockAt(51));
    EXPECT_EQ(first(teller, clockAt(55)), "Water off: Root, Mids, Ends");
}

TEST(Words, NameOnlyTheZonesThatAreStillInTheGroup)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    applyZone(teller, 2, clockAt(16), clockAt(21));
    teller.mustTell(Answer::Kind::RinseZoneNow, look(2), clockAt(29));
    EXPECT_EQ(first(teller, clockAt(33)), "Water off: Ends");
    teller.mustTell(Answer::Kind::Finish, task(TaskKind::RinseAlone, 2), clockAt(33));
    EXPECT_EQ(first(teller, clockAt(45)), "Water on: Root, Mids");
}

TEST(Words, AskForHeatToBeTakenOff)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    applyZone(teller, 2, clockAt(16), clockAt(21));
    ASSERT_EQ(teller.tell({.kind = Answer::Kind::Start, .task = task(TaskKind::Heat), .again = minutes(4)},
                          clockAt(22)),
              std::nullopt);
    EXPECT_EQ(first(teller, clockAt(26)), "Heat: take it off");
}

TEST(Words, NameTheHeadWhereThereAreSeveral)
{
    Teller teller{wig()};
    const State state = teller.at(clockAt(0));
    const Alarm alarm = alarmsAt(state, {}, clockAt(0)).at(0);
    Service other = wig();
    Service named = wig();
    named.head.name = "Wig of the queen";
    EXPECT_EQ(alarmText({named, other}, state, alarm), "Wig of the queen: Apply Root now");
}

}  // namespace
}  // namespace core::alarm
