#pragma once

#include "app/session/session.h"
#include "app/storage/sqlite_journal.h"
#include "tests/app/session/session_samples.h"

#include <QTemporaryDir>

#include <map>
#include <memory>
#include <random>
#include <string>

namespace soak {

using core::measure::Instant;
using core::measure::Seconds;
using core::run::Answer;
using core::run::Prompt;

/// A working day without a clock of its own: several heads at once, one run after the other, answered late,
/// wrongly and out of turn by a person who is a row of random numbers; the program is killed in between, so
/// that a run is taken up from its journal. Everything is checked at every moment at which something can
/// change.
class Day {
public:
    explicit Day(std::uint64_t seed);

    /// Until so much time has gone by and the run of that moment is over.
    void workFor(Seconds length);

    /// How often each thing was done or seen, to be printed and looked at.
    std::map<std::string, std::size_t> counts;

private:
    void openSession();
    void beginRun();
    void goOn();
    void actAtRandom();
    void answerWhatIsDue();
    void correct();
    void change();
    void comeAndGo();
    void heat();
    void killAndTakeUp();
    bool tell(const Answer& answer, const char* what);
    void check();
    void checkLimits();
    void checkAlarms();
    void checkGone(const Prompt& prompt);
    void checkJournal();

    std::size_t roll(std::size_t sides) { return m_random() % sides; }
    [[nodiscard]] const core::run::State& state() const { return m_session->state(); }
    core::run::Lane anyLane();

    std::mt19937_64 m_random;
    QTemporaryDir m_folder;
    std::shared_ptr<app::session::samples::HandClock> m_clock;
    app::storage::SqliteJournal* m_journal = nullptr;  ///< Owned by the session.
    std::unique_ptr<app::session::Session> m_session;
    std::optional<app::session::RunId> m_run;
    Instant m_patience;  ///< Before that nothing that is due is answered.
    std::size_t m_runs = 0;
};

/// Two or three heads on a crew of one or two; the n-th of their kind.
std::vector<core::service::Service> someHeads(std::mt19937_64& random, std::size_t number);

/// What this process keeps in memory, in bytes.
std::size_t residentMemory();

}  // namespace soak
