#pragma once

#include <QBrush>
#include <QColor>
#include <QPen>

namespace app::desktop {

/// What strands are drawn with: round at its ends, like hair.
inline QPen pen(const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine)
{
    return {QBrush{colour}, width, style, Qt::RoundCap, Qt::RoundJoin};
}

}  // namespace app::desktop
