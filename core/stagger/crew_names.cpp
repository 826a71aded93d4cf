#include "core/stagger/crew.h"
#include "core/stagger/hands_search.h"

#include <algorithm>

namespace core::stagger {

using temporal::Clause;

namespace {

Lag atMost(Point zero, Point point, Time number)
{
    return {zero, point, number};
}

Lag atLeast(Point zero, Point point, Time number)
{
    return {point, zero, -number};
}

}  // namespace

std::size_t CrewAt::namedHands(std::size_t place) const
{
    const std::optional<Point>& hands = task(place).hands;
    return hands ? static_cast<std::size_t>(m_times[static_cast<std::size_t>(*hands)]) : 0;
}

/// A look within applications is made by the hands of one of them.
void CrewAt::brokenByNamedGlance(std::size_t look, const std::vector<std::size_t>& applies,
                                 std::vector<Clause>& clauses) const
{
    if (!task(look).hands || happened(look))
        return;
    Clause clause;
    for (const std::size_t apply : applies) {
        const std::size_t by = namedHands(apply);
        if (by == namedHands(look))
            return;
        clause.push_back(by < namedHands(look) ? Lag{*task(apply).hands, *task(look).hands, 0}
                                               : Lag{*task(look).hands, *task(apply).hands, 0});
    }
    appendNotDue(look, clause);
    appendOtherGlances(look, clause);
    clauses.push_back(std::move(clause));
}

/// Kinds of work, and absences, of the hands that were named for a task.
void CrewAt::brokenByNamedHands(std::size_t place, bool glance, std::vector<Clause>& clauses) const
{
    const std::size_t hands = namedHands(place);
    Clause others;
    if (task(place).hands) {
        const Time number = static_cast<Time>(hands);
        others = {atMost(*m_draft.numberZero, *task(place).hands, number - 1),
                  atLeast(*m_draft.numberZero, *task(place).hands, number + 1)};
    }
    appendNotDue(place, others);
    if (!doesSuchWork(place, hands) && !glance) {
        Clause clause = others;
        if (isLook(place))
            appendOtherGlances(place, clause);
        clauses.push_back(std::move(clause));
    }
    if (happened(place) && !(isRunning(place) && m_runningPresent))
        return;
    for (const Span& away : m_away[hands]) {
        if (start(place) >= away.end || away.start >= m_spans[place].end)
            continue;
        if (happened(place)) {
            clauses.push_back(others);
            continue;
        }
        Clause clause = others;
        clause.push_back(inOrder(task(place).end, {temporal::origin, away.start}));
        clause.push_back(inOrder({temporal::origin, away.end}, task(place).start));
        clauses.push_back(std::move(clause));
    }
}

/// Where hands and basins are decided by name: what those who were named cannot do.
void CrewAt::brokenByNames(std::vector<Clause>& clauses) const
{
    for (const std::size_t place : m_present) {
        std::vector<std::size_t> applies;
        for (const std::size_t apply : m_present) {
            if (isMadeWhile(place, apply))
                applies.push_back(apply);
        }
        if (!applies.empty())
            brokenByNamedGlance(place, applies, clauses);
        brokenByNamedHands(place, !applies.empty(), clauses);
    }
    for (Clause& clause : clauses)
        std::erase_if(clause, [](const Lag& lag) { return lag.from == lag.to; });
}

/// Who was named, the lowest numbers first: like hands are interchangeable, and a lower
/// number takes a task over where that breaks nothing.
Assignment CrewAt::assignByNames() const
{
    std::vector<Time> times = m_times;
    renumber(times);
    for (const std::size_t place : m_present) {
        if (task(place).hands && !happened(place))
            lower(place, times);
    }
    return CrewAt{m_draft, times}.named();
}

/// Like hands, and basins, in the order in which they come to work.
void CrewAt::renumber(std::vector<Time>& times) const
{
    std::vector<std::optional<std::size_t>> hands(m_crew.hands.size());
    std::vector<std::optional<std::size_t>> basins(m_crew.basins);
    std::vector<bool> taken(m_crew.hands.size(), false);
    std::size_t nextBasin = 0;
    for (const std::size_t place : m_present) {
        if (task(place).hands) {
            const std::size_t old = namedHands(place);
            for (std::size_t other = 0; other < hands.size() && !hands[old]; ++other) {
                if (taken[other] || !areAlike(old, other))
                    continue;
                hands[old] = other;
                taken[other] = true;
            }
            times[static_cast<std::size_t>(*task(place).hands)] = static_cast<Time>(*hands[old]);
        }
        if (task(place).basin) {
            Time& basin = times[static_cast<std::size_t>(*task(place).basin)];
            std::optional<std::size_t>& number = basins[static_cast<std::size_t>(basin)];
            if (!number)
                number = nextBasin++;
            basin = static_cast<Time>(*number);
        }
    }
}

/// Gives a task to the lowest hands that can do it without anything else changing.
void CrewAt::lower(std::size_t place, std::vector<Time>& times) const
{
    Time& hands = times[static_cast<std::size_t>(*task(place).hands)];
    const Time named = hands;
    for (hands = 0; hands < named; ++hands) {
        if (brokenByCrew(m_draft, times).empty() && brokenByLengths(m_draft, times).empty())
            return;
    }
}

Assignment CrewAt::named() const
{
    Assignment assignment{HandsOf(count()), HandsOf(count()), HandsOf(count())};
    assignBasins(assignment);
    for (const std::size_t place : m_present) {
        assignment.hands[place] = namedHands(place);
        if (task(place).basin)
            assignment.basins[place] =
                static_cast<std::size_t>(m_times[static_cast<std::size_t>(*task(place).basin)]);
    }
    assignGlances(assignment);
    return assignment;
}

}  // namespace core::stagger
