#include "core/run/heat.h"

#include "core/run/standing.h"
#include "core/run/zone_record.h"

#include <algorithm>
#include <map>

namespace core::run {
namespace {

/// Nobody is rinsed under a lamp, so water that came later has ended it, whether or not somebody said so.
bool wasEndedByWater(const Progress& progress, const Heat& heat)
{
    return std::ranges::any_of(progress.tasks, [&](const stagger::TaskProgress& task) {
        return isWater(task.id) && task.id.service == heat.task.service && task.start >= heat.since;
    });
}

}  // namespace

std::vector<Heat> heatsOf(const std::vector<Service>& services, const Progress& progress,
                          std::span<const Fact> facts)
{
    std::map<std::size_t, Heat> on;  // By the place of the service.
    for (const Fact& fact : standingFacts(facts)) {
        if (fact.task.kind != TaskKind::Heat || !exists(services, fact.task))
            continue;
        if (fact.kind == FactKind::Started) {
            Heat heat{.task = fact.task, .since = fact.happened, .offDue = {}};
            if (fact.again > Seconds{0})
                heat.offDue = fact.happened + fact.again;
            on[fact.task.service] = heat;
        }
        const auto known = on.find(fact.task.service);
        if (fact.kind == FactKind::Finished && known != on.end() && known->second.task == fact.task)
            on.erase(known);
    }
    std::vector<Heat> heats;
    for (const auto& [service, heat] : on) {
        if (!wasEndedByWater(progress, heat))
            heats.push_back(heat);
    }
    return heats;
}

void addHeat(const std::vector<Heat>& heats, std::vector<Prompt>& prompts)
{
    for (const Heat& heat : heats) {
        if (heat.offDue)
            prompts.push_back({.asks = Prompt::Asks::Finish,
                               .task = heat.task,
                               .due = *heat.offDue,
                               .hands = {},
                               .pressing = *heat.offDue});
    }
}

}  // namespace core::run
