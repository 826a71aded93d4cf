#include "app/desktop/print/page_layout.h"

#include "app/desktop/look/theme.h"
#include "app/desktop/print/line_breaks.h"
#include "app/desktop/print/text.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace app::desktop::print {
namespace {

constexpr TextSize titleSize{20, true};
constexpr TextSize headingSize{14, true};
constexpr TextSize textSize{12, false};
constexpr TextSize columnSize{11, true};
constexpr TextSize footSize{10, false};
constexpr double gap = 12;
constexpr double cellGap = 10;  ///< Between the texts of two columns.
constexpr double rowGap = 3;    ///< Above and below the text of a row.
constexpr double leastToWrite = 64;
constexpr double rowGrowth = 22;  ///< What a strand gets beyond the least, as on the screen.

/// On paper a drawing is as large as on a screen whose text is as usual.
double drawingScale()
{
    return 100.0 / Theme::textSize();
}

/// Fills one page after the other, from above.
class Layout {
public:
    Layout(const Sheet& sheet, const QSizeF& size);
    std::vector<Page> pages();
    Scroll scroll();

private:
    struct Columns {
        std::vector<double> left;
        std::vector<double> width;
    };
    struct Cells {
        std::vector<QStringList> lines;
        qsizetype height = 1;  ///< In lines.
    };

    void beginPage();
    [[nodiscard]] double left() const { return m_bottom - m_y; }
    void need(double height);
    double addLines(const QStringList& lines, TextSize size, double x, double width, double y,
                    bool quiet = false);
    void addText(const QString& text, TextSize size, bool quiet = false);
    void addPart(const Part& part);
    void addDrawing(const Drawing& drawing);
    void addStrands(const Drawing& drawing, std::size_t from, std::size_t until);
    void addTable(const Table& table);
    [[nodiscard]] double heightOfFirstPiece(const Part& part) const;
    [[nodiscard]] double heightOf(const Drawing& drawing, double growth) const;
    [[nodiscard]] Columns columnsOf(const Table& table) const;
    [[nodiscard]] Cells cellsOf(const QStringList& row, const Columns& columns, TextSize size) const;
    void addHeadings(const Table& table, const Columns& columns);
    void addRow(const Table& table, const QStringList& row, const Columns& columns);
    void addCells(const Cells& cells, const Columns& columns, TextSize size, qsizetype from, qsizetype until);
    void rule(bool strong);
    void addFeet();

