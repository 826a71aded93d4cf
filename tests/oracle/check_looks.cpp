#include "tests/oracle/facts.h"
#include "tests/oracle/report.h"

#include <algorithm>
#include <set>

// Rule 3: which looks fall due, and when they are made.

namespace oracle {
namespace {

std::string text(const ZoneView& zone, std::size_t part, const std::string& what)
{
    return zone.data->name + ", look " + std::to_string(part) + " " + what;
}

void checkMadeInTime(const ZoneView& zone, const PlannedTask& look, Seconds moment, Report& report)
{
    const auto about = {look.id, zone.apply->id, zone.rinse->id};
    const Instant due = zone.clockStart() + moment;
    if (std::chrono::abs(look.start - due) > zone.data->looks->tolerance)
        report.passedLimit("rule 3", about, text(zone, look.id.part, "is not made at its time"));
    if (look.start < zone.apply->end)
        report.wrong("rule 3", text(zone, look.id.part, "is made before the zone is applied"));
    if (look.end > zone.water())
        report.wrong("rule 3", text(zone, look.id.part, "lasts into the water"));
}

bool listedAsNotDue(const PlanView& view, const TaskId& id)
{
    return std::ranges::find(view.plan().looksNotDue, id) != view.plan().looksNotDue.end();
}

void checkLook(const PlanView& view, const ZoneView& zone, std::size_t part, Seconds moment, Report& report)
{
    const TaskId id = zone.id(TaskKind::Look, part);
    const PlannedTask* look = view.find(id);
    if (look != nullptr && look->state != TaskState::Open) {
        if (listedAsNotDue(view, id))
            report.wrong("rule 3", text(zone, part, "has been made and is listed as not due"));
        return;
    }
    if (look == nullptr && !stands(view.question(), id))
        return;
    const bool due = zone.lookFallsDue(moment);
    if (due && look == nullptr)
        report.passedLimit("rule 3", {id, zone.apply->id, zone.rinse->id},
                           text(zone, part, "is due and missing"));
    if (!due && look != nullptr)
        report.wrong("rule 3", text(zone, part, "is made though it is not due"));
    if (due == listedAsNotDue(view, id))
        report.wrong("rule 3",
                     text(zone, part, due ? "is due and listed as not due" : "is not listed as not due"));
    if (look != nullptr)
        checkMadeInTime(zone, *look, moment, report);
}

/// The list of looks not due is in order, and names looks.
void checkList(const PlanView& view, Report& report)
{
    const std::vector<TaskId>& list = view.plan().looksNotDue;
    if (!std::ranges::is_sorted(list) || std::set<TaskId>{list.begin(), list.end()}.size() != list.size())
        report.wrong("rule 3", "the looks not due are out of order");
    for (const TaskId& id : list)
        if (id.kind != TaskKind::Look || id.service >= view.question().services.size()
            || !core::stagger::isTaskOf(view.head(id.service), id))
            report.wrong("rule 3", view.nameOf(id) + " is listed as a look not due");
}

}  // namespace

void checkLooks(const PlanView& view, Report& report)
{
    checkList(view, report);
    for (const ZoneView& zone : view.zones()) {
        if (!zone.data->looks)
            continue;
        const std::vector<Seconds> moments = zone.data->looks->moments();
        for (std::size_t part = 0; part < moments.size(); ++part)
            checkLook(view, zone, part, moments[part], report);
    }
}

}  // namespace oracle
