#include "app/session/session.h"

#include "core/run/amend/amend.h"
#include "tests/app/session/held_planner.h"
#include "tests/app/session/session_samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// A run goes on while its plan is worked out apart.

namespace app::session {
namespace {

using core::measure::Seconds;
using core::run::Answer;
using core::stagger::Preference;
using samples::answerFirst;
using samples::await;
using samples::HandClock;
using samples::HeldPlanner;
using samples::noon;
using samples::twoZones;
using std::chrono_literals::operator""min;
using std::chrono_literals::operator""s;

/// Eight zones one after another that take the same, all in one bowl.
core::service::Service alikeZones()
{
    core::service::Service service = twoZones();
    core::service::Coat& coat = service.coats.front();
    core::service::Zone zone = coat.zones.back();
    zone.after.clear();
    zone.looks.reset();
    zone.develop = {.least = 10min, .target = 30min, .most = 80min};
    coat.zones.clear();
    for (int each = 1; each <= 8; ++each) {
        zone.name = "Part " + std::to_string(each);
        coat.zones.push_back(zone);
    }
    return service;
}

/// A run in real time whose planner can be held, and all the calls of it.
struct HeldRun {
    explicit HeldRun(core::service::Service service = twoZones())
    {
        QObject::connect(
            session().get(), &Session::called, session().get(),
            [this](const core::alarm::Call& call) { calls.emplace_back(session()->state().now, call); });
        session()->begin({std::move(service)}, Preference::EndEarly);
    }
    std::unique_ptr<Session>& session() { return stage.session; }
    [[nodiscard]] bool settle()
    {
        return await([this] { return !session()->isPlanning(); });
    }
    void goOn(Seconds by)
    {
        for (Seconds gone{0}; gone < by; gone += 1s) {
            clock->forward(1s);
            session()->wake();
        }
    }

