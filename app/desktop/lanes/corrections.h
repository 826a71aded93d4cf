#pragma once

#include "core/run/run.h"

#include <QFrame>

#include <optional>
#include <vector>

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

    /// Where room is short, only what may be wanted at once; the menus have the rest. `narrow` leaves what
    /// was answered last.
    void setBrief(bool brief, bool narrow);

    /// With the shortest words, where text is too large for more.
    void setTerse(bool terse);

    /// The lanes are shown to be read from afar.
    void setFar(bool far);

    /// While something sounds, it can be silenced for a while.
    void setSounding(bool sounding);

Q_SIGNALS:
    void muteRequested();
    void answered(const core::run::Answer& answer);
    void endRequested();
    void cautionsRequested();
    void moreToggled(bool open);
    void farToggled(bool far);
    /// The keyboard was here and is wanted here no more.
    void left();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void openEarlier(bool open);
    void showOthers();
    void moveLast(int minutes);

    QLabel* m_last;
    QPushButton* m_undo;
    QPushButton* m_earlier;
    QPushButton* m_more;
    QPushButton* m_quiet;
    QPushButton* m_far;
    std::vector<QWidget*> m_others;  ///< Make room while minutes are asked for.
    std::vector<QWidget*> m_rare;    ///< Make room where it is short.
    bool m_brief = false;
    bool m_narrow = false;
    std::optional<bool> m_terse;
    std::vector<QPushButton*> m_minutes;
};

}  // namespace app::desktop
