#include "core/stagger/plan.h"

#include "tests/core/stagger/support.h"
#include "tests/oracle/checker.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// What has happened, and what is made of the rest. Hand-worked: minutes from the opening, rinses take 5.

namespace core::stagger {
namespace {

using testing::IsEmpty;

TaskId apply(std::size_t zone = 0)
{
    return idOf(TaskKind::Apply, zone);
}

/// Root 20 to apply, ends 10 and 10 later at the basin's target.
Question rootAndEnds(int now)
{
    Question question =
        ask(fromOpening({makeZone("Root", minutes{20}, {minutes{30}, minutes{35}, minutes{45}}),
                         makeZone("Ends", minutes{10}, {minutes{15}, minutes{20}, minutes{25}})}));
    question.now = at(now);
    return question;
}

TEST(PlannerProgress, WhatIsDoneStaysAsItWas)
{
    Question question = rootAndEnds(26);
    happened(question, apply(), 1, 24);
    const Plan plan = planned(question);
    EXPECT_EQ(startOf(plan, apply()), 1);
    EXPECT_EQ(endOf(plan, apply()), 24);
    EXPECT_EQ(plan.find(apply())->state, TaskState::Done);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Rinse)), 59);  // 24 + 35.
    EXPECT_EQ(startOf(plan, apply(1)), 29);
    EXPECT_EQ(deviationOf(plan), 0);
}

// Between 12 and 20, usually 15: after 13 still until 15, after 17 not before now, after 23 now as well.
TEST(PlannerProgress, ARunningApplicationEndsAsUsualOrNow)
{
    for (const auto& [now, end] : {std::pair{13, 15}, {17, 17}, {23, 23}}) {
        Question question = rootAndEnds(now);
        question.services[0].coats[0].zones[0].apply = {minutes{12}, minutes{15}, minutes{20}};
        happened(question, apply(), 0);
        const Plan plan = planned(question);
        EXPECT_EQ(endOf(plan, apply()), end) << "now " << now;
        EXPECT_EQ(plan.find(apply())->state, TaskState::Running);
        EXPECT_EQ(startOf(plan, idOf(TaskKind::Rinse)), end + 35);
    }
}

TEST(PlannerProgress, NothingElseStartsWhileTheHandsApply)
{
    Question question = rootAndEnds(5);
    question.services[0].coats[0].zones[1].develop = {minutes{15}, minutes{40}, minutes{60}};
    happened(question, apply(), 0);
    EXPECT_EQ(startOf(planned(question), apply(1)), 20);
}

TEST(PlannerProgress, ARunningMixIsOverAsPlannedOrNow)
{
    for (const auto& [planEnd, now, applied] : {std::tuple{4, 2, 4}, {4, 6, 6}, {0, 1, 3}}) {
        Question question = ask(fromOpening({makeZone("Root", minutes{20}, exactly(30))}));
        question.now = at(now);
        question.services[0].coats[0].bowls[0].mix = minutes{3};
        happened(question, idOf(TaskKind::Mix), 0);
        if (planEnd > 0)
            question.progress.tasks[0].plannedEnd = at(planEnd);
        EXPECT_EQ(startOf(planned(question), apply()), applied) << planEnd << ' ' << now;
    }
}

TEST(PlannerProgress, ADroppedLookIsNotMade)
{
    Question question = rootAndEnds(0);
    question.services[0].coats[0].zones[0].looks = service::Looks{.first = minutes{20},
                                                                  .every = {},
                                                                  .length = minutes{1},
                                                                  .tolerance = minutes{2},
                                                                  .until = minutes{25}};
    const TaskId look = idOf(TaskKind::Look);
    EXPECT_NE(planned(question).find(look), nullptr);
    question.progress.dropped = {look};
    EXPECT_EQ(planned(question).find(look), nullptr);
}

TEST(PlannerProgress, ADroppedZoneTakesItsBowlAndItsRinseWithIt)
{
    Question question = rootAndEnds(0);
    service::Coat& coat = question.services[0].coats[0];
    coat.bowls.push_back({.name = "Ends bowl", .mix = minutes{3}, .potLife = {}, .note = {}});
    coat.zones[1].bowl = 1;
    coat.groups.push_back({.name = "Ends", .rinse = minutes{4}, .waterEarliest = {}, .waterLatest = {}});
    coat.zones[1].group = 1;
    question.progress.dropped = {apply(1)};
    const Plan plan = planned(question);
    EXPECT_EQ(plan.find(apply(1)), nullptr);
    EXPECT_EQ(plan.find(idOf(TaskKind::Mix, 1)), nullptr);
    EXPECT_EQ(plan.find(idOf(TaskKind::Rinse, 1)), nullptr);
    EXPECT_EQ(plan.zone(0, 0, 1), nullptr);
    EXPECT_EQ(plan->end, at(60));
}

