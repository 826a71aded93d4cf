#include "app/command/terminal.h"

#include "app/command/answer_line.h"
#include "app/command/help.h"
#include "app/command/outcome_order.h"
#include "app/command/right_order.h"
#include "app/command/run_words.h"
#include "app/session/cautions.h"
#include "app/view/outcome_view.h"
#include "app/view/tone_words.h"
#include "core/alarm/words.h"
#include "core/run/amend/amend.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace app::command {

using core::alarm::Alarm;
using core::alarm::Call;
using session::Session;

namespace {

std::string placeText(double seconds)
{
    return core::measure::countdownText(core::measure::Seconds{std::llround(seconds)});
}

}  // namespace

Terminal::Terminal(Session& session, const core::measure::TimeZones& zones, std::unique_ptr<Screen> screen,
                   QObject* parent)
    : QObject{parent}
    , m_session{session}
    , m_zones{zones}
    , m_screen{std::move(screen)}
    , m_search{session}
{
    connect(&m_search, &session::ChoiceSearch::changed, this, &Terminal::followChoices);
    connect(&session, &Session::stateChanged, this, &Terminal::show);
    connect(&session, &Session::called, this, &Terminal::ring);
    connect(&session, &Session::warningRaised, this, &Terminal::say);
    connect(&session, &Session::settled, this, &Terminal::tellWhenFinished);
}

/// The first that is heard of a run: what it holds already was told in another life.
void Terminal::enter()
{
    if (std::exchange(m_entered, true))
        return;
    if (m_recorder)
        m_recorder->beginAt(m_session.state().now);
    m_told = m_session.facts().size();
    if (m_told > 0)
        m_screen->say("Taken up again after " + std::to_string(m_told) + " answers, the last: "
                      + factText(m_session.setup(), m_session.facts(), m_told - 1, m_zones));
}

void Terminal::takeLine(const QString& line)
{
    if (m_done)
        return;
    if (m_toldFinished && line.isEmpty())
        return close();
    const auto order = readOrder(line.toStdString(), m_session.services(), m_session.state());
    if (!order)
        return m_screen->say(order.error());
    switch (order->kind) {
    case Order::Kind::Leave: return leave();
    case Order::Kind::Keys: return m_screen->say(keysText().toStdString());
    case Order::Kind::Cautions:
        for (const std::string& caution : session::cautions())
            m_screen->say("- " + caution);
        return;
    case Order::Kind::Choices: return askChoices();
    case Order::Kind::Choose: return choose(order->choice);
    case Order::Kind::Mute: return mute();
    case Order::Kind::Unmute: return unmute();
    case Order::Kind::Answer: return answer(*order);
    case Order::Kind::Answers: return tellAnswers();
    case Order::Kind::ToneWords: return tellToneWords();
    case Order::Kind::OutcomeWords: return m_screen->say(outcomeWordsText());
    }
}

void Terminal::answer(const Order& order)
{
    core::run::Answer said = order.answer;
    if (!order.clock.empty()) {
        const auto& zone = m_session.services().front().timeZone;
        const auto ago = agoOf(order.clock, m_zones.localAt(m_session.state().now, zone));
        if (!ago)
            return m_screen->say("\"" + order.clock
                                 + "\" is no time of day. Type m 14:03, or m 2 for 2 minutes ago.");
        said.ago = *ago;
    }
    answer(said);
}

void Terminal::tellAnswers()
{
    constexpr std::size_t most = 12;
    const auto lines = answerLines(m_session.setup(), m_session.facts(), m_zones, most);
    for (const std::string& line : lines)
        m_screen->say("  " + line);
    m_screen->say(lines.empty() ? "Nothing was answered yet."
                                : "Put one right with u #12, m 14:03 #12 or was ZONE #12.");
}

void Terminal::tellToneWords()
{
    std::string words = "Behind an answer to a look, as in l: 2 or l: any words:";
    for (std::size_t place = 0; place < view::toneWords.size(); ++place)
        words += (place == 0 ? "  " : ",  ") + std::to_string(place + 1) + " "
            + std::string{view::toneWords[place]};
    m_screen->say(words);
}

