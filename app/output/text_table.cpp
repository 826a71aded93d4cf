#include "app/output/text_table.h"

#include <algorithm>

namespace app::output {

namespace {

/// Characters of UTF-8 text, combining accents not counted.
std::size_t widthOf(const std::string& text)
{
    std::size_t width = 0;
    for (std::size_t place = 0; place < text.size(); ++place) {
        const auto byte = static_cast<unsigned char>(text[place]);
        const bool begins = (byte & 0xc0U) != 0x80U;
        const bool combines = byte == 0xcc || byte == 0xcd;
        if (begins && !combines)
            ++width;
    }
    return width;
}

}  // namespace

TextTable::TextTable(std::vector<Column> columns)
    : m_columns{std::move(columns)}
{
}

void TextTable::addRow(std::vector<std::string> cells)
{
    cells.resize(m_columns.size());
    m_rows.push_back(std::move(cells));
}

std::vector<std::size_t> TextTable::widths() const
{
    std::vector<std::size_t> widths(m_columns.size(), 0);
    for (const auto& row : m_rows)
        for (std::size_t column = 0; column < row.size(); ++column)
            widths[column] = std::max(widths[column], widthOf(row[column]));
    for (std::size_t column = 0; column < widths.size(); ++column)
        if (widths[column] > 0)
            widths[column] = std::max(widths[column], widthOf(m_columns[column].heading));
    return widths;
}

std::string TextTable::line(const std::vector<std::string>& cells,
                            const std::vector<std::size_t>& widths) const
{
    std::string line;
    for (std::size_t column = 0; column < cells.size(); ++column) {
        if (widths[column] == 0)
            continue;
        const std::string space(widths[column] - widthOf(cells[column]), ' ');
        line += m_columns[column].side == Side::Right ? space + cells[column] : cells[column] + space;
        line += "  ";
    }
    line.erase(line.find_last_not_of(' ') + 1);
    return line + "\n";
}

std::string TextTable::text() const
{
    const auto widths = this->widths();
    std::vector<std::string> headings;
    for (const Column& column : m_columns)
        headings.push_back(column.heading);
    std::string text = line(headings, widths);
    for (const auto& row : m_rows)
        text += line(row, widths);
    return text;
}

}  // namespace app::output
