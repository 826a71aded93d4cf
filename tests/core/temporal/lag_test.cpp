#include "core/temporal/lag.h"

#include "tests/core/temporal/small_networks.h"

#include <gtest/gtest.h>

namespace core::temporal {
namespace {

TEST(Lag, NegationHoldsExactlyWhereTheLagDoesNot)
{
    for (const Time most : {-3, -1, 0, 2}) {
        const Lag lag{1, 2, most};
        forAllTimes({.points = 3, .low = -3, .high = 3}, [&](const std::vector<Time>& times) {
            EXPECT_NE(keeps(lag, times), keeps(negation(lag), times)) << times[1] << ' ' << times[2];
        });
        EXPECT_EQ(negation(negation(lag)), lag);
    }
}

TEST(Literal, IsTheOppositeOfItsOpposite)
{
    const Literal literal{6};
    EXPECT_EQ((~literal).code, 7);
    EXPECT_EQ(~~literal, literal);
    EXPECT_EQ(literal.variable(), (~literal).variable());
}

TEST(LiteralTable, GivesALagAndItsNegationOppositeLiterals)
{
    LiteralTable table;
    for (const Lag& lag : {Lag{0, 1, 5}, Lag{3, 1, -2}, Lag{1, 3, -2}, Lag{2, 0, 0}}) {
        const Literal literal = table.of(lag);
        EXPECT_EQ(table.of(lag), literal) << textOf(lag);
        EXPECT_EQ(table.of(negation(lag)), ~literal) << textOf(lag);
        EXPECT_EQ(table.lag(literal), lag);
        EXPECT_EQ(table.lag(~literal), negation(lag));
    }
    EXPECT_EQ(table.variables(), 4);
}

TEST(LiteralTable, TellsLagsApartThatDifferInOneThing)
{
    LiteralTable table;
    const Literal first = table.of({1, 2, 5});
    EXPECT_NE(table.of({1, 2, 6}).variable(), first.variable());
    EXPECT_NE(table.of({1, 3, 5}).variable(), first.variable());
    EXPECT_NE(table.of({2, 1, 5}).variable(), first.variable());
    EXPECT_EQ(table.variables(), 4);
}

}  // namespace
}  // namespace core::temporal
