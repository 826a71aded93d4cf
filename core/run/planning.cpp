#include "core/run/planning.h"

#include "core/run/amend/revisions.h"
#include "core/run/looks_together.h"
#include "core/run/waiting.h"
#include "core/run/zone_record.h"
#include "core/stagger/carried_on.h"

#include <algorithm>

namespace core::run {
namespace {

/// A start that is overdue by that long is planned again, and again after as long.
constexpr Seconds planAgainAfter{30};

/// How many plans back the beginning of being due is looked for, or one to carry on. Insistence has
/// long reached its most by then, and a call must not plan without end.
constexpr std::size_t mostLooksBack = 20;

stagger::Question questionOf(const Setup& setup, const Planning& planning)
{
    return {.services = *planning.services,
            .progress = planning.progress,
            .now = planning.madeFor,
            .preference = setup.preference,
            .mayBreakLimits = planning.reason.has_value()};
}

Planning planFor(const Setup& setup, std::span<const Fact> facts, Instant moment)
{
    Planning planning{
        .madeFor = moment, .services = &servicesAt(setup, facts), .progress = progressOf(setup, facts)};
    stagger::Question question = questionOf(setup, planning);
    auto answer = setup.planner(question, setup.budget);
    if (answer && !*answer) {
        planning.reason = std::move(answer->error());
        question.mayBreakLimits = true;
        answer = setup.planner(question, setup.budget);
    }
    planning.pending = !answer;
    if (answer && *answer)
        planning.plan = std::move(**answer);
    return planning;
}

/// When `id` is asked for where it is planned, still open and not waiting for something that runs.
std::optional<Instant> askedFor(const Planning& planning, const TaskId& id)
{
    const auto* task = planning.plan ? planning.plan->find(id) : nullptr;
    if (!task || task->state != stagger::TaskState::Open || planning.progress.find(id))
        return {};
    if (whatItWaitsFor(*planning.services, planning.progress, &*planning.plan, id))
        return {};
    return planning.askedAt(*task);
}

}  // namespace

Instant Planning::askedAt(const stagger::PlannedTask& task) const
{
    const auto look = looks.find(task.id);
    return look == looks.end() ? task.start : look->second;
}

PlanHistory::PlanHistory(const Setup& setup, std::span<const Fact> facts)
    : m_setup{setup}
    , m_facts{facts}
    , m_services{servicesAt(setup, facts)}
{
}

/// Never back in time, though a computer's clock was put back between two facts.
Instant PlanHistory::momentOf(std::size_t count) const
{
    Instant moment = m_setup.began;
    for (const Fact& fact : m_facts.first(count))
        moment = std::max(moment, fact.recorded);
    return moment;
}

const Planning& PlanHistory::at(std::size_t count, Instant moment)
{
    const auto known = m_known.find({count, moment});
    if (known != m_known.end())
        return known->second;
    Planning planning = planFor(m_setup, m_facts.first(count), moment);
    putLooksTogether(count, planning);
    return m_known.emplace(std::pair{count, moment}, std::move(planning)).first->second;
}

void PlanHistory::putLooksTogether(std::size_t count, Planning& planning)
{
    if (planning.plan)
        planning.looks = looksTogether(*planning.services, *planning.plan, calledBefore(count, planning));
}

/// The looks that had been asked for already when `planning` was made, with so many facts, and since when.
/// Most often none could have been, and then no earlier plan is asked for.
std::map<TaskId, Instant> PlanHistory::calledBefore(std::size_t count, const Planning& planning)
{
    const Instant moment = planning.madeFor;
    std::vector<TaskId> looks;
    for (const stagger::PlannedTask& task : (*planning.plan)->tasks) {
        const bool open = task.id.kind == TaskKind::Look && task.state == stagger::TaskState::Open;
        if (open && task.start <= moment)
            looks.push_back(task.id);
    }
    const bool again = moment > momentOf(count);
    if (looks.empty() || (count == 0 && !again) || m_callsBack >= mostLooksBack)
        return {};
    ++m_callsBack;
    const Planning& before = again ? inForce(count, moment - planAgainAfter) : inForce(count - 1, moment);
    --m_callsBack;
    std::map<TaskId, Instant> called;
    for (const TaskId& look : looks) {
        const auto since = askedFor(before, look);
        if (since && *since <= moment)
            called.emplace(look, *since);
    }
    return called;
}

const Planning& PlanHistory::afterFacts(std::size_t count)
{
    const Planning& planning = at(count, momentOf(count));
    return planning.pending ? carriedTo(count) : planning;
}

/// What was in force before the last of so many facts, told what has happened since. That of a plan before
/// it, if that is not known either.
const Planning& PlanHistory::carriedTo(std::size_t count)
{
    const auto known = m_carried.find(count);
    if (known != m_carried.end())
        return known->second;
    Planning carried = at(count, momentOf(count));
    carried.reason.reset();
    for (std::size_t back = 1; back <= std::min(count, mostLooksBack); ++back) {
        if (at(count - back, momentOf(count - back)).pending)
            continue;
        const Planning& before = inForce(count - back, momentOf(count));
        carried.reason = before.reason;
        if (before.plan) {
            carried.plan = stagger::carriedOn(*before.plan, questionOf(m_setup, carried));
            putLooksTogether(count, carried);
        }
        break;
    }
    return m_carried.emplace(count, std::move(carried)).first->second;
}

bool PlanHistory::isOverdue(const Planning& planning, Instant now) const
{
    if (!planning.plan)
        return false;
    return std::ranges::any_of((*planning.plan)->tasks, [&](const stagger::PlannedTask& task) {
        return task.state == stagger::TaskState::Open && planning.askedAt(task) + planAgainAfter <= now
            && !isPointless(*planning.services, planning.progress, task.id);
    });
}

const Planning& PlanHistory::inForce(std::size_t count, Instant now)
{
    const Planning& first = afterFacts(count);
    if (first.pending || !isOverdue(first, now))
        return first;
    const Seconds gone = now - first.madeFor;
    Instant moment = first.madeFor + gone / planAgainAfter * planAgainAfter;
    for (std::size_t back = 0; back < mostLooksBack && moment > first.madeFor; ++back) {
        const Planning& again = at(count, moment);
        if (!again.pending)
            return again;
        moment -= planAgainAfter;
    }
    return first;
}

std::vector<stagger::SafeStart> PlanHistory::safeStarts(Instant now)
{
    const Planning& planning = inForce(now);
    if (!planning.plan || planning.pending)
        return {};
    return m_setup.safeStarts(questionOf(m_setup, planning), *planning.plan);
}

std::optional<stagger::Question> PlanHistory::choiceQuestion(Instant now)
{
    const Planning& planning = inForce(now);
    if (!planning.reason)
        return {};
    stagger::Question question = questionOf(m_setup, planning);
    question.mayBreakLimits = false;
    return question;
}

/// Since when `id` has been due in the plans that were in force with so many facts, up to `until`.
std::optional<Instant> PlanHistory::dueWithin(std::size_t count, const TaskId& id, Instant until)
{
    const auto start = askedFor(afterFacts(count), id);
    return start && *start <= until ? start : std::nullopt;
}

/// Since when `id` has been due in the plans that were made again while nothing was answered.
Instant PlanHistory::dueSinceLastFact(const TaskId& id, Instant now)
{
    if (const auto start = dueWithin(m_facts.size(), id, now))
        return *start;
    Instant moment = inForce(now).madeFor;
    Instant due = inForce(now).askedAt(*inForce(now).plan->find(id));
    for (std::size_t back = 0; back < mostLooksBack; ++back) {
        moment -= planAgainAfter;
        if (moment <= momentOf(m_facts.size()))
            break;
        const auto start = askedFor(at(m_facts.size(), moment), id);
        if (!start || *start > moment + planAgainAfter)
            break;
        due = std::min(due, *start);
    }
    return due;
}

Instant PlanHistory::firstDue(const TaskId& id, Instant now)
{
    const Planning& current = inForce(now);
    const stagger::PlannedTask& task = *current.plan->find(id);
    Instant due = current.askedAt(task);
    if (task.start > now || !askedFor(current, id))
        return due;
    due = std::min(due, dueSinceLastFact(id, now));
    // Plans made before the last answers, which were about something else.
    for (std::size_t count = m_facts.size(); count > 0 && m_facts.size() - count < mostLooksBack; --count) {
        const auto start = askedFor(afterFacts(count - 1), id);
        if (!start)
            break;
        if (*start <= momentOf(count))
            due = std::min(due, *start);
        else if (id.kind != TaskKind::Look)  // Once called for, a look may have been put together anew.
            break;
    }
    return due;
}

}  // namespace core::run
