#include "app/desktop/lanes/look_choices.h"

#include "app/desktop/lanes/answer_guard.h"
#include "app/desktop/lanes/live_button.h"
#include "app/desktop/look/flow_layout.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/words.h"
#include "app/view/tone_words.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QLineEdit>
#include <QShortcut>

#include <algorithm>

namespace app::desktop {
namespace {

constexpr int mostAgain = 30;

/// As wide as what it asks for; a word that is longer scrolls.
class ToneBox : public QComboBox {
public:
    [[nodiscard]] QSize sizeHint() const override
    {
        constexpr int edgesAndArrow = 52;
        const QString asked = lineEdit() == nullptr ? QString{} : lineEdit()->placeholderText();
        return {fontMetrics().horizontalAdvance(asked) + edgesAndArrow, metrics::targetLive};
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }
};

}  // namespace

LookChoices::LookChoices(QWidget* parent)
    : QWidget{parent}
    , m_leave{new LiveButton}
    , m_lookAgain{new LiveButton}
    , m_sooner{new LiveButton}
    , m_later{new LiveButton}
    , m_rinse{new LiveButton}
    , m_leaveAll{new LiveButton}
    , m_tone{new ToneBox}
{
    build();
    buildTone();
    setAgain(m_again);
}

void LookChoices::build()
{
    auto* row = new FlowLayout{this};
    const std::pair<LiveButton*, const char*> buttons[] = {{m_leave, "leave"},     {m_lookAgain, "lookAgain"},
                                                           {m_sooner, "sooner"},   {m_later, "later"},
                                                           {m_rinse, "rinseZone"}, {m_leaveAll, "leaveAll"}};
    for (const auto& [button, name] : buttons) {
        button->setRole(QStringLiteral("choice"));
        button->setObjectName(QLatin1String{name});
        const bool narrow = button == m_sooner || button == m_later;
        button->setSizePolicy(narrow ? QSizePolicy::Fixed : QSizePolicy::Expanding, QSizePolicy::Fixed);
        row->addWidget(button);
    }
    m_sooner->setText(QStringLiteral("\u2212"));
    m_sooner->setAccessibleName(tr("A minute sooner"));
    m_sooner->setShortcut(QKeySequence{Qt::Key_Minus});
    m_later->setText(QStringLiteral("+"));
    m_later->setAccessibleName(tr("A minute later"));
    m_later->setShortcut(QKeySequence{Qt::Key_Plus});
    connect(m_leave, &QPushButton::clicked, this, [this] { answer(core::run::Answer::Kind::Leave); });
    connect(m_lookAgain, &QPushButton::clicked, this, [this] { answer(core::run::Answer::Kind::LookAgain); });
    connect(m_rinse, &QPushButton::clicked, this, [this] { answer(core::run::Answer::Kind::RinseZoneNow); });
    connect(m_sooner, &QPushButton::clicked, this, [this] { setAgain(m_again - 1); });
    connect(m_later, &QPushButton::clicked, this, [this] { setAgain(m_again + 1); });
    connect(m_leaveAll, &QPushButton::clicked, this, &LookChoices::leaveAll);
    row->addWidget(m_tone);
}

/// Said beforehand, or not at all: it goes with whichever answer comes.
void LookChoices::buildTone()
{
    constexpr int mostLetters = 80;
    m_tone->setObjectName(QStringLiteral("tone"));
    m_tone->setAccessibleName(tr("Tone seen"));
    m_tone->setEditable(true);
    m_tone->setInsertPolicy(QComboBox::NoInsert);
    for (const std::string_view word : view::toneWords)
        m_tone->addItem(QCoreApplication::translate("Tones", word.data()));
    clearTone();
    m_tone->lineEdit()->setMaxLength(mostLetters);
    const auto backToAnswers = [this] { m_leave->setFocus(Qt::OtherFocusReason); };
    connect(m_tone, &QComboBox::activated, this, backToAnswers);
    connect(m_tone->lineEdit(), &QLineEdit::returnPressed, this, backToAnswers);
    auto* key = new QShortcut{QKeySequence{Qt::Key_T}, this};
    key->setObjectName(QStringLiteral("toneKey"));
    connect(key, &QShortcut::activated, this, [this] {
        m_tone->setFocus(Qt::ShortcutFocusReason);
        m_tone->showPopup();
    });
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
    if (m_look != look.prompt.task)
        clearTone();
    m_look = look.prompt.task;
    for (LiveButton* button : {m_leave, m_lookAgain, m_rinse, m_leaveAll})
        AnswerGuard::setStep(*button, look.prompt);
    m_others.clear();
    for (const core::run::Prompt& other : look.together)
        m_others.push_back(other.task);
    m_zone = words::joined(look.zones);
    m_alone = look.alone;
    m_short = look.shortOfLeast;
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
    const bool one = m_others.empty();
    say(m_leave, one ? tr("Leave it on  (1)") : tr("Leave %1 on  (1)").arg(m_zone), tr("Leave (1)"),
        Qt::Key_1);
    say(m_lookAgain, tr("Look again in %1 min  (2)").arg(m_again), tr("%1 min (2)").arg(m_again), Qt::Key_2);
    sayRinse();
    sayTone();
    m_leaveAll->setVisible(!one);
    const int all = static_cast<int>(m_others.size()) + 1;
    say(m_leaveAll, tr("Leave all %n on  (4)", nullptr, all), tr("All %n (4)", nullptr, all), Qt::Key_4);
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
    QStringList notes;
    if (!m_alone)
        notes << tr("wets its neighbours");
    if (m_short > core::measure::Seconds{0})
        notes << tr("%1 short of its least").arg(words::digits(m_short));
    const QString terse = notes.isEmpty() ? tr("Rinse (3)")
        : m_alone                         ? tr("Rinse, short (3)")
                                          : tr("Rinse, spreads (3)");
    notes.prepend(tr("Rinse %1 now  (3)").arg(m_zone));
    say(m_rinse, notes.join(QLatin1Char{'\n'}), terse, Qt::Key_3);
}

void LookChoices::say(LiveButton* button, const QString& whole, const QString& terse, Qt::Key key)
{
    if (button->text() == (m_terse ? terse : whole))
        return;
    button->setText(m_terse ? terse : whole);
    button->setAccessibleName(QString{whole}.replace(QLatin1Char{'\n'}, QLatin1String{", "}));
    button->setShortcut(QKeySequence{key});  // Setting a text drops the shortcut.
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
    answer.task = m_look;
    answer.also = m_others;
    answer.tone = takeTone();
    Q_EMIT answered(answer);
}

void LookChoices::answer(core::run::Answer::Kind kind)
{
    core::run::Answer answer;
    answer.kind = kind;
    answer.task = m_look;
    answer.again = core::measure::Seconds{kind == core::run::Answer::Kind::LookAgain ? m_again * 60 : 0};
    answer.tone = takeTone();
    Q_EMIT answered(answer);
}

}  // namespace app::desktop
