#include "core/stagger/cures.h"

#include "core/service/check.h"
#include "core/service/service_file.h"
#include "tests/core/stagger/support.h"
#include "tests/oracle/checker.h"
#include "tests/oracle/random_service.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

// What would make it fit. Every case is worked out by hand; times are minutes. The times and limits are made
// up, and the words of the trade are common practice, no source.

namespace core::stagger {
namespace {

using service::Looks;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

std::vector<Cure> curesOf(const Question& question)
{
    const NoPlan reason = refused(question);
    std::vector<Cure> cures = curesFor(question, reason);
    for (const Cure& cure : cures) {
        SCOPED_TRACE(cure.what());
        Question cured = question;
        cured.services = cure.services;
        EXPECT_EQ(planned(cured), cure.plan) << "the services are not those that were planned";
    }
    return cures;
}

std::vector<Cure> curesOf(const Service& service)
{
    return curesOf(ask(service));
}

std::vector<std::string> sentences(const std::vector<Cure>& cures)
{
    std::vector<std::string> all;
    for (const Cure& cure : cures)
        all.push_back(cure.what());
    return all;
}

const Cure* find(const std::vector<Cure>& cures, CureKind kind)
{
    const auto found =
        std::ranges::find_if(cures, [&](const Cure& cure) { return cure.steps.front().kind == kind; });
    return found == cures.end() ? nullptr : &*found;
}

Seconds amountOf(const std::vector<Cure>& cures, CureKind kind)
{
    const Cure* cure = find(cures, kind);
    return cure != nullptr ? cure->steps.front().by : Seconds{-1};
}

/// Two toners that take 10 and 8 and want 12 to 18 of development each, one rinse, one pair of hands.
Service twoToners()
{
    return fromOpening({makeZone("Mids", minutes{10}, {minutes{12}, minutes{15}, minutes{18}}),
                        makeZone("Ends", minutes{8}, {minutes{12}, minutes{15}, minutes{18}})});
}

// Water reaches both at once. Mids first: mids develop 8 longer than ends, so that 12 + 8 = 20 is 2 more than
// 18. Ends first: 12 + 10 = 22 is 4 more. Somebody else can apply ends meanwhile, which takes 8. In
// hundredths of change: 2 * 400 = 800, 4 * 400 = 1600, 1000 + 8 * 100 = 1800, 2 * 1000 = 2000, 4 * 1000 =
// 4000.
TEST(Cures, AreRankedByHowLittleTheyChange)
{
    const std::vector<Cure> cures = curesOf(twoToners());

    EXPECT_THAT(sentences(cures),
                ElementsAre("Let Ends be rinsed from 10 min on (now from 12 min)",
                            "Let Mids be rinsed from 8 min on (now from 12 min)",
                            "Call another pair of hands for 8 min",
                            "Let Mids develop up to 20 min (now 18 min)",
                            "Let Ends develop up to 22 min (now 18 min)"));
    std::vector<std::int64_t> changes;
    for (const Cure& cure : cures)
        changes.push_back(cure.change.hundredthSeconds / 60);
    EXPECT_THAT(changes, ElementsAre(800, 1600, 1800, 2000, 4000));
    EXPECT_EQ(cures[0].steps.front().note, "Only if the product's leaflet allows it.");
}

TEST(Cures, AreTheSameEachTime)
{
    const std::vector<Cure> first = curesOf(twoToners());
    const std::vector<Cure> second = curesOf(twoToners());

    ASSERT_EQ(first.size(), second.size());
    for (std::size_t place = 0; place < first.size(); ++place) {
        EXPECT_EQ(first[place].steps, second[place].steps);
        EXPECT_EQ(first[place].services, second[place].services);
        EXPECT_EQ(first[place].plan, second[place].plan);
    }
}

TEST(Cures, CanBeSavedAndReadBack)
{
    const measure::UtcOnly zones;
    for (const Cure& cure : curesOf(twoToners())) {
        std::ostringstream text;
        service::writeService(text, cure.services.front(), zones);
        const auto read = service::readService(std::string_view{text.view()}, {zones, "UTC", {}});
        ASSERT_TRUE(read) << cure.what() << '\n' << service::problemText(read.error().front());
        EXPECT_EQ(*read, cure.services.front()) << cure.what();
    }
}

// Rinsed on its own, ends need not wait for mids: applied first they get 12 at 8 + 12 = 20, and mids, applied
// from 8 to 18, get 12 at 30. The rinse more takes 5: 5 * 100 = 500 is the least change of all.
TEST(Cures, RinseAZoneOnItsOwnWhereThatCanBeDone)
{
    Service service = twoToners();
    service.coats[0].zones[1].alone = true;
    const std::vector<Cure> cures = curesOf(service);

    ASSERT_FALSE(cures.empty());
    EXPECT_EQ(cures[0].steps.front().kind, CureKind::RinseAlone);
    EXPECT_EQ(cures[0].steps.front().task, idOf(TaskKind::Apply, 1));
    EXPECT_EQ(cures[0].change.hundredthSeconds, 500 * 60);
    EXPECT_THAT(cures[0].what(), HasSubstr("Rinse Ends on its own, "));
    EXPECT_EQ(cures[0].services.front().coats[0].groups[1].name, "Ends alone");
    EXPECT_NE(cures[0].plan.zone(0, 0, 0)->water, cures[0].plan.zone(0, 0, 1)->water);
}

TEST(Cures, NeverRinseAZoneOnItsOwnWhoseNeighboursWouldGetWet)
{
    EXPECT_EQ(find(curesOf(twoToners()), CureKind::RinseAlone), nullptr);
}

// 20 + 30 + 5 = 55 from the opening, promised by 60 with 10 to spare: 5 of the 10 can be kept.
TEST(Cures, OfAPromiseUseUpWhatIsSparedFirst)
{
    Service service = fromOpening({makeZone("Root", minutes{20}, exactly(30))});
    service.readyBy = at(60);
    service.buffer = minutes{10};
    const std::vector<Cure> cures = curesOf(service);

    ASSERT_FALSE(cures.empty());
    EXPECT_EQ(cures[0].what(), "Keep 5 min to spare before the promised time (now 10 min)");
    EXPECT_EQ(cures[0].services.front().buffer, minutes{5});
    EXPECT_EQ(cures[0].services.front().readyBy, at(60));
    EXPECT_EQ(amountOf(cures, CureKind::StartEarlier), minutes{5});
    EXPECT_EQ(find(cures, CureKind::LaterPromise), nullptr);
}

// Promised by 50 with 2 to spare: the 2 are used up, and 5 more are needed. Or 20 + 23 + 5 = 48.
TEST(Cures, OfAPromisePutItOffByTheLeastMinutes)
{
    Service service = fromOpening({makeZone("Root", minutes{20}, exactly(30))});
    service.readyBy = at(50);
    service.buffer = minutes{2};
    Question question = ask(service);
    question.now = opening;
    const std::vector<Cure> cures = curesOf(question);

    EXPECT_THAT(sentences(cures),
                ElementsAre("Promise it 5 min later", "Let Root be rinsed from 23 min on (now from 30 min)"));
    EXPECT_EQ(cures[0].services.front().readyBy, at(55));
    EXPECT_EQ(cures[0].services.front().buffer, minutes{0});
    EXPECT_EQ(cures[0].steps.front().note, "The 2 min to spare are used up as well.");
}

// Away from 10 to 30, everything over by 60: the 20 of applying have to be done by 25, so they begin by 5.
// Leaving at 20 is 10 later. Coming back by 5 would be before leaving.
TEST(Cures, ShortenAnAbsence)
{
    Service service = fromOpening({makeZone("Root", minutes{20}, exactly(30))});
    service.readyBy = at(60);
    service.crew.hands[0].away = {{at(10), at(30)}};
    const std::vector<Cure> cures = curesOf(service);

    const Cure* later = find(cures, CureKind::LeaveLater);
    ASSERT_NE(later, nullptr);
    EXPECT_EQ(later->what(), "Let Hands 1 leave 10 min later");
    EXPECT_THAT(later->services.front().crew.hands[0].away, ElementsAre(Interval{at(20), at(30)}));
    const Cure* back = find(cures, CureKind::ReturnEarlier);
    ASSERT_NE(back, nullptr);
    EXPECT_EQ(back->what(), "Let Hands 1 not be away at all");
    EXPECT_THAT(back->services.front().crew.hands[0].away, IsEmpty());
}

// Two zones of 10 each by one pair of hands take 20 from the first application, and the bowl lasts 15.
TEST(Cures, MixASecondBowlOrUseItLonger)
{
    const oracle::Span broad{minutes{10}, minutes{20}, minutes{60}};
    Service service =
        fromOpening({makeZone("Mids", minutes{10}, broad), makeZone("Ends", minutes{10}, broad)});
    service.coats[0].bowls[0].potLife = minutes{15};
    const std::vector<Cure> cures = curesOf(service);

    ASSERT_FALSE(cures.empty());
    EXPECT_EQ(cures[0].steps.front().kind, CureKind::SecondBowl);
    EXPECT_THAT(cures[0].what(), HasSubstr("Mix another bowl of Bowl 1 for "));
    EXPECT_EQ(cures[0].services.front().coats[0].bowls[1].name, "Bowl 1 2");
    EXPECT_EQ(amountOf(cures, CureKind::LongerPotLife), minutes{5});
    EXPECT_EQ(
        std::ranges::count_if(cures, [](const Cure& c) { return c.steps[0].kind == CureKind::SecondBowl; }),
        1)
        << "one split of a bowl is enough to choose from";
}

// Root goes on first and develops 10 longer than ends, but wants 10 less.
TEST(Cures, LetAnOrderGo)
{
    Service service =
        fromOpening({makeZone("Root", minutes{10}, exactly(12)), makeZone("Ends", minutes{10}, exactly(22))});
    service.coats[0].zones[1].after = {{.zone = 0, .longestGap = {}}};
    const std::vector<Cure> cures = curesOf(service);
    const Cure* cure = find(cures, CureKind::LetGoOrder);

    ASSERT_NE(cure, nullptr);
    EXPECT_EQ(cure->what(), "Apply Ends without waiting for Root");
    EXPECT_THAT(cure->services.front().coats[0].zones[1].after, IsEmpty());
}

// Root is over 40 before the water and ends start 20 + 10 before it: 10 between them, at most 5 allowed.
TEST(Cures, LetABlendLineWaitLonger)
{
    Service service =
        fromOpening({makeZone("Root", minutes{10}, exactly(40)), makeZone("Ends", minutes{10}, exactly(20))});
    service.coats[0].zones[1].after = {{.zone = 0, .longestGap = minutes{5}}};
    const std::vector<Cure> cures = curesOf(service);

    ASSERT_FALSE(cures.empty());
    EXPECT_EQ(cures[0].what(), "Apply Ends up to 10 min after Root (now 5 min)");
}

// The job starts 12 to 14 before the water at 30, so from 16 to 18, and lasts 10. The look starts from 18 to
// 22 and lasts 1. One pair of hands: the look from 17 to 18, 1 earlier; or the job from 19 on, 1 later.
TEST(Cures, LoosenALookOrALateJob)
{
    Zone zone = makeZone("Root", minutes{20}, exactly(30));
    zone.looks = Looks{.first = minutes{20},
                       .every = {},
                       .length = minutes{1},
                       .tolerance = minutes{2},
                       .until = minutes{21}};
    zone.late.push_back(
        {.name = "Emulsify", .before = minutes{13}, .length = minutes{10}, .tolerance = minutes{1}});
    const std::vector<Cure> cures = curesOf(fromOpening({zone}));

    EXPECT_EQ(amountOf(cures, CureKind::LooserLooks), minutes{1});
    EXPECT_EQ(amountOf(cures, CureKind::LooserLateJob), minutes{1});
    EXPECT_THAT(sentences(cures), testing::Contains("Look at Root up to 3 min early or late (now 2 min)"));
    EXPECT_THAT(sentences(cures),
                testing::Contains("Let Emulsify Root be up to 2 min early or late (now 1 min)"));
}

// Contact to water is 20 + 30 = 50, at most 45: 5 more, or 5 less of development.
TEST(Cures, WidenWhatTheFirstStrandCarries)
{
    Zone zone = makeZone("Root", minutes{20}, exactly(30));
    zone.firstStrandMost = minutes{45};
    const std::vector<Cure> cures = curesOf(fromOpening({zone}));

    EXPECT_THAT(sentences(cures),
                ElementsAre("Let Root be rinsed from 25 min on (now from 30 min)",
                            "Let the first strand of Root carry the mixture up to 50 min (now 45 min)"));
}

// Counted from first contact the last strand has 30 - 20 = 10, and should have 14.
TEST(Cures, WidenWhatTheLastStrandCarries)
{
    Zone zone = makeZone("Root", minutes{20}, exactly(30));
    zone.clock = service::ClockStart::FirstContact;
    zone.lastStrandLeast = minutes{14};
    const std::vector<Cure> cures = curesOf(fromOpening({zone}));

    EXPECT_THAT(sentences(cures),
                ElementsAre("Let the last strand of Root carry the mixture at least 10 min (now 14 min)",
                            "Let Root develop up to 34 min (now 30 min)"));
}

// From the opening on the water cannot come before 20 + 30 = 50, and the basin is booked until 45.
TEST(Cures, MoveABookedBasin)
{
    Service service = fromOpening({makeZone("Root", minutes{20}, exactly(30))});
    service.coats[0].groups[0].waterLatest = at(45);
    const std::vector<Cure> cures = curesOf(service);

    const Cure* cure = find(cures, CureKind::LaterWater);
    ASSERT_NE(cure, nullptr);
    EXPECT_EQ(cure->what(), "Have the basin for All 5 min later than it is booked");
    EXPECT_EQ(cure->services.front().coats[0].groups[0].waterLatest, at(50));
}

// Ready by 55 means water by 50, and it is booked from 52 on.
TEST(Cures, MoveABookedBasinForward)
{
    Service service = fromOpening({makeZone("Root", minutes{20}, exactly(30))});
    service.coats[0].groups[0].waterEarliest = at(52);
    service.readyBy = at(55);
    const std::vector<Cure> cures = curesOf(service);

    EXPECT_EQ(amountOf(cures, CureKind::EarlierWater), minutes{2});
    EXPECT_EQ(amountOf(cures, CureKind::LaterPromise), minutes{2});
}

// Mixing for the second coat takes 10 and begins after the first, so nothing is applied within 5 of its end.
TEST(Cures, MoveTheGapBetweenCoats)
{
    Service service = fromOpening({makeZone("Root", minutes{20}, exactly(30))});
    service.coats.push_back(service.coats[0]);
    service.coats[1].name = "Gloss";
    service.coats[1].bowls[0].mix = minutes{10};
    service.coats[0].gapMost = minutes{5};
    const std::vector<Cure> cures = curesOf(service);

    EXPECT_THAT(sentences(cures),
                ElementsAre("Coat 1: begin to apply Gloss up to 10 min after the end of Coat 1 (now 5 min)"));
}

// Two wefts, both booked for water at 30, and one basin that takes 5 for each.
TEST(Cures, UseAnotherBasin)
{
    Service service =
        fromOpening({makeZone("One", minutes{10}, exactly(20)), makeZone("Two", minutes{10}, exactly(20))});
    service.head = {.name = "Wefts", .kind = service::HeadKind::Wefts, .piecesComeApart = true};
    addHands(service);
    service.coats[0].groups.push_back(service.coats[0].groups[0]);
    service.coats[0].groups[1].name = "Other";
    service.coats[0].zones[1].group = 1;
    for (service::RinseGroup& group : service.coats[0].groups)
        group.waterEarliest = group.waterLatest = at(30);
    const std::vector<Cure> cures = curesOf(service);

    const Cure* cure = find(cures, CureKind::AnotherBasin);
    ASSERT_NE(cure, nullptr);
    EXPECT_EQ(cure->what(), "Use another basin (now 1)");
    EXPECT_EQ(cure->services.front().crew.basins, 2u);
    EXPECT_EQ(amountOf(cures, CureKind::LaterWater), minutes{5});
    EXPECT_EQ(amountOf(cures, CureKind::EarlierWater), Seconds{-1}) << "the application ends at 10 at best";
}

// Each coat has a clash of its own: 20 + 30 = 50 and at most 45. One change cannot mend both.
TEST(Cures, AreTwoChangesOnlyWhereNoSingleOneHelps)
{
    Zone zone = makeZone("Root", minutes{20}, exactly(30));
    zone.firstStrandMost = minutes{45};
    Service service = fromOpening({zone});
    service.coats.push_back(service.coats[0]);
    service.coats[1].name = "Gloss";
    const std::vector<Cure> cures = curesOf(service);

    ASSERT_EQ(cures.size(), 4u);
    for (const Cure& cure : cures)
        EXPECT_EQ(cure.steps.size(), 2u);
    EXPECT_EQ(cures[0].what(),
              "Gloss: let Root be rinsed from 25 min on (now from 30 min); and: Coat 1: let Root be "
              "rinsed from 25 min on (now from 30 min)");
    for (const Cure& cure : curesOf(twoToners()))
        EXPECT_EQ(cure.steps.size(), 1u);
}

// Of a crew that is there from the opening on: 8 are enough, and they are named.
TEST(Cures, CallSomebodyForAsLongAsTheyAreNeeded)
{
    const std::vector<Cure> cures = curesOf(twoToners());
    const Cure* cure = find(cures, CureKind::AnotherHands);

    ASSERT_NE(cure, nullptr);
    ASSERT_TRUE(cure->steps.front().when);
    const Interval when = *cure->steps.front().when;
    EXPECT_EQ(when.until - when.from, minutes{8});
    const service::Hands& called = cure->services.front().crew.hands[1];
    EXPECT_EQ(called.name, "Another pair of hands");
    ASSERT_EQ(called.away.size(), 2u);
    EXPECT_EQ(called.away[0].until, when.from);
    EXPECT_EQ(called.away[1].from, when.until);
    EXPECT_LT(cure->plan->end, at(60)) << "nobody waits for them to come back";
}

TEST(Cures, StopWhenTheyAreToldTo)
{
    const Question question = ask(twoToners());
    const NoPlan reason = refused(question);

    EXPECT_THAT(curesFor(question, reason, {.conflicts = 1000, .stop = [] { return true; }}).size(),
                testing::Le(5u));
    EXPECT_THAT(curesFor(question, reason, {.conflicts = 0, .stop = {}}), IsEmpty());
}

TEST(Cures, OfNoReasonAreNone)
{
    EXPECT_THAT(curesFor(ask(twoToners()), NoPlan{}), IsEmpty());
}

}  // namespace
}  // namespace core::stagger
