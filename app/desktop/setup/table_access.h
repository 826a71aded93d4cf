#pragma once

#include <QAccessibleWidget>
#include <QTableView>

#include <unordered_map>

namespace app::desktop {

/// A table of Set-up for whoever has it read aloud. The toolkit's own has cells that can be read and not
/// written.
class TableAccess final : public QAccessibleWidget, public QAccessibleTableInterface {
public:
    /// From then on whoever asks for what can be read of a table of Set-up is given this.
    static void install();

    explicit TableAccess(QTableView& view);
    ~TableAccess() override;
    TableAccess(const TableAccess&) = delete;
    TableAccess& operator=(const TableAccess&) = delete;

    // Headings count as children, as the view counts them when it tells which has the keyboard.
    [[nodiscard]] QAccessibleInterface* child(int place) const override;
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override;
    [[nodiscard]] QAccessibleInterface* focusChild() const override;
    [[nodiscard]] int childCount() const override;
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override;
    void* interface_cast(QAccessible::InterfaceType type) override;

    [[nodiscard]] QAccessibleInterface* caption() const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* summary() const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* cellAt(int row, int column) const override;
    [[nodiscard]] int selectedCellCount() const override;
    [[nodiscard]] QList<QAccessibleInterface*> selectedCells() const override;
    [[nodiscard]] QString columnDescription(int column) const override;
    [[nodiscard]] QString rowDescription(int row) const override;
    [[nodiscard]] int selectedColumnCount() const override { return 0; }
    [[nodiscard]] int selectedRowCount() const override { return 0; }
    [[nodiscard]] int columnCount() const override;
    [[nodiscard]] int rowCount() const override;
    [[nodiscard]] QList<int> selectedColumns() const override { return {}; }
    [[nodiscard]] QList<int> selectedRows() const override { return {}; }
    [[nodiscard]] bool isColumnSelected(int) const override { return false; }
    [[nodiscard]] bool isRowSelected(int) const override { return false; }
    // One cell is chosen at a time.
    bool selectRow(int row) override;
    bool selectColumn(int) override { return false; }
    bool unselectRow(int) override { return false; }
    bool unselectColumn(int) override { return false; }
    void modelChange(QAccessibleTableModelChangeEvent*) override { }

private:
    [[nodiscard]] QTableView* view() const;
    [[nodiscard]] int placeOf(int row, int column) const;

    mutable std::unordered_map<int, QAccessible::Id> m_cells;  ///< By their place among the children.
};

}  // namespace app::desktop
