#include "core/stagger/planned_times.h"

#include "core/stagger/coat_by_coat.h"
#include "tests/core/stagger/support.h"
#include "tests/oracle/random_service.h"

#include <gtest/gtest.h>

#include <algorithm>

// The times of a plan read off the plan, without a search.

namespace core::stagger {
namespace {

Time momentAt(const Moment& moment, const std::vector<Time>& times)
{
    return times[static_cast<std::size_t>(moment.point)] + moment.offset;
}

bool hold(const Draft& draft, const std::vector<Time>& times)
{
    const auto holds = [&times](const Lag& lag) {
        return times[static_cast<std::size_t>(lag.to)] - times[static_cast<std::size_t>(lag.from)]
            <= lag.most;
    };
    return std::ranges::all_of(draft.problem.lags, holds)
        && std::ranges::all_of(draft.problem.clauses, [&holds](const temporal::Clause& clause) {
               return std::ranges::any_of(clause, holds);
           });
}

TEST(PlannedTimes, AreThoseOfThePlanAndKeepEveryLagAndClause)
{
    int found = 0;
    int gaps = 0;
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        Question question = oracle::randomQuestion(
            seed, {.leastHeads = 1, .mostHeads = 2, .mostTasks = 20, .mostZones = 3, .mostHands = 1});
        question.services.front().crew.basins = 1;
        const auto answer = plan(question, {.conflicts = 5'000, .stop = {}});
        if (!answer)
            continue;
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << oracle::questionText(question));
        Pins pins = pinsOf(*answer);
        pins.keepPoints = true;
        const Draft draft = draftOf(question, Strictness::Keep, {}, pins, 10);
        const auto times = plannedTimes(draft);
        ASSERT_TRUE(times);
        ++found;
        EXPECT_TRUE(hold(draft, *times));
        for (const Busy& busy : draft.busy) {
            const PlannedTask* task = answer->find(busy.id);
            if (task != nullptr) {
                EXPECT_EQ(draft.zero + Seconds{momentAt(busy.start, *times)}, task->start);
                EXPECT_EQ(draft.zero + Seconds{momentAt(busy.end, *times)}, task->end);
            }
        }
        for (const service::Service& service : question.services)
            gaps += static_cast<int>(std::ranges::count_if(
                service.coats, [](const service::Coat& coat) { return coat.gapMost.has_value(); }));
    }
    EXPECT_GT(found, 100);
    EXPECT_GT(gaps, 10);
}

TEST(PlannedTimes, OfATaskThatIsMovedTooFarThereAreNone)
{
    const Question question = ask(fromOpening({slowZone("Root", 25, 30, 35)}));
    Plan plan = planned(question);
    Pins pins = pinsOf(plan);
    pins.keepPoints = true;
    for (auto& [id, start] : pins.starts) {
        if (id.kind == TaskKind::Rinse)
            start += minutes{6};
    }
    EXPECT_FALSE(plannedTimes(draftOf(question, Strictness::Keep, {}, pins, 10)));
}

}  // namespace
}  // namespace core::stagger
