#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace app::desktop {

class Theme;

/// A strip that says something and may offer something to press. Hidden while it says nothing.
class Notice : public QFrame {
    Q_OBJECT

public:
    /// `role` is "notice" or "warning"; `icon` a name in resources/icons.
    Notice(const Theme& theme, const QString& role, const QString& icon, QWidget* parent = nullptr);

    void say(const QString& text);
    [[nodiscard]] QString text() const;

    /// A button at its end. Its object name is the strip's with the number of the button, from 1.
    QPushButton* offer(const QString& text);

private:
    QLabel* m_icon;
    QLabel* m_text;
    int m_offers = 0;
};

}  // namespace app::desktop
