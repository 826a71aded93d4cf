#pragma once

#include "app/storage/database.h"

namespace app::storage {

/// Brings `database` to the layout that this program writes, one version after
/// another, or refuses it: not a journal, damaged, or of a newer program.
/// docs/reliability.md describes the tables.
Database::Result<void> prepareSchema(Database& database);

}  // namespace app::storage
