#pragma once

#include <QFont>
#include <QPainter>
#include <QString>

namespace app::desktop {

/// Draws `text` into `box` in the painter's font and pen, as QPainter::drawText does on one line, from
/// pictures of its characters that are kept. The toolkit keeps small characters only: large ones are hinted
/// and filled anew each time, which for lanes that change every second is most of what painting costs. For
/// figures of equal width: characters are not moved closer to each other, but for a colon, which the typeface
/// sets so far apart from its figures as if it stood in a sentence.
void drawDigits(QPainter& painter, const QRectF& box, Qt::Alignment alignment, const QString& text);

/// How wide that is.
double digitsWidth(const QFont& font, const QString& text);

}  // namespace app::desktop
