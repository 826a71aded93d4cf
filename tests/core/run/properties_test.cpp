#include "core/run/remember.h"
#include "tests/core/run/support.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <set>

// What holds for every list of facts and every row of answers. The stand-in planner keeps
// it quick; seeds are fixed unless RC_PARAMS says otherwise, and a failure prints its case.

namespace core::run {
namespace {

const bool seeded = ::setenv("RC_PARAMS", "seed=20260302", 0) == 0;

rc::Gen<TaskId> anyTask()
{
    const auto kinds = {TaskKind::Apply, TaskKind::Look,       TaskKind::Mix,  TaskKind::Rinse,
                        TaskKind::Dry,   TaskKind::RinseAlone, TaskKind::Late, TaskKind::Assess};
    return rc::gen::build<TaskId>(
        rc::gen::set(&TaskId::service, rc::gen::weightedElement<std::size_t>({{9, 0}, {1, 1}})),
        rc::gen::set(&TaskId::kind, rc::gen::elementOf(std::vector<TaskKind>(kinds))),
        rc::gen::set(&TaskId::item, rc::gen::inRange<std::size_t>(0, 4)));
}

Instant anyMoment(int from, int until)
{
    return clockAt(0) + Seconds{*rc::gen::inRange(from, until)};
}

/// Facts of any kind about anything at any time; contradictions are the rule.
std::vector<Fact> anyFacts()
{
    const auto count = *rc::gen::inRange(0, 24);
    std::vector<Fact> facts;
    for (std::int64_t number = 1; number <= count; ++number) {
        Fact fact{.number = FactNumber{number}, .task = *anyTask()};
        // An amendment would need services of its own.
        const int kind = *rc::gen::inRange(0, 9);
        fact.kind =
            kind == static_cast<int>(FactKind::Amended) ? FactKind::Noted : static_cast<FactKind>(kind);
        if (*rc::gen::inRange(0, 4) != 0)
            fact.about = FactNumber{*rc::gen::inRange<std::int64_t>(0, count + 2)};
        fact.happened = anyMoment(-3600, 7200);
        fact.recorded = anyMoment(0, 7200);
        fact.verdict = static_cast<Verdict>(*rc::gen::inRange(0, 3));
        fact.again = Seconds{*rc::gen::inRange(-60, 900)};
        facts.push_back(fact);
    }
    return facts;
}

/// A run that was told what somebody might say, one thing a few minutes after the other.
Teller anyRun()
{
    Teller teller{longWig()};
    Instant now = clockAt(0);
    const auto count = *rc::gen::inRange(0, 30);
    for (int told = 0; told < count; ++told) {
        now += Seconds{*rc::gen::inRange(0, 400)};
        const State state = teller.at(now);
        Answer answer{.kind = static_cast<Answer::Kind>(*rc::gen::inRange(0, 8)), .task = *anyTask()};
        if (!state.prompts.empty() && *rc::gen::inRange(0, 3) != 0) {
            const Prompt& prompt = state.prompts.front();
            answer.task = prompt.task;
            answer.kind = prompt.asks == Prompt::Asks::Start ? Answer::Kind::Start
                : prompt.asks == Prompt::Asks::Finish        ? Answer::Kind::Finish
                                                             : Answer::Kind::Leave;
        }
        answer.ago = Seconds{*rc::gen::inRange(0, 200)};
        answer.again = Seconds{*rc::gen::inRange(0, 600)};
        teller.tell(answer, now);
    }
    return teller;
}

std::string textOf(const std::vector<Fact>& facts)
{
    std::string text;
    for (const Fact& fact : facts) {
        text += std::to_string(static_cast<std::int64_t>(fact.number)) + ": kind "
            + std::to_string(static_cast<int>(fact.kind)) + " " + stagger::taskIdText(fact.task) + " about "
            + std::to_string(fact.about ? static_cast<std::int64_t>(*fact.about) : 0) + " at "
            + std::to_string((fact.happened - clockAt(0)).count()) + " told "
            + std::to_string((fact.recorded - clockAt(0)).count()) + "\n";
    }
    return text;
}

void checkProgress(const stagger::Progress& progress)
{
    std::set<TaskId> seen;
    for (const stagger::TaskProgress& task : progress.tasks) {
        RC_ASSERT(seen.insert(task.id).second);
        RC_ASSERT(!progress.isDropped(task.id));
        // In brackets: the macro takes an expression apart, and would look at both sides of the `||`.
        RC_ASSERT((!task.end || *task.end >= task.start));
    }
    for (const TaskId& dropped : progress.dropped)
        RC_ASSERT(seen.insert(dropped).second);
}

RC_GTEST_PROP(RunProperties, AnyFactsMakeAStateThatIsInOrder, ())
{
    const std::vector<Fact> facts = anyFacts();
    RC_LOG() << textOf(facts);
    const Teller teller{longWig()};
    const Instant now = anyMoment(-600, 9000);
    const State state = stateAt(teller.setup, facts, now);
    checkProgress(state.progress);
    RC_ASSERT(state.lanes.size() == 3u);
    bool later = false;
    for (const Prompt& prompt : state.prompts) {
        const bool isLater = prompt.due > now || prompt.waitsFor.has_value();
        RC_ASSERT(isLater || !later);
        later = isLater;
        RC_ASSERT(prompt.pressing >= prompt.due);
    }
    RC_ASSERT(std::ranges::is_sorted(state.limits, {}, &LimitWatch::at));
    RC_ASSERT(stateAt(teller.setup, facts, now) == state);
}

RC_GTEST_PROP(RunProperties, AZoneWithMixtureOnItIsWatchedUntilTheWater, ())
{
    const Teller teller = anyRun();
    RC_LOG() << textOf(teller.facts);
    const State state = teller.at(anyMoment(0, 9000));
    for (const Lane& lane : state.lanes) {
        if (lane.stage != Stage::Developing || lane.water <= state.now)
            continue;
        const TaskId zone = apply(lane.zone);
        const bool watched = std::ranges::find(state.limits, zone, &LimitWatch::zone) != state.limits.end();
        RC_ASSERT(watched || lane.water <= lane.mostAt);
    }
}

RC_GTEST_PROP(RunProperties, UndoingEverythingGivesTheBeginning, ())
{
    Teller teller = anyRun();
    RC_LOG() << textOf(teller.facts);
    const Instant now = clockAt(300);
    std::size_t undone = 0;
    while (!teller.tell({.kind = Answer::Kind::UndoLast}, now))
        RC_ASSERT(++undone < 200u);
    RC_ASSERT(progressOf(teller.setup, teller.facts).empty());
}

RC_GTEST_PROP(RunProperties, AnUndoAndItsUndoChangeNothing, ())
{
    Teller teller = anyRun();
    const auto before = progressOf(teller.setup, teller.facts);
    const Instant now = clockAt(300);
    if (teller.tell({.kind = Answer::Kind::UndoLast}, now))
        return;
    RC_ASSERT(!teller.tell({.kind = Answer::Kind::UndoLast, .about = teller.facts.back().number}, now));
    RC_LOG() << textOf(teller.facts);
    RC_ASSERT(progressOf(teller.setup, teller.facts) == before);
}

RC_GTEST_PROP(RunProperties, AMovedFactIsAsIfToldSo, ())
{
    Teller teller = anyRun();
    std::vector<Fact> facts = teller.facts;
    if (facts.empty())
        return;
    const auto place = *rc::gen::inRange<std::size_t>(0, facts.size());
    std::vector<Fact> toldSo = facts;
    const Instant moment = anyMoment(0, 5000);
    Fact moved{.number = FactNumber{static_cast<std::int64_t>(facts.size()) + 1}, .kind = FactKind::Moved};
    moved.about = facts[place].number;
    moved.happened = moment;
    facts.push_back(moved);
    if (std::ranges::find(toldSo, FactKind::Moved, &Fact::kind) != toldSo.end())
        return;  // An earlier move of the same fact would hide what was told.
    toldSo[place].happened = moment;
    RC_ASSERT(progressOf(teller.setup, facts) == progressOf(teller.setup, toldSo));
}

RC_GTEST_PROP(RunProperties, ARunThatWasKilledStandsWhereItStood, ())
{
    const Teller teller = anyRun();
    RC_LOG() << textOf(teller.facts);
    const Instant end = anyMoment(0, 9000);
    Teller followed = teller;  // Ticks all along, with a planner that remembers.
    followed.setup.planner = remembering(inTurn, 40);
    State last = followed.at(end);
    for (Instant now = clockAt(0); now <= end; now += Seconds{397}) {
        const auto known =
            std::ranges::find_if(teller.facts, [&](const Fact& fact) { return fact.recorded > now; });
        last = stateAt(followed.setup, std::span{teller.facts.begin(), known}, now);
    }
    last = followed.at(end);
    RC_ASSERT(last == teller.at(end));
}

RC_GTEST_PROP(RunProperties, OnlyElapsedTimeMatters, ())
{
    // Over the autumn change in London (IANA: 01:00Z on 25 October 2026) or not, 35 min are 35 min.
    using namespace std::chrono_literals;
    const Seconds shift = std::chrono::sys_days{2026y / 10 / 25} + 40min - clockAt(0);
    Teller here = anyRun();
    Teller there = here;
    there.setup.began += shift;
    for (Fact& fact : there.facts) {
        fact.happened += shift;
        fact.recorded += shift;
    }
    const Instant now = anyMoment(0, 9000);
    const State one = here.at(now);
    const State other = there.at(now + shift);
    for (std::size_t place = 0; place < one.lanes.size(); ++place) {
        RC_ASSERT(one.lanes[place].development == other.lanes[place].development);
        RC_ASSERT(one.lanes[place].water + shift == other.lanes[place].water);
    }
    RC_ASSERT(one.prompts.size() == other.prompts.size());
}

}  // namespace
}  // namespace core::run
