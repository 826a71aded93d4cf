#include "app/desktop/look/strand_painter.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/strand_pen.h"
#include "app/desktop/look/theme.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <chrono>
#include <cmath>

namespace app::desktop {
namespace {

using core::run::Stage;
using view::Instant;
using view::Strand;

constexpr double thinnest = 4;   ///< Half a ribbon's height when development starts.
constexpr double thickest = 11;  ///< And once the target is reached.
constexpr double brush = 8;      ///< Half the height of an application.

/// The wave that strands and water share.
double sway(double x)
{
    return 2.4 * std::sin(x / 34.0);
}

}  // namespace

StrandPainter::StrandPainter(QPainter& painter, const view::StrandPicture& picture, const QRectF& frame,
                             const Colours& colours, const StrandWords& words)
    : m_painter{painter}
    , m_picture{picture}
    , m_colours{colours}
    , m_words{words}
    , m_geometry{picture, frame}
    , m_flags{picture,
              m_geometry,
              {[&words](Instant moment) { return words.water.arg(words.clock(moment)); }, words.now}}
{
}

void StrandPainter::paint()
{
    m_painter.setRenderHint(QPainter::Antialiasing);
    paintAxis();
    paintWater();
    for (std::size_t place = 0; place < m_picture.strands.size(); ++place)
        paintStrand(place);
    for (std::size_t pair = 0; pair < m_picture.hands.size(); ++pair)
        paintHands(pair);
    paintNow();
}

double StrandPainter::centre(const QRectF& row) const
{
    return row.center().y() - 5;
}

void StrandPainter::paintAxis()
{
    m_painter.setFont(Theme::font(metrics::textSmall));
    const auto step = m_geometry.axisStep();
    const auto first = std::chrono::ceil<std::chrono::minutes>(m_picture.reach.from);
    Instant moment = first + (step - first.time_since_epoch() % step) % step;
    for (; moment <= m_picture.reach.until; moment += step) {
        const double x = m_geometry.x(moment);
        m_painter.setPen(pen(m_colours.hairline, 1));
        m_painter.drawLine(QPointF{x, m_geometry.axisBottom()}, QPointF{x, m_geometry.plot().bottom()});
        const int half = Theme::scaled(25);
        const QRectF text{x - half, m_geometry.axisBottom() - Theme::scaled(22), 2.0 * half, half * 0.72};
        if (m_flags.cover(text))
            continue;
        m_painter.setPen(m_colours.quietInk);
        m_painter.drawText(text, Qt::AlignCenter | Qt::TextDontClip, m_words.clock(moment));
    }
}

/// One body of water at the right; its shore is the rinse line, stepped where zones are rinsed apart.
void StrandPainter::paintWater()
{
    if (m_picture.strands.empty())
        return;
    QPainterPath shore;
    double above = 0;
    for (std::size_t place = 0; place < m_picture.strands.size(); ++place) {
        const QRectF row = m_geometry.row(place);
        const double x = m_geometry.x(m_picture.strands[place].water);
        if (place == 0)
            shore.moveTo(x, row.top());
        else if (x != above)
            shore.cubicTo(above, row.top() + 8, x, row.top() - 8, x, row.top() + 4);
        shore.lineTo(x, row.bottom() - (place + 1 == m_picture.strands.size() ? 0 : 6));
        above = x;
    }
    QPainterPath body = shore;
    const double right = m_geometry.plot().right() + 20;
    body.lineTo(right, m_geometry.strandsBottom());
    body.lineTo(right, m_geometry.axisBottom());
    body.closeSubpath();
    m_painter.fillPath(body, m_colours.waterWash);
    m_painter.setBrush(Qt::NoBrush);
    m_painter.setPen(pen(m_colours.water, 4));
    m_painter.drawPath(shore);
}

void StrandPainter::paintStrand(std::size_t place)
{
    const Strand& strand = m_picture.strands[place];
    const QRectF row = m_geometry.row(place);
    const bool dropped = strand.stage == Stage::Dropped;
    const QColor colour = dropped ? m_colours.quietInk : m_colours.strand(place);
    paintName(place);
    if (dropped) {
        m_painter.setPen(pen(colour, 2, Qt::DashLine));
        m_painter.drawLine(QPointF{row.left(), centre(row)},
                           QPointF{m_geometry.x(strand.water), centre(row)});
        return;
    }
    paintDevelopment(strand, row, colour);
    paintApplication(strand, row, colour);
    paintRinse(strand, row);
    paintWindow(strand, row, colour);
    paintMarks(strand, row);
    if (strand.planned)
        paintPlanned(strand, row);
    if (strand.forecast)
        paintForecast(strand, row);
    if (strand.wanted)
        paintWanted(strand, row);
}

void StrandPainter::paintName(std::size_t place)
{
    const Strand& strand = m_picture.strands[place];
    const QRectF gutter = m_geometry.gutter(m_geometry.row(place));
    const double middle = gutter.center().y();
    const QRectF line{gutter.left(), middle - Theme::scaled(21), gutter.width(), Theme::scaled(20) * 1.0};
    const QString chance = strand.forecast ? m_words.chance(strand) : QString{};
    m_painter.setFont(Theme::font(metrics::textSmall));
    m_painter.setPen(m_colours.ink);
    m_painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, chance);
    const int taken = chance.isEmpty() ? 0 : m_painter.fontMetrics().horizontalAdvance(chance) + 6;
    m_painter.setFont(Theme::font(metrics::text, true));
    const QString name = m_painter.fontMetrics().elidedText(
        QString::fromStdString(strand.name), Qt::ElideRight, static_cast<int>(gutter.width()) - taken);
    m_painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, name);
    m_painter.setFont(Theme::font(metrics::textSmall));
    m_painter.setPen(strand.keepsItsWindow() ? m_colours.quietInk : m_colours.late);
    m_painter.drawText(QRectF{gutter.left(), middle, gutter.width(), Theme::scaled(18) * 1.0},
                       Qt::AlignLeft | Qt::AlignVCenter, m_words.detail(strand));
}

