#include "app/desktop/lanes/lane_card.h"

#include "app/desktop/lanes/card_layout.h"
#include "app/desktop/look/card_ground.h"
#include "app/desktop/look/large_digits.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/words.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace app::desktop {
namespace {

using core::run::Stage;
using view::CountsTo;
using view::Urgency;

constexpr int leastWidth = 318;  ///< Four digits and a colon, and what is free beside them.
constexpr int wordsHeight = 88;  ///< Of a card's title, its line of words and its window.
constexpr int digitsRoom = 108;  ///< And of its digits, with the edges.
constexpr int compactWidth = 150;
constexpr int compactHeight = 78;
constexpr int compactEdge = 12;   ///< Left and right.
constexpr int besideSwatch = 28;  ///< Where a compact card's name begins.
constexpr int badgeWidth = 56;

int badgeHeight()
{
    return Theme::scaled(24);
}

/// Between a head and its zone.
const QString dot = QStringLiteral(" · ");

/// Of a compact card: its title grows with text, its digits are large already.
int compactHeightNow()
{
    constexpr int titleHeight = 22;
    return compactHeight - titleHeight + Theme::scaled(titleHeight);
}

}  // namespace

LaneCard::LaneCard(const Theme& theme, bool compact, QWidget* parent)
    : QWidget{parent}
    , m_theme{theme}
    , m_compact{compact}
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&theme, &Theme::changed, this, qOverload<>(&QWidget::update));
}

void LaneCard::showLane(const view::LaneView& lane, std::size_t place, const WallClock& clock)
{
    m_clock = clock;
    m_place = place;
    if (lane == m_lane)
        return;
    m_lane = lane;
    setAccessibleName(inWords());
    update();
}

QSize LaneCard::sizeHint() const
{
    return m_compact ? QSize{Theme::scaled(200), compactHeightNow()}
                     : QSize{Theme::scaled(leastWidth), digitsRoom + 30 + Theme::scaled(wordsHeight)};
}

QSize LaneCard::minimumSizeHint() const
{
    return m_compact ? QSize{Theme::scaled(compactWidth), compactHeightNow()}
                     : QSize{Theme::scaled(leastWidth), digitsRoom + Theme::scaled(wordsHeight)};
}

/// What is overdue counts up, and must not look as if it were left.
QString LaneCard::digitsText() const
{
    const QString digits = words::digits(m_lane.left);
    return m_lane.left < view::Seconds{0} ? QLatin1Char{'+'} + digits : digits;
}

QString LaneCard::lookText() const
{
    if (!m_lane.untilLook)
        return {};
    return tr("Look %1").arg(words::when(*m_lane.untilLook));
}

QString LaneCard::toneText() const
{
    return m_lane.tone ? words::tone(*m_lane.tone, m_clock.text(m_lane.tone->at)) : QString{};
}

QString LaneCard::inWords() const
{
    QString text = words::ofHead(
        m_lane.head, tr("%1, %2").arg(QString::fromStdString(m_lane.title), words::stage(m_lane.stage)));
    if (m_lane.countsTo != CountsTo::Nothing)
        text += QStringLiteral(", %1 %2").arg(words::digits(m_lane.left), words::countsTo(m_lane));
    if (m_lane.untilLook)
        text += QStringLiteral(", ") + lookText();
    if (m_lane.tone)
        text += tr(", seen: %1").arg(toneText());
    return text;
}

void LaneCard::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    paintGround(painter);
    if (m_compact)
        paintCompact(painter);
    else
        paintFull(painter);
}

void LaneCard::paintGround(QPainter& painter)
{
    const Colours& colours = m_theme.colours();
    const bool pressing = m_lane.urgency == Urgency::Due || m_lane.urgency == Urgency::Late;
    drawGround(painter, rect(),
               {.fill = m_lane.stage == Stage::Rinsed ? colours.waterWash : colours.surface,
                .edge = pressing ? colours.late : colours.hairline,
                .width = pressing ? 4.0 : 1.5,
                .radius = metrics::radiusLarge});
}

