#include "app/view/strand_picture.h"

#include <algorithm>

namespace app::view {
namespace {

using core::service::Service;
using core::service::Zone;
using core::stagger::PlannedTask;
using core::stagger::TaskKind;
using core::stagger::TaskState;

bool belongsTo(const PlannedTask& task, const TaskId& zone, TaskKind kind)
{
    return task.id.service == zone.service && task.id.coat == zone.coat && task.id.kind == kind
        && task.id.item == zone.item;
}

/// A zone rinsed alone has a rinse of its own; every other zone has its group's.
Instant rinseEndOf(const Service& service, const TaskId& zone, const StrandTimes& times,
                   const std::vector<PlannedTask>& tasks)
{
    const core::service::Coat& coat = service.coats[zone.coat];
    const std::size_t group = coat.zones[zone.item].group;
    const PlannedTask* found = nullptr;
    for (const PlannedTask& task : tasks) {
        TaskId groupId = zone;
        groupId.item = group;
        if (belongsTo(task, zone, TaskKind::RinseAlone))
            return task.end;
        if (belongsTo(task, groupId, TaskKind::Rinse))
            found = &task;
    }
    return found != nullptr ? found->end : times.water + coat.groups[group].rinse;
}

void addMarks(Strand& strand, const Service& service, const std::vector<PlannedTask>& tasks)
{
    const Zone& zone = service.coats[strand.zone.coat].zones[strand.zone.item];
    for (const PlannedTask& task : tasks) {
        if (belongsTo(task, strand.zone, TaskKind::Look))
            strand.looks.push_back({task.id, task.start, task.state == TaskState::Done});
        if (belongsTo(task, strand.zone, TaskKind::Late))
            strand.late.push_back({task.id, {task.start, task.end}, zone.late[task.id.part].name});
    }
}

/// One line for all that goes under the water together: at its first water. A zone rinsed alone comes earlier
/// by more than a rinse takes, or later, and so gets a line of its own.
void addRinseLine(StrandPicture& picture, const core::service::RinseGroup& group, Instant at)
{
    for (RinseLine& line : picture.rinseLines) {
        if (line.name != group.name || std::chrono::abs(line.at - at) > group.rinse)
            continue;
        line.at = std::min(line.at, at);
        return;
    }
    picture.rinseLines.push_back({at, group.name});
}

void addRinseLines(StrandPicture& picture, const std::vector<Service>& services)
{
    for (const Strand& strand : picture.strands) {
        if (strand.stage == core::run::Stage::Dropped)
            continue;
        const core::service::Coat& coat = services[strand.zone.service].coats[strand.zone.coat];
        addRinseLine(picture, coat.groups[coat.zones[strand.zone.item].group], strand.water);
    }
    std::ranges::sort(picture.rinseLines, {}, &RinseLine::at);
}

/// Heads share the crew of the first.
void addHands(StrandPicture& picture, const core::service::Crew& crew, const std::vector<PlannedTask>& tasks,
              const std::vector<CoatPlace>& coats)
{
    // Who did what is past is not recorded; where there is one pair of hands there is no doubt.
    const bool onlyPair = crew.hands.size() == 1;
    for (std::size_t pair = 0; pair < crew.hands.size(); ++pair) {
        HandsRow row{crew.hands[pair].name, {}};
        for (const PlannedTask& task : tasks) {
            const bool here = std::ranges::count(coats, CoatPlace{task.id.service, task.id.coat}) > 0;
            const bool theirs = task.hands == pair || (!task.hands && onlyPair);
            if (theirs && !task.madeWhile)
                row.jobs.push_back({task.id, {task.start, task.end}, !here});
        }
        picture.hands.push_back(std::move(row));
    }
}

/// What hands do elsewhere is shown as far as the picture reaches, and does not widen it.
void cutToReach(StrandPicture& picture)
{
    for (HandsRow& row : picture.hands) {
        std::erase_if(row.jobs, [&](const HandsJob& job) {
            return job.span.until <= picture.reach.from || picture.reach.until <= job.span.from;
        });
        for (HandsJob& job : row.jobs)
            job.span = {std::max(job.span.from, picture.reach.from),
                        std::min(job.span.until, picture.reach.until)};
    }
}

void widen(Span& reach, Instant from, Instant until)
{
    reach.from = std::min(reach.from, from);
    reach.until = std::max(reach.until, until);
}

Span reachOf(const StrandPicture& picture)
{
    if (picture.strands.empty())
        return {};
    Span reach = picture.strands.front().application;
    for (const Strand& strand : picture.strands) {
        widen(reach, strand.application.from, strand.application.until);
        widen(reach, strand.water, std::max(strand.rinseEnd, strand.mostAt));
    }
    for (const HandsRow& row : picture.hands)
        for (const HandsJob& job : row.jobs)
            if (!job.elsewhere)
                widen(reach, job.span.from, job.span.until);
    if (picture.now)
        reach.until = std::max(reach.until, *picture.now);
    return reach;
}

}  // namespace

void widenByPlanned(StrandPicture& picture)
{
    for (const Strand& strand : picture.strands)
        if (strand.planned) {
            widen(picture.reach, strand.planned->application.from, strand.planned->application.until);
            widen(picture.reach, strand.planned->water, strand.planned->water);
        }
}

Strand makeStrand(const Service& service, const TaskId& zoneId, const StrandTimes& times,
                  const std::vector<PlannedTask>& tasks)
{
    const Zone& zone = service.coats[zoneId.coat].zones[zoneId.item];
    Strand strand{.zone = zoneId,
                  .name = zone.name,
                  .application = {times.firstContact, times.applicationEnd},
                  .clockStart = times.clockStart,
                  .water = times.water,
                  .rinseEnd = rinseEndOf(service, zoneId, times, tasks),
                  .leastAt = times.clockStart + zone.develop.least,
                  .targetAt = times.clockStart + zone.develop.target,
                  .mostAt = times.clockStart + zone.develop.most,
                  .looks = {},
                  .late = {}};
    if (zone.firstStrandMost)
        strand.mostAt = std::min(strand.mostAt, times.firstContact + *zone.firstStrandMost);
    if (zone.lastStrandLeast)
        strand.leastAt = std::max(strand.leastAt, times.applicationEnd + *zone.lastStrandLeast);
    addMarks(strand, service, tasks);
    return strand;
}

void completePicture(StrandPicture& picture, const std::vector<Service>& services,
                     const std::vector<PlannedTask>& tasks, const std::vector<CoatPlace>& coats)
{
    addHands(picture, services.front().crew, tasks, coats);
    addRinseLines(picture, services);
    picture.reach = reachOf(picture);
    cutToReach(picture);
}

}  // namespace app::view
