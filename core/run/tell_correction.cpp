#include "core/run/amend/revisions.h"
#include "core/run/answers.h"
#include "core/run/standing.h"
#include "core/run/telling.h"
#include "core/run/zone_record.h"

#include <algorithm>

namespace core::run {
namespace {

/// An end cannot stand without its start.
void addEndOf(const Telling& telling, Place start, std::vector<Place>& places)
{
    const std::vector<bool> stands = whichStand(telling.facts);
    const Fact& started = telling.facts[start];
    if (started.kind != FactKind::Started)
        return;
    for (Place place = start + 1; place < telling.facts.size(); ++place) {
        const Fact& fact = telling.facts[place];
        const bool isEnd = stands[place] && fact.kind == FactKind::Finished && fact.task == started.task;
        if (isEnd && std::ranges::find(places, place) == places.end())
            places.push_back(place);
    }
}

std::vector<Fact> factsAbout(const Telling& telling, FactKind kind, const std::vector<Place>& places)
{
    const std::vector<bool> stands = whichStand(telling.facts);
    std::vector<Fact> facts;
    for (const Place place : places) {
        if (!stands[place])
            continue;
        facts.push_back(telling.fact(kind, {}));
        facts.back().about = telling.facts[place].number;
    }
    return facts;
}

/// Why an amendment cannot be taken back any more, or nothing: what came later may build on it.
std::optional<Sentence> whyStays(const Telling& telling, Place place)
{
    const std::vector<bool> stands = whichStand(telling.facts);
    if (telling.facts[place].kind != FactKind::Amended)
        return {};
    for (Place later = place + 1; later < telling.facts.size(); ++later) {
        if (stands[later] && telling.facts[later].kind == FactKind::Amended)
            return Sentence::worded("What was changed later builds on that. Undo the later change first.");
    }
    const std::vector<Service>& before = servicesAt(telling.setup, telling.facts.first(place));
    for (Place later = place + 1; later < telling.facts.size(); ++later) {
        const Fact& fact = telling.facts[later];
        const bool isPartOfIt = fact.revision == telling.facts[place].revision;
        const bool isAboutTask = !isCorrection(fact) && fact.kind != FactKind::Ended;
        if (stands[later] && isAboutTask && !isPartOfIt && !exists(before, fact.task))
            return Sentence::worded(
                "What was said of '%1' came after that change, which brought it. Undo that first.",
                telling.nameOf(fact.task));
    }
    return {};
}

/// Why an application cannot be taken back, or nothing: a rinse that has begun would be without what it is
/// for, and nothing could be planned any more.
std::optional<Sentence> whyUnderWater(const Telling& telling, const Fact& fact)
{
    const bool applies = fact.task.kind == TaskKind::Apply
        && (fact.kind == FactKind::Started || fact.kind == FactKind::Finished);
    if (!applies || !exists(telling.services, fact.task))
        return {};
    const TaskId rinse = rinseOf(telling.services, fact.task);
    const std::vector<TaskId> under = zonesUnder(telling.services, telling.progress, rinse);
    const bool ran = telling.progress.find(rinse) && std::ranges::find(under, fact.task) != under.end();
    TaskId alone = fact.task;
    alone.kind = TaskKind::RinseAlone;
    if (!ran && !telling.progress.find(alone))
        return {};
    return Sentence::worded("'%1' has begun since. Undo that first.", telling.nameOf(ran ? rinse : alone));
}

Told tellUndo(const Telling& telling)
{
    const auto place = placeMeant(telling, [](const Fact& fact) { return fact.kind != FactKind::Undone; });
    if (!place)
        return refuse(telling.answer.about ? Sentence::worded("That answer does not stand any more.")
                                           : Sentence::worded("There is nothing to undo."));
    for (const Place each : answerAround(telling.facts, *place)) {
        if (const auto why = whyStays(telling, each))
            return refuse(*why);
        if (const auto why = whyUnderWater(telling, telling.facts[each]))
            return refuse(*why);
    }
    return undoing(telling, *place);
}

/// Whether heat that was taken off would have been so before it was put on.
bool isBeforeItsHeat(const Telling& telling, const Fact& fact)
{
    return fact.kind == FactKind::Finished
        && std::ranges::any_of(standingFacts(telling.facts), [&](const Fact& other) {
               return other.kind == FactKind::Started && other.task == fact.task
                   && other.happened > telling.happened();
           });
}

/// Why `fact`, moved by itself, cannot have happened at the new time; or nothing.
std::optional<Sentence> whyNotThen(const Telling& telling, const Fact& fact)
{
    if (fact.task.kind == TaskKind::Heat && isBeforeItsHeat(telling, fact))
        return Sentence::worded("That is before the heat was put on. Give a later time.");
    const auto* task = telling.progress.find(fact.task);
    const Instant moment = telling.happened();
    if (!exists(telling.services, fact.task) || !task)
        return {};
    const Sentence name = telling.nameOf(fact.task);
    if (fact.kind == FactKind::Finished && moment < task->start)
        return Sentence::worded("That is before %1 started. Give a later time.", name);
    if (fact.kind == FactKind::Started && task->end && moment > *task->end)
        return Sentence::worded("That is after %1 ended. Give an earlier time.", name);
    if (fact.kind != FactKind::Looked)
        return {};
    const ZoneRecord zone = zoneRecord(telling.services, telling.progress, applyOf(fact.task));
    if (zone.firstContact && moment < *zone.firstContact)
        return Sentence::worded("That is before the zone was applied. Give a later time.");
    return {};
}

Told tellMove(const Telling& telling)
{
    const auto place = placeMeant(telling, [](const Fact& fact) { return !isCorrection(fact); });
    if (!place)
        return refuse(telling.answer.about ? Sentence::worded("That answer does not stand any more.")
                                           : Sentence::worded("There is no answer to put right."));
    std::vector<Place> places = answerAround(telling.facts, *place);
    // What stands instead of several answers happened at several times.
    if (isInstead(telling.facts[*place]))
        places = {*place};
    if (places.size() == 1) {
        if (const auto why = whyNotThen(telling, telling.facts[*place]))
            return refuse(*why);
    }
    return factsAbout(telling, FactKind::Moved, places);
}

}  // namespace

std::optional<std::size_t> placeMeant(const Telling& telling,
                                      const std::function<bool(const Fact&)>& canBeMeant)
{
    const std::vector<bool> stands = whichStand(telling.facts);
    if (telling.answer.about) {
        const auto place = placeOf(telling.facts, telling.answer.about);
        return place && stands[*place] ? place : std::nullopt;
    }
    for (Place place = telling.facts.size(); place-- > 0;) {
        if (stands[place] && canBeMeant(telling.facts[place]))
            return place;
    }
    return {};
}

std::vector<Fact> undoing(const Telling& telling, std::size_t place)
{
    std::vector<Place> places = answerAround(telling.facts, place);
    for (const Place each : std::vector{places})
        addEndOf(telling, each, places);
    std::vector<Fact> facts = factsAbout(telling, FactKind::Undone, places);
    for (Fact& fact : facts)
        fact.happened = telling.now;
    return facts;
}

Told tellCorrection(const Telling& telling)
{
    return telling.answer.kind == Answer::Kind::UndoLast ? tellUndo(telling) : tellMove(telling);
}

}  // namespace core::run
