#include "app/desktop/print/line_breaks.h"

#include "app/desktop/print/page_layout.h"

#include <QFontMetricsF>
#include <QRegularExpression>
#include <QTextLayout>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace app::desktop::print {

QStringList brokenIntoLines(const QString& text, TextSize size, double width)
{
    QStringList lines;
    for (const QString& paragraph : text.split(QLatin1Char{'\n'})) {
        if (paragraph.isEmpty()) {
            lines << QString{};
            continue;
        }
        QTextLayout layout{paragraph, paperFont(size.pixels, size.bold)};
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width);
            lines << paragraph.mid(line.textStart(), line.textLength()).trimmed();
        }
        layout.endLayout();
    }
    return lines;
}

double widthOf(const QString& text, TextSize size)
{
    return QFontMetricsF{paperFont(size.pixels, size.bold)}.horizontalAdvance(text);
}

double widestWord(const QString& text, TextSize size)
{
    double widest = 0;
    for (const QString& word : text.split(QRegularExpression{QStringLiteral("\\s+")}))
        widest = std::max(widest, widthOf(word, size));
    return widest;
}

double widestLine(const QString& text, TextSize size)
{
    double widest = 0;
    for (const QString& line : text.split(QLatin1Char{'\n'}))
        widest = std::max(widest, widthOf(line, size));
    return widest;
}

double lineHeight(TextSize size)
{
    return std::ceil(QFontMetricsF{paperFont(size.pixels, size.bold)}.height());
}

namespace {

/// What cannot have what it needs: those that need less than their share have it, and the others share the
/// rest.
std::vector<double> sharedOut(const std::vector<double>& least, double width)
{
    std::vector<std::size_t> order(least.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::sort(order, {}, [&](std::size_t column) { return least[column]; });
    std::vector<double> widths(least.size());
    double rest = width;
    for (std::size_t place = 0; place < order.size(); ++place) {
        const double share = rest / static_cast<double>(order.size() - place);
        widths[order[place]] = std::min(least[order[place]], share);
        rest -= widths[order[place]];
    }
    return widths;
}

}  // namespace

std::vector<double> columnWidths(const std::vector<double>& least, const std::vector<double>& most,
                                 double width)
{
    const double allLeast = std::accumulate(least.begin(), least.end(), 0.0);
    const double allMost = std::accumulate(most.begin(), most.end(), 0.0);
    if (allMost <= width)
        return most;
    if (allLeast >= width)
        return sharedOut(least, width);
    std::vector<double> widths;
    for (std::size_t column = 0; column < least.size(); ++column)
        widths.push_back(least[column]
                         + (most[column] - least[column]) * (width - allLeast) / (allMost - allLeast));
    return widths;
}

}  // namespace app::desktop::print
