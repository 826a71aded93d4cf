#include "core/run/heat.h"
#include "core/run/telling.h"
#include "core/run/zone_record.h"

#include <algorithm>

namespace core::run {
namespace {

constexpr Seconds longestHeat = std::chrono::hours{24};

/// The heat that is on the head of the task that is named.
std::optional<Heat> heatOn(const Telling& telling)
{
    const std::vector<Heat> heats = heatsOf(telling.services, telling.progress, telling.facts);
    const auto mine = std::ranges::find_if(
        heats, [&](const Heat& heat) { return heat.task.service == telling.answer.task.service; });
    return mine == heats.end() ? std::nullopt : std::optional{*mine};
}

/// The zones of the coat that carried mixture at the time that is told of.
bool carriesMixture(const Telling& telling)
{
    const TaskId& id = telling.answer.task;
    return std::ranges::any_of(zonesOf(telling.services), [&](const TaskId& apply) {
        if (apply.service != id.service || apply.coat != id.coat)
            return false;
        const ZoneRecord record = zoneRecord(telling.services, telling.progress, apply);
        return record.firstContact && *record.firstContact <= telling.happened() && record.isOn(telling.now);
    });
}

/// A number that no heat of the coat has had, taken back or not.
TaskId nextHeat(const Telling& telling)
{
    TaskId heat = telling.answer.task;
    heat.item = 0;
    heat.part = static_cast<std::size_t>(std::ranges::count_if(telling.facts, [&](const Fact& fact) {
        return fact.kind == FactKind::Started && fact.task.kind == TaskKind::Heat
            && fact.task.service == heat.service && fact.task.coat == heat.coat;
    }));
    return heat;
}

Told tellOn(const Telling& telling)
{
    if (heatOn(telling))
        return refuse(Sentence::worded("Heat is on this head already. Say first that it was taken off."));
    if (!carriesMixture(telling))
        return refuse(Sentence::worded(
            "Nothing was on the hair then that heat could be for. Say first what was applied."));
    if (telling.answer.again < Seconds{0} || telling.answer.again > longestHeat)
        return refuse(Sentence::worded("Say for how many minutes the heat stays, or nothing."));
    Fact fact = telling.fact(FactKind::Started, nextHeat(telling));
    fact.again = telling.answer.again;
    return std::vector{fact};
}

Told tellOff(const Telling& telling)
{
    const std::optional<Heat> heat = heatOn(telling);
    if (!heat)
        return refuse(Sentence::worded("No heat is on this head."));
    if (telling.happened() < heat->since)
        return refuse(Sentence::worded("That is before the heat was put on. Give a later time."));
    return std::vector{telling.fact(FactKind::Finished, heat->task)};
}

}  // namespace

Told tellHeat(const Telling& telling)
{
    if (telling.answer.kind == Answer::Kind::Start)
        return tellOn(telling);
    if (telling.answer.kind == Answer::Kind::Finish)
        return tellOff(telling);
    return refuse(Sentence::worded("Heat is never planned, so it cannot be left out."));
}

}  // namespace core::run
