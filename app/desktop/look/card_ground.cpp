#include "app/desktop/look/card_ground.h"

#include <QPaintDevice>
#include <QPixmapCache>

#include <array>
#include <cmath>

namespace app::desktop {
namespace {

void drawAsItIs(QPainter& painter, const QRect& card, const CardGround& ground)
{
    constexpr double inset = CardGround::inset;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{ground.edge, ground.width});
    painter.setBrush(ground.fill);
    painter.drawRoundedRect(QRectF{card}.adjusted(inset, inset, -inset, -inset), ground.radius,
                            ground.radius);
    painter.restore();
}

/// So far from a corner of the card a side is the same all along.
int reachOf(const CardGround& ground)
{
    return static_cast<int>(std::ceil(CardGround::inset + ground.radius + ground.width));
}

/// The ground of the smallest card that has all its corners, and one pixel between them.
QPixmap smallestCard(const CardGround& ground, int ratio)
{
    const QString key = QStringLiteral("ground %1 %2 %3 %4 %5")
                            .arg(ground.fill.name(QColor::HexArgb), ground.edge.name(QColor::HexArgb))
                            .arg(ground.width)
                            .arg(ground.radius)
                            .arg(ratio);
    QPixmap drawn;
    if (QPixmapCache::find(key, &drawn))
        return drawn;
    const int side = 2 * reachOf(ground) + 1;
    drawn = QPixmap{QSize{side, side} * ratio};
    drawn.setDevicePixelRatio(ratio);
    drawn.fill(Qt::transparent);
    QPainter painter{&drawn};
    drawAsItIs(painter, {0, 0, side, side}, ground);
    painter.end();
    QPixmapCache::insert(key, drawn);
    return drawn;
}

/// Where a part of one length begins and ends: a corner, what is between, a corner.
std::array<int, 4> parts(int from, int length, int corner)
{
    return {from, from + corner, from + length - corner, from + length};
}

}  // namespace

void drawGround(QPainter& painter, const QRect& card, const CardGround& ground)
{
    const double ratio = painter.device()->devicePixelRatioF();
    const int reach = reachOf(ground);
    const bool whole = std::round(ratio) == ratio && painter.transform().type() <= QTransform::TxTranslate;
    if (!whole || card.width() <= 2 * reach || card.height() <= 2 * reach)
        return drawAsItIs(painter, card, ground);
    const int scale = static_cast<int>(ratio);
    const QPixmap picture = smallestCard(ground, scale);
    const auto across = parts(card.left(), card.width(), reach);
    const auto down = parts(card.top(), card.height(), reach);
    const auto from = parts(0, 2 * reach + 1, reach);
    for (std::size_t row = 0; row < 3; ++row)
        for (std::size_t column = 0; column < 3; ++column) {
            const QRect target{QPoint{across[column], down[row]},
                               QSize{across[column + 1] - across[column], down[row + 1] - down[row]}};
            const QRect source{QPoint{from[column], from[row]} * scale,
                               QSize{from[column + 1] - from[column], from[row + 1] - from[row]} * scale};
            if (row == 1 && column == 1)
                painter.fillRect(target, ground.fill);
            else
                painter.drawPixmap(target, picture, source);
        }
}

}  // namespace app::desktop
