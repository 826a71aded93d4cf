#pragma once

#include "app/desktop/print/sheet.h"

#include <QFont>
#include <QRectF>
#include <QSizeF>

#include <vector>

class QPainter;

namespace app::desktop::print {

/// One line of text at its place. Lengths on a page are 1/96 inch, from its upper left corner.
struct PlacedText {
    QRectF box;
    QString text;
    int pixels = 0;
    bool bold = false;
    bool quiet = false;
};

struct PlacedRule {
    QPointF from;
    double width = 0;
    bool strong = false;
};

struct PlacedDrawing {
    QRectF box;
    Drawing drawing;
};

struct Page {
    std::vector<PlacedText> texts;
    std::vector<PlacedRule> rules;
    std::vector<PlacedDrawing> drawings;
};

/// Sets `sheet` on pages of `size`, at least 300 by 300: every text whole, nothing over anything else.
std::vector<Page> layOut(const Sheet& sheet, const QSizeF& size);

/// A sheet without page breaks, and how high it is: for a screen, which scrolls.
struct Scroll {
    Page page;
    double height = 0;
};
Scroll layOutAsOne(const Sheet& sheet, double width);

/// Draws a page; the painter's unit is 1/96 inch, its origin the page's upper left corner.
void paint(QPainter& painter, const Page& page, const Colours& colours);

/// The typeface of what is printed: that of the window, in a size that does not depend on the window's.
QFont paperFont(int pixels, bool bold);

}  // namespace app::desktop::print
