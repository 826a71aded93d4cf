#include "tests/oracle/facts.h"

#include <algorithm>

namespace oracle {

using core::measure::Instant;
using core::measure::Seconds;
using core::stagger::Question;
using core::stagger::TaskId;
using core::stagger::TaskKind;
using core::stagger::TaskProgress;

namespace service = core::service;

namespace {

const service::Coat& coatOf(const Question& question, const TaskId& id)
{
    return question.services[id.service].coats[id.coat];
}

TaskId beside(const TaskId& id, TaskKind kind, std::size_t item)
{
    return {.service = id.service, .coat = id.coat, .kind = kind, .item = item, .part = 0};
}

/// What can still be told of the tasks of a question.
class Standing {
public:
    explicit Standing(const Question& question)
        : m_question{question}
    {
    }

    [[nodiscard]] bool stands(const TaskId& id) const
    {
        if (hasHappened(id))
            return true;
        if (m_question.progress.isDropped(id))
            return false;
        switch (id.kind) {
        case TaskKind::Apply: return true;
        case TaskKind::Look:
        case TaskKind::Late: return isWorkedOn(id);
        case TaskKind::Mix: return isStillMixed(id);
        case TaskKind::Rinse: return isStillRinsed(id);
        case TaskKind::RinseAlone: return false;
        case TaskKind::Dry:
        case TaskKind::Assess: return true;
        case TaskKind::Heat: return false;
        }
        return true;
    }

private:
    [[nodiscard]] bool hasHappened(const TaskId& id) const { return m_question.progress.find(id) != nullptr; }
    [[nodiscard]] bool isGivenUp(const TaskId& apply) const { return m_question.progress.isDropped(apply); }

    /// Once a head is at the basin nothing is done to it; nor to a piece once water has come to it.
    [[nodiscard]] bool isWorkedOn(const TaskId& id) const
    {
        const TaskId apply = beside(id, TaskKind::Apply, id.item);
        const TaskProgress* rinse = m_question.progress.find(rinseOf(m_question, apply));
        if (isGivenUp(apply) || rinse == nullptr)
            return !isGivenUp(apply);
        const service::Service& made = m_question.services[id.service];
        const bool alone = rinse->id.kind == TaskKind::RinseAlone;
        const Instant water =
            rinse->start + (alone ? Seconds{0} : coatOf(m_question, id).zones[id.item].reach);
        return made.head.piecesComeApart && m_question.now
            && *m_question.now + core::stagger::usualLength(made, id) <= water;
    }

    /// A bowl that is being used has been mixed, whether or not anybody saw it.
    [[nodiscard]] bool isStillMixed(const TaskId& mix) const
    {
        bool comes = false;
        const service::Coat& coat = coatOf(m_question, mix);
        for (std::size_t zone = 0; zone < coat.zones.size(); ++zone) {
            const TaskId apply = beside(mix, TaskKind::Apply, zone);
            if (coat.zones[zone].bowl != mix.item || isGivenUp(apply))
                continue;
            if (hasHappened(apply))
                return false;
            comes = true;
        }
        return comes;
    }

    [[nodiscard]] bool isStillRinsed(const TaskId& rinse) const
    {
        const service::Coat& coat = coatOf(m_question, rinse);
        for (std::size_t zone = 0; zone < coat.zones.size(); ++zone) {
            const TaskId apply = beside(rinse, TaskKind::Apply, zone);
            if (!isGivenUp(apply) && rinseOf(m_question, apply) == rinse)
                return true;
        }
        return false;
    }

    const Question& m_question;
};

}  // namespace

bool isRinse(const TaskId& id)
{
    return id.kind == TaskKind::Rinse || id.kind == TaskKind::RinseAlone;
}

TaskId rinseOf(const Question& question, const TaskId& apply)
{
    const TaskId alone = beside(apply, TaskKind::RinseAlone, apply.item);
    if (question.progress.find(alone) != nullptr)
        return alone;
    return beside(apply, TaskKind::Rinse, coatOf(question, apply).zones[apply.item].group);
}

service::Application applyingOf(const Question& question, const TaskId& apply)
{
    const service::Application& asked = coatOf(question, apply).zones[apply.item].apply;
    const TaskProgress* fact = question.progress.find(apply);
    if (fact == nullptr)
        return asked;
    if (fact->end) {
        const Seconds took = *fact->end - fact->start;
        return {.quickest = took, .usual = took, .slowest = took};
    }
    const Seconds elapsed = question.now.value_or(fact->start) - fact->start;
    service::Application rest{.quickest = std::max(asked.quickest, elapsed),
                              .usual = {},
                              .slowest = std::max(asked.slowest, elapsed)};
    rest.usual = std::clamp(asked.usual, rest.quickest, rest.slowest);
    return rest;
}

Instant endOfFact(const Question& question, const TaskProgress& fact)
{
    if (fact.end)
        return *fact.end;
    if (fact.id.kind == TaskKind::Apply)
        return fact.start + applyingOf(question, fact.id).usual;
    const Seconds usual = core::stagger::usualLength(question.services[fact.id.service], fact.id);
    return std::max(question.now.value_or(fact.start), fact.plannedEnd.value_or(fact.start + usual));
}

Seconds lengthOf(const Question& question, const TaskId& id)
{
    const TaskProgress* fact = question.progress.find(id);
    if (fact != nullptr)
        return endOfFact(question, *fact) - fact->start;
    return core::stagger::usualLength(question.services[id.service], id);
}

bool stands(const Question& question, const TaskId& id)
{
    return Standing{question}.stands(id);
}

std::vector<TaskId> tasksThatStand(const Question& question, std::size_t head)
{
    std::vector<TaskId> tasks = core::stagger::tasksOf(question.services[head], head);
    for (const TaskProgress& fact : question.progress.tasks)
        if (fact.id.service == head && fact.id.kind == TaskKind::RinseAlone)
            tasks.push_back(fact.id);
    std::erase_if(tasks, [&](const TaskId& id) { return !stands(question, id); });
    std::ranges::sort(tasks);
    return tasks;
}

bool isUncertain(const Question& question)
{
    for (std::size_t head = 0; head < question.services.size(); ++head)
        for (const TaskId& id : tasksThatStand(question, head)) {
            if (id.kind != TaskKind::Apply)
                continue;
            const service::Application lengths = applyingOf(question, id);
            if (lengths.quickest < lengths.slowest)
                return true;
        }
    return false;
}

}  // namespace oracle
