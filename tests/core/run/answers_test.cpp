#include "core/run/answers.h"

#include "core/run/amend/amend.h"
#include "core/run/amend/amendment_text.h"
#include "core/run/amend/revisions.h"
#include "core/service/check.h"
#include "tests/core/run/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Earlier answers that are put right: what they were, when they happened, which zone they were about; and
// what an amendment changed, in words.

namespace core::run {
namespace {

using Kind = Answer::Kind;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

/// Kind and zone of each answer that stands, the latest first, with the minute that it happened in.
std::vector<std::string> standing(const Teller& teller)
{
    std::vector<std::string> lines;
    for (const auto& answer : standingAnswers(teller.facts)) {
        std::string line;
        for (const Fact& fact : answer)
            line += std::to_string(static_cast<int>(fact.kind)) + " " + stagger::taskIdText(fact.task) + " @"
                + std::to_string((fact.happened - clockAt(0)).count() / 60) + ";";
        lines.push_back(line);
    }
    return lines;
}

TEST(Answers, AreThoseThatStandAsTheyReallyHappenedTheLatestFirst)
{
    Teller teller{wig()};
    EXPECT_THAT(standing(teller), IsEmpty());
    teller.mustTell(Kind::Start, apply(0), clockAt(2));
    mustTell(teller, {.kind = Kind::MoveLast, .ago = minutes(2)}, clockAt(3));
    teller.mustTell(Kind::Finish, apply(0), clockAt(10));
    teller.mustTell(Kind::Start, apply(1), clockAt(11));
    mustTell(teller, {.kind = Kind::UndoLast}, clockAt(12));
    EXPECT_THAT(standing(teller), ElementsAre("1 0.0.apply.0.0 @10;", "0 0.0.apply.0.0 @1;"));
}

TEST(Answers, EarlierOnesAreMovedAndTakenBackByTheirNumber)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    teller.mustTell(Kind::Start, apply(1), clockAt(12));
    mustTell(teller, {.kind = Kind::MoveLast, .ago = minutes(6), .about = FactNumber{2}}, clockAt(14));
    EXPECT_EQ(teller.at(clockAt(14)).lanes[0].applicationEnd, clockAt(8));
    EXPECT_EQ(teller.at(clockAt(14)).lanes[1].firstContact, clockAt(12));
    mustTell(teller, {.kind = Kind::UndoLast, .about = FactNumber{2}}, clockAt(15));
    EXPECT_EQ(teller.at(clockAt(15)).lanes[0].stage, Stage::Applying);
    EXPECT_EQ(teller.at(clockAt(15)).lanes[1].stage, Stage::Applying);
}

// It was Ends that was applied from 0 to 6, not Root.
TEST(Answers, WereOfAnotherZoneWithWhatFollowedAndAreTakenBackAsOne)
{
    Teller teller{wig()};
    teller.mustTell(Kind::Start, apply(0), clockAt(0));
    teller.mustTell(Kind::Finish, apply(0), clockAt(6));
    mustTell(teller, {.kind = Kind::OtherZone, .task = apply(2), .about = FactNumber{1}}, clockAt(8));

    State state = teller.at(clockAt(8));
    EXPECT_EQ(state.lanes[0].stage, Stage::Waiting);
    EXPECT_EQ(state.lanes[2].stage, Stage::Developing);
    EXPECT_EQ(state.lanes[2].firstContact, clockAt(0));
    EXPECT_EQ(state.lanes[2].applicationEnd, clockAt(6));
    EXPECT_THAT(standing(teller), ElementsAre("0 0.0.apply.2.0 @0;1 0.0.apply.2.0 @6;"));

    mustTell(teller, {.kind = Kind::UndoLast}, clockAt(9));
    state = teller.at(clockAt(9));
    EXPECT_EQ(state.lanes[0].applicationEnd, clockAt(6));
    EXPECT_EQ(state.lanes[2].stage, Stage::Waiting);
    EXPECT_EQ(standing(teller).size(), 2U);
}

TEST(Answers, OfAnotherZoneCanBeMovedOneByOne)
{
    Teller teller{wig()};
    teller.mustTell(Kind::Start, apply(0), clockAt(0));
    teller.mustTell(Kind::Finish, apply(0), clockAt(6));
    mustTell(teller, {.kind = Kind::OtherZone, .task = apply(2), .about = FactNumber{1}}, clockAt(8));
    mustTell(teller, {.kind = Kind::MoveLast, .ago = minutes(3)}, clockAt(8));
    EXPECT_EQ(teller.at(clockAt(8)).lanes[2].applicationEnd, clockAt(5));
    EXPECT_EQ(teller.at(clockAt(8)).lanes[2].firstContact, clockAt(0));
}

TEST(Answers, OfARinseThatALookAskedForGoOverWithTheLook)
{
    Teller teller = twoLooks();
    mustTell(teller, {.kind = Kind::RinseZoneNow, .task = look(2), .tone = "even"}, clockAt(29));
    mustTell(teller, {.kind = Kind::OtherZone, .task = apply(1)}, clockAt(30));
    const State state = teller.at(clockAt(30));
    EXPECT_EQ(state.lanes[1].stage, Stage::Rinsing);
    EXPECT_EQ(state.lanes[1].water, clockAt(29));
    EXPECT_EQ(state.lanes[1].tone, (SeenTone{"even", clockAt(29)}));
    EXPECT_EQ(state.lanes[2].stage, Stage::Developing);
    EXPECT_EQ(state.lanes[2].tone, std::nullopt);
}

TEST(Answers, OfAnotherZoneMustBePossibleThere)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    teller.mustTell(Kind::Start, apply(1), clockAt(10));
    const std::size_t before = teller.facts.size();
    EXPECT_THAT(refusal(teller, {.kind = Kind::OtherZone, .task = apply(0)}, clockAt(11)),
                HasSubstr("already"));
    EXPECT_THAT(refusal(teller, {.kind = Kind::OtherZone, .task = apply(1)}, clockAt(11)),
                HasSubstr("that zone already"));
    EXPECT_THAT(refusal(teller, {.kind = Kind::OtherZone, .task = look(2)}, clockAt(11)),
                HasSubstr("Choose a zone"));
    EXPECT_THAT(
        refusal(teller, {.kind = Kind::OtherZone, .task = apply(2), .about = FactNumber{77}}, clockAt(11)),
        HasSubstr("no such answer"));
    EXPECT_EQ(teller.facts.size(), before);
}

