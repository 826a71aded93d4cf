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

/// Where the parts of a compact card lie.
struct Compact {
    bool tall = false;    ///< The badge is above the digits, else beside them.
    int title = 0;        ///< The largest the name may be, as a size of `metrics`.
    int titleHeight = 0;  ///< Of its line.
    QRectF digits;
};

Compact compact(const QSize& card);

}  // namespace app::desktop::card_layout
