#pragma once

#include "core/run/fact.h"

#include <span>
#include <vector>

/// Which facts stand, once everything that was put right is put right.
namespace core::run {

/// For each fact, whether it stands: no standing `Undone` of a later place is
/// about it. An undo that was itself undone therefore does nothing.
std::vector<bool> whichStand(std::span<const Fact> facts);

/// The facts that stand and say what happened, in the order of recording, each
/// with the moment it really happened at; `Undone` and `Moved` are used up.
/// Where a fact was moved several times, the last word counts.
std::vector<Fact> standingFacts(std::span<const Fact> facts);

}  // namespace core::run
