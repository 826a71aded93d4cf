#include "tests/core/run/support.h"

#include <gtest/gtest.h>

// Whole runs, and what they may never let pass in silence.

namespace core::run {
namespace {

using Kind = Answer::Kind;

TEST(State, ARunThatFollowsItsPromptsFinishes)
{
    Teller teller{longWig()};
    Instant now = clockAt(0);
    for (int step = 0; step < 300 && !teller.at(now).finished; ++step) {
        const State state = teller.at(now);
        if (state.prompts.empty() || state.prompts[0].due > now || state.prompts[0].waitsFor) {
            now += Seconds{60};
            continue;
        }
        const Prompt& prompt = state.prompts[0];
        const Kind kind = prompt.asks == Prompt::Asks::Start ? Kind::Start
            : prompt.asks == Prompt::Asks::Finish            ? Kind::Finish
                                                             : Kind::Leave;
        teller.mustTell(kind, prompt.task, now);
    }
    // Mix 2, Root 10, then 35 min, rinse 4, dry 3 and 20, assess 5: 79 min.
    EXPECT_TRUE(teller.at(now).finished);
    EXPECT_EQ(now, clockAt(79));
    EXPECT_EQ(teller.at(now).lanes[0].development, minutes(35));
}

TEST(State, IsNotFinishedWhileItDries)
{
    Service service = wig();
    service.coats[0].dryHands = minutes(3);
    service.coats[0].dryUnattended = minutes(20);
    Teller teller{service};
    for (std::size_t each = 0; each < 3; ++each)
        applyZone(teller, each, clockAt(0), clockAt(1));
    for (const TaskId& id : {task(TaskKind::Rinse), task(TaskKind::Dry)}) {
        teller.mustTell(Kind::Start, id, clockAt(40));
        teller.mustTell(Kind::Finish, id, clockAt(43));
    }
    EXPECT_FALSE(teller.at(clockAt(62)).finished);
    EXPECT_TRUE(teller.at(clockAt(63)).finished);
}

TEST(State, AnEndedRunAsksForNothing)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    ASSERT_FALSE(teller.tell({.kind = Kind::End}, clockAt(11)));
    const State state = teller.at(clockAt(90));
    EXPECT_TRUE(state.finished);
    EXPECT_TRUE(state.prompts.empty());
    EXPECT_TRUE(state.limits.empty());
    EXPECT_EQ(state.lanes.size(), 3u);
}

TEST(State, AServiceThatIsAllLeftOutIsFinished)
{
    Teller teller{longWig()};
    for (std::size_t each = 0; each < 3; ++each)
        teller.mustTell(Kind::Drop, apply(each), clockAt(1));
    EXPECT_TRUE(teller.at(clockAt(1)).finished);
}

}  // namespace
}  // namespace core::run
