#pragma once

#include "app/view/now_view.h"

#include "core/run/run.h"

#include <QWidget>

#include <optional>
#include <vector>

namespace app::desktop {

class LiveButton;
class LookRow;
class ToneBox;

/// What came of a look: leave it, look again soon, rinse this zone now, and in words what was seen. Where
/// zones are looked at together, each has a row of its own with the same answers below one another, and all
/// can be left at once.
class LookChoices : public QWidget {
    Q_OBJECT

public:
    explicit LookChoices(QWidget* parent = nullptr);

    /// The focus goes to the first choice when another look is shown.
    void showLook(const view::StepView& look);

    /// Where text is too large for it, the buttons say the least that tells them apart.
    void setTerse(bool terse);

    /// Takes rows where there is room for them, `width` wide and `room` high, and high ones where there is
    /// `roomForHigh` for those. Else what is asked for first has all the room.
    void fit(int width, int roomForHigh, int room);
    [[nodiscard]] bool hasRows() const { return m_form != Form::Flow; }

    [[nodiscard]] int heightAt(int width) const;
    [[nodiscard]] LiveButton* first() const;

Q_SIGNALS:
    void answered(const core::run::Answer& answer);

private:
    enum class Form { Flow, LowRows, HighRows };

    void build();
    void arrange();
    void arrangeFlow();
    void arrangeRows();
    void sayAll();
    void sayFlow();
    void sayTone();
    void sayRinse();
    void say(LiveButton* button, const QString& whole, const QString& terse, Qt::Key key);
    void setAgain(int minutes);
    void buildTone();
    void clearTone();
    std::string takeTone();
    void answer(std::size_t row, core::run::Answer::Kind kind);
    void leaveAll();
    void takeForm(Form form, bool brief);
    [[nodiscard]] int rowHeight(Form form) const;
    [[nodiscard]] int heightOf(Form form) const;
    [[nodiscard]] bool isWideEnough(int width, bool brief) const;
    [[nodiscard]] QString leaveAllText() const;

    std::vector<view::LookBeside> m_zones{1};  ///< What is asked for, and what is to be made with it.
    QString m_zone;
    bool m_terse = false;
    Form m_form = Form::Flow;
    bool m_brief = false;  ///< In rows.
    int m_again = 3;
    std::vector<LookRow*> m_rows;
    LiveButton* m_sooner;
    LiveButton* m_later;
    LiveButton* m_leaveAll;
    ToneBox* m_tone;
};

}  // namespace app::desktop
