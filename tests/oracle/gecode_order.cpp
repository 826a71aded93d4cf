#include "tests/oracle/facts.h"
#include "tests/oracle/figures.h"
#include "tests/oracle/gecode_space.h"

#include <cassert>

// What an order is made of (order.h) as constraints, for services whose lengths are uncertain.

namespace oracle {

using namespace Gecode;

// Rinses at a basin of their own, where there are fewer basins than rinses.
void GecodeSpace::postBasinNumbers()
{
    std::vector<int> rinses;
    for (int place = 0; place < count(); ++place)
        if (isRinse(row(place).id) && row(place).state != core::stagger::TaskState::Done)
            rinses.push_back(place);
    const int basins = static_cast<int>(m_rows->crew().basins);
    if (basins == 1 || static_cast<int>(rinses.size()) <= basins)
        return;
    m_basins = IntVarArray{*this, count(), 0, basins - 1};
    for (int place = 0; place < count(); ++place)
        if (std::ranges::find(rinses, place) == rinses.end())
            rel(*this, m_basins[place], IRT_EQ, 0);
    IntVarArgs numbers;
    for (const int a : rinses) {
        numbers << m_basins[a];
        for (const int b : rinses)
            if (a < b && anyOpen(a, b))
                rel(*this, before(a, b) || before(b, a) || (m_basins[a] != m_basins[b]));
    }
    precede(*this, numbers, IntArgs::create(basins, 0));
}

void GecodeSpace::postGaps()
{
    const auto gaps = m_rows->gaps();
    m_gapEnds = IntVarArray{*this, 2 * static_cast<int>(gaps.size()), 0, count() - 1};
    for (std::size_t gap = 0; gap < gaps.size(); ++gap) {
        const auto [head, coat] = gaps[gap];
        const core::service::Coat& data = m_rows->question().services[head].coats[coat];
        std::vector<int> ends = rowsOf(head, coat, TaskKind::Assess);
        if (ends.empty())
            ends = rowsOf(head, coat, TaskKind::Dry);
        if (ends.empty())
            for (const TaskKind kind : {TaskKind::Rinse, TaskKind::RinseAlone})
                std::ranges::copy(rowsOf(head, coat, kind), std::back_inserter(ends));
        const std::vector<int> starts = rowsOf(head, coat + 1, TaskKind::Apply);
        const int place = 2 * static_cast<int>(gap);
        dom(*this, m_gapEnds[place], IntSet{IntArgs{ends}});
        dom(*this, m_gapEnds[place + 1], IntSet{IntArgs{starts}});
        for (const int last : ends)
            for (const int first : starts) {
                const bool dries = row(last).id.kind == TaskKind::Dry;
                const Units unattended = dries ? m_rows->units(data.dryUnattended) : 0;
                rel(*this,
                    (m_gapEnds[place] == last && m_gapEnds[place + 1] == first)
                        >> (m_start[first] - end(last) - unattended <= m_rows->units(*data.gapMost)));
            }
    }
}

Order GecodeSpace::gaps() const
{
    Order order;
    for (int place = 0; place < m_gapEnds.size(); place += 2)
        order.push_back({.kind = Choice::Kind::WithinGap,
                         .first = row(m_gapEnds[place].val()).id,
                         .second = row(m_gapEnds[place + 1].val()).id});
    return order;
}

PlanData GecodeSpace::plan() const
{
    PlanData plan;
    std::size_t rinses = 0;
    for (int place = 0; place < count(); ++place) {
        PlannedTask task{
            .id = row(place).id, .start = {}, .end = {}, .hands = {}, .basin = {}, .madeWhile = {}};
        if (!isDone(place)) {
            plan.looksNotDue.push_back(task.id);
            continue;
        }
        task.state = row(place).state;
        task.start = m_rows->instantAt(start(place));
        task.end = m_rows->instantAt(start(place) + row(place).length);
        if (takesHands(place))
            task.hands = static_cast<std::size_t>(m_hands[place].val());
        if (isRinse(task.id) && task.state != core::stagger::TaskState::Done)
            task.basin = m_basins.size() > 0 ? static_cast<std::size_t>(m_basins[place].val())
                                             : rinses++ % m_rows->crew().basins;
        for (int apply = 0; isLook(place) && takesHands(place) && apply < count(); ++apply)
            if (takesHands(apply) && row(apply).id.kind == TaskKind::Apply
                && row(apply).id.service == task.id.service && start(apply) <= start(place)
                && start(place) < start(apply) + row(apply).length
                && m_hands[apply].val() == m_hands[place].val())
                task.madeWhile = row(apply).id;
        plan.tasks.push_back(task);
    }
    std::ranges::sort(plan.tasks, [](const PlannedTask& a, const PlannedTask& b) {
        return std::tie(a.start, a.id) < std::tie(b.start, b.id);
    });
    const PlanView view{m_rows->question(), plan};
    plan.worth = worthOf(view);
    return plan;
}

BoolVar GecodeSpace::byOneHands(int a, int b)
{
    if (!takesHands(a) || !takesHands(b))
        return BoolVar{*this, 0, 0};
    return sameHands(std::min(a, b), std::max(a, b));
}

bool GecodeSpace::excludedByHead(int a, int b) const
{
    const TaskId& first = row(a).id;
    const TaskId& second = row(b).id;
    return first.service == second.service && first.coat == second.coat && (isRinse(first) || isRinse(second))
        && first.kind != TaskKind::Mix && second.kind != TaskKind::Mix
        && !m_rows->question().services[first.service].head.piecesComeApart;
}

BoolVar GecodeSpace::hasBefore(int first, int second)
{
    const BoolVar inTurn = expr(*this, m_done[first] && m_done[second] && before(first, second));
    if (excludedByHead(first, second))
        return inTurn;
    const bool rinses = isRinse(row(first).id) && isRinse(row(second).id);
    if (rinses && m_rows->crew().basins == 1)
        return inTurn;
    BoolVar bound = byOneHands(first, second);
    if (rinses && m_basins.size() > 0)
        bound = expr(*this, bound || (m_basins[first] == m_basins[second]));
    if (row(first).id.kind == TaskKind::Apply && row(second).id.kind == TaskKind::Look
        && row(first).id.service == row(second).id.service && row(first).id.coat == row(second).id.coat)
        bound = expr(*this, bound || !m_posting->glances.at(second));  // Only where the look is open.
    return expr(*this, inTurn && bound);
}

BoolVar GecodeSpace::has(const Choice& choice)
{
    const int first = m_rows->find(choice.first);
    const int second = m_rows->find(choice.second);
    switch (choice.kind) {
    case Choice::Kind::Before: return hasBefore(first, second);
    case Choice::Kind::Clear:
        return expr(
            *this, m_done[first] && !m_posting->glances.at(first) && !m_posting->started.at({first, second}));
    case Choice::Kind::Within: return m_posting->madeWhile.at({first, second});
    case Choice::Kind::Due: return m_done[first];
    case Choice::Kind::NotDue: return expr(*this, !m_done[first]);
    case Choice::Kind::Leave:
        return expr(*this,
                    m_done[first] && (m_hands[first] == static_cast<int>(choice.hands))
                        && (end(first) <= m_rows->unitsAt(choice.moment)));
    case Choice::Kind::Back:
        return expr(*this,
                    m_done[first] && (m_hands[first] == static_cast<int>(choice.hands))
                        && (m_start[first] >= m_rows->unitsAt(choice.moment)));
    case Choice::Kind::WithinGap: break;
    }
    BoolVar has{*this, 0, 0};
    for (int place = 0; place < m_gapEnds.size(); place += 2)
        has = expr(*this, has || (m_gapEnds[place] == first && m_gapEnds[place + 1] == second));
    return has;
}

BoolVar GecodeSpace::hasAll(const Order& order)
{
    BoolVarArgs all;
    for (const Choice& choice : order)
        all << has(choice);
    const BoolVar together{*this, 0, 1};
    if (order.empty())
        rel(*this, together, IRT_EQ, 1);
    else
        rel(*this, BOT_AND, all, together);
    return together;
}

void GecodeSpace::ruleOut(const Order& order)
{
    rel(*this, hasAll(order), IRT_EQ, 0);
}

LinIntExpr GecodeSpace::at(const Points& points, core::temporal::Point point) const
{
    if (point == 0)
        return LinIntExpr{m_rows->unitsAt(points.origin())};
    for (int place = 0; place < count(); ++place) {
        if (points.start(row(place).id) == point)
            return LinIntExpr{m_start[place]};
        if (row(place).id.kind == TaskKind::Apply && points.start(row(place).id) + 1 == point)
            return end(place);
    }
    assert(false);
    return LinIntExpr{0};
}

void GecodeSpace::demand(const Order& order, const Points& points, const core::temporal::Lag& lag)
{
    rel(*this, hasAll(order) >> (at(points, lag.to) - at(points, lag.from) <= lag.most));
}

}  // namespace oracle
