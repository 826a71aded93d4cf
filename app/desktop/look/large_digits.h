#pragma once

#include <QPainter>
#include <QString>

namespace app::desktop {

/// Draws `text` into `box` in the painter's font and pen, as QPainter::drawText does on one line, from
/// pictures of its characters that are kept. The toolkit keeps small characters only: large ones are hinted
/// and filled anew each time, which for lanes that change every second is most of what painting costs. For
/// figures of equal width: characters are not moved closer to each other.
void drawDigits(QPainter& painter, const QRectF& box, Qt::Alignment alignment, const QString& text);

}  // namespace app::desktop
