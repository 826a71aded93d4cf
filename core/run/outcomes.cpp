#include "core/run/outcomes.h"

#include "core/run/standing.h"

#include <algorithm>
#include <map>
#include <utility>

namespace core::run {

std::vector<ZoneOutcome> outcomesOf(std::span<const Fact> facts)
{
    std::map<TaskId, ZoneOutcome> last;
    for (const Fact& fact : standingFacts(facts)) {
        if (fact.kind == FactKind::TurnedOut)
            last[fact.task] = {fact.task, fact.outcome, fact.tone, fact.number};
    }
    std::vector<ZoneOutcome> outcomes;
    for (const auto& [zone, outcome] : last)
        outcomes.push_back(outcome);
    return outcomes;
}

std::vector<NextTime> notesOf(std::span<const Fact> facts)
{
    std::map<std::pair<std::size_t, std::size_t>, NextTime> last;
    for (const Fact& fact : standingFacts(facts)) {
        if (fact.kind == FactKind::Noted)
            last[{fact.task.service, fact.task.coat}] = {fact.task, fact.tone, fact.number};
    }
    std::vector<NextTime> notes;
    for (const auto& [coat, note] : last)
        notes.push_back(note);
    return notes;
}

}  // namespace core::run
