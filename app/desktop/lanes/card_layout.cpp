#include "app/desktop/lanes/card_layout.h"

#include "app/desktop/look/large_digits.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <algorithm>
#include <cmath>

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
int titleFor(const QSizeF& card)
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
    constexpr int largest = 640;
    return std::min(static_cast<int>(std::min(room.height() * 1.1, room.width() / width)), largest);
}

double enlargement(const QSize& card, const QSize& usual)
{
    constexpr double most = 4;
    const double fits = std::min(1.0 * card.width() / usual.width(), 1.0 * card.height() / usual.height());
    return std::clamp(std::floor(2 * fits) / 2, 1.0, most);
}

Compact compact(const QSize& card)
{
    constexpr int largeDigits = 72;  ///< From so much room for them on digits are large.
    constexpr int left = 16;
    constexpr int right = 12;
    Compact parts;
    parts.enlarged = enlargement(card, {Theme::scaled(300), Theme::scaled(180)});
    parts.room = QSizeF{card} / parts.enlarged;
    parts.title = titleFor(parts.room);
    parts.titleHeight = titleHeight(parts.title);
    const int least = titleHeight(metrics::text) + 2 + largeDigits + 2 * edge;
    parts.tall = parts.room.height() >= least;
    const double top = edge + parts.titleHeight + 2;
    const double height = parts.room.height() - edge - top;
    const QRectF digits = parts.tall
        ? QRectF{0, top, parts.room.width(), height}
        : QRectF{left, top, parts.room.width() - left - right - Theme::scaled(badgeRoom), height};
    parts.digits = {digits.topLeft() * parts.enlarged, digits.size() * parts.enlarged};
    return parts;
}

}  // namespace app::desktop::card_layout
