#pragma once

#include <QAccessible>
#include <QPointer>
#include <QTableView>

namespace app::desktop {

/// One cell of a table in Set-up, or a heading of it, for whoever has it read aloud: what it is called, what
/// stands in it, what is wrong with it, and a way to write something else without a keyboard.
class CellAccess final : public QAccessibleInterface,
                         public QAccessibleTableCellInterface,
                         public QAccessibleTextInterface,
                         public QAccessibleEditableTextInterface,
                         public QAccessibleActionInterface {
public:
    /// A row of -1 is the headings of the columns, a column of -1 those of the rows.
    CellAccess(QTableView& view, int row, int column);

    [[nodiscard]] bool isValid() const override;
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* parent() const override;
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    [[nodiscard]] QString text(QAccessible::Text kind) const override;
    void setText(QAccessible::Text kind, const QString& text) override;
    [[nodiscard]] QRect rect() const override;
    [[nodiscard]] QAccessible::Role role() const override;
    [[nodiscard]] QAccessible::State state() const override;
    void* interface_cast(QAccessible::InterfaceType type) override;

    // A place in the table.
    [[nodiscard]] bool isSelected() const override;
    [[nodiscard]] QList<QAccessibleInterface*> columnHeaderCells() const override;
    [[nodiscard]] QList<QAccessibleInterface*> rowHeaderCells() const override { return {}; }
    [[nodiscard]] int columnIndex() const override { return m_column; }
    [[nodiscard]] int rowIndex() const override { return m_row; }
    [[nodiscard]] int columnExtent() const override { return 1; }
    [[nodiscard]] int rowExtent() const override { return 1; }
    [[nodiscard]] QAccessibleInterface* table() const override { return parent(); }

    // What stands in it.
    void selection(int, int* from, int* until) const override { *from = *until = 0; }
    [[nodiscard]] int selectionCount() const override { return 0; }
    void addSelection(int, int) override { }
    void removeSelection(int) override { }
    void setSelection(int, int, int) override { }
    [[nodiscard]] int cursorPosition() const override { return 0; }
    void setCursorPosition(int) override { }
    [[nodiscard]] QString text(int from, int until) const override;
    [[nodiscard]] int characterCount() const override;
    [[nodiscard]] QRect characterRect(int) const override { return rect(); }
    [[nodiscard]] int offsetAtPoint(const QPoint&) const override { return -1; }
    void scrollToSubstring(int from, int until) override;
    [[nodiscard]] QString attributes(int offset, int* from, int* until) const override;

    // Writing: each is one change of the service, which can be undone, or is refused as what is typed is.
    void deleteText(int from, int until) override { replaceText(from, until, {}); }
    void insertText(int at, const QString& text) override { replaceText(at, at, text); }
    void replaceText(int from, int until, const QString& text) override;

    // Going there, and opening it as Enter does.
    [[nodiscard]] QStringList actionNames() const override;
    void doAction(const QString& action) override;
    [[nodiscard]] QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    [[nodiscard]] bool isHeading() const { return m_row < 0 || m_column < 0; }
    [[nodiscard]] QModelIndex cell() const;
    [[nodiscard]] QString content() const;
    [[nodiscard]] QString headingText(QAccessible::Text kind) const;
    [[nodiscard]] bool isWritable() const;

    QPointer<QTableView> m_view;
    int m_row;
    int m_column;
};

}  // namespace app::desktop
