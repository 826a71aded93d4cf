#include "app/desktop/lanes/lanes_grid.h"

#include "app/desktop/look/metrics.h"

#include <QGridLayout>

#include <algorithm>

namespace app::desktop {

LanesGrid::LanesGrid(const Theme& theme, bool compact, QWidget* parent)
    : QWidget{parent}
    , m_theme{theme}
    , m_compact{compact}
    , m_layout{new QGridLayout{this}}
{
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setSpacing(metrics::gapSmall);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void LanesGrid::showLanes(const view::LanesView& lanes, const WallClock& clock)
{
    const bool other = m_cards.size() != lanes.lanes.size();
    while (m_cards.size() > lanes.lanes.size()) {
        delete m_cards.back();
        m_cards.pop_back();
    }
    while (m_cards.size() < lanes.lanes.size()) {
        m_cards.push_back(new LaneCard{m_theme, m_compact});
        m_cards.back()->setObjectName(QStringLiteral("%1%2")
                                          .arg(m_compact ? QStringLiteral("strip") : QStringLiteral("lane"))
                                          .arg(m_cards.size()));
    }
    for (std::size_t place = 0; place < m_cards.size(); ++place)
        m_cards[place]->showLane(lanes.lanes[place], place, clock);
    if (other) {
        m_columns = 0;
        arrange();
    }
}

void LanesGrid::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

int LanesGrid::columnsFor(int width) const
{
    const int lanes = static_cast<int>(m_cards.size());
    const int least = m_cards.front()->minimumSizeHint().width() + m_layout->spacing();
    const int columns = std::clamp((width + m_layout->spacing()) / least, 1, lanes);
    // Rows as even as can be: four lanes are two and two, not three and one.
    return (lanes + (lanes + columns - 1) / columns - 1) / ((lanes + columns - 1) / columns);
}

int LanesGrid::leastHeight(int width) const
{
    if (m_cards.empty())
        return 0;
    const int columns = columnsFor(width);
    const int rows = (static_cast<int>(m_cards.size()) + columns - 1) / columns;
    return rows * (m_cards.front()->minimumSizeHint().height() + m_layout->spacing()) - m_layout->spacing();
}

void LanesGrid::arrange()
{
    if (m_cards.empty())
        return;
    const int lanes = static_cast<int>(m_cards.size());
    const int columns = columnsFor(width());
    if (columns == m_columns)
        return;
    m_columns = columns;
    for (int lane = 0; lane < lanes; ++lane)
        m_layout->addWidget(m_cards[static_cast<std::size_t>(lane)], lane / columns, lane % columns);
    for (int column = 0; column < m_layout->columnCount(); ++column)
        m_layout->setColumnStretch(column, column < columns ? 1 : 0);
    updateGeometry();
}

}  // namespace app::desktop
