#include "app/view/give_view.h"

namespace app::view {
namespace {

GiveView::Reach reachOf(const core::stagger::PlanData& plan)
{
    if (!plan.give)
        return GiveView::Reach::Unknown;
    constexpr int all = 100;
    if (*plan.give == 0)
        return GiveView::Reach::UsualOnly;
    return *plan.give == all ? GiveView::Reach::All : GiveView::Reach::Part;
}

}  // namespace

GiveView giveView(const std::vector<core::service::Service>& services, const core::stagger::PlanData& plan,
                  std::size_t head)
{
    GiveView view;
    view.reach = reachOf(plan);
    view.proved = plan.giveProved;
    if (view.reach == GiveView::Reach::Unknown)
        return view;
    for (const core::stagger::PlannedZone& zone : plan.zones) {
        if (zone.service != head || zone.quickestHeld == zone.slowestHeld)
            continue;
        view.zones.push_back({services[zone.service].coats[zone.coat].zones[zone.zone].name,
                              zone.quickestHeld, zone.slowestHeld});
    }
    return view;
}

}  // namespace app::view
