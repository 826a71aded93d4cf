#include "core/run/extra_looks.h"

#include "core/run/amend/revisions.h"
#include "core/run/standing.h"
#include "core/run/zone_record.h"

#include <map>

namespace core::run {

std::vector<ExtraLook> extraLooksOf(const Setup& setup, std::span<const Fact> facts)
{
    const std::vector<Service>& services = servicesAt(setup, facts);
    std::map<TaskId, Fact> lastLooks;  // By the `Apply` of the zone.
    for (const Fact& fact : standingFacts(facts)) {
        const bool look = fact.kind == FactKind::Looked && fact.task.kind == TaskKind::Look;
        if (look && exists(services, fact.task))
            lastLooks[applyOf(fact.task)] = fact;
    }
    const Progress progress = progressOf(setup, facts);
    std::vector<ExtraLook> looks;
    for (const auto& [zone, look] : lastLooks) {
        const ZoneRecord record = zoneRecord(services, progress, zone);
        if (look.verdict == Verdict::Again && !record.water && !record.dropped)
            looks.push_back({.look = look.task, .due = look.happened + look.again});
    }
    return looks;
}

}  // namespace core::run
