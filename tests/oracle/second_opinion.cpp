#include "tests/oracle/second_opinion.h"

#include "tests/oracle/checker.h"
#include "tests/oracle/figures.h"
#include "tests/oracle/gecode_model.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace oracle {
namespace {

using core::stagger::Question;
using Kind = GecodeAnswer::Kind;

/// Nearly every answer of Gecode's is proved with this many; more would take it long and change little.
constexpr std::uint64_t mostFailures = 20'000;

Question drawn(std::uint64_t seed, Sizes sizes)
{
    if (seed % 5 == 0) {
        sizes.looks = false;
        sizes.unit = core::measure::Seconds{30};
    }
    return randomQuestion(seed, sizes);
}

/// Gecode gave up: its best plan, if any, is still no better than the planner's, which is proved.
void expectNoWorse(const core::stagger::Plan& plan, const GecodeAnswer& answer)
{
    if (answer.plan) {
        EXPECT_LE(plan->worth, answer.plan->worth);
    }
}

}  // namespace

Opinions& Opinions::operator+=(const Opinions& other)
{
    planned += other.planned;
    refused += other.refused;
    open += other.open;
    return *this;
}

Opinions expectSameOpinion(const Question& question, Compare compare)
{
    const bool everyStart = compare == Compare::EveryStart;
    const GecodeAnswer answer =
        planWithGecode(question, {.earliestStarts = everyStart, .mostFailures = mostFailures});
    const auto plan = core::stagger::plan(question);
    if (!plan) {
        EXPECT_FALSE(plan.error().stopped) << plan.error().text;
        EXPECT_FALSE(answer.plan) << "the planner says that nothing fits: " << plan.error().text << '\n'
                                  << planText(question, *answer.plan);
        return {.refused = 1, .open = answer.kind == Kind::Open ? 1 : 0};
    }
    EXPECT_TRUE((*plan)->proved);
    EXPECT_THAT(violations(question, plan->data()), testing::IsEmpty()) << planText(question, plan->data());
    EXPECT_NE(answer.kind, Kind::NothingFits) << "Gecode says that nothing fits\n"
                                              << planText(question, plan->data());
    if (answer.kind == Kind::Best && answer.plan) {
        EXPECT_EQ((*plan)->worth, answer.plan->worth) << planText(question, plan->data()) << "Gecode's:\n"
                                                      << planText(question, *answer.plan);
    }
    if (everyStart && answer.kind == Kind::Best && answer.plan) {
        EXPECT_EQ(startsInOrder(question, plan->data()), startsInOrder(question, *answer.plan))
            << planText(question, plan->data()) << "Gecode's:\n"
            << planText(question, *answer.plan);
    }
    expectNoWorse(*plan, answer);
    return {.planned = 1, .open = answer.kind == Kind::Open ? 1 : 0};
}

Opinions expectSameOpinions(std::uint64_t first, std::uint64_t last, const Sizes& sizes, Compare compare)
{
    Opinions opinions;
    for (std::uint64_t seed = first; seed <= last; ++seed) {
        const Question question = drawn(seed, sizes);
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << questionText(question));
        opinions += expectSameOpinion(question, compare);
    }
    return opinions;
}

}  // namespace oracle
