#pragma once

#include "core/stagger/plan.h"

#include <map>

namespace core::run {

/// When each open look of `plan` is asked for. Looks on one head that the same hands make are put
/// together, so that somebody is called once for several of them. Each may only be put off from its planned
/// start: not past its tolerance (less a quarter of a minute, so that a prompt answer still keeps it), and
/// not into the water of its zone or into something else that the hands are planned for. Calls come as
/// little as may be within five minutes of each other, for which one may wait until the first of its looks
/// is at its moment; then there are as few as may be; then as little as may be is put off.
/// Those of `called` were asked for at the moments that stand there: they stay so, and nothing is put
/// together with them any more. `plan` must be one of `services`.
std::map<stagger::TaskId, measure::Instant>
looksTogether(const std::vector<service::Service>& services, const stagger::Plan& plan,
              const std::map<stagger::TaskId, measure::Instant>& called);

}  // namespace core::run
