#include "core/stagger/plan.h"

#include "core/service/check.h"
#include "tests/core/stagger/support.h"
#include "tests/oracle/checker.h"
#include "tests/oracle/random_service.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cstdlib>

// What holds for every service. Seeds are fixed unless RC_PARAMS says otherwise.

namespace core::stagger {
namespace {

const bool seeded = ::setenv("RC_PARAMS", "seed=20260105 max_success=80", 0) == 0;

using Answer = tl::expected<Plan, NoPlan>;

Question anyQuestion()
{
    const auto seed = *rc::gen::inRange<std::uint64_t>(1, 1'000'000);
    return oracle::randomQuestion(seed, {.mostZones = 3});
}

/// Absent where nothing fits.
std::optional<Worth> worthOf(const Question& question)
{
    const Answer answer = plan(question);
    if (!answer) {
        RC_ASSERT(!answer.error().stopped);
        return {};
    }
    RC_ASSERT((*answer)->proved);
    return (*answer)->worth;
}

void assertNoWorse(const Question& before, const Question& after)
{
    const std::optional<Worth> worth = worthOf(before);
    const std::optional<Worth> better = worthOf(after);
    RC_LOG() << oracle::questionText(before) << oracle::questionText(after);
    if (worth) {
        RC_ASSERT(better);
        RC_ASSERT(*better <= *worth);
    }
}

RC_GTEST_PROP(PlannerProperty, TheSameQuestionHasTheSameAnswer, ())
{
    const Question question = anyQuestion();
    const bool same = plan(question) == plan(question);
    RC_ASSERT(same);
}

RC_GTEST_PROP(PlannerProperty, EveryPlanIsSoundToTheChecker, ())
{
    const Question question = anyQuestion();
    const Answer answer = plan(question);
    RC_LOG() << oracle::questionText(question);
    if (answer)
        RC_ASSERT(oracle::violations(question, answer->data()).empty());
}

RC_GTEST_PROP(PlannerProperty, NamesDecideNothing, ())
{
    const Question question = anyQuestion();
    Question renamed = question;
    for (service::Coat& coat : renamed.services.front().coats) {
        for (std::size_t place = 0; place < coat.zones.size(); ++place)
            coat.zones[place].name = std::string(1, static_cast<char>('Z' - static_cast<int>(place)));
    }
    const Answer answer = plan(question);
    const Answer other = plan(renamed);
    RC_ASSERT(answer.has_value() == other.has_value());
    if (answer)
        RC_ASSERT(answer->data() == other->data());
}

/// The zones of each coat the other way round.
Question reversed(Question question)
{
    for (service::Coat& coat : question.services.front().coats) {
        std::ranges::reverse(coat.zones);
        for (Zone& zone : coat.zones) {
            for (service::After& after : zone.after)
                after.zone = coat.zones.size() - 1 - after.zone;
        }
    }
    return question;
}

RC_GTEST_PROP(PlannerProperty, TheOrderOfZonesDoesNotChangeTheWorth, ())
{
    const Question question = anyQuestion();
    RC_ASSERT(worthOf(question) == worthOf(reversed(question)));
}

void shift(std::optional<Instant>& instant, Seconds by)
{
    if (instant)
        *instant += by;
}

Question shifted(Question question, Seconds by)
{
    Service& service = question.services.front();
    shift(service.notBefore, by);
    shift(service.readyBy, by);
    shift(question.now, by);
    for (service::Hands& hands : service.crew.hands) {
        for (measure::Interval& away : hands.away)
            away = {away.from + by, away.until + by};
    }
    for (service::Coat& coat : service.coats) {
        for (service::RinseGroup& group : coat.groups) {
            shift(group.waterEarliest, by);
            shift(group.waterLatest, by);
        }
    }
    return question;
}

RC_GTEST_PROP(PlannerProperty, TomorrowIsLikeToday, ())
{
    const Question question = anyQuestion();
    const Seconds by{*rc::gen::inRange(-100'000'000, 100'000'000)};
    const Answer answer = plan(question);
    const Answer later = plan(shifted(question, by));
    RC_ASSERT(answer.has_value() == later.has_value());
    if (!answer)
        return;
    PlanData expected = answer->data();
    expected.start += by;
    expected.end += by;
    for (PlannedTask& task : expected.tasks) {
        task.start += by;
        task.end += by;
    }
    for (PlannedZone& zone : expected.zones) {
        for (Instant* instant : {&zone.firstContact, &zone.applicationEnd, &zone.clockStart, &zone.water})
            *instant += by;
    }
    RC_ASSERT(later->data() == expected);
}

RC_GTEST_PROP(PlannerProperty, AnotherPairOfHandsNeverHurts, ())
{
    const Question question = anyQuestion();
    Question helped = question;
    addHands(helped.services.front());
    assertNoWorse(question, helped);
}

RC_GTEST_PROP(PlannerProperty, AnotherBasinNeverHurts, ())
{
    const Question question = anyQuestion();
    Question helped = question;
    ++helped.services.front().crew.basins;
    assertNoWorse(question, helped);
}

RC_GTEST_PROP(PlannerProperty, AWiderWindowNeverHurts, ())
{
    const Question question = anyQuestion();
    Question wider = question;
    for (service::Coat& coat : wider.services.front().coats) {
        for (Zone& zone : coat.zones) {
            zone.develop.least -= std::min(zone.develop.least, Seconds{*rc::gen::inRange(0, 4)});
            zone.develop.most += Seconds{*rc::gen::inRange(0, 4)};
        }
    }
    assertNoWorse(question, wider);
}

/// Closer to the usual length on either side.
void narrow(service::Application& apply)
{
    apply.quickest = Seconds{*rc::gen::inRange(apply.quickest.count(), apply.usual.count() + 1)};
    apply.slowest = Seconds{*rc::gen::inRange(apply.usual.count(), apply.slowest.count() + 1)};
}

RC_GTEST_PROP(PlannerProperty, WhatHoldsStillHoldsWhenLengthsAreLessUncertain, ())
{
    const auto seed = *rc::gen::inRange<std::uint64_t>(1, 1'000'000);
    const Question question = oracle::randomQuestion(seed, {.mostZones = 3, .uncertain = true});
    Question surer = question;
    for (service::Service& service : surer.services) {
        for (service::Coat& coat : service.coats) {
            for (Zone& zone : coat.zones)
                narrow(zone.apply);
        }
    }
    const Answer before = plan(question);
    if (!before)
        return;  // Whether anything fits is a matter of the usual lengths, which are the same.
    const Answer after = plan(surer);
    RC_LOG() << oracle::questionText(question) << oracle::questionText(surer);
    RC_ASSERT(after);
    if ((*before)->give && (*after)->giveProved) {
        // Where nothing is uncertain any more there is no give to speak of, and everything holds.
        constexpr int everything = 100;
        RC_ASSERT((*after)->give.value_or(everything) >= *(*before)->give);
    }
}

RC_GTEST_PROP(PlannerProperty, ALaterPromiseNeverCostsDevelopment, ())
{
    const Question question = anyQuestion();
    Question later = question;
    shift(later.services.front().readyBy, Seconds{*rc::gen::inRange(1, 20)});
    const auto worth = worthOf(question);
    const auto better = worthOf(later);
    if (worth) {
        RC_ASSERT(better);
        RC_ASSERT(better->deviation <= worth->deviation);
    }
}

/// A broken promise, pot life or gap between coats is listed by the one task that it belongs to, where the
/// checker looks for every task that is late. Each is excused if it is listed at all.
std::vector<std::string> wrongBesidesWhatIsListed(const Question& question, const PlanData& plan)
{
    std::vector<std::string> wrong = oracle::violations(question, plan);
    const auto excuse = [&](const std::string& listed, const std::string& line) {
        const auto names = [&](const BrokenLimit& broken) {
            return broken.what.text().find(listed) != std::string::npos;
        };
        if (std::ranges::any_of(plan.broken, names))
            std::erase_if(wrong,
                          [&](const std::string& each) { return each.find(line) != std::string::npos; });
    };
    excuse("ready by the promised time", "ends after the promise less the buffer");
    excuse("used up within", "applied past its pot life");
    excuse(" after Coat", "too long a gap after coat");
    excuse(" after Coat", "too short a gap after coat");
    return wrong;
}

// Where limits may be broken something always comes out, and where they can be kept it is the same.
RC_GTEST_PROP(PlannerProperty, MayBreakLimitsChangesOnlyWhatDoesNotFit, ())
{
    Question question = anyQuestion();
    const Answer strict = plan(question);
    question.mayBreakLimits = true;
    const Answer lax = plan(question);
    if (strict) {
        const bool same = lax == strict;
        RC_ASSERT(same);
    } else if (lax) {
        RC_LOG() << oracle::questionText(question) << oracle::planText(question, lax->data());
        RC_ASSERT(lax->data().worth.breach > measure::Harm{});
        RC_ASSERT(!lax->data().broken.empty());
        RC_ASSERT(wrongBesidesWhatIsListed(question, lax->data()) == std::vector<std::string>{});
    }
}

// However early it is stopped: what it has is sound, and nothing better than its bound exists.
RC_GTEST_PROP(PlannerProperty, AStoppedSearchIsHonest, ())
{
    const Question question = anyQuestion();
    const Answer whole = plan(question);
    const auto conflicts = *rc::gen::inRange<std::uint64_t>(0, 40);
    const Answer early = plan(question, {.conflicts = conflicts, .stop = {}});
    RC_LOG() << oracle::questionText(question);
    if (!early) {
        RC_ASSERT((!whole || early.error().stopped));
        return;
    }
    RC_ASSERT(whole);
    RC_ASSERT(oracle::violations(question, early->data()).size() == 0);
    RC_ASSERT(early->data().worth >= whole->data().worth);
    RC_ASSERT(early->data().provedBound <= whole->data().worth);
    if (early->data().proved)
        RC_ASSERT(early->data().tasks == whole->data().tasks);
}

TEST(PlannerLimits, AStopIsHonouredAtOnce)
{
    const Question question = oracle::randomQuestion(4, {.mostZones = 4});
    const Answer answer = plan(question, {.conflicts = 0, .stop = [] { return true; }});
    if (answer)
        EXPECT_FALSE((*answer)->proved);
    else
        EXPECT_TRUE(answer.error().stopped);
}

/// As much as a service file may hold: `zones` with `looks` looks each.
Question absurd(int zones, int looks)
{
    std::vector<Zone> all;
    for (int count = 1; count <= zones; ++count) {
        all.push_back(makeZone("Zone " + std::to_string(count), minutes{5},
                               {minutes{10}, minutes{20 + count}, minutes{1400}}));
        if (looks > 0)
            all.back().looks = service::Looks{.first = minutes{2},
                                              .every = minutes{2},
                                              .length = Seconds{20},
                                              .tolerance = minutes{1},
                                              .until = minutes{2 + 2 * looks}};
    }
    return ask(fromOpening(all));
}

TEST(PlannerLimits, ManyZonesAreGivenUpWhenTold)
{
    const Question question = absurd(60, 0);
    ASSERT_TRUE(service::checkService(question.services.front()).empty());
    int asked = 0;
    const Answer answer = plan(question, {.conflicts = 50, .stop = [&] { return ++asked > 5; }});
    if (answer) {
        EXPECT_TRUE((*answer)->proved || (*answer)->provedBound <= (*answer)->worth);
        EXPECT_TRUE(oracle::violations(question, answer->data()).empty());
    } else {
        EXPECT_TRUE(answer.error().stopped);
    }
}

// Twenty thousand looks: nobody could make them, and a table of every pair of them would not fit into memory.
TEST(PlannerLimits, MoreThanCanBeHeldIsRefusedInWords)
{
    const Question question = absurd(200, 100);
    ASSERT_TRUE(service::checkService(question.services.front()).empty());
    const Answer answer = plan(question);
    ASSERT_FALSE(answer);
    EXPECT_NE(answer.error().text.text().find("more than can be planned at once"), std::string::npos)
        << answer.error().text;
}

}  // namespace
}  // namespace core::stagger
