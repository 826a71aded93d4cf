#pragma once

#include "app/command/alarm_recorder.h"
#include "app/command/answer_line.h"
#include "app/command/screen.h"
#include "app/session/choice_search.h"
#include "app/session/session.h"
#include "app/view/outcome_view.h"

#include <QObject>

#include <memory>
#include <optional>
#include <set>

namespace app::command {

/// Leads a run through text: shows what the session says, hands it what is typed.
/// It is there before the session begins or takes up its run, so that it misses nothing.
class Terminal : public QObject {
    Q_OBJECT

public:
    Terminal(session::Session& session, const core::measure::TimeZones& zones, std::unique_ptr<Screen> screen,
             QObject* parent = nullptr);

    /// Also writes the alarms into a sound file.
    void recordInto(AlarmRecorder& recorder) { m_recorder = &recorder; }

    /// Ends the run once everything is done, without waiting for a last word.
    void endByItself() { m_endsByItself = true; }

    void takeLine(const QString& line);
    void leave();
    void say(const QString& line);

Q_SIGNALS:
    /// The run is over or was left.
    void done();

private:
    void show();
    void ring(const core::alarm::Call& call);
    void mute();
    void unmute();
    [[nodiscard]] std::vector<std::string> mutedLines() const;
    void enter();
    void tellFacts();
    void tellChanges();
    void askHowItTurnedOut();
    void tellWhenFinished();
    void close();
    void answer(const Order& order);
    void answer(const core::run::Answer& answer);
    void tellAnswers();
    void tellToneWords();
    void askChoices(std::size_t number = 0);
    void followChoices();
    void tellChoices();
    void choose(std::size_t number);
    void take(std::size_t number);

    session::Session& m_session;
    const core::measure::TimeZones& m_zones;
    std::unique_ptr<Screen> m_screen;
    AlarmRecorder* m_recorder = nullptr;
    session::ChoiceSearch m_search;
    std::vector<core::stagger::Choice> m_choices;  ///< As they were listed last.
    std::size_t m_listedAfter = 0;                 ///< So many facts.
    std::optional<std::size_t> m_wanted;           ///< Waits for the search: 0 for the list, else one of it.
    bool m_toldSearch = false;                     ///< It was said that this takes a moment.
    std::size_t m_told = 0;                        ///< So many facts were written on the screen.
    bool m_owesChanges = false;                    ///< What that changes in the plan is still to be said.
    std::set<view::CoatPlace> m_asked;             ///< Coats of which it was asked how they turned out.
    bool m_entered = false;
    bool m_endsByItself = false;
    bool m_toldFinished = false;
    bool m_done = false;
};

}  // namespace app::command
