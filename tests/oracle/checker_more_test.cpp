#include "tests/oracle/checker.h"

#include "tests/oracle/plan_from_starts.h"
#include "tests/oracle/service_maker.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

// What the service of checker_test.cpp has not: two coats, two basins, looks made together, and facts. All
// times are minutes from the opening.

namespace oracle {
namespace {

using core::service::Service;
using core::service::Zone;
using core::stagger::PlanData;
using core::stagger::Question;
using core::stagger::TaskId;
using core::stagger::TaskKind;
using core::stagger::TaskState;
using std::chrono::minutes;
using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

TaskId idIn(TaskKind kind, std::size_t coat, std::size_t item, std::size_t part = 0)
{
    return {.service = 0, .coat = coat, .kind = kind, .item = item, .part = part};
}

std::vector<std::string> judge(const Question& question, const Starts& starts)
{
    const auto plan = planFromStarts(question, starts);
    if (!plan)
        return {"there are not enough hands"};
    return violations(question, *plan);
}

/// One zone twice over, 5 to 10 between the coats. Neither is dried or looked at.
Question twoCoats()
{
    Service made =
        makeService({makeZone("All", minutes{10}, {minutes{20}, minutes{20}, minutes{25}})}, minutes{5});
    made.coats.push_back(made.coats.front());
    made.coats[1].bowls[0].mix = minutes{2};
    made.coats[0].gapLeast = minutes{5};
    made.coats[0].gapMost = minutes{10};
    made.notBefore = opening;
    return ask(made);
}

/// The first coat is over at 35 (applied until 10, water at 30).
Starts secondCoatAt(int mixed, int applied)
{
    return {{idIn(TaskKind::Apply, 0, 0), at(0)},
            {idIn(TaskKind::Rinse, 0, 0), at(30)},
            {idIn(TaskKind::Mix, 1, 0), at(mixed)},
            {idIn(TaskKind::Apply, 1, 0), at(applied)},
            {idIn(TaskKind::Rinse, 1, 0), at(applied + 30)}};
}

TEST(Checker, KeepsCoatsApart)
{
    EXPECT_THAT(judge(twoCoats(), secondCoatAt(38, 40)), IsEmpty());
    EXPECT_THAT(judge(twoCoats(), secondCoatAt(37, 39)), Contains(HasSubstr("too short a gap")));
    EXPECT_THAT(judge(twoCoats(), secondCoatAt(44, 46)), Contains(HasSubstr("too long a gap")));
    // Even mixing waits for the coat before, whoever is free to do it: what is mixed depends on what it did.
    Question helped = twoCoats();
    helped.services[0].crew.hands.push_back({.name = "Hands 2", .away = {}, .kinds = {}});
    EXPECT_THAT(judge(helped, secondCoatAt(34, 40)), Contains(StartsWith("rule 8: Mix")));
}

TEST(Checker, CountsTheGapFromTheEndOfDrying)
{
    Question question = twoCoats();
    question.services[0].coats[0].dryUnattended = minutes{3};
    Starts starts = secondCoatAt(41, 43);
    starts[idIn(TaskKind::Dry, 0, 0)] = at(35);  // Dry at 38, without hands.
    EXPECT_THAT(judge(question, starts), IsEmpty());
    starts[idIn(TaskKind::Dry, 0, 0)] = at(36);
    EXPECT_THAT(judge(question, starts), Contains(HasSubstr("too short a gap")));
}

/// Two pieces in rinse groups of their own, both looked at once, two pairs of hands.
Question twoPieces(bool comeApart)
{
    std::vector<Zone> zones;
    for (const char* name : {"Left", "Right"}) {
        zones.push_back(makeZone(name, minutes{10}, {minutes{20}, minutes{20}, minutes{40}}));
        zones.back().looks = core::service::Looks{.first = minutes{10},
                                                  .every = {},
                                                  .length = minutes{2},
                                                  .tolerance = minutes{1},
                                                  .until = minutes{20}};
    }
    Service made = makeService(zones, minutes{5});
    made.coats[0].zones[1].group = 1;
    made.coats[0].groups.push_back(made.coats[0].groups.front());
    made.coats[0].groups.back().name = "Others";
    made.head.piecesComeApart = comeApart;
    made.crew.hands.push_back({.name = "Hands 2", .away = {}, .kinds = {}});
    made.crew.basins = 2;
    made.notBefore = opening;
    return ask(made);
}

Starts atOnce()
{
    return {{idIn(TaskKind::Apply, 0, 0), at(0)},    {idIn(TaskKind::Apply, 0, 1), at(0)},
            {idIn(TaskKind::Look, 0, 0, 0), at(20)}, {idIn(TaskKind::Look, 0, 1, 0), at(21)},
            {idIn(TaskKind::Rinse, 0, 0), at(30)},   {idIn(TaskKind::Rinse, 0, 1), at(30)}};
}

TEST(Checker, LetsOnlyPiecesThatComeApartBeAtTwoBasins)
{
    EXPECT_THAT(judge(twoPieces(true), atOnce()), IsEmpty());
    EXPECT_THAT(judge(twoPieces(false), atOnce()), Contains(StartsWith("rule 7: Rinse Others")));
}

TEST(Checker, CountsBasins)
{
    Question question = twoPieces(true);
    PlanData plan = *planFromStarts(question, atOnce());
    EXPECT_EQ(plan.tasks.back().basin, 1U);
    question.services[0].crew.basins = 1;
    EXPECT_THAT(violations(question, plan), Contains(HasSubstr("has no basin")));
    plan.tasks.back().basin = 0;
    EXPECT_THAT(violations(question, plan), Contains(HasSubstr("are at one basin at once")));
}

TEST(Checker, LetsLooksOnOneHeadBeMadeTogether)
{
    const PlanData plan = *planFromStarts(twoPieces(true), atOnce());
    for (const auto& task : plan.tasks)
        if (task.id.kind == TaskKind::Look) {
            EXPECT_EQ(task.hands, 0U);
        }
}

/// The left piece has been applied for 9 and the right is being applied since 5; it is 12 now.
Question live()
{
    Question question = twoPieces(true);
    question.now = at(12);
    question.progress.tasks = {
        {.id = idIn(TaskKind::Apply, 0, 0), .start = at(0), .end = at(9), .plannedEnd = {}},
        {.id = idIn(TaskKind::Apply, 0, 1), .start = at(5), .end = {}, .plannedEnd = at(15)}};
    return question;
}

PlanData livePlan(int water)
{
    Starts starts{{idIn(TaskKind::Apply, 0, 0), at(0)},     {idIn(TaskKind::Apply, 0, 1), at(5)},
                  {idIn(TaskKind::Look, 0, 0, 0), at(19)},  {idIn(TaskKind::Look, 0, 1, 0), at(25)},
                  {idIn(TaskKind::Rinse, 0, 0), at(water)}, {idIn(TaskKind::Rinse, 0, 1), at(36)}};
    const Question question = live();
    PlanData plan = *planFromStarts(question, starts);
    for (auto& task : plan.tasks) {
        if (task.id == idIn(TaskKind::Apply, 0, 0)) {
            task.state = TaskState::Done;
            task.end = at(9);
            task.hands.reset();
        }
        if (task.id == idIn(TaskKind::Apply, 0, 1))
            task.state = TaskState::Running;
    }
    plan.zones[0].applicationEnd = plan.zones[0].clockStart = at(9);
    plan.zones[0].quickestHeld = plan.zones[0].slowestHeld = minutes{9};
    plan.worth.deviation.hundredthSeconds = (water - 29 + 36 - 35) * 6000;
    plan.provedBound = plan.worth;
    return plan;
}

// The left piece was over 1 early, which the service does not allow for, and started before now.
TEST(Checker, ExemptsFacts)
{
    EXPECT_THAT(violations(live(), livePlan(30)), IsEmpty());
}

TEST(Checker, BindsWhatIsStillOpen)
{
    EXPECT_THAT(violations(live(), livePlan(28)), Contains(StartsWith("rule 2: Left, develops less")));
    EXPECT_THAT(violations(live(), livePlan(50)), Contains(StartsWith("rule 2: Left, develops longer")));
    PlanData other = livePlan(30);
    other.tasks.front().start = at(1);
    EXPECT_THAT(violations(live(), other), Contains(StartsWith("facts")));
}

TEST(Checker, LetsALimitBeBrokenOnlyWhereThePlanSaysSo)
{
    Question question = live();
    question.mayBreakLimits = true;
    PlanData plan = livePlan(50);
    plan.worth.breach.hundredthSeconds = 60'000;  // 1 min past its most, at 10 a minute.
    plan.provedBound = plan.worth;
    EXPECT_THAT(violations(question, plan), Contains(StartsWith("rule 2: Left, develops longer")));
    plan.broken.push_back({.task = idIn(TaskKind::Apply, 0, 0),
                           .what = std::string{"Left: 41 min development"},
                           .by = minutes{1},
                           .already = false});
    EXPECT_THAT(violations(question, plan), IsEmpty());
}

TEST(Checker, LetsWhatHasHappenedBePastALimit)
{
    PlanData plan = livePlan(30);
    plan.broken.push_back({.task = idIn(TaskKind::Apply, 0, 0),
                           .what = std::string{"Left: applied too late"},
                           .by = minutes{1},
                           .already = true});
    EXPECT_THAT(violations(live(), plan), IsEmpty());

    plan.broken.front().task = idIn(TaskKind::Rinse, 0, 0);  // Which is still open.
    EXPECT_THAT(violations(live(), plan), Contains(StartsWith("worth")));

    Question question = live();
    question.mayBreakLimits = true;
    PlanData longer = livePlan(50);  // Too long, which is no fact.
    longer.broken.push_back({.task = idIn(TaskKind::Apply, 0, 0),
                             .what = std::string{"Left: applied too late"},
                             .by = minutes{1},
                             .already = true});
    EXPECT_THAT(violations(question, longer), Contains(StartsWith("rule 2: Left, develops longer")));
}

TEST(Checker, KnowsHowLongWhatRunsWillTake)
{
    Question question = live();
    question.services[0].coats[0].zones[1].apply = {minutes{8}, minutes{10}, minutes{14}};
    question.now = at(17);  // 12 gone of what usually takes 10: it is taken to end now.
    EXPECT_THAT(violations(question, livePlan(30)), Contains(HasSubstr("does not end then")));
}

TEST(Checker, LeavesOutWhatWasDropped)
{
    Question question = live();
    question.progress.dropped.push_back(idIn(TaskKind::Look, 0, 0, 0));
    EXPECT_THAT(violations(question, livePlan(30)), Contains(HasSubstr("was dropped")));
    PlanData plan = livePlan(30);
    std::erase_if(plan.tasks, [](const auto& task) { return task.id == idIn(TaskKind::Look, 0, 0, 0); });
    EXPECT_THAT(violations(question, plan), IsEmpty());
}

/// Two zones from a bowl that nobody was seen to mix; the first is applied, from 0 to 10.
Question halfApplied()
{
    const Span span{minutes{20}, minutes{20}, minutes{40}};
    Service made =
        makeService({makeZone("Left", minutes{10}, span), makeZone("Right", minutes{10}, span)}, minutes{5});
    made.coats[0].bowls[0] = {.name = "Bowl", .mix = minutes{2}, .potLife = minutes{15}, .note = {}};
    made.notBefore = opening;
    Question question = ask(made);
    question.now = at(10);
    question.progress.tasks = {
        {.id = idIn(TaskKind::Apply, 0, 0), .start = at(0), .end = at(10), .plannedEnd = {}}};
    question.progress.dropped = {idIn(TaskKind::Mix, 0, 0)};
    return question;
}

/// The second from 10 to 20, water at 40.
PlanData otherHalf(const Question& question)
{
    const Starts starts{{idIn(TaskKind::Apply, 0, 0), at(0)},
                        {idIn(TaskKind::Apply, 0, 1), at(10)},
                        {idIn(TaskKind::Rinse, 0, 0), at(40)}};
    PlanData plan = *planFromStarts(question, starts);
    plan.tasks.front().state = TaskState::Done;
    plan.tasks.front().hands.reset();
    return plan;
}

TEST(Checker, CountsPotLifeFromNothingWhereNobodySawTheBowlBeingMixed)
{
    Question question = halfApplied();
    const PlanData plan = otherHalf(question);
    EXPECT_THAT(violations(question, plan), IsEmpty());
    question.services[0].coats[0].bowls[0].mix = minutes{0};  // From the first application: 20.
    EXPECT_THAT(violations(question, plan), Contains(StartsWith("rule 1: Right, applied past")));
}

TEST(Checker, CountsWasteToTheEndOnceSomethingHasBegun)
{
    Question question = halfApplied();
    question.services[0].readyBy = at(60);
    question.preference = core::stagger::Preference::StartLate;
    PlanData plan = otherHalf(question);
    plan.worth.waste = minutes{35};  // From now to 45.
    plan.provedBound = plan.worth;
    EXPECT_THAT(violations(question, plan), IsEmpty());
    plan.worth.waste = minutes{60};
    plan.provedBound = plan.worth;
    EXPECT_THAT(violations(question, plan), Contains(StartsWith("worth")));
}

// One after the other under one water at 30: the second takes 2 to 6 where it usually takes 4. The
// water cannot wait for it, as the first may develop for 18 at the most.
TEST(Checker, KnowsWhatAPlanHoldsFor)
{
    Zone second = makeZone("Second", minutes{4}, {minutes{12}, minutes{14}, minutes{20}});
    second.apply.quickest = minutes{2};
    second.apply.slowest = minutes{6};
    const Span span{minutes{10}, minutes{18}, minutes{18}};
    Service made = makeService({makeZone("First", minutes{4}, span), second}, minutes{2});
    made.notBefore = opening;
    const Question question = ask(made);
    const Starts starts{{idIn(TaskKind::Apply, 0, 0), at(8)},
                        {idIn(TaskKind::Apply, 0, 1), at(12)},
                        {idIn(TaskKind::Rinse, 0, 0), at(30)}};
    PlanData plan = *planFromStarts(question, starts);
    // The water comes at 30, which leaves the second 12 when it is over at 18.
    plan.give = 100;
    plan.zones[1].quickestHeld = minutes{2};
    plan.zones[1].slowestHeld = minutes{6};
    EXPECT_THAT(violations(question, plan), IsEmpty());

    Question tighter = question;
    tighter.services[0].coats[0].zones[1].develop.least = minutes{13};
    EXPECT_THAT(violations(tighter, plan), Contains(StartsWith("guarantee")));
    plan.give = 50;  // Up to 5 min; 17 + 13 are 30.
    plan.zones[1].quickestHeld = minutes{3};
    plan.zones[1].slowestHeld = minutes{5};
    EXPECT_THAT(violations(tighter, plan), IsEmpty());
}

}  // namespace
}  // namespace oracle
