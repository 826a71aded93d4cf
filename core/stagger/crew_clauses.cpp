#include "core/stagger/crew.h"
#include "core/stagger/hands_search.h"

#include <algorithm>

namespace core::stagger {

using temporal::Clause;

namespace {

/// The two lags of which one holds where the numbers differ.
void appendDiffer(Point a, Point b, Clause& clause)
{
    clause.push_back({a, b, -1});
    clause.push_back({b, a, -1});
}

}  // namespace

/// While a head is at a basin nothing but mixing is done for it.
bool CrewAt::headClash(std::size_t a, std::size_t b) const
{
    if (a == b || !sameHead(a, b) || bothHappened(a, b) || pieces(a) || !overlap(a, b) || task(a).elsewhere)
        return false;
    const bool mixes = task(a).id.kind == TaskKind::Mix || task(b).id.kind == TaskKind::Mix;
    return !mixes && (task(a).needsBasin || task(b).needsBasin);
}

void CrewAt::appendOrders(std::size_t a, std::size_t b, Clause& clause) const
{
    const auto append = [&](std::size_t first, std::size_t second) {
        const Lag lag = inOrder(task(first).end, task(second).start);
        if (lag.from != lag.to)
            clause.push_back(lag);
    };
    // Among looks and an application of one head it is enough that the look does not start before.
    for (const auto& [look, apply] : {std::pair{a, b}, std::pair{b, a}}) {
        if (isLook(look) && isApplication(apply) && sameHead(look, apply)) {
            append(look, apply);
            const Lag lag = inOrder(task(apply).start, task(look).start);
            if (lag.from != lag.to)
                clause.push_back(lag);
            return;
        }
    }
    append(a, b);
    append(b, a);
}

Clause CrewAt::orderClause(std::size_t a, std::size_t b) const
{
    Clause clause;
    const Busy& first = task(a);
    const Busy& second = task(b);
    for (const auto& [one, other] : {std::pair{&first, &second}, std::pair{&second, &first}}) {
        const Lag lag = inOrder(one->end, other->start);
        if (lag.from != lag.to)
            clause.push_back(lag);
        if (one->due)
            clause.push_back(negation(*one->due));
    }
    return clause;
}

void CrewAt::appendNotDue(std::size_t place, Clause& clause) const
{
    if (task(place).due)
        clause.push_back(negation(*task(place).due));
}

/// Everything by which a look's being made within applications could change.
void CrewAt::appendOtherGlances(std::size_t look, Clause& clause) const
{
    for (std::size_t apply = 0; apply < count(); ++apply) {
        if (!isApplication(apply) || !sameHead(look, apply))
            continue;
        const Lag before = lagBetween(task(apply).start, task(look).start, -1);
        const Lag after = inOrder(task(apply).end, task(look).start);
        if (isMadeWhile(look, apply)) {
            clause.push_back(before);
            clause.push_back(after);
        } else {
            clause.push_back(start(look) < start(apply) ? negation(before) : negation(after));
        }
    }
}

/// Whether `a` and `b` are in each other's way with the same hands at both: those that were named, or the
/// only ones.
bool CrewAt::sameHandsAtBoth(std::size_t a, std::size_t b) const
{
    const bool known = m_draft.numberZero || (m_crew.hands.size() == 1 && m_handsCount);
    return known && namedHands(a) == namedHands(b) && clash(a, b);
}

bool CrewAt::sameBasinAtBoth(std::size_t a, std::size_t b) const
{
    const auto number = [this](Point point) { return m_times[static_cast<std::size_t>(point)]; };
    return task(a).basin && task(b).basin && number(*task(a).basin) == number(*task(b).basin)
        && !bothHappened(a, b) && overlap(a, b);
}

Clause CrewAt::handsClause(std::size_t a, std::size_t b) const
{
    Clause clause;
    if (!bothHappened(a, b))
        appendOrders(a, b, clause);
    if (task(a).hands)
        appendDiffer(*task(a).hands, *task(b).hands, clause);
    appendNotDue(a, clause);
    appendNotDue(b, clause);
    return clause;
}

void CrewAt::brokenByPairs(std::vector<Clause>& clauses) const
{
    for (std::size_t i = 0; i < m_present.size(); ++i) {
        for (std::size_t j = i + 1; j < m_present.size(); ++j) {
            const std::size_t a = m_present[i];
            const std::size_t b = m_present[j];
            if (start(b) >= end(a))
                break;  // Sorted by start: nothing after this overlaps either.
            if (m_headCounts && headClash(a, b)) {
                clauses.push_back(orderClause(a, b));
                continue;
            }
            if (sameBasinAtBoth(a, b)) {
                clauses.push_back(orderClause(a, b));
                appendDiffer(*task(a).basin, *task(b).basin, clauses.back());
            }
            if (sameHandsAtBoth(a, b))
                clauses.push_back(handsClause(a, b));
        }
    }
}

void CrewAt::appendAway(std::size_t place, Clause& clause) const
{
    if (happened(place))
        return;
    for (std::size_t hands = 0; hands < m_crew.hands.size(); ++hands) {
        // A look may be a glance within applying, whatever kinds of work these hands do.
        if (!isLook(place) && !m_crew.hands[hands].does(workOf(task(place).id.kind)))
            continue;
        for (const Span& away : m_away[hands]) {
            if (start(place) >= away.end || away.start >= end(place))
                continue;
            clause.push_back(inOrder(task(place).end, {temporal::origin, away.start}));
            clause.push_back(inOrder({temporal::origin, away.end}, task(place).start));
        }
    }
}

/// Everything that could change so that `places` can be shared out: the order of
/// tasks that clash, being clear of someone's absence, a look not being due, a
/// look's being made while applying.
Clause CrewAt::clauseFor(const std::vector<std::size_t>& places) const
{
    Clause clause;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const std::size_t a = places[i];
        for (std::size_t j = i + 1; j < places.size(); ++j) {
            if (clash(a, places[j]))
                appendOrders(a, places[j], clause);
        }
        appendNotDue(a, clause);
        appendAway(a, clause);
        if (isLook(a))
            appendOtherGlances(a, clause);
    }
    std::erase_if(clause, [](const Lag& lag) { return lag.from == lag.to; });
    return clause;
}