    std::vector<std::pair<Instant, core::alarm::Call>> calls;
    std::shared_ptr<HandClock> clock = std::make_shared<HandClock>(noon(), false);
    std::shared_ptr<HeldPlanner> planner = std::make_shared<HeldPlanner>();
    samples::Stage stage{clock, std::make_shared<MemoryJournal>(), true, samples::plannerOf(planner)};
};

TEST(SessionPlanning, AnAnswerIsKeptAndCountsWhileThePlanIsWorkedOut)
{
    HeldRun run;
    ASSERT_TRUE(run.session()->state().plan) << "a run begins with a plan";
    answerFirst(*run.session());
    run.goOn(4min);
    answerFirst(*run.session());
    ASSERT_TRUE(run.settle());
    run.planner->hold();
    const auto started = run.session()->state().prompts.front().task;
    answerFirst(*run.session());

    EXPECT_EQ(run.stage.kept->facts(*run.session()->current()).value(), run.session()->facts());
    EXPECT_TRUE(run.session()->state().progress.find(started));
    EXPECT_TRUE(run.session()->state().beingPlanned);
    EXPECT_TRUE(run.session()->isPlanning());
    EXPECT_TRUE(run.session()->state().changes.empty());
    run.goOn(90s);
    EXPECT_EQ(run.session()->state().now, noon() + 4min + 90s);
    EXPECT_TRUE(run.session()->state().beingPlanned);
    for (const auto& prompt : run.session()->state().prompts)
        EXPECT_TRUE(prompt.task != started || prompt.asks == core::run::Prompt::Asks::Finish);

    run.planner->let();
    ASSERT_TRUE(run.settle());
    EXPECT_FALSE(run.session()->state().beingPlanned);
}

TEST(SessionPlanning, AlarmsBeginAndLanesCountWhileThePlannerIsHeld)
{
    HeldRun prompt;
    HeldRun held;
    for (HeldRun* run : {&prompt, &held}) {
        while (run->session()->facts().size() < 8) {
            run->goOn(run->session()->state().prompts.front().due - run->clock->now());
            if (run == &held && run->session()->facts().size() == 2)
                run->planner->hold();
            answerFirst(*run->session());
            ASSERT_TRUE(run == &held || run->settle());
        }
    }
    EXPECT_TRUE(held.session()->state().beingPlanned);
    EXPECT_EQ(held.session()->facts(), prompt.session()->facts());
    EXPECT_GT(prompt.calls.size(), 5U);
    ASSERT_EQ(held.calls.size(), prompt.calls.size());
    for (std::size_t each = 0; each < held.calls.size(); ++each) {
        EXPECT_EQ(held.calls[each].first, prompt.calls[each].first);
        EXPECT_EQ(held.calls[each].second.lead(), prompt.calls[each].second.lead());
    }
    // What nobody answers goes on sounding, and lanes go on to their limits.
    const auto before = held.calls.size();
    held.goOn(40min);
    EXPECT_TRUE(held.session()->state().beingPlanned);
    EXPECT_GT(held.calls.size(), before + 40);
    const auto& lane = held.session()->state().lanes.front();
    EXPECT_EQ(lane.stage, core::run::Stage::Developing);
    EXPECT_GT(lane.development, 40min);
    EXPECT_TRUE(std::ranges::any_of(held.session()->alarms(), [](const core::alarm::Alarm& alarm) {
        return alarm.kind == core::alarm::Kind::LimitPassed;
    }));
    held.planner->let();
}

TEST(SessionPlanning, ThePlanThatComesIsThatOfTheNewestFactsAndTheSearchForOlderOnesIsStopped)
{
    HeldRun run;
    ASSERT_TRUE(run.settle());
    const auto before = run.planner->asked().size();
    run.planner->hold();
    answerFirst(*run.session());
    run.planner->waitForQuestions(before + 1);
    run.goOn(3min);
    answerFirst(*run.session());
    run.planner->waitForQuestions(before + 2);
    EXPECT_EQ(run.planner->stopped(), 1);

    run.planner->let();
    ASSERT_TRUE(await([&] { return !run.session()->state().beingPlanned; }));
    const auto& state = run.session()->state();
    EXPECT_EQ(run.planner->asked()[before + 1].progress, state.progress);
    EXPECT_EQ(run.planner->asked()[before + 1].now, run.session()->facts().back().recorded);
    ASSERT_TRUE(run.settle());
    EXPECT_EQ(*state.plan,
              *core::stagger::plan(run.planner->asked()[before + 1],
                                   {.conflicts = Session::liveConflicts, .stop = {}}));
}

TEST(SessionPlanning, SaysThatAPlanIsWorkedOutOnlyIfThatTakesLong)
{
    HeldRun run;
    ASSERT_TRUE(run.settle());
    run.planner->hold();
    answerFirst(*run.session());
    EXPECT_FALSE(run.session()->isPlanningLong());
    int told = 0;
    QObject::connect(run.session().get(), &Session::stateChanged, run.session().get(), [&] { ++told; });
    EXPECT_TRUE(await([&] { return run.session()->isPlanningLong(); }));
    EXPECT_EQ(told, 1);
    run.planner->let();
    ASSERT_TRUE(run.settle());
    EXPECT_FALSE(run.session()->isPlanningLong());
    EXPECT_GT(told, 1);
}

TEST(SessionPlanning, IsLeftInTheMiddleOfASearch)
{
    HeldRun run;
    ASSERT_TRUE(run.settle());
    run.planner->hold();
    answerFirst(*run.session());
    EXPECT_TRUE(run.session()->isPlanning());
    run.session()->leave();
    EXPECT_FALSE(run.session()->isPlanning());
    EXPECT_EQ(run.session()->resumable().size(), 1U);
    run.planner->let();
    const RunId kept = run.session()->resumable().front().id;
    EXPECT_EQ(run.session()->resume(kept), std::nullopt);
    EXPECT_TRUE(run.session()->state().plan);
    EXPECT_FALSE(run.session()->state().beingPlanned);
}

TEST(SessionPlanning, IsDestroyedInTheMiddleOfASearch)
{
    HeldRun run{alikeZones()};
    ASSERT_TRUE(run.settle());
    const auto before = run.planner->asked().size();
    run.planner->hold();
    answerFirst(*run.session());
    run.planner->waitForQuestions(before + 1);
    run.session().reset();
    EXPECT_EQ(run.planner->stopped(), 1);
}

TEST(SessionPlanning, SimulatedTimeWaitsForItsPlans)
{
    Session::Parts parts;
    parts.clock = std::make_shared<HandClock>(noon(), true);
    parts.zones = std::make_shared<core::measure::UtcOnly>();
    Session session{std::move(parts)};
    session.begin({twoZones()}, Preference::EndEarly);
    answerFirst(session);
    EXPECT_FALSE(session.state().beingPlanned);
    EXPECT_FALSE(session.isPlanning());
}

/// A way to lead a run: what is done about the prompts, time after time.
struct Script {
    const char* name;
    Seconds late;         ///< So long after it is due each prompt is answered.
    int undoEvery = 0;    ///< Each so many answers the last is taken back.
    int moveEvery = 0;    ///< Each so many the last was a minute sooner.
    int helpAt = 0;       ///< Then somebody comes to help.
    bool settles = true;  ///< Whether each plan is there before the next answer.
};

class BothWays : public testing::TestWithParam<Script> {
protected:
    /// The same answer to both.
    void answer(const Answer& given)
    {
        const auto one = m_atOnce.session->answer(given);
        const auto other = m_apart.session->answer(given);
        ASSERT_EQ(one.has_value(), other.has_value());
    }

