#include "app/desktop/look/card_ground.h"

#include <QImage>

#include <gtest/gtest.h>

#include <cmath>

using namespace app::desktop;

namespace {

const CardGround plainGround{.fill = Qt::white, .edge = Qt::darkGray, .width = 1.5, .radius = 12};
const CardGround pressingGround{.fill = QColor{240, 244, 250}, .edge = Qt::darkRed, .width = 4, .radius = 12};

template <typename Draw>
QImage drawnCard(double ratio, const Draw& draw)
{
    QImage image{(QSizeF{310, 170} * ratio).toSize(), QImage::Format_RGB32};
    image.setDevicePixelRatio(ratio);
    image.fill(Qt::lightGray);
    QPainter painter{&image};
    draw(painter);
    return image;
}

/// By the toolkit's own rounded box.
QImage drawnByTheToolkit(double ratio, const QRect& card, const CardGround& ground)
{
    return drawnCard(ratio, [&](QPainter& painter) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen{ground.edge, ground.width});
        painter.setBrush(ground.fill);
        painter.drawRoundedRect(QRectF{card}.adjusted(2, 2, -2, -2), ground.radius, ground.radius);
    });
}

/// By how much one part of a colour differs at most, of 255.
int mostApart(const QImage& one, const QImage& other)
{
    int most = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x) {
            const QRgb a = one.pixel(x, y);
            const QRgb b = other.pixel(x, y);
            for (const int apart : {qRed(a) - qRed(b), qGreen(a) - qGreen(b), qBlue(a) - qBlue(b)})
                most = std::max(most, std::abs(apart));
        }
    return most;
}

TEST(CardGround, LooksAsTheToolkitsOwnBox)
{
    for (const CardGround& ground : {plainGround, pressingGround})
        for (const double ratio : {1.0, 1.5, 2.0, 3.0})
            for (const QRect& card : {QRect{5, 5, 300, 160}, QRect{7, 3, 31, 29}, QRect{0, 0, 310, 40}}) {
                const QImage ours =
                    drawnCard(ratio, [&](QPainter& painter) { drawGround(painter, card, ground); });
                // What is blended once more, from a picture, is rounded once more.
                EXPECT_LE(mostApart(ours, drawnByTheToolkit(ratio, card, ground)), 2)
                    << card.width() << " by " << card.height() << " at " << ratio;
            }
}

TEST(CardGround, LeavesThePainterAsItWas)
{
    drawnCard(1.5, [](QPainter& painter) {
        painter.setPen(QPen{Qt::blue, 3});
        drawGround(painter, {0, 0, 100, 100}, plainGround);
        EXPECT_EQ(painter.pen(), (QPen{Qt::blue, 3}));
        EXPECT_EQ(painter.brush(), QBrush{Qt::NoBrush});
    });
}

}  // namespace
