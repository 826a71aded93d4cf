#include "core/temporal/clauses.h"

#include "tests/core/temporal/small_networks.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace core::temporal {
namespace {

using testing::ElementsAre;
using testing::UnorderedElementsAre;

/// Variable `number` from 1, its negation where the number is negative: as in the files of DIMACS.
Literal of(int number)
{
    return Literal{number > 0 ? 2 * (number - 1) : 2 * (-number - 1) + 1};
}

std::vector<Literal> clause(const std::vector<int>& numbers)
{
    std::vector<Literal> literals;
    for (const int number : numbers)
        literals.push_back(of(number));
    return literals;
}

const auto neverAsked = [](Literal, int, std::vector<Literal>&) {
    ADD_FAILURE() << "nothing is from a theory";
};

Clauses withVariables(int count)
{
    Clauses clauses;
    clauses.growTo(count);
    return clauses;
}

TEST(Clauses, ALiteralAloneIsTrueAtOnce)
{
    Clauses clauses = withVariables(2);
    EXPECT_TRUE(clauses.addClause(clause({-1}), Clauses::Source::Given));
    EXPECT_TRUE(clauses.isTrue(of(-1)));
    EXPECT_TRUE(clauses.isFalse(of(1)));
    EXPECT_TRUE(clauses.isOpen(of(2)));
}

TEST(Clauses, TheLastLiteralThatIsLeftFollows)
{
    Clauses clauses = withVariables(4);
    ASSERT_TRUE(clauses.addClause(clause({1, 2, 3}), Clauses::Source::Given));
    ASSERT_TRUE(clauses.addClause(clause({-3, 4}), Clauses::Source::Given));
    clauses.decide(of(-1));
    ASSERT_TRUE(clauses.propagate());
    EXPECT_TRUE(clauses.isOpen(of(2)));
    clauses.decide(of(-2));
    ASSERT_TRUE(clauses.propagate());
    EXPECT_TRUE(clauses.isTrue(of(3)));
    EXPECT_TRUE(clauses.isTrue(of(4)));
    EXPECT_EQ(clauses.levelOf(of(4)), 2);
    EXPECT_THAT(clauses.trail(), ElementsAre(of(-1), of(-2), of(3), of(4)));
}

TEST(Clauses, GoingBackOpensWhatWasDecidedSince)
{
    Clauses clauses = withVariables(3);
    ASSERT_TRUE(clauses.addClause(clause({-1, 2}), Clauses::Source::Given));
    clauses.decide(of(1));
    ASSERT_TRUE(clauses.propagate());
    clauses.decide(of(3));
    clauses.backTo(1);
    EXPECT_TRUE(clauses.isTrue(of(2)));
    EXPECT_TRUE(clauses.isOpen(of(3)));
    clauses.backTo(0);
    EXPECT_TRUE(clauses.isOpen(of(1)));
    EXPECT_TRUE(clauses.isOpen(of(2)));
    EXPECT_EQ(clauses.level(), 0);
}

TEST(Clauses, AClauseWithoutATrueOrOpenLiteralIsTheConflict)
{
    Clauses clauses = withVariables(2);
    ASSERT_TRUE(clauses.addClause(clause({1, 2}), Clauses::Source::Given));
    ASSERT_TRUE(clauses.addClause(clause({1, -2}), Clauses::Source::Given));
    clauses.decide(of(-1));
    EXPECT_FALSE(clauses.propagate());
    EXPECT_EQ(clauses.conflict().size(), 2U);
    for (const Literal literal : clauses.conflict())
        EXPECT_TRUE(clauses.isFalse(literal));
}

TEST(Clauses, AClauseThatIsBrokenAlreadyIsRefused)
{
    Clauses clauses = withVariables(3);
    clauses.decide(of(-1));
    clauses.decide(of(-2));
    EXPECT_FALSE(clauses.addClause(clause({1, 2}), Clauses::Source::Given));
    EXPECT_THAT(clauses.conflict(), UnorderedElementsAre(of(1), of(2)));
}

TEST(Clauses, AClauseAddedLateAssertsWhatIsLeftOfIt)
{
    Clauses clauses = withVariables(3);
    clauses.decide(of(-1));
    clauses.decide(of(-2));
    EXPECT_TRUE(clauses.addClause(clause({1, 2, 3}), Clauses::Source::Given));
    EXPECT_TRUE(clauses.isTrue(of(3)));
}

// After 1 is false everything hangs on 2: it brings 3, then 4 and not 4. The one literal of the last level
// that all reasons go through is 3.
TEST(Clauses, LearnsTheFirstLiteralThatAllReasonsGoThrough)
{
    Clauses clauses = withVariables(5);
    for (const auto& given : {clause({-2, 3}), clause({-3, 4}), clause({-3, 1, -4})})
        ASSERT_TRUE(clauses.addClause(given, Clauses::Source::Given));
    clauses.decide(of(-1));
    clauses.decide(of(5));
    clauses.decide(of(2));
    ASSERT_FALSE(clauses.propagate());
    // What is learned is "1 or not 3": level 1 is the highest of the rest.
    EXPECT_EQ(clauses.learn(clauses.conflict(), neverAsked), 1);
    EXPECT_EQ(clauses.level(), 1);
    EXPECT_TRUE(clauses.isTrue(of(-3)));
    EXPECT_TRUE(clauses.isOpen(of(5)));
}

TEST(Clauses, AConflictThatNeedsNoDecisionEndsIt)
{
    Clauses clauses = withVariables(1);
    ASSERT_TRUE(clauses.addClause(clause({1}), Clauses::Source::Given));
    EXPECT_FALSE(clauses.addClause(clause({-1}), Clauses::Source::Given));
    EXPECT_EQ(clauses.learn(clauses.conflict(), neverAsked), -1);
}

TEST(Clauses, ReasonsOfATheoryAreAskedForAsOfTheirMoment)
{
    Clauses clauses = withVariables(3);
    ASSERT_TRUE(clauses.addClause(clause({-2, -3}), Clauses::Source::Given));
    clauses.decide(of(1));
    clauses.assignByTheory(of(2), 7);
    EXPECT_TRUE(clauses.isFromTheory(of(2)));
    EXPECT_FALSE(clauses.isFromTheory(of(1)));
    clauses.assignByTheory(of(3), 8);
    ASSERT_FALSE(clauses.propagate());
    std::vector<std::pair<int, int>> asked;
    const int level = clauses.learn(clauses.conflict(), [&](Literal literal, int moment, auto& reasons) {
        asked.emplace_back(literal.code, moment);
        reasons.push_back(of(1));
    });
    EXPECT_EQ(level, 0);
    EXPECT_THAT(asked, ElementsAre(std::pair{of(3).code, 8}, std::pair{of(2).code, 7}));
    EXPECT_TRUE(clauses.isTrue(of(-1)));
}

/// Searches with nothing but this class: the first open variable is decided to be false.
bool isSatisfiable(Clauses& clauses, const std::vector<std::vector<Literal>>& given, int& deadEnds)
{
    for (const auto& literals : given) {
        if (!clauses.addClause(literals, Clauses::Source::Given))
            return false;  // Nothing is decided yet.
    }
    while (true) {
        while (!clauses.propagate()) {
            ++deadEnds;
            if (clauses.learn(clauses.conflict(), neverAsked) < 0)
                return false;
        }
        int variable = 0;
        while (variable < clauses.variables() && !clauses.isOpen(Literal{2 * variable}))
            ++variable;
        if (variable == clauses.variables())
            return true;
        clauses.decide(Literal{2 * variable + 1});
    }
}

bool isSatisfiedBy(unsigned values, const std::vector<std::vector<Literal>>& given)
{
    return std::ranges::all_of(given, [&](const auto& literals) {
        return std::ranges::any_of(literals, [&](Literal literal) {
            return ((values >> literal.variable()) & 1U) == (literal.code % 2 == 0 ? 1U : 0U);
        });
    });
}

// 10 variables and 43 clauses of three: about half can be satisfied.
TEST(Clauses, AgreeWithTryingAllOnRandomClauses)
{
    constexpr int variables = 10;
    int satisfiable = 0;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        Dice dice{seed};
        std::vector<std::vector<Literal>> given(43);
        for (auto& literals : given) {
            const int first = dice.between(1, 8);
            const int second = dice.between(first + 1, 9);
            const int third = dice.between(second + 1, 10);
            for (const int variable : {first, second, third})
                literals.push_back(of(dice.between(0, 1) == 0 ? variable : -variable));
        }
        bool expected = false;
        for (unsigned values = 0; values < (1U << variables) && !expected; ++values)
            expected = isSatisfiedBy(values, given);
        satisfiable += expected ? 1 : 0;
        Clauses clauses = withVariables(variables);
        int deadEnds = 0;
        ASSERT_EQ(isSatisfiable(clauses, given, deadEnds), expected);
        for (std::size_t place = 0; expected && place < given.size(); ++place)
            EXPECT_TRUE(std::ranges::any_of(given[place], [&](Literal l) { return clauses.isTrue(l); }));
    }
    EXPECT_GT(satisfiable, 40);
    EXPECT_LT(satisfiable, 160);
}

