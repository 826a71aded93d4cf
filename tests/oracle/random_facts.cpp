#include "tests/oracle/random_facts.h"

#include "tests/oracle/dice.h"
#include "tests/oracle/facts.h"

#include <algorithm>

namespace oracle {
namespace {

using core::measure::Instant;
using core::measure::Seconds;
using core::stagger::PlanData;
using core::stagger::PlannedTask;
using core::stagger::Question;
using core::stagger::TaskId;
using core::stagger::TaskKind;
using core::stagger::TaskProgress;

namespace service = core::service;

class History : private Dice {
public:
    History(const Question& question, const PlanData& plan, std::uint64_t seed)
        : Dice{seed}
        , m_question{question}
        , m_plan{plan}
    {
    }

    Question draw()
    {
        drawNow();
        for (const PlannedTask& task : m_plan.tasks)
            if (startOf(task) < m_now || (startOf(task) == m_now && m_startsNow))
                happen(task);
        for (const TaskId& id : m_plan.looksNotDue)
            if (inHundred(5))
                m_question.progress.dropped.push_back(id);
        for (std::size_t head = 0; head < m_question.services.size(); ++head)
            for (const TaskId& apply : core::stagger::tasksOf(m_question.services[head], head))
                if (apply.kind == TaskKind::Apply)
                    drawFate(apply);
        forgetMixes();
        m_question.now = m_now;
        return std::move(m_question);
    }

private:
    Seconds some(int most) { return Seconds{number(0, most)}; }
    [[nodiscard]] Instant startOf(const PlannedTask& task) const
    {
        return task.start + (task.start >= m_delayedFrom ? m_delay : Seconds{0});
    }
    [[nodiscard]] const service::Zone& zoneOf(const TaskId& id) const
    {
        return m_question.services[id.service].coats[id.coat].zones[id.item];
    }
    [[nodiscard]] bool hasHappened(const TaskId& id) const { return m_question.progress.find(id) != nullptr; }

    /// Some moment round a task, and what was late until then.
    void drawNow()
    {
        const PlannedTask& from = m_plan.tasks[count(m_plan.tasks.size()) - 1];
        if (inHundred(40)) {
            m_delayedFrom = from.start;
            m_delay = some(4);
        }
        const PlannedTask& until = m_plan.tasks[count(m_plan.tasks.size()) - 1];
        m_startsNow = inHundred(50);
        m_now = startOf(until) + Seconds{number(m_startsNow ? 0 : 1, (until.end - until.start).count() + 2)};
    }

    /// When something begins that was planned to come after `task` on the same head, hands or basin: if it
    /// has begun, the task is over.
    [[nodiscard]] Instant overBy(const PlannedTask& task) const
    {
        Instant by = Instant::max();
        for (const PlannedTask& next : m_plan.tasks) {
            const bool follows = next.id.service == task.id.service || next.hands == task.hands
                || (isRinse(task.id) && isRinse(next.id) && next.basin == task.basin);
            if (follows && next.start >= task.end && !(next.id == task.id))
                by = std::min(by, startOf(next));
        }
        return by;
    }

    Seconds lengthOf(const PlannedTask& task)
    {
        if (task.id.kind != TaskKind::Apply)
            return task.end - task.start;
        const service::Application& apply = zoneOf(task.id).apply;
        if (inHundred(10))
            return apply.slowest + some(3);
        if (inHundred(50))
            return Seconds{number(apply.quickest.count(), apply.slowest.count())};
        return apply.usual;
    }

    /// Of pieces that come apart something may be done to the one while the other is rinsed, so that nothing
    /// would end it before its water.
    [[nodiscard]] bool mayTakeLonger(const PlannedTask& task) const
    {
        return task.start < task.end && !m_question.services[task.id.service].head.piecesComeApart;
    }

