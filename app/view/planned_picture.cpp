#include "app/view/strand_picture.h"

#include <algorithm>

namespace app::view {
namespace {

using core::stagger::Forecast;
using core::stagger::RinseForecast;
using core::stagger::TaskKind;

/// Of the zone's own rinse, else of its group's.
const RinseForecast* rinseOf(const Forecast& forecast, const TaskId& zone, std::size_t group)
{
    const RinseForecast* found = nullptr;
    for (const RinseForecast& rinse : forecast.rinses) {
        const TaskId& id = rinse.rinse;
        if (id.service != zone.service || id.coat != zone.coat)
            continue;
        if (id.kind == TaskKind::RinseAlone && id.item == zone.item)
            return &rinse;
        if (id.kind == TaskKind::Rinse && id.item == group)
            found = &rinse;
    }
    return found;
}

}  // namespace

StrandPicture plannedPicture(const std::vector<core::service::Service>& services,
                             const core::stagger::PlanData& plan, CoatPlace coat)
{
    StrandPicture picture;
    for (const core::stagger::PlannedZone& zone : plan.zones) {
        if (zone.service != coat.service || zone.coat != coat.coat)
            continue;
        const TaskId id{.service = zone.service, .coat = zone.coat, .item = zone.zone};
        picture.strands.push_back(
            makeStrand(services[zone.service], id,
                       {zone.firstContact, zone.applicationEnd, zone.clockStart, zone.water}, plan.tasks));
        if (const auto& at = services[zone.service].coats[zone.coat].zones[zone.zone].notBefore)
            picture.strands.back().wanted = WantedStart{.at = *at};
    }
    if (!picture.strands.empty())
        completePicture(picture, services, plan.tasks, {coat});
    return picture;
}

StrandPicture changedPicture(const std::vector<core::service::Service>& services,
                             const core::stagger::PlanData& now, const core::stagger::PlanData& would,
                             const TaskId& zone, const WantedStart& wanted)
{
    const CoatPlace coat{zone.service, zone.coat};
    const StrandPicture before = plannedPicture(services, now, coat);
    StrandPicture picture = plannedPicture(services, would, coat);
    for (Strand& strand : picture.strands) {
        const auto same = std::ranges::find(before.strands, strand.zone, &Strand::zone);
        if (same != before.strands.end()
            && (same->application != strand.application || same->water != strand.water))
            strand.planned = PlannedStrand{same->application, same->water};
        if (strand.zone == zone)
            strand.wanted = wanted;
    }
    // A limit far away would leave no room for what it is about.
    const Seconds room = (before.reach.until - before.reach.from) / 2;
    const Instant furthest = std::min(wanted.latest.value_or(wanted.at), before.reach.until + room);
    picture.reach = {std::min(before.reach.from, picture.reach.from),
                     std::max({before.reach.until, picture.reach.until, wanted.at, furthest})};
    return picture;
}

void addForecast(StrandPicture& picture, const std::vector<core::service::Service>& services,
                 const Forecast& forecast)
{
    if (forecast.influences.empty())
        return;
    for (const core::stagger::ZoneForecast& zone : forecast.zones) {
        const TaskId id{.service = zone.service, .coat = zone.coat, .item = zone.zone};
        const auto strand = std::ranges::find(picture.strands, id, &Strand::zone);
        if (strand == picture.strands.end())
            continue;
        const core::service::Zone& asked = services[zone.service].coats[zone.coat].zones[zone.zone];
        StrandForecast marked{zone.inside, forecast.runs, {strand->water, strand->water}};
        if (const RinseForecast* rinse = rinseOf(forecast, id, asked.group)) {
            const Seconds reach = rinse->rinse.kind == TaskKind::Rinse ? asked.reach : Seconds{0};
            marked.water = {rinse->water.low + reach, rinse->water.high + reach};
            picture.reach.until = std::max(picture.reach.until, marked.water.until);
        }
        strand->forecast = marked;
    }
}

}  // namespace app::view
