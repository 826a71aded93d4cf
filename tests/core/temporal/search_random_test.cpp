#include "core/temporal/search.h"
#include "tests/core/temporal/small_networks.h"

#include <gtest/gtest.h>

#include <algorithm>

// The search against trying all times of small random problems with fixed seeds: the least price, the vector
// of ranks, and whether anything fits.

namespace core::temporal {
namespace {

using Ranks = std::vector<Time>;

struct Best {
    Price price = 0;
    Ranks ranks;
};

Ranks ranksOf(const Problem& problem, const std::vector<Time>& times)
{
    Ranks ranks;
    for (const Ranked& ranked : problem.ranking) {
        const bool present = !ranked.present || keeps(*ranked.present, times);
        ranks.push_back(present ? times[static_cast<std::size_t>(ranked.point)] : farTime);
    }
    return ranks;
}

bool isAnswer(const Problem& problem, const std::vector<Time>& times)
{
    return keepsAll(problem.lags, times)
        && std::ranges::all_of(problem.clauses, [&](const Clause& c) { return keepsOne(c, times); });
}

std::optional<Best> bestByTryingAll(const Problem& problem, const Box& box)
{
    std::optional<Best> best;
    forAllTimes(box, [&](const std::vector<Time>& times) {
        if (!isAnswer(problem, times))
            return;
        const Price price = costOf(problem.softLags, times);
        if (best && price > best->price)
            return;
        Ranks ranks = ranksOf(problem, times);
        if (!best || price < best->price || ranks < best->ranks)
            best = Best{price, std::move(ranks)};
    });
    return best;
}

struct Mix {
    int clauses = 5;
    bool ranking = true;
    bool presence = false;
    Price unit = 1;  ///< What every second price is a multiple of.
    bool raisesBound = false;
};

Problem randomProblem(Dice& dice, const Box& box, const Mix& mix)
{
    Problem problem;
    problem.points = box.points;
    problem.lags = lagsOf(box);
    for (int count = dice.between(0, 3); count > 0; --count)
        problem.lags.push_back(dice.lag(box.points, -2, 4));
    for (int count = dice.between(1, mix.clauses); count > 0; --count) {
        Clause& clause = problem.clauses.emplace_back();
        for (int lags = dice.between(1, 3); lags > 0; --lags)
            clause.push_back(dice.lag(box.points, -4, 1));
    }
    for (int count = dice.between(0, 5); count > 0; --count)
        problem.softLags.push_back(dice.softLag(box.points));
    for (std::size_t place = 0; place < problem.softLags.size(); place += 2)
        problem.softLags[place].price *= mix.unit;
    if (mix.raisesBound) {
        problem.raisesBound = true;
        problem.softLags = {dice.softLag(box.points)};
        problem.softLags.front().price += 1;
    }
    if (mix.unit > 1)
        problem.levels = {mix.unit};
    for (Point point = 1; mix.ranking && point < box.points; ++point) {
        Ranked ranked{point, {}};
        if (mix.presence && dice.between(0, 1) == 0)
            ranked.present = dice.lag(box.points, -3, 2);
        problem.ranking.push_back(ranked);
    }
    std::ranges::rotate(problem.ranking,
                        problem.ranking.begin()
                            + (problem.ranking.empty() ? 0 : dice.between(0, box.points - 2)));
    return problem;
}

/// Whether anything fits.
bool expectSame(const Problem& problem, const Outcome& outcome, const Box& box)
{
    const std::optional<Best> expected = bestByTryingAll(problem, box);
    EXPECT_TRUE(outcome.complete);
    EXPECT_EQ(outcome.best.has_value(), expected.has_value());
    if (!expected || !outcome.best)
        return false;
    EXPECT_TRUE(isAnswer(problem, outcome.best->times));
    EXPECT_TRUE(outcome.best->price == expected->price);
    EXPECT_TRUE(outcome.bound == expected->price);
    EXPECT_TRUE(costOf(problem.softLags, outcome.best->times) == expected->price);
    EXPECT_EQ(ranksOf(problem, outcome.best->times), expected->ranks);
    return true;
}

/// The clauses of `problem` are told one by one, when they are broken.
Problem lazily(Problem problem)
{
    const std::vector<Clause> clauses = std::exchange(problem.clauses, {});
    problem.lazyClauses = [clauses](const std::vector<Time>& times) {
        std::vector<Clause> broken;
        for (const Clause& clause : clauses) {
            if (!keepsOne(clause, times) && broken.size() < 2)
                broken.push_back(clause);
        }
        return broken;
    };
    return problem;
}

void tryRandomProblems(std::uint64_t firstSeed, int count, const Mix& mix, bool lazy)
{
    int fitting = 0;
    for (std::uint64_t seed = firstSeed; seed < firstSeed + static_cast<std::uint64_t>(count); ++seed) {
        Dice dice{seed};
        const Box box{.points = dice.between(3, 5), .low = 0, .high = 5};
        const Problem problem = randomProblem(dice, box, mix);
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << textOf(problem));
        fitting += expectSame(problem, search(lazy ? lazily(problem) : problem, {}), box) ? 1 : 0;
        if (testing::Test::HasFailure())
            return;
    }
    EXPECT_GT(fitting, count / 5);
    EXPECT_LT(fitting, count);
}

TEST(SearchAgainstTryingAll, FindsTheLeastPrice)
{
    tryRandomProblems(1, 1'500, {.ranking = false}, false);
}

TEST(SearchAgainstTryingAll, FindsTheFirstByTheRanking)
{
    tryRandomProblems(10'001, 1'500, {}, false);
}

TEST(SearchAgainstTryingAll, FindsTheFirstByARankingOfPointsThatMayBeAbsent)
{
    tryRandomProblems(20'001, 1'500, {.presence = true}, false);
}

TEST(SearchAgainstTryingAll, FindsTheSameWhereClausesAreToldLate)
{
    tryRandomProblems(30'001, 1'500, {.presence = true}, true);
}

TEST(SearchAgainstTryingAll, FindsTheSameAmongManyClauses)
{
    tryRandomProblems(40'001, 1'500, {.clauses = 14, .presence = true}, true);
}

// The small prices add up to at most 2 * 5 * 10.
TEST(SearchAgainstTryingAll, FindsTheSameWherePricesHaveLevels)
{
    tryRandomProblems(50'001, 1'500, {.clauses = 10, .presence = true, .unit = 1000}, false);
}

TEST(SearchAgainstTryingAll, FindsTheSameByRaisingTheBound)
{
    tryRandomProblems(60'001, 1'500, {.clauses = 10, .ranking = false, .raisesBound = true}, true);
}

}  // namespace
}  // namespace core::temporal
