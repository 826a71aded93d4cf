#include "app/view/now_view.h"

#include <algorithm>

namespace app::view {
namespace {

using core::run::Prompt;
using core::run::State;
using core::service::Coat;
using core::service::Service;
using core::stagger::TaskKind;

constexpr std::size_t mostNext = 3;

bool isAlreadyRinsed(const State& state, const TaskId& id, std::size_t zone)
{
    return std::ranges::any_of(state.lanes, [&](const core::run::Lane& lane) {
        const bool here = lane.service == id.service && lane.coat == id.coat && lane.zone == zone;
        return here && (lane.stage == core::run::Stage::Rinsed || lane.stage == core::run::Stage::Dropped);
    });
}

std::vector<std::size_t> zonesOf(const Coat& coat, const State& state, const TaskId& id)
{
    std::vector<std::size_t> zones;
    for (std::size_t zone = 0; zone < coat.zones.size(); ++zone) {
        const bool ofBowl = id.kind == TaskKind::Mix && coat.zones[zone].bowl == id.item;
        const bool ofGroup = id.kind == TaskKind::Rinse && coat.zones[zone].group == id.item
            && !isAlreadyRinsed(state, id, zone);
        const bool underHeat = id.kind == TaskKind::Heat && !isAlreadyRinsed(state, id, zone);
        const bool itself = core::stagger::isOfZone(id) && zone == id.item;
        if (ofBowl || ofGroup || underHeat || itself)
            zones.push_back(zone);
    }
    return zones;
}

std::string nameOf(const Coat& coat, const TaskId& id)
{
    if (id.kind == TaskKind::Mix)
        return coat.bowls[id.item].name;
    if (id.kind == TaskKind::Rinse)
        return coat.groups[id.item].name;
    if (id.kind == TaskKind::Late)
        return coat.zones[id.item].late[id.part].name;
    return {};
}

Seconds developmentOf(const State& state, const TaskId& id, std::size_t zone)
{
    for (const core::run::Lane& lane : state.lanes)
        if (lane.service == id.service && lane.coat == id.coat && lane.zone == zone)
            return lane.development;
    return Seconds{0};
}

/// What ends may take a while longer before that is late in earnest.
Urgency stepUrgency(const Prompt& prompt, core::measure::Instant now)
{
    const Urgency urgency = urgencyOf(prompt.due - now);
    const bool patient = prompt.waitsFor || (prompt.asks == Prompt::Asks::Finish && now < prompt.pressing);
    return patient ? std::min(urgency, Urgency::Soon) : urgency;
}

/// What already runs cannot be put off.
std::optional<LatestStart> latestStart(const Prompt& prompt, core::measure::Instant now)
{
    if (prompt.asks == Prompt::Asks::Finish || !prompt.safe || !prompt.safe->latest)
        return std::nullopt;
    LatestStart latest;
    latest.at = *prompt.safe->latest;
    latest.left = latest.at - now;
    latest.urgency = urgencyOf(latest.left);
    latest.onlyAsUsual = prompt.safe->safeFor == core::stagger::SafeFor::UsualLengths;
    return latest;
}

Seconds shortOfLeast(const Coat& coat, std::size_t zone, Seconds development)
{
    return std::max(Seconds{0}, coat.zones[zone].develop.least - development);
}

std::optional<Seconds> longestHeld(const State& state, const Prompt& prompt)
{
    if (prompt.task.kind != TaskKind::Apply || !state.plan || !state.plan->data().give)
        return std::nullopt;
    const auto* zone = state.plan->zone(prompt.task.service, prompt.task.coat, prompt.task.item);
    if (zone == nullptr || zone->quickestHeld == zone->slowestHeld)
        return std::nullopt;
    // Past that the plan is only as good as what can still be done.
    if (prompt.asks == Prompt::Asks::Finish && state.now - zone->firstContact >= zone->slowestHeld)
        return std::nullopt;
    return zone->slowestHeld;
}

LookBeside lookBeside(const Service& service, const State& state, const Prompt& look)
{
    const Coat& coat = service.coats[look.task.coat];
    const std::size_t zone = look.task.item;
    return {look, coat.zones[zone].name, coat.zones[zone].alone,
            shortOfLeast(coat, zone, developmentOf(state, look.task, zone))};
}

/// The looks at the head of `step` that are asked for at once with it, or are due as it is.
std::vector<LookBeside> lookedAtWith(const Service& service, const State& state, const Prompt& step)
{
    std::vector<LookBeside> together;
    for (const Prompt& prompt : state.prompts) {
        const bool other = prompt.asks == Prompt::Asks::Look && prompt.task != step.task && !prompt.waitsFor
            && prompt.task.service == step.task.service;
        const bool bothDue = prompt.due <= state.now && step.due <= state.now;
        if (step.asks == Prompt::Asks::Look && !step.waitsFor && other && (bothDue || prompt.due == step.due))
            together.push_back(lookBeside(service, state, prompt));
    }
    return together;
}

/// Where in the list the main prompt is.
std::size_t mainPrompt(const State& state)
{
    const Prompt& first = state.prompts.front();
    if (first.due <= state.now && !first.waitsFor)
        return 0;
    // Heat keeps no hands busy.
    const auto running = std::ranges::find_if(state.prompts, [](const Prompt& prompt) {
        return prompt.asks == Prompt::Asks::Finish && prompt.task.kind != TaskKind::Heat;
    });
    return running == state.prompts.end() ? 0 : static_cast<std::size_t>(running - state.prompts.begin());
}

bool everyLaneDevelops(const State& state)
{
    using core::run::Stage;
    const auto works = [](const core::run::Lane& lane) {
        return lane.stage == Stage::Applying || lane.stage == Stage::Rinsing;
    };
    const auto develops = [](const core::run::Lane& lane) { return lane.stage == Stage::Developing; };
    return std::ranges::any_of(state.lanes, develops) && std::ranges::none_of(state.lanes, works);
}

}  // namespace

StepView stepView(const std::vector<Service>& services, const State& state, const Prompt& prompt)
{
    const Service& service = services[prompt.task.service];
    const Coat& coat = service.coats[prompt.task.coat];
    StepView step;
    step.prompt = prompt;
    step.left = prompt.due - state.now;
    step.urgency = stepUrgency(prompt, state.now);
    step.latest = latestStart(prompt, state.now);
    step.head = headOf(services, prompt.task.service);
    step.holdsUpTo = longestHeld(state, prompt);
    step.waits = prompt.waitsFor.has_value();
    step.together = lookedAtWith(service, state, prompt);
    const auto& hands = services.front().crew.hands;
    if (hands.size() > 1 && prompt.hands && *prompt.hands < hands.size())
        step.hands = hands[*prompt.hands].name;
    step.name = nameOf(coat, prompt.task);
    for (const std::size_t zone : zonesOf(coat, state, prompt.task)) {
        if (step.zones.empty()) {
            step.development = developmentOf(state, prompt.task, zone);
            step.alone = coat.zones[zone].alone;
            step.shortOfLeast = shortOfLeast(coat, zone, step.development);
        }
        step.zones.push_back(coat.zones[zone].name);
    }
    return step;
}

NowView nowView(const std::vector<Service>& services, const State& state)
{
    NowView view;
    view.finished = state.finished;
    if (state.finished || state.prompts.empty())
        return view;
    view.allDeveloping = everyLaneDevelops(state);
    const std::size_t main = mainPrompt(state);
    view.main = stepView(services, state, state.prompts[main]);
    for (std::size_t place = 0; place < state.prompts.size() && view.next.size() < mostNext; ++place)
        if (place != main)
            view.next.push_back(stepView(services, state, state.prompts[place]));
    return view;
}

}  // namespace app::view
