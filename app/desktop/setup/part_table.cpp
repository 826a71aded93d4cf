#include "app/desktop/setup/part_table.h"

#include "app/desktop/sentences.h"
#include "app/desktop/setup/grouped_header.h"

namespace app::desktop {
namespace {

/// Whether a problem's place is the column's or something inside it.
bool isWithin(const std::string& place, const std::string& column)
{
    return place.starts_with(column)
        && (place.size() == column.size() || place[column.size()] == '.' || place[column.size()] == '[');
}

}  // namespace

PartTable::PartTable(ServiceDocument& document, edits::Part part, const Moments& moments, QObject* parent)
    : QAbstractTableModel{parent}
    , m_document{document}
    , m_part{part}
    , m_columns{columnsOf(part, moments)}
{
    connect(&document, &ServiceDocument::changed, this, &PartTable::follow);
    follow();
}

void PartTable::showCoat(std::size_t coat)
{
    m_coat = coat;
    follow();
}

/// Keeps the cursor where it is as long as the number of rows stays the same.
void PartTable::follow()
{
    const int rows = static_cast<int>(edits::count(m_document.service(), m_coat, m_part));
    if (rows != m_rows) {
        beginResetModel();
        m_rows = rows;
        endResetModel();
    } else if (rows > 0) {
        Q_EMIT dataChanged(index(0, 0), index(rows - 1, columnCount() - 1));
    }
}

CellPlace PartTable::placeAt(const QModelIndex& cell) const
{
    return {m_coat, static_cast<std::size_t>(cell.row())};
}

QModelIndex PartTable::cellOf(const std::string& place) const
{
    for (int row = 0; row < m_rows; ++row) {
        const std::string rowPlace = placeOf(m_part, {m_coat, static_cast<std::size_t>(row)});
        if (!isWithin(place, rowPlace))
            continue;
        for (int column = 0; column < columnCount(); ++column)
            if (isWithin(place, rowPlace + '.' + m_columns[static_cast<std::size_t>(column)].key))
                return index(row, column);
        // A fault of the whole row, or inside a group of columns such as "looks".
        for (int column = 0; column < columnCount(); ++column) {
            const std::string& key = m_columns[static_cast<std::size_t>(column)].key;
            if (isWithin(place, rowPlace + '.' + key.substr(0, key.find('.'))))
                return index(row, column);
        }
        return index(row, 0);
    }
    return {};
}

QString PartTable::wrongAt(const QModelIndex& cell) const
{
    QStringList wrong;
    for (const core::service::Problem& problem : m_document.problems())
        if (cellOf(problem.place) == cell)
            wrong << inWords(problem.what);
    return wrong.join(QLatin1Char{'\n'});
}

int PartTable::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : m_rows;
}

int PartTable::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

/// Between a change of the service and its row count here, a view may still ask for a row that is gone.
bool PartTable::isThere(const QModelIndex& cell) const
{
    return cell.isValid()
        && static_cast<std::size_t>(cell.row()) < edits::count(m_document.service(), m_coat, m_part);
}

QVariant PartTable::data(const QModelIndex& cell, int role) const
{
    if (!isThere(cell))
        return {};
    const Column& column = m_columns[static_cast<std::size_t>(cell.column())];
    switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole: return column.read(m_document.service(), placeAt(cell));
    case Qt::ToolTipRole: {
        const QString wrong = wrongAt(cell);
        return wrong.isEmpty() ? column.tip : wrong;
    }
    case Qt::AccessibleDescriptionRole: return wrongAt(cell);
    case WrongRole: return !wrongAt(cell).isEmpty();
    case ChoicesRole:
        return column.choices ? column.choices(m_document.service(), placeAt(cell)) : QStringList{};
    default: return {};
    }
}

QVariant PartTable::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Vertical)
        return role == Qt::DisplayRole ? QVariant{section + 1} : QVariant{};
    if (section < 0 || section >= columnCount())
        return {};
    const Column& column = m_columns[static_cast<std::size_t>(section)];
    switch (role) {
    case Qt::DisplayRole: return column.title;
    case Qt::ToolTipRole: return column.tip;
    case GroupedHeader::GroupRole: return column.group;
    case Qt::AccessibleDescriptionRole:
        return column.group.isEmpty() ? column.tip
                                      : tr("%1: %2", "group, column").arg(column.group, column.tip);
    default: return {};
    }
}

Qt::ItemFlags PartTable::flags(const QModelIndex& cell) const
{
    const Qt::ItemFlags shown = QAbstractTableModel::flags(cell);
    return m_columns[static_cast<std::size_t>(cell.column())].write ? shown | Qt::ItemIsEditable : shown;
}

bool PartTable::setData(const QModelIndex& cell, const QVariant& value, int role)
{
    const Column& column = m_columns[static_cast<std::size_t>(cell.column())];
    if (role != Qt::EditRole || !column.write || !isThere(cell))
        return false;
    const QString rowName = m_columns.front().read(m_document.service(), placeAt(cell));
    bool taken = false;
    // "Usual of Root to 12": what an undo undoes is said in the words of the table.
    const QString name = tr("%1 of %2 to %3").arg(column.title, rowName, value.toString().trimmed());
    m_document.edit(name, [&](edits::Service& service) {
        edits::Service attempt = service;
        taken = column.write(attempt, placeAt(cell), value.toString());
        if (taken)
            service = std::move(attempt);
    });
    if (!taken)
        Q_EMIT refused(
            tr("%1: '%2' was not understood. %3").arg(column.title, value.toString(), entryHelp(column)));
    return taken;
}

}  // namespace app::desktop
