#include "app/view/outcome_view.h"
#include "app/view/outcome_words.h"
#include "tests/app/view/samples.h"

#include <gtest/gtest.h>

using namespace app::view;
using core::run::Fact;
using core::run::FactKind;
using core::run::FactNumber;
using core::run::Outcome;
using core::run::Stage;
using samples::at;

namespace {

core::run::State rinsed()
{
    auto state = samples::developing(at(36));
    for (core::run::Lane& lane : state.lanes)
        lane.stage = Stage::Rinsed;
    return state;
}

Fact turned(std::int64_t number, const TaskId& zone, std::optional<Outcome> outcome,
            const std::string& words = {})
{
    return {.number = FactNumber{number},
            .kind = FactKind::TurnedOut,
            .task = zone,
            .tone = words,
            .outcome = outcome};
}

std::vector<CoatResult> results(const core::run::State& state, const std::vector<Fact>& facts = {})
{
    return coatResults({samples::service()}, state, facts);
}

TEST(CoatResults, ComeOnceEveryZoneIsRinsedOrLeftOut)
{
    EXPECT_TRUE(results(samples::developing(at(22))).empty());
    auto state = rinsed();
    ASSERT_EQ(results(state).size(), 1u);
    EXPECT_EQ(results(state)[0].zones.size(), 2u);
    EXPECT_EQ(results(state)[0].name, "") << "there is one coat of one head";
    EXPECT_FALSE(results(state)[0].isTold());

    state.lanes[1].stage = Stage::Rinsing;
    EXPECT_TRUE(results(state).empty());
    state.lanes[1].stage = Stage::Dropped;
    ASSERT_EQ(results(state).size(), 1u);
    EXPECT_EQ(results(state)[0].zones.size(), 1u) << "what was left out cannot have turned out";
}

TEST(CoatResults, WaitForTheDryer)
{
    auto service = samples::service();
    service.coats[0].dryHands = samples::minutes(3);
    auto state = rinsed();
    EXPECT_TRUE(coatResults({service}, state, {}).empty());
    const TaskId dry{.kind = core::stagger::TaskKind::Dry};
    state.progress.tasks.push_back({.id = dry, .start = at(36), .end = {}, .plannedEnd = {}});
    EXPECT_TRUE(coatResults({service}, state, {}).empty());
    state.progress.tasks.back().end = at(39);
    EXPECT_EQ(coatResults({service}, state, {}).size(), 1u);
    state.progress.tasks.clear();
    state.progress.dropped.push_back(dry);
    EXPECT_EQ(coatResults({service}, state, {}).size(), 1u);
}

TEST(CoatResults, HoldWhatWasSaid)
{
    Fact note = turned(3, samples::applyRoot, {}, "thinner sections");
    note.kind = FactKind::Noted;
    const auto coat = results(rinsed(),
                              {turned(1, samples::applyRoot, Outcome::TooWarm, "brassy"),
                               turned(2, samples::applyEnds, {}, "soft"), note})
                          .at(0);
    EXPECT_TRUE(coat.isTold());
    EXPECT_EQ(resultText(coat.zones[0]), "too warm, brassy");
    EXPECT_EQ(resultText(coat.zones[1]), "soft");
    EXPECT_EQ(coat.note, "thinner sections");
}

TEST(OutcomeWords, StandInTheOrderOfWhatTheyMean)
{
    for (std::size_t place = 0; place < outcomeWords.size(); ++place)
        EXPECT_EQ(static_cast<std::size_t>(outcomeWords[place].first), place);
}

}  // namespace
