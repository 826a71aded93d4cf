#include "app/view/erased_run.h"
#include "tests/app/view/samples.h"

#include <gtest/gtest.h>

using namespace app::view;
using core::run::Fact;
using core::run::FactKind;
using core::run::FactNumber;
using core::stagger::TaskId;
using samples::at;

namespace {

Fact fact(int number, FactKind kind, const TaskId& task, int minute)
{
    return {.number = FactNumber{number},
            .kind = kind,
            .task = task,
            .happened = at(minute),
            .recorded = at(minute)};
}

TEST(ErasedRun, TellsWhatWasDoneWhenInOrder)
{
    const std::vector facts{
        fact(1, FactKind::Started, samples::applyRoot, 2),
        fact(2, FactKind::Looked, samples::lookAtEnds, 20),
        fact(3, FactKind::Finished, samples::applyRoot, 12),
        fact(4, FactKind::Started, samples::rinse, 34),
        fact(5, FactKind::Started, samples::applyEnds, 13),
        fact(6, FactKind::Finished, samples::applyEnds, 17),
    };
    const ErasedRun run = erasedRun(facts);
    EXPECT_EQ(run.tasks,
              (std::vector<LeftTask>{{samples::applyRoot, at(2), at(12)},
                                     {samples::applyEnds, at(13), at(17)},
                                     {samples::lookAtEnds, at(20), {}},
                                     {samples::rinse, at(34), {}}}));
    EXPECT_TRUE(run.outcomes.empty());
}

TEST(ErasedRun, LeavesOutWhatWasTakenBackAndKeepsThePickedWord)
{
    Fact undone = fact(3, FactKind::Undone, {}, 4);
    undone.about = FactNumber{1};
    Fact said = fact(4, FactKind::TurnedOut, samples::applyRoot, 60);
    said.outcome = core::run::Outcome::Uneven;
    const std::vector facts{fact(1, FactKind::Started, samples::applyEnds, 2),
                            fact(2, FactKind::Started, samples::applyRoot, 3), undone, said};
    const ErasedRun run = erasedRun(facts);
    EXPECT_EQ(run.tasks, (std::vector<LeftTask>{{samples::applyRoot, at(3), {}}}));
    ASSERT_EQ(run.outcomes.size(), 1u);
    EXPECT_EQ(run.outcomes[0].outcome, core::run::Outcome::Uneven);
}

}  // namespace
