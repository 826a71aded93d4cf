#include "core/run/planning.h"

#include "core/run/remember.h"
#include "core/stagger/carried_on.h"
#include "tests/core/run/support.h"

#include <gtest/gtest.h>

#include <random>

// States while a plan is still being worked out: the planner says "not yet" until it is let.

namespace core::run {
namespace {

using Kind = Answer::Kind;
using stagger::TaskState;

/// Plans at once, until it is held up: then it has answers to what it answered before, and no others.
class HeldUp {
public:
    explicit HeldUp(Planner planner = inTurn)
        : m_remembering{remembering([this, planner = std::move(planner)](const stagger::Question& question,
                                                                         const stagger::Budget& budget) {
            asked.push_back(question);
            return held ? std::nullopt : planner(question, budget);
        })}
    {
    }
    HeldUp(const HeldUp&) = delete;
    HeldUp& operator=(const HeldUp&) = delete;

    [[nodiscard]] Planner planner() const { return m_remembering; }

    bool held = false;
    std::vector<stagger::Question> asked;

private:
    Planner m_remembering;
};

/// A run of `wig` whose planner can be held up, and one that is told the same and never waits.
struct Pair {
    explicit Pair(const Service& service, const Planner& planner = inTurn)
        : plans{planner}
        , waiting{service}
        , prompt{service}
    {
        waiting.setup.planner = plans.planner();
        prompt.setup.planner = remembering(planner);
    }
    void mustTell(Kind kind, TaskId task, Instant now)
    {
        EXPECT_FALSE(waiting.at(now).lanes.empty());  // As a session, which looks before it takes an answer.
        waiting.mustTell(kind, task, now);
        prompt.mustTell(kind, task, now);
    }
    HeldUp plans;
    Teller waiting;
    Teller prompt;
};

bool asksFor(const State& state, Prompt::Asks asks, const TaskId& task)
{
    return findPrompt(state, asks, task) != nullptr;
}

TEST(Pending, WhatWasAnsweredCountsBeforeThereIsAPlanForIt)
{
    Pair runs{wig()};
    runs.mustTell(Kind::Start, apply(0), clockAt(0));
    runs.mustTell(Kind::Finish, apply(0), clockAt(10));
    EXPECT_TRUE(asksFor(runs.waiting.at(clockAt(10)), Prompt::Asks::Start, apply(1)));
    runs.plans.held = true;
    runs.mustTell(Kind::Start, apply(1), clockAt(10));

    const State state = runs.waiting.at(clockAt(12));
    EXPECT_TRUE(state.beingPlanned);
    EXPECT_EQ(state.lanes[0].stage, Stage::Developing);
    EXPECT_EQ(state.lanes[0].development, minutes(2));
    EXPECT_EQ(state.lanes[1].stage, Stage::Applying);
    EXPECT_EQ(state.lanes, runs.prompt.at(clockAt(12)).lanes);
    EXPECT_EQ(state.limits, runs.prompt.at(clockAt(12)).limits);
    EXPECT_FALSE(asksFor(state, Prompt::Asks::Start, apply(1))) << "it has begun";
    EXPECT_TRUE(asksFor(state, Prompt::Asks::Finish, apply(1)));
    EXPECT_TRUE(asksFor(state, Prompt::Asks::Start, apply(2)));
    ASSERT_TRUE(state.plan);
    EXPECT_EQ(state.plan->find(apply(1))->state, TaskState::Running);
    EXPECT_EQ(state.plan->find(apply(1))->start, clockAt(10));
    EXPECT_FALSE((*state.plan)->proved);
}

TEST(Pending, WhatChangedIsSaidWhenThePlanIsThere)
{
    Pair runs{wig()};
    runs.mustTell(Kind::Start, apply(0), clockAt(0));
    runs.plans.held = true;
    runs.mustTell(Kind::Finish, apply(0), clockAt(15));
    EXPECT_TRUE(runs.waiting.at(clockAt(15)).changes.empty());
    runs.plans.held = false;
    EXPECT_FALSE(runs.waiting.at(clockAt(15)).changes.empty());
    EXPECT_EQ(runs.waiting.at(clockAt(15)), runs.prompt.at(clockAt(15)));
}

TEST(Pending, WhatWasDueStaysDueSinceThen)
{
    Pair runs{wig()};
    for (std::size_t each = 0; each < 3; ++each) {
        runs.mustTell(Kind::Start, apply(each), clockAt(0));
        runs.mustTell(Kind::Finish, apply(each), clockAt(5));
    }
    // Water is due at 5 + 35 = 40; an answer about something else comes at 43.
    runs.plans.held = true;
    runs.mustTell(Kind::Leave, look(2), clockAt(43));
    const State state = runs.waiting.at(clockAt(43));
    EXPECT_TRUE(state.beingPlanned);
    const auto* water = findPrompt(state, Prompt::Asks::Start, task(TaskKind::Rinse));
    ASSERT_TRUE(water);
    EXPECT_EQ(water->due, clockAt(40));
}

TEST(Pending, WhatHadToWaitIsNotLate)
{
    Pair runs{wig()};
    runs.mustTell(Kind::Start, apply(0), clockAt(0));
    runs.plans.held = true;
    runs.mustTell(Kind::Finish, apply(0), clockAt(15));
    const State state = runs.waiting.at(clockAt(15));
    EXPECT_TRUE(state.beingPlanned);
    ASSERT_TRUE(asksFor(state, Prompt::Asks::Start, apply(1)));
    EXPECT_EQ(findPrompt(state, Prompt::Asks::Start, apply(1))->due, clockAt(15));
}

TEST(Pending, WaterIsNotAskedForBeforeAZoneThatCameLate)
{
    Pair runs{wig()};
    runs.mustTell(Kind::Start, apply(0), clockAt(0));
    runs.mustTell(Kind::Finish, apply(0), clockAt(5));
    runs.mustTell(Kind::Start, apply(1), clockAt(5));
    runs.mustTell(Kind::Finish, apply(1), clockAt(11));
    runs.mustTell(Kind::Start, apply(2), clockAt(11));
    EXPECT_EQ(findPrompt(runs.waiting.at(clockAt(12)), Prompt::Asks::Start, task(TaskKind::Rinse))->due,
              clockAt(40));
    // Ends takes 14 min longer than usual, and 22 min from there are past what Mids may have: 46.
    runs.plans.held = true;
    runs.mustTell(Kind::Finish, apply(2), clockAt(30));
    const State state = runs.waiting.at(clockAt(30));
    ASSERT_TRUE(state.beingPlanned);
    EXPECT_EQ(findPrompt(state, Prompt::Asks::Start, task(TaskKind::Rinse))->due, clockAt(46));
    EXPECT_EQ(state.plan->zone(0, 0, 2)->water, clockAt(46));
    EXPECT_EQ(findPrompt(state, Prompt::Asks::Look, look(2))->due, clockAt(38));
}

TEST(Pending, APlanThatIsMadeAgainLeavesTheOneBeforeInForceUntilItIsThere)
{
    Pair runs{wig()};
    EXPECT_EQ(runs.waiting.at(clockAt(0, 40)).plan->find(apply(0))->start, clockAt(0, 30));
    runs.plans.held = true;
    const State state = runs.waiting.at(clockAt(1, 10));
    EXPECT_FALSE(state.beingPlanned) << "it is a plan for all that was told";
    EXPECT_EQ(state.plan->find(apply(0))->start, clockAt(0, 30));
    EXPECT_EQ(findPrompt(state, Prompt::Asks::Start, apply(0))->due, clockAt(0));
    runs.plans.held = false;
    EXPECT_EQ(runs.waiting.at(clockAt(1, 10)).plan->find(apply(0))->start, clockAt(1));
}

TEST(Pending, TheNewestIsAskedForFirst)
{
    Pair runs{wig()};
    EXPECT_TRUE(runs.waiting.at(clockAt(0)).plan);
    runs.plans.held = true;
    runs.mustTell(Kind::Start, apply(0), clockAt(0));
    runs.mustTell(Kind::Finish, apply(0), clockAt(9));
    runs.plans.asked.clear();
    const State state = runs.waiting.at(clockAt(10));
    ASSERT_FALSE(runs.plans.asked.empty());
    EXPECT_EQ(runs.plans.asked.front().now, clockAt(9));
    EXPECT_EQ(runs.plans.asked.front().progress, state.progress);
    EXPECT_TRUE(asksFor(state, Prompt::Asks::Start, apply(1))) << "by the plan of two facts ago";
}

TEST(Pending, WhatIsTakenBackIsAskedForAgainAtOnce)
{
    Pair runs{wig()};
    runs.mustTell(Kind::Start, apply(0), clockAt(0));
    EXPECT_FALSE(asksFor(runs.waiting.at(clockAt(1)), Prompt::Asks::Start, apply(0)));
    runs.plans.held = true;
    runs.mustTell(Kind::UndoLast, {}, clockAt(1));
    const State state = runs.waiting.at(clockAt(1));
    EXPECT_TRUE(asksFor(state, Prompt::Asks::Start, apply(0)));
    EXPECT_EQ(state.lanes[0].stage, Stage::Waiting);
    EXPECT_EQ(state.plan->find(apply(1))->start, clockAt(11)) << "after it, by the same hands";
}

TEST(Pending, WithoutAnyPlanTheClocksOfTheZonesGoOn)
{
    Pair runs{wig()};
    runs.plans.held = true;
    runs.waiting.mustTell(Kind::Start, apply(0), clockAt(0));
    runs.waiting.mustTell(Kind::Finish, apply(0), clockAt(10));
    const State state = runs.waiting.at(clockAt(50));
    EXPECT_TRUE(state.beingPlanned);
    EXPECT_FALSE(state.plan);
    EXPECT_FALSE(state.finished);
    EXPECT_EQ(state.lanes[0].development, minutes(40));
    EXPECT_EQ(findPrompt(state, Prompt::Asks::Start, task(TaskKind::Rinse))->due, clockAt(45));
    EXPECT_EQ(state.limits.size(), 1U);
}

TEST(Pending, BrokenLimitsStayNamed)
{
    Pair runs{wig()};
    runs.mustTell(Kind::Start, apply(0), clockAt(0));
    runs.mustTell(Kind::Finish, apply(0), clockAt(10));
    runs.mustTell(Kind::Start, apply(1), clockAt(10));
    runs.mustTell(Kind::Finish, apply(1), clockAt(16));
    runs.mustTell(Kind::Start, apply(2), clockAt(40));
    runs.mustTell(Kind::Finish, apply(2), clockAt(45));
    ASSERT_TRUE(runs.waiting.at(clockAt(45)).reason);
    runs.plans.held = true;
    runs.mustTell(Kind::Leave, look(2), clockAt(53));
    EXPECT_TRUE(runs.waiting.at(clockAt(53)).beingPlanned);
    EXPECT_EQ(runs.waiting.at(clockAt(53)).reason, runs.prompt.at(clockAt(53)).reason);
}

/// One of the answers that would be taken, or an undo.
Answer anyAnswer(const State& state, std::mt19937& random)
{
    Answer answer{.kind = Kind::UndoLast};
    if (state.prompts.empty() || random() % 8 == 0)
        return answer;
    const Prompt& asked = state.prompts[random() % state.prompts.size()];
    answer.task = asked.task;
    answer.kind = asked.asks == Prompt::Asks::Start ? Kind::Start
        : asked.asks == Prompt::Asks::Finish        ? Kind::Finish
                                                    : Kind::Leave;
    if (random() % 10 == 0)
        answer.kind = Kind::Drop;
    return answer;
}

/// 24 runs of random answers, the planner held up most of the time.
TEST(Pending, ARunThatWaitsForItsPlansComesToTheSame)
{
    std::mt19937 random{20260302};
    int pending = 0;
    for (int run = 0; run < 24; ++run) {
        Pair runs{run % 3 == 0 ? wig() : longWig(), run % 2 == 0 ? Planner{inTurn} : Planner{stagger::plan}};
        Instant now = clockAt(0);
        EXPECT_EQ(runs.waiting.at(now), runs.prompt.at(now));
        for (int told = 0; told < 25; ++told) {
            now += Seconds{static_cast<std::int64_t>(random() % 400)};
            runs.plans.held = random() % 4 != 0;
            const State before = runs.waiting.at(now);
            const Answer answer = anyAnswer(before, random);
            EXPECT_EQ(runs.waiting.tell(answer, now), runs.prompt.tell(answer, now));
            const State state = runs.waiting.at(now);
            const State exact = runs.prompt.at(now);
            pending += state.beingPlanned ? 1 : 0;
            EXPECT_EQ(state.progress, exact.progress);
            for (std::size_t lane = 0; lane < state.lanes.size(); ++lane) {
                EXPECT_EQ(state.lanes[lane].stage, exact.lanes[lane].stage);
                EXPECT_EQ(state.lanes[lane].development, exact.lanes[lane].development);
            }
            for (const Prompt& asked : state.prompts)
                EXPECT_TRUE(asked.asks != Prompt::Asks::Start || !state.progress.find(asked.task));
        }
        runs.plans.held = false;
        EXPECT_EQ(runs.waiting.at(now), runs.prompt.at(now)) << "run " << run;
    }
    EXPECT_GT(pending, 200);
}

}  // namespace
}  // namespace core::run
