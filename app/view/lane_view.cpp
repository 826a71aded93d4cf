#include "app/view/lane_view.h"

#include "core/stagger/head_name.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace app::view {
namespace {

using core::run::Lane;
using core::run::Stage;

bool isOver(const Lane& lane)
{
    return lane.stage == Stage::Rinsed || lane.stage == Stage::Dropped;
}

CountsTo goalOf(Stage stage)
{
    switch (stage) {
    case Stage::Waiting: return CountsTo::Application;
    case Stage::Applying: return CountsTo::ApplicationEnd;
    case Stage::Developing: return CountsTo::Water;
    case Stage::Rinsing:
    case Stage::Rinsed:
    case Stage::Dropped: return CountsTo::Nothing;
    }
    return CountsTo::Nothing;
}

Seconds leftOf(const Lane& lane, CountsTo goal, Instant now)
{
    switch (goal) {
    case CountsTo::Application: return lane.firstContact - now;
    case CountsTo::ApplicationEnd: return lane.applicationEnd - now;
    case CountsTo::Water: return lane.water - now;
    case CountsTo::Nothing: return Seconds{0};
    }
    return Seconds{0};
}

/// A strand is late once its limit has passed, whatever the plan hopes for.
Urgency laneUrgency(const Lane& lane, CountsTo goal, Seconds left, Instant now)
{
    if (goal == CountsTo::Nothing)
        return Urgency::Calm;
    if (goal == CountsTo::Water && now > lane.mostAt)
        return Urgency::Late;
    const Urgency urgency = urgencyOf(left);
    const bool mayStillWait = goal == CountsTo::Water && now <= lane.mostAt;
    return urgency == Urgency::Late && mayStillWait ? Urgency::Due : urgency;
}

LaneView laneView(const core::service::Service& service, const Lane& lane, Instant now)
{
    const core::service::Zone& zone = service.coats[lane.coat].zones[lane.zone];
    LaneView view;
    view.zone = {.service = lane.service, .coat = lane.coat, .item = lane.zone};
    view.title = zone.name;
    view.stage = lane.stage;
    view.countsTo = goalOf(lane.stage);
    view.left = leftOf(lane, view.countsTo, now);
    view.urgency = laneUrgency(lane, view.countsTo, view.left, now);
    if (lane.nextLook && view.countsTo == CountsTo::Water) {
        view.untilLook = *lane.nextLook - now;
        view.look = lane.nextLookTask;
    }
    view.development = lane.development;
    view.window = zone.develop;
    view.water = lane.water;
    view.mostAt = lane.mostAt;
    view.tone = lane.tone;
    view.filled = static_cast<double>(lane.development.count())
        / static_cast<double>(std::max<std::int64_t>(1, zone.develop.target.count()));
    return view;
}

}  // namespace

Urgency urgencyOf(Seconds left)
{
    constexpr Seconds patience{60};
    if (left < -patience)
        return Urgency::Late;
    if (left <= Seconds{0})
        return Urgency::Due;
    return left <= soon ? Urgency::Soon : Urgency::Calm;
}

std::size_t currentCoat(const core::run::State& state, std::size_t service)
{
    std::size_t last = 0;
    for (const Lane& lane : state.lanes) {
        if (lane.service != service)
            continue;
        if (!isOver(lane))
            return lane.coat;
        last = std::max(last, lane.coat);
    }
    return last;
}

std::string headOf(const std::vector<core::service::Service>& services, std::size_t head)
{
    return services.size() > 1 ? core::stagger::headName(services, head) : std::string{};
}

std::optional<Seconds> untilAsked(const LaneView& lane)
{
    if (lane.countsTo == CountsTo::Nothing)
        return lane.untilLook;
    return lane.untilLook ? std::min(lane.left, *lane.untilLook) : lane.left;
}

std::vector<std::size_t> mostPressing(const std::vector<LaneView>& lanes, std::size_t most)
{
    std::vector<std::size_t> places(lanes.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    const auto pressing = [&](std::size_t place) {
        const LaneView& lane = lanes[place];
        return std::pair{-static_cast<int>(lane.urgency), untilAsked(lane).value_or(Seconds::max())};
    };
    std::ranges::stable_sort(places, {}, pressing);
    places.resize(std::min(most, places.size()));
    std::ranges::sort(places);
    return places;
}

std::vector<HeatView> heatsView(const std::vector<core::service::Service>& services,
                                const core::run::State& state)
{
    std::vector<HeatView> heats;
    for (const core::run::Heat& heat : state.heats)
        heats.push_back({headOf(services, heat.task.service), heat.since, heat.offDue});
    return heats;
}

LanesView lanesView(const std::vector<core::service::Service>& services, const core::run::State& state)
{
    LanesView view;
    for (std::size_t place = 0; place < services.size(); ++place) {
        const core::service::Service& service = services[place];
        const std::size_t coat = currentCoat(state, place);
        view.heads.push_back({service.name, coat, service.coats.size(),
                              coat < service.coats.size() ? service.coats[coat].name : std::string{}});
        for (const Lane& lane : state.lanes)
            if (lane.service == place && lane.coat == coat) {
                view.lanes.push_back(laneView(service, lane, state.now));
                view.lanes.back().head = headOf(services, place);
            }
    }
    view.heats = heatsView(services, state);
    return view;
}

}  // namespace app::view
