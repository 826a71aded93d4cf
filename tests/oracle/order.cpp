#include "tests/oracle/order.h"

#include "tests/core/temporal/naive_closure.h"
#include "tests/oracle/facts.h"
#include "tests/oracle/report.h"

#include <algorithm>

namespace oracle {
namespace {

using Kind = Choice::Kind;

bool isOpen(const PlannedTask& task)
{
    return task.state == TaskState::Open;
}

bool isLook(const TaskId& id)
{
    return id.kind == TaskKind::Look;
}

bool inOneCoat(const TaskId& a, const TaskId& b)
{
    return a.service == b.service && a.coat == b.coat;
}

class OrderReader {
public:
    explicit OrderReader(const PlanView& view)
        : m_view{view}
    {
    }

    Order read()
    {
        for (const PlannedTask& task : m_view.plan().tasks) {
            if (isOpen(task) && isLook(task.id))
                readLook(task);
            else if (task.madeWhile && isOpen(*m_view.find(*task.madeWhile)))
                m_order.push_back({.kind = Kind::Within, .first = task.id, .second = *task.madeWhile});
            if (isOpen(task))
                readAway(task);
            for (const PlannedTask& other : m_view.plan().tasks)
                if (task.state != TaskState::Done && isOpen(other) && task.end <= other.start
                    && excludeEachOther(task, other))
                    m_order.push_back({.kind = Kind::Before, .first = task.id, .second = other.id});
        }
        for (const TaskId& id : m_view.plan().looksNotDue)
            readNotDue(id);
        return std::move(m_order);
    }

private:
    /// Rules 6 and 7.
    [[nodiscard]] bool excludeEachOther(const PlannedTask& a, const PlannedTask& b) const
    {
        const bool atBasin = isRinse(a.id) || isRinse(b.id);
        const bool mixing = a.id.kind == TaskKind::Mix || b.id.kind == TaskKind::Mix;
        if (inOneCoat(a.id, b.id) && atBasin && !mixing && !m_view.head(a.id.service).head.piecesComeApart)
            return true;
        if (isRinse(a.id) && isRinse(b.id) && a.basin == b.basin && basinsAreShort())
            return true;
        const bool looksOnOneHead = isLook(a.id) && isLook(b.id) && a.id.service == b.id.service;
        return a.hands && a.hands == b.hands && !looksOnOneHead;
    }

    /// Otherwise every rinse has a basin of its own, whatever its number.
    [[nodiscard]] bool basinsAreShort() const
    {
        const auto& tasks = m_view.plan().tasks;
        const auto rinses = std::ranges::count_if(
            tasks, [](const PlannedTask& task) { return isRinse(task.id) && task.state != TaskState::Done; });
        return static_cast<std::size_t>(rinses) > m_view.crew().basins;
    }

    void readLook(const PlannedTask& look)
    {
        m_order.push_back({.kind = Kind::Due, .first = look.id, .second = {}});
        if (look.madeWhile) {
            m_order.push_back({.kind = Kind::Within, .first = look.id, .second = *look.madeWhile});
            return;
        }
        // Nobody applies on the head: it stays so, or the look would become a glance.
        for (const PlannedTask* other : m_view.tasksOfCoat(look.id.service, look.id.coat)) {
            if (other->id.kind != TaskKind::Apply || other->state == TaskState::Done)
                continue;
            const bool sooner = look.start < other->start;
            m_order.push_back({.kind = sooner ? Kind::Clear : Kind::Before,
                               .first = sooner ? look.id : other->id,
                               .second = sooner ? other->id : look.id});
        }
    }

    /// A look that would come while the zone is still being applied is left out however long that takes.
    void readNotDue(const TaskId& id)
    {
        const service::Zone& zone = m_view.head(id.service).coats[id.coat].zones[id.item];
        const Seconds moment = zone.looks->moments()[id.part];
        const Seconds applying =
            lengthOf(m_view.question(), {.service = id.service, .coat = id.coat, .item = id.item});
        const bool first = zone.clock == service::ClockStart::FirstContact;
        if (!first || moment + zone.looks->tolerance >= applying)
            m_order.push_back({.kind = Kind::NotDue, .first = id, .second = {}});
    }

