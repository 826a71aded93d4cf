#pragma once

#include "core/run/fact.h"

#include <optional>
#include <span>
#include <vector>

/// Which facts came of one answer: what somebody said at once is put right at once.
namespace core::run {

/// A place in the list of facts.
using Place = std::size_t;

/// Whether it puts another right by taking it back or moving it.
bool isCorrection(const Fact& fact);

/// Whether it stands instead of another, which was about the wrong zone.
bool isInstead(const Fact& fact);

std::optional<Place> placeOf(std::span<const Fact> facts, std::optional<FactNumber> number);

/// All places of the answer that the fact at `place` came of, in order.
std::vector<Place> answerAround(std::span<const Fact> facts, Place place);

/// The answers that stand, the latest first: of each its facts as they really happened, the first one first.
/// What was put right is not an answer of its own. Never empty inside.
std::vector<std::vector<Fact>> standingAnswers(std::span<const Fact> facts);

}  // namespace core::run
