#include "tests/oracle/figures.h"

#include "tests/oracle/report.h"

#include <algorithm>
#include <tuple>

namespace oracle {
namespace {

using core::measure::Harm;
using core::stagger::PlannedZone;
using core::stagger::Preference;
using core::stagger::Worth;

Harm harmOf(const ZoneView& zone)
{
    const Seconds development = zone.development();
    const Seconds under = std::max(Seconds{0}, zone.data->develop.target - development);
    const Seconds over = std::max(Seconds{0}, development - zone.data->develop.target);
    return {zone.data->under.hundredths * under.count() + zone.data->over.hundredths * over.count()};
}

Seconds stalenessOf(const PlanView& view, const ZoneView& zone)
{
    const PlannedTask* mix = mixOf(view, zone);
    return mix == nullptr ? Seconds{0} : zone.apply->start - mix->end;
}

bool startsLate(const PlanView& view, std::size_t head)
{
    // Where nothing says from when on, there is nothing that an early end could be counted from.
    const bool endsEarly = view.question().preference == Preference::EndEarly && view.notBefore(head);
    if (!view.aimedEnd(head) || endsEarly)
        return false;
    return std::ranges::all_of(view.tasksOfHead(head),
                               [](const PlannedTask* task) { return task->state == TaskState::Open; });
}

Seconds wasteOf(const PlanView& view, std::size_t head)
{
    const auto tasks = view.tasksOfHead(head);
    if (tasks.empty())
        return Seconds{0};
    if (startsLate(view, head))
        return *view.aimedEnd(head)
            - (*std::ranges::min_element(tasks, {}, [](const auto* task) { return task->start; }))->start;
    Instant end = Instant::min();
    for (const PlannedTask* task : tasks)
        end = std::max(end, view.fullEnd(*task));
    return end - view.notBefore(head).value_or(end);
}

void checkZoneFigures(const PlanView& view, Report& report)
{
    const std::vector<PlannedZone> expected = zoneFigures(view);
    if (expected.size() != view.plan().zones.size()) {
        report.wrong("figures", "not every zone is there once");
        return;
    }
    for (std::size_t place = 0; place < expected.size(); ++place)
        if (!(expected[place] == view.plan().zones[place]))
            report.wrong("figures", "what zone " + std::to_string(place) + " gets is not what its tasks say");
}

std::string text(const Worth& worth)
{
    return std::to_string(worth.breach.hundredthSeconds) + "/"
        + std::to_string(worth.deviation.hundredthSeconds) + "/" + std::to_string(worth.waste.count()) + "/"
        + std::to_string(worth.staleness.count());
}

/// What has happened may be past any limit. What is open may not, unless somebody allowed it.
void checkBroken(const PlanView& view, Report& report)
{
    for (const core::stagger::BrokenLimit& broken : view.plan().broken) {
        const PlannedTask* task = view.find(broken.task);
        if (broken.already && (task == nullptr || task->state == TaskState::Open))
            report.wrong("worth", "a limit is listed as broken already by what has not happened");
        if (!broken.already && !view.question().mayBreakLimits)
            report.wrong("worth", "a limit is listed as broken, which nobody allowed");
    }
}

void checkWorth(const PlanView& view, Report& report)
{
    const PlanData& plan = view.plan();
    const Worth expected = worthOf(view);
    if (plan.worth != expected)
        report.wrong("worth", text(plan.worth) + " is given, the tasks say " + text(expected));
    if (plan.worth < plan.provedBound || (plan.proved && plan.worth != plan.provedBound))
        report.wrong("worth", "the bound that is proved does not fit the worth");
    checkBroken(view, report);
}

}  // namespace

namespace {

/// What applying may take as far as the give goes, ends rounded outwards; what has begun stands as it is
/// planned.
std::pair<Seconds, Seconds> heldOf(const PlanView& view, const ZoneView& zone)
{
    const Seconds planned = zone.apply->end - zone.apply->start;
    if (zone.apply->state != TaskState::Open)
        return {planned, planned};
    const int share = view.plan().give.value_or(0);
    const auto& apply = zone.data->apply;
    const auto upwards = [share](Seconds room) { return Seconds{(room.count() * share + 99) / 100}; };
    return {apply.usual - upwards(apply.usual - apply.quickest),
            apply.usual + upwards(apply.slowest - apply.usual)};
}

}  // namespace

std::vector<PlannedZone> zoneFigures(const PlanView& view)
{
    std::vector<PlannedZone> zones;
    for (const ZoneView& zone : view.zones()) {
        const auto [quickest, slowest] = heldOf(view, zone);
        zones.push_back({.service = zone.head,
                         .coat = zone.coat,
                         .zone = zone.place,
                         .firstContact = zone.apply->start,
                         .applicationEnd = zone.apply->end,
                         .clockStart = zone.clockStart(),
                         .water = zone.water(),
                         .rinsedAlone = zone.alone,
                         .quickestHeld = quickest,
                         .slowestHeld = slowest});
    }
    return zones;
}

Worth worthOf(const PlanView& view)
{
    Worth worth;
    if (view.question().mayBreakLimits)
        worth.breach = breachOf(view);
    for (const ZoneView& zone : view.zones()) {
        worth.deviation = worth.deviation + harmOf(zone);
        worth.staleness += stalenessOf(view, zone);
    }
    for (std::size_t head = 0; head < view.question().services.size(); ++head)
        worth.waste += wasteOf(view, head);
    return worth;
}

Instant startOf(const PlanView& view)
{
    Instant start = Instant::max();
    for (const PlannedTask& task : view.plan().tasks)
        start = std::min(start, task.start);
    return start;
}

Instant endOf(const PlanView& view)
{
    Instant end = Instant::min();
    for (const PlannedTask& task : view.plan().tasks)
        end = std::max(end, view.fullEnd(task));
    return end;
}

std::vector<Instant> startsInOrder(const Question& question, const PlanData& plan)
{
    const PlanView view{question, plan};
    std::vector<Instant> starts;
    for (std::size_t head = 0; head < question.services.size(); ++head)
        for (const TaskId& id : core::stagger::tasksOf(question.services[head], head)) {
            const PlannedTask* task = view.find(id);
            starts.push_back(task == nullptr ? Instant::max() : task->start);
        }
    return starts;
}

void checkFigures(const PlanView& view, Report& report)
{
    checkZoneFigures(view, report);
    checkWorth(view, report);
    const std::vector<PlannedTask>& tasks = view.plan().tasks;
    const auto later = [](const PlannedTask& a, const PlannedTask& b) {
        return std::tie(a.start, a.id) < std::tie(b.start, b.id);
    };
    if (!std::ranges::is_sorted(tasks, later))
        report.wrong("figures", "the tasks are not in the order of their starts and ids");
    if (!tasks.empty() && (view.plan().start != startOf(view) || view.plan().end != endOf(view)))
        report.wrong("figures", "start or end of the plan is not that of its tasks");
}

}  // namespace oracle
