#include "core/stagger/carried_on.h"

#include <algorithm>
#include <map>

namespace core::stagger {
namespace {

class CarriedOn {
public:
    CarriedOn(const Plan& plan, const Question& question)
        : m_question{question}
        , m_data{plan.data()}
        , m_now{question.now.value_or(plan->start)}
    {
    }

    PlanData take()
    {
        leaveOut();
        for (PlannedTask& task : m_data.tasks)
            tellTask(task);
        addUnplanned();
        for (PlannedZone& zone : m_data.zones)
            tellZone(zone);
        for (PlannedTask& task : m_data.tasks)
            putOff(task);
        for (PlannedZone& zone : m_data.zones)
            tellWater(zone);
        close();
        return std::move(m_data);
    }

private:
    static TaskId applyOf(const PlannedZone& zone)
    {
        return {.service = zone.service, .coat = zone.coat, .kind = TaskKind::Apply, .item = zone.zone};
    }

    [[nodiscard]] const TaskProgress* told(const TaskId& id) const { return m_question.progress.find(id); }

    [[nodiscard]] bool exists(const TaskId& id) const
    {
        return id.service < m_question.services.size() && isTaskOf(m_question.services[id.service], id);
    }

    [[nodiscard]] const service::Zone& asked(const PlannedZone& zone) const
    {
        return m_question.services[zone.service].coats[zone.coat].zones[zone.zone];
    }

    [[nodiscard]] TaskId rinseOf(const PlannedZone& zone) const
    {
        TaskId rinse = applyOf(zone);
        rinse.kind = TaskKind::RinseAlone;
        if (told(rinse))
            return rinse;
        rinse.kind = TaskKind::Rinse;
        rinse.item = asked(zone).group;
        return rinse;
    }

    void leaveOut()
    {
        const auto isGone = [this](const TaskId& id) {
            return !exists(id) || (m_question.progress.isDropped(id) && !told(id));
        };
        std::erase_if(m_data.tasks, [&](const PlannedTask& task) { return isGone(task.id); });
        std::erase_if(m_data.zones, [&](const PlannedZone& zone) { return isGone(applyOf(zone)); });
        std::erase_if(m_data.looksNotDue, isGone);
    }

    void tellTask(PlannedTask& task)
    {
        const Seconds length = task.end - task.start;
        const bool takesTurns = task.id.kind == TaskKind::Mix || task.id.kind == TaskKind::Apply;
        if (const TaskProgress* happened = told(task.id)) {
            task.state = happened->end ? TaskState::Done : TaskState::Running;
            task.start = happened->start;
            task.end =
                happened->end.value_or(std::max(m_now, happened->plannedEnd.value_or(task.start + length)));
        } else {
            task.state = TaskState::Open;
        }
        if (!takesTurns || !task.hands)
            return;
        if (task.state == TaskState::Open) {
            const auto free = m_freeFrom.find(*task.hands);
            task.start = std::max(task.start, free == m_freeFrom.end() ? m_now : free->second);
            task.end = task.start + length;
        }
        m_freeFrom[*task.hands] = std::max(m_now, task.end);
    }

    /// What happened though it was not in the plan, such as water for one zone alone.
    void addUnplanned()
    {
        for (const TaskProgress& happened : m_question.progress.tasks) {
            const auto known = std::ranges::find(m_data.tasks, happened.id, &PlannedTask::id);
            if (known == m_data.tasks.end() && exists(happened.id))
                m_data.tasks.push_back({.id = happened.id,
                                        .start = happened.start,
                                        .end = happened.end.value_or(m_now),
                                        .state = happened.end ? TaskState::Done : TaskState::Running,
                                        .hands = {},
                                        .basin = {},
                                        .madeWhile = {}});
        }
    }

