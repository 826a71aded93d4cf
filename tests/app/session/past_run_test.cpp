#include "app/session/past_run.h"

#include "app/session/stored_services.h"
#include "app/session/time_zones.h"
#include "core/run/outcomes.h"
#include "tests/app/session/session_samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Runs that are looked back on.

namespace app::session {
namespace {

using core::run::Answer;
using samples::noon;
using samples::twoZones;

core::run::Setup setupOf(const core::service::Service& service)
{
    core::run::Setup setup;
    setup.services = {service};
    setup.began = noon();
    return setup;
}

TEST(PastRun, IsPlannedAtOnceThoughTheRunIsPlannedApart)
{
    core::run::Setup setup = setupOf(twoZones());
    setup.planner = [](const core::stagger::Question&, const core::stagger::Budget&) {
        return std::nullopt;  // Not yet.
    };
    ASSERT_FALSE(core::run::stateAt(setup, {}, noon()).plan);
    const PastRun run = soFar(setup, {});
    EXPECT_TRUE(core::run::stateAt(run.setup, {}, noon()).plan);
    EXPECT_EQ(run.setup.services, setup.services);
}

TEST(PastRun, TakesOnlyHowItTurnedOut)
{
    const QtTimeZones zones;
    MemoryJournal journal;
    const RunId id = journal.begin({textsOf({twoZones()}, zones), {}, noon(), false, {}}).value();
    auto run = readPastRun(journal, journal.run(id).value(), zones);
    ASSERT_TRUE(run) << run.error();
    const core::stagger::TaskId apply{};
    EXPECT_THAT(tellOfPastRun(journal, *run, {.kind = Answer::Kind::Start, .task = apply}, noon()),
                testing::Optional(testing::HasSubstr("only how it turned out")));
    EXPECT_TRUE(journal.facts(id)->empty());
    EXPECT_EQ(
        tellOfPastRun(journal, *run, {.kind = Answer::Kind::Note, .task = apply, .tone = "thinner"}, noon()),
        std::nullopt);
    EXPECT_EQ(core::run::notesOf(run->facts).at(0).words, "thinner");
    EXPECT_EQ(*journal.facts(id), run->facts) << "it is in the journal too";
}

TEST(PastRun, IsItsFactsAloneOnceItIsErased)
{
    const QtTimeZones zones;
    MemoryJournal journal;
    const std::vector prepared{core::run::Prepared{.why = "Ottoline said so"}};
    const RunId id = journal.begin({textsOf({twoZones()}, zones), {}, noon(), false, {}, prepared}).value();
    EXPECT_EQ(readPastRun(journal, journal.run(id).value(), zones)->setup.prepared, prepared);
    core::run::Fact ended;
    ended.kind = core::run::FactKind::Ended;
    ended.happened = ended.recorded = noon();
    journal.append(id, std::vector{ended}).value();
    ASSERT_TRUE(journal.eraseServices(id).has_value());
    auto run = readPastRun(journal, journal.run(id).value(), zones);
    ASSERT_TRUE(run) << run.error();
    EXPECT_TRUE(run->isErased());
    EXPECT_TRUE(journal.run(id)->run.prepared.empty());
    EXPECT_TRUE(run->setup.prepared.empty());
    EXPECT_EQ(run->facts.size(), 1u);
    EXPECT_TRUE(forNextTime(*run).empty());
    EXPECT_THAT(tellOfPastRun(journal, *run, {.kind = Answer::Kind::Note, .tone = "thinner"}, noon()),
                testing::Optional(testing::HasSubstr("erased")));
    EXPECT_EQ(journal.facts(id)->size(), 1u);
}

TEST(PastRun, IsBegunAgainWithoutWhatWasOfThatDay)
{
    const core::service::Service plain = twoZones();
    core::service::Service that = plain;
    that.readyBy = noon() + std::chrono::hours{3};
    that.notBefore = noon();
    that.crew.hands[0].away = {{noon(), noon() + std::chrono::minutes{5}}};
    that.coats[0].groups[0].waterEarliest = noon() + std::chrono::hours{1};
    that.coats[0].groups[0].waterLatest = noon() + std::chrono::hours{2};
    EXPECT_EQ(forNextTime(soFar(setupOf(that), {})), std::vector{plain});
}

}  // namespace
}  // namespace app::session
