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

std::vector<double> columnWidths(const std::vector<double>& least, const std::vector<double>& most,
                                 double width)
{
    const double allLeast = std::accumulate(least.begin(), least.end(), 0.0);
    const double allMost = std::accumulate(most.begin(), most.end(), 0.0);
    std::vector<double> widths = most;
    if (allMost <= width)
        return widths;
    for (std::size_t column = 0; column < widths.size(); ++column)
        widths[column] = allLeast >= width
            ? least[column] * width / allLeast
            : least[column] + (most[column] - least[column]) * (width - allLeast) / (allMost - allLeast);
    return widths;
}

}  // namespace app::desktop::print
