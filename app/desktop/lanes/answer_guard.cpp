#include "app/desktop/lanes/answer_guard.h"

#include <QKeyEvent>
#include <QPushButton>
#include <QVariant>

namespace app::desktop {
namespace {

constexpr const char* stepProperty = "answersStep";

QString stepOf(const QObject& button)
{
    return button.property(stepProperty).toString();
}

QString stepText(int what, const core::stagger::TaskId& task)
{
    return QStringLiteral("%1 %2").arg(what).arg(QString::fromStdString(core::stagger::taskIdText(task)));
}

/// Whether it could press a button. A shortcut is no key by the time it comes to one.
bool isPress(const QEvent& event)
{
    switch (event.type()) {
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonDblClick:
    case QEvent::Shortcut: return true;
    case QEvent::KeyPress: {
        const int key = static_cast<const QKeyEvent&>(event).key();
        return key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Space || key == Qt::Key_Select;
    }
    default: return false;
    }
}

}  // namespace

AnswerGuard::AnswerGuard(QObject* parent)
    : QObject{parent}
{
}

void AnswerGuard::setStep(QPushButton& button, const core::run::Prompt& prompt)
{
    setStep(button, stepText(static_cast<int>(prompt.asks), prompt.task));
}

void AnswerGuard::setStep(QPushButton& button, const core::run::Answer& answer)
{
    setStep(button, stepText(static_cast<int>(answer.kind), answer.task));
}

void AnswerGuard::setStep(QPushButton& button, const QString& step)
{
    button.setProperty(stepProperty, step);
}

void AnswerGuard::watch(const QWidget& panel)
{
    for (QPushButton* button : panel.findChildren<QPushButton*>()) {
        m_buttons.emplace_back(button);
        button->installEventFilter(this);
    }
}

AnswerGuard::Steps AnswerGuard::steps() const
{
    Steps steps;
    for (const QPointer<QPushButton>& button : m_buttons)
        if (button && button->isVisible())
            steps[button] = stepOf(*button);
    return steps;
}

void AnswerGuard::answered(Steps before)
{
    m_before = std::move(before);
    m_since.start();
}

void AnswerGuard::settled()
{
    m_since.invalidate();
}

bool AnswerGuard::asksForAnother(const QObject& button) const
{
    const QString step = stepOf(button);
    const auto before = m_before.find(&button);
    return !step.isEmpty() && (before == m_before.end() || before->second != step);
}

bool AnswerGuard::eventFilter(QObject* watched, QEvent* event)
{
    const bool guarded = m_since.isValid() && !m_since.hasExpired(moment);
    return (guarded && isPress(*event) && asksForAnother(*watched)) || QObject::eventFilter(watched, event);
}

}  // namespace app::desktop
