#include "core/temporal/project.h"

#include "tests/core/temporal/proved_shortest.h"
#include "tests/core/temporal/small_projects.h"

#include <gtest/gtest.h>

// Projects small enough to be worked out on paper.

namespace core::temporal {
namespace {

/// `second` starts at least `least` after `first` does.
Lag atLeast(std::size_t first, std::size_t second, Time least)
{
    return {startOf(second), startOf(first), -least};
}

Lag atMost(std::size_t first, std::size_t second, Time most)
{
    return {startOf(first), startOf(second), most};
}

TEST(Project, NothingToDoIsDoneAtOnce)
{
    EXPECT_EQ(provedShortest({}), 0);
}

TEST(Project, WithoutResourcesTheLongestPathDecides)
{
    // 0 for 2, then 1 for 3 at 2, then 2 for 1 no earlier than 4 after the start of 1: 2 + 4 + 1.
    const Project project{.activities = {{2, {}}, {3, {}}, {1, {}}},
                          .lags = {atLeast(0, 1, 2), atLeast(1, 2, 4)},
                          .capacities = {}};
    EXPECT_EQ(provedShortest(project), 7);
}

TEST(Project, ActivitiesOfOneMachineFollowOneAnother)
{
    EXPECT_EQ(provedShortest({{{2, {1}}, {3, {1}}, {4, {1}}}, {}, {1}}), 9);
}

// On two machines 3 3 2 2 2 take 12 / 2 = 6: {3, 3} and {2, 2, 2}.
TEST(Project, ActivitiesAreSharedOutOverTwoMachines)
{
    EXPECT_EQ(provedShortest({{{3, {1}}, {3, {1}}, {2, {1}}, {2, {1}}, {2, {1}}}, {}, {2}}), 6);
}

// Each two need one machine together, but no machine is needed by all three: 2 + 3 + 4 all the same.
TEST(Project, ActivitiesThatExcludeOneAnotherByTwosFollowOneAnother)
{
    EXPECT_EQ(provedShortest({{{2, {1, 0, 1}}, {3, {1, 1, 0}}, {4, {0, 1, 1}}}, {}, {1, 1, 1}}), 9);
}

// The second starts 5 or 6 after the first, which takes 3, on the same machine. With 6 the third, of 3, fits
// between them: 6 + 2. With 5 it does not, and comes before or after: 3 + 5 + 2.
TEST(Project, AnActivityFitsIntoAGapOrNot)
{
    Project project{{{3, {1}}, {2, {1}}, {3, {1}}}, {atLeast(0, 1, 5), atMost(0, 1, 6)}, {1}};
    EXPECT_EQ(provedShortest(project), 8);
    project.lags.back() = atMost(0, 1, 5);
    EXPECT_EQ(provedShortest(project), 10);
}

// The second must start within 2 of the first, which takes 4.
TEST(Project, NothingFitsWhereTwoMustOverlapAndCannot)
{
    Project project{{{4, {2}}, {3, {2}}}, {atLeast(0, 1, 0), atMost(0, 1, 2)}, {3}};
    EXPECT_EQ(provedShortest(project), std::nullopt);
    project.capacities = {4};
    EXPECT_EQ(provedShortest(project), 4);
}

// Three of four must be under way at once; two fit.
TEST(Project, NothingFitsWhereThreeMustOverlapAndTwoCan)
{
    Project project{{{4, {1}}, {4, {1}}, {4, {1}}}, {}, {2}};
    for (const std::size_t other : {1U, 2U}) {
        project.lags.push_back(atMost(0, other, 2));
        project.lags.push_back(atMost(other, 0, 1));
    }
    EXPECT_EQ(provedShortest(project), std::nullopt);
    project.capacities = {3};
    EXPECT_EQ(provedShortest(project), 4);
}

TEST(Project, LagsThatContradictOneAnotherFitNothing)
{
    EXPECT_EQ(provedShortest({{{1, {}}, {1, {}}}, {atLeast(0, 1, 3), atMost(0, 1, 2)}, {}}), std::nullopt);
}

TEST(Project, WhatTakesMoreThanThereIsFitsOnlyWithoutDuration)
{
    Project project{{{1, {2}}, {5, {1}}}, {}, {1}};
    EXPECT_EQ(provedShortest(project), std::nullopt);
    project.activities[0].duration = 0;
    EXPECT_EQ(provedShortest(project), 5);
}

TEST(Project, LagsFromTheOriginAreReleasesAndDeadlines)
{
    Project project{{{2, {1}}, {2, {1}}}, {{startOf(0), origin, -3}}, {1}};
    EXPECT_EQ(provedShortest(project), 5);  // The second before the first, which is released at 3.
    project.lags.push_back({startOf(1), startOf(0), -1});
    EXPECT_EQ(provedShortest(project), 7);
    project.lags.push_back({origin, startOf(1), 4});
    EXPECT_EQ(provedShortest(project), std::nullopt);
}

/// Independent activities of many lengths on three machines: a schedule is found at once, the proof is long.
Project manyOnThreeMachines()
{
    Project project{{}, {}, {3}};
    for (const Time duration : {13, 12, 11, 11, 10, 9, 8, 7, 7, 6, 5})
        project.activities.push_back({duration, {1}});
    project.activities.push_back({17, {2}});
    return project;
}

TEST(Project, AStoppedSearchSaysWhatItHas)
{
    const ProjectOutcome whole = shortest(manyOnThreeMachines(), {});
    ASSERT_TRUE(whole.complete);
    ASSERT_GT(whole.conflicts, 10U);
    const ProjectOutcome stopped = shortest(manyOnThreeMachines(), {.conflicts = 10, .stop = {}});
    EXPECT_FALSE(stopped.complete);
    EXPECT_EQ(stopped.conflicts, 10U);
    ASSERT_TRUE(stopped.best);
    EXPECT_EQ(brokenBy(manyOnThreeMachines(), stopped.best->starts), "");
    EXPECT_LE(stopped.bound, whole.bound);
    EXPECT_GE(stopped.best->makespan, whole.best->makespan);
}

TEST(Project, StopsWhenItIsTold)
{
    int asked = 0;
    const ProjectOutcome outcome = shortest(manyOnThreeMachines(), {.stop = [&] { return ++asked == 2; }});
    EXPECT_FALSE(outcome.complete);
    EXPECT_EQ(asked, 2);
}

TEST(Project, TheSameQuestionHasTheSameAnswer)
{
    const ProjectOutcome one = shortest(manyOnThreeMachines(), {});
    const ProjectOutcome other = shortest(manyOnThreeMachines(), {});
    EXPECT_EQ(one.best->starts, other.best->starts);
    EXPECT_EQ(one.conflicts, other.conflicts);
    EXPECT_EQ(one.decisions, other.decisions);
}

}  // namespace
}  // namespace core::temporal
