#include "app/desktop/lanes/look_choices.h"

#include "app/desktop/lanes/live_button.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/words.h"

#include <QHBoxLayout>

#include <algorithm>

namespace app::desktop {
namespace {

constexpr int mostAgain = 30;

}  // namespace

LookChoices::LookChoices(QWidget* parent)
    : QWidget{parent}
    , m_leave{new LiveButton}
    , m_lookAgain{new LiveButton}
    , m_sooner{new LiveButton}
    , m_later{new LiveButton}
    , m_rinse{new LiveButton}
{
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(metrics::gapSmall);
    const std::pair<LiveButton*, const char*> buttons[] = {{m_leave, "leave"},
                                                           {m_lookAgain, "lookAgain"},
                                                           {m_sooner, "sooner"},
                                                           {m_later, "later"},
                                                           {m_rinse, "rinseZone"}};
    for (const auto& [button, name] : buttons) {
        button->setRole(QStringLiteral("choice"));
        button->setObjectName(QLatin1String{name});
        row->addWidget(button, button == m_sooner || button == m_later ? 0 : 1);
    }
    m_leave->setText(tr("Leave it  (1)"));
    m_leave->setShortcut(QKeySequence{Qt::Key_1});
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
    setAgain(m_again);
}

void LookChoices::showLook(const view::StepView& look)
{
    m_look = look.prompt.task;
    const QString zone = words::joined(look.zones);
    m_rinse->setText(look.alone ? tr("Rinse %1 now  (3)").arg(zone)
                                : tr("Rinse %1 now  (3)\nwets its neighbours").arg(zone));
    m_rinse->setShortcut(QKeySequence{Qt::Key_3});
}

void LookChoices::setAgain(int minutes)
{
    m_again = std::clamp(minutes, 1, mostAgain);
    m_lookAgain->setText(tr("Look again in %1 min  (2)").arg(m_again));
    m_lookAgain->setShortcut(QKeySequence{Qt::Key_2});  // Setting a text drops the shortcut.
}

void LookChoices::answer(core::run::Answer::Kind kind)
{
    core::run::Answer answer;
    answer.kind = kind;
    answer.task = m_look;
    answer.again = core::measure::Seconds{kind == core::run::Answer::Kind::LookAgain ? m_again * 60 : 0};
    Q_EMIT answered(answer);
}

}  // namespace app::desktop
