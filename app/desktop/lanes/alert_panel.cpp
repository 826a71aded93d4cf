#include "app/desktop/lanes/alert_panel.h"

#include "app/desktop/lanes/answer_guard.h"
#include "app/desktop/lanes/live_button.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/style_sheet.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/words.h"

#include <QLabel>
#include <QPainter>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

namespace app::desktop {
namespace {

using core::run::Answer;
using core::run::Prompt;
using view::StepView;

constexpr int edgeWidth = 4;

bool isLimit(const view::AlarmView& alarm)
{
    return alarm.alarm.kind == core::alarm::Kind::LimitNear
        || alarm.alarm.kind == core::alarm::Kind::LimitPassed;
}

bool isRinse(const Prompt& prompt)
{
    return prompt.asks == Prompt::Asks::Start && core::stagger::isWater(prompt.task);
}

/// The step that answers the alarm: the alarm's own, or for a limit the rinse that ends the zone's
/// development.
const StepView* stepFor(const view::AlarmView& alarm, const view::NowView& now)
{
    const auto answersIt = [&](const StepView& step) {
        if (!isLimit(alarm))
            return step.prompt.task == alarm.alarm.task && step.prompt.asks == alarm.alarm.asks;
        return isRinse(step.prompt) && step.prompt.task.service == alarm.alarm.task.service
            && step.zones.size() >= alarm.zones.size() && step.left <= view::Seconds{0}
        && std::ranges::find(step.zones, alarm.zones.front()) != step.zones.end();
    };
    if (now.main && answersIt(*now.main))
        return &*now.main;
    const auto found = std::ranges::find_if(now.next, answersIt);
    return found == now.next.end() ? nullptr : &*found;
}

}  // namespace

AlertPanel::AlertPanel(const Theme& theme, QWidget* parent)
    : QFrame{parent}
    , m_theme{theme}
    , m_headline{new QLabel}
    , m_detail{new QLabel}
    , m_button{new LiveButton}
{
    setProperty("role", QStringLiteral("alert"));
    setObjectName(QStringLiteral("alert"));
    m_headline->setObjectName(QStringLiteral("alertHeadline"));
    m_headline->setWordWrap(true);
    m_headline->setAlignment(Qt::AlignCenter);
    m_headline->setTextFormat(Qt::PlainText);
    m_detail->setObjectName(QStringLiteral("alertDetail"));
    m_detail->setAlignment(Qt::AlignCenter);
    m_detail->setTextFormat(Qt::PlainText);
    m_detail->setWordWrap(true);
    m_button->setObjectName(QStringLiteral("alertButton"));
    sizeWords();
    connect(&theme, &Theme::changed, this, &AlertPanel::sizeWords);
    auto* layout = new QVBoxLayout{this};
    const bool large = Theme::textIsLarge();
    const int edge = large ? 14 : 24;  // Just inside the frame that pulses.
    layout->setContentsMargins(40, edge, 40, edge);
    layout->setSpacing(large ? metrics::gapTiny : metrics::gap);
    layout->addStretch(1);
    layout->addWidget(m_headline);
    layout->addWidget(m_detail);
    layout->addSpacing(large ? metrics::gapTiny : metrics::gap);
    layout->addWidget(m_button, 0, Qt::AlignHCenter);
    layout->addStretch(1);
    connect(m_button, &QPushButton::clicked, this, [this] { Q_EMIT answered(m_answer); });
}

void AlertPanel::showAlarm(const view::AlarmView& alarm, const view::NowView& now, const WallClock& clock)
{
    m_answer = answerFor(alarm, now);
    AnswerGuard::setStep(*m_button, m_answer);
    const StepView* step = stepFor(alarm, now);
    setStep(alarm.alarm.subject == core::alarm::Subject::Task && !isLimit(alarm));
    const bool asksForStep = step != nullptr && !isLimit(alarm) && !isRinse(step->prompt);
    m_headline->setText(asksForStep ? words::step(*step) : words::alarmHeadline(alarm));
    // Large text leaves no room for how long it has been standing beside what else is due.
    QString detail =
        Theme::textIsLarge() && !alarm.also.empty() ? words::alarmAlso(alarm) : words::alarmDetail(alarm);
    if (step != nullptr && step->latest)
        detail += QLatin1Char{'\n'} + words::latest(*step->latest, clock.text(step->latest->at));
    m_detail->setText(detail);
    m_button->setText(tr("%1  (Enter)").arg(buttonFor(m_answer, alarm, now)));
}

Answer AlertPanel::answerFor(const view::AlarmView& alarm, const view::NowView& now) const
{
    Answer answer;
    answer.task = alarm.alarm.task;
    if (const StepView* step = stepFor(alarm, now)) {
        answer.kind = step->prompt.asks == Prompt::Asks::Finish ? Answer::Kind::Finish : Answer::Kind::Start;
        answer.task = step->prompt.task;
    } else {
        answer.kind = isLimit(alarm) ? Answer::Kind::RinseZoneNow : Answer::Kind::Start;
    }
    return answer;
}

QString AlertPanel::buttonFor(const Answer& answer, const view::AlarmView& alarm,
                              const view::NowView& now) const
{
    if (answer.kind == Answer::Kind::RinseZoneNow)
        return tr("Water is on %1").arg(words::joined(alarm.zones));
    if (const StepView* step = stepFor(alarm, now))
        return words::stepButton(*step);
    return tr("Started");
}

bool AlertPanel::answers(const Prompt& prompt) const
{
    return m_answer.kind != Answer::Kind::RinseZoneNow && prompt.task == m_answer.task;
}

/// A step that nobody has begun has the colour of what is to be done, and no limit is near.
void AlertPanel::setStep(bool step)
{
    if (step == m_step)
        return;
    m_step = step;
    setProperty("role", step ? QStringLiteral("alertStep") : QStringLiteral("alert"));
    for (QWidget* part : std::initializer_list<QWidget*>{this, m_headline, m_detail, m_button}) {
        part->style()->unpolish(part);
        part->style()->polish(part);
    }
}

void AlertPanel::setEnlarged(int percent)
{
    if (percent == m_enlarged)
        return;
    m_enlarged = percent;
    setStyleSheet(enlargedButtons(QStringLiteral("QPushButton"), metrics::textStep, percent));
    sizeWords();
}

/// A new sheet of styles gives a label the font that it was made with.
void AlertPanel::sizeWords()
{
    m_headline->setFont(Theme::enlargedFont(metrics::textAlert, m_enlarged, true));
    m_detail->setFont(Theme::enlargedFont(metrics::textLarge, m_enlarged));
    m_button->setFont(Theme::enlargedFont(metrics::textStep, m_enlarged, true));
    m_button->setMinimumSize(420 * m_enlarged / 100, 110 * m_enlarged / 100);
}

void AlertPanel::setLit(bool lit)
{
    if (lit == m_lit)
        return;
    m_lit = lit;
    update();
}

void AlertPanel::takeFocus()
{
    m_button->setFocus(Qt::OtherFocusReason);
}

void AlertPanel::paintEvent(QPaintEvent* event)
{
    QFrame::paintEvent(event);
    QPainter painter{this};
    const Colours& colours = m_theme.colours();
    const QColor ground = m_step ? colours.alarmStep : colours.alarm;
    const QColor on = m_step ? colours.onAlarmStep : colours.onAlarm;
    const auto squarePen = [](const QColor& colour, double width) {
        return QPen{colour, width, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin};
    };
    painter.setPen(squarePen(m_lit ? on : ground, 12));
    painter.drawRect(rect().adjusted(12, 12, -12, -12));
    const QColor edge = m_step ? colours.action : colours.alarmEdge;
    painter.setPen(squarePen(edge, 2.0 * edgeWidth));  // The outer half of it is outside.
    painter.drawRect(rect());
}

}  // namespace app::desktop
