#include "core/run/standing.h"

namespace core::run {
namespace {

/// Only facts before `place` can be meant: nobody puts right what is still to come.
template <class Action>
void forTargets(std::span<const Fact> facts, std::size_t place, const Action& action)
{
    for (std::size_t target = 0; target < place; ++target) {
        if (facts[place].about && facts[target].number == *facts[place].about)
            action(target);
    }
}

/// From the last backwards: what could still move `facts[place]` has been seen by then.
std::vector<Instant> whenTheyHappened(std::span<const Fact> facts, const std::vector<bool>& stands)
{
    std::vector<std::optional<Instant>> moved(facts.size());
    std::vector<Instant> happened(facts.size());
    for (std::size_t place = facts.size(); place-- > 0;) {
        happened[place] = moved[place].value_or(facts[place].happened);
        if (!stands[place] || facts[place].kind != FactKind::Moved)
            continue;
        forTargets(facts, place, [&](std::size_t target) {
            if (!moved[target])
                moved[target] = happened[place];
        });
    }
    return happened;
}

}  // namespace

std::vector<bool> whichStand(std::span<const Fact> facts)
{
    std::vector<bool> stands(facts.size(), true);
    for (std::size_t place = facts.size(); place-- > 0;) {
        if (stands[place] && facts[place].kind == FactKind::Undone)
            forTargets(facts, place, [&](std::size_t target) { stands[target] = false; });
    }
    return stands;
}

std::vector<Fact> standingFacts(std::span<const Fact> facts)
{
    const std::vector<bool> stands = whichStand(facts);
    const std::vector<Instant> happened = whenTheyHappened(facts, stands);
    std::vector<Fact> standing;
    for (std::size_t place = 0; place < facts.size(); ++place) {
        const bool correction = facts[place].kind == FactKind::Undone || facts[place].kind == FactKind::Moved;
        if (!stands[place] || correction)
            continue;
        standing.push_back(facts[place]);
        standing.back().happened = happened[place];
    }
    return standing;
}

}  // namespace core::run
