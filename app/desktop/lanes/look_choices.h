#pragma once

#include "app/view/now_view.h"

#include "core/run/run.h"

#include <QWidget>

class QComboBox;

namespace app::desktop {

class LiveButton;

/// What came of a look: leave it, look again soon, rinse this zone now, and in words what was seen; or leave
/// all that are made with it.
class LookChoices : public QWidget {
    Q_OBJECT

public:
    explicit LookChoices(QWidget* parent = nullptr);

    /// The focus goes to the first choice when another look is shown.
    void showLook(const view::StepView& look);

    /// Where text is too large for it, the buttons say the least that tells them apart.
    void setTerse(bool terse);
    [[nodiscard]] LiveButton* first() const { return m_leave; }

Q_SIGNALS:
    void answered(const core::run::Answer& answer);

private:
    void build();
    void sayAll();
    void sayTone();
    void sayRinse();
    void say(LiveButton* button, const QString& whole, const QString& terse, Qt::Key key);
    void setAgain(int minutes);
    void buildTone();
    void clearTone();
    std::string takeTone();
    void answer(core::run::Answer::Kind kind);
    void leaveAll();

    core::stagger::TaskId m_look;
    QString m_zone;
    bool m_alone = true;                ///< Its water reaches no other zone.
    core::measure::Seconds m_short{0};  ///< Of its least, if it were rinsed now.
    bool m_terse = false;
    std::vector<core::stagger::TaskId> m_others;  ///< That are to be made with it.
    int m_again = 3;
    LiveButton* m_leave;
    LiveButton* m_lookAgain;
    LiveButton* m_sooner;
    LiveButton* m_later;
    LiveButton* m_rinse;
    LiveButton* m_leaveAll;
    QComboBox* m_tone;
};

}  // namespace app::desktop
