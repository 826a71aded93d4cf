#include "app/view/start_change.h"

#include "core/stagger/head_name.h"

#include <algorithm>

namespace app::view {
namespace {

using core::service::Service;
using core::stagger::PlanData;
using core::stagger::PlannedZone;

const PlannedZone* find(const PlanData& plan, const TaskId& zone)
{
    const auto found = std::ranges::find_if(plan.zones, [&](const PlannedZone& each) {
        return each.service == zone.service && each.coat == zone.coat && each.zone == zone.item;
    });
    return found == plan.zones.end() ? nullptr : &*found;
}

std::optional<Instant> waterOf(const PlanData& plan, TaskId rinse)
{
    for (const core::stagger::PlannedTask& task : plan.tasks)
        if (task.id == rinse)
            return task.start;
    return std::nullopt;
}

void addWaters(StartChange& change, const Service& service, const PlanData& was, const PlanData& is,
               const TaskId& zone)
{
    TaskId rinse{.service = zone.service, .coat = zone.coat, .kind = core::stagger::TaskKind::Rinse};
    const auto& groups = service.coats[zone.coat].groups;
    for (rinse.item = 0; rinse.item < groups.size(); ++rinse.item) {
        const auto before = waterOf(was, rinse);
        const auto after = waterOf(is, rinse);
        if (before && after && *before != *after)
            change.waters.push_back({groups[rinse.item].name, *after, *before});
    }
}

std::string nameOf(const std::vector<Service>& services, const PlannedZone& zone)
{
    const std::string& name = services[zone.service].coats[zone.coat].zones[zone.zone].name;
    return services.size() < 2 ? name : core::stagger::headName(services, zone.service) + ", " + name;
}

}  // namespace

StartChange startChange(const std::vector<Service>& services, const PlanData& was, const PlanData& is,
                        const TaskId& zone)
{
    StartChange change;
    change.zone = services[zone.service].coats[zone.coat].zones[zone.item].name;
    if (const PlannedZone* planned = find(was, zone))
        change.was = planned->firstContact;
    if (const PlannedZone* planned = find(is, zone))
        change.is = planned->firstContact;
    addWaters(change, services[zone.service], was, is, zone);
    for (const PlannedZone& after : is.zones) {
        const PlannedZone* before =
            find(was, {.service = after.service, .coat = after.coat, .item = after.zone});
        if (before != nullptr && before->development() != after.development())
            change.developed.push_back({nameOf(services, after), after.development(), before->development()});
    }
    change.beginIs = is.start;
    change.beginWas = was.start;
    change.endIs = is.end;
    change.endWas = was.end;
    change.offIs = is.worth.deviation;
    change.offWas = was.worth.deviation;
    change.holdsLess = was.give && is.give && *is.give < *was.give;
    return change;
}

}  // namespace app::view