    void tellZone(PlannedZone& zone)
    {
        const auto apply = std::ranges::find(m_data.tasks, applyOf(zone), &PlannedTask::id);
        if (apply == m_data.tasks.end())
            return;
        const Instant before = zone.clockStart;
        const bool fromContact = asked(zone).clock == service::ClockStart::FirstContact;
        zone.firstContact = apply->start;
        zone.applicationEnd = apply->end;
        zone.clockStart = fromContact ? zone.firstContact : zone.applicationEnd;
        m_later[applyOf(zone)] = zone.clockStart - before;
        holdUp(zone);
    }

    /// Its water, and that of all that are rinsed with it.
    void holdUp(const PlannedZone& zone)
    {
        Instant most = zone.clockStart + asked(zone).develop.most;
        if (asked(zone).firstStrandMost)
            most = std::min(most, zone.firstContact + *asked(zone).firstStrandMost);
        Water& water = m_waters[rinseOf(zone)];
        water.later = std::max(water.later, m_later[applyOf(zone)]);
        water.most = std::min(water.most, std::max(Seconds{0}, most - zone.water));
    }

    [[nodiscard]] Seconds laterBy(const TaskId& rinse) const
    {
        const auto water = m_waters.find(rinse);
        return water == m_waters.end() ? Seconds{0} : std::min(water->second.later, water->second.most);
    }

    /// How much later the last water of a coat comes.
    [[nodiscard]] Seconds laterBy(std::size_t service, std::size_t coat) const
    {
        Seconds most{0};
        for (const auto& [rinse, water] : m_waters) {
            if (rinse.service == service && rinse.coat == coat)
                most = std::max(most, laterBy(rinse));
        }
        return most;
    }

    void putOff(PlannedTask& task)
    {
        if (task.state != TaskState::Open || task.id.kind == TaskKind::Mix || task.id.kind == TaskKind::Apply)
            return;
        const Seconds length = task.end - task.start;
        task.start = std::max(m_now, task.start + laterBy(task));
        task.end = task.start + length;
    }

    [[nodiscard]] Seconds laterBy(const PlannedTask& task) const
    {
        TaskId apply = task.id;
        apply.kind = TaskKind::Apply;
        apply.part = 0;
        switch (task.id.kind) {
        case TaskKind::Look: return m_later.contains(apply) ? m_later.at(apply) : Seconds{0};
        case TaskKind::Late: {
            const auto zone = std::ranges::find(m_data.zones, apply, applyOf);
            return zone == m_data.zones.end() ? Seconds{0} : laterBy(rinseOf(*zone));
        }
        case TaskKind::Rinse:
        case TaskKind::RinseAlone: return laterBy(task.id);
        default: return laterBy(task.id.service, task.id.coat);
        }
    }

    void tellWater(PlannedZone& zone)
    {
        const TaskId rinse = rinseOf(zone);
        const auto planned = std::ranges::find(m_data.tasks, rinse, &PlannedTask::id);
        if (planned == m_data.tasks.end())
            return;
        zone.rinsedAlone = rinse.kind == TaskKind::RinseAlone;
        zone.water = planned->start + (zone.rinsedAlone ? Seconds{0} : asked(zone).reach);
    }

    void close()
    {
        std::ranges::sort(m_data.tasks, [](const PlannedTask& a, const PlannedTask& b) {
            return a.start != b.start ? a.start < b.start : a.id < b.id;
        });
        m_data.proved = false;
        m_data.give.reset();
        if (m_data.tasks.empty())
            return;
        m_data.start = m_data.tasks.front().start;
        for (const PlannedTask& task : m_data.tasks)
            m_data.end = std::max(m_data.end, task.end);
    }

    struct Water {
        Seconds later{0};
        Seconds most{Seconds::max()};  ///< Until a longest time is reached.
    };

    const Question& m_question;
    PlanData m_data;
    Instant m_now;
    std::map<std::size_t, Instant> m_freeFrom;  ///< By hands.
    std::map<TaskId, Seconds> m_later;          ///< The clock of each zone, by its `Apply`.
    std::map<TaskId, Water> m_waters;           ///< By rinse.
};

}  // namespace

Plan carriedOn(const Plan& plan, const Question& question)
{
    return Plan{CarriedOn{plan, question}.take()};
}

}  // namespace core::stagger
