#include "app/command/replay_command.h"

#include "app/command/complain.h"
#include "app/command/input.h"
#include "app/command/run_words.h"
#include "app/session/data_folder.h"
#include "app/session/moments.h"
#include "app/session/past_run.h"
#include "app/session/sounding.h"
#include "app/session/stored_services.h"
#include "app/session/time_zones.h"
#include "core/alarm/words.h"
#include "core/run/amend/revisions.h"

#include <algorithm>
#include <ostream>
#include <thread>

namespace app::command {

using core::measure::Instant;
using core::run::Fact;
using core::run::Setup;
using core::run::State;
using session::StoredRun;

namespace {

class Replay {
public:
    Replay(const Options& options, Outside& outside)
        : m_options{options}
        , m_outside{outside}
    {
    }

    int go();

private:
    bool openJournal();
    int list();
    bool choose();
    bool read();
    bool readOther();
    int showMoment();
    int tell();
    void goOnTo(Instant moment, std::size_t known);
    void sayWhatSounds(const State& state, std::size_t known);
    void waitFor(Instant moment);
    [[nodiscard]] State stateWith(std::size_t known, Instant moment) const;
    [[nodiscard]] Services servicesWith(std::size_t known) const;
    [[nodiscard]] const Services& namesWith(std::size_t known) const;
    int complain(const std::string& what);