    const Sheet& m_sheet;
    QSizeF m_size;
    QStringList m_foot;
    std::vector<Page> m_pages;
    double m_y = 0;
    double m_top = 0;     ///< Where parts begin on the page.
    double m_bottom = 0;  ///< Where they end, above the foot.
};

Layout::Layout(const Sheet& sheet, const QSizeF& size)
    : m_sheet{sheet}
    , m_size{size}
    , m_foot{brokenIntoLines(sheet.foot, footSize, size.width())}
{
    const auto lines = static_cast<double>(m_foot.size() + 1);
    m_bottom = m_size.height() - lines * lineHeight(footSize) - gap;
}

std::vector<Page> Layout::pages()
{
    beginPage();
    for (const Part& part : m_sheet.parts)
        addPart(part);
    addFeet();
    return std::move(m_pages);
}

/// The foot comes where the sheet ends.
Scroll Layout::scroll()
{
    beginPage();
    for (const Part& part : m_sheet.parts)
        addPart(part);
    m_y += gap;
    m_y = addLines(m_foot, footSize, 0, m_size.width(), m_y);
    return {std::move(m_pages.front()), m_y};
}

void Layout::beginPage()
{
    const bool first = m_pages.empty();
    m_pages.emplace_back();
    m_y = 0;
    addText(m_sheet.title, first ? titleSize : headingSize);
    if (first && !m_sheet.subtitle.isEmpty())
        addText(m_sheet.subtitle, textSize, true);
    m_y += gap / 2;
    rule(true);
    m_y += gap / 2;
    m_top = m_y;
}

/// Goes on on a new page where there is less room than that, unless the page is a new one.
void Layout::need(double height)
{
    if (height > left() && m_y > m_top)
        beginPage();
}

double Layout::addLines(const QStringList& lines, TextSize size, double x, double width, double y, bool quiet)
{
    const double height = lineHeight(size);
    for (const QString& line : lines) {
        if (!line.isEmpty())
            m_pages.back().texts.push_back({QRectF{x, y, std::min(width, widthOf(line, size)), height}, line,
                                            size.pixels, size.bold, quiet});
        y += height;
    }
    return y;
}

void Layout::addText(const QString& text, TextSize size, bool quiet)
{
    for (const QString& line : brokenIntoLines(text, size, m_size.width())) {
        if (m_bottom > 0 && m_y > m_top && m_top > 0)
            need(lineHeight(size));
        m_y = addLines({line}, size, 0, m_size.width(), m_y, quiet);
    }
}

void Layout::addPart(const Part& part)
{
    need(heightOfFirstPiece(part));
    if (!part.heading.isEmpty()) {
        addText(part.heading, headingSize);
        m_y += rowGap;
    }
    if (!part.text.isEmpty())
        addText(part.text, textSize);
    if (part.drawing && !part.drawing->picture.strands.empty())
        addDrawing(*part.drawing);
    if (part.table && !part.table->rows.empty())
        addTable(*part.table);
    m_y += gap;
}

/// A heading is never left alone at the foot of a page.
double Layout::heightOfFirstPiece(const Part& part) const
{
    double height = lineHeight(headingSize) + rowGap + lineHeight(textSize);
    if (part.drawing && part.text.isEmpty())
        height += heightOf(*part.drawing, 0);
    else if (part.table && !part.table->rows.empty()) {
        const Columns columns = columnsOf(*part.table);
        for (const auto& [cells, size] :
             {std::pair{cellsOf(part.table->headings, columns, columnSize), columnSize},
              std::pair{cellsOf(part.table->rows.front(), columns, textSize), textSize}})
            height += static_cast<double>(cells.height) * lineHeight(size) + 2 * rowGap;
    }
    return height;
}

double Layout::heightOf(const Drawing& drawing, double growth) const
{
    return (StrandGeometry::leastHeight(drawing.picture)
            + growth * static_cast<double>(drawing.picture.strands.size()))
        * drawingScale();
}

void Layout::addDrawing(const Drawing& drawing)
{
    const std::size_t strands = drawing.picture.strands.size();
    const double whole = m_bottom - m_top;
    if (heightOf(drawing, 0) <= whole) {
        need(heightOf(drawing, 0));
        return addStrands(drawing, 0, strands);
    }
    // Parts as long as there are colours, so that every strand keeps its own.
    const double row = StrandGeometry::leastRow() * drawingScale();
    const double rest = heightOf(drawing, 0) - row * static_cast<double>(strands);
    const auto fits = static_cast<std::size_t>(std::max(1.0, (whole - rest) / row));
    const std::size_t colours = paperColours().strands.size();
    const std::size_t each = fits >= colours ? fits - fits % colours : fits;
    for (std::size_t from = 0; from < strands; from += each) {
        need(heightOf(drawing, 0) - row * static_cast<double>(strands - std::min(each, strands - from)));
        addStrands(drawing, from, std::min(strands, from + each));
    }
}

void Layout::addStrands(const Drawing& drawing, std::size_t from, std::size_t until)
{
    Drawing piece = drawing;
    auto& strands = piece.picture.strands;
    strands.assign(drawing.picture.strands.begin() + static_cast<std::ptrdiff_t>(from),
                   drawing.picture.strands.begin() + static_cast<std::ptrdiff_t>(until));
    const double height = std::clamp(left(), heightOf(piece, 0), heightOf(piece, rowGrowth));
    m_pages.back().drawings.push_back({QRectF{0, m_y, m_size.width(), height}, std::move(piece)});
    m_y += height + gap / 2;
}

Layout::Columns Layout::columnsOf(const Table& table) const
{
    std::vector<double> least;
    std::vector<double> most;
    for (qsizetype column = 0; column < table.headings.size(); ++column) {
        double word = widestWord(table.headings[column], columnSize);
        double line = widestLine(table.headings[column], columnSize);
        for (const QStringList& row : table.rows) {
            word = std::max(word, widestWord(row.value(column), textSize));
            line = std::max(line, widestLine(row.value(column), textSize));
        }
        least.push_back(word + cellGap + 1);
        most.push_back(line + cellGap + 1);
    }
    if (table.roomToWrite)
        least.back() = most.back() = std::max(leastToWrite, most.back());
    Columns columns{{}, columnWidths(least, most, m_size.width())};
    double rest = m_size.width();
    for (const double width : columns.width)
        rest -= width;
    if (table.roomToWrite)
        columns.width.back() += std::max(0.0, rest);
    double x = 0;
    for (const double width : columns.width) {
        columns.left.push_back(x);
        x += width;
    }
    return columns;
}

Layout::Cells Layout::cellsOf(const QStringList& row, const Columns& columns, TextSize size) const
{
    Cells cells;
    for (std::size_t column = 0; column < columns.width.size(); ++column) {
        cells.lines.push_back(brokenIntoLines(row.value(static_cast<qsizetype>(column)), size,
                                              std::max(8.0, columns.width[column] - cellGap)));
        cells.height = std::max(cells.height, cells.lines.back().size());
    }
    return cells;
}

void Layout::addTable(const Table& table)
{
    const Columns columns = columnsOf(table);
    addHeadings(table, columns);
    for (const QStringList& row : table.rows)
        addRow(table, row, columns);
}

void Layout::addHeadings(const Table& table, const Columns& columns)
{
    const Cells cells = cellsOf(table.headings, columns, columnSize);
    addCells(cells, columns, columnSize, 0, cells.height);
    rule(true);
}

/// A row that has no room goes to the next page; one that is longer than a page is cut between its lines.
void Layout::addRow(const Table& table, const QStringList& row, const Columns& columns)
{
    const Cells cells = cellsOf(row, columns, textSize);
    const double line = lineHeight(textSize);
    const double whole = m_bottom - m_top - 3 * lineHeight(columnSize);
    qsizetype from = 0;
    while (from < cells.height) {
        const double height = static_cast<double>(cells.height - from) * line + 2 * rowGap;
        const bool nextIsBetter = height <= whole || left() < 2 * line;
        if (height > left() && nextIsBetter && m_y > m_top) {
            beginPage();
            addHeadings(table, columns);
        }
        const auto room = static_cast<qsizetype>((left() - 2 * rowGap) / line);
        const qsizetype until = std::min(cells.height, from + std::max<qsizetype>(1, room));
        addCells(cells, columns, textSize, from, until);
        rule(false);
        from = until;
    }
}

void Layout::addCells(const Cells& cells, const Columns& columns, TextSize size, qsizetype from,
                      qsizetype until)
{
    m_y += rowGap;
    for (std::size_t column = 0; column < columns.width.size(); ++column)
        addLines(cells.lines[column].mid(from, until - from), size, columns.left[column],
                 columns.width[column] - 1, m_y);
    m_y += static_cast<double>(until - from) * lineHeight(size) + rowGap;
}

void Layout::rule(bool strong)
{
    m_pages.back().rules.push_back({QPointF{0, m_y}, m_size.width(), strong});
}

void Layout::addFeet()
{
    for (std::size_t page = 0; page < m_pages.size(); ++page) {
        Page& here = m_pages[page];
        QStringList lines = m_foot;
        lines << Text::tr("Page %1 of %2").arg(page + 1).arg(m_pages.size());
        double y = m_size.height() - static_cast<double>(lines.size()) * lineHeight(footSize);
        here.rules.push_back({QPointF{0, y - gap / 4}, m_size.width(), false});
        for (const QString& line : lines) {
            const double width = std::min(m_size.width(), widthOf(line, footSize));
            here.texts.push_back(
                {QRectF{0, y, width, lineHeight(footSize)}, line, footSize.pixels, footSize.bold, false});
            y += lineHeight(footSize);
        }
    }
}

void paintDrawing(QPainter& painter, const PlacedDrawing& placed, const Colours& colours)
{
    painter.save();
    painter.translate(placed.box.topLeft());
    painter.scale(drawingScale(), drawingScale());
    const QRectF frame{QPointF{0, 0}, placed.box.size() / drawingScale()};
    StrandPainter{painter, placed.drawing.picture, frame, colours, placed.drawing.words}.paint();
    painter.restore();
}

}  // namespace

