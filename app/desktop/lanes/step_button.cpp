#include "app/desktop/lanes/step_button.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/words.h"

#include <QStyleOptionButton>
#include <QStylePainter>

#include <algorithm>

namespace app::desktop {
namespace {

constexpr int edge = 12;  ///< Left and right of the words.
constexpr int leastWidth = 130;

QFont firstFont()
{
    return Theme::font(metrics::text);
}

QFont secondFont()
{
    return Theme::font(metrics::textSmall);
}

}  // namespace

StepButton::StepButton(QWidget* parent)
    : QPushButton{parent}
{
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void StepButton::showStep(const view::StepView& step, const WallClock& clock)
{
    const QString second = m_latest;
    m_step = QStringLiteral("%1  %2").arg(words::step(step), words::when(step.left));
    m_latest = step.latest ? words::latest(*step.latest, clock.text(step.latest->at)) : QString{};
    m_latestBriefly =
        step.latest ? words::latestBriefly(*step.latest, clock.text(step.latest->at)) : QString{};
    setAccessibleName(tr("%1: answer it now").arg(words::step(step)));
    setAccessibleDescription(m_latest);
    QString tip = tr("Press when this happens sooner: %1").arg(words::stepButton(step));
    if (!m_latest.isEmpty())
        tip += QLatin1Char{'\n'} + m_latest;
    setToolTip(tip);
    setText(m_step);
    if (second.isEmpty() != m_latest.isEmpty())
        updateGeometry();
    update();
}

QSize StepButton::sizeFor(const QString& second) const
{
    const QFontMetrics first{firstFont()};
    const QFontMetrics below{secondFont()};
    const int width = std::max(first.horizontalAdvance(m_step), below.horizontalAdvance(second));
    const int height = first.height() + (second.isEmpty() ? 0 : below.height());
    return {width + 2 * edge + 2, std::max(metrics::target, height + 14)};
}

QSize StepButton::sizeHint() const
{
    return sizeFor(m_latest);
}

/// The step's name may be cut short; its latest start may not.
QSize StepButton::minimumSizeHint() const
{
    const QFontMetrics below{secondFont()};
    const int second = below.horizontalAdvance(m_latestBriefly) + 2 * edge + 2;
    return {std::max(leastWidth, second), sizeFor(m_latestBriefly).height()};
}

void StepButton::paintEvent(QPaintEvent*)
{
    QStylePainter painter{this};
    QStyleOptionButton option;
    initStyleOption(&option);
    option.text.clear();
    painter.drawControl(QStyle::CE_PushButton, option);

    const QRect inside = rect().adjusted(edge, 5, -edge, -5);
    painter.setPen(option.palette.buttonText().color());
    const QFontMetrics first{firstFont()};
    const QFontMetrics below{secondFont()};
    const int together = first.height() + (m_latest.isEmpty() ? 0 : below.height());
    QRect line{inside.left(), inside.center().y() - together / 2, inside.width(), first.height()};
    painter.setFont(firstFont());
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                     first.elidedText(m_step, Qt::ElideMiddle, line.width()));
    if (m_latest.isEmpty())
        return;
    line = {line.left(), line.bottom() + 1, line.width(), below.height()};
    const bool fits = below.horizontalAdvance(m_latest) <= line.width();
    painter.setFont(secondFont());
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, fits ? m_latest : m_latestBriefly);
}

}  // namespace app::desktop
