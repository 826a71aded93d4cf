#include "core/stagger/start_range.h"

#include "core/stagger/cures.h"
#include "core/stagger/safe_starts.h"
#include "tests/core/stagger/support.h"
#include "tests/oracle/brute_force.h"
#include "tests/oracle/checker.h"
#include "tests/oracle/figures.h"
#include "tests/oracle/random_service.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cstdlib>

// Starts that are wanted, and how late they can be. Hand-worked in minutes; the properties with fixed seeds
// unless RC_PARAMS says otherwise.

namespace core::stagger {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const bool seeded = ::setenv("RC_PARAMS", "seed=20260105 max_success=60", 0) == 0;

const TaskId toRoot = idOf(TaskKind::Apply, 0);
const TaskId toEnds = idOf(TaskKind::Apply, 1);

/// 10 on and 30 of development for the root, then 5 on and 15 for the ends: with one pair of hands the root
/// goes on at 0, the ends at 20, and the water is at 40.
Question rootAndEnds(oracle::Span rootSpan = {minutes{20}, minutes{30}, minutes{40}},
                     oracle::Span endsSpan = {minutes{10}, minutes{15}, minutes{20}})
{
    Zone first = makeZone("Root", minutes{10}, rootSpan);
    Zone second = makeZone("Ends", minutes{5}, endsSpan);
    return ask(fromOpening({first, second}));
}

// Without a promise everything moves along: nothing is lost but time.
TEST(WantedStart, MovesWhatHangsOnIt)
{
    const Plan plan = planned(wanting(rootAndEnds(), toRoot, at(12)));

    EXPECT_EQ(startOf(plan, toRoot), 12);
    EXPECT_EQ(startOf(plan, toEnds), 32);
    EXPECT_EQ(developmentOf(plan, 0), 30);
    EXPECT_EQ(developmentOf(plan, 1), 15);
}

// Ready by 45 the water is at 40 at the latest. A root begun at 8 gets 22 of its 30, for its water cannot
// wait.
TEST(WantedStart, CostsTargetsWhereThePromiseStands)
{
    Question question = rootAndEnds();
    question.services[0].readyBy = at(45);
    const Plan plan = planned(wanting(question, toRoot, at(8)));

    EXPECT_EQ(startOf(plan, toRoot), 8);
    EXPECT_EQ(developmentOf(plan, 0), 22);
    EXPECT_EQ(developmentOf(plan, 1), 15);
    EXPECT_EQ(deviationOf(plan), 8.0);
}

// While hands are away it starts later than is wanted.
TEST(WantedStart, IsABoundAndNoPin)
{
    Question question = rootAndEnds();
    question.services[0].crew.hands[0].away = {{.from = at(5), .until = at(30)}};

    EXPECT_EQ(startOf(planned(wanting(question, toRoot, at(3))), toRoot), 30);
}

TEST(WantedStart, SaysWhyNothingFits)
{
    Question question = rootAndEnds();
    question.services[0].readyBy = at(45);
    const NoPlan reason = refused(wanting(question, toRoot, at(11)));

    EXPECT_TRUE(reason.minimal);
    EXPECT_EQ(demandsOf(reason),
              "Root: not applied before the time that was set\nRoot: development of at least 20 min\n"
              "ready by the promised time\n");
}

// 10 is the latest: one minute earlier than what was wanted is the least change of all.
TEST(WantedStart, IsTheFirstThatACureGivesUp)
{
    Question question = rootAndEnds();
    question.services[0].readyBy = at(45);
    question = wanting(question, toRoot, at(11));
    const std::vector<Cure> cures = curesFor(question, refused(question));

    ASSERT_FALSE(cures.empty());
    EXPECT_EQ(cures[0].what(), "Let Root start 1 min earlier than was set for it");
    EXPECT_EQ(cures[0].steps[0].kind, CureKind::EarlierApply);
    EXPECT_EQ(cures[0].services[0].coats[0].zones[0].notBefore, at(10));
}

// Somebody put it on at 4 though 12 was wanted: nothing is passed by that, and nothing stands against it.
TEST(WantedStart, NeverStandsAgainstAFact)
{
    Question question = wanting(rootAndEnds(), toRoot, at(12));
    question.now = at(6);
    question.mayBreakLimits = true;
    happened(question, toRoot, 4);
    const Plan plan = planned(question);

    EXPECT_THAT(plan->broken, IsEmpty());
    EXPECT_EQ(startOf(plan, toEnds), 24);
}

// The root went on at 0 and has to be rinsed by 50, so the ends cannot wait for 45 and get their 10.
TEST(WantedStart, GivesWayWhereFactsLeaveNoChoice)
{
    Question question = wanting(rootAndEnds(), toEnds, at(45));
    question.now = at(12);
    question.mayBreakLimits = true;
    happened(question, toRoot, 0, 10);
    const Plan plan = planned(question);

    EXPECT_EQ(startOf(plan, toEnds), 35);
    ASSERT_EQ(plan->broken.size(), 1u);
    EXPECT_EQ(plan->broken[0].what, "Ends: not applied before the time that was set");
    EXPECT_EQ(plan->broken[0].by, minutes{10});
    EXPECT_FALSE(plan->broken[0].already);
}

TEST(WantedStart, IsTheEarliestSafeStart)
{
    const Question question = wanting(rootAndEnds(), toRoot, at(12));
    const std::vector<SafeStart> starts = safeStarts(question, planned(question));

    ASSERT_FALSE(starts.empty());
    EXPECT_EQ(starts[0].task, toRoot);
    EXPECT_EQ(starts[0].earliest, at(12));
}

// Ready by 45: water at 40, at least 20 before it and 10 on.
TEST(StartRange, EndsWhereALimitHoldsIt)
{
    Question question = rootAndEnds();
    question.services[0].readyBy = at(45);
    const auto range = startRangeOf(question, toRoot);

    ASSERT_TRUE(range);
    EXPECT_EQ(range->earliest, at(0));
    EXPECT_EQ(range->latest, at(10));
    EXPECT_TRUE(range->proved);
    EXPECT_EQ(demandsOf(range->beyond), "Root: development of at least 20 min\nready by the promised time\n");
}

TEST(StartRange, IsOpenWhereNothingIsTiedToTheClock)
{
    const auto range = startRangeOf(rootAndEnds(), toRoot);

    ASSERT_TRUE(range);
    EXPECT_EQ(range->latest, std::nullopt);
    EXPECT_THAT(range->beyond.demands, IsEmpty());
}

TEST(StartRange, LeavesAsideWhatIsWantedOfItAlready)
{
    Question question = rootAndEnds();
    question.services[0].readyBy = at(45);

    EXPECT_EQ(startRangeOf(wanting(question, toRoot, at(7)), toRoot), startRangeOf(question, toRoot));
    EXPECT_TRUE(startRangeOf(wanting(question, toRoot, at(59)), toRoot));
    EXPECT_FALSE(startRangeOf(wanting(question, toRoot, at(59)), toEnds));
}

TEST(StartRange, IsNoneOfWhatHasBegun)
{
    Question question = rootAndEnds();
    question.now = at(6);
    happened(question, toRoot, 4);

    EXPECT_FALSE(startRangeOf(question, toRoot));
    EXPECT_TRUE(startRangeOf(question, toEnds));
}

TEST(StartRange, SaysWhereItWasStopped)
{
    Question question = rootAndEnds();
    question.services[0].readyBy = at(45);
    int asked = 0;
    const auto range =
        startRangeOf(question, toRoot, {.conflicts = 0, .stop = [&asked] { return ++asked > 0; }});

    EXPECT_TRUE(!range || !range->proved || range->latest == at(10));
}

struct Asked {
    Question question;
    Plan plan;
    TaskId zone;
};

/// A question that fits, and an application of it that is open.
Asked anyPlanned(bool mayBeUncertain = true)
{
    const auto seed = *rc::gen::inRange<std::uint64_t>(1, 1'000'000);
    Question question = oracle::randomQuestion(
        seed,
        {.mostHeads = 2, .mostTasks = 10, .mostZones = 3, .uncertain = mayBeUncertain && seed % 2 == 0});
    auto answer = plan(question);
    RC_PRE(answer.has_value());
    std::vector<TaskId> open;
    for (const PlannedTask& task : (*answer)->tasks)
        if (task.id.kind == TaskKind::Apply)
            open.push_back(task.id);
    const TaskId zone = *rc::gen::elementOf(open);
    return {std::move(question), *std::move(answer), zone};
}

// Where lengths are uncertain it may: it binds also when something before it is over sooner than usual.
RC_GTEST_PROP(WantedStart, OfThePlanItselfChangesNothing, ())
{
    const Asked asked = anyPlanned(false);
    const auto again = plan(wanting(asked.question, asked.zone, asked.plan.find(asked.zone)->start));
    RC_LOG() << oracle::questionText(asked.question);
    RC_ASSERT(again.has_value());
    const bool sameTasks = (*again)->tasks == asked.plan->tasks;
    RC_ASSERT(sameTasks);
    const bool sameWorth = (*again)->worth == asked.plan->worth;
    RC_ASSERT(sameWorth);
}

RC_GTEST_PROP(WantedStart, IsKeptAndSoundOrRefusedForIt, ())
{
    const Asked asked = anyPlanned();
    const Seconds by{*rc::gen::inRange(1, 3000)};
    const Instant wanted = asked.plan.find(asked.zone)->start + by;
    const Question question = wanting(asked.question, asked.zone, wanted);
    const auto answer = plan(question);
    RC_LOG() << oracle::questionText(question);
    if (answer) {
        RC_ASSERT(answer->find(asked.zone)->start >= wanted);
        RC_ASSERT(oracle::violations(question, answer->data()).empty());
        const bool noMore = (*answer)->give <= asked.plan->give;
        RC_ASSERT(noMore);
        return;
    }
    RC_ASSERT(std::ranges::any_of(answer.error().demands, [&](const Demand& demand) {
        return demand.kind == DemandKind::NotBefore && demand.task == asked.zone;
    }));
}

RC_GTEST_PROP(StartRange, IsSharpToTheSecond, ())
{
    const Asked asked = anyPlanned();
    const auto range = startRangeOf(asked.question, asked.zone);
    RC_LOG() << oracle::questionText(asked.question);
    RC_ASSERT(range.has_value());
    RC_ASSERT(range->proved);
    RC_ASSERT(range->earliest == asked.plan.find(asked.zone)->start);
    const auto fitsFrom = [&](Instant moment) {
        return plan(wanting(asked.question, asked.zone, moment)).has_value();
    };
    if (!range->latest) {
        RC_ASSERT(fitsFrom(asked.plan->end + std::chrono::hours{5}));
        return;
    }
    RC_ASSERT(fitsFrom(*range->latest));
    RC_ASSERT(!fitsFrom(*range->latest + Seconds{1}));
    RC_ASSERT(!range->beyond.demands.empty());
}

/// Two zones of a few seconds, of which the second is wanted later.
Question tiny(std::uint64_t seed)
{
    const auto bit = [seed](int place) { return static_cast<int>(seed >> place & 1); };
    const auto span = [](int least, int target, int most) {
        return oracle::Span{Seconds{least}, Seconds{target}, Seconds{most}};
    };
    Zone one = makeZone("One", Seconds{1 + bit(0)}, span(1, 2 + bit(1), 4));
    Zone two = makeZone("Two", Seconds{1}, span(1, 1 + bit(2), 3));
    (bit(3) == 0 ? one : two).notBefore = opening + Seconds{1 + bit(4) + 2 * bit(5)};
    Service made = oracle::makeService({one, two}, Seconds{1});
    made.notBefore = opening;
    made.readyBy = opening + Seconds{6 + 2 * bit(7)};
    Question question = ask(made);
    if (bit(6) == 1)
        question.preference = Preference::EndEarly;
    return question;
}

TEST(WantedStart, AgreesWithTryingEverything)
{
    int planned = 0;
    int refused = 0;
    for (std::uint64_t seed = 0; seed < 256; ++seed) {
        const Question question = tiny(seed);
        SCOPED_TRACE(oracle::questionText(question));
        const auto tried = oracle::planByTryingAll(question);
        const auto answer = plan(question);
        ASSERT_EQ(answer.has_value(), tried.has_value());
        (tried ? planned : refused) += 1;
        if (!tried)
            continue;
        EXPECT_EQ((*answer)->worth, tried->worth);
        EXPECT_EQ(oracle::startsInOrder(question, answer->data()), oracle::startsInOrder(question, *tried));
    }
    EXPECT_GT(planned, 50);
    EXPECT_GT(refused, 0);
}

}  // namespace
}  // namespace core::stagger
