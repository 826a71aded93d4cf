#include "app/desktop/lanes/live_button.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <QKeyEvent>
#include <QStyle>

namespace app::desktop {

LiveButton::LiveButton(QWidget* parent)
    : QPushButton{parent}
{
    setMinimumHeight(metrics::targetLive);
    setFont(Theme::font(metrics::textLarge, true));
    setFocusPolicy(Qt::StrongFocus);
    setRole(QStringLiteral("live"));
}

void LiveButton::setRole(const QString& role)
{
    if (role == m_role)
        return;
    m_role = role;
    setProperty("role", role);
    style()->unpolish(this);
    style()->polish(this);
}

void LiveButton::say(const QString& text, const QString& heard, const QKeySequence& key)
{
    setAccessibleName(heard);
    if (text == this->text())
        return;
    setText(text);
    setShortcut(key);  // Setting a text drops the shortcut.
}

void LiveButton::keyPressEvent(QKeyEvent* event)
{
    const bool presses = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->isAutoRepeat())
        return event->accept();
    if (presses)
        return click();
    QPushButton::keyPressEvent(event);
}

}  // namespace app::desktop
