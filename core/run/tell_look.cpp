#include "core/run/extra_looks.h"
#include "core/run/telling.h"
#include "core/run/zone_record.h"

#include <algorithm>

namespace core::run {
namespace {

constexpr Seconds longestWait = std::chrono::hours{24};
constexpr std::size_t longestTone = 240;

bool isAskedForAgain(const Telling& telling, const TaskId& look)
{
    const std::vector<ExtraLook> extra = extraLooksOf(telling.setup, telling.facts);
    return std::ranges::find(extra, look, &ExtraLook::look) != extra.end();
}

/// Why nobody can have looked at, or begun to rinse, the zone at that time; or nothing.
std::optional<Sentence> whyNotOn(const Telling& telling, const TaskId& apply)
{
    const std::string zone = zoneOf(telling.services, apply).name;
    const ZoneRecord record = zoneRecord(telling.services, telling.progress, apply);
    if (!record.firstContact)
        return Sentence::worded("%1 has not been applied yet.", zone);
    if (record.rinsed)
        return Sentence::worded("%1 has been rinsed already.", zone);
    if (telling.happened() < *record.firstContact)
        return Sentence::worded("That is before %1 was applied. Give a later time.", zone);
    return {};
}

std::optional<Sentence> whyNoLook(const Telling& telling, const TaskId& id)
{
    if (id.kind != TaskKind::Look)
        return Sentence::worded("That is no look. Choose the look that was made.");
    if (auto why = whyNotOn(telling, applyOf(id)))
        return why;
    const auto* made = telling.progress.find(id);
    if (made && made->end && !isAskedForAgain(telling, id))
        return Sentence::worded("'%1' was answered already. To put that right, undo it.", telling.nameOf(id));
    return {};
}

Told tellLooked(const Telling& telling)
{
    std::vector<Fact> facts;
    std::vector<TaskId> looks{telling.answer.task};
    if (telling.answer.kind == Answer::Kind::Leave)
        looks.insert(looks.end(), telling.answer.also.begin(), telling.answer.also.end());
    for (const TaskId& look : looks) {
        if (!exists(telling.services, look))
            return refuse(
                Sentence::worded("There is no such look in this service. Choose one from the list."));
        if (auto why = whyNoLook(telling, look))
            return refuse(*why);
        facts.push_back(telling.fact(FactKind::Looked, look));
    }
    facts.front().tone = telling.answer.tone;
    if (telling.answer.kind == Answer::Kind::LookAgain) {
        if (telling.answer.again <= Seconds{0} || telling.answer.again > longestWait)
            return refuse(Sentence::worded("Say in how many minutes to look again."));
        facts.front().verdict = Verdict::Again;
        facts.front().again = telling.answer.again;
    }
    return facts;
}

/// Whether it may be rinsed alone is shown where it is offered; what somebody did is taken.
std::optional<Sentence> whyNoRinse(const Telling& telling, const TaskId& apply)
{
    const std::string zone = zoneOf(telling.services, apply).name;
    const ZoneRecord record = zoneRecord(telling.services, telling.progress, apply);
    if (auto why = whyNotOn(telling, apply))
        return why;
    if (record.water)
        return Sentence::worded("%1 is being rinsed already.", zone);
    if (!record.applicationEnd)
        return Sentence::worded("%1 is still being applied. Say first that it has ended.", zone);
    if (telling.happened() < *record.applicationEnd)
        return Sentence::worded("At that time %1 was still being applied. Give a later time.", zone);
    return {};
}

Told tellRinseNow(const Telling& telling)
{
    const TaskId& id = telling.answer.task;
    const bool ofZone =
        id.kind == TaskKind::Apply || id.kind == TaskKind::Look || id.kind == TaskKind::RinseAlone;
    if (!ofZone)
        return refuse(Sentence::worded("Choose the zone to rinse."));
    const TaskId apply = applyOf(id);
    if (auto why = whyNoRinse(telling, apply))
        return refuse(*why);
    std::vector<Fact> facts;
    if (id.kind == TaskKind::Look && !whyNoLook(telling, id)) {
        facts.push_back(telling.fact(FactKind::Looked, id));
        facts.back().verdict = Verdict::RinseNow;
        facts.back().tone = telling.answer.tone;
    } else if (!telling.answer.tone.empty()) {
        return refuse(
            Sentence::worded("What was seen is kept with a look. Answer the look of this zone with it."));
    }
    TaskId alone = apply;
    alone.kind = TaskKind::RinseAlone;
    facts.push_back(telling.fact(FactKind::Started, alone));
    return facts;
}

}  // namespace

Told tellLook(const Telling& telling)
{
    if (const auto why = whyNoWords(telling.answer.tone, longestTone))
        return refuse(*why);
    if (telling.answer.kind == Answer::Kind::RinseZoneNow)
        return tellRinseNow(telling);
    return tellLooked(telling);
}

}  // namespace core::run
