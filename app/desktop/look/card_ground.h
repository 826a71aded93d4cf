#pragma once

#include <QColor>
#include <QPainter>
#include <QRect>

namespace app::desktop {

/// A rounded box with an edge.
struct CardGround {
    /// The edge lies so far inside the card, on its middle line, in pixels.
    static constexpr double inset = 2;

    QColor fill;
    QColor edge;
    double width = 1.5;  ///< Of the edge, in pixels.
    double radius = 0;   ///< Of its corners, in pixels.

    friend bool operator==(const CardGround&, const CardGround&) = default;
};

/// Draws the ground of a card that fills `card`. Its corners are kept as a picture and its sides drawn from
/// that, for to work out the edge of a large box anew at each second takes longer than all that stands on it.
/// Where a pixel is not a whole number of the device's, it is drawn as it is.
void drawGround(QPainter& painter, const QRect& card, const CardGround& ground);

}  // namespace app::desktop
