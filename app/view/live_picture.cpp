#include "app/view/lane_view.h"
#include "app/view/strand_picture.h"

#include <algorithm>

namespace app::view {
namespace {

/// With each look where it is asked for, which may be later than its plan says: with others.
std::vector<core::stagger::PlannedTask> tasksOf(const core::run::State& state)
{
    auto tasks = state.plan ? state.plan->data().tasks : std::vector<core::stagger::PlannedTask>{};
    for (const core::run::Prompt& prompt : state.prompts) {
        if (prompt.asks != core::run::Prompt::Asks::Look)
            continue;
        const auto look = std::ranges::find(tasks, prompt.task, &core::stagger::PlannedTask::id);
        const bool open = look != tasks.end() && look->state == core::stagger::TaskState::Open;
        if (!open || prompt.due <= look->start)
            continue;
        look->end += prompt.due - look->start;
        look->start = prompt.due;
    }
    return tasks;
}

}  // namespace

StrandPicture livePicture(const std::vector<core::service::Service>& services, const core::run::State& state,
                          const std::vector<CoatPlace>& coats)
{
    const std::vector<core::stagger::PlannedTask> tasks = tasksOf(state);
    StrandPicture picture;
    picture.now = state.now;
    for (const core::run::Lane& lane : state.lanes) {
        if (std::ranges::count(coats, CoatPlace{lane.service, lane.coat}) == 0)
            continue;
        const TaskId id{.service = lane.service, .coat = lane.coat, .item = lane.zone};
        Strand strand =
            makeStrand(services[lane.service], id,
                       {lane.firstContact, lane.applicationEnd, lane.clockStart, lane.water}, tasks);
        strand.stage = lane.stage;
        if (const std::string head = headOf(services, lane.service); !head.empty())
            strand.name = head + " · " + strand.name;
        for (const core::run::ExtraLook& look : state.extraLooks)
            if (look.look.service == id.service && look.look.coat == id.coat && look.look.item == id.item)
                strand.looks.push_back({look.look, look.due, false});
        picture.strands.push_back(std::move(strand));
    }
    if (!picture.strands.empty())
        completePicture(picture, services, tasks, coats);
    return picture;
}

}  // namespace app::view