// The ends were rinsed alone at 50, until 55: the root has its 35 at 55 all the same.
TEST(PlannerProgress, AZoneRinsedAloneHasLeftItsGroup)
{
    Question question = rootAndEnds(52);
    question.services[0].coats[0].zones[1].alone = true;
    happened(question, apply(), 0, 20);
    happened(question, apply(1), 20, 30);
    happened(question, idOf(TaskKind::RinseAlone, 1), 50);
    const Plan plan = planned(question);
    EXPECT_TRUE(plan.zone(0, 0, 1)->rinsedAlone);
    EXPECT_EQ(developmentOf(plan, 1), 20);
    EXPECT_FALSE(plan.zone(0, 0, 0)->rinsedAlone);
    EXPECT_EQ(developmentOf(plan, 0), 35);
}

TEST(PlannerProgress, AGroupThatEveryZoneHasLeftIsNotRinsed)
{
    Question question = rootAndEnds(52);
    service::Coat& coat = question.services[0].coats[0];
    coat.groups.push_back({.name = "Ends", .rinse = minutes{4}, .waterEarliest = {}, .waterLatest = {}});
    coat.zones[1].group = 1;
    coat.zones[1].alone = true;
    happened(question, apply(), 0, 20);
    happened(question, apply(1), 20, 30);
    happened(question, idOf(TaskKind::RinseAlone, 1), 47, 51);
    const Plan plan = planned(question);
    EXPECT_EQ(plan.find(idOf(TaskKind::Rinse, 1)), nullptr);
    EXPECT_EQ(plan->end, at(60));
}

// Root over at 20, rinsed at 70 when 45 were the most: 5 too long, and nothing open can help.
TEST(PlannerProgress, ALimitBetweenFactsIsPassedAlready)
{
    Question question = rootAndEnds(71);
    happened(question, apply(), 0, 20);
    happened(question, apply(1), 40, 50);
    happened(question, idOf(TaskKind::Rinse), 70);
    question.mayBreakLimits = true;
    const Plan plan = planned(question);
    ASSERT_EQ(plan->broken.size(), 1U);
    EXPECT_EQ(plan->broken[0].task, apply());
    EXPECT_EQ(plan->broken[0].by, minutes{5});
    EXPECT_TRUE(plan->broken[0].already);
    EXPECT_EQ(plan->worth.breach.hundredthSeconds, 0);
    question.mayBreakLimits = false;  // Nobody has to allow what has happened.
    EXPECT_EQ(planned(question)->broken, plan->broken);
}

/// The lightener of 45 to 50, applied [0, 40]; the accent of 30 to 45 is over at 67, 7 later than it might
/// be; the back of 20 to 25 takes 10 more: [67, 77]. Development times: common practice, no source.
Question overSevenLate()
{
    Question question =
        ask(fromOpening({makeZone("Crown", minutes{40}, {minutes{45}, minutes{45}, minutes{50}}),
                         makeZone("Accent", minutes{20}, {minutes{30}, minutes{35}, minutes{45}}),
                         makeZone("Back", minutes{10}, {minutes{20}, minutes{20}, minutes{25}})}));
    happened(question, apply(0), 0, 40);
    happened(question, apply(1), 47, 67);
    question.now = at(67);
    return question;
}

// The crown has to be rinsed by 40 + 50 = 90, the accent not before 67 + 30 = 97.
TEST(PlannerProgress, ALateApplicationIsNoLongerRinsedTogether)
{
    const NoPlan reason = refused(overSevenLate());
    EXPECT_NE(demandsOf(reason).find("Crown: development of at most 50 min"), std::string::npos);
}

