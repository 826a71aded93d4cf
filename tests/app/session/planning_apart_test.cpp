#include "app/session/planning_apart.h"

#include "tests/app/session/held_planner.h"
#include "tests/app/session/session_samples.h"

#include <gtest/gtest.h>

namespace app::session {
namespace {

using samples::HeldPlanner;
using samples::noon;
using samples::twoZones;
using std::chrono_literals::operator""min;

core::stagger::Question questionAt(std::chrono::minutes later)
{
    return {.services = {twoZones()}, .progress = {}, .now = noon() + later};
}

/// A planner that can be held, and how often it was said that something was found.
struct Bench {
    std::optional<PlanningApart::PlanAnswer> look(const core::stagger::Question& question, bool first = false)
    {
        const auto look = planning.look(first);
        return planning.ask(question, {});
    }
    void waitUntilFound(int times)
    {
        std::unique_lock lock{guard};
        changed.wait(lock, [&] { return found >= times; });
    }

    std::mutex guard;
    std::condition_variable changed;
    int found = 0;
    std::shared_ptr<HeldPlanner> held = std::make_shared<HeldPlanner>();
    PlanningApart planning{samples::plannerOf(held), [this] {
                               const std::lock_guard lock{guard};
                               ++found;
                               changed.notify_all();
                           }};
};

TEST(PlanningApart, TheFirstLookOfARunWaitsForThePlan)
{
    Bench bench;
    const auto answer = bench.look(questionAt(0min), true);
    ASSERT_TRUE(answer);
    EXPECT_EQ(*answer, core::stagger::plan(questionAt(0min)));
    EXPECT_FALSE(bench.planning.isBusy());
}

TEST(PlanningApart, ALookDoesNotWaitForALongSearchAndTheAnswerIsThereLater)
{
    Bench bench;
    bench.held->hold();
    EXPECT_FALSE(bench.look(questionAt(1min)));
    EXPECT_FALSE(bench.look(questionAt(1min)));
    EXPECT_TRUE(bench.planning.isBusy());
    EXPECT_FALSE(bench.planning.hasAnswer());
    bench.held->let();
    bench.waitUntilFound(1);
    EXPECT_TRUE(bench.planning.hasAnswer());
    EXPECT_EQ(bench.look(questionAt(1min)), std::optional{core::stagger::plan(questionAt(1min))});
    EXPECT_FALSE(bench.planning.isBusy());
    EXPECT_EQ(bench.held->asked().size(), 1U) << "asked again it went on";
}

TEST(PlanningApart, ANewerQuestionStopsTheSearchForAnOlderOne)
{
    Bench bench;
    bench.held->hold();
    EXPECT_FALSE(bench.look(questionAt(1min)));
    bench.held->waitForQuestions(1);
    EXPECT_FALSE(bench.look(questionAt(2min)));
    bench.held->waitForQuestions(2);
    EXPECT_EQ(bench.held->stopped(), 1);
    bench.held->let();
    bench.waitUntilFound(1);
    EXPECT_EQ(bench.look(questionAt(2min)), std::optional{core::stagger::plan(questionAt(2min))});
    EXPECT_EQ(bench.found, 1) << "of the older one nobody hears";
}

TEST(PlanningApart, OfOneLookTheFirstThatIsNotKnownIsWorkedOut)
{
    Bench bench;
    bench.held->hold();
    {
        const auto look = bench.planning.look(false);
        EXPECT_FALSE(bench.planning.ask(questionAt(1min), {}));
        EXPECT_FALSE(bench.planning.ask(questionAt(2min), {}));
    }
    bench.held->waitForQuestions(1);
    EXPECT_EQ(bench.held->stopped(), 0);
    EXPECT_EQ(bench.held->asked().front().now, questionAt(1min).now);
}

TEST(PlanningApart, WhatNoLookAsksForAnyMoreIsStopped)
{
    Bench bench;
    bench.held->hold();
    EXPECT_FALSE(bench.look(questionAt(1min)));
    bench.held->waitForQuestions(1);
    {
        const auto look = bench.planning.look(false);
    }
    EXPECT_FALSE(bench.planning.isBusy());
    EXPECT_FALSE(bench.look(questionAt(2min)));
    bench.held->waitForQuestions(2);
    EXPECT_EQ(bench.held->stopped(), 1);
}

TEST(PlanningApart, NothingIsWorkedOutForWhoeverOnlyAsks)
{
    Bench bench;
    EXPECT_FALSE(bench.planning.ask(questionAt(1min), {}));
    EXPECT_FALSE(bench.planning.isBusy());
}

TEST(PlanningApart, IsDestroyedInTheMiddleOfASearch)
{
    const auto held = std::make_shared<HeldPlanner>();
    held->hold();
    {
        PlanningApart planning{samples::plannerOf(held), [] {}};
        const auto look = planning.look(false);
        EXPECT_FALSE(planning.ask(questionAt(1min), {}));
        held->waitForQuestions(1);
    }
    EXPECT_EQ(held->stopped(), 1);
}

/// A thousand questions in a row, most of them stopped in the middle of a search that is not held.
TEST(PlanningApart, ManyQuestionsOneAfterTheOther)
{
    Bench bench;
    int answered = 0;
    for (int each = 0; each < 1000; ++each) {
        const auto question = questionAt(std::chrono::minutes{each});
        const auto look = bench.planning.look(each % 50 == 0);
        for (int times = 0; times < 3; ++times) {
            if (const auto answer = bench.planning.ask(question, {})) {
                ++answered;
                EXPECT_EQ(*answer, core::stagger::plan(question));
                break;
            }
        }
    }
    EXPECT_GE(answered, 20);
}

}  // namespace
}  // namespace app::session
