#pragma once

#include "core/stagger/plan.h"

#include <vector>

/// What has happened, as the rules take it (docs/method.md, "While it runs").
namespace oracle {

/// Of a zone, as far as lengths go: what applying took where it is over, what it can still come to where it
/// goes on, and what the service says where it has not begun.
core::service::Application applyingOf(const core::stagger::Question& question,
                                      const core::stagger::TaskId& apply);

/// When a task that has started is over, or is taken to be.
core::measure::Instant endOfFact(const core::stagger::Question& question,
                                 const core::stagger::TaskProgress& fact);

/// How long a task takes hands, usually; of one that has started, from its start to that end.
core::measure::Seconds lengthOf(const core::stagger::Question& question, const core::stagger::TaskId& id);

/// Whether a task has happened or has still to be thought of: it was not dropped, and it can still be done.
/// Looks are that may not fall due.
bool stands(const core::stagger::Question& question, const core::stagger::TaskId& id);

/// Every task of a head that stands, in the order of ids.
std::vector<core::stagger::TaskId> tasksThatStand(const core::stagger::Question& question, std::size_t head);

/// Whether an application that is not over may take longer or shorter than usual.
bool isUncertain(const core::stagger::Question& question);

/// With its group, or alone.
bool isRinse(const core::stagger::TaskId& id);

/// The rinse that decides when water reaches a zone.
core::stagger::TaskId rinseOf(const core::stagger::Question& question, const core::stagger::TaskId& apply);

}  // namespace oracle
