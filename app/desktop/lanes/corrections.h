#pragma once

#include "core/run/run.h"

#include <QFrame>

class QLabel;
class QPushButton;

namespace app::desktop {

class Theme;

/// What was answered last, and how to put it right: undo it, or say that it
/// happened some minutes before it was answered.
class Corrections : public QFrame {
    Q_OBJECT

public:
    explicit Corrections(const Theme& theme, QWidget* parent = nullptr);

    /// `last` in words; empty while there is nothing to put right.
    void showLast(const QString& last);
    void setMoreOpen(bool open);

    /// While something sounds, it can be silenced for a while.
    void setSounding(bool sounding);

Q_SIGNALS:
    void muteRequested();
    void answered(const core::run::Answer& answer);
    void endRequested();
    void cautionsRequested();
    void moreToggled(bool open);

private:
    void openEarlier(bool open);
    void moveLast(int minutes);

    QLabel* m_last;
    QPushButton* m_undo;
    QPushButton* m_earlier;
    QPushButton* m_more;
    QPushButton* m_quiet;
    std::vector<QWidget*> m_others;  ///< Make room while minutes are asked for.
    std::vector<QPushButton*> m_minutes;
};

}  // namespace app::desktop
