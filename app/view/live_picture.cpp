#include "app/view/strand_picture.h"

namespace app::view {

StrandPicture livePicture(const std::vector<core::service::Service>& services, const core::run::State& state,
                          std::size_t serviceIndex, std::size_t coat)
{
    static const std::vector<core::stagger::PlannedTask> noTasks;
    const auto& tasks = state.plan ? state.plan->data().tasks : noTasks;
    const core::service::Service& service = services[serviceIndex];

    StrandPicture picture;
    picture.now = state.now;
    for (const core::run::Lane& lane : state.lanes) {
        if (lane.service != serviceIndex || lane.coat != coat)
            continue;
        const TaskId id{.service = lane.service, .coat = lane.coat, .item = lane.zone};
        Strand strand = makeStrand(
            service, id, {lane.firstContact, lane.applicationEnd, lane.clockStart, lane.water}, tasks);
        strand.stage = lane.stage;
        for (const core::run::ExtraLook& look : state.extraLooks)
            if (look.look.service == id.service && look.look.coat == id.coat && look.look.item == id.item)
                strand.looks.push_back({look.look, look.due, false});
        picture.strands.push_back(std::move(strand));
    }
    if (!picture.strands.empty())
        completePicture(picture, service, tasks, serviceIndex, coat);
    return picture;
}

}  // namespace app::view
