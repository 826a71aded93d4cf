#include "app/session/moments.h"

#include <algorithm>

namespace app::session {

using core::measure::Instant;

Instant nextMoment(const core::run::State& state, const core::alarm::Manners& manners, Instant limit)
{
    Instant next = limit;
    const auto consider = [&](Instant moment) {
        if (moment > state.now)
            next = std::min(next, moment);
    };
    if (const auto change = core::alarm::nextChange(state, manners, state.now))
        consider(*change);
    for (const core::run::Prompt& prompt : state.prompts)
        consider(prompt.due);
    if (state.plan) {
        for (const core::stagger::PlannedTask& task : state.plan->data().tasks) {
            consider(task.start);
            consider(task.end);
        }
    }
    return next;
}

}  // namespace app::session