    void readAway(const PlannedTask& task)
    {
        if (!task.hands)
            return;
        for (const core::measure::Interval& away : m_view.crew().hands[*task.hands].away) {
            const bool leaves = task.end <= away.from;
            m_order.push_back({.kind = leaves ? Kind::Leave : Kind::Back,
                               .first = task.id,
                               .second = {},
                               .hands = *task.hands,
                               .moment = leaves ? away.from : away.until});
        }
    }

    const PlanView& m_view;
    Order m_order;
};

/// Whether a coat is over with this task, or with the last of several like it.
bool endsCoat(const PlanView& view, const TaskId& id)
{
    const service::Coat& coat = view.head(id.service).coats[id.coat];
    const bool dries = coat.dryHands + coat.dryUnattended > Seconds{0};
    switch (id.kind) {
    case TaskKind::Assess: return true;
    case TaskKind::Dry: return coat.assess == Seconds{0};
    case TaskKind::Rinse:
    case TaskKind::RinseAlone: return coat.assess == Seconds{0} && !dries;
    default: return false;
    }
}

/// Those that the plan keeps.
Order waysWithin(const PlanView& view, std::size_t head, std::size_t coat, Seconds most)
{
    Order ways;
    for (const PlannedTask* last : view.tasksOfCoat(head, coat))
        for (const PlannedTask* first : view.tasksOfCoat(head, coat + 1))
            if (first->id.kind == TaskKind::Apply && endsCoat(view, last->id)
                && first->start - view.fullEnd(*last) <= most)
                ways.push_back({.kind = Kind::WithinGap, .first = last->id, .second = first->id});
    return ways;
}

/// With one way for each gap from `place` on in turn, after what `order` holds.
bool holdsWithGaps(const PlanView& view, const Points& points, int share, Order order,
                   const std::vector<Order>& gaps, std::size_t place = 0)
{
    if (place == gaps.size()) {
        const core::temporal::UncertainNetwork network = networkOf(points, order, share);
        return core::temporal::NaiveClosure{network}.isKeptBy(points.timesOf(view));
    }
    return std::ranges::any_of(gaps[place], [&](const Choice& way) {
        Order longer = order;
        longer.push_back(way);
        return holdsWithGaps(view, points, share, std::move(longer), gaps, place + 1);
    });
}

}  // namespace

Order orderOf(const PlanView& view)
{
    return OrderReader{view}.read();
}

std::vector<Order> gapsOf(const PlanView& view)
{
    std::vector<Order> gaps;
    for (std::size_t head = 0; head < view.question().services.size(); ++head)
        for (std::size_t coat = 0; coat + 1 < view.head(head).coats.size(); ++coat)
            if (const auto& most = view.head(head).coats[coat].gapMost;
                most && !Points{view.question()}.isBegun(head, coat + 1))
                gaps.push_back(waysWithin(view, head, coat, *most));
    return gaps;
}

Points::Points(const Question& question)
    : m_question{question}
{
    for (std::size_t head = 0; head < question.services.size(); ++head)
        for (const TaskId& id : tasksThatStand(question, head)) {
            m_tasks.push_back(id);
            m_starts[id] = m_count;
            m_count += id.kind == TaskKind::Apply ? 2 : 1;
        }
}

Seconds Points::length(const TaskId& id) const
{
    return lengthOf(m_question, id);
}

bool Points::isBegun(std::size_t head, std::size_t coat) const
{
    return std::ranges::any_of(m_question.progress.tasks, [&](const core::stagger::TaskProgress& fact) {
        return fact.id.service == head && fact.id.coat == coat && fact.id.kind == TaskKind::Apply;
    });
}

void checkGive(const PlanView& view, Report& report)
{
    constexpr std::size_t mostTasks = 60;  // All reductions on all pairs take long with more.
    const PlanData& plan = view.plan();
    const bool isSmall = plan.tasks.size() + plan.looksNotDue.size() <= mostTasks;
    if (!plan.give || !isSmall)
        return;
    if (!holdsFor(view, *plan.give))
        report.wrong("guarantee",
                     "the plan does not hold with a give of " + std::to_string(*plan.give) + " %");
}

bool holdsFor(const PlanView& view, int share)
{
    const Points points{view.question()};
    return holdsWithGaps(view, points, share, orderOf(view), gapsOf(view));
}

}  // namespace oracle
