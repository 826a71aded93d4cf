#include "app/desktop/lanes/look_row.h"

#include "app/desktop/lanes/answer_guard.h"
#include "app/desktop/lanes/live_button.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/words.h"

#include <QLabel>

namespace app::desktop {
LookRow::LookRow(int number, QWidget* parent)
    : QObject{parent}
    , m_number{number}
    , m_name{new QLabel{parent}}
    , m_leave{new LiveButton{parent}}
    , m_again{new LiveButton{parent}}
    , m_rinse{new LiveButton{parent}}
{
    const QString suffix = number == 1 ? QString{} : QString::number(number);
    const std::pair<QWidget*, const char*> parts[] = {
        {m_name, "lookZone"}, {m_leave, "leave"}, {m_again, "lookAgain"}, {m_rinse, "rinseZone"}};
    for (const auto& [part, name] : parts)
        part->setObjectName(QLatin1String{name} + suffix);
    m_name->setTextFormat(Qt::PlainText);
    m_name->setFont(Theme::font(metrics::textLane, true));
    using Kind = core::run::Answer::Kind;
    connect(m_leave, &QPushButton::clicked, this, [this] { Q_EMIT answered(Kind::Leave); });
    connect(m_again, &QPushButton::clicked, this, [this] { Q_EMIT answered(Kind::LookAgain); });
    connect(m_rinse, &QPushButton::clicked, this, [this] { Q_EMIT answered(Kind::RinseZoneNow); });
}

QString LookRow::withKey(const QString& words, int key) const
{
    return m_number == 1 ? tr("%1  (%2)", "answer, key").arg(words).arg(key) : words;
}

QStringList LookRow::notes(const view::LookBeside& zone, bool brief)
{
    QStringList notes;
    if (!zone.alone)
        notes << (brief ? tr("spreads") : tr("wets its neighbours"));
    if (zone.shortOfLeast > core::measure::Seconds{0}) {
        const QString left = words::digits(zone.shortOfLeast);
        notes << (brief ? tr("%1 short").arg(left) : tr("%1 short of its least").arg(left));
    }
    return notes;
}

LookRow::Words LookRow::wordsFor(const view::LookBeside& zone, int again, bool brief) const
{
    Words said{withKey(tr("Leave it on"), 1), withKey(tr("Look again\nin %1 min").arg(again), 2),
               withKey(tr("Rinse now"), 3)};
    const QString thought = notes(zone, brief).join(brief ? QStringLiteral(", ") : QStringLiteral("\n"));
    if (!thought.isEmpty())
        said.rinse += QLatin1Char{'\n'} + thought;
    return said;
}

/// Each answer is heard with its zone, for it may be heard by itself.
void LookRow::showZone(const view::LookBeside& zone, int again, bool brief)
{
    const QString name = QString::fromStdString(zone.zone);
    m_name->setText(QFontMetrics{m_name->font()}.elidedText(name, Qt::ElideRight, mostNameWidth()));
    const Words said = wordsFor(zone, again, brief);
    const auto key = [this](Qt::Key first) { return m_number == 1 ? QKeySequence{first} : QKeySequence{}; };
    m_leave->say(said.leave, tr("Leave %1 on").arg(name), key(Qt::Key_1));
    m_again->say(said.again, tr("Look again at %1 in %2 min").arg(name).arg(again), key(Qt::Key_2));
    const QStringList rinse = QStringList{tr("Rinse %1 now").arg(name)} + notes(zone, false);
    m_rinse->say(said.rinse, rinse.join(QStringLiteral(", ")), key(Qt::Key_3));
    for (LiveButton* button : {m_leave, m_again, m_rinse})
        AnswerGuard::setStep(*button, zone.prompt);
}

int LookRow::mostNameWidth()
{
    constexpr int most = 160;
    return Theme::scaled(most);
}

void LookRow::setVisible(bool visible)
{
    for (QWidget* part : std::initializer_list<QWidget*>{m_name, m_leave, m_again, m_rinse})
        part->setVisible(visible);
}

}  // namespace app::desktop