/// But not so large that head or zone would be cut.
int LaneCard::titlePixels(double width, int largest) const
{
    const QString head = QString::fromStdString(m_lane.head);
    const QString zone = QString::fromStdString(m_lane.title);
    int pixels = largest;
    for (const int smaller : {metrics::textLarge, metrics::text}) {
        double needed = QFontMetricsF{Theme::font(pixels, true)}.horizontalAdvance(zone);
        if (!head.isEmpty())
            needed += QFontMetricsF{Theme::font(pixels)}.horizontalAdvance(head + dot);
        if (needed > width)
            pixels = std::min(pixels, smaller);
    }
    return pixels;
}

int LaneCard::titleFor(const QSize& card) const
{
    const card_layout::Compact parts = card_layout::compact(card);
    return titlePixels(parts.room.width() - 2 * compactEdge - besideSwatch, parts.title);
}

void LaneCard::setTitle(int pixels)
{
    if (pixels == m_title)
        return;
    m_title = pixels;
    update();
}

int LaneCard::compactDigits(const QSize& card)
{
    const card_layout::Compact parts = card_layout::compact(card);
    const double width = card_layout::widthOf({}, !parts.tall);
    return std::max(card_layout::digitPixels(parts.digits.size(), width), metrics::textStep);
}

/// The lane's piece of hair, patterned by what it does.
void LaneCard::paintSwatch(QPainter& painter, const QRectF& box) const
{
    const Colours& colours = m_theme.colours();
    const QColor colour = colours.strand(m_place);
    painter.setPen(QPen{colour, 2});
    painter.setBrush(m_lane.stage == Stage::Developing ? colour : colours.surface);
    painter.drawRoundedRect(box, 4, 4);
    if (m_lane.stage == Stage::Applying)
        painter.setBrush(QBrush{colour, Qt::BDiagPattern});
    else if (m_lane.stage == Stage::Rinsing || m_lane.stage == Stage::Rinsed)
        painter.setBrush(QBrush{colours.water, Qt::Dense4Pattern});
    if (painter.brush().style() != Qt::SolidPattern)
        painter.drawRoundedRect(box, 4, 4);
    painter.setBrush(Qt::NoBrush);
}

QColor LaneCard::digitColour() const
{
    const bool pressing = m_lane.urgency == Urgency::Due || m_lane.urgency == Urgency::Late;
    return pressing ? m_theme.colours().late : m_theme.colours().ink;
}

/// How wide the badge is; 0 without one. Some languages have long words for it.
int LaneCard::badgeRoom() const
{
    const QString text = words::urgency(m_lane.urgency);
    return text.isEmpty() ? 0
                          : QFontMetrics{Theme::font(metrics::textSmall, true)}.horizontalAdvance(text) + 18;
}

/// As wide as its `badgeRoom`.
void LaneCard::paintBadge(QPainter& painter, const QPointF& topRight, const QSizeF& room) const
{
    if (room.width() == 0)
        return;
    const Colours& colours = m_theme.colours();
    const bool soon = m_lane.urgency == Urgency::Soon;
    painter.setFont(Theme::font(metrics::textSmall, true));
    const QRectF box{topRight - QPointF{room.width(), 0}, room};
    painter.setPen(Qt::NoPen);
    painter.setBrush(soon ? colours.soon : colours.late);
    painter.drawRoundedRect(box, room.height() / 2, room.height() / 2);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(soon ? colours.onSoon : colours.onLate);
    painter.drawText(box, Qt::AlignCenter, words::urgency(m_lane.urgency));
}

/// The zone, and before it whose it is where there are several heads: that is what is cut short first. Where
/// it ends.
double LaneCard::paintTitle(QPainter& painter, const QRectF& box, int pixels) const
{
    painter.setFont(Theme::font(pixels, true));
    painter.setPen(m_theme.colours().ink);
    const auto width = static_cast<int>(box.width());
    const QString zone =
        painter.fontMetrics().elidedText(QString::fromStdString(m_lane.title), Qt::ElideRight, width);
    const int zoneWidth = painter.fontMetrics().horizontalAdvance(zone);
    QRectF rest = box;
    if (!m_lane.head.empty()) {
        painter.setFont(Theme::font(pixels));
        const int room = width - zoneWidth - painter.fontMetrics().horizontalAdvance(dot);
        const bool says = room >= painter.fontMetrics().horizontalAdvance(QStringLiteral("Mm…"));
        const QString name = QString::fromStdString(m_lane.head);
        const QString head =
            says ? painter.fontMetrics().elidedText(name, Qt::ElideRight, room) + dot : QString{};
        painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, head);
        rest.setLeft(box.left() + painter.fontMetrics().horizontalAdvance(head));
        painter.setFont(Theme::font(pixels, true));
    }
    painter.drawText(rest, Qt::AlignLeft | Qt::AlignVCenter, zone);
    return rest.left() + zoneWidth;
}

