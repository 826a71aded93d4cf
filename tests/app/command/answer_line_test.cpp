#include "app/command/answer_line.h"

#include "app/command/right_order.h"
#include "tests/app/command/order_lines.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace app::command {
namespace {

using core::measure::Seconds;
using core::run::Answer;
using core::run::Prompt;
using core::run::State;
using core::stagger::TaskId;
using core::stagger::TaskKind;
using lines::services;
using testing::HasSubstr;
using Kind = Answer::Kind;

/// A state that asks for a look at the ends, and then for the end of an application.
State asking()
{
    State state;
    state.now = session::samples::noon();
    Prompt look;
    look.asks = Prompt::Asks::Look;
    look.task = {0, 0, TaskKind::Look, 1, 0};
    look.due = state.now;
    Prompt finish;
    finish.asks = Prompt::Asks::Finish;
    finish.task = {0, 0, TaskKind::Apply, 0, 0};
    finish.due = state.now;
    state.prompts = {look, finish};
    core::run::Lane ends;
    ends.zone = 1;
    ends.stage = core::run::Stage::Developing;
    state.lanes = {core::run::Lane{}, ends};
    return state;
}

Answer answerOf(const std::string& line)
{
    return lines::answerOf(line, asking());
}

std::string refusalOf(const std::string& line)
{
    return lines::refusalOf(line, asking());
}

TEST(AnswerLine, TakesEnterAsDone)
{
    EXPECT_EQ(answerOf("").kind, Kind::Leave);
    EXPECT_EQ(answerOf("").task, asking().prompts[0].task);
    EXPECT_EQ(answerOf("2").kind, Kind::Finish);
    EXPECT_EQ(answerOf("2").task, asking().prompts[1].task);
}

TEST(AnswerLine, LeavesAllLooksThatAreMadeTogether)
{
    State state = asking();
    Prompt other = state.prompts[0];
    other.task.item = 0;
    state.prompts.insert(state.prompts.begin() + 1, other);
    const auto order = readOrder("all", services(), state);
    ASSERT_TRUE(order);
    EXPECT_EQ(order->answer.kind, Kind::Leave);
    EXPECT_EQ(order->answer.task, state.prompts[0].task);
    EXPECT_EQ(order->answer.also, std::vector{other.task});
    EXPECT_TRUE(answerOf("all").also.empty());
    EXPECT_THAT(refusalOf("2 all"), HasSubstr("none"));
}

TEST(AnswerLine, MutesAndUnmutes)
{
    EXPECT_EQ(readOrder("mute", services(), asking())->kind, Order::Kind::Mute);
    EXPECT_EQ(readOrder("unmute", services(), State{})->kind, Order::Kind::Unmute);
}

TEST(AnswerLine, KnowsTheAnswersToALook)
{
    EXPECT_EQ(answerOf("l").kind, Kind::Leave);
    EXPECT_EQ(answerOf(" A 5 ").kind, Kind::LookAgain);
    EXPECT_EQ(answerOf("a 5").again, Seconds{300});
    EXPECT_EQ(answerOf("a 2.5").again, Seconds{150});
    EXPECT_EQ(answerOf("r").kind, Kind::RinseZoneNow);
    EXPECT_EQ(answerOf("r").task, asking().prompts[0].task);
}

TEST(AnswerLine, TakesWhatWasSeenBehindAColon)
{
    EXPECT_EQ(answerOf("l: still yellow").tone, "still yellow");
    EXPECT_EQ(answerOf("l: still yellow").kind, Kind::Leave);
    EXPECT_EQ(answerOf(" : even ").tone, "even");
    EXPECT_EQ(answerOf("a 5:  turning   green").tone, "turning green");
    EXPECT_EQ(answerOf("a 5: x").again, Seconds{300});
    EXPECT_EQ(answerOf("r: even").kind, Kind::RinseZoneNow);
    EXPECT_EQ(answerOf("l: 2").tone, "still yellow");
    EXPECT_EQ(answerOf("l: 99").tone, "99");
    EXPECT_THAT(refusalOf("2: even"), HasSubstr("seen at a look"));
    const auto order = readOrder("tone", services(), asking());
    ASSERT_TRUE(order.has_value());
    EXPECT_EQ(order->kind, Order::Kind::ToneWords);
}

TEST(AnswerLine, KnowsWhatPutsAnswersRight)
{
    EXPECT_EQ(answerOf("u").kind, Kind::UndoLast);
    EXPECT_EQ(answerOf("u").about, std::nullopt);
    EXPECT_EQ(answerOf("u #12").about, core::run::FactNumber{12});
    EXPECT_EQ(answerOf("m 2 #3").about, core::run::FactNumber{3});
    EXPECT_EQ(answerOf("m 2 #3").ago, Seconds{120});
    EXPECT_EQ(answerOf("was Ends").kind, Kind::OtherZone);
    EXPECT_EQ(answerOf("was root #4").task, (TaskId{0, 0, TaskKind::Apply, 0, 0}));
    EXPECT_EQ(answerOf("was root #4").about, core::run::FactNumber{4});
    const auto moved = readOrder("m 14:03 #3", services(), asking());
    ASSERT_TRUE(moved.has_value());
    EXPECT_EQ(moved->clock, "14:03");
    EXPECT_EQ(moved->answer.about, core::run::FactNumber{3});
    EXPECT_EQ(readOrder("answers", services(), asking())->kind, Order::Kind::Answers);
    EXPECT_THAT(refusalOf("u 12"), HasSubstr("u #12"));
    EXPECT_THAT(refusalOf("was Nowhere"), HasSubstr("no zone called Nowhere"));
    EXPECT_THAT(refusalOf("was"), HasSubstr("Which zone was it?"));
}

TEST(AnswerLine, CountsBackFromAClock)
{
    const auto at = [](int hour, int minute, int second) {
        return core::measure::LocalTime{std::chrono::hours{24 * 20'000 + hour} + std::chrono::minutes{minute}
                                        + std::chrono::seconds{second}};
    };
    EXPECT_EQ(agoOf("14:03", at(14, 5, 10)), Seconds{130});
    EXPECT_EQ(agoOf("14:03:20", at(14, 5, 10)), Seconds{110});
    EXPECT_EQ(agoOf("23:58", at(0, 3, 0)), Seconds{300});
    for (const char* const wrong : {"14", "24:00", "14:60", "14:03:20:1", "14:", ":3", "a:b", ""})
        EXPECT_EQ(agoOf(wrong, at(14, 5, 10)), std::nullopt) << wrong;
}

TEST(AnswerLine, PutsHeatOnAndTakesItOff)
{
    EXPECT_EQ(answerOf("heat").kind, Kind::Start);
    EXPECT_EQ(answerOf("heat").task.kind, TaskKind::Heat);
    EXPECT_EQ(answerOf("heat").again, Seconds{0});
    EXPECT_EQ(answerOf("heat 10").again, Seconds{600});
    EXPECT_EQ(answerOf("heat off").kind, Kind::Finish);
    EXPECT_THAT(refusalOf("heat long"), HasSubstr("How many minutes?"));
}

TEST(AnswerLine, AddsAZoneThatIsLikeAnother)
{
    const Answer answer = answerOf("add Left nape like ends 3");
    EXPECT_EQ(answer.kind, Kind::Amend);
    const auto& zones = answer.services.at(0).coats[0].zones;
    ASSERT_EQ(zones.size(), 3u);
    EXPECT_EQ(zones[2].name, "Left nape");
    EXPECT_EQ(zones[2].apply.usual, Seconds{180});
    EXPECT_EQ(answerOf("add Nape like ends").services.at(0).coats[0].zones[2].apply, zones[1].apply);
    EXPECT_THAT(refusalOf("add Nape"), HasSubstr("add Nape like Root"));
    EXPECT_THAT(refusalOf("add Nape like nowhere"), HasSubstr("No zone called nowhere"));
}

// Root is developing too, and the ends cannot be rinsed without wetting it.
TEST(AnswerLine, SaysWhatARinseWouldWetBeforeItIsMeant)
{
    State state = asking();
    state.lanes[0].stage = core::run::Stage::Developing;
    const auto first = readOrder("r Ends", services(), state);
    ASSERT_FALSE(first.has_value());
    EXPECT_EQ(
        first.error(),
        "Ends cannot be rinsed without wetting Root. If it is to be rinsed all the same, type r! Ends.");
    EXPECT_EQ(readOrder("r! Ends", services(), state)->answer.kind, Kind::RinseZoneNow);
    EXPECT_FALSE(readOrder("r", services(), state).has_value());
    EXPECT_TRUE(readOrder("r!", services(), state).has_value());
}

TEST(AnswerLine, FindsAZoneByItsName)
{
    EXPECT_EQ(answerOf("r ends").task, (TaskId{0, 0, TaskKind::Apply, 1, 0}));
    EXPECT_THAT(refusalOf("r Root"), HasSubstr("No zone called Root is developing"));
    EXPECT_THAT(refusalOf("2 r"), HasSubstr("Which zone?"));
}

TEST(AnswerLine, KnowsWhatPutsThingsRight)
{
    EXPECT_EQ(answerOf("u").kind, Kind::UndoLast);
    EXPECT_EQ(answerOf("m 2").kind, Kind::MoveLast);
    EXPECT_EQ(answerOf("m 2").ago, Seconds{120});
    EXPECT_EQ(answerOf("s").kind, Kind::Drop);
    EXPECT_EQ(answerOf("e").kind, Kind::End);
}

TEST(AnswerLine, LeavesAndHelps)
{
    EXPECT_EQ(readOrder("q", services(), asking())->kind, Order::Kind::Leave);
    EXPECT_EQ(readOrder("?", services(), asking())->kind, Order::Kind::Keys);
    EXPECT_EQ(readOrder("c", services(), asking())->kind, Order::Kind::Cautions);
}

TEST(AnswerLine, RefusesWhatItDoesNotUnderstandWithAWayOut)
{
    EXPECT_THAT(refusalOf("banana"), HasSubstr("Type ?"));
    EXPECT_THAT(refusalOf("a"), HasSubstr("a 5"));
    for (const char* const minutes : {"a x", "a -1", "a 0", "a nan", "a inf", "a 1e9", "a 5 6", "a 5x"})
        EXPECT_THAT(refusalOf(minutes), HasSubstr("How many minutes")) << minutes;
    EXPECT_THAT(refusalOf("m"), HasSubstr("m 2"));
    EXPECT_THAT(refusalOf("2 l"), HasSubstr("this is none"));
    EXPECT_THAT(refusalOf("7"), HasSubstr("no number 7"));
    EXPECT_THAT(refusalOf("0"), HasSubstr("no number 0"));
    EXPECT_THAT(refusalOf("99999999999999999999999"), HasSubstr("Type ?"));
}

TEST(AnswerLine, HasNothingToAnswerWhenNothingIsAskedFor)
{
    const State nothing;
    EXPECT_THAT(readOrder("", services(), nothing).error(), HasSubstr("Nothing is asked for"));
    EXPECT_EQ(readOrder("u", services(), nothing)->answer.kind, Kind::UndoLast);
}

TEST(AnswerLine, KnowsWhatChangesThePlan)
{
    const auto now = session::samples::noon();
    const Answer away = answerOf("away 20");
    EXPECT_EQ(away.kind, Kind::Amend);
    EXPECT_EQ(away.services[0].crew.hands[0].away.back(),
              (core::measure::Interval{now, now + Seconds{1200}}));
    EXPECT_EQ(answerOf("here Berit the wig maker").services[0].crew.hands.back().name, "Berit the wig maker");
    const std::string name = services().front().crew.hands.front().name;
    EXPECT_GT(answerOf("gone " + name).services[0].crew.hands[0].away.back().until, now + Seconds{86400});
    EXPECT_EQ(answerOf("apart ends").services[0].coats[0].groups.size(),
              services()[0].coats[0].groups.size() + 1);
    EXPECT_EQ(answerOf("give-up").kind, Kind::Abandon);
}

TEST(AnswerLine, InterruptsWhatIsBeingApplied)
{
    EXPECT_THAT(refusalOf("stop"), HasSubstr("Nothing is being applied"));
    State applying = asking();
    applying.progress.tasks.push_back(
        {.id = {0, 0, TaskKind::Apply, 0, 0}, .start = applying.now, .end = {}, .plannedEnd = {}});
    const auto order = readOrder("stop", services(), applying);
    ASSERT_TRUE(order.has_value());
    EXPECT_EQ(order->answer.kind, Kind::Interrupt);
    EXPECT_EQ(order->answer.task, applying.progress.tasks.front().id);
}

TEST(AnswerLine, ListsChoicesAndTakesOne)
{
    EXPECT_EQ(readOrder("w", services(), asking())->kind, Order::Kind::Choices);
    EXPECT_EQ(readOrder("w 2", services(), asking())->kind, Order::Kind::Choose);
    EXPECT_EQ(readOrder("w 2", services(), asking())->choice, 2U);
    EXPECT_THAT(refusalOf("w 0"), HasSubstr("w 2"));
    EXPECT_THAT(refusalOf("w two"), HasSubstr("w 2"));
}

TEST(AnswerLine, SaysWhatIsMissingInALineThatChangesThePlan)
{
    EXPECT_THAT(refusalOf("away"), HasSubstr("away 20"));
    EXPECT_THAT(refusalOf("away 20 Nobody"), HasSubstr("Here are: "));
    EXPECT_THAT(refusalOf("gone"), HasSubstr("gone and the name"));
    EXPECT_THAT(refusalOf("here"), HasSubstr("here and the name"));
    EXPECT_THAT(refusalOf("apart"), HasSubstr("apart and its name"));
    EXPECT_THAT(refusalOf("apart Fringe"), HasSubstr("No zone called Fringe"));
}

}  // namespace
}  // namespace app::command
