#include "app/desktop/look/outcome_button.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <QStyleOptionButton>
#include <QStylePainter>

#include <algorithm>

namespace app::desktop {
namespace {

constexpr int edge = 12;
constexpr int spaceBetween = 2;
constexpr int leastWidth = 260;

int heightOf(const QFont& font, const QString& text, int width)
{
    return text.isEmpty()
        ? 0
        : QFontMetrics{font}.boundingRect(QRect{0, 0, width, 10000}, Qt::TextWordWrap, text).height();
}

QFont whatFont()
{
    return Theme::font(metrics::text, true);
}

QFont outcomeFont()
{
    return Theme::font(metrics::textSmall);
}

}  // namespace

OutcomeButton::OutcomeButton(QWidget* parent)
    : QPushButton{parent}
{
    QSizePolicy policy{QSizePolicy::Expanding, QSizePolicy::Preferred};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void OutcomeButton::showWords(const QString& what, const QString& outcome, const QKeySequence& key)
{
    const QString keyText = key.toString(QKeySequence::NativeText);
    m_what = key.isEmpty() ? what : tr("%1  (%2)").arg(what, keyText);
    m_outcome = outcome;
    setText(m_what);
    setShortcut(key);  // Setting a text drops the shortcut.
    setAccessibleName(what);
    setAccessibleDescription(outcome);
    updateGeometry();
    update();
}

int OutcomeButton::heightForWidth(int width) const
{
    const int inside = std::max(1, width - 2 * edge);
    const int words =
        heightOf(whatFont(), m_what, inside) + spaceBetween + heightOf(outcomeFont(), m_outcome, inside);
    return std::max(metrics::target, words + 2 * 8);
}

QSize OutcomeButton::sizeHint() const
{
    constexpr int usual = 420;
    return {usual, heightForWidth(usual)};
}

QSize OutcomeButton::minimumSizeHint() const
{
    return {leastWidth, metrics::target};
}

void OutcomeButton::paintEvent(QPaintEvent*)
{
    QStylePainter painter{this};
    QStyleOptionButton option;
    initStyleOption(&option);
    option.text.clear();
    painter.drawControl(QStyle::CE_PushButton, option);

    const int width = rect().width() - 2 * edge;
    const int what = heightOf(whatFont(), m_what, width);
    const int outcome = heightOf(outcomeFont(), m_outcome, width);
    QRect line{edge, (height() - what - spaceBetween - outcome) / 2, width, what};
    painter.setPen(option.palette.buttonText().color());
    painter.setFont(whatFont());
    painter.drawText(line, Qt::AlignLeft | Qt::TextWordWrap, m_what);
    line = {edge, line.bottom() + 1 + spaceBetween, width, outcome};
    painter.setFont(outcomeFont());
    painter.drawText(line, Qt::AlignLeft | Qt::TextWordWrap, m_outcome);
}

}  // namespace app::desktop
