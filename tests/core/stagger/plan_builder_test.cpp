#include "core/stagger/plan_builder.h"

#include "tests/core/stagger/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Which task a broken limit is told of. Worked out by hand, in minutes.

namespace core::stagger {
namespace {

using testing::HasSubstr;

Question breaking(const Service& service)
{
    Question question = ask(service);
    question.mayBreakLimits = true;
    return question;
}

// Two zones of 5 and 4 by one pair of hands take 9, and the bowl, which nobody mixes, lasts 6.
TEST(BrokenLimits, OfABowlThatNobodyMixesNameAnApplication)
{
    const oracle::Span wide{minutes{5}, minutes{20}, minutes{40}};
    Service service = fromOpening({makeZone("Mids", minutes{5}, wide), makeZone("Ends", minutes{4}, wide)});
    service.coats[0].bowls[0].potLife = minutes{6};
    const Plan plan = planned(breaking(service));

    ASSERT_FALSE(plan->broken.empty());
    for (const BrokenLimit& broken : plan->broken) {
        EXPECT_TRUE(isTaskOf(service, broken.task)) << taskIdText(broken.task);
        EXPECT_EQ(broken.task.kind, TaskKind::Apply);
        EXPECT_EQ(broken.by, minutes{3});
    }
}

// Of the second coat ends, which develop longer, are applied before mids; 10 of mixing comes before, 5 are
// allowed.
TEST(BrokenLimits, OfAGapBetweenCoatsNameTheFirstApplication)
{
    Service service =
        fromOpening({makeZone("Mids", minutes{10}, exactly(20)), makeZone("Ends", minutes{10}, exactly(30))});
    service.coats.push_back(service.coats[0]);
    service.coats[1].name = "Gloss";
    service.coats[1].bowls[0].mix = minutes{10};
    service.coats[0].gapMost = minutes{5};
    const Plan plan = planned(breaking(service));

    ASSERT_EQ(plan->broken.size(), 1u);
    EXPECT_EQ(plan->broken[0].task, idOf(TaskKind::Apply, 1, 0, 1));
    EXPECT_EQ(plan->broken[0].by, minutes{5});
    EXPECT_THAT(plan->broken[0].what, HasSubstr("Gloss: at most 5 min after"));
}

// Applied until 20, rinsed since 70: 50 of at most 45, whatever is planned now.
TEST(BrokenLimits, OfTwoFactsAreListedWhetherOrNotLimitsMayBeBroken)
{
    Question question =
        ask(fromOpening({makeZone("Root", minutes{20}, {minutes{30}, minutes{35}, minutes{45}})}));
    happened(question, idOf(TaskKind::Apply, 0), 0, 20);
    happened(question, idOf(TaskKind::Rinse, 0), 70);
    question.now = at(71);
    for (const bool mayBreak : {false, true}) {
        question.mayBreakLimits = mayBreak;
        const auto answer = plan(question);
        ASSERT_TRUE(answer) << answer.error().text;
        ASSERT_EQ((*answer)->broken.size(), 1u) << mayBreak;
        EXPECT_TRUE((*answer)->broken[0].already);
        EXPECT_EQ((*answer)->broken[0].by, minutes{5});
    }
}

}  // namespace
}  // namespace core::stagger