void StrandPainter::paintApplication(const Strand& strand, const QRectF& row, const QColor& colour)
{
    const double from = m_geometry.x(strand.application.from);
    const double until = std::max(from + 3, m_geometry.x(strand.application.until));
    QPainterPath stroke;
    stroke.moveTo(from, centre(row) - brush);
    stroke.lineTo(until, centre(row) - brush);
    stroke.lineTo(until, centre(row) + brush);
    stroke.lineTo(from, centre(row) + brush);
    stroke.quadTo(from - 5, centre(row), from, centre(row) - brush);
    m_painter.setPen(pen(colour, 2));
    m_painter.fillPath(stroke, m_colours.surface);
    if (strand.stage != Stage::Waiting)
        m_painter.fillPath(stroke, blend(m_colours.surface, colour, 0.35));
    m_painter.setBrush(QBrush{colour, Qt::BDiagPattern});
    m_painter.drawPath(stroke);
    m_painter.setBrush(Qt::NoBrush);
}

double StrandPainter::ribbonAt(const Strand& strand, Instant moment) const
{
    const auto target =
        static_cast<double>(std::max<std::int64_t>(1, (strand.targetAt - strand.clockStart).count()));
    const auto grown = static_cast<double>((moment - strand.clockStart).count()) / target;
    return thinnest + (thickest - thinnest) * std::clamp(grown, 0.0, 1.0);
}

QPainterPath StrandPainter::ribbon(const Strand& strand, const QRectF& row, Instant until) const
{
    // A clock that runs from first contact develops while it is applied; the ribbon shows from the
    // application's end.
    const double from = m_geometry.x(strand.application.until);
    const double to = std::max(from, m_geometry.x(until));
    const auto seconds = static_cast<double>((until - strand.application.until).count());
    QPolygonF upper;
    QPolygonF lower;
    const int steps = std::max(2, static_cast<int>((to - from) / 4));
    for (int step = 0; step <= steps; ++step) {
        const double share = static_cast<double>(step) / steps;
        const double x = from + (to - from) * share;
        const auto moment = strand.application.until + view::Seconds{std::lround(seconds * share)};
        const double y = centre(row) + sway(x - from) * std::min(1.0, share * 4);
        const double half = ribbonAt(strand, moment);
        upper << QPointF{x, y - half};
        lower.prepend(QPointF{x, y + half});
    }
    QPainterPath path;
    path.addPolygon(upper + lower);
    path.closeSubpath();
    return path;
}

void StrandPainter::paintDevelopment(const Strand& strand, const QRectF& row, const QColor& colour)
{
    if (strand.water <= strand.application.until)
        return;
    const QPainterPath whole = ribbon(strand, row, strand.water);
    const bool live = m_picture.now.has_value();
    m_painter.fillPath(
        whole,
        blend(m_colours.surface, colour, live ? std::min(0.16, m_colours.filling) : m_colours.filling));
    const Instant reached = live ? std::min(*m_picture.now, strand.water) : strand.water;
    const bool started = strand.stage != Stage::Waiting && strand.stage != Stage::Applying;
    if (live && started && reached > strand.application.until)
        m_painter.fillPath(ribbon(strand, row, reached),
                           blend(m_colours.surface, colour, std::min(0.7, m_colours.filling + 0.15)));
    m_painter.save();
    m_painter.setClipPath(whole);
    m_painter.setPen(pen(colour, 1.2));
    const double from = m_geometry.x(strand.application.until);
    const double to = m_geometry.x(strand.water);
    for (const double offset : {-6.0, -2.0, 2.0, 6.0}) {
        QPainterPath fibre{QPointF{from, centre(row) + offset / 2}};
        for (double x = from; x < to; x += 6)
            fibre.lineTo(x, centre(row) + sway(x - from) + offset + 1.2 * std::sin(x / 19.0 + offset));
        m_painter.drawPath(fibre);
    }
    m_painter.restore();
    m_painter.setPen(pen(colour, 2));
    m_painter.drawPath(whole);
}

void StrandPainter::paintRinse(const Strand& strand, const QRectF& row)
{
    const double from = m_geometry.x(strand.water);
    const double to = std::max(from + 8, m_geometry.x(strand.rinseEnd));
    m_painter.setPen(
        pen(m_colours.water, strand.stage == Stage::Rinsing || strand.stage == Stage::Rinsed ? 3 : 2));
    for (const double offset : {-7.0, 0.0, 7.0}) {
        QPainterPath wave{QPointF{from + 6, centre(row) + offset}};
        for (double x = from + 6; x <= to; x += 3)
            wave.lineTo(x, centre(row) + offset + 2.2 * std::sin((x - from) / 4.5));
        m_painter.drawPath(wave);
    }
}

}  // namespace app::desktop
