#include "app/view/now_view.h"
#include "tests/app/view/samples.h"

#include <gmock/gmock.h>

using namespace app::view;
using core::run::Prompt;
using core::run::Stage;
using samples::at;
using testing::ElementsAre;

namespace {

Prompt prompt(Prompt::Asks asks, const TaskId& task, int minute)
{
    return {asks, task, at(minute), 0};
}

NowView viewOf(core::run::State state, std::vector<Prompt> prompts)
{
    state.prompts = std::move(prompts);
    return nowView({samples::service()}, state);
}

TEST(NowView, PutsWhatIsDueFirst)
{
    const NowView view = viewOf(samples::developing(at(20)),
                                {prompt(Prompt::Asks::Look, samples::lookAtEnds, 20),
                                 prompt(Prompt::Asks::Finish, samples::applyRoot, 21)});

    ASSERT_TRUE(view.main);
    EXPECT_EQ(view.main->prompt.task, samples::lookAtEnds);
    EXPECT_EQ(view.main->urgency, Urgency::Due);
    EXPECT_TRUE(view.main->alone);
    EXPECT_EQ(view.main->development, samples::minutes(5));
}

TEST(NowView, StaysWithWhatTheHandsAreBusyWithWhileNothingIsDue)
{
    const NowView view = viewOf(samples::developing(at(12)),
                                {prompt(Prompt::Asks::Look, samples::lookAtEnds, 14),
                                 prompt(Prompt::Asks::Finish, samples::applyEnds, 15)});

    ASSERT_TRUE(view.main);
    EXPECT_EQ(view.main->prompt.task, samples::applyEnds);
    ASSERT_EQ(view.next.size(), 1u);
    EXPECT_EQ(view.next.front().prompt.task, samples::lookAtEnds);
}

// Whoever goes to look looks at all that is due there.
TEST(NowView, NamesTheLooksThatAreMadeTogether)
{
    TaskId other = samples::lookAtEnds;
    other.item = 0;
    const std::vector<Prompt> both{prompt(Prompt::Asks::Look, samples::lookAtEnds, 20),
                                   prompt(Prompt::Asks::Look, other, 21)};
    const NowView due = viewOf(samples::developing(at(21)), both);
    ASSERT_EQ(due.main->together.size(), 1u);
    EXPECT_EQ(due.main->together.front().prompt, both[1]);
    EXPECT_EQ(due.main->together.front().zone, "Root");
    ASSERT_EQ(due.next.front().together.size(), 1u);
    EXPECT_EQ(due.next.front().together.front().prompt, both[0]);
    // Each with what is to be thought of before it is rinsed, as of the one that is asked for first.
    EXPECT_EQ(due.next.front().together.front().alone, due.main->alone);
    EXPECT_EQ(due.next.front().together.front().shortOfLeast, due.main->shortOfLeast);
    EXPECT_EQ(due.main->together.front().alone, due.next.front().alone);
    EXPECT_EQ(due.main->together.front().shortOfLeast, due.next.front().shortOfLeast);

    const NowView apart = viewOf(samples::developing(at(20)), both);
    EXPECT_TRUE(apart.main->together.empty());
}

TEST(NowView, NamesEveryZoneThatARinseReaches)
{
    const NowView view =
        viewOf(samples::developing(at(29)), {prompt(Prompt::Asks::Start, samples::rinse, 30)});

    EXPECT_THAT(view.main->zones, ElementsAre("Root", "Ends"));
    EXPECT_EQ(view.main->name, "Both");
    EXPECT_TRUE(view.allDeveloping);
}

TEST(NowView, LeavesOutZonesThatWereRinsedAlone)
{
    auto state = samples::developing(at(29));
    state.lanes[1].stage = Stage::Rinsed;

    const NowView view = viewOf(state, {prompt(Prompt::Asks::Start, samples::rinse, 30)});

    EXPECT_THAT(view.main->zones, ElementsAre("Root"));
}

TEST(NowView, NamesTheHandsOnlyWhereThereAreSeveral)
{
    auto state = samples::developing(at(29));
    state.prompts = {prompt(Prompt::Asks::Start, samples::rinse, 30)};
    auto service = samples::service();
    EXPECT_EQ(nowView({service}, state).main->hands, "");

    service.crew.hands.push_back({"Junior", {}, {}});
    EXPECT_EQ(nowView({service}, state).main->hands, "Stylist");
}

TEST(NowView, IsPatientWithAnApplicationUntilItsSlowestEnd)
{
    Prompt slow = prompt(Prompt::Asks::Finish, samples::applyEnds, 15);
    slow.pressing = at(18);

    EXPECT_EQ(viewOf(samples::developing(at(17)), {slow}).main->urgency, Urgency::Soon);
    EXPECT_EQ(viewOf(samples::developing(at(18)), {slow}).main->urgency, Urgency::Late);
}

TEST(NowView, DoesNotPutWhatHasToWaitBeforeWhatItWaitsFor)
{
    Prompt waiting = prompt(Prompt::Asks::Start, samples::rinse, 15);
    waiting.waitsFor = samples::applyEnds;
    const NowView view =
        viewOf(samples::developing(at(17)), {waiting, prompt(Prompt::Asks::Finish, samples::applyEnds, 19)});

    EXPECT_EQ(view.main->prompt.task, samples::applyEnds);
    EXPECT_TRUE(view.next.front().waits);
    EXPECT_EQ(view.next.front().urgency, Urgency::Soon);
}

TEST(NowView, CountsDownToTheLatestSafeStart)
{
    Prompt rinse = prompt(Prompt::Asks::Start, samples::rinse, 30);
    rinse.safe = core::stagger::SafeStart{.task = samples::rinse, .earliest = at(28), .latest = at(33)};

    const auto latest = viewOf(samples::developing(at(29)), {rinse}).main->latest;
    ASSERT_TRUE(latest);
    EXPECT_EQ(latest->at, at(33));
    EXPECT_EQ(latest->left, samples::minutes(4));
    EXPECT_EQ(latest->urgency, Urgency::Calm);
    EXPECT_FALSE(latest->onlyAsUsual);
    EXPECT_EQ(viewOf(samples::developing(at(32)), {rinse}).main->latest->urgency, Urgency::Soon);
    EXPECT_EQ(viewOf(samples::developing(at(36)), {rinse}).main->latest->left, samples::minutes(-3));
}

TEST(NowView, SaysWhereAStartIsSafeOnlyIfAllTakesAsUsual)
{
    Prompt rinse = prompt(Prompt::Asks::Start, samples::rinse, 30);
    rinse.safe = core::stagger::SafeStart{.task = samples::rinse,
                                          .earliest = at(28),
                                          .latest = at(33),
                                          .safeFor = core::stagger::SafeFor::UsualLengths};

    const NowView view =
        viewOf(samples::developing(at(20)), {prompt(Prompt::Asks::Look, samples::lookAtEnds, 20), rinse});
    ASSERT_TRUE(view.next.front().latest);
    EXPECT_TRUE(view.next.front().latest->onlyAsUsual);
}

TEST(NowView, PutsNothingOffThatRunsOrThatNoLimitHolds)
{
    Prompt running = prompt(Prompt::Asks::Finish, samples::applyEnds, 15);
    running.safe = core::stagger::SafeStart{.task = samples::applyEnds, .latest = at(16)};
    EXPECT_FALSE(viewOf(samples::developing(at(12)), {running}).main->latest);

    Prompt free = prompt(Prompt::Asks::Start, samples::rinse, 30);
    EXPECT_FALSE(viewOf(samples::developing(at(12)), {free}).main->latest);
    free.safe = core::stagger::SafeStart{.task = samples::rinse, .earliest = at(28)};
    EXPECT_FALSE(viewOf(samples::developing(at(12)), {free}).main->latest);
}

TEST(NowView, SaysWhenEverythingIsDone)
{
    auto state = samples::developing(at(50));
    state.finished = true;

    const NowView view = nowView({samples::service()}, state);

    EXPECT_TRUE(view.finished);
    EXPECT_FALSE(view.main);
}

TEST(NowView, SaysHowLongApplyingMayTakeWhereThePlanHoldsForMoreThanTheUsual)
{
    auto service = samples::service();
    service.coats[0].zones[0].apply = {samples::minutes(4), samples::minutes(5), samples::minutes(7)};
    service.coats[0].zones[1].apply = {samples::minutes(5), samples::minutes(5), samples::minutes(5)};
    core::stagger::Question question;
    question.services = {service};
    question.now = at(0);
    const auto plan = core::stagger::plan(question);
    ASSERT_TRUE(plan);
    ASSERT_EQ((*plan)->give, 100);
    auto state = samples::developing(at(0));
    state.plan = *plan;
    const core::stagger::PlannedZone& root = (*plan)->zones.front();
    const auto stepAt = [&](Prompt::Asks asks, const TaskId& task, Instant now) {
        state.now = now;
        return stepView({service}, state, {asks, task, now, 0});
    };

    EXPECT_EQ(stepAt(Prompt::Asks::Start, samples::applyRoot, at(0)).holdsUpTo, samples::minutes(7));
    const Instant first = root.firstContact;
    EXPECT_EQ(stepAt(Prompt::Asks::Finish, samples::applyRoot, first + samples::minutes(6)).holdsUpTo,
              samples::minutes(7));
    EXPECT_FALSE(stepAt(Prompt::Asks::Finish, samples::applyRoot, first + samples::minutes(7)).holdsUpTo);
    EXPECT_FALSE(stepAt(Prompt::Asks::Start, samples::applyEnds, at(0)).holdsUpTo);  // Never takes longer.
    EXPECT_FALSE(stepAt(Prompt::Asks::Start, samples::rinse, at(0)).holdsUpTo);
}

}  // namespace
