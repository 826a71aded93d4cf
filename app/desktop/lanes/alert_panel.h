#pragma once

#include "app/desktop/wall_clock.h"
#include "app/view/alarm_view.h"
#include "app/view/now_view.h"

#include "core/run/run.h"

#include <QFrame>

#include <optional>

class QLabel;

namespace app::desktop {

class LiveButton;
class Theme;

/// An alarm that takes the window: what it is, in letters to be read across the
/// room, and the one button that answers it.
class AlertPanel : public QFrame {
    Q_OBJECT

public:
    explicit AlertPanel(const Theme& theme, QWidget* parent = nullptr);

    /// `now` tells which step answers the alarm, where it is a step that does.
    void showAlarm(const view::AlarmView& alarm, const view::NowView& now, const WallClock& clock);

    /// So many percent of the usual size, for a page that has the room.
    void setEnlarged(int percent);

    /// The frame comes and goes, at most once a second.
    void setLit(bool lit);
    void takeFocus();

    /// Whether the button answers this step, so that it need not be shown elsewhere too.
    [[nodiscard]] bool answers(const core::run::Prompt& prompt) const;

Q_SIGNALS:
    void answered(const core::run::Answer& answer);

private:
    void setStep(bool step);
    void sizeWords();
    [[nodiscard]] core::run::Answer answerFor(const view::AlarmView& alarm, const view::NowView& now) const;
    [[nodiscard]] QString buttonFor(const core::run::Answer& answer, const view::AlarmView& alarm,
                                    const view::NowView& now) const;
    void paintEvent(QPaintEvent* event) override;

    const Theme& m_theme;
    QLabel* m_headline;
    QLabel* m_detail;
    LiveButton* m_button;
    core::run::Answer m_answer;
    bool m_lit = false;
    bool m_step = false;
    int m_enlarged = 100;
};

}  // namespace app::desktop
