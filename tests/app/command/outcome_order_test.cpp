#include "app/command/answer_line.h"

#include "tests/app/command/order_lines.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace app::command {
namespace {

using core::run::Answer;
using core::run::Outcome;
using core::run::Stage;
using lines::services;
using testing::HasSubstr;

core::run::State rinsed()
{
    core::run::State state;
    state.now = session::samples::noon();
    for (std::size_t zone = 0; zone < 2; ++zone) {
        core::run::Lane lane;
        lane.zone = zone;
        lane.stage = Stage::Rinsed;
        state.lanes.push_back(lane);
    }
    return state;
}

std::string zoneName(std::size_t zone)
{
    return services()[0].coats[0].zones[zone].name;
}

Answer outcomeOf(const std::string& line)
{
    return lines::answerOf(line, rinsed());
}

std::string whyNoOutcome(const std::string& line)
{
    return lines::refusalOf(line, rinsed());
}

TEST(OutcomeOrder, TakesAWordItsNumberAndOwnWords)
{
    const std::string out = "out " + zoneName(1) + ": ";
    EXPECT_EQ(outcomeOf(out + "too warm").kind, Answer::Kind::TurnOut);
    EXPECT_EQ(outcomeOf(out + "too warm").task.item, 1U);
    EXPECT_EQ(outcomeOf(out + "too warm").outcome, Outcome::TooWarm);
    EXPECT_EQ(outcomeOf(out + "Too Warm, brassy: at the nape").outcome, Outcome::TooWarm);
    EXPECT_EQ(outcomeOf(out + "Too Warm, brassy: at the nape").tone, "brassy: at the nape");
    EXPECT_EQ(outcomeOf(out + "4").outcome, Outcome::TooWarm);
    EXPECT_EQ(outcomeOf(out + "4 brassy").tone, "brassy");
    EXPECT_EQ(outcomeOf(out + "too cool").outcome, Outcome::TooCool);
    EXPECT_EQ(outcomeOf(out + "too cool (greenish)").outcome, Outcome::TooCool);
    EXPECT_EQ(outcomeOf(out + "too cool (greenish)").tone, "");
    EXPECT_EQ(outcomeOf(out + "like honey").outcome, std::nullopt);
    EXPECT_EQ(outcomeOf(out + "like honey").tone, "like honey");
}

TEST(OutcomeOrder, TakesANoteForNextTime)
{
    EXPECT_EQ(outcomeOf("note: the ends five minutes later").kind, Answer::Kind::Note);
    EXPECT_EQ(outcomeOf("note: the ends five minutes later").tone, "the ends five minutes later");
}

TEST(OutcomeOrder, SaysWhatCanBeTyped)
{
    EXPECT_EQ(readOrder("out", services(), rinsed())->kind, Order::Kind::OutcomeWords);
    EXPECT_THAT(whyNoOutcome("out " + zoneName(0)), HasSubstr("out ZONE:"));
    EXPECT_THAT(whyNoOutcome("note:"), HasSubstr("note:"));
    EXPECT_THAT(whyNoOutcome("out Nobody: 1"), HasSubstr("No zone called Nobody"));
    core::run::State waiting = rinsed();
    for (core::run::Lane& lane : waiting.lanes)
        lane.stage = Stage::Developing;
    EXPECT_THAT(readOrder("note: x", services(), waiting).error(), HasSubstr("Nothing has been rinsed"));
}

}  // namespace
}  // namespace app::command
