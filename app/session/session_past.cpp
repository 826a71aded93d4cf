#include "app/session/session.h"

#include <algorithm>

// Runs that are over, to be looked back on.

namespace app::session {

std::vector<StoredRun> Session::past()
{
    auto runs = m_journal->runs();
    if (!runs) {
        warn(runs.error().what);
        return {};
    }
    std::erase_if(*runs, [&](const StoredRun& stored) { return m_run && stored.id == m_keptAs; });
    return std::move(*runs);
}

tl::expected<PastRun, std::string> Session::lookBack(const StoredRun& run)
{
    auto past = readPastRun(*m_journal, run, *m_zones);
    if (past)
        past->setup.budget = m_budget;  // What was planned first, as it was shown.
    return past;
}

std::optional<std::string> Session::tellOf(PastRun& run, const core::run::Answer& answer)
{
    return tellOfPastRun(*m_journal, run, answer, m_clock->now());
}

}  // namespace app::session
