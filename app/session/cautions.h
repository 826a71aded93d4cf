#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace app::session {

/// What comes before any plan: shown before a first run on a person, and always one
/// key away. The words defer to the leaflet, the rules of the place and the person who
/// is trained; none of them says that something is safe.
const std::vector<std::string>& cautions();

/// Whether somebody was shown these words before, as remembered in `folder`.
bool cautionsWereShown(const std::filesystem::path& folder);

/// Remembers that they were. Where the folder cannot be written they are shown again.
void rememberCautionsShown(const std::filesystem::path& folder);

}  // namespace app::session
