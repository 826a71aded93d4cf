#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace app::output {

/// Lines of cells, set in columns that are as wide as what stands in them.
class TextTable {
public:
    enum class Side { Left, Right };

    /// A column for each heading.
    struct Column {
        std::string heading;
        Side side = Side::Left;
    };
    explicit TextTable(std::vector<Column> columns);

    /// As many cells as there are columns; missing ones are empty.
    void addRow(std::vector<std::string> cells);

    /// The heading and the rows, two spaces between columns, no spaces at the end of
    /// a line. A column in which nothing stands is left out.
    [[nodiscard]] std::string text() const;

private:
    [[nodiscard]] std::vector<std::size_t> widths() const;
    [[nodiscard]] std::string line(const std::vector<std::string>& cells,
                                   const std::vector<std::size_t>& widths) const;

    std::vector<Column> m_columns;
    std::vector<std::vector<std::string>> m_rows;
};

}  // namespace app::output
