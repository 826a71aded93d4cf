#include "app/output/plan_json.h"

#include "app/output/json_parts.h"
#include "app/output/wall_clock.h"
#include "core/stagger/head_name.h"

namespace app::output {

using core::measure::Seconds;
using core::service::Coat;
using core::service::Service;
using core::service::Zone;
using core::stagger::NoPlan;
using core::stagger::Plan;
using core::stagger::PlannedTask;
using core::stagger::PlannedZone;
using core::stagger::TaskId;
using core::stagger::TaskKind;
using core::stagger::TaskState;

namespace {

const char* stateWord(TaskState state)
{
    switch (state) {
    case TaskState::Running: return "running";
    case TaskState::Done: return "done";
    case TaskState::Open: break;
    }
    return "open";
}

Json seconds(Seconds length)
{
    return length.count();
}

Json orNull(const std::optional<Seconds>& length)
{
    return length ? Json(length->count()) : Json(nullptr);
}

/// What the number of an id points at, by its name.
void addSubject(Json& json, const Coat& coat, const TaskId& id)
{
    switch (id.kind) {
    case TaskKind::Apply:
    case TaskKind::RinseAlone: json["zone"] = coat.zones.at(id.item).name; break;
    case TaskKind::Look:
        json["zone"] = coat.zones.at(id.item).name;
        json["look"] = id.part + 1;
        break;
    case TaskKind::Late:
        json["zone"] = coat.zones.at(id.item).name;
        json["job"] = coat.zones.at(id.item).late.at(id.part).name;
        break;
    case TaskKind::Mix: json["bowl"] = coat.bowls.at(id.item).name; break;
    case TaskKind::Rinse: json["group"] = coat.groups.at(id.item).name; break;
    case TaskKind::Dry:
    case TaskKind::Assess:
    case TaskKind::Heat: break;
    }
}

/// Whose it is, where there are several heads.
void addHead(Json& json, const Services& services, std::size_t head)
{
    if (services.size() > 1)
        json["head"] = core::stagger::headName(services, head);
}

std::string kindOf(const TaskId& id)
{
    // The third part of "0.0.apply.2.0": the word that journals and plans share.
    const std::string text = core::stagger::taskIdText(id);
    const std::size_t from = text.find('.', text.find('.') + 1) + 1;
    return text.substr(from, text.find('.', from) - from);
}

Json taskJson(const Services& services, const PlannedTask& task, const WallClock& clock)
{
    const Service& service = services.at(task.id.service);
    const Coat& coat = service.coats.at(task.id.coat);
    Json json{{"id", core::stagger::taskIdText(task.id)},
              {"kind", kindOf(task.id)},
              {"name", core::stagger::taskName(service, task.id).text()},
              {"service", task.id.service}};
    addHead(json, services, task.id.service);
    json["coat"] = coat.name;
    addSubject(json, coat, task.id);
    json["start"] = clock.isoText(task.start);
    json["end"] = clock.isoText(task.end);
    json["seconds"] = seconds(task.end - task.start);
    json["state"] = stateWord(task.state);
    json["hands"] = task.hands ? Json(handsName(services, *task.hands)) : Json(nullptr);
    if (task.basin)
        json["basin"] = *task.basin + 1;
    if (task.madeWhile)
        json["made_while"] = core::stagger::taskIdText(*task.madeWhile);
    return json;
}

Json zoneJson(const Services& services, const PlannedZone& planned, const WallClock& clock)
{
    const Zone& zone = zoneOf(services, planned);
    const bool fromFirst = zone.clock == core::service::ClockStart::FirstContact;
    Json json{{"service", planned.service}};
    addHead(json, services, planned.service);
    json.update(
        Json{{"coat", services.at(planned.service).coats.at(planned.coat).name},
             {"zone", zone.name},
             {"first_contact", clock.isoText(planned.firstContact)},
             {"application_end", clock.isoText(planned.applicationEnd)},
             {"clock", fromFirst ? "first" : "end"},
             {"clock_start", clock.isoText(planned.clockStart)},
             {"water", clock.isoText(planned.water)},
             {"rinsed_alone", planned.rinsedAlone},
             {"development_seconds", seconds(planned.development())},
             {"least_seconds", seconds(zone.develop.least)},
             {"target_seconds", seconds(zone.develop.target)},
             {"most_seconds", seconds(zone.develop.most)},
             {"first_strand_seconds", seconds(planned.water - planned.firstContact)},
             {"first_strand_most_seconds", orNull(zone.firstStrandMost)},
             {"last_strand_seconds", seconds(planned.water - planned.applicationEnd)},
             {"last_strand_least_seconds", orNull(zone.lastStrandLeast)},
             {"apply_held_seconds",
              {{"quickest", seconds(planned.quickestHeld)}, {"slowest", seconds(planned.slowestHeld)}}}});
    return json;
}

void addRemarks(Json& json, const Plan& plan)
{
    json["looks_not_due"] = Json::array();
    for (const TaskId& look : plan->looksNotDue)
        json["looks_not_due"].push_back(core::stagger::taskIdText(look));
    json["broken"] = Json::array();
    for (const auto& broken : plan->broken)
        json["broken"].push_back({{"task", core::stagger::taskIdText(broken.task)},
                                  {"what", broken.what.text()},
                                  {"by_seconds", seconds(broken.by)},
                                  {"already", broken.already}});
}

}  // namespace

std::string planJson(const Services& services, const Plan& plan, const core::measure::TimeZones& zones)
{
    const WallClock clock = wallClockOf(plan, services.front(), zones);
    Json json = jsonHead("basinbell_plan", services);
    json["start"] = clock.isoText(plan->start);
    json["end"] = clock.isoText(plan->end);
    json["proved"] = plan->proved;
    if (plan->give)
        json["give"] = {{"percent", *plan->give}, {"proved", plan->giveProved}};
    json["worth"] = worthJson(plan->worth);
    json["proved_bound"] = worthJson(plan->provedBound);
    json["tasks"] = Json::array();
    for (const PlannedTask& task : plan->tasks)
        json["tasks"].push_back(taskJson(services, task, clock));
    json["zones"] = Json::array();
    for (const PlannedZone& zone : plan->zones)
        json["zones"].push_back(zoneJson(services, zone, clock));
    addRemarks(json, plan);
    return jsonText(json);
}

std::string noPlanJson(const Services& services, const NoPlan& noPlan)
{
    Json json = jsonHead("basinbell_plan", services);
    json["nothing_fits"] = nothingFitsJson(noPlan);
    return jsonText(json);
}

}  // namespace app::output
