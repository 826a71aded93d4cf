#pragma once

#include "core/run/fact.h"

#include <span>
#include <vector>

/// What was said of coats once they were over. Nothing is planned by it.
namespace core::run {

/// How one zone turned out: what was said of it last.
struct ZoneOutcome {
    TaskId zone{};  ///< Its Apply.
    std::optional<Outcome> outcome{};
    std::string words{};
    FactNumber number{0};

    friend bool operator==(const ZoneOutcome&, const ZoneOutcome&) = default;
};

/// What is to be thought of next time.
struct NextTime {
    TaskId zone{};  ///< The Apply of a zone of the coat that it is about.
    std::string words{};
    FactNumber number{0};

    friend bool operator==(const NextTime&, const NextTime&) = default;
};

/// Of each zone of which something was said, in the order of the services.
std::vector<ZoneOutcome> outcomesOf(std::span<const Fact> facts);

/// Of each coat of which something was said, in the order of the services.
std::vector<NextTime> notesOf(std::span<const Fact> facts);

}  // namespace core::run
