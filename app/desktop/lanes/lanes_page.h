#pragma once

#include "app/desktop/lanes/reason_band.h"
#include "app/desktop/look/strand_widget.h"
#include "app/desktop/sound.h"
#include "app/session/session.h"
#include "app/view/alarm_view.h"
#include "app/view/now_view.h"
#include "app/view/outcome_view.h"

#include <QTimer>
#include <QWidget>

#include <set>

class QVBoxLayout;

namespace app::session {
class ChoiceSearch;
}

namespace app::desktop {

class AlertPanel;
class AnswerGuard;
class Corrections;
class HelpSheet;
class LanesGrid;
class MorePanel;
class Notice;
class NowPanel;
class OutcomePanel;
class Pulse;

/// The lanes while they run: the one thing to do now, every lane, and the
/// picture; an alarm for water or a limit takes the page, the lanes stay in view.
class LanesPage : public QWidget {
    Q_OBJECT

public:
    LanesPage(const Theme& theme, session::Session& session, Sound& sound,
              std::shared_ptr<const core::measure::TimeZones> zones, QWidget* parent = nullptr);

    /// Shows the session's run, whatever it is now.
    void refresh();
    void takeFocus();
    void undoLast();

    /// How high it is at least as it is now, with nothing of it cut.
    [[nodiscard]] int leastHeight() const;

    /// Asks how the coat that is over turned out; nothing where none is.
    void openOutcome();

    /// Opens the help of this page or closes it. An alarm that takes the window closes it too.
    void toggleHelp();

    /// The page came into view under a finger, or though nobody asked for it: what is pressed in the next
    /// moment was meant for what was there before, and answers nothing.
    void settle();
    /// Somebody asked for it, though an alarm was quicker to bring it.
    void settled();

    /// To be read from three metres: names, digits and what is to be done, and nothing else.
    void setFar(bool far);
    /// Whether somebody said that the alarms can be heard where they work.
    void setHeard(bool heard) { m_heard = heard; }

    /// Says something that stays until it is put away.
    void warn(const QString& warning);

    /// After a run was taken up again.
    void sayResumed(const QString& text);

Q_SIGNALS:
    /// What there is to do, short: for the window's title, which is seen when the window is not.
    void stepShown(const QString& step);
    /// Which service it is, and which of its coats.
    void serviceShown(const QString& name);
    void endRequested();
    void cautionsRequested();
    void soundCheckRequested();
    void farChanged(bool far);

protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void connectParts();
    bool answer(const core::run::Answer& answer);
    void choose(std::size_t place);
    bool amend(const core::run::Answer& answer, const QString& said);
    void connectMore();
    void openMore(bool open);
    ReasonBand::List followReason();
    void showReason();
    void fitLook();
    void showAlarms(const view::NowView& now);
    void showAlert(const view::AlarmView& alarm, const view::NowView& now);
    void showPicture(const view::LanesView& lanes);
    [[nodiscard]] bool isCramped() const;
    [[nodiscard]] QString titleOf(const view::LanesView& lanes) const;
    [[nodiscard]] int roomLeft(const LanesGrid& lanes) const;
    [[nodiscard]] int roomTaken() const;
    void showChanges();
    void showHeat(const view::LanesView& lanes);
    void showMore(bool opens = false);
    void connectFacts();
    void connectOutcome();
    void closeOutcome();
    void connectHelp();
    void connectSettling();
    void giveHelpRoom();
    [[nodiscard]] int helpHeight() const;
    void showOutcome();
    [[nodiscard]] std::vector<view::CoatResult> results() const;
    void showSound();
    void showMuted();
    void mute();
    void insist();
    [[nodiscard]] bool takesWindow(const view::AlarmView& alarm, const view::NowView& now) const;
    [[nodiscard]] bool pictureIsCurrent() const;

    bool m_heard = false;
    const Theme& m_theme;
    session::Session& m_session;
    Sound& m_sound;
    std::shared_ptr<const core::measure::TimeZones> m_zones;
    WallClock m_clock;
    Notice* m_soundWarning;
    Notice* m_warning;
    Notice* m_resumed;
    Notice* m_muted;
    Notice* m_changes;
    Notice* m_heat;
    Notice* m_overNotice;
    ReasonBand* m_reason;
    session::ChoiceSearch* m_choices;
    NowPanel* m_now;
    AlertPanel* m_alert;
    LanesGrid* m_lanes;
    LanesGrid* m_strip;
    StrandWidget* m_strands;
    QVBoxLayout* m_body;
    MorePanel* m_more;
    OutcomePanel* m_outcome;
    std::set<view::CoatPlace> m_passedOver;  ///< Coats that nobody wants to be asked about now.
    Corrections* m_corrections;
    HelpSheet* m_help;
    QString m_chosen;               ///< Said with the change that it made, until something else happens.
    std::size_t m_chosenFacts = 0;  ///< How many facts there were then.
    QTimer m_settling;
    AnswerGuard* m_guard;
    Pulse* m_pulse;
    bool m_insists = false;
    bool m_far = false;
    std::optional<session::RunId> m_runDrawn;
    std::size_t m_factsDrawn = 0;
    core::measure::Instant m_momentDrawn;
    int m_roomTaken = 0;
};

}  // namespace app::desktop
