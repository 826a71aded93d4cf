#include "app/desktop/lanes/choice_button.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/words.h"

#include <QStyleOptionButton>
#include <QStylePainter>

namespace app::desktop {
namespace {

constexpr int edge = 12;
constexpr int mostWithKey = 9;

}  // namespace

ChoiceButton::ChoiceButton(int number, QWidget* parent)
    : QPushButton{parent}
    , m_number{number}
{
    setMinimumHeight(metrics::targetLive);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ChoiceButton::showChoice(const view::ChoiceView& choice)
{
    const bool hasKey = m_number <= mostWithKey;
    m_what = words::choice(choice);
    if (hasKey)
        m_what += tr("  (Alt+%1)").arg(m_number);
    m_outcome = words::outcome(choice);
    setText(m_what);
    setAccessibleName(words::choice(choice));
    setAccessibleDescription(m_outcome);
    setToolTip(m_what + QLatin1Char{'\n'} + m_outcome);
    if (hasKey)
        setShortcut(QKeySequence{Qt::ALT | static_cast<Qt::Key>(Qt::Key_0 + m_number)});
    update();
}

QSize ChoiceButton::sizeHint() const
{
    return {420, metrics::targetLive};
}

QSize ChoiceButton::minimumSizeHint() const
{
    return {260, metrics::targetLive};
}

void ChoiceButton::paintEvent(QPaintEvent*)
{
    QStylePainter painter{this};
    QStyleOptionButton option;
    initStyleOption(&option);
    option.text.clear();
    painter.drawControl(QStyle::CE_PushButton, option);

    const QRect inside = rect().adjusted(edge, 6, -edge, -6);
    const QFont whatFont = Theme::font(metrics::text, true);
    const QFont outcomeFont = Theme::font(metrics::textSmall);
    const int outcome = QFontMetrics{outcomeFont}.height();
    painter.setPen(option.palette.buttonText().color());
    painter.setFont(whatFont);
    painter.drawText(inside.adjusted(0, 0, 0, -outcome - 2),
                     Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, m_what);
    painter.setFont(outcomeFont);
    painter.drawText(inside, Qt::AlignLeft | Qt::AlignBottom,
                     QFontMetrics{outcomeFont}.elidedText(m_outcome, Qt::ElideRight, inside.width()));
}

}  // namespace app::desktop
