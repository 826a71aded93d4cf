#include "tests/core/run/support.h"

#include <gtest/gtest.h>

namespace core::run {
namespace {

Fact told(FactKind kind, TaskId id, Instant happened)
{
    return {.kind = kind, .task = id, .happened = happened, .recorded = happened};
}

TEST(Fold, StartAndEndMakeATaskThatIsDone)
{
    const Teller teller{wig()};
    const auto progress = progressOf(teller.setup,
                                     std::vector{told(FactKind::Started, apply(0), clockAt(0)),
                                                 told(FactKind::Finished, apply(0), clockAt(11))});
    ASSERT_EQ(progress.tasks.size(), 1u);
    EXPECT_EQ(progress.tasks[0].start, clockAt(0));
    EXPECT_EQ(progress.tasks[0].end, clockAt(11));
}

TEST(Fold, WhatRunsIsExpectedToTakeItsUsualLength)
{
    const Teller teller{wig()};
    const auto progress =
        progressOf(teller.setup, std::vector{told(FactKind::Started, apply(0), clockAt(2))});
    EXPECT_FALSE(progress.tasks.at(0).end);
    EXPECT_EQ(progress.tasks.at(0).plannedEnd, clockAt(12));
}

TEST(Fold, AnEndWithoutAStartBeganItsUsualLengthBefore)
{
    const Teller teller{wig()};
    const auto progress =
        progressOf(teller.setup, std::vector{told(FactKind::Finished, apply(1), clockAt(20))});
    EXPECT_EQ(progress.tasks.at(0).start, clockAt(14));
}

TEST(Fold, NoTaskEndsBeforeItStarts)
{
    const Teller teller{wig()};
    const auto progress = progressOf(teller.setup,
                                     std::vector{told(FactKind::Started, apply(0), clockAt(9)),
                                                 told(FactKind::Finished, apply(0), clockAt(4))});
    EXPECT_EQ(progress.tasks.at(0).end, clockAt(9));
}

TEST(Fold, WhatHasBegunCannotBeDropped)
{
    const Teller teller{wig()};
    const auto progress = progressOf(teller.setup,
                                     std::vector{told(FactKind::Started, apply(0), clockAt(0)),
                                                 told(FactKind::Dropped, apply(0), clockAt(1)),
                                                 told(FactKind::Dropped, look(2), clockAt(1))});
    EXPECT_TRUE(progress.find(apply(0)));
    EXPECT_EQ(progress.dropped, std::vector{look(2)});
}

TEST(Fold, ABowlInUseHasBeenMixed)
{
    const Teller teller{longWig()};
    const auto unsaid = progressOf(teller.setup, std::vector{told(FactKind::Started, apply(0), clockAt(3))});
    EXPECT_TRUE(unsaid.isDropped(task(TaskKind::Mix)));
    const auto running = progressOf(teller.setup,
                                    std::vector{told(FactKind::Started, task(TaskKind::Mix), clockAt(0)),
                                                told(FactKind::Started, apply(0), clockAt(3))});
    EXPECT_EQ(running.find(task(TaskKind::Mix))->end, clockAt(3));
}

TEST(Fold, UnknownTasksAreLeftOut)
{
    const Teller teller{wig()};
    TaskId elsewhere = apply(0);
    elsewhere.service = 7;
    const auto progress = progressOf(teller.setup,
                                     std::vector{told(FactKind::Started, apply(9), clockAt(0)),
                                                 told(FactKind::Started, elsewhere, clockAt(0)),
                                                 told(FactKind::Looked, look(0), clockAt(0))});
    EXPECT_TRUE(progress.empty());
}

}  // namespace
}  // namespace core::run
