#include "core/run/zone_record.h"

#include <algorithm>

namespace core::run {
namespace {

const service::Coat& coatOf(const std::vector<Service>& services, const TaskId& id)
{
    return services.at(id.service).coats.at(id.coat);
}

TaskId withKind(TaskId id, TaskKind kind, std::size_t item)
{
    id.kind = kind;
    id.item = item;
    id.part = 0;
    return id;
}

/// The zones of the coat of `id` for which `holds` is true.
template <class Holds>
std::vector<TaskId> zonesWhere(const std::vector<Service>& services, const TaskId& id, const Holds& holds)
{
    std::vector<TaskId> zones;
    const service::Coat& coat = coatOf(services, id);
    for (std::size_t zone = 0; zone < coat.zones.size(); ++zone) {
        const TaskId apply = withKind(id, TaskKind::Apply, zone);
        if (holds(coat.zones[zone], apply))
            zones.push_back(apply);
    }
    return zones;
}

void recordWater(const std::vector<Service>& services, const Progress& progress, const TaskId& apply,
                 ZoneRecord& record)
{
    const auto* alone = progress.find(withKind(apply, TaskKind::RinseAlone, apply.item));
    const auto* rinse = alone ? alone : progress.find(rinseOf(services, apply));
    // A zone that was covered after its group's rinse began has not been under that water.
    if (!rinse || !record.firstContact || rinse->start < *record.firstContact)
        return;
    const Seconds reach = alone ? Seconds{0} : zoneOf(services, apply).reach;
    record.water = rinse->start + reach;
    if (rinse->end)
        record.water = std::min(*record.water, *rinse->end);
    record.rinsed = rinse->end.has_value();
}

bool allDropped(const Progress& progress, const std::vector<TaskId>& zones)
{
    return std::ranges::all_of(zones, [&](const TaskId& zone) { return progress.isDropped(zone); });
}

bool isBowlDone(const std::vector<Service>& services, const Progress& progress, const TaskId& mix)
{
    const auto zones = zonesWhere(
        services, mix, [&](const service::Zone& zone, const TaskId&) { return zone.bowl == mix.item; });
    const bool inUse = std::ranges::any_of(zones, [&](const TaskId& zone) { return progress.find(zone); });
    return inUse || allDropped(progress, zones);
}

}  // namespace

TaskId applyOf(const TaskId& id)
{
    return withKind(id, TaskKind::Apply, id.item);
}

ZoneRecord zoneRecord(const std::vector<Service>& services, const Progress& progress, const TaskId& apply)
{
    ZoneRecord record{.dropped = progress.isDropped(apply)};
    if (const auto* application = progress.find(apply)) {
        record.firstContact = application->start;
        record.applicationEnd = application->end;
    }
    const bool fromContact = zoneOf(services, apply).clock == service::ClockStart::FirstContact;
    record.clockStart = fromContact ? record.firstContact : record.applicationEnd;
    recordWater(services, progress, apply, record);
    return record;
}

std::vector<TaskId> zonesOf(const std::vector<Service>& services)
{
    std::vector<TaskId> zones;
    for (std::size_t serviceIndex = 0; serviceIndex < services.size(); ++serviceIndex) {
        for (std::size_t coat = 0; coat < services[serviceIndex].coats.size(); ++coat) {
            const TaskId any{.service = serviceIndex, .coat = coat};
            std::ranges::copy(zonesWhere(services, any, [](const auto&, const auto&) { return true; }),
                              std::back_inserter(zones));
        }
    }
    return zones;
}

const service::Zone& zoneOf(const std::vector<Service>& services, const TaskId& apply)
{
    return coatOf(services, apply).zones.at(apply.item);
}

TaskId rinseOf(const std::vector<Service>& services, const TaskId& apply)
{
    return withKind(apply, TaskKind::Rinse, zoneOf(services, apply).group);
}

std::vector<TaskId> zonesUnder(const std::vector<Service>& services, const Progress& progress,
                               const TaskId& rinse)
{
    if (rinse.kind == TaskKind::RinseAlone)
        return {applyOf(rinse)};
    return zonesWhere(services, rinse, [&](const service::Zone& zone, const TaskId& apply) {
        const bool left = progress.find(withKind(apply, TaskKind::RinseAlone, apply.item)) != nullptr;
        return zone.group == rinse.item && !left && !progress.isDropped(apply);
    });
}

bool exists(const std::vector<Service>& services, const TaskId& id)
{
    return id.service < services.size() && stagger::isTaskOf(services[id.service], id);
}

bool isPointless(const std::vector<Service>& services, const Progress& progress, const TaskId& id)
{
    if (progress.isDropped(id))
        return true;
    switch (id.kind) {
    case TaskKind::Apply: return false;
    case TaskKind::Look:
    case TaskKind::Late:
    case TaskKind::RinseAlone: {
        const ZoneRecord record = zoneRecord(services, progress, applyOf(id));
        return record.dropped || record.water;
    }
    case TaskKind::Mix: return isBowlDone(services, progress, id);
    case TaskKind::Rinse: return zonesUnder(services, progress, id).empty();
    case TaskKind::Dry:
    case TaskKind::Assess:
        return allDropped(progress, zonesWhere(services, id, [](const auto&, const auto&) { return true; }));
    case TaskKind::Heat: return false;
    }
    return false;
}

}  // namespace core::run
