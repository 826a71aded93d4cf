#pragma once

#include "core/stagger/plan.h"

#include <cstdint>

namespace oracle {

/// `question` at a moment when a part of `plan`, one of its plans, has been done, drawn with `seed`: somewhat
/// later than planned, applications taking as long as they may, or now and then longer; some things going on;
/// looks passed over, jobs left out, a zone given up or rinsed alone, a bowl nobody saw being mixed. Limits
/// may have been passed, but nothing was done before what it needs. About half can still be planned.
core::stagger::Question underWay(const core::stagger::Question& question, const core::stagger::PlanData& plan,
                                 std::uint64_t seed);

}  // namespace oracle
