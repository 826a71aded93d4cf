#include "core/stagger/draft.h"

#include <algorithm>
#include <functional>
#include <numeric>

namespace core::stagger {
namespace {

using temporal::Clause;

struct Span {
    Time start;
    Time end;
};

/// The crew's side of a draft at given times: who can do what, and if nobody
/// can, which tasks are in each other's way.
class CrewAt {
public:
    CrewAt(const Draft& draft, const std::vector<Time>& times);

    [[nodiscard]] std::vector<Clause> broken() const;
    [[nodiscard]] Assignment assign() const;

private:
    using Hands = std::vector<std::optional<std::size_t>>;

    [[nodiscard]] std::size_t count() const { return m_draft.busy.size(); }
    [[nodiscard]] const Busy& task(std::size_t place) const { return m_draft.busy[place]; }
    [[nodiscard]] Time start(std::size_t place) const { return m_spans[place].start; }
    [[nodiscard]] Time end(std::size_t place) const { return m_spans[place].end; }
    [[nodiscard]] bool overlap(std::size_t a, std::size_t b) const
    {
        return start(a) < end(b) && start(b) < end(a);
    }
    [[nodiscard]] bool sameHead(std::size_t a, std::size_t b) const
    {
        return task(a).id.service == task(b).id.service;
    }
    [[nodiscard]] bool isLook(std::size_t place) const { return task(place).id.kind == TaskKind::Look; }
    [[nodiscard]] bool isApplication(std::size_t place) const { return task(place).id.kind == TaskKind::Apply; }
    [[nodiscard]] bool bothFixed(std::size_t a, std::size_t b) const
    {
        return task(a).start.isFixed() && task(b).start.isFixed();
    }
    [[nodiscard]] bool pieces(std::size_t place) const
    {
        return m_draft.question->services[task(place).id.service].head.piecesComeApart;
    }
    [[nodiscard]] bool isMadeWhile(std::size_t look, std::size_t apply) const;
    [[nodiscard]] bool clash(std::size_t a, std::size_t b) const;
    [[nodiscard]] bool headClash(std::size_t a, std::size_t b) const;
    [[nodiscard]] bool mayDo(std::size_t place, std::size_t hands) const;

    /// Assigns `places` (by start, then id); false if nobody can.
    bool giveHands(const std::vector<std::size_t>& places, Hands& hands) const;
    bool giveHandsFrom(std::size_t next, const std::vector<std::size_t>& places,
                       Hands& hands) const;
    bool canTake(std::size_t next, std::size_t hands, const std::vector<std::size_t>& places, Hands& given) const;
    [[nodiscard]] bool canBeGlance(std::size_t look, std::size_t hands, const std::vector<std::size_t>& places,
                                   std::size_t next, const Hands& given) const;
    [[nodiscard]] bool isAwayDuring(std::size_t place, std::size_t hands) const;
    [[nodiscard]] std::vector<std::size_t> smallest(std::vector<std::size_t> places) const;
    [[nodiscard]] Clause orderClause(std::size_t a, std::size_t b) const;
    void appendOrders(std::size_t a, std::size_t b, Clause& clause) const;
    [[nodiscard]] Clause clauseFor(const std::vector<std::size_t>& places) const;
    void appendAway(std::size_t place, Clause& clause) const;
    void brokenByPairs(std::vector<Clause>& clauses) const;
    void brokenByHands(std::vector<Clause>& clauses) const;
    void brokenByBasins(std::vector<Clause>& clauses) const;
    [[nodiscard]] std::vector<std::vector<std::size_t>> clusters() const;

