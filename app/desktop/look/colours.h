#pragma once

#include <QColor>

#include <array>

namespace app::desktop {

/// Every colour the window uses, by what it is for. Text on its ground has a
/// contrast of 4.5:1 at least, 7:1 in high contrast, parts 3:1; a test holds all
/// palettes to it.
struct Colours {
    QColor ground;    ///< Behind everything.
    QColor surface;   ///< Cards, fields and tables.
    QColor sunken;    ///< Strips and headers.
    QColor line;      ///< Edges that carry meaning: fields, cards.
    QColor hairline;  ///< Lines that only tidy up.
    QColor ink;       ///< Text.
    QColor quietInk;  ///< Text that may be overlooked.
    QColor action;    ///< The one main action.
    QColor onAction;
    QColor water;      ///< The rinse line and what is past it.
    QColor waterWash;  ///< Its ground.
    QColor soon;       ///< Something is near.
    QColor onSoon;
    QColor late;  ///< Something is due or past.
    QColor onLate;
    QColor
        alarm;  ///< The ground of an alarm, which is large: deep, so that it does not dazzle in a dark room.
    QColor onAlarm;
    QColor alarmEdge;  ///< Around it, where that and what is behind it are both dark.
    QColor
        alarmStep;  ///< The same of a step that nobody has begun; its edge is the colour of the main action.
    QColor onAlarmStep;
    QColor selection;
    QColor onSelection;
    std::array<QColor, 6> strands;  ///< By place in the coat, again from the first after the last.
    double filling = 0.55;          ///< How much of its colour fills a strand that is planned, from 0 to 1.

    [[nodiscard]] const QColor& strand(std::size_t place) const { return strands[place % strands.size()]; }
};

Colours lightColours();
Colours darkColours();
Colours highContrastColours();
Colours darkHighContrastColours();

/// For print: white ground, and no more ink than tells things apart by their patterns.
Colours paperColours();

/// The contrast of two opaque colours, from 1 to 21, as WCAG 2.1 defines it.
double contrast(const QColor& one, const QColor& other);

/// `over` laid on `under` with `share` of it, 0 to 1.
QColor blend(const QColor& under, const QColor& over, double share);

}  // namespace app::desktop
