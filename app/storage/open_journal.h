#pragma once

#include "app/session/journal.h"

#include <filesystem>

namespace app::storage {

using session::OpenedJournal;

/// Opens the journal in `folder`, making both where they are missing.
///
/// A damaged journal is set aside, untouched, and a new one begun. If the folder
/// cannot be written, the answer is a journal in memory and a warning that says
/// so. Only two things are refused: a folder that another Basinbell is using, and
/// a journal of a newer version, for going on without them would hide a run.
tl::expected<OpenedJournal, session::JournalError> openJournal(const std::filesystem::path& folder);

}  // namespace app::storage
