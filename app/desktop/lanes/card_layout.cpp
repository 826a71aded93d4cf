#include "app/desktop/lanes/card_layout.h"

#include "app/desktop/look/large_digits.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <algorithm>

namespace app::desktop::card_layout {
namespace {

constexpr int badgeRoom = 56;
constexpr int edge = 8;  ///< Above and below.

constexpr double freeBesideBold = 0.232 - 0.04;

int titleHeight(int title)
{
    return Theme::font(title).pixelSize() * 4 / 3;
}

/// It has about a fifth of the height.
int titleFor(const QSize& card)
{
    for (const int title : {metrics::textStep, metrics::textLarge})
        if (titleHeight(title) * 19 <= card.height() * 4)
            return title;
    return metrics::text;
}

}  // namespace

double widthOf(const QString& figures, bool bold)
{
    constexpr int size = 100;
    const QFont font = Theme::exactFont(size, bold);
    const double widest =
        std::max(digitsWidth(font, figures), digitsWidth(font, QStringLiteral("88:88"))) / size;
    return widest + 2 * (bold ? freeBesideBold : freeBeside);
}

int digitPixels(const QSizeF& room, double width)
{
    constexpr int largest = 260;
    return std::min(static_cast<int>(std::min(room.height() * 1.1, room.width() / width)), largest);
}

Compact compact(const QSize& card)
{
    constexpr int digitsAbove = 72;  ///< From so much room for digits on the badge lies above them.
    constexpr int left = 16;
    constexpr int right = 12;
    Compact parts;
    parts.title = titleFor(card);
    parts.titleHeight = titleHeight(parts.title);
    const int least = titleHeight(metrics::text) + 2 + digitsAbove + 2 * edge;
    parts.tall = card.height() >= least;
    const double top = edge + parts.titleHeight + 2;
    const double height = card.height() - edge - top;
    parts.digits = parts.tall
        ? QRectF{0, top, static_cast<double>(card.width()), height}
        : QRectF{left, top, static_cast<double>(card.width() - left - right - Theme::scaled(badgeRoom)),
                 height};
    return parts;
}

}  // namespace app::desktop::card_layout
