#include "core/stagger/plan.h"

#include <algorithm>

namespace core::stagger {

const PlannedTask* Plan::find(const TaskId& id) const
{
    const auto found = std::ranges::find(m_data.tasks, id, &PlannedTask::id);
    return found == m_data.tasks.end() ? nullptr : &*found;
}

const PlannedZone* Plan::zone(std::size_t service, std::size_t coat, std::size_t zone) const
{
    const auto found = std::ranges::find_if(m_data.zones, [&](const PlannedZone& candidate) {
        return candidate.service == service && candidate.coat == coat && candidate.zone == zone;
    });
    return found == m_data.zones.end() ? nullptr : &*found;
}

}  // namespace core::stagger
