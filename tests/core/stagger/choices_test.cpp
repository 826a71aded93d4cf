#include "core/stagger/choices.h"

#include "tests/core/stagger/support.h"
#include "tests/oracle/checker.h"
#include "tests/oracle/random_service.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <tuple>

// What is left to choose when limits can no longer all hold. Worked out by hand, in minutes; harm a minute
// past a limit is that of docs/method.md.

namespace core::stagger {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

constexpr std::int64_t zoneMinute = 6000;

/// Root was applied from 0 to 20 and wants 30 to 45; ends take 10, have not begun at 40, and want 20 to 30.
Question rootWaitsForEnds(bool alone)
{
    Service service = fromOpening({makeZone("Root", minutes{20}, {minutes{30}, minutes{35}, minutes{45}}),
                                   makeZone("Ends", minutes{10}, {minutes{20}, minutes{25}, minutes{30}})});
    service.coats[0].zones[1].alone = alone;
    Question question = ask(service);
    happened(question, idOf(TaskKind::Apply, 0), 0, 20);
    question.now = at(40);
    question.mayBreakLimits = true;
    return question;
}

std::vector<std::string> sentences(const std::vector<Choice>& choices)
{
    std::vector<std::string> all;
    for (const Choice& choice : choices)
        all.push_back(choice.what);
    return all;
}

const Choice* find(const std::vector<Choice>& choices, ChoiceKind kind)
{
    const auto found = std::ranges::find(choices, kind, &Choice::kind);
    return found == choices.end() ? nullptr : &*found;
}

/// The services of a choice to go past a limit have just the room for it: with them all limits hold, and the
/// zones get what was offered.
void expectRoom(const Question& question, const Choice& choice)
{
    Question chosen = question;
    chosen.services = choice.services;
    chosen.mayBreakLimits = false;
    if (chosen.services == question.services)
        return;
    const auto plan = core::stagger::plan(chosen);
    ASSERT_TRUE(plan.has_value()) << choice.what << '\n' << plan.error().text;
    EXPECT_EQ((*plan)->worth.deviation, choice.plan->worth.deviation) << choice.what;
}

void expectSound(const Question& question, const Choice& choice)
{
    Question chosen = question;
    // The plan of a passed limit says by how much it is passed: by the services as they were asked for.
    if (choice.kind == ChoiceKind::PassLimit)
        expectRoom(question, choice);
    else
        chosen.services = choice.services;
    chosen.progress.dropped.insert(chosen.progress.dropped.end(), choice.drop.begin(), choice.drop.end());
    chosen.mayBreakLimits = true;
    EXPECT_THAT(oracle::violations(chosen, choice.plan.data()), IsEmpty())
        << choice.what << '\n'
        << oracle::planText(chosen, choice.plan.data());
    for (const TaskProgress& fact : question.progress.tasks) {
        const PlannedTask* task = choice.plan.find(fact.id);
        ASSERT_NE(task, nullptr) << choice.what;
        EXPECT_EQ(task->start, fact.start) << choice.what;
    }
}

// Ends are applied from 40 to 50 and get 20 at 70, when root has 50: 5 past 45. Or water at 65: root has its
// 45, ends 15, 5 short of 20. A minute past the most is harm 10, one short of the least harm 4: 50 or 20, and
// anything between is worse than the second, which is least harm altogether.
TEST(Choices, SayWhatGoingPastEachLimitWouldMean)
{
    const Question question = rootWaitsForEnds(false);
    const std::vector<Choice> choices = choicesFor(question);

    EXPECT_THAT(sentences(choices),
                ElementsAre("Stay 5 min short of: Ends: development of at least 20 min",
                            "Carry on with what is least harm altogether",
                            "Go 5 min past: Root: development of at most 45 min"));
    ASSERT_EQ(choices.size(), 3u);
    EXPECT_EQ(choices[0].plan->worth.breach.hundredthSeconds, 20 * zoneMinute);
    EXPECT_EQ(choices[1].plan->worth.breach.hundredthSeconds, 20 * zoneMinute);
    EXPECT_EQ(choices[2].plan->worth.breach.hundredthSeconds, 50 * zoneMinute);
    // At 65 root is 10 past 35 and ends 10 short of 25; at 70 they are 15 past and 5 short.
    EXPECT_EQ(choices[1].over.hundredthSeconds, 10 * zoneMinute);
    EXPECT_EQ(choices[1].under.hundredthSeconds, 10 * zoneMinute);
    EXPECT_EQ(choices[2].over.hundredthSeconds, 15 * zoneMinute);
    EXPECT_EQ(choices[2].under.hundredthSeconds, 5 * zoneMinute);
    for (const Choice& choice : choices)
        expectSound(question, choice);
}

// On its own root is rinsed at 55, right at its target, and ends at 75, at theirs: no harm at all.
TEST(Choices, RinseAZoneAlone)
{
    const Question question = rootWaitsForEnds(true);
    const std::vector<Choice> choices = choicesFor(question);

    ASSERT_FALSE(choices.empty());
    EXPECT_EQ(choices[0].kind, ChoiceKind::RinseAlone);
    EXPECT_EQ(choices[0].task, idOf(TaskKind::Apply, 1));
    EXPECT_EQ(choices[0].what, "Rinse Ends on its own");
    EXPECT_EQ(choices[0].plan->worth.breach.hundredthSeconds, 0);
    EXPECT_EQ(choices[0].over + choices[0].under, measure::Harm{0});
    EXPECT_EQ(choices[0].plan.zone(0, 0, 0)->water, at(55));
    EXPECT_EQ(choices[0].plan.zone(0, 0, 1)->water, at(75));
    for (const Choice& choice : choices)
        expectSound(question, choice);
}

// The look is due from 18 to 22 on the clock of root, and the job takes from 16 to 18 on at the latest until
// 28. Either can be left out, and then nothing is past its limit.
TEST(Choices, SkipALookOrAJob)
{
    Question question = ask(fromOpening({zoneWithLookAndJob()}));
    happened(question, idOf(TaskKind::Apply, 0), 0, 20);
    question.now = at(21);
    const std::vector<Choice> choices = choicesFor(question);

    const Choice* look = find(choices, ChoiceKind::SkipLooks);
    ASSERT_NE(look, nullptr);
    EXPECT_EQ(look->what, "Skip: Look at Root");
    EXPECT_THAT(look->drop, ElementsAre(idOf(TaskKind::Look, 0)));
    EXPECT_EQ(look->plan->worth.breach.hundredthSeconds, 0);
    const Choice* job = find(choices, ChoiceKind::SkipJob);
    ASSERT_NE(job, nullptr);
    EXPECT_EQ(job->what, "Leave out: Emulsify Root");
    EXPECT_THAT(job->drop, ElementsAre(idOf(TaskKind::Late, 0)));
    for (const Choice& choice : choices)
        expectSound(question, choice);
}

// Two zones have to be applied now, 10 and 8, and want 12 to 18 each: see the cures. Somebody is needed
// for 8.
TEST(Choices, CallSomebody)
{
    Question question =
        ask(fromOpening({makeZone("Mids", minutes{10}, {minutes{12}, minutes{15}, minutes{18}}),
                         makeZone("Ends", minutes{8}, {minutes{12}, minutes{15}, minutes{18}})}));
    question.now = at(5);
    const std::vector<Choice> choices = choicesFor(question);

    const Choice* call = find(choices, ChoiceKind::CallHands);
    ASSERT_NE(call, nullptr);
    EXPECT_EQ(call->what, "Call another pair of hands for 8 min");
    ASSERT_TRUE(call->when);
    EXPECT_GE(call->when->from, at(5));
    EXPECT_EQ(call->plan->worth.breach.hundredthSeconds, 0);
    EXPECT_EQ(call->services.front().crew.hands.size(), 2u);
}

TEST(Choices, AreNoneWhileEveryLimitCanHold)
{
    Question question = rootWaitsForEnds(false);
    question.now = at(30);  // Ends until 40, water at 60: root has 40, ends 20.
    EXPECT_THAT(choicesFor(question), IsEmpty());
}

TEST(Choices, AreLeastHarmFirstAndTheSameEachTime)
{
    for (std::uint64_t seed = 1; seed <= 120; ++seed) {
        Question question =
            oracle::randomQuestion(seed, {.mostZones = 3, .mostCoats = 1, .unit = minutes{1}});
        SCOPED_TRACE("seed " + std::to_string(seed) + '\n' + oracle::questionText(question));
        const std::vector<Choice> choices = choicesFor(question);
        EXPECT_TRUE(std::ranges::is_sorted(choices, [](const Choice& a, const Choice& b) {
            return std::tuple{a.plan->worth.breach, a.plan->broken.size(), a.under + a.over}
            < std::tuple{b.plan->worth.breach, b.plan->broken.size(), b.under + b.over};
        }));
        for (const Choice& choice : choices)
            expectSound(question, choice);
        const std::vector<Choice> again = choicesFor(question);
        EXPECT_EQ(sentences(choices), sentences(again));
    }
}

}  // namespace
}  // namespace core::stagger
