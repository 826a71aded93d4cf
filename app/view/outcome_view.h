#pragma once

#include "app/view/strand_picture.h"
#include "core/run/run.h"

#include <span>

namespace app::view {

/// How one zone turned out, so far as somebody said.
struct ZoneResult {
    TaskId zone;  ///< Its Apply.
    std::string name;
    std::optional<core::run::Outcome> outcome;
    std::string words;

    [[nodiscard]] bool isTold() const { return outcome || !words.empty(); }
    friend bool operator==(const ZoneResult&, const ZoneResult&) = default;
};

/// A coat that is over, and what was said of it.
struct CoatResult {
    CoatPlace coat;
    std::string name;               ///< Of the head and the coat, so far as there are several.
    std::vector<ZoneResult> zones;  ///< Those that had water, in the order of the service. Never empty.
    std::string note;               ///< For next time.

    [[nodiscard]] bool isTold() const;
    friend bool operator==(const CoatResult&, const CoatResult&) = default;
};

/// The coats that are over: every zone rinsed or left out, and dried. In the order of the services.
std::vector<CoatResult> coatResults(const std::vector<core::service::Service>& services,
                                    const core::run::State& state, std::span<const core::run::Fact> facts);

/// "too warm, brassy at the nape"; empty where nothing was said.
std::string resultText(const ZoneResult& result);

}  // namespace app::view
