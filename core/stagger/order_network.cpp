#include "core/stagger/order_network.h"

#include <algorithm>

namespace core::stagger {
namespace {

/// `point` stands at the number `value`.
std::vector<Lag> isNumber(Point zero, Point point, Time value)
{
    return {{zero, point, value}, {point, zero, -value}};
}

}  // namespace

OrderNetwork::OrderNetwork(const Draft& draft, const std::vector<Time>& times)
    : m_draft{draft}
    , m_times{times}
{
    m_network.points = draft.numberZero.value_or(draft.problem.points);
    m_network.links = draft.links;
    for (std::size_t lag = 0; lag < draft.ruleLags; ++lag)
        add(draft.problem.lags[lag], {});
    for (const Clause& clause : draft.problem.clauses)
        addDecided(clause);
    for (std::size_t place = 0; place < draft.busy.size(); ++place) {
        if (!task(place).due || holds(*task(place).due))
            m_present.push_back(place);
    }
    std::ranges::sort(m_present, [&](std::size_t a, std::size_t b) {
        const Time first = at(task(a).start);
        const Time second = at(task(b).start);
        return first != second ? first < second : task(a).id < task(b).id;
    });
    addLooks();
    for (const std::size_t place : m_present)
        addAway(place);
    addOrders();
}

void OrderNetwork::add(const Lag& lag, Premises premises)
{
    if (lag.from == lag.to || std::max(lag.from, lag.to) >= m_network.points)
        return;  // Who does what is decided, and has no part in when.
    std::erase_if(premises, [](const Lag& premise) { return premise.from == premise.to; });
    m_network.lags.push_back(lag);
    m_premises.push_back(std::move(premises));
}

/// Of a clause the network has the first lag that holds: it does so because those
/// before it do not, and where it is not the last, because it was chosen.
void OrderNetwork::addDecided(const Clause& clause)
{
    Premises premises;
    for (std::size_t place = 0; place < clause.size(); ++place) {
        if (!holds(clause[place])) {
            premises.push_back(negation(clause[place]));
            continue;
        }
        if (place + 1 < clause.size())
            premises.push_back(clause[place]);
        add(clause[place], std::move(premises));
        return;
    }
}

std::size_t OrderNetwork::handsOf(std::size_t place) const
{
    const std::optional<Point>& hands = task(place).hands;
    return hands ? static_cast<std::size_t>(m_times[static_cast<std::size_t>(*hands)]) : 0;
}

bool OrderNetwork::isMadeWhile(std::size_t look, std::size_t apply) const
{
    return task(look).id.kind == TaskKind::Look && task(apply).id.kind == TaskKind::Apply
        && task(look).id.service == task(apply).id.service && at(task(apply).start) <= at(task(look).start)
        && at(task(look).start) < at(task(apply).end);
}

bool OrderNetwork::sharesHands(std::size_t a, std::size_t b) const
{
    if (handsOf(a) != handsOf(b) || isMadeWhile(a, b) || isMadeWhile(b, a))
        return false;
    const bool looks = task(a).id.kind == TaskKind::Look && task(b).id.kind == TaskKind::Look;
    return !looks || task(a).id.service != task(b).id.service;
}

/// While a head is at a basin nothing but mixing is done for it.
bool OrderNetwork::sharesHead(std::size_t a, std::size_t b) const
{
    const TaskId& first = task(a).id;
    const TaskId& second = task(b).id;
    return first.service == second.service && (task(a).needsBasin || task(b).needsBasin)
        && first.kind != TaskKind::Mix && second.kind != TaskKind::Mix
        && !m_draft.question->services[first.service].head.piecesComeApart;
}

bool OrderNetwork::sharesBasin(std::size_t a, std::size_t b) const
{
    if (!task(a).needsBasin || !task(b).needsBasin)
        return false;
    if (!task(a).basin)
        return m_draft.question->services.front().crew.basins == 1;
    return m_times[static_cast<std::size_t>(*task(a).basin)]
        == m_times[static_cast<std::size_t>(*task(b).basin)];
}

/// Whether two tasks cannot go on at once, and what was decided so that it is so.
std::optional<OrderNetwork::Premises> OrderNetwork::apart(std::size_t a, std::size_t b) const
{
    const auto equal = [](const std::optional<Point>& one, const std::optional<Point>& other) -> Premises {
        return one ? Premises{{*one, *other, 0}, {*other, *one, 0}} : Premises{};
    };
    if (haveHappened(a, b))
        return std::nullopt;
    if (sharesHead(a, b))
        return Premises{};
    if (sharesBasin(a, b))
        return equal(task(a).basin, task(b).basin);
    if (sharesHands(a, b))
        return equal(task(a).hands, task(b).hands);
    return std::nullopt;
}

/// What a look's being due or not, and being made within an application or not, asks
/// for: the order says which, so the plan may not slip from the one to the other.
void OrderNetwork::addLooks()
{
    for (const std::size_t look : m_present) {
        if (task(look).id.kind != TaskKind::Look)
            continue;
        if (task(look).due)
            add(*task(look).due, {*task(look).due});
        const auto apply = std::ranges::find_if(m_present, [&](std::size_t place) {
            return isMadeWhile(look, place) && handsOf(look) == handsOf(place);
        });
        // Whether it falls within others too makes no difference to who makes it.
        if (apply == m_present.end())
            addClear(look);
        else if (!haveHappened(look, *apply))
            addGlance(look, *apply);
    }
}

/// A look that is nobody's glance stays clear of every application of its head. It is
/// nobody's because it is clear of each, or within one that other hands are at.
void OrderNetwork::addClear(std::size_t look)
{
    std::vector<Lag> clears;
    Premises premises;
    for (const std::size_t apply : m_present) {
        if (task(apply).id.kind != TaskKind::Apply || task(apply).id.service != task(look).id.service)
            continue;
        if (isMadeWhile(look, apply)) {
            if (task(look).hands)
                premises.push_back(handsOf(look) < handsOf(apply)
                                       ? Lag{*task(apply).hands, *task(look).hands, -1}
                                       : Lag{*task(look).hands, *task(apply).hands, -1});
        } else if (!haveHappened(look, apply)) {
            const bool before = at(task(look).start) < at(task(apply).start);
            clears.push_back(before ? lagBetween(task(apply).start, task(look).start, -1)
                                    : inOrder(task(apply).end, task(look).start));
        }
    }
    premises.insert(premises.end(), clears.begin(), clears.end());
    for (const Lag& clear : clears)
        add(clear, premises);
}

void OrderNetwork::addGlance(std::size_t look, std::size_t apply)
{
    const Lag begun = inOrder(task(apply).start, task(look).start);
    const Lag underWay = lagBetween(task(apply).end, task(look).start, -1);
    Premises premises{begun, underWay};
    if (task(look).hands) {
        premises.push_back({*task(look).hands, *task(apply).hands, 0});
        premises.push_back({*task(apply).hands, *task(look).hands, 0});
    }
    add(begun, premises);
    add(underWay, premises);
}

void OrderNetwork::addAway(std::size_t place)
{
    if (task(place).state != TaskState::Open)
        return;
    const std::size_t hands = handsOf(place);
    for (const Interval& away : m_draft.question->services.front().crew.hands[hands].away) {
        const Moment from{temporal::origin, static_cast<Time>((away.from - m_draft.zero).count())};
        const Moment until{temporal::origin, static_cast<Time>((away.until - m_draft.zero).count())};
        const Lag before = inOrder(task(place).end, from);
        const Lag clear = holds(before) ? before : inOrder(until, task(place).start);
        Premises premises{clear};
        if (task(place).hands) {
            const std::vector<Lag> those =
                isNumber(*m_draft.numberZero, *task(place).hands, static_cast<Time>(hands));
            premises.insert(premises.end(), those.begin(), those.end());
        }
        add(clear, std::move(premises));
    }
}

/// One lag for each pair that cannot go on at once, but for those that follow from others.
void OrderNetwork::addOrders()
{
    std::vector<std::vector<bool>> follows(m_present.size(), std::vector<bool>(m_present.size(), false));
    for (std::size_t later = 0; later < m_present.size(); ++later) {
        for (std::size_t earlier = later; earlier-- > 0;) {
            if (follows[later][earlier])
                continue;
            std::optional<Premises> premises = apart(m_present[earlier], m_present[later]);
            if (!premises)
                continue;
            const Lag order = inOrder(task(m_present[earlier]).end, task(m_present[later]).start);
            premises->push_back(order);
            add(order, *std::move(premises));
            follows[later][earlier] = true;
            for (std::size_t before = 0; before < earlier; ++before)
                follows[later][before] = follows[later][before] || follows[earlier][before];
        }
    }
}

}  // namespace core::stagger
