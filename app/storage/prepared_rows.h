#pragma once

#include "app/session/journal.h"
#include "app/storage/database.h"

#include <vector>

/// What was said before a run began, as the journal keeps it.
namespace app::storage {

Database::Result<void> insertPrepared(Database& database, session::RunId run,
                                      const std::vector<core::run::Prepared>& prepared);

/// Into `stored`, which is damaged where there are not `count` of them or one was changed. Once the services
/// were erased there are none. The services are read first.
Database::Result<void> readPrepared(Database& database, session::StoredRun& stored, std::int64_t count);

}  // namespace app::storage
