#pragma once

#include "app/command/outside.h"

#include <QStringList>

namespace app::command {

/// The terminal program: does what `arguments` (without the program's name) ask for
/// and gives its exit status.
int runProgram(const QStringList& arguments, Outside& outside);

}  // namespace app::command
