#pragma once

#include "core/run/run.h"
#include "core/service/service.h"
#include "core/stagger/plan.h"

#include <vector>

/// A root and ends that are rinsed together, with moments that can be told by heart.
///
///   minutes      0    5   10   15   20   25   30   35
///   Root         [--- on ---][===== develops =====|
///   Ends                  [on][=== develops ======|    look at 20
///   water                                         30 to 35
namespace samples {

using core::measure::Instant;
using core::measure::Seconds;

constexpr Instant at(int minutes)
{
    return Instant{Seconds{1'800'000'000 + minutes * 60}};
}
constexpr Seconds minutes(int count)
{
    return Seconds{count * 60};
}

core::service::Service service();
std::vector<core::stagger::PlannedTask> tasks();
core::stagger::PlanData plan();

/// Both lanes develop and it is `now`; no plan, so a view of it needs none.
core::run::State developing(Instant now);

constexpr core::stagger::TaskId applyRoot{.item = 0};
constexpr core::stagger::TaskId applyEnds{.item = 1};
constexpr core::stagger::TaskId lookAtEnds{.kind = core::stagger::TaskKind::Look, .item = 1};
constexpr core::stagger::TaskId rinse{.kind = core::stagger::TaskKind::Rinse};

}  // namespace samples