    void lead(const Script& script, int answers)
    {
        const auto& prompts = m_atOnce.session->state().prompts;
        Answer next;
        next.kind = Answer::Kind::End;
        if (!prompts.empty()) {
            m_clock->set(std::max(m_clock->now(), prompts.front().due + script.late));
            m_atOnce.session->wake();
            m_apart.session->wake();
            next = samples::answerTo(m_atOnce.session->state().prompts.front());
        }
        if (script.undoEvery > 0 && answers % script.undoEvery == 0)
            next.kind = Answer::Kind::UndoLast;
        if (script.moveEvery > 0 && answers % script.moveEvery == 0) {
            next.kind = Answer::Kind::MoveLast;
            next.ago = 60s;
        }
        if (script.helpAt > 0 && answers == script.helpAt)
            next = core::run::helperAnswer(m_atOnce.session->services(), "Berit");
        answer(next);
    }

    void expectTheSame()
    {
        ASSERT_TRUE(await([this] { return !m_apart.session->isPlanning(); }));
        EXPECT_EQ(m_apart.session->facts(), m_atOnce.session->facts());
        EXPECT_EQ(m_apart.session->state(), m_atOnce.session->state());
        EXPECT_EQ(m_apart.session->alarms(), m_atOnce.session->alarms());
    }

    std::shared_ptr<HandClock> m_clock = std::make_shared<HandClock>(noon(), false);
    samples::Stage m_atOnce{m_clock};
    samples::Stage m_apart{m_clock, std::make_shared<MemoryJournal>(), true};
};

TEST_P(BothWays, ComesToTheSame)
{
    const Script& script = GetParam();
    for (samples::Stage* stage : {&m_atOnce, &m_apart})
        stage->session->begin({twoZones()}, Preference::AsAsked);
    for (int answers = 1; answers < 40 && !m_atOnce.session->state().finished; ++answers) {
        ASSERT_NO_FATAL_FAILURE(lead(script, answers));
        if (script.settles) {
            ASSERT_NO_FATAL_FAILURE(expectTheSame());
        }
    }
    ASSERT_NO_FATAL_FAILURE(expectTheSame());
    EXPECT_GT(m_apart.session->facts().size(), 9U);
}

INSTANTIATE_TEST_SUITE_P(
    SessionPlanning, BothWays,
    testing::Values(
        Script{.name = "AsPlanned", .late = 0s}, Script{.name = "Late", .late = 95s},
        Script{.name = "VeryLate", .late = 600s}, Script{.name = "TakenBack", .late = 20s, .undoEvery = 4},
        Script{.name = "Sooner", .late = 80s, .moveEvery = 3},
        Script{.name = "Helped", .late = 40s, .helpAt = 3},
        Script{.name = "HelpTakenBack", .late = 40s, .undoEvery = 4, .helpAt = 3},
        Script{.name = "WithoutWaiting", .late = 30s, .undoEvery = 5, .moveEvery = 7, .settles = false}),
    [](const testing::TestParamInfo<Script>& each) { return std::string{each.param.name}; });

}  // namespace
}  // namespace app::session
