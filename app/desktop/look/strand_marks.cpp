#include "app/desktop/look/metrics.h"
#include "app/desktop/look/strand_painter.h"
#include "app/desktop/look/strand_pen.h"
#include "app/desktop/look/theme.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <vector>

// What lies on and below the strands: windows, looks, late jobs, the hands and the flags.
namespace app::desktop {

using view::Strand;

namespace {

/// Of a box, beside shorter ones that lie on it: a look that was made while something was applied.
QRectF freePart(const std::vector<QRectF>& boxes, std::size_t place)
{
    QRectF free = boxes[place];
    for (const QRectF& other : boxes) {
        if (other.width() >= boxes[place].width() || !other.intersects(free))
            continue;
        const double before = other.left() - free.left();
        const double after = free.right() - other.right();
        if (before >= after)
            free.setRight(other.left());
        else
            free.setLeft(other.right());
    }
    return free;
}

}  // namespace

void StrandPainter::paintWindow(const Strand& strand, const QRectF& row, const QColor& colour)
{
    const bool kept = strand.keepsItsWindow();
    const QColor line = kept ? blend(colour, m_colours.ink, 0.25) : m_colours.late;
    const double y = centre(row) + 19;
    const double least = m_geometry.x(strand.leastAt);
    const double target = m_geometry.x(strand.targetAt);
    const double most = m_geometry.x(strand.mostAt);
    m_painter.setPen(pen(line, kept ? 2 : 3, kept ? Qt::SolidLine : Qt::DashLine));
    m_painter.drawLine(QPointF{least, y}, QPointF{most, y});
    m_painter.setPen(pen(line, 2));
    m_painter.drawPolyline(QPolygonF{{least + 4, y - 5}, {least, y - 5}, {least, y + 5}, {least + 4, y + 5}});
    m_painter.fillRect(QRectF{most - 2, y - 6, 4, 12}, line);
    QPainterPath wedge{QPointF{target, y - 6}};
    wedge.lineTo(target + 5, y + 3);
    wedge.lineTo(target - 5, y + 3);
    wedge.closeSubpath();
    m_painter.fillPath(wedge, line);
}

/// A dashed box and a dashed stroke: where applying and water were to be.
void StrandPainter::paintPlanned(const Strand& strand, const QRectF& row)
{
    const view::PlannedStrand& planned = *strand.planned;
    const double from = m_geometry.x(planned.application.from);
    const double until = std::max(from + 3, m_geometry.x(planned.application.until));
    m_painter.setPen(pen(m_colours.quietInk, 1.5, Qt::DashLine));
    m_painter.drawRect(QRectF{from, centre(row) - 13, until - from, 26});
    const double water = m_geometry.x(planned.water);
    m_painter.drawLine(QPointF{water, centre(row) - 14}, QPointF{water, centre(row) + 14});
}

/// A pin that opens to the side on which the start may be, and posts where it can go no further.
void StrandPainter::paintWanted(const Strand& strand, const QRectF& row)
{
    const double x = m_geometry.x(strand.wanted->at);
    const double top = std::max(centre(row) - 17, row.top() + 2);
    m_painter.setPen(pen(m_colours.ink, 2));
    m_painter.drawLine(QPointF{x, top}, QPointF{x, centre(row) + 13});
    QPainterPath flag{QPointF{x, top}};
    flag.lineTo(x + 10, top + 4);
    flag.lineTo(x, top + 8);
    flag.closeSubpath();
    m_painter.fillPath(flag, m_colours.ink);
    if (strand.wanted->earliest)
        paintStop(m_geometry.x(*strand.wanted->earliest), row, false);
    if (strand.wanted->latest)
        paintStop(m_geometry.x(*strand.wanted->latest), row, true);
}

/// With bars on the side that is closed.
void StrandPainter::paintStop(double x, const QRectF& row, bool isLatest)
{
    const double outwards = isLatest ? 6 : -6;
    const double y = centre(row);
    m_painter.setPen(pen(m_colours.ink, 3));
    m_painter.drawLine(QPointF{x, y - 14}, QPointF{x, y + 14});
    m_painter.setPen(pen(m_colours.ink, 1.5));
    for (const double bar : {-12.0, -4.0, 4.0})
        m_painter.drawLine(QPointF{x, y + bar + 8}, QPointF{x + outwards, y + bar});
}

/// Above the ribbon's end: between these two ends water comes in nine runs of ten.
void StrandPainter::paintForecast(const Strand& strand, const QRectF& row)
{
    const view::Span& water = strand.forecast->water;
    if (water.from == water.until)
        return;
    const double y = std::max(centre(row) - 17, row.top() + 5);
    const double from = m_geometry.x(water.from);
    const double until = m_geometry.x(water.until);
    m_painter.setPen(pen(m_colours.ink, 2));
    m_painter.drawLine(QPointF{from, y}, QPointF{until, y});
    for (const double end : {from, until})
        m_painter.drawLine(QPointF{end, y - 4}, QPointF{end, y + 4});
}

void StrandPainter::paintMarks(const Strand& strand, const QRectF& row)
{
    for (const view::JobMark& job : strand.late) {
        const QRectF box{QPointF{m_geometry.x(job.span.from), centre(row) - 13},
                         QPointF{m_geometry.x(job.span.until), centre(row) + 13}};
        QPainterPath wave{QPointF{box.left(), centre(row)}};
        for (double x = box.left(); x < box.right(); x += 2)
            wave.lineTo(x, centre(row) + 5 * std::sin((x - box.left()) / 2.5));
        m_painter.setPen(pen(m_colours.ink, 1.5));
        m_painter.setBrush(m_colours.surface);
        m_painter.drawRoundedRect(box, 4, 4);
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawPath(wave);
    }
    for (const view::LookMark& look : strand.looks) {
        const QPointF eye{m_geometry.x(look.at), centre(row)};
        m_painter.setPen(pen(m_colours.ink, 2));
        m_painter.setBrush(m_colours.surface);
        m_painter.drawEllipse(eye, 10, 7);
        m_painter.setBrush(Qt::NoBrush);
        if (look.made)
            m_painter.drawPolyline(
                QPolygonF{{eye.x() - 4, eye.y()}, {eye.x() - 1, eye.y() + 3}, {eye.x() + 5, eye.y() - 4}});
        else
            m_painter.fillRect(QRectF{eye.x() - 2, eye.y() - 2, 4, 4}, m_colours.ink);
    }
}

void StrandPainter::paintHands(std::size_t pair)
{
    const QRectF row = m_geometry.handsRow(pair);
    const view::HandsRow& hands = m_picture.hands[pair];
    m_painter.setFont(Theme::font(metrics::textSmall));
    m_painter.setPen(m_colours.quietInk);
    m_painter.drawText(m_geometry.gutter(row), Qt::AlignLeft | Qt::AlignVCenter,
                       QString::fromStdString(hands.name));
    m_painter.setPen(pen(m_colours.hairline, 2));
    m_painter.drawLine(QPointF{row.left(), row.center().y()}, QPointF{row.right(), row.center().y()});
    std::vector<QRectF> boxes;
    for (const view::HandsJob& job : hands.jobs) {
        const double from = m_geometry.x(job.span.from);
        boxes.emplace_back(from, row.top() + 4, std::max(4.0, m_geometry.x(job.span.until) - from),
                           row.height() - 8);
        m_painter.setPen(pen(m_colours.line, 1.5, job.elsewhere ? Qt::DashLine : Qt::SolidLine));
        m_painter.setBrush(job.elsewhere ? m_colours.ground : m_colours.sunken);
        m_painter.drawRoundedRect(boxes.back(), 4, 4);
    }
    m_painter.setBrush(Qt::NoBrush);
    for (std::size_t job = 0; job < boxes.size(); ++job)
        paintJob(hands.jobs[job], freePart(boxes, job));
}

/// In words, or by its icon where these do not fit.
void StrandPainter::paintJob(const view::HandsJob& job, const QRectF& room)
{
    const QString text = m_words.job(job.task);
    if (m_painter.fontMetrics().horizontalAdvance(text) + 6 <= room.width()) {
        m_painter.setPen(job.elsewhere ? m_colours.quietInk : m_colours.ink);
        m_painter.drawText(room, Qt::AlignCenter, text);
        return;
    }
    constexpr int iconSize = 16;
    if (room.width() >= iconSize)
        m_words.jobIcon(job.task, m_colours.ink)
            .paint(&m_painter,
                   QRect{room.center().toPoint() - QPoint{iconSize / 2, iconSize / 2},
                         QSize{iconSize, iconSize}});
}

void StrandPainter::paintFlag(const StrandFlags::Flag& flag)
{
    m_painter.setFont(Theme::font(metrics::textSmall, true));
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(flag.isNow ? m_colours.ink : m_colours.water);
    m_painter.drawRoundedRect(flag.box, 6, 6);
    m_painter.setBrush(Qt::NoBrush);
    m_painter.setPen(flag.isNow ? m_colours.ground : m_colours.surface);
    m_painter.drawText(flag.box, Qt::AlignCenter, flag.text);
}

void StrandPainter::paintNow()
{
    if (m_picture.now) {
        const double x = m_geometry.x(*m_picture.now);
        m_painter.setPen(pen(m_colours.ink, 2));
        m_painter.drawLine(QPointF{x, m_geometry.axisBottom()}, QPointF{x, m_geometry.plot().bottom()});
    }
    for (const StrandFlags::Flag& flag : m_flags.flags())
        paintFlag(flag);
}

}  // namespace app::desktop
