#include "core/stagger/coat_by_coat.h"

#include "core/stagger/plan_builder.h"

#include <algorithm>

namespace core::stagger {
namespace {

bool tiedToTheClock(const service::Coat& coat)
{
    return coat.gapMost || coat.namesTimes();
}

/// Whether a coat can be moved in time as a whole without anything changing.
bool hangTogetherByOrderAlone(const Question& question)
{
    if (question.services.size() != 1 || question.services.front().coats.size() < 2)
        return false;
    const service::Service& service = question.services.front();
    return std::ranges::none_of(service.coats, tiedToTheClock)
        && std::ranges::all_of(service.crew.hands,
                               [](const service::Hands& hands) { return hands.away.empty(); });
}

}  // namespace

Pins pinsOf(const Plan& plan)
{
    Pins pins;
    for (const PlannedTask& task : plan->tasks) {
        if (task.state == TaskState::Open)
            pins.starts[task.id] = task.start;
    }
    return pins;
}

std::optional<Plan> settled(const Question& question, Pins pins, const temporal::Limits& limits, int give)
{
    pins.coats = SIZE_MAX;
    pins.keepPoints = give > 0;  // Where the coats together have the give that each has alone.
    Draft draft = draftOf(question, Strictness::Keep, {}, pins, give);
    const temporal::Outcome outcome = solve(draft, limits);
    if (!outcome.best || !outcome.complete)
        return std::nullopt;
    Plan plan = PlanBuilder::build(draft, outcome);
    if (std::ranges::any_of(plan->broken, [](const BrokenLimit& limit) { return !limit.already; }))
        return std::nullopt;
    return plan;
}

CoatByCoat planCoatByCoat(const Question& question, const temporal::Limits& limits, int give)
{
    if (!hangTogetherByOrderAlone(question))
        return {};
    // Each coat ends as early as it can; a promise is looked at when all are known.
    Question forward = question;
    service::Service& service = forward.services.front();
    const bool startsLate =
        service.readyBy && question.progress.empty() && question.preference != Preference::EndEarly;
    forward.preference = Preference::EndEarly;
    service.readyBy.reset();
    if (startsLate && !forward.now && !service.notBefore)
        service.notBefore = *question.services.front().readyBy;
    Pins pins;
    std::optional<Plan> plan;
    temporal::Limits rest = limits;
    for (pins.coats = 1; pins.coats <= service.coats.size(); ++pins.coats) {
        Draft draft = draftOf(forward, Strictness::Keep, {}, pins, give);
        if (draft.impossible)
            return {};
        const temporal::Outcome outcome = solve(draft, rest);
        if (!outcome.best || !outcome.complete)
            return {.plan = {}, .nothingFits = outcome.complete};
        rest.conflicts -= std::min(rest.conflicts, outcome.conflicts);
        plan = PlanBuilder::build(draft, outcome);
        pins.starts = pinsOf(*plan).starts;
    }
    if (startsLate) {
        const service::Service& asked = question.services.front();
        const Seconds shift = (*asked.readyBy - asked.buffer) - (*plan)->end;
        const Instant start = (*plan)->start + shift;
        if ((question.now && start < *question.now) || (asked.notBefore && start < *asked.notBefore))
            return {};
        for (auto& [id, instant] : pins.starts)
            instant += shift;
    } else if (const service::Service& asked = question.services.front();
               asked.readyBy && (*plan)->end > *asked.readyBy - asked.buffer) {
        return {};
    }
    return {.plan = settled(question, pins, limits, give)};
}

}  // namespace core::stagger
