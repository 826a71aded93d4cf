#include "app/desktop/lanes/look_choices.h"

#include "app/desktop/lanes/answer_guard.h"
#include "app/desktop/lanes/live_button.h"
#include "app/desktop/lanes/look_row.h"
#include "app/desktop/lanes/tone_box.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/words.h"
#include "app/view/tone_words.h"

#include <QCoreApplication>
#include <QShortcut>

#include <algorithm>

namespace app::desktop {
namespace {

constexpr int mostAgain = 30;
constexpr int mostRows = 6;

}  // namespace

LookChoices::LookChoices(QWidget* parent)
    : QWidget{parent}
    , m_sooner{new LiveButton{this}}
    , m_later{new LiveButton{this}}
    , m_leaveAll{new LiveButton{this}}
    , m_tone{new ToneBox}
{
    build();
    buildTone();
    arrange();
    setAgain(m_again);
}

void LookChoices::build()
{
    for (int number = 1; number <= mostRows; ++number) {
        const std::size_t row = m_rows.size();
        m_rows.push_back(new LookRow{number, this});
        connect(m_rows.back(), &LookRow::answered, this,
                [this, row](core::run::Answer::Kind kind) { answer(row, kind); });
    }
    m_sooner->setObjectName(QStringLiteral("sooner"));
    m_later->setObjectName(QStringLiteral("later"));
    m_leaveAll->setObjectName(QStringLiteral("leaveAll"));
    m_sooner->setText(QStringLiteral("\u2212"));
    m_sooner->setAccessibleName(tr("A minute sooner"));
    m_sooner->setShortcut(QKeySequence{Qt::Key_Minus});
    m_later->setText(QStringLiteral("+"));
    m_later->setAccessibleName(tr("A minute later"));
    m_later->setShortcut(QKeySequence{Qt::Key_Plus});
    connect(m_sooner, &QPushButton::clicked, this, [this] { setAgain(m_again - 1); });
    connect(m_later, &QPushButton::clicked, this, [this] { setAgain(m_again + 1); });
    connect(m_leaveAll, &QPushButton::clicked, this, &LookChoices::leaveAll);
}

/// Said beforehand, or not at all: it goes with whichever answer comes.
void LookChoices::buildTone()
{
    constexpr int mostLetters = 80;
    m_tone->setParent(this);
    m_tone->setObjectName(QStringLiteral("tone"));
    m_tone->setAccessibleName(tr("Tone seen"));
    m_tone->setEditable(true);
    m_tone->setInsertPolicy(QComboBox::NoInsert);
    for (const std::string_view word : view::toneWords)
        m_tone->addItem(QCoreApplication::translate("Tones", word.data()));
    clearTone();
    m_tone->lineEdit()->setMaxLength(mostLetters);
    const auto backToAnswers = [this] { first()->setFocus(Qt::OtherFocusReason); };
    connect(m_tone, &QComboBox::activated, this, backToAnswers);
    connect(m_tone->lineEdit(), &QLineEdit::returnPressed, this, backToAnswers);
    auto* key = new QShortcut{QKeySequence{Qt::Key_T}, this};
    key->setObjectName(QStringLiteral("toneKey"));
    connect(key, &QShortcut::activated, this, [this] {
        m_tone->setFocus(Qt::ShortcutFocusReason);
        m_tone->showPopup();
    });
}

LiveButton* LookChoices::first() const
{
    return m_rows.front()->leave();
}

void LookChoices::clearTone()
{
    m_tone->setCurrentIndex(-1);
    m_tone->clearEditText();
}

/// What goes with this answer goes with no other.
std::string LookChoices::takeTone()
{
    const std::string tone = m_tone->currentText().simplified().toStdString();
    clearTone();
    return tone;
}

void LookChoices::showLook(const view::StepView& look)
{
    if (m_zones.front().prompt.task != look.prompt.task)
        clearTone();
    m_zone = words::joined(look.zones);
    const std::size_t before = m_zones.size();
    m_zones = {{look.prompt, m_zone.toStdString(), look.alone, look.shortOfLeast}};
    m_zones.insert(m_zones.end(), look.together.begin(), look.together.end());
    if (m_zones.size() == 1)
        m_form = Form::Flow;
    if (m_zones.size() != before)
        arrange();
    sayAll();
}

void LookChoices::setTerse(bool terse)
{
    if (terse == m_terse)
        return;
    m_terse = terse;
    sayAll();
}

void LookChoices::sayAll()
{
    if (m_form == Form::Flow)
        sayFlow();
    else
        for (std::size_t row = 0; row < m_zones.size(); ++row)
            m_rows[row]->showZone(m_zones[row], m_again, m_brief);
    for (LiveButton* button :
         {m_rows.front()->leave(), m_rows.front()->again(), m_rows.front()->rinse(), m_leaveAll})
        AnswerGuard::setStep(*button, m_zones.front().prompt);
    sayTone();
    const int all = static_cast<int>(m_zones.size());
    m_leaveAll->setVisible(all > 1);
    say(m_leaveAll, leaveAllText(), tr("All %n (4)", nullptr, all), Qt::Key_4);
}

QString LookChoices::leaveAllText() const
{
    return tr("Leave all %n on  (4)", nullptr, static_cast<int>(m_zones.size()));
}

void LookChoices::sayFlow()
{
    const bool one = m_zones.size() == 1;
    const LookRow& row = *m_rows.front();
    say(row.leave(), one ? tr("Leave it on  (1)") : tr("Leave %1 on  (1)").arg(m_zone), tr("Leave (1)"),
        Qt::Key_1);
    say(row.again(), tr("Look again in %1 min  (2)").arg(m_again), tr("%1 min (2)").arg(m_again), Qt::Key_2);
    sayRinse();
}

/// Only where it is another: the whole page is laid out anew.
void LookChoices::sayTone()
{
    const QString asked = m_terse ? tr("Tone") : tr("Tone seen  (T)");
    if (m_tone->lineEdit()->placeholderText() == asked)
        return;
    m_tone->lineEdit()->setPlaceholderText(asked);
    m_tone->updateGeometry();
}

/// With what is to be thought of first.
void LookChoices::sayRinse()
{
    const view::LookBeside& zone = m_zones.front();
    QStringList notes = LookRow::notes(zone, false);
    const QString terse = notes.isEmpty() ? tr("Rinse (3)")
        : zone.alone                      ? tr("Rinse, short (3)")
                                          : tr("Rinse, spreads (3)");
    notes.prepend(tr("Rinse %1 now  (3)").arg(m_zone));
    say(m_rows.front()->rinse(), notes.join(QLatin1Char{'\n'}), terse, Qt::Key_3);
}

void LookChoices::say(LiveButton* button, const QString& whole, const QString& terse, Qt::Key key)
{
    button->say(m_terse ? terse : whole, QString{whole}.replace(QLatin1Char{'\n'}, QLatin1String{", "}),
                {key});
}

void LookChoices::setAgain(int minutes)
{
    m_again = std::clamp(minutes, 1, mostAgain);
    sayAll();
}

void LookChoices::leaveAll()
{
    core::run::Answer answer;
    answer.kind = core::run::Answer::Kind::Leave;
    answer.task = m_zones.front().prompt.task;
    for (std::size_t other = 1; other < m_zones.size(); ++other)
        answer.also.push_back(m_zones[other].prompt.task);
    answer.tone = takeTone();
    Q_EMIT answered(answer);
}

void LookChoices::answer(std::size_t row, core::run::Answer::Kind kind)
{
    core::run::Answer answer;
    answer.kind = kind;
    answer.task = m_zones[row].prompt.task;
    answer.again = core::measure::Seconds{kind == core::run::Answer::Kind::LookAgain ? m_again * 60 : 0};
    answer.tone = takeTone();
    Q_EMIT answered(answer);
}

}  // namespace app::desktop
