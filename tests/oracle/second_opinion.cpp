#include "tests/oracle/second_opinion.h"

#include "tests/oracle/checker.h"
#include "tests/oracle/facts.h"
#include "tests/oracle/figures.h"
#include "tests/oracle/gecode_model.h"
#include "tests/oracle/random_facts.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numeric>

namespace oracle {
namespace {

using core::stagger::Question;
using Kind = GecodeAnswer::Kind;

/// All but one answer of Gecode's in a hundred or so are proved with this many.
constexpr std::uint64_t mostFailures = 10'000;

Question drawn(std::uint64_t seed, Sizes sizes)
{
    if (seed % 5 == 0 && !sizes.uncertain) {
        sizes.looks = false;
        sizes.unit = core::measure::Seconds{30};
    }
    return randomQuestion(seed, sizes);
}

/// By whichever of two ways of searching comes to an end.
GecodeAnswer askGecode(const Question& question, bool everyStart)
{
    GecodeOptions options{.first = GecodeOptions::First::Deviation,
                          .restarts = true,
                          .earliestStarts = everyStart,
                          .mostFailures = mostFailures,
                          .mostOrders = 500};
    GecodeAnswer answer = planWithGecode(question, options);
    if (answer.kind != Kind::Open)
        return answer;
    options.first = GecodeOptions::First::Order;
    return planWithGecode(question, options);
}

/// Gecode gave up: its best plan, if any, is still no better than the planner's, which is proved.
void expectNoWorse(const core::stagger::Plan& plan, const GecodeAnswer& answer)
{
    EXPECT_GE(plan->give, answer.give);
    if (answer.plan && plan->give == answer.give) {
        EXPECT_LE(plan->worth, answer.plan->worth);
    }
}

/// Level 1. That the plan has the give it names is for the checker to say.
void expectGive(const Question& question, const core::stagger::Plan& plan, const GecodeAnswer& answer)
{
    EXPECT_TRUE(plan->giveProved);
    EXPECT_EQ(plan->give.has_value(), isUncertain(question));
    if (answer.kind == Kind::Best) {
        EXPECT_EQ(plan->give, answer.give) << planText(question, plan.data()) << "Gecode's:\n"
                                           << planText(question, *answer.plan);
    }
}

Opinions counted(const core::stagger::Plan& plan, const GecodeAnswer& answer)
{
    Opinions opinions{.planned = 1, .open = answer.kind == Kind::Open ? 1 : 0};
    if (plan->give && answer.kind == Kind::Best)
        ++opinions.give.at(static_cast<std::size_t>(*plan->give / 10));
    return opinions;
}

}  // namespace

Opinions& Opinions::operator+=(const Opinions& other)
{
    planned += other.planned;
    refused += other.refused;
    open += other.open;
    for (std::size_t tenth = 0; tenth < give.size(); ++tenth)
        give.at(tenth) += other.give.at(tenth);
    return *this;
}

int Opinions::withGive(std::size_t least, std::size_t most) const
{
    return std::accumulate(give.begin() + static_cast<std::ptrdiff_t>(least),
                           give.begin() + static_cast<std::ptrdiff_t>(most + 1), 0);
}

std::string textOf(const Opinions& opinions)
{
    std::string text = "planned " + std::to_string(opinions.planned) + ", refused "
        + std::to_string(opinions.refused) + ", of these left open by Gecode "
        + std::to_string(opinions.open);
    for (std::size_t tenth = 0; tenth < opinions.give.size(); ++tenth)
        text += (tenth == 0 ? "; give " : ", ") + std::to_string(10 * tenth)
            + " %: " + std::to_string(opinions.give.at(tenth));
    return text;
}

Opinions expectSameOpinion(const Question& question, Compare compare)
{
    const bool everyStart = compare == Compare::EveryStart;
    const GecodeAnswer answer = askGecode(question, everyStart);
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
    if (answer.kind == Kind::Best && !answer.plan)
        ADD_FAILURE() << "Gecode has starts for which hands do not suffice";
    if (answer.kind == Kind::Best && answer.plan) {
        EXPECT_EQ((*plan)->worth, answer.plan->worth) << planText(question, plan->data()) << "Gecode's:\n"
                                                      << planText(question, *answer.plan);
    }
    if (everyStart && answer.kind == Kind::Best && answer.plan) {
        EXPECT_EQ(startsInOrder(question, plan->data()), startsInOrder(question, *answer.plan))
            << planText(question, plan->data()) << "Gecode's:\n"
            << planText(question, *answer.plan);
    }
    expectGive(question, *plan, answer);
    expectNoWorse(*plan, answer);
    return counted(*plan, answer);
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

Opinions expectSameOpinionsUnderWay(std::uint64_t first, int questions, const Sizes& sizes, Compare compare)
{
    Opinions opinions;
    for (std::uint64_t seed = first; opinions.planned + opinions.refused < questions; ++seed) {
        Question question = randomQuestion(seed, sizes);
        question.guarantee = false;
        const auto plan = core::stagger::plan(question);
        question.guarantee = true;
        if (!plan)
            continue;
        question = underWay(question, plan->data(), seed);
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << questionText(question));
        opinions += expectSameOpinion(question, compare);
    }
    return opinions;
}

}  // namespace oracle
