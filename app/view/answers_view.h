#pragma once

#include "app/view/amend_view.h"
#include "core/run/fact.h"

#include <span>
#include <vector>

namespace app::view {

/// One answer that stands and can be put right.
struct AnswerOption {
    std::vector<core::run::Fact> facts;  ///< Of the answer, as they really happened. Never empty.
    std::vector<ZoneOption> others;      ///< Zones that it may have been about instead.

    [[nodiscard]] core::run::FactNumber number() const { return facts.front().number; }
    [[nodiscard]] Instant happened() const { return facts.front().happened; }
    friend bool operator==(const AnswerOption&, const AnswerOption&) = default;
};

/// The last answers, the latest first, `most` at most.
std::vector<AnswerOption> answersView(const std::vector<core::service::Service>& services,
                                      std::span<const core::run::Fact> facts, std::size_t most);

}  // namespace app::view
