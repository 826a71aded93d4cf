#include "tests/oracle/gecode_model.h"

#include "core/service/check.h"
#include "tests/oracle/brute_force.h"
#include "tests/oracle/checker.h"
#include "tests/oracle/figures.h"
#include "tests/oracle/random_service.h"
#include "tests/oracle/service_maker.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// The ways of planning that the planner is held against, held against one another.

namespace oracle {
namespace {

using core::stagger::PlanData;
using core::stagger::Question;
using Kind = GecodeAnswer::Kind;
using testing::IsEmpty;

/// Two zones (one looked at, from a bowl that is mixed or not), in so few seconds that all can be tried.
Question tinyQuestion(std::uint64_t seed)
{
    const auto bit = [seed](int place) { return static_cast<int>(seed >> place & 1); };
    core::service::Zone one =
        makeZone("One", Seconds{1 + bit(0)}, {Seconds{2}, Seconds{3 + bit(1)}, Seconds{5}});
    core::service::Zone two = makeZone("Two", Seconds{2}, {Seconds{1}, Seconds{2 + bit(2)}, Seconds{4}});
    if (bit(3) == 1)
        one.looks = core::service::Looks{.first = Seconds{1 + bit(4)},
                                         .every = {},
                                         .length = Seconds{1},
                                         .tolerance = Seconds{bit(5)},
                                         .until = Seconds{3}};
    if (bit(4) == 1)
        two.clock = core::service::ClockStart::FirstContact;
    one.over.hundredths = 50 + 100 * bit(6);
    core::service::Service made = makeService({one, two}, Seconds{1 + bit(7)});
    if (bit(3) == 0)
        made.coats[0].bowls[0].mix = Seconds{1};
    if (bit(5) == 1)
        made.coats[0].bowls[0].potLife = Seconds{4};
    if (bit(6) == 1)
        made.crew.hands.push_back({.name = "Hands 2", .away = {}, .kinds = {}});
    if (bit(1) == 1)
        made.crew.hands[0].away.push_back({.from = opening + Seconds{3}, .until = opening + Seconds{4}});
    made.notBefore = opening;
    made.readyBy = opening + Seconds{6 + bit(2) + 2 * bit(7)};
    Question question = ask(made);
    if (bit(0) == 1)
        question.preference = core::stagger::Preference::EndEarly;
    return question;
}

/// Two heads with a zone each on one basin, one of them looked at or mixed for.
Question tinyHeads(std::uint64_t seed)
{
    const auto bit = [seed](int place) { return static_cast<int>(seed >> place & 1); };
    core::service::Zone one = makeZone("One", Seconds{1 + bit(0)}, {Seconds{1}, Seconds{2}, Seconds{3}});
    core::service::Zone two = makeZone("Two", Seconds{2}, {Seconds{1}, Seconds{1 + bit(1)}, Seconds{3}});
    if (bit(2) == 1)
        one.looks = core::service::Looks{.first = Seconds{1},
                                         .every = {},
                                         .length = Seconds{1},
                                         .tolerance = Seconds{bit(3)},
                                         .until = Seconds{2}};
    core::service::Service first = makeService({one}, Seconds{1 + bit(4)});
    core::service::Service second = makeService({two}, Seconds{1});
    if (bit(2) == 0)
        second.coats[0].bowls[0].mix = Seconds{1};
    if (bit(5) == 1)
        first.crew.hands.push_back({.name = "Hands 2", .away = {}, .kinds = {}});
    if (bit(3) == 1)
        first.crew.hands[0].away.push_back({.from = opening + Seconds{2}, .until = opening + Seconds{3}});
    first.notBefore = opening;
    first.readyBy = opening + Seconds{7};
    second.notBefore = opening + Seconds{bit(6)};
    second.readyBy = opening + Seconds{7 + bit(1)};
    Question question = ask(first);
    question.services.push_back(second);
    if (bit(0) == 1)
        question.preference = core::stagger::Preference::EndEarly;
    return question;
}

TEST(GecodeModel, AgreesWithTryingAllOnTwoTinyHeads)
{
    int planned = 0;
    int refused = 0;
    for (std::uint64_t seed = 0; seed < 128; seed += 3) {
        const Question question = tinyHeads(seed);
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << questionText(question));
        const auto tried = planByTryingAll(question);
        const GecodeAnswer answer = planWithGecode(question, {.earliestStarts = true});
        ASSERT_EQ(answer.kind, tried ? Kind::Best : Kind::NothingFits);
        refused += tried ? 0 : 1;
        if (!tried)
            continue;
        ++planned;
        ASSERT_TRUE(answer.plan);
        EXPECT_EQ(answer.plan->worth, tried->worth)
            << planText(question, *tried) << planText(question, *answer.plan);
        EXPECT_EQ(startsInOrder(question, *answer.plan), startsInOrder(question, *tried));
    }
    EXPECT_GT(planned, 10);
    EXPECT_GT(refused, 3);
}

TEST(GecodeModel, AgreesWithTryingAllOnTinyServices)
{
    int planned = 0;
    for (std::uint64_t seed = 0; seed < 256; seed += 3) {
        const Question question = tinyQuestion(seed);
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << questionText(question));
        ASSERT_THAT(core::service::checkService(question.services.front()), IsEmpty());
        const auto tried = planByTryingAll(question);
        const GecodeAnswer answer = planWithGecode(question, {.earliestStarts = true});
        ASSERT_EQ(answer.kind, tried ? Kind::Best : Kind::NothingFits);
        if (!tried)
            continue;
        ++planned;
        ASSERT_TRUE(answer.plan);
        EXPECT_EQ(answer.plan->worth, tried->worth)
            << planText(question, *tried) << planText(question, *answer.plan);
        EXPECT_EQ(startsInOrder(question, *answer.plan), startsInOrder(question, *tried));
    }
    EXPECT_GT(planned, 30);  // Or the test says nothing.
    EXPECT_LT(planned, 80);
}

TEST(GecodeModel, ItsPlansPassTheChecker)
{
    int planned = 0;
    int refused = 0;
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        const Question question = randomQuestion(seed, {.mostZones = 3});
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << questionText(question));
        const GecodeAnswer answer = planWithGecode(question);
        refused += answer.kind == Kind::NothingFits ? 1 : 0;
        if (answer.kind != Kind::Best)
            continue;
        ++planned;
        ASSERT_TRUE(answer.plan);
        EXPECT_THAT(violations(question, *answer.plan), IsEmpty()) << planText(question, *answer.plan);
    }
    EXPECT_GT(planned, 30);
    EXPECT_GT(refused, 10);
    EXPECT_GT(planned + refused, 95);
}

// The reading that matters: whole seconds are tried only where there are looks.
TEST(GecodeModel, TheGridOfTheDataLosesNothingWithoutLooks)
{
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const Question question = randomQuestion(seed, {.mostZones = 2, .looks = false, .unit = Seconds{3}});
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << questionText(question));
        const GecodeAnswer coarse = planWithGecode(question);
        const GecodeAnswer fine = planWithGecode(question, {.grid = Seconds{1}});
        ASSERT_NE(fine.kind, Kind::Open);
        ASSERT_EQ(coarse.kind, fine.kind);
        if (fine.plan) {
            EXPECT_EQ(coarse.plan->worth, fine.plan->worth);
        }
    }
}

}  // namespace
}  // namespace oracle