    void happen(const PlannedTask& task)
    {
        const bool mayBeDropped = task.id.kind == TaskKind::Look || task.id.kind == TaskKind::Late;
        if (mayBeDropped && inHundred(5)) {
            m_question.progress.dropped.push_back(task.id);
            return;
        }
        const Instant by = overBy(task);
        Instant end = startOf(task) + lengthOf(task);
        if (by <= m_now)
            end = std::min(end, by);
        else if (end <= m_now && mayTakeLonger(task) && inHundred(15))
            end = m_now + Seconds{1};
        TaskProgress fact{.id = task.id, .start = startOf(task), .end = {}, .plannedEnd = {}};
        if (end <= m_now)
            fact.end = end;
        else if (inHundred(75))
            fact.plannedEnd = startOf(task) + (task.end - task.start)
                + (mayTakeLonger(task) && inHundred(30) ? some(3) : Seconds{0});
        m_question.progress.tasks.push_back(fact);
    }

    /// Of a zone and what is still to be done to it.
    void drawFate(const TaskId& apply)
    {
        if (!hasHappened(apply)) {
            if (inHundred(4) && isMissedByNobody(apply))
                m_question.progress.dropped.push_back(apply);
            return;
        }
        if (hasHappened(rinseOf(m_question, apply)))
            return;
        if (zoneOf(apply).alone && inHundred(20) && rinseAlone(apply))
            return;
        for (const PlannedTask& task : m_plan.tasks)
            if (isDoneTo(apply, task.id) && task.id != apply && !hasHappened(task.id)
                && !m_question.progress.isDropped(task.id) && inHundred(5))
                m_question.progress.dropped.push_back(task.id);
    }

    static bool isDoneTo(const TaskId& apply, const TaskId& id)
    {
        return (id.kind == TaskKind::Look || id.kind == TaskKind::Late || id.kind == TaskKind::Apply)
            && id.service == apply.service && id.coat == apply.coat && id.item == apply.item;
    }

    /// Its group is rinsed all the same, and a coat is left of the head's.
    [[nodiscard]] bool isMissedByNobody(const TaskId& apply) const
    {
        const auto& zones = m_question.services[apply.service].coats[apply.coat].zones;
        for (std::size_t zone = 0; zone < zones.size(); ++zone) {
            TaskId other = apply;
            other.item = zone;
            if (zone != apply.item && zones[zone].group == zones[apply.item].group
                && !m_question.progress.isDropped(other))
                return true;
        }
        return false;
    }

    /// Not while something is being done to it.
    bool rinseAlone(const TaskId& apply)
    {
        Instant from = Instant::min();
        for (const TaskProgress& fact : m_question.progress.tasks)
            if (isDoneTo(apply, fact.id))
                from = std::max(from, fact.end.value_or(Instant::max()));
        if (from > m_now)
            return false;
        TaskId rinse = apply;
        rinse.kind = TaskKind::RinseAlone;
        const Instant start = from + some(static_cast<int>((m_now - from).count()));
        const Instant end = start + core::stagger::usualLength(m_question.services[apply.service], rinse);
        TaskProgress fact{.id = rinse, .start = start, .end = {}, .plannedEnd = {}};
        if (end <= m_now)
            fact.end = end;
        m_question.progress.tasks.push_back(fact);
        return true;
    }

    /// Where a bowl is being used it was mixed, though nobody may have said so.
    void forgetMixes()
    {
        std::vector<TaskId> forgotten;
        for (const TaskProgress& fact : m_question.progress.tasks) {
            TaskId mix = fact.id;
            if (fact.id.kind != TaskKind::Apply)
                continue;
            mix.kind = TaskKind::Mix;
            mix.item = zoneOf(fact.id).bowl;
            if (hasHappened(mix) && inHundred(8))
                forgotten.push_back(mix);
        }
        for (const TaskId& mix : forgotten) {
            std::erase_if(m_question.progress.tasks, [&](const auto& fact) { return fact.id == mix; });
            if (!m_question.progress.isDropped(mix))
                m_question.progress.dropped.push_back(mix);
        }
    }

    Question m_question;
    const PlanData& m_plan;
    Instant m_now{};
    bool m_startsNow = false;
    Instant m_delayedFrom{};
    Seconds m_delay{0};
};

}  // namespace

Question underWay(const Question& question, const PlanData& plan, std::uint64_t seed)
{
    return History{question, plan, seed}.draw();
}

}  // namespace oracle
