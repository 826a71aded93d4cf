#include "tests/app/desktop/pictures/sheet.h"

#include "app/desktop/language.h"
#include "tests/app/desktop/pictures/scenes.h"

#include <QPainter>
#include <QTest>

#include <algorithm>
#include <cstdlib>

namespace pictures {
namespace {

using app::desktop::Theme;

constexpr int columns = 4;
constexpr int pictureWidth = 400;
constexpr int gap = 12;
constexpr int nameHeight = 24;
const QSize usualSize{1024, 700};

QSize pictureSize(const QSize& window)
{
    return {pictureWidth, pictureWidth * window.height() / window.width()};
}

/// Where the picture of a scene lies on a sheet.
QRect placeOf(int scene, const QSize& picture)
{
    const QSize cell{picture.width() + gap, picture.height() + nameHeight + gap};
    return {{gap + scene % columns * cell.width(), gap + scene / columns * cell.height()}, picture};
}

QSize sheetSize(int scenes, const QSize& picture)
{
    const int rows = (scenes + columns - 1) / columns;
    return {gap + columns * (picture.width() + gap), gap + rows * (picture.height() + nameHeight + gap)};
}

QImage pictureOf(const Scene& scene, const Look& look)
{
    rig::Rig rig;
    rig.theme->setTextSize(look.text);
    rig.theme->choose(choiceOf(look.theme));
    rig.openWindow();
    rig.window->resize(look.size);
    scene.stage(rig);
    QWidget& shown = shownBy(rig);
    shown.resize(look.size);
    QTest::qWait(150);
    return shown.grab().toImage().scaled(pictureSize(look.size), Qt::IgnoreAspectRatio,
                                         Qt::SmoothTransformation);
}

/// Of a hundred pixels so many are other, once small things that no eye sees are smoothed away.
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

}  // namespace

QString Look::name() const
{
    QString name = language + QLatin1Char{'-'} + theme;
    if (size != usualSize)
        name += QStringLiteral("-%1x%2").arg(size.width()).arg(size.height());
    if (text != 100)
        name += QStringLiteral("-text-%1").arg(text);
    return name;
}

std::vector<Look> looks()
{
    std::vector<Look> all;
    for (const char* theme : {"light", "dark", "contrast", "dark-contrast"})
        all.push_back({QStringLiteral("en"), QLatin1String{theme}, usualSize, 100});
    return all;
}

Theme::Choice choiceOf(const QString& theme)
{
    if (theme == QLatin1String{"contrast"})
        return Theme::Choice::HighContrast;
    if (theme == QLatin1String{"dark-contrast"})
        return Theme::Choice::DarkHighContrast;
    return theme == QLatin1String{"dark"} ? Theme::Choice::Dark : Theme::Choice::Light;
}

QImage sheetOf(const Look& look)
{
    app::desktop::language::use(look.language);
    const std::vector<Scene> all = scenes();
    const QSize picture = pictureSize(look.size);
    QImage sheet{sheetSize(static_cast<int>(all.size()), picture), QImage::Format_RGB32};
    sheet.fill(QColor{128, 128, 128});
    QPainter painter{&sheet};
    painter.setPen(Qt::black);
    painter.setFont(Theme::exactFont(16));
    for (int scene = 0; scene < static_cast<int>(all.size()); ++scene) {
        const Scene& shown = all[static_cast<std::size_t>(scene)];
        const QRect place = placeOf(scene, picture);
        painter.drawImage(place, pictureOf(shown, look));
        painter.drawText(QRect{place.left(), place.bottom() + 1, place.width(), nameHeight}, Qt::AlignCenter,
                         shown.name);
    }
    return sheet;
}

QStringList differences(const QImage& one, const QImage& other)
{
    constexpr double most = 0.5;  ///< Of a hundred pixels: a button or a line of text is more.
    if (one.size() != other.size())
        return {QStringLiteral("the sheets are %1 by %2 and %3 by %4")
                    .arg(one.width())
                    .arg(one.height())
                    .arg(other.width())
                    .arg(other.height())};
    QStringList found;
    const std::vector<Scene> all = scenes();
    const int rows = (static_cast<int>(all.size()) + columns - 1) / columns;
    const QSize picture{pictureWidth, (one.height() - gap) / rows - nameHeight - gap};
    for (int scene = 0; scene < static_cast<int>(all.size()); ++scene) {
        const QRect place = placeOf(scene, picture);
        if (const double other100 = otherness(one.copy(place), other.copy(place)); other100 > most)
            found += QStringLiteral("%1: %2 of 100 pixels")
                         .arg(all[static_cast<std::size_t>(scene)].name)
                         .arg(other100, 0, 'f', 1);
    }
    return found;
}

}  // namespace pictures
