#include "app/output/timetable.h"

#include "app/output/text_table.h"
#include "app/output/wall_clock.h"
#include "core/stagger/head_name.h"

namespace app::output {

using core::measure::lengthText;
using core::service::ClockStart;
using core::service::Coat;
using core::service::Service;
using core::service::Zone;
using core::stagger::Plan;
using core::stagger::PlannedTask;
using core::stagger::PlannedZone;
using core::stagger::TaskKind;
using Side = TextTable::Side;

namespace {

std::string counted(std::size_t count, const std::string& one, const std::string& many)
{
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

std::string title(const Services& services, const Plan& plan, const WallClock& clock)
{
    std::string text;
    for (const Service& service : services) {
        text += service.name.empty() ? std::string{"Service"} : service.name;
        text += service.head.name.empty() ? "\n" : ": " + service.head.name + "\n";
    }
    const auto& crew = services.front().crew;
    text += clock.dayText(plan->start) + ", times in " + clock.zone() + ". "
        + counted(crew.hands.size(), "pair of hands", "pairs of hands") + ", "
        + counted(crew.basins, "basin", "basins") + ".\n";
    if (clock.clocksChange())
        text += "The clocks change while this lasts; +01:00 and the like is the distance from UTC.\n";
    return text;
}

/// What else is to be known of a task: where, out of what, made by whose hands.
std::string note(const Services& services, const PlannedTask& task)
{
    const Service& service = services.at(task.id.service);
    if (task.madeWhile)
        return "by the hands that apply "
            + service.coats.at(task.madeWhile->coat).zones.at(task.madeWhile->item).name;
    if (task.basin && services.front().crew.basins > 1)
        return "basin " + std::to_string(*task.basin + 1);
    const Coat& coat = service.coats.at(task.id.coat);
    if (task.id.kind == TaskKind::Mix)
        return coat.bowls.at(task.id.item).note;
    if (task.id.kind == TaskKind::Dry && coat.dryUnattended.count() > 0)
        return "then " + lengthText(coat.dryUnattended) + " by itself";
    return {};
}

std::string stateText(const PlannedTask& task)
{
    switch (task.state) {
    case core::stagger::TaskState::Running: return "running";
    case core::stagger::TaskState::Done: return "done";
    case core::stagger::TaskState::Open: break;
    }
    return {};
}

std::string headColumn(const Services& services, std::size_t head)
{
    return services.size() > 1 ? core::stagger::headName(services, head) : std::string{};
}

std::string tasks(const Services& services, const Plan& plan, const WallClock& clock)
{
    TextTable table{
        {{"From"}, {"To"}, {"Time", Side::Right}, {"Who"}, {"Head"}, {"Coat"}, {"What"}, {""}, {""}}};
    for (const PlannedTask& task : plan->tasks) {
        const Service& service = services.at(task.id.service);
        table.addRow({clock.text(task.start), clock.text(task.end), lengthText(task.end - task.start),
                      task.hands ? handsName(services, *task.hands) : std::string{},
                      headColumn(services, task.id.service),
                      service.coats.size() > 1 ? service.coats.at(task.id.coat).name : std::string{},
                      core::stagger::taskName(service, task.id), stateText(task), note(services, task)});
    }
    return table.text();
}

/// "40 min of at most 50 min"
std::string firstStrandText(const Zone& zone, const PlannedZone& planned)
{
    const std::string carried = lengthText(planned.water - planned.firstContact);
    return zone.firstStrandMost ? carried + " of at most " + lengthText(*zone.firstStrandMost) : carried;
}

std::string lastStrandText(const Zone& zone, const PlannedZone& planned)
{
    if (!zone.lastStrandLeast)
        return {};
    return lengthText(planned.water - planned.applicationEnd) + " of at least "
        + lengthText(*zone.lastStrandLeast);
}

std::string zones(const Services& services, const Plan& plan, const WallClock& clock)
{
    TextTable table{{{"Head"},
                     {"Zone"},
                     {"First strand"},
                     {"Last strand"},
                     {"Counted from"},
                     {"Water"},
                     {"Develops", Side::Right},
                     {"Asked for"},
                     {""},
                     {"First strand carries it"},
                     {"Last strand carries it"}}};
    for (const PlannedZone& planned : plan->zones) {
        const Zone& zone = zoneOf(services, planned);
        const Service& service = services.at(planned.service);
        const std::string coat =
            service.coats.size() > 1 ? service.coats.at(planned.coat).name + ": " : std::string{};
        table.addRow({headColumn(services, planned.service), coat + zone.name,
                      clock.text(planned.firstContact), clock.text(planned.applicationEnd),
                      zone.clock == ClockStart::FirstContact ? "first strand" : "last strand",
                      clock.text(planned.water) + (planned.rinsedAlone ? " alone" : ""),
                      lengthText(planned.development()), windowText(zone.develop),
                      deviationText(zone, planned.development()), firstStrandText(zone, planned),
                      lastStrandText(zone, planned)});
    }
    return table.text();
}

}  // namespace

std::string timetable(const Services& services, const Plan& plan, const core::measure::TimeZones& timeZones,
                      Remarks wanted)
{
    const WallClock clock = wallClockOf(plan, services.front(), timeZones);
    std::string text = title(services, plan, clock) + "\n" + tasks(services, plan, clock) + "\n"
        + zones(services, plan, clock) + "\n";
    for (const std::string& sentence : worthSentences(services, plan))
        text += sentence + "\n";
    for (const std::string& remark : remarks(services, plan, wanted))
        text += remark + "\n";
    return text;
}

}  // namespace app::output
