#pragma once

#include "app/session/journal.h"
#include "core/run/run.h"

#include <tl/expected.hpp>

#include <string>

namespace app::session {

/// A run of the journal, to be looked back on.
struct PastRun {
    StoredRun stored;
    core::run::Setup setup;
    std::vector<Fact> facts;

    /// Its services were erased: what is left are its facts, without words.
    [[nodiscard]] bool isErased() const { return setup.services.empty(); }
};

/// A run that goes on, as it stands: whatever is asked about it is planned at once, never apart.
PastRun soFar(const core::run::Setup& setup, const std::vector<Fact>& facts);

/// The run with its services and facts, or only these if it was erased; or why it cannot be told again, in
/// words.
tl::expected<PastRun, std::string> readPastRun(Journal& journal, const StoredRun& stored,
                                               const core::measure::TimeZones& zones);

/// Says of it how a zone turned out, or what to think of next time, and keeps that. The
/// run itself is not touched. A refusal in words, or nothing; then it is in `run` too.
std::optional<std::string> tellOfPastRun(Journal& journal, PastRun& run, const core::run::Answer& answer,
                                         Instant now);

/// The services that it was begun with, to begin again with: without what was of that day, which is when it
/// could begin and had to be ready, when a basin was booked, and who was away. Empty where they were erased.
std::vector<core::service::Service> forNextTime(const PastRun& run);

}  // namespace app::session