// A rinse without what it is for leaves nothing that could be planned, so the way back leads over the rinse.
TEST(Answers, ThatARinseRestsOnStayUntilTheRinseIsTakenBack)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    applyZone(teller, 2, clockAt(16), clockAt(21));
    teller.mustTell(Kind::Start, task(TaskKind::Rinse), clockAt(45));
    EXPECT_THAT(refusal(teller, {.kind = Kind::UndoLast, .about = FactNumber{3}}, clockAt(46)),
                HasSubstr("'Rinse All together' has begun since"));
    mustTell(teller, {.kind = Kind::UndoLast}, clockAt(46));
    EXPECT_EQ(refusal(teller, {.kind = Kind::UndoLast, .about = FactNumber{3}}, clockAt(46)), "(taken)");
}

std::string textOf(const Teller& teller)
{
    for (std::size_t place = teller.facts.size(); place-- > 0;)
        if (teller.facts[place].kind == FactKind::Amended)
            return amendmentText(teller.setup, teller.facts, place, measure::UtcOnly{});
    return "(none)";
}

TEST(AmendmentText, SaysWhoIsThere)
{
    Teller teller{namedWig()};
    const auto services = [&] { return servicesAt(teller.setup, teller.facts); };
    mustTell(teller, awayAnswer(services(), 0, {clockAt(5), clockAt(25)}), clockAt(5));
    EXPECT_EQ(textOf(teller), "Wig room is away from 14:05 to 14:25");
    mustTell(teller, helperAnswer(services(), "Ada"), clockAt(6));
    EXPECT_EQ(textOf(teller), "Ada comes to help");
    mustTell(teller, goneAnswer(services(), 1, clockAt(9)), clockAt(9));
    EXPECT_EQ(textOf(teller), "Ada has gone at 14:09");
}

