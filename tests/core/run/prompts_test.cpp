#include "tests/core/run/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace core::run {
namespace {

using Asks = Prompt::Asks;
using Kind = Answer::Kind;

Teller allApplied(const Service& service = wig())
{
    Teller teller{service};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    applyZone(teller, 2, clockAt(16), clockAt(21));
    return teller;
}

TEST(Prompts, TheFirstIsWhatToDoNowAndTheRestIsToCome)
{
    const Teller teller{wig()};
    const State state = teller.at(clockAt(0));
    std::vector<TaskId> order;
    for (const Prompt& prompt : state.prompts)
        order.push_back(prompt.task);
    EXPECT_THAT(order, testing::ElementsAre(apply(0), apply(1), apply(2), look(2), task(TaskKind::Rinse)));
    EXPECT_EQ(state.prompts[0].hands, 0u);
}

TEST(Prompts, WhatRunsIsAskedForWhenItShouldBeDone)
{
    Service service = wig();
    service.coats[0].zones[0].apply = {minutes(8), minutes(10), minutes(14)};
    Teller teller{service};
    teller.mustTell(Kind::Start, apply(0), clockAt(0));
    const State state = teller.at(clockAt(11));
    EXPECT_EQ(state.prompts[0].asks, Asks::Finish);
    EXPECT_EQ(state.prompts[0].due, clockAt(10));
    EXPECT_EQ(state.prompts[0].pressing, clockAt(14));
    const auto* next = findPrompt(state, Asks::Start, apply(1));
    ASSERT_TRUE(next);
    EXPECT_EQ(next->waitsFor, apply(0));
}

TEST(Prompts, SayHowLongAStepCanBePutOff)
{
    Teller teller = allApplied();
    teller.setup.planner = stagger::plan;
    const State state = teller.at(clockAt(22));
    const auto* water = findPrompt(state, Asks::Start, task(TaskKind::Rinse));
    ASSERT_TRUE(water);
    ASSERT_TRUE(water->safe);
    // The zone that reaches its most first sets the limit.
    EXPECT_EQ(water->safe->latest, std::ranges::min(state.lanes, {}, &Lane::mostAt).mostAt);
    EXPECT_LE(water->safe->earliest, water->due);
    EXPECT_EQ(water->safe->safeFor, stagger::SafeFor::LengthsHeld);
}

TEST(Prompts, SayNothingOfPuttingOffWhatRuns)
{
    Teller teller{wig()};
    teller.setup.planner = stagger::plan;
    teller.mustTell(Kind::Start, apply(0), clockAt(0));
    const State state = teller.at(clockAt(1));
    EXPECT_FALSE(state.prompts.front().safe);
    EXPECT_TRUE(findPrompt(state, Asks::Start, apply(1))->safe);
}

TEST(Prompts, WaterComesFirstOfWhatIsDueAtOnce)
{
    Service service = wig();
    service.coats[0].zones[2].looks->first = minutes(24);
    service.coats[0].zones[2].looks->until = minutes(26);
    service.coats[0].zones[2].reach = minutes(1);
    const Teller teller = allApplied(service);
    const State state = teller.at(clockAt(45));
    ASSERT_GE(state.prompts.size(), 2u);
    EXPECT_EQ(state.prompts[0].task, task(TaskKind::Rinse));
    EXPECT_EQ(state.prompts[1].task, look(2));
    EXPECT_EQ(state.prompts[0].due, state.prompts[1].due);
}

TEST(Prompts, WaterOnIsFollowedByWaterOff)
{
    Teller teller = allApplied();
    teller.mustTell(Kind::Start, task(TaskKind::Rinse), clockAt(45));
    const auto state = teller.at(clockAt(46));
    ASSERT_EQ(state.prompts.size(), 1u);
    EXPECT_EQ(state.prompts[0].asks, Asks::Finish);
    EXPECT_EQ(state.prompts[0].due, clockAt(49));
    teller.mustTell(Kind::Finish, task(TaskKind::Rinse), clockAt(49));
    EXPECT_TRUE(teller.at(clockAt(49)).finished);
    EXPECT_TRUE(teller.at(clockAt(49)).prompts.empty());
}

TEST(Prompts, LookAgainAsksOnceMoreAndThenOnceMore)
{
    Teller teller = allApplied();
    ASSERT_FALSE(teller.tell({.kind = Kind::LookAgain, .task = look(2), .again = minutes(4)}, clockAt(29)));
    State state = teller.at(clockAt(29));
    EXPECT_EQ(state.extraLooks, (std::vector{ExtraLook{.look = look(2), .due = clockAt(33)}}));
    EXPECT_EQ(state.lanes[2].nextLook, clockAt(33));
    ASSERT_TRUE(findPrompt(state, Asks::Look, look(2)));
    ASSERT_FALSE(teller.tell({.kind = Kind::LookAgain, .task = look(2), .again = minutes(5)}, clockAt(33)));
    EXPECT_EQ(teller.at(clockAt(33)).extraLooks.at(0).due, clockAt(38));
    teller.mustTell(Kind::Leave, look(2), clockAt(38));
    EXPECT_TRUE(teller.at(clockAt(38)).extraLooks.empty());
    EXPECT_FALSE(findPrompt(teller.at(clockAt(38)), Asks::Look, look(2)));
}

TEST(Prompts, SeveralZonesCanBeLookedAtAgain)
{
    Service service = wig();
    service.coats[0].zones[1].looks = service.coats[0].zones[2].looks;
    Teller teller = allApplied(service);
    ASSERT_FALSE(teller.tell({.kind = Kind::LookAgain, .task = look(1), .again = minutes(9)}, clockAt(24)));
    ASSERT_FALSE(teller.tell({.kind = Kind::LookAgain, .task = look(2), .again = minutes(2)}, clockAt(29)));
    const State state = teller.at(clockAt(30));
    ASSERT_EQ(state.extraLooks.size(), 2u);
    EXPECT_EQ(state.prompts.at(0).due, clockAt(31));
    EXPECT_EQ(state.prompts.at(1).due, clockAt(33));
}

TEST(Prompts, APlannedLookTakesThePlaceOfOneAskedForLater)
{
    Service service = wig();
    service.coats[0].zones[2].looks->every = minutes(5);
    Teller teller = allApplied(service);
    ASSERT_FALSE(teller.tell({.kind = Kind::LookAgain, .task = look(2), .again = minutes(9)}, clockAt(29)));
    EXPECT_FALSE(findPrompt(teller.at(clockAt(30)), Asks::Look, look(2)));
    EXPECT_TRUE(findPrompt(teller.at(clockAt(30)), Asks::Look, look(2, 1)));
    teller.mustTell(Kind::Leave, look(2, 1), clockAt(34));
    EXPECT_TRUE(teller.at(clockAt(34)).extraLooks.empty());
}

TEST(Prompts, WaterEndsAllLooks)
{
    Teller teller = allApplied();
    ASSERT_FALSE(teller.tell({.kind = Kind::LookAgain, .task = look(2), .again = minutes(4)}, clockAt(29)));
    teller.mustTell(Kind::RinseZoneNow, apply(2), clockAt(31));
    EXPECT_TRUE(teller.at(clockAt(31)).extraLooks.empty());
    EXPECT_TRUE(findPrompt(teller.at(clockAt(31)), Asks::Finish, task(TaskKind::RinseAlone, 2)));
    EXPECT_FALSE(findPrompt(teller.at(clockAt(31)), Asks::Look, look(2)));
}

TEST(Prompts, AGroupThatAllZonesLeftHasNoRinse)
{
    Teller teller = allApplied();
    for (std::size_t each = 0; each < 3; ++each) {
        teller.mustTell(Kind::RinseZoneNow, apply(each), clockAt(30));
        teller.mustTell(Kind::Finish, task(TaskKind::RinseAlone, each), clockAt(34));
    }
    EXPECT_TRUE(teller.at(clockAt(34)).prompts.empty());
    EXPECT_TRUE(teller.at(clockAt(34)).finished);
    EXPECT_TRUE(teller.tell(Kind::Start, task(TaskKind::Rinse), clockAt(35)));
}

TEST(Prompts, DryingIsWaitedForBeforeAssessing)
{
    Teller teller = allApplied(longWig());
    teller.mustTell(Kind::Start, task(TaskKind::Rinse), clockAt(45));
    teller.mustTell(Kind::Finish, task(TaskKind::Rinse), clockAt(49));
    teller.mustTell(Kind::Start, task(TaskKind::Dry), clockAt(49));
    teller.mustTell(Kind::Finish, task(TaskKind::Dry), clockAt(52));
    const State state = teller.at(clockAt(53));
    ASSERT_EQ(state.prompts.size(), 1u);
    EXPECT_EQ(state.prompts[0].task, task(TaskKind::Assess));
    EXPECT_EQ(state.prompts[0].due, clockAt(72));
}

TEST(Prompts, WithoutAPlanLooksAndWaterGoByTheZonesClocks)
{
    Teller teller = allApplied();
    teller.setup.planner = [](const stagger::Question&, const stagger::Budget&) {
        return tl::expected<Plan, stagger::NoPlan>{tl::unexpected{stagger::NoPlan{}}};
    };
    const State state = teller.at(clockAt(22));
    EXPECT_FALSE(state.plan);
    ASSERT_EQ(state.prompts.size(), 2u);
    EXPECT_EQ(state.prompts[0].due, clockAt(29));
    EXPECT_EQ(state.prompts[1].task, task(TaskKind::Rinse));
    EXPECT_EQ(state.prompts[1].due,
              clockAt(43));  // Ends' target, 21 + 22, comes before Mids' 44 and Root's 45.
    EXPECT_EQ(state.limits.size(), 3u);
}

}  // namespace
}  // namespace core::run
