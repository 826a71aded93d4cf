#include "app/view/strand_picture.h"

namespace app::view {

StrandPicture plannedPicture(const core::service::Service& service, const core::stagger::PlanData& plan,
                             std::size_t coat)
{
    StrandPicture picture;
    for (const core::stagger::PlannedZone& zone : plan.zones) {
        if (zone.coat != coat)
            continue;
        const TaskId id{.service = zone.service, .coat = zone.coat, .item = zone.zone};
        picture.strands.push_back(makeStrand(
            service, id, {zone.firstContact, zone.applicationEnd, zone.clockStart, zone.water}, plan.tasks));
    }
    if (!picture.strands.empty())
        completePicture(picture, service, plan.tasks, 0, coat);
    return picture;
}

}  // namespace app::view