void Terminal::answer(const core::run::Answer& answer)
{
    if (const auto refusal = m_session.answer(answer))
        m_screen->say(refusal->what);
}

/// In real time they are worked out apart, so that alarms sound meanwhile; a run that is played waits. Those
/// of `number` 0 are listed, else that one is chosen.
void Terminal::askChoices(std::size_t number)
{
    m_wanted = number;
    m_toldSearch = false;
    if (m_session.plansApart() && m_session.choiceQuestion())
        return m_search.open();
    m_choices = m_session.choices();
    tellChoices();
}

/// Where nothing is left to choose the search closes by itself.
void Terminal::followChoices()
{
    if (!m_wanted || m_done)
        return;
    if (!m_search.isSearching()) {
        m_choices = m_search.choices();
        tellChoices();
        m_search.close();
    } else if (m_search.takesLong() && !std::exchange(m_toldSearch, true)) {
        m_screen->say("What can be chosen is being worked out.");
    }
}

/// What each comes to is as of when they were asked for; a while later it may be less or more.
void Terminal::tellChoices()
{
    const std::size_t number = std::exchange(m_wanted, {}).value_or(0);
    if (m_choices.empty())
        return m_screen->say(
            "There is nothing to choose: every limit can still hold, or nothing can be done.");
    if (number > 0)
        return take(number);
    m_listedAfter = m_session.facts().size();
    for (std::size_t place = 0; place < m_choices.size(); ++place)
        m_screen->say("  w " + std::to_string(place + 1) + "  " + choiceText(m_choices[place]));
}

/// A number is one of the list that somebody has read.
void Terminal::choose(std::size_t number)
{
    if (m_choices.empty())
        return askChoices(number);
    if (m_listedAfter == m_session.facts().size())
        return take(number);
    m_screen->say("Something was answered since these were listed. What can be chosen now:");
    askChoices();
}

void Terminal::take(std::size_t number)
{
    if (number > m_choices.size())
        return m_screen->say("There is no choice " + std::to_string(number) + ". Type w for the list.");
    const core::stagger::Choice chosen = m_choices[number - 1];
    m_choices.clear();
    if (chosen.kind == core::stagger::ChoiceKind::CarryOn)
        return m_screen->say("The plan carries on with what is least harm, as it does by itself.");
    answer(core::run::choiceAnswer(chosen));
}

void Terminal::leave()
{
    if (std::exchange(m_done, true))
        return;
    const bool finished = m_session.state().finished;
    m_session.leave();
    m_screen->say(finished ? "The run is over."
                           : "Left. The run is kept: basinbell run --resume takes it up where it stands.");
    Q_EMIT done();
}

void Terminal::say(const QString& line)
{
    m_screen->say(line.toStdString());
}

void Terminal::show()
{
    if (!m_session.current() || m_done)
        return;
    enter();
    m_search.follow();
    tellFacts();
    tellChanges();
    const auto& services = m_session.services();
    const auto& state = m_session.state();
    std::vector<std::string> now = nowLines(services, state, m_zones);
    if (m_session.isPlanningLong())
        now.emplace_back("The plan is being worked out anew; until then the one before goes on.");
    for (const std::string& line : mutedLines())
        now.push_back(line);
    for (const std::string& line : outcomeLines(services, state, m_session.facts()))
        now.push_back(line);
    m_screen->showPicture({clockOf(services, m_zones, state.now), now, laneLines(services, state, m_zones)});
    if (!state.finished)
        askHowItTurnedOut();
}

/// Once of each coat that is over, and again only if it was taken back meanwhile: the words are there,
/// nothing waits for them.
void Terminal::askHowItTurnedOut()
{
    if (m_endsByItself)
        return;
    const auto over = view::coatResults(m_session.services(), m_session.state(), m_session.facts());
    std::erase_if(m_asked, [&](view::CoatPlace asked) {
        return std::ranges::find(over, asked, &view::CoatResult::coat) == over.end();
    });
    bool asks = false;
    for (const view::CoatResult& coat : over)
        if (m_asked.insert(coat.coat).second && !coat.isTold()) {
            asks = true;
            if (!coat.name.empty())
                m_screen->say(coat.name + " is over.");
        }
    if (asks)
        m_screen->say(outcomeWordsText());
}