TEST(AmendmentText, SaysWhichZonesThereAreAndHowTheyAreRinsed)
{
    Teller teller{namedWig()};
    const auto services = [&] { return servicesAt(teller.setup, teller.facts); };
    mustTell(teller, apartAnswer(services(), apply(2)), clockAt(0));
    EXPECT_EQ(textOf(teller), "Ends is rinsed as Ends alone");
    teller.mustTell(Kind::Start, apply(0), clockAt(0));
    mustTell(teller, {.kind = Kind::Interrupt, .task = apply(0)}, clockAt(4));
    EXPECT_EQ(textOf(teller), "applying Root stops before it is done; Root, the rest is a zone more");
    mustTell(teller, zoneLikeAnswer(services(), teller.at(clockAt(5)).progress, apply(0), "Nape", minutes(3)),
             clockAt(5));
    EXPECT_EQ(textOf(teller), "Nape is a zone more");
    mustTell(teller, {.kind = Kind::Abandon, .task = apply(1)}, clockAt(6));
    EXPECT_EQ(textOf(teller), "Colour: something is left out");
}

TEST(AmendmentText, SaysWhichLimitGaveWay)
{
    Teller teller{namedWig()};
    Answer answer{.kind = Kind::Amend, .services = teller.setup.services};
    answer.services[0].coats[0].zones[0].develop.most = minutes(48);
    mustTell(teller, answer, clockAt(0));
    EXPECT_EQ(textOf(teller), "Root: develops at most 48 min instead of 45 min");
}

TEST(ZoneLike, IsAsTheOtherButForItsNameItsOrderAndHowLongItTakes)
{
    Teller teller{namedWig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    const auto progress = teller.at(clockAt(10)).progress;
    const Answer answer = zoneLikeAnswer(teller.setup.services, progress, apply(2), "Nape", minutes(3));
    const service::Zone& zone = answer.services[0].coats[0].zones.back();
    const service::Zone& like = teller.setup.services[0].coats[0].zones[2];
    EXPECT_EQ(zone.name, "Nape");
    EXPECT_EQ(zone.apply, (service::Application{minutes(3), minutes(3), minutes(3)}));
    EXPECT_EQ(zone.develop, like.develop);
    EXPECT_EQ(zone.looks, like.looks);
    EXPECT_EQ(zone.group, like.group);
    EXPECT_THAT(zone.after, IsEmpty());
    EXPECT_EQ(zoneLikeAnswer(teller.setup.services, progress, apply(2), "Ends", {})
                  .services[0]
                  .coats[0]
                  .zones.back()
                  .name,
              "Ends 2");
    EXPECT_EQ(zoneLikeAnswer(teller.setup.services, progress, apply(2), "Ends", {})
                  .services[0]
                  .coats[0]
                  .zones.back()
                  .apply,
              like.apply);
}

// Water has begun on the group, so what is added now has a rinse of its own, and a plan.
TEST(ZoneLike, HasARinseOfItsOwnOnceThatOfTheOtherHasBegun)
{
    Teller teller{namedWig()};
    teller.setup.planner = stagger::plan;
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    applyZone(teller, 2, clockAt(16), clockAt(21));
    teller.mustTell(Kind::Start, task(TaskKind::Rinse), clockAt(45));
    const auto progress = teller.at(clockAt(45)).progress;
    mustTell(teller, zoneLikeAnswer(teller.setup.services, progress, apply(2), "Nape", minutes(3)),
             clockAt(46));
    const auto& coat = servicesAt(teller.setup, teller.facts)[0].coats[0];
    EXPECT_EQ(coat.zones.back().group, 1U);
    EXPECT_TRUE(teller.at(clockAt(46)).plan);
}

}  // namespace
}  // namespace core::run
