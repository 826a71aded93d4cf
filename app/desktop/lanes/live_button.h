#pragma once

#include <QKeySequence>
#include <QPushButton>

namespace app::desktop {

/// A button for wet gloves: large, answers Enter as well as the space bar, and
/// one press is one answer, however long the key is held.
class LiveButton : public QPushButton {
    Q_OBJECT

public:
    explicit LiveButton(QWidget* parent = nullptr);

    /// "main" for the one that is due, "choice" for one among others or not due yet.
    void setRole(const QString& role);

    /// What is on it, how that is heard, and the key that presses it.
    void say(const QString& text, const QString& heard, const QKeySequence& key);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QString m_role;
};

}  // namespace app::desktop
