#include "app/command/card_command.h"

#include "app/command/card_text.h"
#include "app/command/complain.h"
#include "app/command/run_words.h"
#include "app/session/data_folder.h"
#include "app/session/past_run.h"
#include "app/session/session.h"
#include "app/session/time_zones.h"

#include <algorithm>
#include <ostream>

namespace app::command {

using session::StoredRun;

namespace {

/// The one that was asked for; else the latest that was ended, one that was erased last; else the latest.
const StoredRun* chosen(const std::vector<StoredRun>& runs, std::optional<std::int64_t> wanted)
{
    const auto isWhole = [](const StoredRun& run) { return run.ended && !run.run.services.empty(); };
    auto found = wanted ? std::ranges::find(runs, session::RunId{*wanted}, &StoredRun::id)
                        : std::ranges::find_if(runs, isWhole);
    if (found == runs.end() && !wanted)
        found = std::ranges::find_if(runs, [](const StoredRun& run) { return run.ended.has_value(); });
    if (found != runs.end())
        return &*found;
    return wanted || runs.empty() ? nullptr : &runs.front();
}

}  // namespace

int cardCommand(const Options& options, Outside& outside)
{
    const auto journal = openJournal(outside, session::dataFolder(options.data.toStdString()));
    if (!journal)
        return BadInput;
    const auto runs = journal->runs();
    if (!runs)
        return complain(outside, {runs.error().what});
    const StoredRun* const stored = chosen(*runs, options.run);
    if (stored == nullptr)
        return complain(outside,
                        {options.run
                             ? "The journal knows no run " + std::to_string(*options.run)
                                 + ". basinbell replay --list says which there are."
                             : "The journal knows no run yet. A record card is made of what was answered: "
                               "begin with basinbell run."});
    const session::QtTimeZones zones;
    auto run = session::readPastRun(*journal, *stored, zones);
    if (!run)
        return complain(outside, {run.error()});
    const auto number = static_cast<std::int64_t>(stored->id);
    if (run->isErased()) {
        outside.out << erasedText(view::erasedRun(run->facts), *stored, zones);
        return Planned;
    }
    run->setup.budget.conflicts =
        session::Session::liveConflicts;  // What was planned first, as it was shown.
    const auto latest = run->facts.empty() ? run->setup.began : run->facts.back().recorded;
    const auto card = view::recordCard(run->setup, run->facts, latest, zones);
    outside.out << cardText(card, number, zones);
    return Planned;
}

}  // namespace app::command
