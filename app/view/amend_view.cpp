#include "app/view/amend_view.h"

#include "core/run/amend/amend.h"

#include <algorithm>

namespace app::view {
namespace {

using core::run::Lane;
using core::run::Stage;
using core::run::State;
using core::service::Service;

bool isDry(Stage stage)
{
    return stage == Stage::Waiting || core::run::carriesMixture(stage);
}

/// Whether others of its rinse group are still to be rinsed with it.
bool hasCompany(const Service& service, const State& state, const Lane& lane)
{
    const auto& zones = service.coats[lane.coat].zones;
    return std::ranges::any_of(state.lanes, [&](const Lane& other) {
        return other.service == lane.service && other.coat == lane.coat && other.zone != lane.zone
            && isDry(other.stage) && zones[other.zone].group == zones[lane.zone].group;
    });
}

/// "Zone", or "Head, Zone" where there are several heads.
std::string placed(const std::vector<Service>& services, std::size_t service, const std::string& name)
{
    const std::string head = headOf(services, service);
    return head.empty() ? name : head + ", " + name;
}

/// Of each head one or the other: where it has none, it can be put on as soon as there is mixture on the
/// hair.
void addHeat(const std::vector<Service>& services, const State& state, AmendView& view)
{
    for (std::size_t head = 0; head < services.size(); ++head) {
        const auto on = std::ranges::find_if(
            state.heats, [head](const core::run::Heat& heat) { return heat.task.service == head; });
        const std::string name =
            headOf(services, head).empty() ? services[head].name : headOf(services, head);
        const auto lane = std::ranges::find_if(state.lanes, [head](const Lane& each) {
            return each.service == head && core::run::carriesMixture(each.stage);
        });
        if (on != state.heats.end())
            view.heatOff.push_back({on->task, name});
        else if (lane != state.lanes.end())
            view.heatOn.push_back(
                {{.service = head, .coat = lane->coat, .kind = core::stagger::TaskKind::Heat}, name});
    }
}

}  // namespace

AmendView amendView(const std::vector<Service>& services, const State& state)
{
    AmendView view;
    if (services.empty() || state.finished)
        return view;
    for (const Lane& lane : state.lanes) {
        const Service& service = services[lane.service];
        const ZoneOption zone{{.service = lane.service, .coat = lane.coat, .item = lane.zone},
                              placed(services, lane.service, service.coats[lane.coat].zones[lane.zone].name)};
        if (lane.stage == Stage::Applying)
            view.applying.push_back(zone);
        if (lane.coat == currentCoat(state, lane.service) && isDry(lane.stage))
            view.like.push_back(zone);
        if (lane.coat == currentCoat(state, lane.service) && isDry(lane.stage)
            && hasCompany(service, state, lane))
            view.dry.push_back(zone);
    }
    addHeat(services, state, view);
    const auto& crew = services.front().crew.hands;
    for (std::size_t place = 0; place < crew.size(); ++place)
        if (!core::run::hasGone(crew[place], state.now))
            view.here.push_back({place, crew[place].name});
    if (!state.prompts.empty()) {
        const TaskId& task = state.prompts.front().task;
        view.givesUp =
            ZoneOption{{.service = task.service, .coat = task.coat},
                       placed(services, task.service, services[task.service].coats[task.coat].name)};
    }
    return view;
}

}  // namespace app::view
