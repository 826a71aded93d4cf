#include "app/desktop/lanes/lanes_grid.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/words.h"

#include <QGridLayout>
#include <QLabel>

#include <algorithm>

namespace app::desktop {
namespace {

/// Below an alarm, and where little room is left, more rows would leave none for what matters more.
int rowsNeeded()
{
    return Theme::textSize() > 150 ? 1 : 2;
}

int rowsOf(int lanes, int columns)
{
    return (lanes + columns - 1) / columns;
}

}  // namespace

LanesGrid::LanesGrid(const Theme& theme, bool compact, QWidget* parent)
    : QWidget{parent}
    , m_theme{theme}
    , m_compact{compact}
    , m_layout{new QGridLayout{this}}
    , m_rest{new QLabel{this}}
{
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setSpacing(metrics::gapSmall);
    m_rest->setObjectName(QStringLiteral("otherLanes"));
    m_rest->setFont(Theme::font(metrics::textLane, true));
    m_rest->setAlignment(Qt::AlignCenter);
    m_rest->setWordWrap(true);
    m_rest->setTextFormat(Qt::PlainText);
    m_rest->hide();
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void LanesGrid::showLanes(const view::LanesView& lanes, const WallClock& clock)
{
    if (m_cards.size() != lanes.lanes.size())
        m_places = {};
    while (m_cards.size() > lanes.lanes.size()) {
        delete m_cards.back();
        m_cards.pop_back();
    }
    while (m_cards.size() < lanes.lanes.size()) {
        m_cards.push_back(new LaneCard{m_theme, m_compact, this});
        m_cards.back()->setObjectName(QStringLiteral("%1%2")
                                          .arg(m_compact ? QStringLiteral("strip") : QStringLiteral("lane"))
                                          .arg(m_cards.size()));
    }
    for (std::size_t place = 0; place < m_cards.size(); ++place)
        m_cards[place]->showLane(lanes.lanes[place], place, clock);
    arrange();
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
    return rowsOf(lanes, rowsOf(lanes, columns));
}

int LanesGrid::leastHeight(int width) const
{
    if (m_cards.empty())
        return 0;
    const int rows = rowsOf(static_cast<int>(m_cards.size()), columnsFor(width));
    const int needed = m_compact ? std::min(rows, rowsNeeded()) : rows;
    return needed * (m_cards.front()->minimumSizeHint().height() + m_layout->spacing()) - m_layout->spacing();
}

QSize LanesGrid::minimumSizeHint() const
{
    if (m_cards.empty())
        return {};
    return {m_cards.front()->minimumSizeHint().width(), leastHeight(width())};
}

/// How large a card is in so many columns and rows.
QSize LanesGrid::cardSize(const QSize& room, int columns, int rows) const
{
    const int gap = m_layout->spacing();
    return {(room.width() + gap) / columns - gap, (room.height() + gap) / rows - gap};
}

/// How high the digits of compact lanes are in so many columns; nothing where a card would be too small.
int LanesGrid::digitsHeight(const QSize& room, int columns) const
{
    const QSize card = cardSize(room, columns, rowsOf(static_cast<int>(m_cards.size()), columns));
    const QSize least = m_cards.front()->minimumSizeHint();
    if (card.width() < least.width() || card.height() < least.height())
        return 0;
    return LaneCard::compactDigits(card);
}

LanesGrid::Places LanesGrid::placesFor(const QSize& room) const
{
    const int lanes = static_cast<int>(m_cards.size());
    Places best{columnsFor(room.width()), m_cards.size()};
    if (!m_compact)
        return best;
    // Once no lane counts there are no digits to be as large as they can be: then lanes stay where they are,
    // whatever else is asked for on the page.
    const bool counts = std::ranges::any_of(
        m_cards, [](const LaneCard* card) { return card->lane().countsTo != view::CountsTo::Nothing; });
    if (!counts && digitsHeight(room, best.columns) > 0)
        return best;
    int largest = 0;
    for (int columns = 1; columns <= lanes; ++columns) {
        const bool uneven = columns > 1 && rowsOf(lanes, columns) == rowsOf(lanes, columns - 1);
        const int digits = uneven ? 0 : digitsHeight(room, columns);
        // Of those that are about as large the ones that fill the page, and not one below the other at its
        // left.
        if (digits > 0 && digits * 10 >= largest * 9)
            best.columns = columns;
        largest = std::max(largest, digits);
    }
    if (largest > 0)
        return best;
    const QSize least = m_cards.front()->minimumSizeHint();
    const int gap = m_layout->spacing();
    const int columns = std::max(1, (room.width() + gap) / (least.width() + gap));
    const int rows = std::max(1, (room.height() + gap) / (least.height() + gap));
    if (columns * rows >= lanes)
        return best;
    // The last place says what is not shown.
    return {columns, static_cast<std::size_t>(std::max(1, columns * rows - 1))};
}

std::vector<view::LaneView> LanesGrid::lanes() const
{
    std::vector<view::LaneView> lanes;
    for (const LaneCard* card : m_cards)
        lanes.push_back(card->lane());
    return lanes;
}

void LanesGrid::arrange()
{
    // What is shown makes the layouts above work at once, and they may change this size in the middle of it.
    m_again = true;
    if (m_arranging || m_cards.empty())
        return;
    m_arranging = true;
    constexpr int mostRounds = 3;
    for (int round = 0; m_again && round < mostRounds; ++round) {
        m_again = false;
        arrangeOnce();
    }
    m_arranging = false;
}

void LanesGrid::arrangeOnce()
{
    const Places places = placesFor(size());
    const auto shown = view::mostPressing(lanes(), places.shown);
    sayRest(shown);
    if (places != m_places || shown != m_shown) {
        m_places = places;
        setOut(shown);
        updateGeometry();
    }
    if (m_compact)
        sizeTitles();
}

/// Names side by side are all of one size.
void LanesGrid::sizeTitles()
{
    const int parts = static_cast<int>(m_shown.size()) + (m_shown.size() < m_cards.size() ? 1 : 0);
    const QSize card = cardSize(size(), m_places.columns, rowsOf(parts, m_places.columns));
    int title = metrics::textStep;
    for (const std::size_t place : m_shown)
        title = std::min(title, m_cards[place]->titleFor(card));
    for (const std::size_t place : m_shown)
        m_cards[place]->setTitle(title);
}

void LanesGrid::setOut(const std::vector<std::size_t>& places)
{
    m_shown = places;
    std::vector<QWidget*> parts;
    for (const std::size_t place : places)
        parts.push_back(m_cards[place]);
    if (places.size() < m_cards.size())
        parts.push_back(m_rest);
    for (LaneCard* card : m_cards)
        card->setVisible(std::ranges::find(parts, card) != parts.end());
    m_rest->setVisible(places.size() < m_cards.size());
    for (int place = 0; place < static_cast<int>(parts.size()); ++place)
        m_layout->addWidget(parts[static_cast<std::size_t>(place)], place / m_places.columns,
                            place % m_places.columns);
    for (int column = 0; column < m_layout->columnCount(); ++column)
        m_layout->setColumnStretch(column, column < m_places.columns ? 1 : 0);
    for (int row = 0; row < m_layout->rowCount(); ++row)
        m_layout->setRowStretch(row, row < rowsOf(static_cast<int>(parts.size()), m_places.columns) ? 1 : 0);
}

void LanesGrid::sayRest(const std::vector<std::size_t>& places)
{
    const std::size_t others = m_cards.size() - places.size();
    if (others == 0)
        return;
    std::optional<view::Seconds> next;
    for (std::size_t place = 0; place < m_cards.size(); ++place)
        if (std::ranges::find(places, place) == places.end())
            if (const auto asked = view::untilAsked(m_cards[place]->lane());
                asked && (!next || *asked < *next))
                next = asked;
    const QString text = tr("and %n more", "lanes", static_cast<int>(others));
    m_rest->setText(next ? tr("%1, next %2").arg(text, words::when(*next)) : text);
}

}  // namespace app::desktop
