#pragma once

#include "core/run/run.h"

namespace core::run {

/// The heat that is on once all of `facts` are known, at most one a head, in the order of the services.
/// `services` and `progress` are what the same facts come to.
std::vector<Heat> heatsOf(const std::vector<service::Service>& services, const stagger::Progress& progress,
                          std::span<const Fact> facts);

/// Those that the program can ask about: when they are to be taken off was said.
void addHeat(const std::vector<Heat>& heats, std::vector<Prompt>& prompts);

}  // namespace core::run