    const Options& m_options;
    Outside& m_outside;
    session::QtTimeZones m_zones;
    std::unique_ptr<session::Journal> m_journal;
    std::vector<StoredRun> m_runs;
    StoredRun m_stored;
    Setup m_setup;
    std::vector<Fact> m_facts;
    Setup m_original;  ///< As the run was led, for the names of what was done.
    session::Sounding m_sounding;
    State m_state;
};

int Replay::complain(const std::string& what)
{
    return command::complain(m_outside, {what});
}

bool Replay::openJournal()
{
    m_journal = command::openJournal(m_outside, session::dataFolder(m_options.data.toStdString()));
    if (!m_journal)
        return false;
    auto runs = m_journal->runs();
    if (!runs) {
        complain(runs.error().what);
        return false;
    }
    m_runs = std::move(*runs);
    return true;
}

int Replay::list()
{
    if (m_runs.empty())
        m_outside.out << "The journal knows no run.\n";
    for (const StoredRun& run : m_runs) {
        const auto services = session::servicesOf(run.run.services, run.run.began, m_zones);
        const std::string zone = services ? services->front().timeZone : "UTC";
        m_outside.out << static_cast<std::int64_t>(run.id) << "  "
                      << core::measure::isoText(m_zones.localAt(run.run.began, zone)) << "  "
                      << (services ? services->front().name : "its service was erased")
                      << (run.ended ? "" : "  (not ended)") << (run.damaged ? "  (damaged)" : "") << '\n';
    }
    return Planned;
}

bool Replay::choose()
{
    const auto wanted = std::find_if(m_runs.begin(), m_runs.end(), [&](const StoredRun& run) {
        return !m_options.run || static_cast<std::int64_t>(run.id) == *m_options.run;
    });
    if (wanted == m_runs.end()) {
        complain(m_options.run ? "The journal knows no run " + std::to_string(*m_options.run)
                         + ". basinbell replay --list says which there are."
                               : "The journal knows no run.");
        return false;
    }
    m_stored = *wanted;
    return true;
}

bool Replay::read()
{
    auto run = session::readPastRun(*m_journal, m_stored, m_zones);
    if (!run) {
        complain(run.error());
        return false;
    }
    if (run->isErased()) {
        complain("The service of this run was erased, so it cannot be told again. basinbell card --of "
                 + std::to_string(static_cast<std::int64_t>(m_stored.id)) + " says what is left of it.");
        return false;
    }
    m_setup = std::move(run->setup);
    m_facts = std::move(run->facts);
    m_original = m_setup;
    return true;
}

/// What was done stands; how it is planned, and what was asked for, is the other service's.
bool Replay::readOther()
{
    if (m_options.file.isEmpty())
        return true;
    auto other = readServiceFile(m_options.file, m_outside.in, m_zones);
    if (!other) {
        command::complain(m_outside, other.error());
        return false;
    }
    const auto known = [&](const Fact& fact) {
        return fact.kind == core::run::FactKind::Undone || fact.kind == core::run::FactKind::Moved
            || fact.kind == core::run::FactKind::Ended || fact.kind == core::run::FactKind::Amended
            || (fact.task.service == 0 && core::stagger::isTaskOf(*other, fact.task));
    };
    if (const auto strange = std::find_if_not(m_facts.begin(), m_facts.end(), known);
        strange != m_facts.end()) {
        complain("That service does not go with this run: it has nothing that is "
                 + taskText(namesWith(static_cast<std::size_t>(strange - m_facts.begin()) + 1), strange->task)
                 + ".");
        return false;
    }
    m_setup.services = {std::move(*other)};
    m_setup.revisions.clear();
    return true;
}

State Replay::stateWith(std::size_t known, Instant moment) const
{
    return core::run::stateAt(m_setup, std::span{m_facts}.first(known), moment);
}

Services Replay::servicesWith(std::size_t known) const
{
    return core::run::servicesAt(m_setup, std::span{m_facts}.first(known));
}

const Services& Replay::namesWith(std::size_t known) const
{
    return core::run::servicesAt(m_original, std::span{m_facts}.first(known));
}

void Replay::waitFor(Instant moment)
{
    if (!m_options.speed)
        return;
    m_outside.out.flush();
    const std::chrono::duration<double> real =
        std::chrono::duration<double>{moment - m_state.now} / *m_options.speed;
    std::this_thread::sleep_for(real);
}

void Replay::sayWhatSounds(const State& state, std::size_t known)
{
    const Services services = servicesWith(known);
    const auto alarms = core::alarm::alarmsAt(state, {}, state.now);
    for (core::alarm::Call call : m_sounding.heardAt(state.now, core::alarm::callsOf(alarms, {}))) {
        std::erase_if(call.alarms, [](const core::alarm::Alarm& alarm) { return alarm.insistence > 0; });
        if (!call.alarms.empty())
            m_outside.out << clockOf(services, m_zones, state.now) << "  * "
                          << core::alarm::callText(services, state, call) << '\n';
    }
}

/// What sounded until `moment`, each the first time.
void Replay::goOnTo(Instant moment, std::size_t known)
{
    while (m_state.now < moment) {
        const Instant next = session::nextMoment(m_state, {}, moment);
        waitFor(next);
        m_state = stateWith(known, next);
        sayWhatSounds(m_state, known);
    }
}

int Replay::tell()
{
    m_state = stateWith(0, m_setup.began);
    for (std::size_t known = 0; known < m_facts.size(); ++known) {
        const Fact& fact = m_facts[known];
        goOnTo(fact.recorded, known);
        m_state = stateWith(known + 1, m_state.now);
        m_outside.out << clockOf(namesWith(known + 1), m_zones, fact.recorded) << "  "
                      << factText(m_original, m_facts, known, m_zones) << '\n';
        const std::string changes = core::run::changesText(servicesWith(known + 1), m_state.changes, m_zones);
        if (!changes.empty())
            m_outside.out << "          " << changes << '\n';
        sayWhatSounds(m_state, known + 1);
    }
    m_outside.out << '\n' << summary(servicesWith(m_facts.size()), m_state);
    return Planned;
}

int Replay::showMoment()
{
    const auto moment = readMoment(m_options.at, m_setup.services.front().timeZone, m_zones, m_setup.began);
    if (!moment)
        return complain(moment.error());
    if (*moment < m_setup.began)
        return complain("The run began at " + clockOf(m_setup.services, m_zones, m_setup.began)
                        + ". Give a later time.");
    const auto later = std::find_if(m_facts.begin(), m_facts.end(),
                                    [&](const Fact& fact) { return fact.recorded > *moment; });
    const auto known = static_cast<std::size_t>(later - m_facts.begin());
    const State state = stateWith(known, *moment);
    const Services services = servicesWith(known);
    m_outside.out << clockOf(services, m_zones, *moment) << '\n';
    for (const auto& lines : {nowLines(services, state, m_zones), laneLines(services, state, m_zones)}) {
        for (const std::string& line : lines)
            m_outside.out << line << '\n';
    }
    return Planned;
}

int Replay::go()
{
    if (!openJournal())
        return BadInput;
    if (m_options.list)
        return list();
    if (!choose() || !read() || !readOther())
        return BadInput;
    return m_options.at.isEmpty() ? tell() : showMoment();
}

}  // namespace

int replayCommand(const Options& options, Outside& outside)
{
    return Replay{options, outside}.go();
}

}  // namespace app::command
