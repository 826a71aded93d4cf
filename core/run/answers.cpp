#include "core/run/answers.h"

#include "core/run/standing.h"
#include "core/run/zone_record.h"

#include <algorithm>
#include <set>

namespace core::run {
namespace {

/// Whether what both are about was about one zone.
bool sameZoneBefore(std::span<const Fact> facts, const Fact& first, const Fact& second)
{
    const auto one = placeOf(facts, first.about);
    const auto other = placeOf(facts, second.about);
    return one && other && applyOf(facts[*one].task) == applyOf(facts[*other].task);
}

/// Whether both came of one answer, which is put right as a whole.
bool cameTogether(std::span<const Fact> facts, const Fact& first, const Fact& second)
{
    if (first.recorded != second.recorded)
        return false;
    if (first.revision != 0 || second.revision != 0)
        return first.revision == second.revision;
    if (isInstead(second))
        return (first.kind == FactKind::Undone || isInstead(first)) && sameZoneBefore(facts, first, second);
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

}  // namespace

bool isCorrection(const Fact& fact)
{
    return fact.kind == FactKind::Undone || fact.kind == FactKind::Moved;
}

bool isInstead(const Fact& fact)
{
    return fact.about && !isCorrection(fact);
}

std::optional<Place> placeOf(std::span<const Fact> facts, std::optional<FactNumber> number)
{
    const auto found = std::ranges::find_if(facts, [&](const Fact& fact) { return number == fact.number; });
    if (found == facts.end())
        return {};
    return static_cast<Place>(found - facts.begin());
}

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

std::vector<std::vector<Fact>> standingAnswers(std::span<const Fact> facts)
{
    const std::vector<Fact> standing = standingFacts(facts);
    std::vector<std::vector<Fact>> answers;
    std::set<FactNumber> listed;
    for (auto last = standing.rbegin(); last != standing.rend(); ++last) {
        const auto place = placeOf(facts, last->number);
        if (!place || listed.contains(last->number))
            continue;
        std::vector<Fact> answer;
        for (const Place each : answerAround(facts, *place)) {
            const auto known = std::ranges::find(standing, facts[each].number, &Fact::number);
            if (known != standing.end() && listed.insert(known->number).second)
                answer.push_back(*known);
        }
        answers.push_back(std::move(answer));
    }
    return answers;
}

}  // namespace core::run
