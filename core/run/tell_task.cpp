#include "core/run/telling.h"
#include "core/run/zone_record.h"

namespace core::run {
namespace {

/// Why the water of `rinse` cannot have been turned on, or nothing.
std::optional<Sentence> whyNoWater(const Telling& telling, const TaskId& rinse)
{
    const std::vector<Service>& services = telling.services;
    const std::vector<TaskId> zones = zonesUnder(services, telling.progress, rinse);
    if (zones.empty())
        return Sentence::worded("No zone is left for '%1': all have been rinsed alone or left out.",
                                telling.nameOf(rinse));
    for (const TaskId& apply : zones) {
        const std::string zone = zoneOf(services, apply).name;
        const ZoneRecord record = zoneRecord(services, telling.progress, apply);
        if (!record.firstContact)
            return Sentence::worded(
                "%1 has not been applied. Leave it out first, or rinse the other zones alone.", zone);
        if (!record.applicationEnd)
            return Sentence::worded("%1 is still being applied. Say first that it has ended.", zone);
        if (telling.happened() < *record.applicationEnd)
            return Sentence::worded("At that time %1 was still being applied. Give a later time.", zone);
    }
    return {};
}

/// Why `apply` cannot have begun, or nothing: water that has run wets what comes later no more.
std::optional<Sentence> whyNoApplying(const Telling& telling, const TaskId& apply)
{
    TaskId alone = apply;
    alone.kind = TaskKind::RinseAlone;
    const TaskId group = rinseOf(telling.services, apply);
    for (const TaskId& rinse : {alone, group}) {
        if (telling.progress.find(rinse))
            return Sentence::worded(
                "'%1' has begun, so nothing more can be applied for it. Undo that if it was "
                "said by mistake.",
                telling.nameOf(rinse));
    }
    return {};
}

/// Why `id` cannot have begun, or nothing.
std::optional<Sentence> whyNoStart(const Telling& telling, const TaskId& id)
{
    const Sentence name = telling.nameOf(id);
    if (id.kind == TaskKind::Look)
        return Sentence::worded("A look is not started: say what came of it.");
    if (const auto* begun = telling.progress.find(id))
        return begun->end ? Sentence::worded("%1 has been done already.", name)
                          : Sentence::worded("%1 was started already.", name);
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
    const Sentence name = telling.nameOf(id);
    const auto* begun = telling.progress.find(id);
    if (id.kind == TaskKind::Look)
        return refuse(Sentence::worded("A look is not finished: say what came of it."));
    if (!begun)
        return refuse(Sentence::worded("%1 has not been started. Say first when it began.", name));
    if (begun->end)
        return refuse(Sentence::worded(
            "%1 has been finished already. To put its time right, correct that answer.", name));
    if (telling.happened() < begun->start)
        return refuse(Sentence::worded("That is before %1 started. Give a later time.", name));
    return std::vector{telling.fact(FactKind::Finished, id)};
}

Told tellDrop(const Telling& telling)
{
    const TaskId& id = telling.answer.task;
    const Sentence name = telling.nameOf(id);
    if (telling.progress.isDropped(id))
        return refuse(Sentence::worded("%1 is left out already.", name));
    if (telling.progress.find(id))
        return refuse(
            Sentence::worded("%1 has begun and cannot be left out. Finish it, or undo its start.", name));
    if (id.kind != TaskKind::Rinse)
        return std::vector{telling.fact(FactKind::Dropped, id)};
    for (const TaskId& apply : zonesUnder(telling.services, telling.progress, id)) {
        if (telling.progress.find(apply))
            return refuse(Sentence::worded("%1 has mixture on it, so its rinse cannot be left out.",
                                           zoneOf(telling.services, apply).name));
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
