#include "app/desktop/look/large_digits.h"

#include <QFontMetricsF>
#include <QPaintDevice>
#include <QPixmapCache>

#include <cmath>

namespace app::desktop {
namespace {

/// Beside a character, for what of it lies outside its advance.
int overhang(const QFontMetricsF& metrics)
{
    return static_cast<int>(std::ceil(metrics.height() / 8));
}

QPixmap draw(QChar character, const QFont& font, const QColor& colour, double ratio)
{
    const QFontMetricsF metrics{font};
    const int edge = overhang(metrics);
    const QSizeF room{metrics.horizontalAdvance(character) + 2 * edge, metrics.height()};
    QPixmap drawn{QSize{static_cast<int>(std::ceil(room.width() * ratio)),
                        static_cast<int>(std::ceil(room.height() * ratio))}};
    drawn.setDevicePixelRatio(ratio);
    drawn.fill(Qt::transparent);
    QPainter painter{&drawn};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font);
    painter.setPen(colour);
    painter.drawText(QPointF{static_cast<double>(edge), metrics.ascent()}, QString{character});
    return drawn;
}

/// All figures in both of their colours, as large as they get: else none of them is there when it is drawn
/// again.
void keepAllOfThem()
{
    constexpr int kilobytes = 64 * 1024;
    if (QPixmapCache::cacheLimit() < kilobytes)
        QPixmapCache::setCacheLimit(kilobytes);
}

QPixmap pictureOf(QChar character, const QFont& font, const QColor& colour, double ratio)
{
    const QString key = QStringLiteral("digit %1 %2 %3 %4")
                            .arg(font.key(), colour.name(QColor::HexArgb))
                            .arg(ratio)
                            .arg(character);
    QPixmap picture;
    if (!QPixmapCache::find(key, &picture)) {
        keepAllOfThem();
        picture = draw(character, font, colour, ratio);
        QPixmapCache::insert(key, picture);
    }
    return picture;
}

/// By how much it stands closer to its neighbour on each side: then it is as far from them as figures are
/// from one another.
double closer(const QFont& font, QChar character)
{
    constexpr double ofColon = 0.05;
    return character == QLatin1Char{':'} ? ofColon * font.pixelSize() : 0;
}

double startOf(const QRectF& box, Qt::Alignment alignment, double width)
{
    if (alignment.testFlag(Qt::AlignHCenter))
        return box.center().x() - width / 2;
    return alignment.testFlag(Qt::AlignRight) ? box.right() - width : box.left();
}

}  // namespace

double digitsWidth(const QFont& font, const QString& text)
{
    const QFontMetricsF metrics{font};
    double width = 0;
    for (const QChar character : text)
        width += metrics.horizontalAdvance(character) - 2 * closer(font, character);
    return width;
}

void drawDigits(QPainter& painter, const QRectF& box, Qt::Alignment alignment, const QString& text)
{
    const QFont font = painter.font();
    const QFontMetricsF metrics{font};
    const double ratio = painter.device()->devicePixelRatioF();
    double left = startOf(box, alignment, digitsWidth(font, text));
    const double top =
        alignment.testFlag(Qt::AlignVCenter) ? box.center().y() - metrics.height() / 2 : box.top();
    for (const QChar character : text) {
        left -= closer(font, character);
        // On whole pixels, so that nothing is blurred.
        const QPointF place{std::round((left - overhang(metrics)) * ratio) / ratio,
                            std::round(top * ratio) / ratio};
        painter.drawPixmap(place, pictureOf(character, font, painter.pen().color(), ratio));
        left += metrics.horizontalAdvance(character) - closer(font, character);
    }
}

}  // namespace app::desktop
