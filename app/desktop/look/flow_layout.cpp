#include "app/desktop/look/flow_layout.h"

#include "app/desktop/look/metrics.h"

#include <QBoxLayout>
#include <QWidget>

#include <algorithm>

namespace app::desktop {
namespace {

int widthOf(const QLayoutItem& item)
{
    return std::max(item.sizeHint().width(), item.minimumSize().width());
}

int flowHeight(const QLayoutItem& item, int width)
{
    const int wanted = item.hasHeightForWidth() ? item.heightForWidth(width) : item.sizeHint().height();
    return std::max(wanted, item.minimumSize().height());
}

/// What says nothing of its width takes what it gets.
bool grows(QLayoutItem& item)
{
    const QWidget* widget = item.widget();
    return item.expandingDirections().testFlag(Qt::Horizontal)
        || (widget != nullptr && widget->sizePolicy().horizontalPolicy() == QSizePolicy::Ignored);
}

}  // namespace

FlowLayout::FlowLayout(QWidget* parent)
    : QLayout{parent}
{
    setContentsMargins(0, 0, 0, 0);
    setSpacing(metrics::gapSmall);
}

void FlowLayout::addItem(QLayoutItem* item)
{
    m_items.emplace_back(item);
}

void FlowLayout::addPair(QWidget* label, QWidget* field)
{
    auto* pair = new QWidget;
    auto* row = new QHBoxLayout{pair};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(metrics::gapTiny);
    row->addWidget(label);
    row->addWidget(field, 1);
    const bool grows = field->sizePolicy().expandingDirections().testFlag(Qt::Horizontal);
    pair->setSizePolicy(grows ? QSizePolicy::Expanding : QSizePolicy::Maximum, QSizePolicy::Fixed);
    addWidget(pair);
}

QLayoutItem* FlowLayout::itemAt(int place) const
{
    return place >= 0 && place < count() ? m_items[static_cast<std::size_t>(place)].get() : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int place)
{
    if (itemAt(place) == nullptr)
        return nullptr;
    QLayoutItem* const item = m_items[static_cast<std::size_t>(place)].release();
    m_items.erase(m_items.begin() + place);
    return item;
}

std::vector<FlowLayout::Line> FlowLayout::linesFor(int width) const
{
    std::vector<Line> lines;
    int used = 0;
    for (const auto& item : m_items) {
        if (item->isEmpty())
            continue;
        // One that is wider than the whole line gets the line.
        const int wanted = std::min(widthOf(*item), width);
        if (lines.empty() || used + spacing() + wanted > width) {
            lines.emplace_back();
            used = wanted;
        } else {
            used += spacing() + wanted;
        }
        lines.back().push_back({item.get(), wanted});
    }
    leaveNoneAlone(lines, width);
    for (Line& line : lines)
        stretch(line, width);
    return lines;
}

/// What does not fit on a line of many any more looks lost on one of its own, so another keeps it company.
void FlowLayout::leaveNoneAlone(std::vector<Line>& lines, int width) const
{
    constexpr std::size_t many = 3;
    if (lines.size() < 2 || lines.back().size() > 1 || lines[lines.size() - 2].size() < many)
        return;
    Line& before = lines[lines.size() - 2];
    if (before.back().width + spacing() + lines.back().front().width > width)
        return;
    lines.back().insert(lines.back().begin(), before.back());
    before.pop_back();
}

void FlowLayout::stretch(Line& line, int width) const
{
    int rest = width + spacing();
    for (const Part& part : line)
        rest -= part.width + spacing();
    const auto growing =
        static_cast<int>(std::ranges::count_if(line, [](const Part& part) { return grows(*part.item); }));
    for (Part& part : line)
        if (rest > 0 && grows(*part.item))
            part.width = std::min(part.width + rest / growing, part.item->maximumSize().width());
}

int FlowLayout::heightOf(const Line& line)
{
    int height = 0;
    for (const Part& part : line)
        height = std::max(height, flowHeight(*part.item, part.width));
    return height;
}

int FlowLayout::heightForWidth(int width) const
{
    const QMargins edges = contentsMargins();
    int height = edges.top() + edges.bottom();
    const auto lines = linesFor(width - edges.left() - edges.right());
    for (const Line& line : lines)
        height += heightOf(line) + (&line == &lines.front() ? 0 : spacing());
    return height;
}

QSize FlowLayout::sizeHint() const
{
    const QMargins edges = contentsMargins();
    int width = edges.left() + edges.right();
    int height = 0;
    for (const auto& item : m_items) {
        if (item->isEmpty())
            continue;
        width += widthOf(*item) + spacing();
        height = std::max(height, flowHeight(*item, widthOf(*item)));
    }
    return {width, height + edges.top() + edges.bottom()};
}

QSize FlowLayout::minimumSize() const
{
    const QMargins edges = contentsMargins();
    QSize size;
    for (const auto& item : m_items)
        if (!item->isEmpty())
            size = size.expandedTo({item->minimumSize().width(), item->minimumSize().height()});
    return size + QSize{edges.left() + edges.right(), edges.top() + edges.bottom()};
}

void FlowLayout::setGeometry(const QRect& rect)
{
    QLayout::setGeometry(rect);
    QRect room = rect.marginsRemoved(contentsMargins());
    for (const Line& line : linesFor(room.width())) {
        room.setHeight(heightOf(line));
        int x = room.left();
        for (const Part& part : line) {
            const int height = std::min(flowHeight(*part.item, part.width), room.height());
            part.item->setGeometry({x, room.top() + (room.height() - height) / 2, part.width, height});
            x += part.width + spacing();
        }
        room.translate(0, room.height() + spacing());
    }
}

}  // namespace app::desktop
