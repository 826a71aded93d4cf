#include "core/run/standing.h"

#include "tests/core/run/support.h"

#include <gtest/gtest.h>

// What stands is what facts mean by their own definition (core/run/fact.h).

namespace core::run {
namespace {

Fact told(std::int64_t number, FactKind kind, std::int64_t minute, std::int64_t about = 0)
{
    Fact fact{
        .number = FactNumber{number}, .kind = kind, .happened = clockAt(minute), .recorded = clockAt(minute)};
    if (about != 0)
        fact.about = FactNumber{about};
    return fact;
}

TEST(Standing, AnUndoneFactIsGone)
{
    const std::vector facts{told(1, FactKind::Started, 0), told(2, FactKind::Undone, 1, 1)};
    EXPECT_TRUE(standingFacts(facts).empty());
}

TEST(Standing, AnUndoThatWasUndoneDoesNothing)
{
    const std::vector facts{told(1, FactKind::Started, 0), told(2, FactKind::Undone, 1, 1),
                            told(3, FactKind::Undone, 2, 2)};
    ASSERT_EQ(standingFacts(facts).size(), 1u);
    EXPECT_EQ(standingFacts(facts)[0].number, FactNumber{1});
}

TEST(Standing, AnUndoOfAnUndoOfAnUndoHoldsAgain)
{
    const std::vector facts{told(1, FactKind::Started, 0), told(2, FactKind::Undone, 1, 1),
                            told(3, FactKind::Undone, 2, 2), told(4, FactKind::Undone, 3, 3)};
    EXPECT_TRUE(standingFacts(facts).empty());
}

TEST(Standing, AMovedFactHappenedThenInstead)
{
    const std::vector facts{told(1, FactKind::Started, 5), told(2, FactKind::Moved, 3, 1)};
    ASSERT_EQ(standingFacts(facts).size(), 1u);
    EXPECT_EQ(standingFacts(facts)[0].happened, clockAt(3));
    EXPECT_EQ(standingFacts(facts)[0].recorded, clockAt(5));
}

TEST(Standing, OfTwoMovesTheLastCounts)
{
    const std::vector facts{told(1, FactKind::Started, 5), told(2, FactKind::Moved, 3, 1),
                            told(3, FactKind::Moved, 4, 1)};
    EXPECT_EQ(standingFacts(facts)[0].happened, clockAt(4));
}

TEST(Standing, AMoveThatWasMovedMovesTheFact)
{
    const std::vector facts{told(1, FactKind::Started, 5), told(2, FactKind::Moved, 3, 1),
                            told(3, FactKind::Moved, 2, 2)};
    EXPECT_EQ(standingFacts(facts)[0].happened, clockAt(2));
}

TEST(Standing, AMoveThatWasUndoneMovesNothing)
{
    const std::vector facts{told(1, FactKind::Started, 5), told(2, FactKind::Moved, 3, 1),
                            told(3, FactKind::Undone, 6, 2)};
    ASSERT_EQ(standingFacts(facts).size(), 1u);
    EXPECT_EQ(standingFacts(facts)[0].happened, clockAt(5));
}

TEST(Standing, WhatIsAboutItselfOrTheFutureDoesNothing)
{
    const std::vector facts{told(1, FactKind::Undone, 0, 1), told(2, FactKind::Undone, 0, 3),
                            told(3, FactKind::Started, 1)};
    EXPECT_EQ(standingFacts(facts).size(), 1u);
}

}  // namespace
}  // namespace core::run
