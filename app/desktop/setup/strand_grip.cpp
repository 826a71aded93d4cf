#include "app/desktop/setup/strand_grip.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/strand_pen.h"
#include "app/desktop/look/theme.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QSignalBlocker>

#include <algorithm>
#include <cmath>
#include <utility>

namespace app::desktop {
namespace {

/// Where nothing sets a limit a day is enough to pull.
constexpr int mostMinutes = 24 * 60;
constexpr int withShift = 5;

/// A finger that moves less, in pixels, only touches.
constexpr double touched = 4;

}  // namespace

StrandGrip::StrandGrip(const Theme& theme, QWidget* parent)
    : QSlider{Qt::Horizontal, parent}
    , m_theme{theme}
{
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::SizeHorCursor);
    setSingleStep(1);
    setPageStep(withShift);
    setRange(-mostMinutes, mostMinutes);
    // Keys pull themselves; what moves the slider otherwise is whoever cannot see it.
    connect(this, &QSlider::valueChanged, this, &StrandGrip::pulled);
}

void StrandGrip::setZone(const view::TaskId& zone, const QString& name)
{
    m_zone = zone;
    if (name == m_name)
        return;
    m_name = name;
    setObjectName(QStringLiteral("grip%1").arg(zone.item + 1));
    setAccessibleName(tr("Start of %1, minutes later than planned").arg(name));
    setToolTip(tr("Pull it to see what a later start does"));
}

void StrandGrip::showValue(int value, std::optional<int> least, std::optional<int> most)
{
    const QSignalBlocker quiet{this};
    setRange(least.value_or(-mostMinutes), most.value_or(mostMinutes));
    setValue(value);
}

/// Keys that mean something to a start that is tried out are not for buttons elsewhere.
bool StrandGrip::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride && m_trying) {
        const auto* press = static_cast<const QKeyEvent*>(event);
        const int key = press->key();
        if (press->modifiers().testFlag(Qt::ControlModifier))
            return QSlider::event(event);
        if (key == Qt::Key_Escape || key == Qt::Key_Return || key == Qt::Key_Enter) {
            event->accept();
            return true;
        }
    }
    return QSlider::event(event);
}

void StrandGrip::keyPressEvent(QKeyEvent* event)
{
    const int step = event->modifiers().testFlag(Qt::ShiftModifier) ? withShift : 1;
    switch (event->key()) {
    case Qt::Key_Left: Q_EMIT pulled(value() - step); return;
    case Qt::Key_Right: Q_EMIT pulled(value() + step); return;
    case Qt::Key_PageDown: Q_EMIT pulled(value() - withShift); return;
    case Qt::Key_PageUp: Q_EMIT pulled(value() + withShift); return;
    case Qt::Key_Escape:
        if (!m_trying)
            break;
        Q_EMIT letGo();
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!m_trying || event->modifiers().testFlag(Qt::ControlModifier))
            break;
        Q_EMIT kept();
        return;
    default: break;
    }
    event->ignore();
}

void StrandGrip::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return event->ignore();
    m_held = true;
    m_pulling = false;
    m_heldAt = event->globalPosition();
    m_heldValue = value();
    event->accept();
    update();
}

void StrandGrip::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_held)
        return;
    const double way = event->globalPosition().x() - m_heldAt.x();
    if (!m_pulling && std::abs(way) < touched)
        return;
    if (!std::exchange(m_pulling, true))
        Q_EMIT taken(m_heldAt.toPoint());  // Minutes may be nearer to one another from then on.
    Q_EMIT pulled(m_heldValue + static_cast<int>(std::lround(way / std::max(0.1, m_minuteWidth))));
}

void StrandGrip::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton || !m_held)
        return;
    m_held = false;
    update();
    Q_EMIT released();
}

void StrandGrip::hideEvent(QHideEvent* event)
{
    QSlider::hideEvent(event);
    m_held = false;
}

/// The page scrolls with it; a strand is not moved by passing over it.
void StrandGrip::wheelEvent(QWheelEvent* event)
{
    event->ignore();
}

void StrandGrip::focusInEvent(QFocusEvent* event)
{
    QSlider::focusInEvent(event);
    update();
}

QSize StrandGrip::minimumSizeHint() const
{
    return {metrics::target, metrics::target};
}

void StrandGrip::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& colours = m_theme.colours();
    const double middle = height() / 2.0 - 5;
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_held || hasFocus() ? colours.water : colours.quietInk);
    for (const double x : {4.0, 9.0})
        for (const double y : {-6.0, 0.0, 6.0})
            painter.drawEllipse(QPointF{x, middle + y}, 1.6, 1.6);
    if (!hasFocus() && !m_held)
        return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(pen(colours.water, 2));
    painter.drawRoundedRect(QRectF{rect()}.adjusted(1, 1, -1, -1), metrics::radius, metrics::radius);
}

}  // namespace app::desktop
