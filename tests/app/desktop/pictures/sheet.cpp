#include "tests/app/desktop/pictures/sheet.h"

#include "tests/app/desktop/pictures/stage.h"

#include <QBuffer>
#include <QPainter>

#include <algorithm>
#include <cstdlib>

namespace pictures {
namespace {

constexpr int columns = 4;
constexpr int pictureWidth = 400;
constexpr int gap = 16;
constexpr int nameHeight = 32;

/// A sheet is packed in squares of so many pixels, each by itself. Every picture begins at one, so it is
/// packed alike alone and on a sheet.
constexpr int square = 16;

constexpr const char* format = "jpg";
constexpr int quality = 40;

int inSquares(int length)
{
    return (length + square - 1) / square * square;
}

QColor ground()
{
    return {128, 128, 128};
}

QSize pictureSize(const QSize& window)
{
    return {pictureWidth, pictureWidth * window.height() / window.width()};
}

/// With its name and the gap to the next.
QSize cellSize(const QSize& picture)
{
    return {picture.width() + gap, inSquares(picture.height()) + nameHeight + gap};
}

/// Where the picture of a scene lies on a sheet.
QRect placeOf(std::size_t scene, const QSize& picture)
{
    const QSize cell = cellSize(picture);
    const int place = static_cast<int>(scene);
    return {{gap + place % columns * cell.width(), gap + place / columns * cell.height()}, picture};
}

}  // namespace

QImage smallPicture(const Scene& scene, const Look& look)
{
    return Stage{scene, look}.picture(look).scaled(pictureSize(look.size), Qt::IgnoreAspectRatio,
                                                   Qt::SmoothTransformation);
}

QSize sheetSize(const Look& look)
{
    const int rows = (static_cast<int>(scenes().size()) + columns - 1) / columns;
    const QSize cell = cellSize(pictureSize(look.size));
    return {gap + columns * cell.width(), gap + rows * cell.height()};
}

QImage sheetOf(const Look& look)
{
    const std::vector<Scene> all = scenes();
    QImage sheet{sheetSize(look), QImage::Format_RGB32};
    sheet.fill(ground());
    QPainter painter{&sheet};
    painter.setPen(Qt::black);
    painter.setFont(app::desktop::Theme::exactFont(16));
    for (std::size_t scene = 0; scene < all.size(); ++scene) {
        const QRect place = placeOf(scene, pictureSize(look.size));
        painter.drawImage(place, smallPicture(all[scene], look));
        painter.drawText(QRect{place.left(), inSquares(place.bottom() + 1), place.width(), nameHeight},
                         Qt::AlignCenter, all[scene].name);
    }
    return sheet;
}

bool write(const QImage& sheet, const QString& path)
{
    return sheet.save(path, format, quality);
}

QImage packed(const QImage& picture)
{
    QImage alone{QSize{inSquares(picture.width()), inSquares(picture.height())}, QImage::Format_RGB32};
    alone.fill(ground());
    QPainter{&alone}.drawImage(0, 0, picture);
    QBuffer bytes;
    alone.save(&bytes, format, quality);
    return QImage::fromData(bytes.data(), format).copy(picture.rect());
}

QImage cutOut(const QImage& sheet, std::size_t scene, const Look& look)
{
    return sheet.copy(placeOf(scene, pictureSize(look.size)));
}

/// Small things that no eye sees are smoothed away.
double otherness(const QImage& one, const QImage& other)
{
    constexpr int smaller = 4;
    constexpr int seen = 24;  ///< Of 255, in any of the colours.
    const auto smoothed = [](const QImage& image) {
        return image.scaled(image.size() / smaller, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
            .convertToFormat(QImage::Format_RGB32);
    };
    const QImage first = smoothed(one);
    const QImage second = smoothed(other);
    int others = 0;
    for (int y = 0; y < first.height(); ++y)
        for (int x = 0; x < first.width(); ++x) {
            const QRgb here = first.pixel(x, y);
            const QRgb there = second.pixel(x, y);
            others += std::max({std::abs(qRed(here) - qRed(there)), std::abs(qGreen(here) - qGreen(there)),
                                std::abs(qBlue(here) - qBlue(there))})
                    > seen
                ? 1
                : 0;
        }
    return 100.0 * others / (first.width() * first.height());
}

}  // namespace pictures
