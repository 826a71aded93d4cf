#pragma once

#include <QStyledItemDelegate>

namespace app::desktop {

class Theme;

/// Marks cells that are wrong with a frame and a sign, never by colour alone,
/// and edits a choice with a list.
class CellDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    CellDelegate(const Theme& theme, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& cell) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& cell) const override;
    void setEditorData(QWidget* editor, const QModelIndex& cell) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& cell) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& cell) const override;

private:
    const Theme& m_theme;
};

}  // namespace app::desktop
