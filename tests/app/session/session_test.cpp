#include "app/session/session.h"

#include "core/run/amend/amend.h"
#include "tests/app/session/session_samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace app::session {
namespace {

using core::measure::Seconds;
using core::run::Answer;
using core::run::FactKind;
using core::stagger::Preference;
using samples::answerFirst;
using samples::answerTo;
using samples::HandClock;
using samples::noon;
using samples::Stage;
using samples::twoZones;
using testing::ElementsAre;
using testing::HasSubstr;
using std::chrono_literals::operator""min;
using std::chrono_literals::operator""s;

std::shared_ptr<HandClock> clockAtNoon(bool simulated = true)
{
    return std::make_shared<HandClock>(noon(), simulated);
}

/// The same without the plan's changes in time: a fold from nothing, with a planner that remembers nothing.
core::run::State folded(const Session& session)
{
    core::run::Setup setup = session.setup();
    setup.planner = core::stagger::plan;
    return core::run::stateAt(setup, session.facts(), session.state().now);
}

TEST(Session, BeginsWithAPlanAndKeepsTheServiceInTheJournal)
{
    Stage stage{clockAtNoon()};

    const RunId run = stage.session->begin({twoZones()}, Preference::EndEarly);

    EXPECT_TRUE(stage.session->state().plan.has_value());
    EXPECT_EQ(stage.session->state().now, noon());
    const StoredRun stored = stage.kept->run(run).value();
    EXPECT_THAT(stored.run.services, ElementsAre(HasSubstr("The lamplighter")));
    EXPECT_EQ(stored.run.preference, Preference::EndEarly);
    EXPECT_EQ(stored.run.began, noon());
    EXPECT_TRUE(stored.run.simulated);
}

TEST(Session, HasTheJournalKeepAnAnswerBeforeTheStateChanges)
{
    Stage stage{clockAtNoon()};
    stage.session->begin({twoZones()}, Preference::AsAsked);
    bool watched = false;
    stage.journal->watch = [&] {
        watched = true;
        EXPECT_TRUE(stage.session->state().progress.empty());
    };

    answerFirst(*stage.session);

    EXPECT_TRUE(watched);
    EXPECT_FALSE(stage.session->state().progress.empty());
    EXPECT_EQ(stage.kept->facts(*stage.session->current()).value(), stage.session->facts());
}

TEST(Session, LeavesEverythingAsItIsWhenItRefusesAnAnswer)
{
    Stage stage{clockAtNoon()};
    stage.session->begin({twoZones()}, Preference::AsAsked);
    Answer finish = answerTo(stage.session->state().prompts.front());
    finish.kind = Answer::Kind::Finish;

    const auto refusal = stage.session->answer(finish);

    ASSERT_TRUE(refusal.has_value());
    EXPECT_FALSE(refusal->what.empty());
    EXPECT_TRUE(stage.session->facts().empty());
}

TEST(Session, RefusesAnswersWhileNoRunIsUnderWay)
{
    Stage stage{clockAtNoon()};
    EXPECT_TRUE(stage.session->answer({}).has_value());
    EXPECT_TRUE(stage.session->end().has_value());
}

TEST(Session, TakesARunUpWhereItsFactsLeftIt)
{
    const auto clock = clockAtNoon(false);
    auto first = std::make_unique<Stage>(clock);
    const auto kept = first->kept;
    const RunId run = first->session->begin({twoZones()}, Preference::AsAsked);
    answerFirst(*first->session);
    clock->forward(4min);
    answerFirst(*first->session);
    answerFirst(*first->session);
    const auto before = first->session->state();
    first.reset();

    Stage second{clock, kept};
    ASSERT_EQ(second.session->resumable().size(), 1u);
    EXPECT_EQ(second.session->resume(run), std::nullopt);

    EXPECT_EQ(second.session->state(), before);
    EXPECT_EQ(second.session->state(), folded(*second.session));
    EXPECT_TRUE(second.session->resumable().empty()) << "the run under way is not on offer";
}

TEST(Session, KeepsWhatWasSaidBeforeWithTheRun)
{
    using core::run::Prepared;
    using core::run::Preparing;
    const auto clock = clockAtNoon(false);
    auto first = std::make_unique<Stage>(clock);
    const auto kept = first->kept;
    const std::vector said{Prepared{.what = Preparing::Tests,
                                    .state = Prepared::State::Skipped,
                                    .why = "the same as in March",
                                    .at = clock->now()},
                           Prepared{.what = Preparing::Bowls}};
    const RunId run = first->session->begin({twoZones()}, Preference::AsAsked, said);
    EXPECT_EQ(first->session->setup().prepared, said);
    EXPECT_TRUE(first->session->facts().empty()) << "it is no answer of the run";
    EXPECT_EQ(kept->run(run).value().run.prepared, said);
    first.reset();

    Stage second{clock, kept};
    EXPECT_EQ(second.session->resume(run), std::nullopt);
    EXPECT_EQ(second.session->setup().prepared, said);
    second.session->begin({twoZones()}, Preference::AsAsked);
    EXPECT_TRUE(second.session->setup().prepared.empty());
}

TEST(Session, GoesOnInSimulatedTimeFromTheLastFactOfASimulatedRun)
{
    const auto clock = clockAtNoon();
    auto first = std::make_unique<Stage>(clock);
    const auto kept = first->kept;
    const RunId run = first->session->begin({twoZones()}, Preference::AsAsked);
    clock->forward(7min);
    answerFirst(*first->session);
    first.reset();

    Stage second{std::make_shared<SystemClock>(), kept};
    ASSERT_EQ(second.session->resume(run), std::nullopt);

    EXPECT_TRUE(second.session->clock().isSimulated());
    EXPECT_LT(second.session->state().now - (noon() + 7min), 5s);
    EXPECT_GE(second.session->state().now, noon() + 7min);
}

TEST(Session, DoesNotPlayARunOfTheTimeOfDay)
{
    Stage stage{clockAtNoon(false)};
    const RunId run = stage.session->begin({twoZones()}, Preference::AsAsked);
    stage.session->leave();
    stage.session->useClock(clockAtNoon(true));

    EXPECT_THAT(stage.session->resume(run).value_or(""), HasSubstr("time of day"));
}

TEST(Session, SaysSoWhenTheClockOfTheMachineWentBack)
{
    const auto clock = clockAtNoon(false);
    Stage first{clock};
    const RunId run = first.session->begin({twoZones()}, Preference::AsAsked);
    answerFirst(*first.session);

    Stage second{std::make_shared<HandClock>(noon() - 60min, false), first.kept};
    ASSERT_EQ(second.session->resume(run), std::nullopt);

    EXPECT_THAT(second.warnings, ElementsAre(HasSubstr("earlier time")));
}

TEST(Session, EndsForGood)
{
    Stage stage{clockAtNoon()};
    stage.session->begin({twoZones()}, Preference::AsAsked);

    EXPECT_FALSE(stage.session->end().has_value());

    EXPECT_TRUE(stage.session->state().finished);
    EXPECT_TRUE(stage.session->alarms().empty());
    stage.session->leave();
    EXPECT_TRUE(stage.session->resumable().empty());
}

TEST(Session, EndsARunThatIsLeftOnceEverythingIsDone)
{
    const auto clock = clockAtNoon();
    Stage stage{clock};
    const RunId run = stage.session->begin({twoZones()}, Preference::AsAsked);
    for (int answers = 0; !stage.session->state().finished && answers < 100; ++answers) {
        const auto& prompt = stage.session->state().prompts.front();
        clock->set(std::max(clock->now(), prompt.due));
        answerFirst(*stage.session);
    }
    ASSERT_TRUE(stage.session->state().finished);
    EXPECT_FALSE(stage.kept->run(run).value().ended.has_value()) << "the last answer can still be undone";

    stage.session->leave();

    EXPECT_TRUE(stage.kept->run(run).value().ended.has_value());
    EXPECT_EQ(stage.kept->facts(run).value().back().kind, FactKind::Ended);
}

TEST(Session, RefusesToTakeUpARunWhoseServiceWasErased)
{
    Stage stage{clockAtNoon()};
    const RunId run = stage.session->begin({twoZones()}, Preference::AsAsked);
    stage.session->end();
    stage.session->leave();
    ASSERT_TRUE(stage.kept->eraseServices(run).has_value());

    EXPECT_THAT(stage.session->resume(run).value_or(""), HasSubstr("erased"));
    EXPECT_THAT(stage.session->resume(RunId{99}).value_or(""), HasSubstr("no such run"));
}

TEST(Session, GoesOnInMemoryWhenTheJournalFailsAndKeepsEverythingOnceItCan)
{
    const auto clock = clockAtNoon();
    Stage stage{clock};
    const RunId run = stage.session->begin({twoZones()}, Preference::AsAsked);
    stage.journal->fails = true;

    answerFirst(*stage.session);
    clock->forward(4min);
    answerFirst(*stage.session);

    EXPECT_EQ(stage.session->notKept(), 2u);
    EXPECT_EQ(stage.session->state().progress.tasks.size(), 1u) << "the run goes on";
    ASSERT_THAT(stage.warnings, ElementsAre(HasSubstr("The disk is full. This run goes on, but")));

    stage.journal->fails = false;
    answerFirst(*stage.session);

    EXPECT_EQ(stage.session->notKept(), 0u);
    EXPECT_EQ(stage.kept->facts(run).value(), stage.session->facts());
    EXPECT_THAT(stage.warnings.back(), HasSubstr("can be written again"));
}

TEST(Session, TriesAFailedJournalAgainThoughNobodyAnswers)
{
    const auto clock = clockAtNoon();
    Stage stage{clock};
    const RunId run = stage.session->begin({twoZones()}, Preference::AsAsked);
    stage.journal->fails = true;
    answerFirst(*stage.session);
    stage.journal->fails = false;

    clock->forward(2min);
    samples::settleAt(*stage.session, clock->now());

    EXPECT_EQ(stage.session->notKept(), 0u);
    EXPECT_EQ(stage.kept->facts(run).value().size(), 1u);
}

TEST(Session, KeepsARunThatBeganWithoutAJournalOnceThereIsOne)
{
    const auto clock = clockAtNoon();
    Stage stage{clock};
    stage.journal->fails = true;
    stage.session->begin({twoZones()}, Preference::AsAsked);
    ASSERT_EQ(stage.warnings.size(), 1u);
    stage.journal->fails = false;

    answerFirst(*stage.session);

    const auto runs = stage.kept->unfinished().value();
    ASSERT_EQ(runs.size(), 1u);
    EXPECT_EQ(stage.session->current(), runs.front().id);
    EXPECT_EQ(stage.kept->facts(runs.front().id).value(), stage.session->facts());
}

/// Somebody has come to help.
void callHelp(Session& session)
{
    const auto refusal = session.answer(core::run::helperAnswer(session.services(), "Berit"));
    ASSERT_FALSE(refusal.has_value()) << refusal->what;
}

TEST(Session, TakesARunUpWithTheServicesAsTheyWereAmended)
{
    const auto clock = clockAtNoon(false);
    auto first = std::make_unique<Stage>(clock);
    const auto kept = first->kept;
    const RunId run = first->session->begin({twoZones()}, Preference::AsAsked);
    callHelp(*first->session);
    answerFirst(*first->session);
    const auto before = first->session->state();
    first.reset();

    Stage second{clock, kept};
    EXPECT_EQ(second.session->resume(run), std::nullopt);
    EXPECT_EQ(second.session->services().front().crew.hands.back().name, "Berit");
    EXPECT_EQ(second.session->setup().services.front().crew.hands.size(), 1U) << "as begun";
    EXPECT_EQ(second.session->state(), before);
    // A run that is begun after it has nothing of it.
    second.session->begin({twoZones()}, Preference::AsAsked);
    EXPECT_EQ(second.session->services().front().crew.hands.size(), 1U);
    EXPECT_TRUE(kept->run(*second.session->current())->revisions.empty());
}

TEST(Session, TellsThatARunWasLeft)
{
    Stage stage{clockAtNoon()};
    int left = 0;
    QObject::connect(stage.session.get(), &Session::left, [&] {
        ++left;
        EXPECT_FALSE(stage.session->current());
    });
    stage.session->leave();
    EXPECT_EQ(left, 0) << "there was none";
    stage.session->begin({twoZones()}, Preference::AsAsked);
    stage.session->leave();
    EXPECT_EQ(left, 1);
}

TEST(Session, KeepsAnAmendmentAsSoonAsTheJournalCanBeWrittenAgain)
{
    Stage stage{clockAtNoon()};
    const RunId run = stage.session->begin({twoZones()}, Preference::AsAsked);
    stage.journal->fails = true;
    callHelp(*stage.session);
    EXPECT_EQ(stage.session->notKept(), 1U);
    EXPECT_TRUE(stage.kept->run(run)->revisions.empty());

    stage.journal->fails = false;
    answerFirst(*stage.session);
    EXPECT_EQ(stage.session->notKept(), 0U);
    EXPECT_EQ(stage.kept->run(run)->revisions.size(), 1U);
    EXPECT_EQ(stage.kept->facts(run).value(), stage.session->facts());
}

}  // namespace
}  // namespace app::session
