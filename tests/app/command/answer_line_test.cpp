#include "app/command/answer_line.h"

#include "tests/app/session/session_samples.h"

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
using testing::HasSubstr;
using Kind = Answer::Kind;

const std::vector<core::service::Service>& services()
{
    static const std::vector services{session::samples::twoZones()};
    return services;
}

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
    const auto order = readOrder(line, services(), asking());
    EXPECT_TRUE(order.has_value()) << line << ": " << (order ? "" : order.error());
    EXPECT_EQ(order ? order->kind : Order::Kind::Leave, Order::Kind::Answer) << line;
    return order ? order->answer : Answer{};
}

std::string refusalOf(const std::string& line)
{
    const auto order = readOrder(line, services(), asking());
    EXPECT_FALSE(order.has_value()) << line;
    return order ? std::string{} : order.error();
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
