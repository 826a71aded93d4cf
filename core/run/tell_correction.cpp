#include "core/run/amend/revisions.h"
#include "core/run/standing.h"
#include "core/run/telling.h"
#include "core/run/zone_record.h"

#include <algorithm>

namespace core::run {
namespace {

using Place = std::size_t;

bool isCorrection(const Fact& fact)
{
    return fact.kind == FactKind::Undone || fact.kind == FactKind::Moved;
}

std::optional<Place> placeOf(std::span<const Fact> facts, std::optional<FactNumber> number)
{
    const auto found = std::ranges::find_if(facts, [&](const Fact& fact) { return number == fact.number; });
    if (found == facts.end())
        return {};
    return static_cast<Place>(found - facts.begin());
}

/// Whether both came of one answer, which is put right as a whole.
bool cameTogether(std::span<const Fact> facts, const Fact& first, const Fact& second)
{
    if (first.recorded != second.recorded)
        return false;
    if (first.revision != 0 || second.revision != 0)
        return first.revision == second.revision;
    const bool sameTask = first.task == second.task;
    if (first.kind == FactKind::Looked && second.kind == FactKind::Started)
        return first.verdict == Verdict::RinseNow && second.task.kind == TaskKind::RinseAlone
            && applyOf(first.task) == applyOf(second.task);
    // Looks left within one second are taken as left with one word: undone, they are only asked for again.
    if (first.kind == FactKind::Looked && second.kind == FactKind::Looked)
        return first.verdict == Verdict::Leave && second.verdict == Verdict::Leave && !sameTask
            && first.task.service == second.task.service && first.happened == second.happened;
    if (first.kind == FactKind::Started && second.kind == FactKind::Finished)
        return sameTask && first.task.kind == TaskKind::Dry && first.happened == second.happened;
    if (!isCorrection(first) || first.kind != second.kind)
        return false;
    const auto one = placeOf(facts, first.about);
    const auto other = placeOf(facts, second.about);
    if (!one || !other || facts[*one].number >= first.number || facts[*other].number >= second.number)
        return false;
    const Fact& target = facts[*one];
    const Fact& next = facts[*other];
    const bool startAndEnd =
        target.kind == FactKind::Started && next.kind == FactKind::Finished && target.task == next.task;
    return startAndEnd || cameTogether(facts, target, next);
}

/// All places of the answer that the fact at `place` came of.
std::vector<Place> answerAround(std::span<const Fact> facts, Place place)
{
    std::vector<Place> places{place};
    while (places.front() > 0 && cameTogether(facts, facts[places.front() - 1], facts[places.front()]))
        places.insert(places.begin(), places.front() - 1);
    while (places.back() + 1 < facts.size()
           && cameTogether(facts, facts[places.back()], facts[places.back() + 1]))
        places.push_back(places.back() + 1);
    return places;
}

/// What is meant: the fact that was named, else the last that stands and is of a kind that can be meant.
template <class Meant>
std::optional<Place> placeMeant(const Telling& telling, const Meant& canBeMeant)
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
std::optional<std::string> whyStays(const Telling& telling, Place place)
{
    const std::vector<bool> stands = whichStand(telling.facts);
    if (telling.facts[place].kind != FactKind::Amended)
        return {};
    for (Place later = place + 1; later < telling.facts.size(); ++later) {
        if (stands[later] && telling.facts[later].kind == FactKind::Amended)
            return "What was changed later builds on that. Undo the later change first.";
    }
    const std::vector<Service>& before = servicesAt(telling.setup, telling.facts.first(place));
    for (Place later = place + 1; later < telling.facts.size(); ++later) {
        const Fact& fact = telling.facts[later];
        const bool isPartOfIt = fact.revision == telling.facts[place].revision;
        const bool isAboutTask = !isCorrection(fact) && fact.kind != FactKind::Ended;
        if (stands[later] && isAboutTask && !isPartOfIt && !exists(before, fact.task))
            return "What was said of '" + telling.nameOf(fact.task)
                + "' came after that change, which brought it. Undo that first.";
    }
    return {};
}

Told tellUndo(const Telling& telling)
{
    const auto place = placeMeant(telling, [](const Fact& fact) { return fact.kind != FactKind::Undone; });
    if (!place)
        return refuse(telling.answer.about ? "That answer does not stand any more."
                                           : "There is nothing to undo.");
    std::vector<Place> places = answerAround(telling.facts, *place);
    for (const Place each : places) {
        if (const auto why = whyStays(telling, each))
            return refuse(*why);
    }
    for (const Place each : std::vector{places})
        addEndOf(telling, each, places);
    std::vector<Fact> facts = factsAbout(telling, FactKind::Undone, places);
    for (Fact& fact : facts)
        fact.happened = telling.now;
    return facts;
}

/// Why `fact`, moved by itself, cannot have happened at the new time; or nothing.
std::optional<std::string> whyNotThen(const Telling& telling, const Fact& fact)
{
    const auto* task = telling.progress.find(fact.task);
    const Instant moment = telling.happened();
    if (!exists(telling.services, fact.task) || !task)
        return {};
    const std::string name = telling.nameOf(fact.task);
    if (fact.kind == FactKind::Finished && moment < task->start)
        return "That is before " + name + " started. Give a later time.";
    if (fact.kind == FactKind::Started && task->end && moment > *task->end)
        return "That is after " + name + " ended. Give an earlier time.";
    if (fact.kind != FactKind::Looked)
        return {};
    const ZoneRecord zone = zoneRecord(telling.services, telling.progress, applyOf(fact.task));
    if (zone.firstContact && moment < *zone.firstContact)
        return "That is before the zone was applied. Give a later time.";
    return {};
}

Told tellMove(const Telling& telling)
{
    const auto place = placeMeant(telling, [](const Fact& fact) { return !isCorrection(fact); });
    if (!place)
        return refuse(telling.answer.about ? "That answer does not stand any more."
                                           : "There is no answer to put right.");
    const std::vector<Place> places = answerAround(telling.facts, *place);
    if (places.size() == 1) {
        if (const auto why = whyNotThen(telling, telling.facts[*place]))
            return refuse(*why);
    }
    return factsAbout(telling, FactKind::Moved, places);
}

}  // namespace

Told tellCorrection(const Telling& telling)
{
    return telling.answer.kind == Answer::Kind::UndoLast ? tellUndo(telling) : tellMove(telling);
}

}  // namespace core::run
