#include "app/desktop/setup/table_access.h"

#include "app/desktop/setup/cell_access.h"
#include "app/desktop/setup/part_table.h"

#include <algorithm>

namespace app::desktop {
namespace {

QAccessibleInterface* accessOf(const QString& kind, QObject* object)
{
    auto* const view = qobject_cast<QTableView*>(object);
    const bool ours = kind == QLatin1String{"QTableView"} && view != nullptr
        && qobject_cast<PartTable*>(view->model()) != nullptr;
    return ours ? new TableAccess{*view} : nullptr;
}

}  // namespace

void TableAccess::install()
{
    [[maybe_unused]] static const bool once = [] {
        QAccessible::installFactory(&accessOf);
        return true;
    }();
}

TableAccess::TableAccess(QTableView& view)
    : QAccessibleWidget{&view, QAccessible::Table}
{
}

TableAccess::~TableAccess()
{
    for (const auto& [place, id] : m_cells)
        QAccessible::deleteAccessibleInterface(id);
}

QTableView* TableAccess::view() const
{
    return qobject_cast<QTableView*>(widget());
}

int TableAccess::placeOf(int row, int column) const
{
    return (row + 1) * (columnCount() + 1) + column + 1;
}

QAccessibleInterface* TableAccess::child(int place) const
{
    if (place < 0 || place >= childCount())
        return nullptr;
    if (const auto known = m_cells.find(place); known != m_cells.end())
        return QAccessible::accessibleInterface(known->second);
    const int across = columnCount() + 1;
    auto* const made = new CellAccess{*view(), place / across - 1, place % across - 1};
    m_cells[place] = QAccessible::registerAccessibleInterface(made);
    return made;
}

QAccessibleInterface* TableAccess::childAt(int x, int y) const
{
    const QModelIndex cell = view()->indexAt(view()->viewport()->mapFromGlobal(QPoint{x, y}));
    return cell.isValid() ? cellAt(cell.row(), cell.column()) : nullptr;
}

QAccessibleInterface* TableAccess::focusChild() const
{
    const QModelIndex current = view()->currentIndex();
    return current.isValid() ? cellAt(current.row(), current.column()) : nullptr;
}

int TableAccess::childCount() const
{
    return (rowCount() + 1) * (columnCount() + 1);
}

int TableAccess::indexOfChild(const QAccessibleInterface* child) const
{
    const auto* const cell = dynamic_cast<const CellAccess*>(child);
    return cell == nullptr ? -1 : placeOf(cell->rowIndex(), cell->columnIndex());
}

void* TableAccess::interface_cast(QAccessible::InterfaceType type)
{
    if (type == QAccessible::TableInterface)
        return static_cast<QAccessibleTableInterface*>(this);
    return QAccessibleWidget::interface_cast(type);
}

QAccessibleInterface* TableAccess::cellAt(int row, int column) const
{
    const bool there = row >= 0 && row < rowCount() && column >= 0 && column < columnCount();
    return there ? child(placeOf(row, column)) : nullptr;
}

int TableAccess::selectedCellCount() const
{
    return static_cast<int>(view()->selectionModel()->selectedIndexes().size());
}

QList<QAccessibleInterface*> TableAccess::selectedCells() const
{
    QList<QAccessibleInterface*> cells;
    for (const QModelIndex& cell : view()->selectionModel()->selectedIndexes())
        cells << cellAt(cell.row(), cell.column());
    return cells;
}

QString TableAccess::columnDescription(int column) const
{
    return view()->model()->headerData(column, Qt::Horizontal).toString();
}

QString TableAccess::rowDescription(int row) const
{
    return view()->model()->index(row, 0).data().toString();
}

int TableAccess::columnCount() const
{
    return view()->model()->columnCount();
}

int TableAccess::rowCount() const
{
    return view()->model()->rowCount();
}

bool TableAccess::selectRow(int row)
{
    if (row < 0 || row >= rowCount())
        return false;
    view()->setCurrentIndex(view()->model()->index(row, std::max(0, view()->currentIndex().column())));
    return true;
}

}  // namespace app::desktop
