#include "app/desktop/look/head_drawing.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/place_words.h"
#include "app/desktop/look/strand_pen.h"
#include "app/desktop/look/theme.h"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace app::desktop {
namespace {

using core::service::HeadKind;
using core::service::Place;

/// What can be pressed, and nothing to be seen: the drawing below it is smooth at its edges. As large as its
/// shape, whatever is usual for buttons.
class PlaceButton final : public QPushButton {
public:
    explicit PlaceButton(QWidget* parent)
        : QPushButton{parent}
    {
        setStyleSheet(QStringLiteral("min-width: 0; min-height: 0; padding: 0; border: none;"));
    }

    [[nodiscard]] QSize sizeHint() const override { return {}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {}; }

protected:
    void paintEvent(QPaintEvent*) override { }
};

constexpr double ground = 0.32;  ///< So much of a zone's colour lies on the surface.

/// How the fibres of a zone are drawn, by its place in the coat, again from the first after the last.
QPen fibrePen(std::size_t zone, const QColor& colour)
{
    static const std::array<QList<qreal>, 6> dashes{{{}, {5, 4}, {1, 4}, {9, 3, 1, 3}, {2, 2}, {1, 2, 1, 8}}};
    QPen drawn = pen(colour, 1.6);
    const auto& dash = dashes[zone % dashes.size()];
    if (!dash.isEmpty())
        drawn.setDashPattern(dash);
    return drawn;
}

bool has(const ZoneOnHead& zone, Place place)
{
    return std::ranges::find(zone.places, place) != zone.places.end();
}

}  // namespace

HeadDrawing::HeadDrawing(const Theme& theme, QWidget* parent)
    : QWidget{parent}
    , m_theme{theme}
{
    setObjectName(QStringLiteral("headDrawing"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&theme, &Theme::changed, this, qOverload<>(&QWidget::update));
}

void HeadDrawing::showZones(HeadKind kind, std::vector<ZoneOnHead> zones, std::size_t chosen)
{
    m_zones = std::move(zones);
    m_chosen = chosen;
    const auto before = std::exchange(m_kind, kind);
    if (!before || sidesOf(*before) != sidesOf(kind))
        makeSpots(kind);
    nameSpots();
    update();
}

void HeadDrawing::makeSpots(HeadKind kind)
{
    for (const Spot& spot : m_spots)
        spot.button->deleteLater();
    m_spots.clear();
    setAccessibleName(kind == HeadKind::Wefts ? tr("Pieces of hair")
                                              : tr("The head from the side and from behind"));
    for (const HeadSide side : sidesOf(kind))
        for (DrawnPlace& drawn : placesSeen(side)) {
            auto* button = new PlaceButton{this};
            button->setObjectName(QStringLiteral("place%1").arg(m_spots.size()));
            button->setFocusPolicy(m_spots.empty() ? Qt::StrongFocus : Qt::ClickFocus);
            button->setAutoDefault(true);  // Enter presses it.
            button->installEventFilter(this);
            const Place place = drawn.place;
            connect(button, &QPushButton::clicked, this, [this, place] { Q_EMIT pressed(place); });
            button->show();
            m_spots.push_back({side, std::move(drawn), button});
        }
    placeSpots();
}

void HeadDrawing::placeSpots()
{
    for (const Spot& spot : m_spots) {
        const QPolygonF shape = toWindow(spot.side).map(spot.drawn.shape).toFillPolygon();
        const QRect room = shape.boundingRect().toAlignedRect();
        spot.button->setGeometry(room);
        spot.button->setMask(QRegion{shape.translated(-room.topLeft()).toPolygon()});
    }
}

QTransform HeadDrawing::toWindow(HeadSide side) const
{
    const auto sides = sidesOf(m_kind.value_or(HeadKind::Person));
    const double room = width() / static_cast<double>(sides.size());
    const auto place = std::ranges::find(sides, side) - sides.begin();
    const double scale = std::min(room / headFrame.width(), height() / headFrame.height());
    QTransform transform;
    transform.translate(room * static_cast<double>(place) + (room - headFrame.width() * scale) / 2,
                        (height() - headFrame.height() * scale) / 2);
    transform.scale(scale, scale);
    return transform;
}

std::optional<std::size_t> HeadDrawing::zoneAt(Place place) const
{
    if (isOfChosen(place))
        return m_chosen;
    const auto zone =
        std::ranges::find_if(m_zones, [place](const ZoneOnHead& other) { return has(other, place); });
    return zone == m_zones.end() ? std::nullopt
                                 : std::optional{static_cast<std::size_t>(zone - m_zones.begin())};
}

bool HeadDrawing::isOfChosen(Place place) const
{
    return m_chosen < m_zones.size() && has(m_zones[m_chosen], place);
}

void HeadDrawing::nameSpots()
{
    for (const Spot& spot : m_spots) {
        const Place place = spot.drawn.place;
        const auto zone = zoneAt(place);
        const QString where = place_words::name(place);
        spot.button->setAccessibleName(zone ? tr("%1: %2").arg(where, m_zones[*zone].name)
                                            : tr("%1: no zone").arg(where));
        spot.button->setToolTip(spot.button->accessibleName());
        const QString chosen = m_chosen < m_zones.size() ? m_zones[m_chosen].name : QString{};
        spot.button->setAccessibleDescription(isOfChosen(place) ? tr("Press to take it from %1").arg(chosen)
                                                                : tr("Press to give it to %1").arg(chosen));
    }
}

void HeadDrawing::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    placeSpots();
}

