#include "tests/end_to_end/desktop/kept_run.h"

#include "app/session/stored_services.h"
#include "app/session/time_zones.h"
#include "app/storage/sqlite_journal.h"
#include "core/run/remember.h"

#include <algorithm>

namespace desk {
namespace {

template <class Value, class Error>
Value orThrow(tl::expected<Value, Error> result)
{
    if (!result)
        throw std::runtime_error{"The journal of the run cannot be read."};
    return std::move(*result);
}

}  // namespace

Kept keptIn(const QString& folder)
{
    const auto journal = orThrow(app::storage::SqliteJournal::open(folder.toStdString()));
    const app::session::RunId run{1};
    const auto stored = orThrow(journal->run(run));
    const app::session::QtTimeZones zones;
    Kept kept;
    kept.setup.services = orThrow(app::session::servicesOf(stored.run.services, stored.run.began, zones));
    kept.setup.revisions = orThrow(app::session::revisionsOf(stored, zones));
    kept.setup.began = stored.run.began;
    kept.setup.prepared = stored.run.prepared;
    kept.setup.planner = core::run::remembering(core::stagger::plan);
    kept.facts = orThrow(journal->facts(run));
    return kept;
}

double beginningOf(core::measure::Instant began, std::span<const core::run::Fact> facts,
                   std::span<const capture::Clock::time_point> presses, const capture::Recording& recording,
                   double timesAsFast)
{
    std::vector<core::measure::Instant> moments;
    for (const core::run::Fact& fact : facts)
        moments.push_back(fact.recorded);
    moments.erase(std::ranges::unique(moments).begin(), moments.end());
    if (moments.size() != presses.size())
        throw std::runtime_error{std::to_string(presses.size()) + " presses led to facts of "
                                 + std::to_string(moments.size()) + " moments."};
    std::vector<double> beginnings;
    for (std::size_t place = 0; place < moments.size(); ++place) {
        const auto inRun = static_cast<double>((moments[place] - began).count()) / timesAsFast;
        beginnings.push_back(recording.at(presses[place]) - inRun);
    }
    std::ranges::sort(beginnings);
    return beginnings.at(beginnings.size() / 2);
}

}  // namespace desk
