#include "core/run/prompts.h"

#include "core/run/heat.h"
#include "core/run/waiting.h"
#include "core/run/zone_record.h"

#include <algorithm>
#include <tuple>

namespace core::run {
namespace {

using Asks = Prompt::Asks;

/// A look that was asked for is made together with a planned one that comes no later than this after it.
constexpr Seconds madeTogether{60};

void addRunning(const std::vector<Service>& services, const Planning& planning, std::vector<Prompt>& prompts)
{
    for (const stagger::TaskProgress& task : planning.progress.tasks) {
        if (task.end)
            continue;
        const bool look = task.id.kind == TaskKind::Look;
        const auto* planned = planning.plan ? planning.plan->find(task.id) : nullptr;
        Prompt prompt{.asks = look ? Asks::Look : Asks::Finish, .task = task.id, .due = *task.plannedEnd};
        prompt.hands = planned ? planned->hands : std::nullopt;
        prompt.pressing = task.id.kind == TaskKind::Apply
            ? task.start + zoneOf(services, task.id).apply.slowest
            : prompt.due;
        prompts.push_back(prompt);
    }
}

void addPlanned(PlanHistory& history, Instant now, std::vector<Prompt>& prompts)
{
    const std::vector<Service>& services = history.services();
    const Planning& planning = history.inForce(now);
    const std::vector<stagger::SafeStart> safe = history.safeStarts(now);
    for (const stagger::PlannedTask& task : (*planning.plan)->tasks) {
        const bool open = task.state == stagger::TaskState::Open && !planning.progress.find(task.id);
        if (!open || isPointless(services, planning.progress, task.id))
            continue;
        Prompt prompt{.asks = task.id.kind == TaskKind::Look ? Asks::Look : Asks::Start, .task = task.id};
        prompt.due = history.firstDue(task.id, now);
        prompt.pressing = prompt.due;
        prompt.hands = task.hands;
        prompt.waitsFor = whatItWaitsFor(services, planning.progress, &*planning.plan, task.id);
        if (const auto known = std::ranges::find(safe, task.id, &stagger::SafeStart::task);
            known != safe.end())
            prompt.safe = *known;
        prompts.push_back(prompt);
    }
}

void addLooksByClock(const service::Zone& zone, const TaskId& apply, const ZoneRecord& record,
                     const Progress& progress, std::vector<Prompt>& prompts)
{
    TaskId look = apply;
    look.kind = TaskKind::Look;
    for (const Seconds moment : zone.looks ? zone.looks->moments() : std::vector<Seconds>{}) {
        const Instant due = *record.clockStart + moment;
        if (!progress.find(look) && !progress.isDropped(look))
            prompts.push_back({.asks = Asks::Look, .task = look, .due = due, .hands = {}, .pressing = due});
        ++look.part;
    }
}

void addByClock(const std::vector<Service>& services, const Progress& progress, std::vector<Prompt>& prompts)
{
    for (const TaskId& apply : zonesOf(services)) {
        const service::Zone& zone = zoneOf(services, apply);
        const ZoneRecord record = zoneRecord(services, progress, apply);
        if (!record.clockStart || record.water || record.dropped)
            continue;
        addLooksByClock(zone, apply, record, progress, prompts);
        const TaskId rinse = rinseOf(services, apply);
        const Instant due = *record.clockStart + zone.develop.target - zone.reach;
        const auto asked = std::ranges::find(prompts, rinse, &Prompt::task);
        if (asked != prompts.end())
            asked->due = asked->pressing = std::min(asked->due, due);
        else if (!progress.find(rinse))
            prompts.push_back({.task = rinse, .due = due, .hands = {}, .pressing = due});
    }
}

void addExtra(const std::vector<ExtraLook>& extra, std::vector<Prompt>& prompts)
{
    const std::vector<Prompt> planned = prompts;
    for (const ExtraLook& look : extra) {
        const bool covered = std::ranges::any_of(planned, [&](const Prompt& prompt) {
            return prompt.asks == Asks::Look && applyOf(prompt.task) == applyOf(look.look)
                && prompt.due <= look.due + madeTogether;
        });
        if (!covered)
            prompts.push_back(
                {.asks = Asks::Look, .task = look.look, .due = look.due, .hands = {}, .pressing = look.due});
    }
}

void sortByPressing(std::vector<Prompt>& prompts, Instant now)
{
    const auto key = [&](const Prompt& prompt) {
        const bool later = prompt.waitsFor || prompt.due > now;
        return std::tuple{later, prompt.due, harmOfWaiting(prompt.asks, prompt.task.kind), prompt.task};
    };
    std::ranges::sort(prompts, {}, key);
}

}  // namespace

int harmOfWaiting(Asks asks, TaskKind kind)
{
    switch (kind) {
    case TaskKind::Rinse:
    case TaskKind::RinseAlone: return asks == Asks::Start ? 0 : 1;
    case TaskKind::Look: return 2;
    case TaskKind::Late: return 3;
    case TaskKind::Apply: return asks == Asks::Finish ? 4 : 6;
    case TaskKind::Mix: return asks == Asks::Finish ? 5 : 7;
    case TaskKind::Dry:
    case TaskKind::Assess:
    case TaskKind::Heat: return 8;
    }
    return 8;
}

std::vector<Prompt> promptsAt(PlanHistory& history, const std::vector<ExtraLook>& extra,
                              const std::vector<Heat>& heats, Instant now)
{
    const Planning& planning = history.inForce(now);
    std::vector<Prompt> prompts;
    addRunning(history.services(), planning, prompts);
    if (planning.plan)
        addPlanned(history, now, prompts);
    else
        addByClock(history.services(), planning.progress, prompts);
    addExtra(extra, prompts);
    addHeat(heats, prompts);
    sortByPressing(prompts, now);
    return prompts;
}

}  // namespace core::run
