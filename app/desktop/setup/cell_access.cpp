#include "app/desktop/setup/cell_access.h"

#include <QCoreApplication>
#include <QHeaderView>

namespace app::desktop {
namespace {

struct CellAccessText {
    Q_DECLARE_TR_FUNCTIONS(CellAccess)
};

}  // namespace

CellAccess::CellAccess(QTableView& view, int row, int column)
    : m_view{&view}
    , m_row{row}
    , m_column{column}
{
}

bool CellAccess::isValid() const
{
    return m_view && m_view->model() != nullptr && m_row < m_view->model()->rowCount()
        && m_column < m_view->model()->columnCount();
}

QAccessibleInterface* CellAccess::parent() const
{
    return QAccessible::queryAccessibleInterface(m_view);
}

QModelIndex CellAccess::cell() const
{
    return isValid() && !isHeading() ? m_view->model()->index(m_row, m_column) : QModelIndex{};
}

QString CellAccess::content() const
{
    if (!isValid())
        return {};
    if (!isHeading())
        return cell().data().toString();
    const bool ofColumn = m_row < 0;
    if (ofColumn && m_column < 0)  // The corner above one kind of headings and beside the other.
        return {};
    return m_view->model()
        ->headerData(ofColumn ? m_column : m_row, ofColumn ? Qt::Horizontal : Qt::Vertical)
        .toString();
}

bool CellAccess::isWritable() const
{
    return cell().flags().testFlag(Qt::ItemIsEditable);
}

/// A heading is heard without what stands above it.
QString CellAccess::headingText(QAccessible::Text kind) const
{
    if (kind == QAccessible::Name)
        return content();
    const bool described = kind == QAccessible::Description && m_column >= 0;
    return described
        ? m_view->model()->headerData(m_column, Qt::Horizontal, Qt::AccessibleDescriptionRole).toString()
        : QString{};
}

/// "Zone 1", "Target of Root": a cell is heard without those around it.
QString CellAccess::text(QAccessible::Text kind) const
{
    if (!isValid())
        return {};
    if (isHeading())
        return headingText(kind);
    switch (kind) {
    case QAccessible::Name: {
        const QString column = m_view->model()->headerData(m_column, Qt::Horizontal).toString();
        const QString row = cell().siblingAtColumn(0).data().toString();
        return m_column == 0 ? QStringLiteral("%1 %2").arg(column).arg(m_row + 1)
                             : CellAccessText::tr("%1 of %2", "column, row").arg(column, row);
    }
    case QAccessible::Description: return cell().data(Qt::ToolTipRole).toString();
    case QAccessible::Value: return content();
    default: return {};
    }
}

void CellAccess::setText(QAccessible::Text kind, const QString& text)
{
    if (kind == QAccessible::Value)
        replaceText(0, characterCount(), text);
}

QRect CellAccess::rect() const
{
    if (!isValid())
        return {};
    if (!isHeading()) {
        const QRect place = m_view->visualRect(cell());
        return {m_view->viewport()->mapToGlobal(place.topLeft()), place.size()};
    }
    const QHeaderView* header = m_row < 0 ? m_view->horizontalHeader() : m_view->verticalHeader();
    if (m_row < 0 && m_column < 0)
        return {};
    const int section = m_row < 0 ? m_column : m_row;
    const int at = header->sectionViewportPosition(section);
    const int size = header->sectionSize(section);
    const QRect place =
        m_row < 0 ? QRect{at, 0, size, header->height()} : QRect{0, at, header->width(), size};
    return {header->viewport()->mapToGlobal(place.topLeft()), place.size()};
}

QAccessible::Role CellAccess::role() const
{
    if (m_row < 0)
        return QAccessible::ColumnHeader;
    return m_column < 0 ? QAccessible::RowHeader : QAccessible::Cell;
}

QAccessible::State CellAccess::state() const
{
    QAccessible::State state;
    if (!isValid()) {
        state.invalid = true;
        return state;
    }
    const QRect whole{m_view->mapToGlobal(QPoint{}), m_view->size()};
    state.offscreen = !whole.intersects(rect());
    state.invisible = !m_view->isVisible() || (m_column < 0 && m_view->verticalHeader()->isHidden());
    if (isHeading())
        return state;
    state.selectable = true;
    state.selected = isSelected();
    state.focusable = true;
    state.focused = m_view->hasFocus() && m_view->currentIndex() == cell();
    state.editable = isWritable();
    state.readOnly = !isWritable();
    return state;
}

void* CellAccess::interface_cast(QAccessible::InterfaceType type)
{
    if (isHeading())
        return nullptr;
    switch (type) {
    case QAccessible::TableCellInterface: return static_cast<QAccessibleTableCellInterface*>(this);
    case QAccessible::TextInterface: return static_cast<QAccessibleTextInterface*>(this);
    case QAccessible::EditableTextInterface:
        return isWritable() ? static_cast<QAccessibleEditableTextInterface*>(this) : nullptr;
    case QAccessible::ActionInterface: return static_cast<QAccessibleActionInterface*>(this);
    default: return nullptr;
    }
}

bool CellAccess::isSelected() const
{
    return isValid() && !isHeading() && m_view->selectionModel()->isSelected(cell());
}

QList<QAccessibleInterface*> CellAccess::columnHeaderCells() const
{
    QAccessibleInterface* const table = parent();
    return table == nullptr ? QList<QAccessibleInterface*>{}
                            : QList<QAccessibleInterface*>{table->child(m_column + 1)};
}

QString CellAccess::text(int from, int until) const
{
    return content().mid(from, until - from);
}

int CellAccess::characterCount() const
{
    return static_cast<int>(content().size());
}

void CellAccess::scrollToSubstring(int, int)
{
    if (isValid())
        m_view->scrollTo(cell());
}

QString CellAccess::attributes(int, int* from, int* until) const
{
    *from = 0;
    *until = characterCount();
    return {};
}

void CellAccess::replaceText(int from, int until, const QString& text)
{
    if (!isWritable())
        return;
    QString whole = content();
    whole.replace(from, until - from, text);
    m_view->model()->setData(cell(), whole);
}

QStringList CellAccess::actionNames() const
{
    if (!isValid() || isHeading())
        return {};
    return isWritable() ? QStringList{pressAction(), setFocusAction()} : QStringList{setFocusAction()};
}

void CellAccess::doAction(const QString& action)
{
    if (!isValid() || isHeading())
        return;
    m_view->setFocus();
    m_view->setCurrentIndex(cell());
    if (action == pressAction() && isWritable())
        m_view->edit(cell());
}

}  // namespace app::desktop