void LaneCard::paintFull(QPainter& painter)
{
    const double enlarged = card_layout::enlargement(size(), minimumSizeHint() + QSize{0, 30});
    const QRectF inside = QRectF{QPointF{}, QSizeF{size()} / enlarged}.adjusted(16, 10, -16, -8);
    const int title = Theme::scaled(26);
    const int below = Theme::scaled(62);
    painter.save();
    painter.scale(enlarged, enlarged);
    paintHead(painter, inside, title);
    paintFoot(painter, inside, below);
    painter.restore();

    const QRectF digits{0, (inside.top() + title) * enlarged, 1.0 * width(),
                        (inside.height() - title - below) * enlarged};
    painter.setPen(digitColour());
    if (m_lane.countsTo == CountsTo::Nothing) {
        painter.setFont(Theme::exactFont(static_cast<int>(metrics::textStep * enlarged), true));
        painter.drawText(digits, Qt::AlignCenter | Qt::TextDontClip, words::stage(m_lane.stage));
        return;
    }
    const double wide = card_layout::widthOf(digitsText(), false);
    // Squeezed in its height it keeps its digits, and in its width what is free beside them.
    const int least = std::min(metrics::textDigits, static_cast<int>(width() / wide));
    painter.setFont(Theme::exactFont(std::max(card_layout::digitPixels(digits.size(), wide), least)));
    drawDigits(painter, digits, Qt::AlignCenter, digitsText());
}

/// What a full card has above its digits.
void LaneCard::paintHead(QPainter& painter, const QRectF& inside, int height) const
{
    paintSwatch(painter, {inside.left(), inside.top() + 3, 30, 18});
    const int badge = badgeRoom();
    const QRectF titleBox{inside.left() + 38, inside.top(),
                          inside.width() - 38 - std::max(Theme::scaled(62), badge + 6), 1.0 * height};
    const double after = paintTitle(painter, titleBox, metrics::textLarge) + 12;
    paintTone(
        painter,
        QRectF{QPointF{after, titleBox.top()},
               QPointF{inside.right() - std::max(Theme::scaled(badgeWidth), badge), titleBox.bottom()}});
    paintBadge(painter, inside.topRight(), {badge * 1.0, badgeHeight() * 1.0});
}

/// And what below them: what they count to, the next look, the window.
void LaneCard::paintFoot(QPainter& painter, const QRectF& inside, int height) const
{
    painter.setFont(Theme::font(metrics::textLane));
    painter.setPen(m_theme.colours().ink);
    const QRectF line{inside.left(), inside.bottom() - height, inside.width(), height * 24.0 / 62};
    const QString left = m_lane.countsTo != CountsTo::Nothing
        ? words::countsTo(m_lane)
        : tr("%1 min").arg(words::minutes(m_lane.development));
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, left);
    painter.setFont(Theme::font(metrics::textLane, true));
    painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, lookText());
    paintWindow(painter, {inside.left(), inside.bottom() - Theme::scaled(20) - 14, inside.width(), 14});
}

/// What was seen last, behind the name, as far as there is room.
void LaneCard::paintTone(QPainter& painter, const QRectF& room) const
{
    painter.setFont(Theme::font(metrics::textSmall));
    const QString text = painter.fontMetrics().elidedText(toneText(), Qt::ElideRight,
                                                          static_cast<int>(std::max(0.0, room.width())));
    painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, text);
}

