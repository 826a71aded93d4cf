#include "app/desktop/setup/cell_delegate.h"

#include "app/desktop/look/theme.h"
#include "app/desktop/setup/part_table.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPainter>

namespace app::desktop {

CellDelegate::CellDelegate(const Theme& theme, QObject* parent)
    : QStyledItemDelegate{parent}
    , m_theme{theme}
{
}

void CellDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& cell) const
{
    QStyledItemDelegate::paint(painter, option, cell);
    if (!cell.data(PartTable::WrongRole).toBool())
        return;
    const QRect box = option.rect.adjusted(1, 1, -2, -2);
    painter->save();
    painter->setPen(QPen{m_theme.colours().late, 2, Qt::DashLine});
    painter->drawRect(box);
    m_theme.icon(QStringLiteral("warning"), m_theme.colours().late)
        .paint(painter, QRect{box.right() - 19, box.center().y() - 8, 17, 17});
    painter->restore();
}

QSize CellDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& cell) const
{
    constexpr int signAndEdges = 16;
    return QStyledItemDelegate::sizeHint(option, cell) + QSize{signAndEdges, 0};
}

QWidget* CellDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                    const QModelIndex& cell) const
{
    const QStringList choices = cell.data(PartTable::ChoicesRole).toStringList();
    if (choices.isEmpty()) {
        QWidget* editor = QStyledItemDelegate::createEditor(parent, option, cell);
        editor->setAccessibleName(cell.model()->headerData(cell.column(), Qt::Horizontal).toString());
        return editor;
    }
    auto* list = new QComboBox{parent};
    list->addItems(choices);
    list->setAccessibleName(cell.model()->headerData(cell.column(), Qt::Horizontal).toString());
    connect(list, &QComboBox::activated, this, [this, list] {
        auto* self = const_cast<CellDelegate*>(this);
        Q_EMIT self->commitData(list);
        Q_EMIT self->closeEditor(list);
    });
    return list;
}

void CellDelegate::setEditorData(QWidget* editor, const QModelIndex& cell) const
{
    if (auto* list = qobject_cast<QComboBox*>(editor))
        list->setCurrentText(cell.data(Qt::EditRole).toString());
    else
        QStyledItemDelegate::setEditorData(editor, cell);
}

void CellDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& cell) const
{
    if (const auto* list = qobject_cast<QComboBox*>(editor))
        model->setData(cell, list->currentText());
    else if (const auto* line = qobject_cast<QLineEdit*>(editor); line == nullptr || line->isModified())
        QStyledItemDelegate::setModelData(editor, model, cell);
}

}  // namespace app::desktop
