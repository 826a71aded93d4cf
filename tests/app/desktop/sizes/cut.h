#pragma once

#include <QStringList>

class QWidget;

namespace sizes {

/// What of a window is cut, covered or sticks out, a line each, with the names of the parts. What can be
/// scrolled to counts as there.
QStringList cutIn(const QWidget& window);

}  // namespace sizes
