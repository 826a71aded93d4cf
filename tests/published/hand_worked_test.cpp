#include "core/service/check.h"
#include "tests/oracle/checker.h"
#include "tests/oracle/service_maker.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>

// Cases small enough to be worked out on paper. Development times are common practice, no source; what
// follows from them is arithmetic, given beside each case. T is the moment of the water, all figures are
// minutes.

namespace published {
namespace {

using core::measure::Seconds;
using core::service::Service;
using core::service::Zone;
using core::stagger::NoPlan;
using core::stagger::Plan;
using core::stagger::Question;
using core::stagger::TaskId;
using core::stagger::TaskKind;
using oracle::ask;
using oracle::makeService;
using oracle::makeZone;
using oracle::opening;
using std::chrono::minutes;
using testing::IsEmpty;

/// Minutes from the opening at which everything here is to be ready: late enough for any of it.
constexpr int ready = 300;

Question readyInTime(Service service)
{
    service.readyBy = opening + minutes{ready};
    return ask(std::move(service));
}

TaskId apply(std::size_t zone)
{
    return {.service = 0, .coat = 0, .kind = TaskKind::Apply, .item = zone};
}

TaskId rinse(std::size_t group)
{
    return {.service = 0, .coat = 0, .kind = TaskKind::Rinse, .item = group};
}

/// Start of a task in minutes from T, the start of the first group's rinse.
Seconds fromWater(const Plan& plan, const TaskId& id)
{
    return plan.find(id)->start - plan.find(rinse(0))->start;
}

Plan planned(const Question& question)
{
    EXPECT_THAT(core::service::checkService(question.services.front()), IsEmpty());
    auto plan = core::stagger::plan(question);
    if (!plan)
        throw std::runtime_error("nothing fits: " + plan.error().text.text());
    EXPECT_TRUE((*plan)->proved);
    EXPECT_THAT(oracle::violations(question, plan->data()), IsEmpty());
    return *std::move(plan);
}

/// All that a refusal says.
std::string refusal(const Question& question)
{
    const auto plan = core::stagger::plan(question);
    if (plan)
        return "it fits";
    std::string words = plan.error().text;
    for (const core::stagger::Demand& demand : plan.error().demands)
        words += "\n" + demand.what.text();
    return words;
}

// Start = T - development - application = T - 35 - 20 = T - 55; the application ends at T - 35.
TEST(HandWorked, OneZoneStartsItsWorkAndItsDevelopmentBeforeWater)
{
    const Question question = readyInTime(
        makeService({makeZone("Root", minutes{20}, {minutes{30}, minutes{35}, minutes{45}})}, minutes{5}));
    const Plan plan = planned(question);
    EXPECT_EQ(fromWater(plan, apply(0)), -minutes{55});
    EXPECT_EQ(plan.find(apply(0))->end - plan.find(rinse(0))->start, -minutes{35});
    EXPECT_EQ(plan->end, opening + minutes{ready});  // As late as the promise allows.
    EXPECT_EQ(plan->worth.deviation.hundredthSeconds, 0);
    EXPECT_EQ(plan->worth.waste, minutes{60});
}

/// C lightener, A permanent, B demi-permanent, by one pair of hands.
Service lightenerPermanentAndDemi()
{
    return makeService({makeZone("Crown", minutes{40}, {minutes{45}, minutes{45}, minutes{50}}),
                        makeZone("Accent", minutes{20}, {minutes{30}, minutes{35}, minutes{45}}),
                        makeZone("Back", minutes{10}, {minutes{20}, minutes{20}, minutes{25}})},
                       minutes{5});
}

// At their targets (45, 35, 20) the crown, [T-85, T-45], and the accent, [T-55, T-35], overlap by 10.
// B is over at T-20 at the latest, so starts at T-30 at the latest; A must be over by T-30 and is over at
// T-45 at the earliest. C must be over by T-45 and is over at T-50 at the earliest. So C, A, B is the only
// order (B before A: A over at T-20+... no earlier than (T-25)+20 = T-5 > T-30). A starts at T-50 at the
// latest, so C is over at T-50 at the latest: exactly then. A [T-50, T-30]; B starts at T-30 at the earliest:
// exactly then.
TEST(HandWorked, ThreeZonesHaveOnePlanWithoutAnySlack)
{
    const Plan plan = planned(readyInTime(lightenerPermanentAndDemi()));
    EXPECT_EQ(fromWater(plan, apply(0)), -minutes{90});
    EXPECT_EQ(fromWater(plan, apply(1)), -minutes{50});
    EXPECT_EQ(fromWater(plan, apply(2)), -minutes{30});
    EXPECT_EQ(plan.zone(0, 0, 0)->development(), minutes{50});
    EXPECT_EQ(plan.zone(0, 0, 1)->development(), minutes{30});
    EXPECT_EQ(plan.zone(0, 0, 2)->development(), minutes{20});
    // 5 over + 5 under + 0, each at 1: 10 zone-minutes.
    EXPECT_EQ(plan->worth.deviation.hundredthSeconds, 10 * 60 * 100);
    EXPECT_EQ(plan->worth.waste, minutes{95});
}

// The same plan, whatever is best, shows that it is the only one: pull it one way and the other.
TEST(HandWorked, TheOnePlanDoesNotDependOnTargets)
{
    Service service = lightenerPermanentAndDemi();
    service.coats[0].zones[0].develop.target = minutes{47};
    service.coats[0].zones[1].develop.target = minutes{45};
    service.coats[0].zones[2].develop.target = minutes{25};
    for (const std::int64_t harm : {0, 100, 700}) {
        service.coats[0].zones[1].under.hundredths = harm;
        const Plan plan = planned(readyInTime(service));
        EXPECT_EQ(plan.zone(0, 0, 0)->development(), minutes{50});
        EXPECT_EQ(plan.zone(0, 0, 1)->development(), minutes{30});
        EXPECT_EQ(plan.zone(0, 0, 2)->development(), minutes{20});
    }
}

// No slack: the sum of applications between the ends of C and B is 30 = 50 - 20, between those of C and A
// 20 = 50 - 30, so any of the three bounds moved by a minute leaves nothing.
TEST(HandWorked, AMinuteLessAnywhereAndNothingFits)
{
    Service crown = lightenerPermanentAndDemi();
    crown.coats[0].zones[0].develop.most = minutes{49};
    EXPECT_THAT(refusal(readyInTime(crown)), testing::HasSubstr("Crown"));
    Service accent = lightenerPermanentAndDemi();
    accent.coats[0].zones[1].develop.least = minutes{31};
    EXPECT_THAT(refusal(readyInTime(accent)),
                testing::AllOf(testing::HasSubstr("Accent"), testing::HasSubstr("Crown")));
    Service back = lightenerPermanentAndDemi();
    back.coats[0].zones[2].develop.least = back.coats[0].zones[2].develop.target = minutes{21};
    EXPECT_THAT(refusal(readyInTime(back)),
                testing::AllOf(testing::HasSubstr("Back"), testing::HasSubstr("Crown")));
}

TEST(HandWorked, ASecondLessIsEnough)
{
    Service crown = lightenerPermanentAndDemi();
    crown.coats[0].zones[0].develop.most = minutes{50} - Seconds{1};
    EXPECT_FALSE(core::stagger::plan(readyInTime(crown)));
}

// 40 of application and 50 of development cover the first strand for 90, where 50 may be the most.
TEST(HandWorked, TheFirstStrandOfALongApplicationIsCoveredMuchLonger)
{
    Service service = lightenerPermanentAndDemi();
    const Plan plan = planned(readyInTime(service));
    EXPECT_EQ(plan.zone(0, 0, 0)->water - plan.zone(0, 0, 0)->firstContact, minutes{90});
    service.coats[0].zones[0].firstStrandMost = minutes{50};
    EXPECT_THAT(refusal(readyInTime(service)), testing::HasSubstr("Crown"));
}

// Batches of 5, each with at least 45 of development and 50 for its first strand: 5 + 45 = 50, so every batch
// is over exactly 45 before its water. One pair of hands cannot end two of them at once; two pairs can.
TEST(HandWorked, BatchesOfALongApplicationNeedASecondPairOfHands)
{
    std::vector<Zone> batches;
    for (const char* name : {"Left", "Right"}) {
        batches.push_back(makeZone(name, minutes{5}, {minutes{45}, minutes{45}, minutes{50}}));
        batches.back().firstStrandMost = minutes{50};
    }
    Service service = makeService(batches, minutes{5});
    EXPECT_THAT(refusal(readyInTime(service)),
                testing::AllOf(testing::HasSubstr("Left"), testing::HasSubstr("Right")));
    service.crew.hands.push_back({.name = "Hands 2", .away = {}, .kinds = {}});
    const Plan plan = planned(readyInTime(service));
    EXPECT_EQ(fromWater(plan, apply(0)), -minutes{50});
    EXPECT_EQ(fromWater(plan, apply(1)), -minutes{50});
}

/// Mixed in 3; the pot lasts 45 and the application takes 40.
Service longApplicationFromOneBowl()
{
    Service service =
        makeService({makeZone("Crown", minutes{40}, {minutes{30}, minutes{30}, minutes{45}})}, minutes{5});
    service.coats[0].bowls[0] = {.name = "Bowl 1", .mix = minutes{3}, .potLife = minutes{45}, .note = {}};
    return service;
}

// 45 - 40 = 5 is all that may pass between mixing and applying. 10 of another zone in between are too many:
// the bowl runs out 35 into the application. A second bowl mends it.
TEST(HandWorked, ABowlLastsForTheApplicationAndFiveMinutes)
{
    Service service = longApplicationFromOneBowl();
    service.coats[0].zones.push_back(
        makeZone("Fringe", minutes{10}, {minutes{70}, minutes{70}, minutes{85}}));
    service.coats[0].zones[0].after.push_back({.zone = 1, .longestGap = {}});
    EXPECT_THAT(refusal(readyInTime(service)), testing::HasSubstr("Bowl 1"));
    service.coats[0].bowls.push_back(
        {.name = "Bowl 2", .mix = minutes{3}, .potLife = minutes{45}, .note = {}});
    service.coats[0].zones[1].bowl = 1;
    // Fringe over at T-70, its target; the crown, 3 of mixing in between, [T-67 or later, T-30 at the
    // latest]: 40 must fit between T-70 and T-30, so the crown's bowl is mixed before the fringe is applied.
    // That is 10 + 40 = 50 before its application ends: more than 45. So the bowl is mixed in between, 3
    // lost, at 1 each.
    const Plan plan = planned(readyInTime(service));
    EXPECT_EQ(plan->worth.deviation.hundredthSeconds, 3 * 60 * 100);
    EXPECT_LE(plan.find(apply(0))->end - plan.find({.service = 0, .coat = 0, .kind = TaskKind::Mix})->end,
              minutes{45});
}

TEST(HandWorked, ABowlIsMixedJustBeforeItIsUsed)
{
    const Plan plan = planned(readyInTime(longApplicationFromOneBowl()));
    EXPECT_EQ(plan->worth.staleness, Seconds{0});
    EXPECT_EQ(fromWater(plan, {.service = 0, .coat = 0, .kind = TaskKind::Mix}), -minutes{73});
}

/// Three zones that take `length` each to apply, at one basin, 4 of rinsing each.
Service threeRinses(minutes length)
{
    const Zone zone = makeZone("", length, {minutes{20}, minutes{30}, minutes{40}});
    Service service = makeService({zone, zone, zone}, minutes{4});
    for (std::size_t place = 0; place < 3; ++place) {
        service.coats[0].zones[place].name = "Zone " + std::to_string(place + 1);
        service.coats[0].zones[place].group = place;
    }
    service.coats[0].groups = {
        {.name = "First", .rinse = minutes{4}, .waterEarliest = {}, .waterLatest = {}},
        {.name = "Second", .rinse = minutes{4}, .waterEarliest = {}, .waterLatest = {}},
        {.name = "Third", .rinse = minutes{4}, .waterEarliest = {}, .waterLatest = {}}};
    return service;
}

// Water at T, T+4, T+8. Applied one after the other in 4 each, every zone gets its target: the stagger of
// applying is that of rinsing.
TEST(HandWorked, RinsesAtOneBasinFollowOneAnother)
{
    const Plan plan = planned(readyInTime(threeRinses(minutes{4})));
    EXPECT_EQ(plan->worth.deviation.hundredthSeconds, 0);
    EXPECT_EQ(fromWater(plan, rinse(1)), minutes{4});
    EXPECT_EQ(fromWater(plan, rinse(2)), minutes{8});
}

// All three applied in one go from one minute to the next (by three pairs of hands that are there for nothing
// else) are over together; at one basin the last then waits 8 longer than the first. Spread about the target:
// the middle one gets it, the others miss it by 4: 8 zone-minutes.
TEST(HandWorked, ZonesAppliedTogetherCannotAllBeRinsedAtTheirTarget)
{
    Service service = threeRinses(minutes{4});
    for (const char* name : {"Hands 2", "Hands 3"})
        service.crew.hands.push_back({.name = name, .away = {}, .kinds = {}});
    service.notBefore = opening;
    Question question = readyInTime(service);
    for (core::service::Hands& hands : question.services[0].crew.hands)
        hands.away = {{.from = opening + minutes{4}, .until = opening + minutes{24}}};
    for (Zone& zone : question.services[0].coats[0].zones)
        zone.develop = {minutes{20}, minutes{30}, minutes{40}};
    question.services[0].readyBy =
        opening + minutes{50};  // Away until 24, and 30 + 12 after that is too late.
    const Plan plan = planned(question);
    for (std::size_t zone = 0; zone < 3; ++zone)
        EXPECT_EQ(plan.find(apply(zone))->start, opening);
    EXPECT_EQ(plan->worth.deviation.hundredthSeconds, 8 * 60 * 100);
}

// One group that is reached zone by zone over the rinse: at T, T+4 and T+8. The development of each counts
// until it is reached.
TEST(HandWorked, WaterReachesZonesOneAfterTheOther)
{
    Service service = threeRinses(minutes{4});
    service.coats[0].groups.resize(1);
    service.coats[0].groups[0].rinse = minutes{12};
    for (std::size_t place = 0; place < 3; ++place) {
        service.coats[0].zones[place].group = 0;
        service.coats[0].zones[place].reach = minutes{4} * place;
    }
    const Plan plan = planned(readyInTime(service));
    EXPECT_EQ(plan->worth.deviation.hundredthSeconds, 0);
    for (std::size_t place = 0; place < 3; ++place)
        EXPECT_EQ(fromWater(plan, apply(place)), -minutes{34} + minutes{4} * place);
}

// The case of every course in colouring (common practice, no source): a permanent root of 30 and a toner of
// 20 on the lengths are rinsed together, so the toner is over 30 - 20 = 10 after the root.
TEST(HandWorked, TonerIsFinishedTenMinutesAfterTheRoot)
{
    const Service service =
        makeService({makeZone("Root", minutes{20}, {minutes{30}, minutes{30}, minutes{35}}),
                     makeZone("Lengths", minutes{8}, {minutes{15}, minutes{20}, minutes{20}})},
                    minutes{5});
    const Plan plan = planned(readyInTime(service));
    EXPECT_EQ(plan.find(apply(1))->end - plan.find(apply(0))->end, minutes{10});
    EXPECT_EQ(plan.find(apply(1))->start - plan.find(apply(0))->end, minutes{2});  // The wait before toning.
    EXPECT_EQ(plan->worth.deviation.hundredthSeconds, 0);
}

// When the clocks go back on 2026-10-25 at 01:00 UTC, 35 minutes are 35 minutes.
TEST(HandWorked, DevelopmentIsElapsedTimeOnTheNightTheClocksChange)
{
    Service service =
        makeService({makeZone("Root", minutes{20}, {minutes{35}, minutes{35}, minutes{35}})}, minutes{5});
    service.timeZone = "Europe/London";
    service.readyBy = std::chrono::sys_days{std::chrono::year{2026} / 10 / 25} + minutes{75};
    const Plan plan = planned(ask(service));
    EXPECT_EQ(plan.zone(0, 0, 0)->development(), minutes{35});
    EXPECT_EQ(plan->start, *service.readyBy - minutes{60});
}

}  // namespace
}  // namespace published
