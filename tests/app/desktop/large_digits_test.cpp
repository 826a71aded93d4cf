#include "app/desktop/look/large_digits.h"
#include "app/desktop/look/theme.h"

#include <QImage>

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>

using namespace app::desktop;

namespace {

constexpr QRectF box{10, 10, 380, 180};

class LargeDigits : public testing::TestWithParam<Qt::Alignment> {
protected:
    template <typename Draw>
    static QImage drawn(double ratio, int pixels, const Draw& draw)
    {
        QImage image{QSize{400, 200} * ratio, QImage::Format_RGB32};
        image.setDevicePixelRatio(ratio);
        image.fill(Qt::white);
        QPainter painter{&image};
        painter.setFont(Theme::exactFont(pixels));
        painter.setPen(Qt::darkRed);
        draw(painter);
        return image;
    }

    /// Where there is ink.
    static QRect ink(const QImage& image)
    {
        QRect found;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                if (qGreen(image.pixel(x, y)) < 128)
                    found |= QRect{x, y, 1, 1};
        return found;
    }
};

// The toolkit's own text is the measure, but for the colon, which stands closer to its figures.
TEST_P(LargeDigits, StandWhereTextWouldStand)
{
    for (const double ratio : {1.0, 1.5, 2.0})
        for (const char* text : {"0:00", "+12:34", "108:59"}) {
            const QString digits = QLatin1String{text};
            const auto usual = ink(drawn(ratio, 90, [&](QPainter& painter) {
                painter.drawText(box, static_cast<int>(GetParam()) | Qt::TextDontClip, digits);
            }));
            const auto ours = ink(
                drawn(ratio, 90, [&](QPainter& painter) { drawDigits(painter, box, GetParam(), digits); }));
            const int closer = static_cast<int>(9 * ratio);  // A tenth of the typeface's size.
            const int fromLeft = GetParam().testFlag(Qt::AlignRight) ? closer
                : GetParam().testFlag(Qt::AlignHCenter)              ? closer / 2
                                                                     : 0;
            const auto near = [ratio](int one, int other) { return std::abs(one - other) <= 2 * ratio; };
            EXPECT_TRUE(near(usual.left() + fromLeft, ours.left())
                        && near(usual.right() + fromLeft - closer, ours.right())
                        && near(usual.top(), ours.top()) && near(usual.bottom(), ours.bottom()))
                << text << " at " << ratio << ": " << ours.left() << " to " << ours.right() << ", "
                << ours.top() << " to " << ours.bottom() << " instead of " << usual.left() << " to "
                << usual.right() << ", " << usual.top() << " to " << usual.bottom();
        }
}

INSTANTIATE_TEST_SUITE_P(Alignments, LargeDigits,
                         testing::Values(Qt::AlignCenter, Qt::AlignLeft | Qt::AlignVCenter,
                                         Qt::AlignRight | Qt::AlignVCenter),
                         [](const auto& alignment) {
                             return "Alignment" + std::to_string(static_cast<int>(alignment.param));
                         });

// What is kept is kept for each size and each colour.
TEST(LargeDigitsKept, AreDrawnInThePaintersOwnFontAndColour)
{
    QImage image{400, 200, QImage::Format_RGB32};
    const auto darkest = [&](const QColor& colour, int pixels) {
        image.fill(Qt::white);
        QPainter painter{&image};
        painter.setFont(Theme::exactFont(pixels));
        painter.setPen(colour);
        drawDigits(painter, box, Qt::AlignCenter, QStringLiteral("8"));
        painter.end();
        int rows = 0;
        for (int y = 0; y < image.height(); ++y) {
            bool found = false;
            for (int x = 0; x < image.width(); ++x)
                found = found || image.pixelColor(x, y) == colour;
            rows += found ? 1 : 0;
        }
        return rows;
    };
    const int large = darkest(Qt::darkBlue, 120);
    EXPECT_GT(large, 70);
    EXPECT_LT(darkest(Qt::darkBlue, 60), large);
    EXPECT_EQ(darkest(Qt::darkGreen, 120), large);
}

}  // namespace
