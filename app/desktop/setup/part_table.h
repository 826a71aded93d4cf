#pragma once

#include "app/desktop/setup/columns.h"
#include "app/desktop/setup/service_document.h"

#include <QAbstractTableModel>

namespace app::desktop {

/// One list of the service (zones, bowls, groups, hands) as a table. What is
/// wrong with a cell is its tool tip, and `WrongRole` is true.
class PartTable : public QAbstractTableModel {
    Q_OBJECT

public:
    static constexpr int WrongRole = Qt::UserRole;
    static constexpr int ChoicesRole = Qt::UserRole + 1;

    PartTable(ServiceDocument& document, edits::Part part, const Moments& moments = {},
              QObject* parent = nullptr);

    void showCoat(std::size_t coat);
    [[nodiscard]] std::size_t coat() const { return m_coat; }
    [[nodiscard]] edits::Part part() const { return m_part; }

    /// The cell that a problem's place points at; invalid where it is none of this table.
    [[nodiscard]] QModelIndex cellOf(const std::string& place) const;

    /// What is wrong with a cell, a sentence each; empty where nothing is.
    [[nodiscard]] QString wrongAt(const QModelIndex& cell) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& cell, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& cell) const override;
    bool setData(const QModelIndex& cell, const QVariant& value, int role = Qt::EditRole) override;

Q_SIGNALS:
    /// What was typed made no sense; the cell is as it was.
    void refused(const QString& why);

private:
    void follow();
    [[nodiscard]] bool isThere(const QModelIndex& cell) const;
    [[nodiscard]] CellPlace placeAt(const QModelIndex& cell) const;

    ServiceDocument& m_document;
    edits::Part m_part;
    std::vector<Column> m_columns;
    std::size_t m_coat = 0;
    int m_rows = 0;
};

}  // namespace app::desktop
