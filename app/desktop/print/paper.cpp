#include "app/desktop/print/paper.h"

#include "app/desktop/look/colours.h"
#include "app/desktop/print/text.h"

#include <QCoreApplication>
#include <QLocale>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

#include <algorithm>
#include <array>

namespace app::desktop::print {
namespace {

constexpr double marginMillimetres = 13;
constexpr double inchesInMillimetre = 1 / 25.4;
constexpr double unitsInInch = 96;  ///< As on a screen, whose sizes the strands are drawn in.

/// Unicode CLDR, supplemental data, paperSize "US-Letter"; everywhere else A4 is usual.
bool usesLetter(const QLocale& locale)
{
    using L = QLocale;
    static constexpr std::array letter{
        L::Belize,    L::Canada, L::Chile,       L::Colombia,   L::CostaRica,  L::Guatemala,    L::Mexico,
        L::Nicaragua, L::Panama, L::Philippines, L::PuertoRico, L::ElSalvador, L::UnitedStates, L::Venezuela};
    return std::ranges::count(letter, locale.territory()) > 0;
}

}  // namespace

QPageLayout usualPaper(const QLocale& locale)
{
    return QPageLayout{QPageSize{usesLetter(locale) ? QPageSize::Letter : QPageSize::A4},
                       QPageLayout::Portrait,
                       QMarginsF{marginMillimetres, marginMillimetres, marginMillimetres, marginMillimetres},
                       QPageLayout::Millimeter};
}

bool draw(const std::vector<Sheet>& sheets, QPagedPaintDevice& device)
{
    const QSizeF room =
        device.pageLayout().paintRect(QPageLayout::Millimeter).size() * inchesInMillimetre * unitsInInch;
    QPainter painter;
    if (!painter.begin(&device))
        return false;
    painter.scale(painter.viewport().width() / room.width(), painter.viewport().width() / room.width());
    bool first = true;
    for (const Sheet& sheet : sheets)
        for (const Page& page : layOut(sheet, room)) {
            if (!first && !device.newPage())
                return false;
            first = false;
            paint(painter, page, paperColours());
        }
    return painter.end();
}

std::optional<QString> writePdf(const std::vector<Sheet>& sheets, const QString& path,
                                const QPageLayout& paper)
{
    QSaveFile file{path};
    bool written = file.open(QIODevice::WriteOnly);
    if (written) {
        QPdfWriter writer{&file};
        writer.setPageLayout(paper);
        writer.setTitle(sheets.empty() ? QString{} : sheets.front().title);
        writer.setCreator(QStringLiteral("Basinbell"));
        written = draw(sheets, writer);
    }
    if (written && file.commit())
        return std::nullopt;
    return Text::tr("%1 was not written: %2. What was there before is as it was.")
        .arg(path, file.errorString());
}

}  // namespace app::desktop::print
