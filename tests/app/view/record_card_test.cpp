#include "app/view/record_card.h"
#include "tests/app/view/samples.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace app::view;
using core::run::Answer;
using core::stagger::TaskKind;
using samples::at;
using samples::minutes;

namespace {

/// A run that is told things, at minutes since it was begun.
struct Teller {
    Teller()
    {
        setup.services = {samples::service()};
        setup.services[0].coats[0].bowls[0].mix = minutes(2);
        setup.began = at(0);
    }

    void tell(Answer answer, int minute)
    {
        auto told = core::run::decideInFull(setup, facts, answer, at(minute));
        ASSERT_TRUE(told.has_value()) << told.error().what;
        if (told->revision)
            setup.revisions.push_back(*told->revision);
        for (auto& fact : told->facts) {
            fact.number = core::run::FactNumber{static_cast<std::int64_t>(facts.size()) + 1};
            facts.push_back(fact);
        }
    }
    void span(const TaskId& task, int from, int until)
    {
        tell({.kind = Answer::Kind::Start, .task = task}, from);
        tell({.kind = Answer::Kind::Finish, .task = task}, until);
    }

    RecordCard card() const { return recordCard(setup, facts, at(60), core::measure::UtcOnly{}); }

    core::run::Setup setup;
    std::vector<core::run::Fact> facts;
};

/// Mixed by 2, Root on from 2 to 12, Ends from 13 to 17, looked at twice, heat from 18 to 24, water at 34.
Teller told()
{
    Teller teller;
    teller.span({.kind = TaskKind::Mix}, 0, 2);
    teller.span(samples::applyRoot, 2, 12);
    teller.span(samples::applyEnds, 13, 17);
    teller.tell({.kind = Answer::Kind::Start, .task = {.kind = TaskKind::Heat}}, 18);
    teller.tell(
        {.kind = Answer::Kind::LookAgain, .task = samples::lookAtEnds, .again = minutes(4), .tone = "pale"},
        22);
    teller.tell({.kind = Answer::Kind::Finish, .task = {.kind = TaskKind::Heat}}, 24);
    teller.tell({.kind = Answer::Kind::Leave, .task = samples::lookAtEnds}, 26);
    teller.span(samples::rinse, 34, 39);
    return teller;
}

TEST(RecordCard, TellsWhatEachZoneGot)
{
    const RecordCard card = told().card();
    ASSERT_EQ(card.heads.size(), 1u);
    ASSERT_EQ(card.heads[0].coats.size(), 1u);
    const auto& zones = card.heads[0].coats[0].zones;
    ASSERT_EQ(zones.size(), 2u);
    EXPECT_EQ(zones[0].mixed, at(2));
    EXPECT_EQ(zones[0].firstStrand, at(2));
    EXPECT_EQ(zones[0].lastStrand, at(12));
    EXPECT_EQ(zones[0].water, at(34));
    EXPECT_EQ(zones[0].developed, minutes(22));
    EXPECT_EQ(zones[1].developed, minutes(17));
    EXPECT_EQ(zones[1].window.target, minutes(15));
    ASSERT_TRUE(zones[0].plannedWater);
    EXPECT_EQ(zones[0].plannedWater, zones[1].plannedWater);
    EXPECT_LT(*zones[0].plannedWater, at(34));
}

TEST(RecordCard, TellsWhatWasSaidBeforeTheStart)
{
    using core::run::Prepared;
    Teller teller = told();
    EXPECT_EQ(firstMoment(teller.card()), at(0));
    teller.setup.prepared = {{.what = core::run::Preparing::Tests,
                              .state = Prepared::State::Skipped,
                              .why = "the same as in March",
                              .at = at(-5)},
                             {.what = core::run::Preparing::Bowls}};
    EXPECT_EQ(teller.card().prepared, teller.setup.prepared);
    EXPECT_EQ(firstMoment(teller.card()), at(-5));

    teller.setup.services[0].head.kind = core::service::HeadKind::Wig;
    EXPECT_FALSE(teller.card().onPerson);
    teller.setup.services[0].head.kind = core::service::HeadKind::Person;
    EXPECT_TRUE(teller.card().onPerson);
}

TEST(RecordCard, TellsWhatWasSeenAndHeat)
{
    const CardCoat coat = told().card().heads[0].coats[0];
    ASSERT_EQ(coat.zones[1].looks.size(), 2u);
    EXPECT_EQ(coat.zones[1].looks[0].at, at(22));
    EXPECT_EQ(coat.zones[1].looks[0].seen, "pale");
    EXPECT_EQ(coat.zones[1].looks[0].again, minutes(4));
    EXPECT_EQ(coat.zones[1].looks[1].verdict, core::run::Verdict::Leave);
    EXPECT_TRUE(coat.zones[0].looks.empty());
    EXPECT_EQ(coat.heats, (std::vector<CardHeat>{{at(18), at(24)}}));
}

TEST(RecordCard, TellsWhatWasMixedForWhat)
{
    Teller teller = told();
    teller.setup.services[0].coats[0].bowls[0].note = "30 g with 45 g";
    const CardCoat coat = teller.card().heads[0].coats[0];
    const auto& asked = teller.setup.services[0].coats[0];
    ASSERT_EQ(coat.bowls.size(), asked.bowls.size());
    EXPECT_EQ(coat.bowls[0].name, asked.bowls[0].name);
    EXPECT_EQ(coat.bowls[0].note, "30 g with 45 g");
    EXPECT_EQ(coat.bowls[0].mixed, at(2));
    std::size_t named = 0;
    for (const CardBowl& bowl : coat.bowls)
        named += bowl.zones.size();
    EXPECT_EQ(named, asked.zones.size()) << "each zone is of one bowl";
}

TEST(RecordCard, DrawsTheStrandsAsTheyWentWithTheFirstPlanBehindThem)
{
    const StrandPicture picture = told().card().heads[0].coats[0].picture;
    ASSERT_EQ(picture.strands.size(), 2u);
    EXPECT_FALSE(picture.now) << "all is done";
    EXPECT_EQ(picture.strands[0].application, (Span{at(2), at(12)}));
    EXPECT_EQ(picture.strands[0].water, at(34));
    ASSERT_TRUE(picture.strands[0].planned);
    EXPECT_LT(picture.strands[0].planned->water, at(34));
    EXPECT_LE(picture.reach.from, picture.strands[0].planned->application.from);
    EXPECT_GE(picture.reach.until, at(39));
}

TEST(RecordCard, TakesWhatWasPutRightAsItWas)
{
    Teller teller = told();
    teller.tell({.kind = Answer::Kind::End}, 50);
    teller.tell({.kind = Answer::Kind::TurnOut,
                 .task = samples::applyRoot,
                 .tone = "soft",
                 .outcome = core::run::Outcome::TooLight},
                55);
    teller.tell({.kind = Answer::Kind::Note, .task = samples::applyRoot, .tone = "two minutes less"}, 56);
    const RecordCard card = teller.card();
    EXPECT_TRUE(card.ended);
    EXPECT_EQ(card.until, at(50));
    const CardCoat& coat = card.heads[0].coats[0];
    EXPECT_EQ(resultText(coat.zones[0].result), "too light, soft");
    EXPECT_FALSE(coat.zones[1].result.isTold());
    EXPECT_EQ(coat.note, "two minutes less");
}

TEST(RecordCard, LeavesOutWhatWasNotDone)
{
    Teller teller;
    teller.span({.kind = TaskKind::Mix}, 0, 2);
    teller.span(samples::applyRoot, 2, 12);
    teller.tell({.kind = Answer::Kind::Drop, .task = samples::applyEnds}, 13);
    const CardCoat coat = teller.card().heads[0].coats[0];
    EXPECT_EQ(coat.leftOut, (std::vector<std::string>{"Apply Ends"}));
    EXPECT_FALSE(coat.zones[0].water);
    EXPECT_FALSE(coat.zones[0].developed);
    EXPECT_EQ(coat.zones[1].stage, core::run::Stage::Dropped);
    ASSERT_EQ(coat.picture.hands.size(), 1u);
    EXPECT_EQ(coat.picture.hands[0].jobs.size(), 2u) << "mixing and applying; no rinse that is only planned";
}

TEST(RecordCard, IsThereForARunInWhichNothingHappened)
{
    const RecordCard card = Teller{}.card();
    EXPECT_TRUE(card.heads[0].coats[0].picture.strands.empty());
    EXPECT_FALSE(card.heads[0].coats[0].zones[0].firstStrand);
}

}  // namespace