// Pigeons in one hole fewer: refuted only after so many dead ends that learned clauses have to be forgotten,
// which must neither lose a given one nor a reason.
TEST(Clauses, ForgettingKeepsTheAnswerRight)
{
    for (const int spare : {0, 1}) {
        constexpr int pigeons = 11;
        const int holes = pigeons - 1 + spare;
        const auto sits = [&](int pigeon, int hole) { return of(pigeon * holes + hole + 1); };
        std::vector<std::vector<Literal>> given;
        for (int pigeon = 0; pigeon < pigeons; ++pigeon) {
            auto& somewhere = given.emplace_back();
            for (int hole = 0; hole < holes; ++hole)
                somewhere.push_back(sits(pigeon, hole));
        }
        for (int hole = 0; hole < holes; ++hole) {
            for (int first = 0; first < pigeons; ++first) {
                for (int second = first + 1; second < pigeons; ++second)
                    given.push_back({~sits(first, hole), ~sits(second, hole)});
            }
        }
        Clauses clauses = withVariables(pigeons * holes);
        int deadEnds = 0;
        EXPECT_EQ(isSatisfiable(clauses, given, deadEnds), spare == 1);
        if (spare == 0) {
            EXPECT_GT(deadEnds, 2'500) << "too easy: nothing had to be forgotten";
        }
    }
}

}  // namespace
}  // namespace core::temporal
