#include "core/stagger/floor/part.h"

#include "core/stagger/coat_by_coat.h"
#include "core/stagger/plan_builder.h"

#include <algorithm>

namespace core::stagger::floor {
namespace {

bool isOf(const Heads& heads, std::size_t service)
{
    return std::ranges::find(heads, service) != heads.end();
}

Progress progressOf(const Progress& whole, const Heads& heads)
{
    Progress progress;
    for (const TaskProgress& task : whole.tasks) {
        if (isOf(heads, task.id.service))
            progress.tasks.push_back(task);
    }
    for (const TaskId& id : whole.dropped) {
        if (isOf(heads, id.service))
            progress.dropped.push_back(id);
    }
    return progress;
}

std::optional<Instant> startIn(const Standing& standing, const TaskId& id)
{
    const std::vector<PlannedTask>& tasks = standing[id.service].tasks;
    const auto found = std::ranges::find(tasks, id, &PlannedTask::id);
    return found == tasks.end() ? std::nullopt : std::optional{found->start};
}

/// The times of `draft` at which everything starts as it stands; what is free besides is at its best.
std::optional<temporal::Answer> answerOf(Draft draft, const Standing& standing)
{
    const auto fix = [&](const TaskId& id, const Moment& start) {
        const std::optional<Instant> stands = startIn(standing, id);
        if (!stands || start.isFixed())
            return;
        const auto time = static_cast<Time>((*stands - draft.zero).count()) - start.offset;
        draft.problem.lags.push_back({temporal::origin, start.point, time});
        draft.problem.lags.push_back({start.point, temporal::origin, -time});
    };
    for (const Busy& busy : draft.busy) {
        if (!busy.elsewhere)
            fix(busy.id, busy.start);
    }
    for (const auto& [id, start] : draft.drying)
        fix(id, start);
    return temporal::search(draft.problem, {.conflicts = 1'000, .stop = {}}).best;
}

Draft draftFor(const Question& question, Strictness strictness, const Pins& pins)
{
    Draft draft = draftOf(question, strictness, {}, pins);
    // Which of several equally good plans it is, is not worth the search here.
    draft.problem.ranking.clear();
    return draft;
}

}  // namespace

Worth operator+(const Worth& a, const Worth& b)
{
    return {a.breach + b.breach, a.deviation + b.deviation, a.waste + b.waste, a.staleness + b.staleness};
}

Worth operator-(const Worth& a, const Worth& b)
{
    return {{a.breach.hundredthSeconds - b.breach.hundredthSeconds},
            {a.deviation.hundredthSeconds - b.deviation.hundredthSeconds},
            a.waste - b.waste,
            a.staleness - b.staleness};
}

Question alone(const Question& whole, std::size_t head)
{
    Question question{.services = {whole.services[head]},
                      .progress = progressOf(whole.progress, {head}),
                      .now = whole.now,
                      .preference = whole.preference,
                      .mayBreakLimits = whole.mayBreakLimits};
    question.services.front().crew = whole.services.front().crew;
    for (TaskProgress& task : question.progress.tasks)
        task.id.service = 0;
    for (TaskId& id : question.progress.dropped)
        id.service = 0;
    return question;
}

Part::Part(const Question& whole, const Heads& heads, const Standing& standing)
{
    m_question.now = whole.now;
    m_question.preference = whole.preference;
    m_question.mayBreakLimits = whole.mayBreakLimits;
    m_question.progress = progressOf(whole.progress, heads);
    for (std::size_t head = 0; head < whole.services.size(); ++head) {
        if (isOf(heads, head)) {
            m_question.services.push_back(whole.services[head]);
            continue;
        }
        service::Service absent;
        absent.name = whole.services[head].name;
        absent.head = whole.services[head].head;
        m_question.services.push_back(std::move(absent));
        for (const PlannedTask& task : standing[head].tasks) {
            if (task.start < task.end)
                m_pins.elsewhere.push_back(task);
        }
    }
    m_question.services.front().crew = whole.services.front().crew;
}

void Part::pin(const std::vector<PlannedTask>& tasks, std::size_t coat)
{
    for (const PlannedTask& task : tasks) {
        if (task.state == TaskState::Open && task.id.coat == coat)
            m_pins.starts[task.id] = task.start;
    }
}

PartAnswer Part::plan(Strictness strictness, const temporal::Limits& limits) const
{
    Draft draft = draftFor(m_question, strictness, m_pins);
    if (draft.impossible)
        return {.plan = {}, .complete = true, .bound = {}};
    const temporal::Outcome outcome = solve(draft, limits);
    PartAnswer answer{.plan = {}, .complete = outcome.complete, .bound = {}, .conflicts = outcome.conflicts};
    if (outcome.best) {
        answer.plan = PlanBuilder::build(draft, outcome);
        answer.bound = (*answer.plan)->provedBound;
        answer.isBetter = !limits.known || outcome.best->price < limits.known->price;
    }
    return answer;
}

PartAnswer Part::improve(Strictness strictness, const temporal::Limits& limits,
                         const Standing& standing) const
{
    temporal::Limits from = limits;
    from.known = answerOf(draftFor(m_question, strictness, m_pins), standing);
    return plan(strictness, from);
}

std::optional<Worth> Part::worthOf(Strictness strictness, const Standing& standing) const
{
    Draft draft = draftFor(m_question, strictness, m_pins);
    temporal::Outcome outcome;
    outcome.best = answerOf(draft, standing);
    outcome.complete = true;
    if (!outcome.best)
        return std::nullopt;
    return PlanBuilder::build(draft, outcome)->worth;
}

void put(const Plan& plan, const Heads& heads, Standing& standing)
{
    for (const std::size_t head : heads) {
        standing[head].tasks.clear();
        standing[head].broken.clear();
    }
    for (const PlannedTask& task : plan->tasks) {
        if (task.state != TaskState::Done)
            standing[task.id.service].tasks.push_back(task);
    }
    for (const BrokenLimit& broken : plan->broken)
        standing[broken.task.service].broken.push_back(broken);
}

}  // namespace core::stagger::floor