    const Draft& m_draft;
    const service::Crew& m_crew;
    std::vector<Span> m_spans;
    std::vector<std::size_t> m_present;  ///< Tasks that are made, by start, then id.
    bool m_handsCount = true;            ///< Whether the number of hands is a demand.
    bool m_basinsCount = true;
    bool m_headCounts = true;
    std::vector<std::vector<Span>> m_away;
};

CrewAt::CrewAt(const Draft& draft, const std::vector<Time>& times)
    : m_draft{draft}
    , m_crew{draft.question->services.front().crew}
    , m_away(m_crew.hands.size())
{
    for (const Busy& busy : draft.busy) {
        const Time start = times[static_cast<std::size_t>(busy.start.point)] + busy.start.offset;
        m_spans.push_back({start, start + busy.length});
    }
    for (std::size_t place = 0; place < count(); ++place) {
        const std::optional<Lag>& due = task(place).due;
        if (!due
            || times[static_cast<std::size_t>(due->to)] - times[static_cast<std::size_t>(due->from)] <= due->most)
            m_present.push_back(place);
    }
    std::ranges::sort(m_present, [&](std::size_t a, std::size_t b) {
        return start(a) != start(b) ? start(a) < start(b) : task(a).id < task(b).id;
    });
    for (std::size_t place = 0; place < draft.demands.size(); ++place) {
        const DraftedDemand& demand = draft.demands[place];
        const bool counts = !draft.isLeft(place);
        if (demand.kind == DraftedDemand::Kind::Hands)
            m_handsCount = counts;
        if (demand.kind == DraftedDemand::Kind::Basins)
            m_basinsCount = counts;
        if (demand.kind == DraftedDemand::Kind::HeadAtBasin)
            m_headCounts = counts;
        if (demand.kind == DraftedDemand::Kind::Away && counts) {
            const Interval& away = m_crew.hands[demand.place / 1000].away[demand.place % 1000];
            m_away[demand.place / 1000].push_back(
                {static_cast<Time>((away.from - draft.zero).count()),
                 static_cast<Time>((away.until - draft.zero).count())});
        }
    }
}

/// A look that starts while an application on its head is under way is made by
/// the hands that apply.
bool CrewAt::isMadeWhile(std::size_t look, std::size_t apply) const
{
    return isLook(look) && isApplication(apply) && sameHead(look, apply) && start(apply) <= start(look)
        && start(look) < end(apply);
}

/// Whether one pair of hands cannot do both at these times.
bool CrewAt::clash(std::size_t a, std::size_t b) const
{
    if (a == b || bothFixed(a, b) || !overlap(a, b))
        return false;
    if (sameHead(a, b) && isLook(a) && isLook(b))
        return false;
    return !isMadeWhile(a, b) && !isMadeWhile(b, a);
}

/// While a head is at a basin nothing but mixing is done for it.
bool CrewAt::headClash(std::size_t a, std::size_t b) const
{
    if (a == b || !sameHead(a, b) || bothFixed(a, b) || pieces(a) || !overlap(a, b))
        return false;
    const bool mixes = task(a).id.kind == TaskKind::Mix || task(b).id.kind == TaskKind::Mix;
    return !mixes && (task(a).needsBasin || task(b).needsBasin);
}

bool CrewAt::mayDo(std::size_t place, std::size_t hands) const
{
    if (!m_crew.hands[hands].does(workOf(task(place).id.kind)))
        return false;
    return task(place).start.isFixed() || !isAwayDuring(place, hands);
}

void CrewAt::appendOrders(std::size_t a, std::size_t b, Clause& clause) const
{
    const auto append = [&](std::size_t first, std::size_t second) {
        const Lag lag = inOrder(task(first).end(), task(second).start);
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
        const Lag lag = inOrder(one->end(), other->start);
        if (lag.from != lag.to)
            clause.push_back(lag);
        if (one->due)
            clause.push_back(negation(*one->due));
    }
    return clause;
}

void CrewAt::brokenByPairs(std::vector<Clause>& clauses) const
{
    const bool single = m_crew.hands.size() == 1 && m_handsCount;
    for (std::size_t i = 0; i < m_present.size(); ++i) {
        for (std::size_t j = i + 1; j < m_present.size(); ++j) {
            const std::size_t a = m_present[i];
            const std::size_t b = m_present[j];
            if (start(b) >= end(a))
                break;  // Sorted by start: nothing after this overlaps either.
            if (m_headCounts && headClash(a, b)) {
                clauses.push_back(orderClause(a, b));
            } else if (single && clash(a, b)) {
                Clause clause;
                appendOrders(a, b, clause);
                for (const std::size_t place : {a, b}) {
                    if (task(place).due)
                        clause.push_back(negation(*task(place).due));
                }
                clauses.push_back(std::move(clause));
            }
        }
    }
}

void CrewAt::appendAway(std::size_t place, Clause& clause) const
{
    if (task(place).start.isFixed())
        return;
    for (std::size_t hands = 0; hands < m_crew.hands.size(); ++hands) {
        // A look may be a glance within applying, whatever kinds of work these hands do.
        if (!isLook(place) && !m_crew.hands[hands].does(workOf(task(place).id.kind)))
            continue;
        for (const Span& away : m_away[hands]) {
            if (start(place) >= away.end || away.start >= end(place))
                continue;
            clause.push_back(inOrder(task(place).end(), {temporal::origin, away.start}));
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
        if (task(a).due)
            clause.push_back(negation(*task(a).due));
        appendAway(a, clause);
        if (!isLook(a))
            continue;
        for (std::size_t apply = 0; apply < count(); ++apply) {
            if (!isApplication(apply) || !sameHead(a, apply))
                continue;
            const Lag before = lagBetween(task(apply).start, task(a).start, -1);
            const Lag after = inOrder(task(apply).end(), task(a).start);
            if (isMadeWhile(a, apply)) {
                clause.push_back(before);
                clause.push_back(after);
            } else {
                clause.push_back(start(a) < start(apply) ? negation(before) : negation(after));
            }
        }
    }
    std::erase_if(clause, [](const Lag& lag) { return lag.from == lag.to; });
    return clause;
}

bool CrewAt::isAwayDuring(std::size_t place, std::size_t hands) const
{
    return std::ranges::any_of(m_away[hands], [&](const Span& away) {
        return start(place) < away.end && away.start < end(place);
    });
}

/// Whether one of the applications that a look is made in is done by `hands`, or
/// may yet be: those from `next` on have nobody so far.
bool CrewAt::canBeGlance(std::size_t look, std::size_t hands, const std::vector<std::size_t>& places,
                         std::size_t next, const Hands& given) const
{
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (isMadeWhile(look, places[i]) && (i >= next || given[places[i]] == hands))
            return true;
    }
    return false;
}

bool CrewAt::canTake(std::size_t next, std::size_t hands, const std::vector<std::size_t>& places,
                     Hands& given) const
{
    const std::size_t place = places[next];
    for (std::size_t i = 0; i < next; ++i) {
        if (given[places[i]] == hands && clash(place, places[i]))
            return false;
    }
    given[place] = hands;
    // A look that was given hands before the application it is made in: is that still possible?
    for (std::size_t i = 0; i < next && isApplication(place); ++i) {
        if (isMadeWhile(places[i], place) && !canBeGlance(places[i], *given[places[i]], places, next + 1, given))
            return false;
    }
    const bool glance = std::ranges::any_of(
        places, [&](std::size_t apply) { return isMadeWhile(place, apply); });
    if (!glance)
        return mayDo(place, hands);
    return canBeGlance(place, hands, places, next, given) && !isAwayDuring(place, hands);
}

bool CrewAt::giveHandsFrom(std::size_t next, const std::vector<std::size_t>& places,
                           Hands& hands) const
{
    if (next == places.size())
        return true;
    for (std::size_t candidate = 0; candidate < m_crew.hands.size(); ++candidate) {
        if (canTake(next, candidate, places, hands) && giveHandsFrom(next + 1, places, hands))
            return true;
    }
    hands[places[next]].reset();
    return false;
}

bool CrewAt::giveHands(const std::vector<std::size_t>& places, Hands& hands) const
{
    return giveHandsFrom(0, places, hands);
}

/// Drops tasks as long as the rest still cannot be shared out.
std::vector<std::size_t> CrewAt::smallest(std::vector<std::size_t> places) const
{
    Hands hands(count());
    for (std::size_t i = places.size(); i-- > 0;) {
        std::vector<std::size_t> fewer = places;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
        // A look stays with the application that it is made in, else it would lose its hands.
        const bool carries = std::ranges::any_of(
            fewer, [&](std::size_t look) { return isMadeWhile(look, places[i]); });
        if (!carries && !giveHands(fewer, hands))
            places = std::move(fewer);
    }
    return places;
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
    Hands hands(count());
    for (const std::vector<std::size_t>& cluster : clusters()) {
        if (!giveHands(cluster, hands))
            clauses.push_back(clauseFor(smallest(cluster)));
    }
}

/// Rinses are alike, so more at once than there are basins is what is in the way.
void CrewAt::brokenByBasins(std::vector<Clause>& clauses) const
{
    std::vector<std::size_t> atOnce;
    for (const std::size_t place : m_present) {
        if (!task(place).needsBasin)
            continue;
        std::erase_if(atOnce, [&](std::size_t other) { return end(other) <= start(place); });
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
        if (!clause.empty())
            clauses.push_back(std::move(clause));
        return;
    }
}

std::vector<Clause> CrewAt::broken() const
{
    std::vector<Clause> clauses;
    brokenByPairs(clauses);
    if (m_basinsCount)
        brokenByBasins(clauses);
    if (!clauses.empty() || !m_handsCount)
        return clauses;
    brokenByHands(clauses);
    return clauses;
}

Assignment CrewAt::assign() const
{
    Assignment assignment{std::vector<std::optional<std::size_t>>(count()),
                          std::vector<std::optional<std::size_t>>(count()),
                          std::vector<std::optional<std::size_t>>(count())};
    giveHands(m_present, assignment.hands);
    std::vector<std::optional<Time>> freeFrom(m_crew.basins);
    for (const std::size_t place : m_present) {
        if (isLook(place)) {
            for (const std::size_t apply : m_present) {
                if (isMadeWhile(place, apply) && assignment.hands[apply] == assignment.hands[place]
                    && !assignment.madeWhile[place])
                    assignment.madeWhile[place] = apply;
            }
        }
        if (!task(place).needsBasin)
            continue;
        const auto basin = std::ranges::find_if(
            freeFrom, [&](const std::optional<Time>& from) { return !from || *from <= start(place); });
        if (basin == freeFrom.end())
            continue;
        *basin = end(place);
        assignment.basins[place] = static_cast<std::size_t>(basin - freeFrom.begin());
    }
    return assignment;
}

}  // namespace

std::vector<temporal::Clause> brokenByCrew(const Draft& draft, const std::vector<Time>& times)
{
    return CrewAt{draft, times}.broken();
}

Assignment assignCrew(const Draft& draft, const std::vector<Time>& times)
{
    return CrewAt{draft, times}.assign();
}

}  // namespace core::stagger
