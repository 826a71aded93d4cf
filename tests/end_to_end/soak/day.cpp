#include "tests/end_to_end/soak/day.h"

#include "core/run/amend/amend.h"
#include "core/run/answers.h"
#include "core/service/check.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include <unistd.h>

namespace soak {

using app::session::Session;
using core::alarm::Alarm;
using core::alarm::Kind;
using core::run::Lane;
using core::run::Stage;
using core::service::Service;
using core::stagger::TaskId;
using core::stagger::TaskKind;

namespace {

constexpr Seconds longestStep{60};

/// Enough for every question that comes up here; a bound in steps of the search and not in time, so that a
/// day is the same each time.
constexpr std::uint64_t mostConflicts = 20'000;

Seconds minutes(std::size_t count)
{
    return Seconds{static_cast<std::int64_t>(count) * 60};
}

void vary(core::service::Zone& zone, std::mt19937_64& random)
{
    const auto between = [&](std::size_t least, std::size_t most) {
        return minutes(least + random() % (most - least + 1));
    };
    zone.apply.usual = between(4, 9);
    zone.apply.quickest = zone.apply.usual - minutes(random() % 3);
    zone.apply.slowest = zone.apply.usual + minutes(random() % 4);
    zone.develop.target = between(16, 32);
    zone.develop.least = zone.develop.target - between(3, 8);
    zone.develop.most = zone.develop.target + between(6, 12);
    zone.alone = random() % 2 == 0;
}

TaskId applyOf(const Lane& lane)
{
    return {lane.service, lane.coat, TaskKind::Apply, lane.zone, 0};
}

}  // namespace

std::vector<Service> someHeads(std::mt19937_64& random, std::size_t number)
{
    std::vector<Service> heads(2 + random() % 2, app::session::samples::twoZones());
    const bool helped = random() % 2 == 0;
    for (std::size_t place = 0; place < heads.size(); ++place) {
        Service& head = heads[place];
        head.head.name = "Head " + std::to_string(number) + "." + std::to_string(place + 1);
        head.name = head.head.name;
        for (core::service::Zone& zone : head.coats[0].zones)
            vary(zone, random);
        if (helped)
            head.crew.hands.push_back({.name = "Helper", .away = {}, .kinds = {}});
        const auto problems = core::service::checkService(head);
        EXPECT_TRUE(problems.empty())
            << (problems.empty() ? "" : core::service::problemText(problems.front()));
    }
    return heads;
}

std::size_t residentMemory()
{
    std::ifstream file{"/proc/self/statm"};
    std::size_t all = 0;
    std::size_t resident = 0;
    file >> all >> resident;
    return resident * static_cast<std::size_t>(sysconf(_SC_PAGESIZE));
}

Day::Day(std::uint64_t seed)
    : m_random{seed}
    , m_clock{std::make_shared<app::session::samples::HandClock>(app::session::samples::noon(), false)}
{
    openSession();
}

void Day::openSession()
{
    auto journal = app::storage::SqliteJournal::open(m_folder.path().toStdString());
    ASSERT_TRUE(journal.has_value()) << journal.error().what;
    m_journal = journal->get();
    Session::Parts parts;
    parts.journal = std::move(*journal);
    parts.clock = m_clock;
    parts.zones = std::make_shared<core::measure::UtcOnly>();
    parts.budget.conflicts = mostConflicts;
    parts.plansApart = false;  // Else what is read of a moment would hang on how fast the machine is.
    m_session = std::make_unique<Session>(std::move(parts));
    QObject::connect(
        m_session.get(), &Session::called, m_session.get(), [this](const core::alarm::Call& call) {
            ++counts[call.lead().kind == Kind::LimitPassed ? "limits passed, sounded" : "alarms sounded"];
        });
}

void Day::workFor(Seconds length)
{
    const Instant until = m_clock->now() + length;
    while (m_clock->now() < until && !testing::Test::HasFatalFailure()) {
        beginRun();
        const Instant late = m_clock->now() + std::chrono::hours{4};
        while (!state().finished && m_clock->now() < late && !testing::Test::HasFatalFailure())
            goOn();
        counts[state().finished ? "runs that came to their end" : "runs given up after 4 hours"] += 1;
        checkJournal();
        m_session->end();
        m_session->leave();
        m_clock->forward(minutes(1 + roll(10)));
    }
}

void Day::beginRun()
{
    m_run = m_session->begin(someHeads(m_random, ++m_runs), core::stagger::Preference::AsAsked);
    m_patience = m_clock->now();
    ++counts["runs begun"];
    check();
}

/// To the next moment at which anything changes by itself, or a little way towards it.
void Day::goOn()
{
    Instant next = m_clock->now() + longestStep;
    if (const auto change = core::alarm::nextChange(state(), {}, state().now);
        change && *change > state().now)
        next = std::min(next, *change);
    for (const Prompt& prompt : state().prompts)
        if (prompt.due > state().now)
            next = std::min(next, prompt.due);
    m_clock->set(next);
    m_session->wake();
    ++counts["moments"];
    check();
    actAtRandom();
}

void Day::actAtRandom()
{
    if (m_clock->now() >= m_patience)
        answerWhatIsDue();
    switch (roll(60)) {
    case 0: return correct();
    case 1:
    case 2: return change();
    case 3: return heat();
    case 4: return comeAndGo();
    case 5: return killAndTakeUp();
    default: return;
    }
}

/// All of it, or only the first; then it takes a while until somebody looks again, now and then a long one.
void Day::answerWhatIsDue()
{
    for (int answers = 0; answers < 4; ++answers) {
        const auto due = std::ranges::find_if(state().prompts, [&](const Prompt& prompt) {
            return prompt.due <= state().now && !prompt.waitsFor;
        });
        if (due == state().prompts.end())
            break;
        const Prompt prompt = *due;
        Answer answer = app::session::samples::answerTo(prompt);
        answer.ago = Seconds{static_cast<std::int64_t>(roll(3) == 0 ? roll(40) : 0)};
        if (prompt.asks == Prompt::Asks::Look) {
            answer.tone = roll(2) == 0 ? "still yellow" : "";
            if (roll(4) == 0) {
                answer.kind = Answer::Kind::LookAgain;
                answer.again = minutes(1 + roll(5));
            }
        }
        const bool taken = tell(answer, "answers")
            || (answer.ago > Seconds{0} && (answer.ago = Seconds{0}, tell(answer, "answers")));
        ASSERT_TRUE(taken || prompt.asks == Prompt::Asks::Start) << "what is asked for must be taken";
        if (!taken)
            break;
        if (answer.kind != Answer::Kind::LookAgain)
            checkGone(prompt);
    }
    m_patience = m_clock->now() + Seconds{static_cast<std::int64_t>(roll(12) == 0 ? roll(900) : roll(90))};
}

/// Undo, move or retell one of the last answers.
void Day::correct()
{
    const auto answers = core::run::standingAnswers(m_session->facts());
    if (answers.empty())
        return;
    const auto& meant = answers[roll(std::min<std::size_t>(answers.size(), 4))].front();
    Answer answer{.about = meant.number};
    switch (roll(3)) {
    case 0: answer.kind = Answer::Kind::UndoLast; break;
    case 1:
        answer.kind = Answer::Kind::MoveLast;
        answer.ago = state().now - meant.happened + Seconds{static_cast<std::int64_t>(roll(180))};
        break;
    default:
        answer.kind = Answer::Kind::OtherZone;
        answer.task = applyOf(anyLane());
        break;
    }
    tell(answer, "corrections");
}

Lane Day::anyLane()
{
    return state().lanes[roll(state().lanes.size())];
}

/// What happens to a zone that nobody asked about.
void Day::change()
{
    const auto& services = m_session->services();
    const auto applied = std::ranges::find(state().lanes, Stage::Applying, &Lane::stage);
    if (applied != state().lanes.end() && roll(4) == 0) {
        tell({.kind = Answer::Kind::Interrupt, .task = applyOf(*applied)}, "interruptions");
        return;
    }
    const Lane lane = anyLane();
    switch (roll(4)) {
    case 0: tell({.kind = Answer::Kind::Interrupt, .task = applyOf(lane)}, "interruptions"); break;
    case 1: tell({.kind = Answer::Kind::RinseZoneNow, .task = applyOf(lane)}, "early rinses"); break;
    case 2:
        if (core::run::carriesMixture(lane.stage) || lane.stage == Stage::Waiting)
            tell(core::run::apartAnswer(services, applyOf(lane)), "zones apart");
        break;
    default:
        if (core::run::carriesMixture(lane.stage) && state().lanes.size() < 12)
            tell(core::run::zoneLikeAnswer(services, state().progress, applyOf(lane), "More", minutes(3)),
                 "zones added");
        break;
    }
}

void Day::comeAndGo()
{
    const auto& services = m_session->services();
    if (services.front().crew.hands.size() < 3 && roll(2) == 0)
        tell(core::run::helperAnswer(services, "Somebody"), "helpers");
    else
        tell(core::run::awayAnswer(services, roll(services.front().crew.hands.size()),
                                   {state().now, state().now + minutes(2 + roll(8))}),
             "times away");
}

void Day::heat()
{
    Answer answer;
    answer.task = anyLane().service == 0 ? TaskId{.kind = TaskKind::Heat}
                                         : TaskId{.service = 1, .kind = TaskKind::Heat};
    const auto& heats = state().heats;
    const bool on = std::ranges::any_of(
        heats, [&](const core::run::Heat& heat) { return heat.task.service == answer.task.service; });
    answer.kind = on ? Answer::Kind::Finish : Answer::Kind::Start;
    answer.again = on ? Seconds{0} : minutes(roll(12));
    tell(answer, "heat");
}

namespace {

/// One line a fact, so that a difference can be read.
std::string inWords(const std::vector<core::run::Fact>& facts)
{
    std::ostringstream words;
    for (const core::run::Fact& fact : facts)
        words << static_cast<std::int64_t>(fact.number) << ": kind " << static_cast<int>(fact.kind)
              << " of task " << core::stagger::taskIdText(fact.task) << " about "
              << (fact.about ? static_cast<std::int64_t>(*fact.about) : 0) << " at "
              << fact.happened.time_since_epoch().count() << " recorded "
              << fact.recorded.time_since_epoch().count() << " verdict " << static_cast<int>(fact.verdict)
              << " again " << fact.again.count() << " revision " << fact.revision << " tone '" << fact.tone
              << "'\n";
    return words.str();
}

}  // namespace

/// What the session shows after it was taken up again is what it showed before.
void Day::killAndTakeUp()
{
    if (state().finished)
        return;  // Whoever lets go of a run that has nothing more to do ends it.
    const core::run::State before = state();
    const auto alarms = m_session->alarms();
    const auto facts = m_session->facts();
    m_session.reset();
    openSession();
    const auto problem = m_session->resume(*m_run);
    ASSERT_FALSE(problem.has_value()) << *problem;
    ++counts["restarts"];
    ASSERT_EQ(inWords(m_session->facts()), inWords(facts));
    ASSERT_EQ(m_session->facts(), facts);
    ASSERT_EQ(state(), before);
    ASSERT_EQ(m_session->alarms(), alarms);
}

bool Day::tell(const Answer& answer, const char* what)
{
    const auto refusal = m_session->answer(answer);
    ++counts[refusal ? std::string{what} + ", refused" : std::string{what}];
    if (!refusal)
        check();
    return !refusal;
}

void Day::check()
{
    ASSERT_EQ(state().now, m_clock->now());
    ASSERT_EQ(m_session->notKept(), 0u);
    std::size_t zones = 0;
    for (const Service& service : m_session->services())
        zones += service.coats[0].zones.size();
    ASSERT_EQ(state().lanes.size(), zones);
    ASSERT_LE(state().prompts.size(), 40 * zones);
    ASSERT_LE(m_session->alarms().size(), state().prompts.size() + state().limits.size());
    for (const Lane& lane : state().lanes) {
        if (lane.stage == Stage::Developing) {
            ASSERT_EQ(lane.development, state().now - lane.clockStart);
        }
    }
    checkLimits();
    checkAlarms();
}

/// No limit is passed without an alarm that stands for it.
void Day::checkLimits()
{
    if (state().finished)
        return;
    for (const Lane& lane : state().lanes) {
        const bool counted = lane.stage == Stage::Developing
            || (lane.stage == Stage::Applying && lane.clockStart == lane.firstContact);
        if (!counted || state().now < lane.mostAt)
            continue;
        ++counts["moments past a limit"];
        const bool heard = std::ranges::any_of(m_session->alarms(), [&](const Alarm& alarm) {
            return alarm.kind == Kind::LimitPassed && alarm.task == applyOf(lane);
        });
        ASSERT_TRUE(heard) << "zone " << lane.zone << " of head " << lane.service << " is past its limit";
    }
}

/// Every alarm is about something that is still asked for or near.
void Day::checkAlarms()
{
    for (const Alarm& alarm : m_session->alarms()) {
        const bool limit = alarm.kind == Kind::LimitNear || alarm.kind == Kind::LimitPassed;
        const bool known = limit
            ? std::ranges::any_of(state().limits, [&](const auto& watch) { return watch.zone == alarm.task; })
            : std::ranges::any_of(state().prompts, [&](const Prompt& prompt) {
                  return prompt.task == alarm.task && prompt.asks == alarm.asks;
              });
        ASSERT_TRUE(known) << core::stagger::taskIdText(alarm.task);
    }
}

/// What was answered does not sound any more.
void Day::checkGone(const Prompt& prompt)
{
    const bool still = std::ranges::any_of(m_session->alarms(), [&](const Alarm& alarm) {
        const bool limit = alarm.kind == Kind::LimitNear || alarm.kind == Kind::LimitPassed;
        return !limit && alarm.task == prompt.task && alarm.asks == prompt.asks;
    });
    ASSERT_FALSE(still) << core::stagger::taskIdText(prompt.task) << " was answered and sounds";
}

void Day::checkJournal()
{
    const auto kept = m_journal->facts(*m_run);
    ASSERT_TRUE(kept.has_value()) << kept.error().what;
    ASSERT_EQ(*kept, m_session->facts());
    core::run::Setup fresh = m_session->setup();
    fresh.planner = core::stagger::plan;
    fresh.safeStarts = core::stagger::safeStarts;
    ASSERT_EQ(core::run::stateAt(fresh, *kept, state().now), state());
    counts["facts kept"] += kept->size();
}

}  // namespace soak