/// Development against its window: a ribbon that fills, with least, target and most marked and named.
void LaneCard::paintWindow(QPainter& painter, const QRectF& bar) const
{
    const Colours& colours = m_theme.colours();
    const QColor colour = colours.strand(m_place);
    const auto end = static_cast<double>(std::max(m_lane.window.most, m_lane.development).count()) * 1.04 + 1;
    const auto at = [&](view::Seconds seconds) {
        return bar.left() + bar.width() * static_cast<double>(seconds.count()) / end;
    };
    painter.setPen(QPen{colours.line, 1});
    painter.setBrush(colours.sunken);
    painter.drawRoundedRect(bar, 7, 7);
    painter.save();
    painter.setClipRect(QRectF{bar.topLeft(), QPointF{at(m_lane.development), bar.bottom() + 1}});
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_lane.development > m_lane.window.most ? colours.late : colour);
    painter.drawRoundedRect(bar, 7, 7);
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setFont(Theme::font(metrics::textSmall));
    const double marks[] = {at(m_lane.window.least), at(m_lane.window.target), at(m_lane.window.most)};
    const view::Seconds lengths[] = {m_lane.window.least, m_lane.window.target, m_lane.window.most};
    const int half = Theme::scaled(30);
    double free = bar.left() - half;
    for (int mark = 0; mark < 3; ++mark) {
        painter.setPen(QPen{colours.ink, mark == 1 ? 4.0 : 2.0});
        painter.drawLine(QPointF{marks[mark], bar.top() - 3}, QPointF{marks[mark], bar.bottom() + 3});
        const QRectF text{marks[mark] - half, bar.bottom() + 3, 2.0 * half, half * 0.6};
        if (marks[mark] - free < Theme::scaled(26))
            continue;
        painter.drawText(text, Qt::AlignCenter, words::minutes(lengths[mark]));
        free = marks[mark];
    }
}

void LaneCard::paintCompact(QPainter& painter)
{
    const card_layout::Compact parts = card_layout::compact(size());
    const QRectF inside = QRectF{QPointF{}, parts.room}.adjusted(compactEdge, 8, -compactEdge, -8);
    const int badge = badgeRoom();
    painter.setPen(digitColour());
    // Behind the digits the badge takes nothing from the name. Where it has room nowhere, red digits and a
    // frame tell the same.
    const double digitsEnd = paintCompactDigits(painter, parts) / parts.enlarged;
    const bool behind = digitsEnd < inside.right() - badge;
    const bool above = badge > 0 && parts.tall && !behind;
    const double titleWidth = inside.width() - besideSwatch - (above ? badge + 6 : 0);
    const double titleHeight = parts.titleHeight;
    painter.save();
    painter.scale(parts.enlarged, parts.enlarged);
    paintSwatch(painter, {inside.left(), inside.top() + (parts.titleHeight - 14) / 2, 20, 14});
    paintTitle(painter, {inside.left() + besideSwatch, inside.top(), titleWidth, titleHeight},
               titlePixels(titleWidth, std::min(m_title, parts.title)));
    if (above)
        paintBadge(painter, inside.topRight(), {badge * 1.0, std::min(badgeHeight() * 1.0, titleHeight)});
    else if (behind)
        paintBadge(painter, {inside.right(), inside.bottom() - Theme::scaled(26)},
                   {badge * 1.0, badgeHeight() * 1.0});
    painter.restore();
}

/// Small ones are bold, to be read from afar; large ones have the room for their size. Where they end.
double LaneCard::paintCompactDigits(QPainter& painter, const card_layout::Compact& parts) const
{
    if (m_lane.countsTo == CountsTo::Nothing) {
        const int pixels = Theme::font(std::min({m_title, parts.title, metrics::textLarge})).pixelSize();
        painter.setFont(Theme::exactFont(static_cast<int>(pixels * parts.enlarged), true));
        painter.drawText(parts.digits.adjusted(parts.tall ? compactEdge * parts.enlarged : 0, 0, 0, 0),
                         Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, words::stage(m_lane.stage));
        return parts.digits.left();
    }
    const bool bold = !parts.tall;
    const int fits = card_layout::digitPixels(parts.digits.size(), card_layout::widthOf(digitsText(), bold));
    const int pixels = std::max(fits, metrics::textStep);
    const QFont font = Theme::exactFont(pixels, bold);
    QRectF box = parts.digits;
    if (parts.tall)
        box.adjust(card_layout::freeBeside * pixels, 0, 0, 0);
    painter.setFont(font);
    drawDigits(painter, box, Qt::AlignLeft | Qt::AlignVCenter, digitsText());
    return box.left() + digitsWidth(font, digitsText());
}

}  // namespace app::desktop
