#pragma once

#include "core/run/run.h"

namespace core::run {

/// Every zone as it stands at `now`: what happened, else what `plan` says (which may be absent).
std::vector<Lane> lanesAt(const std::vector<service::Service>& services, const stagger::Progress& progress,
                          const stagger::Plan* plan, Instant now);

/// Fills in what was seen last of each lane's zone.
void nameTones(std::vector<Lane>& lanes, std::span<const Fact> facts);

/// Fills in each lane's next look from the prompts.
void nameNextLooks(std::vector<Lane>& lanes, const std::vector<Prompt>& prompts);

}  // namespace core::run