void HeadDrawing::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    for (const HeadSide side : sidesOf(m_kind.value_or(HeadKind::Person))) {
        painter.setPen(pen(m_theme.colours().line, 2));
        painter.setBrush(Qt::NoBrush);
        for (const QPainterPath& line : outline(side))
            painter.drawPath(toWindow(side).map(line));
    }
    for (const Spot& spot : m_spots)
        paintSpot(painter, spot);
    for (const Spot& spot : m_spots)
        paintName(painter, spot);
}

void HeadDrawing::paintPattern(QPainter& painter, const QPainterPath& shape,
                               const std::vector<QPainterPath>& fibres, std::size_t zone, const Theme& theme)
{
    const QColor colour = theme.colours().strand(zone);
    painter.fillPath(shape, blend(theme.colours().surface, colour, ground));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(fibrePen(zone, colour));
    for (const QPainterPath& fibre : fibres)
        painter.drawPath(fibre);
}

void HeadDrawing::paintSpot(QPainter& painter, const Spot& spot) const
{
    const QTransform transform = toWindow(spot.side);
    const QPainterPath shape = transform.map(spot.drawn.shape);
    const Colours& colours = m_theme.colours();
    if (const auto zone = zoneAt(spot.drawn.place)) {
        std::vector<QPainterPath> fibres;
        for (const QPainterPath& fibre : spot.drawn.fibres)
            fibres.push_back(transform.map(fibre));
        paintPattern(painter, shape, fibres, *zone, m_theme);
    } else {
        painter.fillPath(shape, colours.surface);
    }
    const bool focused = spot.button->hasFocus();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(pen(focused ? colours.water : colours.line,
                       focused                            ? 4
                           : isOfChosen(spot.drawn.place) ? 2.4
                                                          : 1));
    painter.drawPath(shape);
}

/// The name on a ground of its own, where there is room for it.
void HeadDrawing::paintName(QPainter& painter, const Spot& spot) const
{
    const auto zone = zoneAt(spot.drawn.place);
    if (!zone)
        return;
    const QPointF middle = toWindow(spot.side).map(spot.drawn.middle);
    const QFont font = Theme::exactFont(metrics::textSmall, isOfChosen(spot.drawn.place));
    const QFontMetricsF measured{font};
    const double most = spot.button->width() - 6;
    const QString number = QString::number(*zone + 1);
    const QString text =
        measured.horizontalAdvance(m_zones[*zone].name) <= most ? m_zones[*zone].name : number;
    QRectF room{0, 0, measured.horizontalAdvance(text) + 6, measured.height()};
    if (room.height() > spot.button->height())
        return;
    room.moveCenter(middle);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_theme.colours().surface);
    painter.drawRoundedRect(room, 4, 4);
    painter.setPen(m_theme.colours().ink);
    painter.setFont(font);
    painter.drawText(room, Qt::AlignCenter, text);
}

/// The nearest whose middle lies that way, more ahead than aside.
void HeadDrawing::move(const Spot& from, int key)
{
    const QPointF here = toWindow(from.side).map(from.drawn.middle);
    const QPointF way = key == Qt::Key_Left ? QPointF{-1, 0}
        : key == Qt::Key_Right              ? QPointF{1, 0}
        : key == Qt::Key_Up                 ? QPointF{0, -1}
                                            : QPointF{0, 1};
    const Spot* nearest = nullptr;
    double least = 0;
    for (const Spot& spot : m_spots) {
        const QPointF off = toWindow(spot.side).map(spot.drawn.middle) - here;
        const double ahead = QPointF::dotProduct(off, way);
        const double aside = std::abs(off.x() * way.y() - off.y() * way.x());
        if (ahead < 1 || aside > 2 * ahead)
            continue;
        const double distance = ahead + 2 * aside;
        if (nearest == nullptr || distance < least) {
            nearest = &spot;
            least = distance;
        }
    }
    if (nearest != nullptr)
        nearest->button->setFocus(Qt::TabFocusReason);
}

bool HeadDrawing::eventFilter(QObject* watched, QEvent* event)
{
    const auto spot = std::ranges::find(m_spots, watched, &Spot::button);
    if (spot == m_spots.end())
        return QWidget::eventFilter(watched, event);
    if (event->type() == QEvent::FocusIn) {
        for (const Spot& other : m_spots)  // Tab comes back to where the keyboard was.
            other.button->setFocusPolicy(&other == &*spot ? Qt::StrongFocus : Qt::ClickFocus);
        update();
    }
    if (event->type() == QEvent::FocusOut)
        update();
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<const QKeyEvent*>(event)->key();
        if (key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down) {
            move(*spot, key);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

QSize HeadDrawing::sizeHint() const
{
    return {560, 328};
}

/// So that no place is smaller than a finger.
QSize HeadDrawing::minimumSizeHint() const
{
    return {470, 328};
}

}  // namespace app::desktop
