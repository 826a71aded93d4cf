#include "core/run/lanes.h"

#include "core/run/standing.h"
#include "core/run/zone_record.h"

#include <algorithm>

namespace core::run {
namespace {

Stage stageOf(const ZoneRecord& record, Instant now)
{
    if (record.dropped)
        return Stage::Dropped;
    if (record.rinsed)
        return Stage::Rinsed;
    if (record.water && *record.water <= now)
        return Stage::Rinsing;
    if (record.applicationEnd)
        return Stage::Developing;
    return record.firstContact ? Stage::Applying : Stage::Waiting;
}

/// When application is to end: planned, but not in the past while it still goes on.
Instant expectedEnd(const service::Zone& zone, const Lane& lane, const ZoneRecord& record,
                    const stagger::PlannedZone* planned, Instant now)
{
    const Instant usual = lane.firstContact + zone.apply.usual;
    if (!record.firstContact)
        return planned ? planned->applicationEnd : usual;
    return std::max(now, planned ? planned->applicationEnd : usual);
}

void fillWindow(const service::Zone& zone, Lane& lane)
{
    lane.leastAt = lane.clockStart + zone.develop.least;
    if (zone.lastStrandLeast)
        lane.leastAt = std::max(lane.leastAt, lane.applicationEnd + *zone.lastStrandLeast);
    lane.targetAt = lane.clockStart + zone.develop.target;
    lane.mostAt = lane.clockStart + zone.develop.most;
    if (zone.firstStrandMost)
        lane.mostAt = std::min(lane.mostAt, lane.firstContact + *zone.firstStrandMost);
}

Lane laneOf(const std::vector<Service>& services, const Progress& progress, const stagger::Plan* plan,
            const TaskId& apply, Instant now)
{
    const service::Zone& zone = zoneOf(services, apply);
    const ZoneRecord record = zoneRecord(services, progress, apply);
    const auto* planned = plan ? plan->zone(apply.service, apply.coat, apply.item) : nullptr;

    Lane lane{
        .service = apply.service, .coat = apply.coat, .zone = apply.item, .stage = stageOf(record, now)};
    lane.firstContact = record.firstContact.value_or(planned ? planned->firstContact : now);
    lane.applicationEnd =
        record.applicationEnd ? *record.applicationEnd : expectedEnd(zone, lane, record, planned, now);
    const bool fromContact = zone.clock == service::ClockStart::FirstContact;
    lane.clockStart = fromContact ? lane.firstContact : lane.applicationEnd;
    fillWindow(zone, lane);
    lane.water = record.water.value_or(planned ? planned->water : lane.targetAt);
    if (record.clockStart) {
        const Instant until = record.water ? std::min(now, *record.water) : now;
        lane.development = std::max(Seconds{0}, until - *record.clockStart);
    }
    return lane;
}

}  // namespace

bool carriesMixture(Stage stage)
{
    return stage == Stage::Applying || stage == Stage::Developing;
}

std::vector<Lane> lanesAt(const std::vector<Service>& services, const Progress& progress,
                          const stagger::Plan* plan, Instant now)
{
    std::vector<Lane> lanes;
    for (const TaskId& apply : zonesOf(services))
        lanes.push_back(laneOf(services, progress, plan, apply, now));
    return lanes;
}

void nameTones(std::vector<Lane>& lanes, std::span<const Fact> facts)
{
    for (const Fact& fact : standingFacts(facts)) {
        if (fact.kind != FactKind::Looked || fact.task.kind != TaskKind::Look || fact.tone.empty())
            continue;
        for (Lane& lane : lanes) {
            const bool mine =
                TaskId{lane.service, lane.coat, TaskKind::Apply, lane.zone} == applyOf(fact.task);
            if (mine && (!lane.tone || lane.tone->at <= fact.happened))
                lane.tone = SeenTone{.what = fact.tone, .at = fact.happened};
        }
    }
}

void nameNextLooks(std::vector<Lane>& lanes, const std::vector<Prompt>& prompts)
{
    for (Lane& lane : lanes) {
        for (const Prompt& prompt : prompts) {
            const TaskId& task = prompt.task;
            const bool mine =
                task.service == lane.service && task.coat == lane.coat && task.item == lane.zone;
            if (prompt.asks != Prompt::Asks::Look || !mine || (lane.nextLook && *lane.nextLook <= prompt.due))
                continue;
            lane.nextLook = prompt.due;
            lane.nextLookTask = task;
        }
    }
}

}  // namespace core::run
