#pragma once

#include "core/stagger/draft.h"

#include <optional>

namespace core::stagger {

/// A plan as a network: what was planned, and what the plan's order asks for. Private to this folder
/// and its tests.
struct PlannedNetwork {
    Draft draft;  ///< Every start as planned, every length that is uncertain a link over its range.
    std::vector<Time> times;  ///< Of the plan, by point.
    /// The rules, the order, and links as wide as the plan's give. Where limits are broken,
    /// they bind as far as the plan keeps them.
    temporal::UncertainNetwork network;
};

/// The links of a draft that was written for the whole give, as wide as a give of so many tenths.
std::vector<temporal::Uncertain> linksAt(const Draft& draft, int give);

/// `question` must outlive the answer, and `plan` must be one of this question. Nothing where the
/// planned starts keep no rules.
std::optional<PlannedNetwork> plannedNetwork(const Question& question, const Plan& plan);

/// The greatest give, in tenths, with which the plan's order can be kept from its times on, whatever
/// applying takes within it; nothing where the planned starts keep no rules, or break limits.
std::optional<int> ownGive(const Question& question, const Plan& plan);

}  // namespace core::stagger