std::vector<Page> layOut(const Sheet& sheet, const QSizeF& size)
{
    return Layout{sheet, size}.pages();
}

Scroll layOutAsOne(const Sheet& sheet, double width)
{
    constexpr double endless = 1e7;
    return Layout{sheet, QSizeF{width, endless}}.scroll();
}

void paint(QPainter& painter, const Page& page, const Colours& colours)
{
    for (const PlacedDrawing& drawing : page.drawings)
        paintDrawing(painter, drawing, colours);
    for (const PlacedRule& rule : page.rules) {
        painter.setPen(QPen{rule.strong ? colours.ink : colours.hairline, rule.strong ? 1.0 : 0.5});
        painter.drawLine(rule.from, rule.from + QPointF{rule.width, 0});
    }
    for (const PlacedText& text : page.texts) {
        const QFont font = paperFont(text.pixels, text.bold);
        painter.setFont(font);
        painter.setPen(text.quiet ? colours.quietInk : colours.ink);
        painter.drawText(text.box.topLeft() + QPointF{0, QFontMetricsF{font}.ascent()}, text.text);
    }
}

QFont paperFont(int pixels, bool bold)
{
    QFont font = Theme::exactFont(pixels, bold);
    // Lengths are those of the typeface, not of a screen.
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

}  // namespace app::desktop::print
