#pragma once

#include "app/storage/database.h"

#include <string>
#include <vector>

namespace app::storage {

// Runs as rows of the journal: what they were begun with, their services, and what amendments made of those,
// each with a seal. What an older program wrote has none and is taken as it is.

std::int64_t numberOf(session::RunId run);

/// `which` is the end of a query over the table `run`, with at most one place to fill in, for `id`.
Database::Result<std::vector<session::StoredRun>> readRuns(Database& database, const char* which,
                                                           std::optional<session::RunId> id = {});

/// A new run without its services; its id.
Database::Result<session::RunId> insertRun(Database& database, const session::NewRun& run);

/// What a run is begun with, or, from 1, what an amendment makes of that; kept again it is replaced.
Database::Result<void> insertServices(Database& database, session::RunId run,
                                      const std::vector<std::string>& services);
Database::Result<void> insertRevision(Database& database, session::RunId run, std::size_t revision,
                                      const std::vector<std::string>& services);

}  // namespace app::storage
