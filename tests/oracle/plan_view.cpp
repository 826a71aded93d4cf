#include "tests/oracle/plan_view.h"

#include <algorithm>

namespace oracle {

TaskId ZoneView::id(TaskKind kind, std::size_t part) const
{
    return {.service = head, .coat = coat, .kind = kind, .item = place, .part = part};
}

Instant ZoneView::clockStart() const
{
    return data->clock == service::ClockStart::FirstContact ? apply->start : apply->end;
}

Instant ZoneView::water() const
{
    return alone ? rinse->start : rinse->start + data->reach;
}

bool ZoneView::lookFallsDue(Seconds moment) const
{
    const bool stillDeveloping = moment + data->looks->length <= development();
    const bool applied = clockStart() + moment + data->looks->tolerance >= apply->end;
    return stillDeveloping && applied;
}

PlanView::PlanView(const Question& question, const PlanData& plan)
    : m_question{question}
    , m_plan{plan}
{
    for (const PlannedTask& task : plan.tasks)
        m_tasks.emplace(task.id, &task);
    for (std::size_t head = 0; head < question.services.size(); ++head)
        for (std::size_t coat = 0; coat < question.services[head].coats.size(); ++coat)
            for (std::size_t zone = 0; zone < question.services[head].coats[coat].zones.size(); ++zone)
                addZone(head, coat, zone);
}

void PlanView::addZone(std::size_t head, std::size_t coat, std::size_t zone)
{
    ZoneView view{.head = head, .coat = coat, .place = zone};
    view.coatData = &m_question.services[head].coats[coat];
    view.data = &view.coatData->zones[zone];
    view.apply = find(view.id(TaskKind::Apply));
    view.rinse = find(view.id(TaskKind::RinseAlone));
    view.alone = view.rinse != nullptr;
    if (!view.alone)
        view.rinse = find({.service = head, .coat = coat, .kind = TaskKind::Rinse, .item = view.data->group});
    if (view.apply != nullptr && view.rinse != nullptr && !isGivenUp(head, coat, zone))
        m_zones.push_back(view);
}

const PlannedTask* PlanView::find(const TaskId& id) const
{
    const auto found = m_tasks.find(id);
    return found == m_tasks.end() ? nullptr : found->second;
}

std::vector<const PlannedTask*> PlanView::tasksOfHead(std::size_t head) const
{
    std::vector<const PlannedTask*> tasks;
    for (const auto& [id, task] : m_tasks)
        if (id.service == head)
            tasks.push_back(task);
    return tasks;
}

std::vector<const PlannedTask*> PlanView::tasksOfCoat(std::size_t head, std::size_t coat) const
{
    std::vector<const PlannedTask*> tasks = tasksOfHead(head);
    std::erase_if(tasks, [&](const PlannedTask* task) { return task->id.coat != coat; });
    return tasks;
}

std::vector<const ZoneView*> PlanView::zonesOfCoat(std::size_t head, std::size_t coat) const
{
    std::vector<const ZoneView*> zones;
    for (const ZoneView& zone : m_zones)
        if (zone.head == head && zone.coat == coat)
            zones.push_back(&zone);
    return zones;
}

bool PlanView::isGivenUp(std::size_t head, std::size_t coat, std::size_t zone) const
{
    return m_question.progress.isDropped(
        {.service = head, .coat = coat, .kind = TaskKind::Apply, .item = zone});
}

Instant PlanView::fullEnd(const PlannedTask& task) const
{
    if (task.id.kind != TaskKind::Dry)
        return task.end;
    return task.end + head(task.id.service).coats.at(task.id.coat).dryUnattended;
}

Instant PlanView::coatEnd(std::size_t head, std::size_t coat) const
{
    Instant end = Instant::min();
    for (const PlannedTask* task : tasksOfCoat(head, coat))
        end = std::max(end, fullEnd(*task));
    return end;
}

std::optional<Instant> PlanView::notBefore(std::size_t place) const
{
    const std::optional<Instant> own = head(place).notBefore;
    const std::optional<Instant> now = m_question.now;
    if (own && now)
        return std::max(*own, *now);
    return own ? own : now;
}

std::optional<Instant> PlanView::aimedEnd(std::size_t place) const
{
    const service::Service& data = head(place);
    if (!data.readyBy)
        return std::nullopt;
    return *data.readyBy - data.buffer;
}

std::string PlanView::nameOf(const TaskId& id) const
{
    const std::string text = core::stagger::taskIdText(id);
    if (id.service >= m_question.services.size() || !core::stagger::isTaskOf(head(id.service), id))
        return text;
    return core::stagger::taskName(head(id.service), id).text() + " (" + text + ")";
}

const PlannedTask* mixOf(const PlanView& view, const ZoneView& zone)
{
    return view.find(
        {.service = zone.head, .coat = zone.coat, .kind = TaskKind::Mix, .item = zone.data->bowl});
}

PotStart potStart(const PlanView& view, const ZoneView& zone)
{
    if (const PlannedTask* mix = mixOf(view, zone))
        return {mix, mix->end};
    if (zone.coatData->bowls[zone.data->bowl].mix > Seconds{0})
        return {};
    PotStart first{zone.apply, zone.apply->start};
    for (const ZoneView* other : view.zonesOfCoat(zone.head, zone.coat))
        if (other->data->bowl == zone.data->bowl && other->apply->start < first.moment)
            first = {other->apply, other->apply->start};
    return first;
}

const PlannedTask* firstApplied(const PlanView& view, std::size_t head, std::size_t coat)
{
    const PlannedTask* first = nullptr;
    for (const ZoneView* zone : view.zonesOfCoat(head, coat))
        if (first == nullptr || zone->apply->start < first->start)
            first = zone->apply;
    return first;
}

}  // namespace oracle
