#pragma once

#include <QRectF>
#include <QSize>
#include <QString>

namespace app::desktop::card_layout {

/// What is left free beside figures, as a part of the typeface's size: a third of a figure, of which some is
/// free within its own width.
constexpr double freeBeside = 0.212 - 0.06;

/// How wide figures are, as parts of the typeface's size, with a third of a figure free on both sides: less,
/// and the times of two cards side by side are read as one. Four figures at least, so that it stays as it is
/// while time goes by.
double widthOf(const QString& figures, bool bold);

/// As large as there is room for, in pixels of the typeface, where figures are so wide.
int digitPixels(const QSizeF& room, double width);

/// How much larger all else on a card is drawn than on one of its usual size, for whoever stands far from a
/// large window: once, one and a half times and so on.
double enlargement(const QSize& card, const QSize& usual);

/// Where the parts of a compact card lie.
struct Compact {
    double enlarged = 1;  ///< What follows is drawn so much larger, all but the digits.
    QSizeF room;          ///< Of the whole card.
    bool tall = false;    ///< With room for large digits; else they are bold.
    int title = 0;        ///< The largest the name may be, as a size of `metrics`.
    int titleHeight = 0;  ///< Of its line.
    QRectF digits;        ///< On the card as it is.
};

Compact compact(const QSize& card);

}  // namespace app::desktop::card_layout
