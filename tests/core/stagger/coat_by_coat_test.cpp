#include "core/stagger/coat_by_coat.h"

#include "core/stagger/plan_builder.h"
#include "tests/core/stagger/support.h"
#include "tests/oracle/random_service.h"

#include <gtest/gtest.h>

namespace core::stagger {
namespace {

/// All coats in one search.
std::optional<Plan> planAllAtOnce(const Question& question)
{
    Draft draft = draftOf(question, Strictness::Keep);
    const temporal::Outcome outcome = solve(draft, {});
    if (!outcome.best)
        return std::nullopt;
    return PlanBuilder::build(draft, outcome);
}

/// Nothing but their order is left to tie the coats together.
Question untied(Question question)
{
    Service& service = question.services.front();
    for (service::Hands& hands : service.crew.hands)
        hands.away.clear();
    for (service::Coat& coat : service.coats) {
        coat.gapMost.reset();
        for (service::RinseGroup& group : coat.groups) {
            group.waterEarliest.reset();
            group.waterLatest.reset();
        }
    }
    return question;
}

// The oracle is the same search over all coats at once, which the tests in tests/oracle hold against Gecode.
TEST(CoatByCoat, FindsThePlanOfAllCoatsAtOnce)
{
    int compared = 0;
    int late = 0;
    for (std::uint64_t seed = 1; seed <= 1500; ++seed) {
        const Question question =
            untied(oracle::randomQuestion(seed, {.mostZones = 2, .mostCoats = 3, .mostHands = 2}));
        const std::optional<Plan> apart = planCoatByCoat(question, {}).plan;
        if (!apart)
            continue;
        const std::optional<Plan> together = planAllAtOnce(question);
        ASSERT_TRUE(together) << oracle::questionText(question);
        ASSERT_EQ(apart->data(), together->data())
            << "seed " << seed << "\n"
            << oracle::questionText(question) << "\napart:\n"
            << oracle::planText(question, apart->data()) << "\ntogether:\n"
            << oracle::planText(question, together->data());
        ++compared;
        late += question.services.front().readyBy ? 1 : 0;
    }
    EXPECT_GT(compared, 100);
    EXPECT_GT(late, 10);
}

TEST(CoatByCoat, LeavesServicesThatAreTiedToTheClockToTheWholeSearch)
{
    Service service = fromOpening({makeZone("Root", minutes{10}, exactly(30))});
    service.coats.push_back(service.coats.front());
    service.coats.back().name = "Second";
    EXPECT_TRUE(planCoatByCoat(ask(service), {}).plan);

    Service booked = service;
    booked.coats.back().groups.front().waterLatest = at(600);
    EXPECT_FALSE(planCoatByCoat(ask(booked), {}).plan);

    Service away = service;
    away.crew.hands.front().away.push_back({at(300), at(330)});
    EXPECT_FALSE(planCoatByCoat(ask(away), {}).plan);

    Service gap = service;
    gap.coats.front().gapMost = std::chrono::minutes{20};
    EXPECT_FALSE(planCoatByCoat(ask(gap), {}).plan);
}

TEST(CoatByCoat, GivesUpOnAPromiseThatItsPlanWouldBreak)
{
    // Each coat takes 10 + 30 + 5 = 45 min; 89 min are one too few.
    Service service = readyBy(89, {makeZone("Root", minutes{10}, exactly(30))});
    service.notBefore = at(0);
    service.coats.push_back(service.coats.front());
    service.coats.back().name = "Second";
    EXPECT_FALSE(planCoatByCoat(ask(service), {}).plan);
    service.readyBy = at(90);
    EXPECT_TRUE(planCoatByCoat(ask(service), {}).plan);
}

}  // namespace
}  // namespace core::stagger
