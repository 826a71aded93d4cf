#include "app/desktop/lanes/more_panel.h"
#include "app/desktop/look/metrics.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

// What the panel asks about heat, a zone more and answers that are put right.

namespace app::desktop {

void MorePanel::heat()
{
    if (m_amend.heatOn.size() + m_amend.heatOff.size() > 1)
        return turnTo(Page::HeatWhich);
    if (!m_amend.heatOff.empty())
        Q_EMIT heatTakenOff(core::stagger::TaskId{m_amend.heatOff.front().zone});
    else if (!m_amend.heatOn.empty())
        putOn(view::ZoneOption{m_amend.heatOn.front()});
}

void MorePanel::listHeats()
{
    ask(tr("Which heat?"));
    for (const view::ZoneOption& heat : m_amend.heatOff)
        connect(addOption(tr("%1: off").arg(QString::fromStdString(heat.name))), &QPushButton::clicked, this,
                [this, heat] { Q_EMIT heatTakenOff(heat.zone); });
    for (const view::ZoneOption& heat : m_amend.heatOn)
        connect(addOption(tr("%1: on …").arg(QString::fromStdString(heat.name))), &QPushButton::clicked, this,
                [this, heat] { putOn(heat); });
}

void MorePanel::putOn(const view::ZoneOption& heat)
{
    m_heat = heat;
    turnTo(Page::HeatMinutes);
}

void MorePanel::askHeat()
{
    ask(tr("For how long does the heat stay, as the leaflet says? The windows and alarms stay those without "
           "heat."));
    const auto put = [this, heat = m_heat.zone](int minutes) { Q_EMIT heatPutOn(heat, minutes); };
    for (const int minutes : {5, 10, 15, 20, 30})
        connect(addOption(tr("%1 min").arg(minutes)), &QPushButton::clicked, this,
                [put, minutes] { put(minutes); });
    connect(addOption(tr("That is not known")), &QPushButton::clicked, this, [put] { put(0); });
}

void MorePanel::askZoneName()
{
    constexpr int mostMinutes = 180;
    ask(tr("What is the zone like %1 called, and how long does it take to apply?")
            .arg(QString::fromStdString(m_like.name)));
    auto* name = new QLineEdit;
    name->setObjectName(QStringLiteral("zoneName"));
    name->setAccessibleName(tr("Name of the zone"));
    name->setMinimumHeight(metrics::target);
    auto* minutes = new QSpinBox;
    minutes->setObjectName(QStringLiteral("zoneMinutes"));
    minutes->setAccessibleName(tr("Minutes to apply it"));
    minutes->setMinimumHeight(metrics::target);
    minutes->setRange(0, mostMinutes);
    minutes->setSuffix(tr(" min"));
    minutes->setSpecialValueText(tr("as long as %1").arg(QString::fromStdString(m_like.name)));
    put(name);
    put(minutes);
    auto* done = add(tr("Add it  (Enter)"), QStringLiteral("zoneAdd"), {});
    done->setEnabled(false);
    connect(name, &QLineEdit::textChanged, done,
            [done](const QString& text) { done->setEnabled(!text.trimmed().isEmpty()); });
    connect(name, &QLineEdit::returnPressed, done, &QPushButton::click);
    connect(done, &QPushButton::clicked, this, [this, name, minutes, like = m_like] {
        Q_EMIT zoneAdded(like, name->text().trimmed(), minutes->value());
    });
    name->setFocus(Qt::OtherFocusReason);
}

void MorePanel::listAnswers()
{
    ask(tr("Which answer was not so?"));
    for (const Listed& listed : m_answers)
        connect(addOption(listed.text), &QPushButton::clicked, this, [this, listed] {
            m_answer = listed;
            turnTo(Page::Answer);
        });
}

void MorePanel::askAnswer()
{
    ask(tr("%1. What was so?").arg(m_answer.text));
    const view::AnswerOption answer = m_answer.answer;
    connect(addOption(tr("It did not happen")), &QPushButton::clicked, this,
            [this, answer] { Q_EMIT answerUndone(answer); });
    for (const int minutes : {1, 2, 3, 5, 10})
        connect(addOption(tr("%1 min earlier").arg(minutes)), &QPushButton::clicked, this,
                [this, answer, minutes] { Q_EMIT answerWasEarlier(answer, minutes); });
    for (const view::ZoneOption& zone : answer.others)
        connect(addOption(tr("It was %1").arg(QString::fromStdString(zone.name))), &QPushButton::clicked,
                this, [this, answer, zone] { Q_EMIT answerWasOfZone(answer, zone); });
}

}  // namespace app::desktop