/// Tasks that hang together by overlapping, in order of their starts.
std::vector<std::vector<std::size_t>> CrewAt::clusters() const
{
    std::vector<std::vector<std::size_t>> clusters;
    Time until = 0;
    for (const std::size_t place : m_present) {
        if (clusters.empty() || start(place) >= until)
            clusters.emplace_back();
        until = clusters.back().empty() ? end(place) : std::max(until, end(place));
        clusters.back().push_back(place);
    }
    return clusters;
}

void CrewAt::brokenByHands(std::vector<Clause>& clauses) const
{
    for (const std::vector<std::size_t>& cluster : clusters()) {
        if (std::ranges::all_of(cluster, [this](std::size_t place) { return task(place).elsewhere; }))
            continue;
        const std::vector<std::size_t> stuck = smallestStuck(*this, cluster);
        if (!stuck.empty())
            clauses.push_back(clauseFor(stuck));
    }
}

/// Rinses are alike, so more at once than there are basins is what is in the way.
void CrewAt::brokenByBasins(std::vector<Clause>& clauses) const
{
    std::vector<std::size_t> atOnce;
    for (const std::size_t place : m_present) {
        if (!task(place).needsBasin)
            continue;
        std::erase_if(atOnce, [&](std::size_t other) { return m_spans[other].end <= start(place); });
        atOnce.push_back(place);
        if (atOnce.size() <= m_crew.basins)
            continue;
        Clause clause;
        for (std::size_t i = 0; i < atOnce.size(); ++i) {
            for (std::size_t j = i + 1; j < atOnce.size(); ++j) {
                const Clause orders = orderClause(atOnce[i], atOnce[j]);
                clause.insert(clause.end(), orders.begin(), orders.end());
            }
        }
        if (clause.empty())
            continue;  // They all happened; those to come may still be too many.
        clauses.push_back(std::move(clause));
        return;
    }
}

std::vector<Clause> CrewAt::broken() const
{
    std::vector<Clause> clauses;
    brokenByPairs(clauses);
    if (m_draft.numberZero)
        brokenByNames(clauses);
    if (m_basinsCount && (clauses.empty() || !m_draft.numberZero))
        brokenByBasins(clauses);
    if (m_draft.numberZero)
        return clauses;
    if (!clauses.empty() || !m_handsCount)
        return clauses;
    brokenByHands(clauses);
    return clauses;
}

/// As when nothing is broken, without looking for what is in the way.
bool CrewAt::suffices() const
{
    std::vector<Clause> clauses;
    brokenByPairs(clauses);
    if (m_basinsCount)
        brokenByBasins(clauses);
    if (!clauses.empty() || !m_handsCount)
        return clauses.empty();
    HandsOf hands(count());
    return std::ranges::all_of(clusters(), [&](const std::vector<std::size_t>& cluster) {
        return std::ranges::all_of(cluster, [this](std::size_t place) { return task(place).elsewhere; })
            || HandsSearch{*this, cluster}.run(hands);
    });
}

bool crewSuffices(const Draft& draft, const std::vector<Time>& times)
{
    return CrewAt{draft, times}.suffices();
}

std::vector<temporal::Clause> brokenByCrew(const Draft& draft, const std::vector<Time>& times)
{
    return CrewAt{draft, times}.broken();
}

}  // namespace core::stagger
