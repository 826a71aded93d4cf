#pragma once

#include <QString>

namespace app::command {

/// What `--help` says: of the command with this name, or of the program.
QString helpText(const QString& command);

/// The keys of a run.
QString keysText();

}  // namespace app::command
