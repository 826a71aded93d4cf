#include "app/view/outcome_view.h"

#include "app/view/lane_view.h"
#include "app/view/outcome_words.h"
#include "core/run/outcomes.h"

#include <algorithm>

namespace app::view {
namespace {

using core::run::Lane;
using core::run::Stage;
using core::run::State;
using core::service::Service;

bool isOver(const State& state, const Service& service, CoatPlace coat)
{
    const auto rinsed = [&](const Lane& lane) {
        const bool here = CoatPlace{lane.service, lane.coat} == coat;
        return !here || lane.stage == Stage::Rinsed || lane.stage == Stage::Dropped;
    };
    if (!std::ranges::all_of(state.lanes, rinsed))
        return false;
    const TaskId dry{.service = coat.service, .coat = coat.coat, .kind = core::stagger::TaskKind::Dry};
    const auto* drying = state.progress.find(dry);
    const bool dries = core::stagger::isTaskOf(service, dry) && !state.progress.isDropped(dry);
    return !dries || state.finished || (drying != nullptr && drying->end);
}

std::string nameOf(const std::vector<Service>& services, CoatPlace coat)
{
    const Service& service = services[coat.service];
    const std::string head = headOf(services, coat.service);
    const std::string name = service.coats.size() > 1 ? service.coats[coat.coat].name : std::string{};
    return head + (head.empty() || name.empty() ? "" : ": ") + name;
}

ZoneResult resultOf(const Service& service, const TaskId& zone,
                    const std::vector<core::run::ZoneOutcome>& outcomes)
{
    ZoneResult result{zone, service.coats[zone.coat].zones[zone.item].name, {}, {}};
    const auto said = std::ranges::find(outcomes, zone, &core::run::ZoneOutcome::zone);
    if (said != outcomes.end()) {
        result.outcome = said->outcome;
        result.words = said->words;
    }
    return result;
}

}  // namespace

bool CoatResult::isTold() const
{
    return std::ranges::all_of(zones, &ZoneResult::isTold);
}

std::vector<CoatResult> coatResults(const std::vector<Service>& services, const State& state,
                                    std::span<const core::run::Fact> facts)
{
    const auto outcomes = core::run::outcomesOf(facts);
    const auto notes = core::run::notesOf(facts);
    std::vector<CoatResult> results;
    for (const Lane& lane : state.lanes) {
        const CoatPlace coat{lane.service, lane.coat};
        if (lane.stage != Stage::Rinsed || !isOver(state, services[lane.service], coat))
            continue;
        if (results.empty() || results.back().coat != coat) {
            results.push_back({coat, nameOf(services, coat), {}, {}});
            for (const core::run::NextTime& note : notes)
                if (note.zone.service == coat.service && note.zone.coat == coat.coat)
                    results.back().note = note.words;
        }
        const TaskId zone{.service = lane.service, .coat = lane.coat, .item = lane.zone};
        results.back().zones.push_back(resultOf(services[lane.service], zone, outcomes));
    }
    return results;
}

std::string resultText(const ZoneResult& result)
{
    std::string text = result.outcome ? std::string{outcomeWord(*result.outcome)} : std::string{};
    if (!result.words.empty())
        text += (text.empty() ? "" : ", ") + result.words;
    return text;
}

}  // namespace app::view
