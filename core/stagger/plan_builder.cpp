#include "core/stagger/plan_builder.h"

#include <algorithm>

namespace core::stagger {
namespace {

/// A price taken apart into the levels it was put together from.
struct Levels {
    Price breach = 0;
    Price deviation = 0;
    Price waste = 0;
    Price staleness = 0;
};

Levels levelsOf(Price price, const Scale& scale)
{
    Levels levels;
    const auto take = [&price](Price unit) {
        if (unit == 0)
            return Price{0};
        const Price count = price / unit;
        price %= unit;
        return count;
    };
    levels.breach = take(scale.breach);
    levels.deviation = take(scale.deviation);
    levels.waste = take(scale.waste);
    levels.staleness = take(scale.staleness);
    return levels;
}

Worth lessBy(const Worth& worth, const Levels& at, const Levels& bound)
{
    const auto less = [](std::int64_t value, Price here, Price there) {
        return value - static_cast<std::int64_t>(here - there);
    };
    return {{less(worth.breach.hundredthSeconds, at.breach, bound.breach)},
            {less(worth.deviation.hundredthSeconds, at.deviation, bound.deviation)},
            Seconds{less(worth.waste.count(), at.waste, bound.waste)},
            Seconds{less(worth.staleness.count(), at.staleness, bound.staleness)}};
}

}  // namespace

void PlanBuilder::addTasks()
{
    const Assignment assignment = assignCrew(m_draft, m_times);
    for (std::size_t place = 0; place < m_draft.busy.size(); ++place) {
        const Busy& busy = m_draft.busy[place];
        if (busy.elsewhere)
            continue;
        if (busy.due && !temporal::holds(*busy.due, m_times)) {
            m_data.looksNotDue.push_back(busy.id);
            continue;
        }
        PlannedTask task{.id = busy.id,
                         .start = at(busy.start),
                         .end = at(busy.end),
                         .state = busy.state,
                         .hands = assignment.hands[place],
                         .basin = assignment.basins[place],
                         .madeWhile = {}};
        if (assignment.madeWhile[place])
            task.madeWhile = m_draft.busy[*assignment.madeWhile[place]].id;
        m_data.tasks.push_back(task);
    }
    for (const auto& [id, start] : m_draft.drying) {
        const bool handsOn = m_draft.question->services[id.service].coats[id.coat].dryHands > Seconds{0};
        if (!handsOn)
            m_data.tasks.push_back({.id = id,
                                    .start = at(start),
                                    .end = at(start),
                                    .state = TaskState::Open,
                                    .hands = {},
                                    .basin = {},
                                    .madeWhile = {}});
    }
    const auto& notDue = m_draft.looksNotDue;
    m_data.looksNotDue.insert(m_data.looksNotDue.end(), notDue.begin(), notDue.end());
    std::ranges::sort(m_data.looksNotDue);
}

/// What is done stands in the plan too; what runs is there already if it takes hands.
void PlanBuilder::addPast()
{
    for (const TaskProgress& progress : m_draft.question->progress.tasks) {
        if (std::ranges::find(m_data.tasks, progress.id, &PlannedTask::id) != m_data.tasks.end())
            continue;
        m_data.tasks.push_back({.id = progress.id,
                                .start = progress.start,
                                .end = progress.end.value_or(progress.start),
                                .state = progress.end ? TaskState::Done : TaskState::Running,
                                .hands = {},
                                .basin = {},
                                .madeWhile = {}});
    }
    std::ranges::sort(m_data.tasks, [](const PlannedTask& a, const PlannedTask& b) {
        return a.start != b.start ? a.start < b.start : a.id < b.id;
    });
}

void PlanBuilder::addZones()
{
    for (const DraftedZone& zone : m_draft.zones) {
        if (!zone.water)
            continue;
        const service::Zone& asked =
            m_draft.question->services[zone.apply.service].coats[zone.apply.coat].zones[zone.apply.item];
        const Seconds planned{time(zone.applicationEnd) - time(zone.contact)};
        const service::Application held =
            zone.begun ? service::Application{planned, planned, planned} : covered(asked.apply, m_draft.give);
        m_data.zones.push_back({.service = zone.apply.service,
                                .coat = zone.apply.coat,
                                .zone = zone.apply.item,
                                .firstContact = at(zone.contact),
                                .applicationEnd = at(zone.applicationEnd),
                                .clockStart = at(zone.clockStart),
                                .water = at(*zone.water),
                                .rinsedAlone = zone.rinsedAlone,
                                .quickestHeld = held.quickest,
                                .slowestHeld = held.slowest});
    }
}

/// The task that a promise is broken by: the last of the service that is over at `end`.
TaskId PlanBuilder::endingAt(std::size_t service, Instant end) const
{
    TaskId last{.service = service};
    std::optional<Instant> latest;
    for (const PlannedTask& task : m_data.tasks) {
        if (task.id.service != service || task.end > end || (latest && task.end < *latest))
            continue;
        last = task.id;
        latest = task.end;
    }
    return last;
}

/// The task at which a limit is broken: the one it belongs to, the last before a broken promise, the
/// application that ends past the pot life, the first one of a coat that comes too early or too late.
TaskId PlanBuilder::breakingTask(const BreakableLag& limit) const
{
    const DraftedDemand& demand = m_draft.demands[limit.demand];
    if (!demand.task)
        return endingAt(demand.place, at(limit.later));
    if (demand.kind == DemandKind::PotLife && demand.task->kind == TaskKind::Apply) {
        const auto late = std::ranges::find_if(m_draft.zones, [&](const DraftedZone& zone) {
            return zone.apply.service == demand.task->service && zone.apply.coat == demand.task->coat
                && zone.applicationEnd.point == limit.later.point
                && zone.applicationEnd.offset == limit.later.offset;
        });
        return late != m_draft.zones.end() ? late->apply : *demand.task;
    }
    if (demand.kind != DemandKind::CoatGapLeast && demand.kind != DemandKind::CoatGapMost)
        return *demand.task;
    const auto first = std::ranges::find_if(m_data.tasks, [&](const PlannedTask& task) {
        return task.id.kind == TaskKind::Apply && task.id.service == demand.task->service
            && task.id.coat == demand.task->coat;
    });
    return first != m_data.tasks.end() ? first->id : *demand.task;
}

void PlanBuilder::addBroken()
{
    const auto add = [this](const BreakableLag& limit, bool already) {
        const Time by = time(limit.later) - time(limit.earlier) - limit.most;
        if (by <= 0)
            return;
        const DraftedDemand& demand = m_draft.demands[limit.demand];
        m_data.broken.push_back({breakingTask(limit), demand.what, Seconds{by}, already});
    };
    for (const BreakableLag& limit : m_draft.breakable)
        add(limit, false);
    for (const BreakableLag& limit : m_draft.settled)
        add(limit, true);
}

void PlanBuilder::addEnds()
{
    if (m_data.tasks.empty())
        return;
    m_data.start = m_data.tasks.front().start;
    m_data.end = m_data.start;
    for (const PlannedTask& task : m_data.tasks)
        m_data.end = std::max(m_data.end, task.end);
    for (const auto& [service, tail] : m_draft.tails)
        m_data.end = std::max(m_data.end, at(tail));
}

/// Of its bowl when application starts, if anybody mixes it or was seen to.
Seconds PlanBuilder::stalenessOf(const DraftedZone& zone) const
{
    TaskId mix = zone.apply;
    mix.kind = TaskKind::Mix;
    mix.item = m_draft.question->services[mix.service].coats[mix.coat].zones[zone.apply.item].bowl;
    const auto mixed = std::ranges::find(m_data.tasks, mix, &PlannedTask::id);
    return mixed == m_data.tasks.end() ? Seconds{0} : at(zone.contact) - mixed->end;
}

Worth PlanBuilder::worthOf() const
{
    Worth worth;
    for (const BreakableLag& limit : m_draft.breakable) {
        const Time by = time(limit.later) - time(limit.earlier) - limit.most;
        worth.breach.hundredthSeconds += m_draft.demands[limit.demand].breachRate * std::max(by, 0);
    }
    for (const PlannedZone& zone : m_data.zones) {
        const service::Zone& asked =
            m_draft.question->services[zone.service].coats[zone.coat].zones[zone.zone];
        worth.deviation = worth.deviation + asked.harmOf(zone.development());
    }
    for (std::size_t service = 0; service < m_draft.startsLate.size(); ++service) {
        std::optional<Time> edge;
        const bool late = m_draft.startsLate[service];
        for (const PlannedTask& task : m_data.tasks) {
            const auto start = static_cast<Time>((task.start - m_draft.zero).count());
            if (late && task.id.service == service)
                edge = std::min(edge.value_or(start), start);
        }
        for (const auto& [of, tail] : m_draft.tails) {
            if (!late && of == service)
                edge = std::max(edge.value_or(time(tail)), time(tail));
        }
        const Time from = m_draft.wasteFrom[service];
        if (edge)
            worth.waste += Seconds{late ? from - *edge : *edge - from};
    }
    for (const DraftedZone& zone : m_draft.zones)
        worth.staleness += stalenessOf(zone);
    return worth;
}

void PlanBuilder::addWorth(const temporal::Outcome& outcome)
{
    m_data.worth = worthOf();
    m_data.proved = outcome.complete;
    m_data.provedBound = m_data.worth;
    if (!outcome.complete)
        m_data.provedBound = lessBy(m_data.worth, levelsOf(outcome.best->price, m_draft.scale),
                                    levelsOf(outcome.bound, m_draft.scale));
}

Plan PlanBuilder::join(const Draft& draft, const temporal::Outcome& outcome, Joined parts)
{
    Plan plan = build(draft, outcome);
    plan.m_data.worth = parts.worth;
    plan.m_data.proved = parts.worth == parts.bound;
    plan.m_data.provedBound = parts.bound;
    plan.m_data.broken = std::move(parts.broken);
    return plan;
}

Plan PlanBuilder::withGive(Plan plan, int give, bool proved)
{
    plan.m_data.give = 10 * give;
    plan.m_data.giveProved = proved;
    return plan;
}

Plan PlanBuilder::withOwnGive(const Question& question, Plan plan, int give, bool proved)
{
    for (PlannedZone& zone : plan.m_data.zones) {
        const PlannedTask* apply = plan.find({.service = zone.service, .coat = zone.coat, .item = zone.zone});
        if (apply == nullptr || apply->state != TaskState::Open)
            continue;
        const service::Application held =
            covered(question.services[zone.service].coats[zone.coat].zones[zone.zone].apply, give);
        zone.quickestHeld = held.quickest;
        zone.slowestHeld = held.slowest;
    }
    return withGive(std::move(plan), give, proved);
}

Plan PlanBuilder::withCrewOf(const Plan& other, Plan plan)
{
    for (PlannedTask& task : plan.m_data.tasks) {
        const PlannedTask* same = other.find(task.id);
        if (same == nullptr)
            continue;
        task.hands = same->hands;
        task.basin = same->basin;
        task.madeWhile = same->madeWhile;
    }
    return plan;
}

Plan PlanBuilder::withBound(Plan plan, const Worth& bound)
{
    plan.m_data.provedBound = std::min(bound, plan.m_data.worth);
    plan.m_data.proved = plan.m_data.worth == plan.m_data.provedBound;
    return plan;
}

Plan PlanBuilder::build(const Draft& draft, const temporal::Outcome& outcome)
{
    PlanBuilder builder{draft, outcome.best->times};
    builder.addTasks();
    builder.addPast();
    builder.addZones();
    builder.addBroken();
    builder.addEnds();
    builder.addWorth(outcome);
    return Plan{std::move(builder.m_data)};
}

}  // namespace core::stagger
