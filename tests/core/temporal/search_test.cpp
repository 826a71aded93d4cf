#include "core/temporal/search.h"

#include "tests/core/temporal/small_networks.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

namespace core::temporal {
namespace {

Problem within(const Box& box)
{
    Problem problem;
    problem.points = box.points;
    problem.lags = lagsOf(box);
    return problem;
}

/// Jobs on one machine, each within [0, horizon].
Problem oneMachine(const std::vector<Time>& lengths, Time horizon)
{
    Problem problem;
    problem.points = static_cast<int>(lengths.size()) + 1;
    for (Point job = 1; job < problem.points; ++job) {
        const Time length = lengths[static_cast<std::size_t>(job - 1)];
        problem.lags.push_back({job, origin, 0});
        problem.lags.push_back({origin, job, horizon - length});
        for (Point other = 1; other < job; ++other) {
            problem.clauses.push_back(
                {{other, job, -length}, {job, other, -lengths[static_cast<std::size_t>(other - 1)]}});
        }
    }
    return problem;
}

TEST(Search, NothingAskedIsAnsweredAtOnce)
{
    const Outcome outcome = search({}, {});
    ASSERT_TRUE(outcome.best);
    EXPECT_TRUE(outcome.complete);
    EXPECT_EQ(outcome.best->times, std::vector<Time>{0});
    EXPECT_EQ(shown(outcome.best->price), 0);
}

// Weighted completion on one machine: W. Smith, "Various optimizers for single-stage production", 1956, the
// greatest weight a second first. Lengths 3 1 2, weights 3 3 1: 2nd, 1st, 3rd, which end at 1, 4, 6:
// 3*1 + 3*4 + 1*6 = 21.
TEST(Search, OrdersJobsByWeightOverLength)
{
    Problem problem = oneMachine({3, 1, 2}, 6);
    problem.softLags = {{{origin, 1, -3}, 3}, {{origin, 2, -1}, 3}, {{origin, 3, -2}, 1}};
    const Outcome outcome = search(problem, {});
    ASSERT_TRUE(outcome.best);
    EXPECT_TRUE(outcome.complete);
    EXPECT_EQ(shown(outcome.best->price), 21);
    EXPECT_EQ(shown(outcome.bound), 21);
    EXPECT_EQ(outcome.best->times, (std::vector<Time>{0, 1, 0, 4}));
}

TEST(Search, ASecondTooLittleIsProvedNotToFit)
{
    const std::vector<Time> lengths = {3, 5, 2, 7, 4, 6};
    const Time total = std::accumulate(lengths.begin(), lengths.end(), 0);
    EXPECT_TRUE(search(oneMachine(lengths, total), {}).best);
    const Outcome outcome = search(oneMachine(lengths, total - 1), {});
    EXPECT_FALSE(outcome.best);
    EXPECT_TRUE(outcome.complete);
}

TEST(Search, LagsThatContradictOneAnotherNeedNoSearch)
{
    Problem problem = within({.points = 2, .low = 0, .high = 3});
    problem.lags.push_back({1, origin, -4});
    const Outcome outcome = search(problem, {});
    EXPECT_FALSE(outcome.best);
    EXPECT_TRUE(outcome.complete);
    EXPECT_EQ(outcome.decisions, 0U);
}

TEST(Search, AClauseOfNothingCannotHold)
{
    Problem problem = within({.points = 2, .low = 0, .high = 5});
    problem.clauses = {{}};
    EXPECT_FALSE(search(problem, {}).best);
    EXPECT_TRUE(search(problem, {}).complete);
}

TEST(Search, ALagFromAPointToItselfIsTrueOrFalseInAClause)
{
    Problem problem = within({.points = 2, .low = 0, .high = 5});
    problem.clauses = {{{1, 1, 0}}};
    EXPECT_TRUE(search(problem, {}).best);
    problem.clauses = {{{1, 1, -1}, {1, origin, -3}}};
    ASSERT_TRUE(search(problem, {}).best);
    EXPECT_GE(search(problem, {}).best->times[1], 3);
    problem.clauses = {{{1, 1, -1}}};
    EXPECT_FALSE(search(problem, {}).best);
}

// Two jobs of 2 in 4: either may be first; the ranking says which.
TEST(Search, OfEquallyGoodAnswersTheFirstByTheRankingIsTaken)
{
    Problem problem = oneMachine({2, 2}, 4);
    problem.ranking = {{1, {}}, {2, {}}};
    EXPECT_EQ(search(problem, {}).best->times, (std::vector<Time>{0, 0, 2}));
    problem.ranking = {{2, {}}, {1, {}}};
    EXPECT_EQ(search(problem, {}).best->times, (std::vector<Time>{0, 2, 0}));
}

// Point 1 counts where point 2 is at 3 or later. Present, it can be at 0: better than absent, though 2 alone
// would rather be early.
TEST(Search, APointThatIsNotPresentRanksAfterAnyTime)
{
    Problem problem = within({.points = 3, .low = 0, .high = 5});
    problem.ranking = {{1, Lag{2, origin, -3}}, {2, {}}};
    EXPECT_EQ(search(problem, {}).best->times, (std::vector<Time>{0, 0, 3}));
    problem.ranking = {{2, {}}, {1, Lag{2, origin, -3}}};
    EXPECT_EQ(search(problem, {}).best->times[2], 0);
}

TEST(Search, AsksLazilyUntilNothingIsWrong)
{
    Problem problem = within({.points = 3, .low = 0, .high = 9});
    problem.ranking = {{1, {}}, {2, {}}};
    int asked = 0;
    problem.lazyClauses = [&](const std::vector<Time>& times) {
        ++asked;
        if (times[1] < times[2] + 4 && times[2] < times[1] + 4)
            return std::vector<Clause>{{{1, 2, -4}, {2, 1, -4}}};
        return std::vector<Clause>{};
    };
    EXPECT_EQ(search(problem, {}).best->times, (std::vector<Time>{0, 0, 4}));
    EXPECT_GE(asked, 2);
}

TEST(Search, LazyClausesCanLeaveNothing)
{
    Problem problem = within({.points = 2, .low = 0, .high = 5});
    problem.lazyClauses = [](const std::vector<Time>&) { return std::vector<Clause>{{{1, origin, -6}}}; };
    const Outcome outcome = search(problem, {});
    EXPECT_FALSE(outcome.best);
    EXPECT_TRUE(outcome.complete);
}

// Whoever is asked says that whatever is done is wrong: that is an answer too, and must not be asked for
// ever.
TEST(Search, ALazyClauseOfNothingMeansThatNothingFits)
{
    Problem problem = within({.points = 2, .low = 0, .high = 5});
    int asked = 0;
    problem.lazyClauses = [&](const std::vector<Time>&) {
        ++asked;
        return std::vector<Clause>{{}};
    };
    const Outcome outcome = search(problem, {.conflicts = UINT64_MAX, .stop = [&] { return asked > 1000; }});
    EXPECT_FALSE(outcome.best);
    EXPECT_TRUE(outcome.complete);
    EXPECT_EQ(asked, 1);
}

/// Nine jobs late, each at a price of its own.
Problem lateJobs()
{
    Problem problem = oneMachine({5, 3, 8, 2, 6, 4, 7, 3, 5}, 60);
    const std::vector<Time> due = {9, 20, 14, 6, 31, 12, 40, 18, 25};
    for (Point job = 1; job < problem.points; ++job)
        problem.softLags.push_back({{origin, job, due[static_cast<std::size_t>(job - 1)] - 6}, 1 + job % 4});
    return problem;
}

// Three jobs of 2, 3 and 4 within 9: what is known is kept where nothing is better, and left where something
// is.
TEST(Search, BeginsWithTheAnswerThatIsKnown)
{
    Problem problem = oneMachine({2, 3, 4}, 9);
    problem.softLags.push_back({{origin, 3, 0}, 1});
    const Answer late{{0, 0, 2, 5}, 5};
    const Outcome stopped = search(problem, {.conflicts = 0, .stop = {}, .known = late});
    ASSERT_TRUE(stopped.best);
    EXPECT_FALSE(stopped.complete);
    EXPECT_EQ(stopped.best->times, late.times);
    const Outcome better = search(problem, {.conflicts = UINT64_MAX, .stop = {}, .known = late});
    ASSERT_TRUE(better.best && better.complete);
    EXPECT_EQ(shown(better.best->price), 0);
    const Answer first{{0, 7, 4, 0}, 0};
    const Outcome kept = search(problem, {.conflicts = UINT64_MAX, .stop = {}, .known = first});
    ASSERT_TRUE(kept.best && kept.complete);
    EXPECT_EQ(kept.best->times, first.times);
}

TEST(Search, StopsWhenToldAndSaysThatItIsNotProved)
{
    const Problem problem = lateJobs();
    const Outcome whole = search(problem, {});
    ASSERT_TRUE(whole.complete);
    ASSERT_GT(whole.decisions, 64U) << "too easy to be stopped";
    int asked = 0;
    const Outcome outcome = search(problem, {.conflicts = UINT64_MAX, .stop = [&] { return ++asked > 1; }});
    EXPECT_FALSE(outcome.complete);
    EXPECT_EQ(asked, 2);
    EXPECT_LE(shown(outcome.bound), shown(whole.best->price));
    if (outcome.best) {
        EXPECT_GE(shown(outcome.best->price), shown(whole.best->price));
    }
}

TEST(Search, StoppedAnywhereTheBoundIsNeverAboveTheBest)
{
    const Problem problem = lateJobs();
    const Outcome whole = search(problem, {});
    ASSERT_TRUE(whole.best);
    bool found = false;
    for (std::uint64_t conflicts = 0; conflicts < whole.conflicts; conflicts += 1 + conflicts / 4) {
        const Outcome outcome = search(problem, {.conflicts = conflicts, .stop = {}});
        EXPECT_LE(shown(outcome.bound), shown(whole.best->price)) << conflicts;
        EXPECT_LE(outcome.conflicts, whole.conflicts);
        if (outcome.complete) {
            EXPECT_EQ(shown(outcome.best->price), shown(whole.best->price));
        }
        if (!outcome.best)
            continue;
        found = true;
        EXPECT_GE(shown(outcome.best->price), shown(whole.best->price)) << conflicts;
        EXPECT_EQ(shown(priceOf(problem, outcome.best->times)), shown(outcome.best->price));
        EXPECT_TRUE(keepsAll(problem.lags, outcome.best->times));
        EXPECT_TRUE(std::ranges::all_of(problem.clauses,
                                        [&](const Clause& c) { return keepsOne(c, outcome.best->times); }));
    }
    EXPECT_TRUE(found) << "every one of them was stopped before it had found anything";
}

TEST(Search, GivesTheSameAnswerAgain)
{
    const Problem problem = lateJobs();
    const Outcome first = search(problem, {});
    const Outcome second = search(problem, {});
    EXPECT_EQ(first.best->times, second.best->times);
    EXPECT_EQ(first.decisions, second.decisions);
    EXPECT_EQ(first.conflicts, second.conflicts);
}

}  // namespace
}  // namespace core::temporal