// A minute past the most weighs 10, a minute short of the least 4. Water at 90 leaves the accent and the back
// 7 short each: 4 * (7 + 7) = 56. Each minute later would cost 10 and save 8.
TEST(PlannerProgress, WhatWorksTooLongIsWorseThanWhatWorksTooBriefly)
{
    Question question = overSevenLate();
    question.mayBreakLimits = true;
    const Plan plan = planned(question);
    EXPECT_EQ(developmentOf(plan, 0), 50);
    EXPECT_EQ(developmentOf(plan, 1), 23);
    EXPECT_EQ(developmentOf(plan, 2), 13);
    EXPECT_EQ(plan->worth.breach.minutes(), 56);
    ASSERT_EQ(plan->broken.size(), 2U);
    for (const BrokenLimit& broken : plan->broken) {
        EXPECT_EQ(broken.by, minutes{7}) << broken.what;
        EXPECT_FALSE(broken.already);
        EXPECT_THAT(broken.what, testing::HasSubstr("development of at least"));
    }
}

TEST(PlannerProgress, RinsingTheCrownAloneKeepsEveryLimit)
{
    Question question = overSevenLate();
    question.services[0].coats[0].zones[0].alone = true;
    happened(question, apply(2), 67, 77);
    happened(question, idOf(TaskKind::RinseAlone, 0), 90, 95);
    question.now = at(95);
    const Plan plan = planned(question);
    EXPECT_EQ(plan->worth.breach.hundredthSeconds, 0);
    EXPECT_THAT(plan->broken, IsEmpty());
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Rinse)), 97);
}

TEST(PlannerProgress, LimitsAreNotBrokenWhereTheyCanBeKept)
{
    Question question = rootAndEnds(0);
    const Plan keeping = planned(question);
    question.mayBreakLimits = true;
    EXPECT_EQ(planned(question), keeping);
}

// Promised for 50, over at 55 at the least: 5 late, at half a harm a minute.
TEST(PlannerProgress, ABrokenPromiseIsNamedByTheTaskThatIsLate)
{
    const Zone root = makeZone("Root", minutes{20}, {minutes{30}, minutes{35}, minutes{45}});
    Question question = ask(fromOpening({root}));
    addHands(question.services[0]);
    question.services[0].crew.basins = 2;
    question.services.push_back(question.services[0]);
    question.services[1].readyBy = at(50);
    question.mayBreakLimits = true;
    const Plan plan = planned(question);
    TaskId late = idOf(TaskKind::Rinse);
    late.service = 1;
    EXPECT_EQ(endOf(plan, late), 55);
    EXPECT_EQ(plan->worth.breach.minutes(), 2.5);
    ASSERT_EQ(plan->broken.size(), 1U);
    EXPECT_EQ(plan->broken[0].task, late);
    EXPECT_EQ(plan->broken[0].by, minutes{5});
    EXPECT_THAT(plan->broken[0].what, testing::HasSubstr("ready by the promised time"));
}

// What was missed is named; the rest goes on.
TEST(PlannerProgress, AMissedLookIsMadeLate)
{
    Question question =
        ask(fromOpening({makeZone("Root", minutes{20}, {minutes{30}, minutes{35}, minutes{45}})}));
    question.services[0].coats[0].zones[0].looks = service::Looks{.first = minutes{10},
                                                                  .every = {},
                                                                  .length = minutes{1},
                                                                  .tolerance = minutes{2},
                                                                  .until = minutes{11}};
    happened(question, apply(), 0, 20);
    question.now = at(36);
    EXPECT_FALSE(fits(question));
    question.mayBreakLimits = true;
    const Plan plan = planned(question);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Look)), 36);
    ASSERT_EQ(plan->broken.size(), 1U);
    EXPECT_EQ(plan->broken[0].by, minutes{4});
}

// A look of 5 whose time was over at 32, now 33: due if water comes at 35 or later, and then missed. Water
// now leaves no time for it. The back, at 33 - 23 = 10, is 1 past its most: that is broken and nothing else.
TEST(PlannerProgress, ALookThatIsNotDueIsNotMissed)
{
    Question question =
        ask(fromOpening({makeZone("Root", minutes{20}, {minutes{12}, minutes{14}, minutes{20}}),
                         makeZone("Back", minutes{1}, {minutes{1}, minutes{1}, minutes{9}})}));
    question.services[0].coats[0].zones[0].looks = service::Looks{.first = minutes{10},
                                                                  .every = {},
                                                                  .length = minutes{5},
                                                                  .tolerance = minutes{2},
                                                                  .until = minutes{11}};
    happened(question, apply(), 0, 20);
    happened(question, apply(1), 20, 23);
    question.now = at(33);
    question.mayBreakLimits = true;
    const Plan plan = planned(question);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Rinse)), 33);
    ASSERT_EQ(plan->broken.size(), 1U);
    EXPECT_EQ(plan->broken[0].task, apply(1));
    EXPECT_EQ(plan->broken[0].by, minutes{1});
    EXPECT_EQ(plan->worth.breach.minutes(), 10);
}

