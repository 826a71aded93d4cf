#include "core/run/remember.h"

#include "tests/core/run/support.h"

#include <gtest/gtest.h>

namespace core::run {
namespace {

struct Counted {
    std::shared_ptr<int> calls = std::make_shared<int>(0);
    tl::expected<Plan, stagger::NoPlan> operator()(const stagger::Question& question,
                                                   const stagger::Budget& budget) const
    {
        ++*calls;
        return inTurn(question, budget);
    }
};

TEST(Remember, TheSameStateIsPlannedOnce)
{
    const Counted counted;
    Teller teller{wig()};
    teller.setup.planner = remembering(counted);
    teller.mustTell(Answer::Kind::Start, apply(0), clockAt(1));
    const State first = teller.at(clockAt(2));
    const int calls = *counted.calls;
    EXPECT_GT(calls, 0);
    EXPECT_EQ(teller.at(clockAt(2)), first);
    EXPECT_EQ(teller.at(clockAt(3)).plan, first.plan);
    EXPECT_EQ(*counted.calls, calls);
}

TEST(Remember, SafeStartsAreLookedForOnceAPlan)
{
    int calls = 0;
    Teller teller{wig()};
    teller.setup.planner = stagger::plan;
    teller.setup.safeStarts =
        remembering(SafeStarts{[&calls](const stagger::Question& question, const stagger::Plan& plan) {
            ++calls;
            return stagger::safeStarts(question, plan);
        }});
    teller.mustTell(Answer::Kind::Start, apply(0), clockAt(1));
    calls = 0;
    for (int second = 0; second < 30; ++second)
        EXPECT_FALSE(teller.at(clockAt(2) + Seconds{second}).prompts.empty());
    EXPECT_EQ(calls, 1);
    teller.mustTell(Answer::Kind::Finish, apply(0), clockAt(9));
    EXPECT_TRUE(teller.at(clockAt(9)).prompts.front().safe);
    EXPECT_EQ(calls, 2);
}

TEST(Remember, AnotherQuestionIsAsked)
{
    const Counted counted;
    const Planner planner = remembering(counted);
    stagger::Question question{.services = {wig()}, .progress = {}, .now = clockAt(0)};
    const auto first = planner(question, {});
    question.now = clockAt(1);
    const auto second = planner(question, {});
    EXPECT_EQ(*counted.calls, 2);
    EXPECT_NE(*first, *second);
}

TEST(Remember, TheOldestIsForgotten)
{
    const Counted counted;
    const Planner planner = remembering(counted, 2);
    stagger::Question question{.services = {wig()}, .progress = {}, .now = {}};
    for (const std::int64_t minute : {0, 1, 2, 1, 0}) {
        question.now = clockAt(minute);
        planner(question, {});
    }
    EXPECT_EQ(*counted.calls, 4);
}

TEST(Remember, WhatASearchSaidThatSomebodyCouldStopIsNotKept)
{
    int calls = 0;
    const Planner planner = remembering([&](const stagger::Question&, const stagger::Budget&) {
        ++calls;
        stagger::NoPlan unknown;
        unknown.stopped = true;
        return tl::expected<Plan, stagger::NoPlan>{tl::unexpected{unknown}};
    });
    const stagger::Question question{.services = {wig()}, .progress = {}, .now = clockAt(0)};
    const auto ask = [&](std::uint64_t conflicts, std::function<bool()> stop) {
        planner(question, {.conflicts = conflicts, .stop = std::move(stop)});
        return calls;
    };
    EXPECT_EQ(ask(10, [] { return false; }), 1);
    EXPECT_EQ(ask(10, [] { return false; }), 2);
    // So many conflicts always end at the same place; more of them may get further.
    EXPECT_EQ(ask(10, {}), 3);
    EXPECT_EQ(ask(10, {}), 3);
    EXPECT_EQ(ask(20, {}), 4);
    EXPECT_EQ(ask(10, {}), 4);
}

}  // namespace
}  // namespace core::run
