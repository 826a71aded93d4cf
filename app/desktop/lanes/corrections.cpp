#include "app/desktop/lanes/corrections.h"

#include "app/desktop/look/flow_layout.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <QLabel>
#include <QPushButton>

namespace app::desktop {

Corrections::Corrections(const Theme& theme, QWidget* parent)
    : QFrame{parent}
    , m_last{new QLabel}
    , m_undo{new QPushButton}
    , m_earlier{new QPushButton}
    , m_more{new QPushButton}
    , m_quiet{new QPushButton}
    , m_far{new QPushButton}
{
    setProperty("role", QStringLiteral("foot"));
    m_last->setObjectName(QStringLiteral("lastAnswer"));
    m_last->setWordWrap(true);
    m_last->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_last->setMinimumWidth(Theme::scaled(90));
    m_undo->setObjectName(QStringLiteral("undoLast"));
    m_earlier->setObjectName(QStringLiteral("earlier"));
    m_more->setObjectName(QStringLiteral("moreButton"));
    m_quiet->setObjectName(QStringLiteral("quiet"));
    m_far->setObjectName(QStringLiteral("far"));
    for (QPushButton* const opens : {m_earlier, m_more, m_far})
        opens->setCheckable(true);
    auto* row = new FlowLayout{this};
    row->setContentsMargins(metrics::gapLarge, metrics::gapTiny, metrics::gapLarge, metrics::gapTiny);
    row->addWidget(m_last);
    m_quiet->hide();
    row->addWidget(m_quiet);
    connect(m_quiet, &QPushButton::clicked, this, &Corrections::muteRequested);
    row->addWidget(m_earlier);
    for (const int minutes : {1, 2, 3, 5, 10}) {
        auto* button = new QPushButton{tr("%1 min ago").arg(minutes)};
        button->setObjectName(QStringLiteral("ago%1").arg(minutes));
        button->setMinimumHeight(metrics::target - 14);
        button->hide();
        row->addWidget(button);
        m_minutes.push_back(button);
        connect(button, &QPushButton::clicked, this, [this, minutes] { moveLast(minutes); });
    }
    row->addWidget(m_undo);
    row->addWidget(m_more);
    row->addWidget(m_far);
    auto* cautions = new QPushButton{tr("Cautions  (F2)")};
    cautions->setObjectName(QStringLiteral("cautions"));
    auto* end = new QPushButton{tr("End this run …")};
    end->setObjectName(QStringLiteral("endRun"));
    row->addWidget(cautions);
    row->addWidget(end);
    setTerse(false);
    m_others = {m_undo, m_more};
    m_rare = {cautions, end};
    const auto icons = [this, &theme, cautions] {
        m_undo->setIcon(theme.icon(QStringLiteral("undo")));
        m_quiet->setIcon(theme.icon(QStringLiteral("silent")));
        m_earlier->setIcon(theme.icon(QStringLiteral("clock")));
        cautions->setIcon(theme.icon(QStringLiteral("caution")));
    };
    icons();
    connect(&theme, &Theme::changed, this, icons);
    connect(m_earlier, &QPushButton::toggled, this, &Corrections::openEarlier);
    connect(m_more, &QPushButton::toggled, this, &Corrections::moreToggled);
    connect(m_far, &QPushButton::toggled, this, &Corrections::farToggled);
    connect(cautions, &QPushButton::clicked, this, &Corrections::cautionsRequested);
    connect(end, &QPushButton::clicked, this, &Corrections::endRequested);
    connect(m_undo, &QPushButton::clicked, this, [this] {
        core::run::Answer answer;
        answer.kind = core::run::Answer::Kind::UndoLast;
        Q_EMIT answered(answer);
    });
}

void Corrections::showLast(const QString& last)
{
    m_last->setText(last.isEmpty() ? QString{} : tr("Last: %1").arg(last));
    m_last->setToolTip(last);
    m_undo->setEnabled(!last.isEmpty());
    m_earlier->setEnabled(!last.isEmpty());
    if (last.isEmpty())
        m_earlier->setChecked(false);
}

void Corrections::setMoreOpen(bool open)
{
    m_more->setChecked(open);
}

void Corrections::setFar(bool far)
{
    m_far->setChecked(far);
    showOthers();
}

void Corrections::setSounding(bool sounding)
{
    if (sounding != m_quiet->isHidden())
        return;
    m_quiet->setVisible(sounding);
    showOthers();
}

void Corrections::resizeEvent(QResizeEvent* event)
{
    QFrame::resizeEvent(event);
    showOthers();
}

void Corrections::openEarlier(bool open)
{
    for (QPushButton* button : m_minutes)
        button->setVisible(open);
    showOthers();
    if (open)
        m_minutes.front()->setFocus();
    else
        Q_EMIT left();
}

void Corrections::showOthers()
{
    const bool asked = m_earlier->isChecked();
    for (QWidget* other : m_others)
        other->setVisible(!asked);
    m_last->setVisible(!m_brief);
    const bool roomy = !m_brief && !m_narrow && !asked;
    for (QWidget* rare : m_rare)
        rare->setVisible(roomy);
    // It never takes a line of its own, for the menu and a key do the same; but the way back stays in view.
    m_far->hide();
    const int needed = layout()->sizeHint().width() + layout()->spacing() + m_far->sizeHint().width();
    m_far->setVisible(!asked && (m_far->isChecked() || (roomy && needed <= width())));
}

void Corrections::setBrief(bool brief, bool narrow)
{
    if (brief == m_brief && narrow == m_narrow)
        return;
    m_brief = brief;
    m_narrow = narrow;
    showOthers();
}

void Corrections::setTerse(bool terse)
{
    if (m_terse == terse)
        return;
    m_terse = terse;
    const auto say = [terse](QPushButton* button, const QString& whole, const QString& least) {
        button->setText(terse ? least : whole);
        button->setAccessibleName(whole);
    };
    say(m_undo, tr("Undo it  (Ctrl+Z)"), tr("Undo (Ctrl+Z)"));
    say(m_earlier, tr("It was earlier …  (E)"), tr("Earlier (E)"));
    say(m_more, tr("More …  (M)"), tr("More (M)"));
    say(m_quiet, tr("Quiet 2 min  (Q)"), tr("Quiet (Q)"));
    say(m_far, tr("From afar  (F)"), tr("Afar (F)"));
    // Setting a text drops the shortcut.
    m_earlier->setShortcut(QKeySequence{Qt::Key_E});
    m_more->setShortcut(QKeySequence{Qt::Key_M});
    m_quiet->setShortcut(QKeySequence{Qt::Key_Q});
}

void Corrections::moveLast(int minutes)
{
    m_earlier->setChecked(false);
    core::run::Answer answer;
    answer.kind = core::run::Answer::Kind::MoveLast;
    answer.ago = core::measure::Seconds{minutes * 60};
    Q_EMIT answered(answer);
}

}  // namespace app::desktop
