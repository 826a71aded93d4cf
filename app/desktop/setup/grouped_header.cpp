#include "app/desktop/setup/grouped_header.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <QPainter>
#include <QScrollBar>

#include <algorithm>

namespace app::desktop {
namespace {

constexpr int groupEdge = 7;  ///< Left and right of the words, as the headings have it.

QFont groupFont()
{
    return Theme::font(metrics::textSmall, true);
}

}  // namespace

GroupedHeader::GroupedHeader(QWidget* parent)
    : QHeaderView{Qt::Horizontal, parent}
{
}

/// Words that stay in view while their columns move cannot be moved with them.
void GroupedHeader::setModel(QAbstractItemModel* model)
{
    QHeaderView::setModel(model);
    const auto* table = qobject_cast<QAbstractScrollArea*>(parentWidget());
    if (table != nullptr)
        connect(table->horizontalScrollBar(), &QScrollBar::valueChanged, viewport(),
                qOverload<>(&QWidget::update), Qt::UniqueConnection);
}

QString GroupedHeader::groupOf(int column) const
{
    return model() == nullptr ? QString{} : model()->headerData(column, Qt::Horizontal, GroupRole).toString();
}

GroupedHeader::Run GroupedHeader::runOf(int column) const
{
    const QString group = groupOf(column);
    Run run{column, column};
    while (run.first > 0 && groupOf(run.first - 1) == group)
        --run.first;
    while (run.last + 1 < count() && groupOf(run.last + 1) == group)
        ++run.last;
    return run;
}

int GroupedHeader::groupHeight() const
{
    for (int column = 0; column < count(); ++column)
        if (!groupOf(column).isEmpty())
            return QFontMetrics{groupFont()}.height() + 2;
    return 0;
}

QRect GroupedHeader::groupPlace(int column) const
{
    const Run run = runOf(column);
    const int left = sectionViewportPosition(run.first);
    const int right = sectionViewportPosition(run.last) + sectionSize(run.last);
    return QRect{left, 0, right - left, groupHeight()}.intersected(viewport()->rect());
}

/// Together the columns of a group are as wide as its name.
QSize GroupedHeader::sectionSizeFromContents(int column) const
{
    QSize size = QHeaderView::sectionSizeFromContents(column);
    const QString group = groupOf(column);
    if (!group.isEmpty()) {
        const Run run = runOf(column);
        const int columns = run.last - run.first + 1;
        const int wanted = QFontMetrics{groupFont()}.horizontalAdvance(group) + 2 * groupEdge;
        size.setWidth(std::max(size.width(), (wanted + columns - 1) / columns));
    }
    size.rheight() += groupHeight();
    return size;
}

void GroupedHeader::paintSection(QPainter* painter, const QRect& place, int column) const
{
    const int above = groupHeight();
    QHeaderView::paintSection(painter, place.adjusted(0, above, 0, 0), column);
    if (above > 0)
        paintGroup(*painter, {place.left(), place.top(), place.width(), above}, column);
}

/// Its part of what is drawn above the whole run.
void GroupedHeader::paintGroup(QPainter& painter, const QRect& place, int column) const
{
    painter.save();
    painter.setClipRect(place);
    painter.fillRect(place, palette().button());
    const QString group = groupOf(column);
    painter.setPen(palette().color(QPalette::Mid));
    if (runOf(column).last == column)
        painter.drawLine(place.topRight(), place.bottomRight());
    if (!group.isEmpty()) {
        painter.drawLine(place.bottomLeft(), place.bottomRight());
        painter.setFont(groupFont());
        painter.setPen(palette().color(QPalette::WindowText));
        painter.drawText(groupPlace(column).adjusted(groupEdge, 0, -groupEdge, 0),
                         Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, group);
    }
    painter.restore();
}

}  // namespace app::desktop