/// Each alarm by itself, though one word mutes all that are called for at once.
std::vector<std::string> Terminal::mutedLines() const
{
    const auto& services = m_session.services();
    std::vector<std::string> lines;
    for (const Alarm& alarm : m_session.alarms())
        if (const auto until = m_session.mutedUntil(alarm))
            lines.push_back("MUTED until " + clockOf(services, m_zones, *until) + ": "
                            + core::alarm::alarmText(services, m_session.state(), alarm));
    return lines;
}

/// What is most urgent of what sounds; the next once more is typed.
void Terminal::mute()
{
    const auto audible = m_session.audible();
    if (!m_session.current() || audible.empty())
        return m_screen->say("Nothing sounds.");
    m_session.mute(m_session.calls().front());
    for (const std::string& line : mutedLines())
        m_screen->say(line);
    show();
}

void Terminal::unmute()
{
    if (mutedLines().empty())
        return m_screen->say("Nothing is muted.");
    m_session.unmute({m_session.alarms()});
    m_screen->say("Every alarm sounds again.");
    show();
}

void Terminal::ring(const Call& call)
{
    const auto& services = m_session.services();
    const auto moment = m_session.state().now;
    std::string line = clockOf(services, m_zones, moment) + "  * "
        + core::alarm::callText(services, m_session.state(), call);
    const Alarm alarm = call.lead();
    if (alarm.insistence > 0)
        line += " (louder, " + std::to_string(alarm.insistence) + ")";
    if (m_recorder)
        line += "  [sound file " + placeText(m_recorder->record(alarm, moment)) + "]";
    m_screen->ring(line);
}

/// What was answered, once it is kept.
void Terminal::tellFacts()
{
    const auto& facts = m_session.facts();
    if (m_told == facts.size())
        return;
    const auto& services = m_session.services();
    const std::size_t kept = facts.size() - m_session.notKept();
    for (; m_told < facts.size(); ++m_told)
        m_screen->say(clockOf(services, m_zones, facts[m_told].recorded) + "  "
                      + factText(m_session.setup(), facts, m_told, m_zones)
                      + (m_told < kept ? "" : " (not kept)"));
    const core::run::Fact& last = facts.back();
    if (last.kind == core::run::FactKind::Started && last.task.kind == core::stagger::TaskKind::Heat)
        m_screen->say("          " + std::string{view::heatCaution});
    m_owesChanges = true;
}

/// As soon as the plan for what was answered is there.
void Terminal::tellChanges()
{
    if (m_session.state().beingPlanned || !std::exchange(m_owesChanges, false))
        return;
    const std::string changes =
        core::run::changesText(m_session.services(), m_session.state().changes, m_zones);
    if (!changes.empty())
        m_screen->say("          " + changes);
}

void Terminal::tellWhenFinished()
{
    if (!m_session.current() || m_done)
        return;
    const bool finished = m_session.state().finished;
    if (std::exchange(m_toldFinished, finished) || !finished)
        return;
    m_screen->say("");
    m_screen->say(summary(m_session.services(), m_session.state()));
    const bool ended =
        !m_session.facts().empty() && m_session.facts().back().kind == core::run::FactKind::Ended;
    m_asked.clear();
    if (!ended)
        askHowItTurnedOut();
    if (!m_endsByItself && !ended)
        return m_screen->say("Everything is done. Enter ends the run, u takes the last answer back.");
    // The session is in the middle of telling of this moment; it is left once it has done so.
    QMetaObject::invokeMethod(this, &Terminal::close, Qt::QueuedConnection);
}

void Terminal::close()
{
    if (std::exchange(m_done, true))
        return;
    m_session.leave();
    m_screen->say("The run is over.");
    Q_EMIT done();
}

}  // namespace app::command
