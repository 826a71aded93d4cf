#include "core/run/telling.h"
#include "core/run/zone_record.h"

namespace core::run {
namespace {

/// Why the water of `rinse` cannot have been turned on, or nothing.
std::optional<std::string> whyNoWater(const Telling& telling, const TaskId& rinse)
{
    const std::vector<Service>& services = telling.services;
    const std::vector<TaskId> zones = zonesUnder(services, telling.progress, rinse);
    if (zones.empty())
        return "No zone is left for '" + telling.nameOf(rinse) + "': all have been rinsed alone or left out.";
    for (const TaskId& apply : zones) {
        const std::string zone = zoneOf(services, apply).name;
        const ZoneRecord record = zoneRecord(services, telling.progress, apply);
        if (!record.firstContact)
            return zone + " has not been applied. Leave it out first, or rinse the other zones alone.";
        if (!record.applicationEnd)
            return zone + " is still being applied. Say first that it has ended.";
        if (telling.happened() < *record.applicationEnd)
            return "At that time " + zone + " was still being applied. Give a later time.";
    }
    return {};
}

/// Why `apply` cannot have begun, or nothing: water that has run wets what comes later no more.
std::optional<std::string> whyNoApplying(const Telling& telling, const TaskId& apply)
{
    TaskId alone = apply;
    alone.kind = TaskKind::RinseAlone;
    const TaskId group = rinseOf(telling.services, apply);
    for (const TaskId& rinse : {alone, group}) {
        if (telling.progress.find(rinse))
            return "'" + telling.nameOf(rinse) + "' has begun, so nothing more can be applied for it. "
                + "Undo that if it was said by mistake.";
    }
    return {};
}

/// Why `id` cannot have begun, or nothing.
std::optional<std::string> whyNoStart(const Telling& telling, const TaskId& id)
{
    const std::string name = telling.nameOf(id);
    if (id.kind == TaskKind::Look)
        return "A look is not started: say what came of it.";
    if (const auto* begun = telling.progress.find(id))
        return name + (begun->end ? " has been done already." : " was started already.");
    if (id.kind == TaskKind::Apply)
        return whyNoApplying(telling, id);
    if (isWater(id))
        return whyNoWater(telling, id);
    return {};
}

Told tellStart(const Telling& telling)
{
    const TaskId& id = telling.answer.task;
    if (const auto why = whyNoStart(telling, id))
        return refuse(*why);
    std::vector<Fact> facts{telling.fact(FactKind::Started, id)};
    // Drying that takes no hands is left to itself at once.
    const bool byItself = stagger::usualLength(telling.services[id.service], id) == Seconds{0};
    if (byItself)
        facts.push_back(telling.fact(FactKind::Finished, id));
    return facts;
}

Told tellFinish(const Telling& telling)
{
    const TaskId& id = telling.answer.task;
    const std::string name = telling.nameOf(id);
    const auto* begun = telling.progress.find(id);
    if (id.kind == TaskKind::Look)
        return refuse("A look is not finished: say what came of it.");
    if (!begun)
        return refuse(name + " has not been started. Say first when it began.");
    if (begun->end)
        return refuse(name + " has been finished already. To put its time right, correct that answer.");
    if (telling.happened() < begun->start)
        return refuse("That is before " + name + " started. Give a later time.");
    return std::vector{telling.fact(FactKind::Finished, id)};
}

Told tellDrop(const Telling& telling)
{
    const TaskId& id = telling.answer.task;
    const std::string name = telling.nameOf(id);
    if (telling.progress.isDropped(id))
        return refuse(name + " is left out already.");
    if (telling.progress.find(id))
        return refuse(name + " has begun and cannot be left out. Finish it, or undo its start.");
    if (id.kind != TaskKind::Rinse)
        return std::vector{telling.fact(FactKind::Dropped, id)};
    for (const TaskId& apply : zonesUnder(telling.services, telling.progress, id)) {
        if (telling.progress.find(apply))
            return refuse(zoneOf(telling.services, apply).name
                          + " has mixture on it, so its rinse cannot be left out.");
    }
    return std::vector{telling.fact(FactKind::Dropped, id)};
}

}  // namespace

Told tellTask(const Telling& telling)
{
    if (telling.answer.task.kind == TaskKind::Heat)
        return tellHeat(telling);
    if (telling.answer.kind == Answer::Kind::Start)
        return tellStart(telling);
    return telling.answer.kind == Answer::Kind::Finish ? tellFinish(telling) : tellDrop(telling);
}

}  // namespace core::run
