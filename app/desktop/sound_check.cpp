#include "app/desktop/sound_check.h"

#include "app/desktop/help/help_sheet.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QStyle>

namespace app::desktop {

using core::alarm::Kind;
using core::alarm::Subject;

SoundCheck::SoundCheck(const Theme& theme, Sound& sound, QWidget* parent)
    : QDialog{parent}
    , m_theme{theme}
    , m_sound{sound}
    , m_check{new QWidget}
    , m_help{new HelpSheet{theme, HelpFor::Sound}}
    , m_health{new QLabel}
    , m_heard{nullptr}
    , m_passOver{nullptr}
{
    setObjectName(QStringLiteral("soundCheck"));
    setWindowTitle(tr("Sound check"));
    build();
    buildHelp();
    connect(&sound, &Sound::healthChanged, this, &SoundCheck::follow);
    follow();
}

void SoundCheck::build()
{
    auto* layout = new QVBoxLayout{m_check};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(metrics::gap);
    auto* title = new QLabel{tr("Can you hear every alarm from where you work?")};
    title->setFont(Theme::font(metrics::textLarge, true));
    layout->addWidget(title);
    m_health->setObjectName(QStringLiteral("soundHealth"));
    m_health->setWordWrap(true);
    layout->addWidget(m_health);
    layout->addWidget(patternRow(Kind::GetReady, Subject::Task, tr("Get ready  (1)"),
                                 tr("soft, once, ahead of time"), QStringLiteral("playReady")));
    layout->addWidget(patternRow(Kind::Due, Subject::Task, tr("A step is due  (2)"),
                                 tr("until it is answered"), QStringLiteral("playStep")));
    layout->addWidget(patternRow(Kind::Due, Subject::Look, tr("A look is due  (3)"),
                                 tr("until it is answered"), QStringLiteral("playLook")));
    layout->addWidget(patternRow(Kind::Due, Subject::Water, tr("Water is due  (4)"),
                                 tr("until it is answered"), QStringLiteral("playWater")));
    layout->addWidget(patternRow(Kind::LimitPassed, Subject::Water, tr("A limit is passed  (5)"),
                                 tr("the loudest"), QStringLiteral("playLimit")));
    layout->addWidget(makeAnswers());
}

/// The check, and beside it what is to be known of it, or in its place.
void SoundCheck::buildHelp()
{
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(24, 20, 24, 20);
    row->setSpacing(metrics::gapLarge);
    row->addWidget(m_check, 1);
    row->addWidget(m_help, 1);
    m_help->openByKey(*this, [this] { arrangeHelp(); });
}

void SoundCheck::arrangeHelp()
{
    const QMargins edges = layout()->contentsMargins();
    const int room = screen()->availableSize().width() - edges.left() - edges.right();
    m_help->share(*m_check, room, m_check->minimumSizeHint().width());
    layout()->activate();
    resize(sizeHint());
}

QWidget* SoundCheck::makeAnswers()
{
    auto* answers = new QWidget;
    auto* row = new QHBoxLayout{answers};
    row->setContentsMargins(0, metrics::gap, 0, 0);
    const auto add = [&](const QString& text, const QString& name, const QKeySequence& keys) {
        auto* button = new QPushButton{text};
        button->setObjectName(name);
        button->setShortcut(keys);
        button->setAutoDefault(false);
        row->addWidget(button);
        return button;
    };
    auto* later = add(tr("Not now  (Esc)"), QStringLiteral("soundLater"), {});
    m_passOver = add(tr("Without sound: I watch the screen  (W)"), QStringLiteral("passOver"), {Qt::Key_W});
    auto* notHeard = add(tr("I hear nothing  (N)"), QStringLiteral("notHeard"), {Qt::Key_N});
    m_heard = add(tr("I hear them  (Enter)"), QStringLiteral("heard"), {});
    connect(later, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_passOver, &QPushButton::clicked, this, [this] { end(Verdict::PassedOver); });
    connect(notHeard, &QPushButton::clicked, this, &SoundCheck::advise);
    connect(m_heard, &QPushButton::clicked, this, [this] { end(Verdict::Heard); });
    return answers;
}

QWidget* SoundCheck::patternRow(Kind kind, Subject subject, const QString& name, const QString& what,
                                const QString& object)
{
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout{row};
    layout->setContentsMargins(0, 0, 0, 0);
    auto* button = new QPushButton{name};
    button->setObjectName(object);
    button->setIcon(m_theme.icon(QStringLiteral("sound")));
    button->setStyleSheet(QStringLiteral("text-align: left;"));
    button->setMinimumSize(260, metrics::target);
    button->setAutoDefault(false);
    button->setShortcut(QKeySequence{name.section(QLatin1Char{'('}, 1).left(1)});
    auto* text = new QLabel{what};
    text->setProperty("role", QStringLiteral("quiet"));
    layout->addWidget(button);
    layout->addWidget(text, 1);
    connect(button, &QPushButton::clicked, this, [this, kind, subject] { m_sound.playCheck(kind, subject); });
    return row;
}

void SoundCheck::follow()
{
    const bool works = m_sound.isWorking();
    m_health->setText(
        works ? tr("Press each one. Only your ear can tell: the volume and the cable are out of sight here.")
              : m_sound.problem());
    // Nobody can have heard what could not be played, and Enter must not say so by habit.
    m_heard->setEnabled(works);
    makeMain(works ? m_heard : m_passOver, works ? m_passOver : m_heard);
}

void SoundCheck::makeMain(QPushButton* main, QPushButton* other)
{
    other->setProperty("role", QVariant{});
    main->setProperty("role", QStringLiteral("main"));
    for (QPushButton* button : {main, other}) {
        button->style()->unpolish(button);
        button->style()->polish(button);
    }
    main->setDefault(true);
    main->setFocus();
}

void SoundCheck::advise()
{
    m_health->setText(
        tr("Turn up the sound of this machine, look whether a loudspeaker or its cable is out, and press "
           "again. If nothing helps, go on without sound: every alarm then fills the screen."));
}

void SoundCheck::end(Verdict verdict)
{
    m_verdict = verdict;
    accept();
}

}  // namespace app::desktop
