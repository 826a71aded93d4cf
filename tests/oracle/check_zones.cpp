#include "tests/oracle/report.h"

#include <algorithm>

// Rules 1, 2, 4, 5 and 10: bowls, windows, late jobs, what comes after what, and starts that are wanted.

namespace oracle {
namespace {

std::string text(const ZoneView& zone, const std::string& what)
{
    return zone.data->name + ", " + what;
}

void checkBowl(const PlanView& view, const ZoneView& zone, Report& report)
{
    const PlannedTask* mix = mixOf(view, zone);
    if (mix != nullptr && anyOpen({mix, zone.apply}) && mix->end > zone.apply->start)
        report.wrong("rule 1", text(zone, "applied before its bowl is mixed"));
    const service::Bowl& bowl = zone.coatData->bowls[zone.data->bowl];
    if (!bowl.potLife)
        return;
    const PotStart from = potStart(view, zone);
    if (from.task != nullptr && anyOpen({from.task, zone.apply})
        && zone.apply->end - from.moment > *bowl.potLife)
        report.passedLimit("rule 1", {zone.apply->id, from.task->id},
                           text(zone, "applied past its pot life"));
}

void checkWindow(const ZoneView& zone, Report& report)
{
    const auto about = {zone.apply->id, zone.rinse->id};
    if (!anyOpen({zone.apply, zone.rinse}))
        return;
    if (zone.rinse->start < zone.apply->end)
        report.wrong("rule 2", text(zone, "under water before it is applied"));
    const Seconds development = zone.development();
    if (development < zone.data->develop.least)
        report.passedLimit("rule 2", about, text(zone, "develops less than it must"));
    if (development > zone.data->develop.most)
        report.passedLimit("rule 2", about, text(zone, "develops longer than it may"));
    if (zone.data->firstStrandMost && zone.water() - zone.apply->start > *zone.data->firstStrandMost)
        report.passedLimit("rule 2", about, text(zone, "first strand covered too long"));
    if (zone.data->lastStrandLeast && zone.water() - zone.apply->end < *zone.data->lastStrandLeast)
        report.passedLimit("rule 2", about, text(zone, "last strand covered too briefly"));
}

void checkLateJobs(const PlanView& view, const ZoneView& zone, Report& report)
{
    for (std::size_t part = 0; part < zone.data->late.size(); ++part) {
        const PlannedTask* job = view.find(zone.id(TaskKind::Late, part));
        if (job == nullptr || !anyOpen({job, zone.rinse}))
            continue;
        const service::LateJob& wanted = zone.data->late[part];
        const auto about = {job->id, zone.apply->id, zone.rinse->id};
        if (std::chrono::abs(job->start - (zone.water() - wanted.before)) > wanted.tolerance)
            report.passedLimit("rule 4", about, text(zone, wanted.name + " not at its time before water"));
        if (job->start < zone.apply->end)
            report.wrong("rule 4", text(zone, wanted.name + " before the zone is applied"));
        if (job->end > zone.water())
            report.wrong("rule 4", text(zone, wanted.name + " lasts into the water"));
    }
}

/// Of what has begun nothing is wanted any more.
void checkWanted(const ZoneView& zone, Report& report)
{
    if (zone.data->notBefore && anyOpen({zone.apply}) && zone.apply->start < *zone.data->notBefore)
        report.passedLimit("rule 10", {zone.apply->id}, text(zone, "applied before it was wanted"));
}

void checkAfter(const PlanView& view, const ZoneView& zone, Report& report)
{
    for (const service::After& after : zone.data->after) {
        const PlannedTask* earlier =
            view.find({.service = zone.head, .coat = zone.coat, .kind = TaskKind::Apply, .item = after.zone});
        if (earlier == nullptr || !anyOpen({earlier, zone.apply}))
            continue;
        if (zone.apply->start < earlier->end)
            report.wrong("rule 5", text(zone, "applied before what it comes after"));
        if (after.longestGap && zone.apply->start - earlier->end > *after.longestGap)
            report.passedLimit("rule 5", {zone.apply->id, earlier->id}, text(zone, "applied too long after"));
    }
}

}  // namespace

void checkZones(const PlanView& view, Report& report)
{
    for (const ZoneView& zone : view.zones()) {
        checkBowl(view, zone, report);
        checkWindow(zone, report);
        checkLateJobs(view, zone, report);
        checkAfter(view, zone, report);
        checkWanted(zone, report);
    }
}

}  // namespace oracle
