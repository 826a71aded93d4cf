#pragma once

#include "app/desktop/wall_clock.h"
#include "app/view/now_view.h"

#include <QFrame>

#include <optional>

class QLabel;
class QPushButton;

namespace app::desktop {

class LiveButton;
class LookChoices;
class StepButton;
class Theme;

/// The one thing to do now: one sentence, one large button. Below it, small,
/// what comes next, which can be answered as well when it comes sooner.
class NowPanel : public QFrame {
    Q_OBJECT

public:
    explicit NowPanel(const Theme& theme, QWidget* parent = nullptr);

    void showNow(const view::NowView& now, const WallClock& clock);

    /// Without what comes next, where something else needs the room.
    void setBrief(bool brief);

    /// With the shortest words, where text is too large for more.
    void setTerse(bool terse);

    /// Gives the answers to a look the form that a panel of that width has room for, with so much of the
    /// page's height left for high rows, or at all.
    void fitLook(int width, int leftForHigh, int left);

    /// Whether each zone of a look has a row of answers.
    [[nodiscard]] bool hasLookRows() const;

    /// To be read from three metres: what is to be done in large letters, and no more than that.
    void setFar(bool far);

    /// So many percent of the usual size, for a page that has the room.
    void setEnlarged(int percent);

    /// A frame that comes and goes, while an alarm stands.
    void setInsisting(bool insisting, bool lit);

    /// Gives the keyboard to what is due, unless the person is elsewhere on this page on purpose.
    void takeFocus();

Q_SIGNALS:
    void answered(const core::run::Answer& answer);
    /// Everything is answered and the run can make room for the next.
    void putAway();

private:
    void build();
    QWidget* makeWords();
    void drawIcon();
    void sizeWords();
    void showMain(const view::StepView& step);
    void showLatest(const std::optional<view::LatestStart>& latest);
    void showNext(const std::vector<view::StepView>& steps);
    void showNothing(const view::NowView& now);
    void answerMain();
    void answerNext(std::size_t place);
    void leaveOut();
    [[nodiscard]] QString detail(const view::StepView& step) const;
    void paintEvent(QPaintEvent* event) override;

    const Theme& m_theme;
    view::NowView m_now;
    WallClock m_clock;
    std::optional<core::stagger::TaskId> m_pinned;  ///< A look that is made before its time.
    QLabel* m_icon;
    QLabel* m_sentence;
    QLabel* m_detail;
    QLabel* m_latest;
    LiveButton* m_button;
    LookChoices* m_look;
    QPushButton* m_leaveOut;
    std::vector<StepButton*> m_next;
    QLabel* m_nextTitle;
    bool m_brief = false;
    bool m_far = false;
    int m_enlarged = 100;
    bool m_insisting = false;
    bool m_lit = false;
};

}  // namespace app::desktop