// Two rinses end 7 and 17 past the promise: it is broken once, by 17, at half a minute's harm each.
TEST(PlannerProgress, APromiseIsBrokenOnce)
{
    Service service =
        readyBy(40, {makeZone("Root", minutes{10}, exactly(20)), makeZone("Ends", minutes{10}, exactly(20))});
    service.notBefore = at(12);
    service.coats[0].groups.push_back(service.coats[0].groups[0]);
    service.coats[0].groups.back().name = "Second";
    service.coats[0].zones[1].group = 1;
    Question question = ask(service);
    question.mayBreakLimits = true;
    const Plan plan = planned(question);
    ASSERT_EQ(plan->broken.size(), 1U);
    EXPECT_EQ(plan->broken[0].task, idOf(TaskKind::Rinse, 1));
    EXPECT_EQ(plan->broken[0].by, minutes{17});
    EXPECT_EQ(plan->worth.breach.minutes(), 8.5);
}

// From a bowl that is used at once, within 9, three take 6 each: two end 3 and 9 past it, whatever began in
// between.
TEST(PlannerProgress, APotLifeIsPassedByEachApplicationOnce)
{
    const auto zone = [](const std::string& name) {
        return makeZone(name, minutes{6}, {minutes{20}, minutes{30}, minutes{60}});
    };
    Service service = fromOpening({zone("Root"), zone("Mids"), zone("Ends")});
    service.coats[0].bowls[0].potLife = minutes{9};
    Question question = ask(service);
    question.mayBreakLimits = true;
    const Plan plan = planned(question);
    ASSERT_EQ(plan->broken.size(), 2U);
    EXPECT_EQ(plan->worth.breach.minutes(), 12);  // Over at 12 and 18: 3 and 9 past the 9.
}

// A look that somebody makes just now, where nobody is said to make looks: a fact, and the rest is planned.
TEST(PlannerProgress, ARunningTaskThatNobodyDoesIsAFactToo)
{
    Question question = rootAndEnds(41);
    question.services[0].crew.hands[0].kinds = {service::Work::Apply, service::Work::Rinse};
    question.services[0].coats[0].zones[0].looks = service::Looks{.first = minutes{20},
                                                                  .every = {},
                                                                  .length = minutes{1},
                                                                  .tolerance = minutes{2},
                                                                  .until = minutes{25}};
    happened(question, apply(0), 0, 20);
    happened(question, apply(1), 25, 35);
    happened(question, idOf(TaskKind::Look), 40);
    int asked = 0;
    const auto answer = plan(question, {.conflicts = 100'000, .stop = [&] { return ++asked > 10'000; }});
    ASSERT_TRUE(answer) << answer.error().text;
    EXPECT_TRUE((*answer)->proved);
    EXPECT_EQ(startOf(*answer, idOf(TaskKind::Rinse)), 55);
}

// Wefts: two rinses run at the only basin already. The two to come still wait for one another.
TEST(PlannerProgress, ABasinTooFewInThePastIsNoBasinMoreInTheFuture)
{
    std::vector<Zone> zones;
    for (const char* name : {"One", "Two", "Three", "Four"})
        zones.push_back(makeZone(name, minutes{5}, {minutes{20}, minutes{30}, minutes{60}}));
    Service service = fromOpening(zones);
    service.head.kind = service::HeadKind::Wefts;
    service.head.piecesComeApart = true;
    for (std::size_t count = 1; count < 4; ++count) {
        addHands(service);
        service.coats[0].zones[count].group = count;
        service.coats[0].groups.push_back(service.coats[0].groups[0]);
        service.coats[0].groups[count].name = "Group " + std::to_string(count + 1);
    }
    Question question = ask(service);
    for (std::size_t zone = 0; zone < 4; ++zone)
        happened(question, apply(zone), 0, 5);
    happened(question, idOf(TaskKind::Rinse, 0), 30);
    happened(question, idOf(TaskKind::Rinse, 1), 30);
    question.now = at(31);
    const Plan plan = planned(question);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Rinse, 2)), 35);
    EXPECT_EQ(startOf(plan, idOf(TaskKind::Rinse, 3)), 40);
}

}  // namespace
}  // namespace core::stagger
