#include "app/session/past_run.h"

#include "app/session/stored_services.h"
#include "app/session/text.h"
#include "core/run/remember.h"

#include <QCoreApplication>

namespace app::session {
namespace {

void planAtOnce(core::run::Setup& setup)
{
    setup.planner = core::run::remembering(core::run::Planner{core::stagger::plan});
    setup.safeStarts = core::run::remembering(core::run::SafeStarts{core::stagger::safeStarts});
}

}  // namespace

PastRun soFar(const core::run::Setup& setup, const std::vector<Fact>& facts)
{
    PastRun run{.stored = {}, .setup = setup, .facts = facts};
    planAtOnce(run.setup);
    return run;
}

tl::expected<PastRun, std::string> readPastRun(Journal& journal, const StoredRun& stored,
                                               const core::measure::TimeZones& zones)
{
    if (stored.damaged)
        return tl::unexpected{Text::tr("This run is damaged in the journal: its service was changed there, "
                                       "so it cannot be told again.")
                                  .toStdString()};
    auto facts = journal.facts(stored.id);
    if (!facts)
        return tl::unexpected{facts.error().what};
    PastRun run{.stored = stored, .setup = {}, .facts = std::move(*facts)};
    if (stored.run.services.empty())
        return run;
    auto services = servicesOf(stored.run.services, stored.run.began, zones);
    auto revisions = revisionsOf(stored, zones);
    if (!services || !revisions)
        return tl::unexpected{!services ? services.error() : revisions.error()};
    run.setup.services = std::move(*services);
    run.setup.revisions = std::move(*revisions);
    run.setup.preference = stored.run.preference;
    run.setup.began = stored.run.began;
    run.setup.prepared = stored.run.prepared;
    planAtOnce(run.setup);
    return run;
}

std::optional<std::string> tellOfPastRun(Journal& journal, PastRun& run, const core::run::Answer& answer,
                                         Instant now)
{
    using Kind = core::run::Answer::Kind;
    if (answer.kind != Kind::TurnOut && answer.kind != Kind::Note)
        return Text::tr("Of a run that is over only how it turned out can be said.").toStdString();
    if (run.isErased())
        return Text::tr("This run was erased. Nothing can be said of it any more.").toStdString();
    auto facts = core::run::decide(run.setup, run.facts, answer, now);
    if (!facts)
        return facts.error().what;
    const auto numbers = journal.append(run.stored.id, *facts);
    if (!numbers)
        return numbers.error().what;
    for (std::size_t place = 0; place < facts->size(); ++place) {
        (*facts)[place].number = (*numbers)[place];
        run.facts.push_back((*facts)[place]);
    }
    return std::nullopt;
}

std::vector<core::service::Service> forNextTime(const PastRun& run)
{
    auto services = run.setup.services;
    for (core::service::Service& service : services) {
        service.notBefore.reset();
        service.readyBy.reset();
        for (core::service::Hands& hands : service.crew.hands)
            hands.away.clear();
        for (core::service::Coat& coat : service.coats) {
            for (core::service::Zone& zone : coat.zones)
                zone.notBefore.reset();
            for (core::service::RinseGroup& group : coat.groups) {
                group.waterEarliest.reset();
                group.waterLatest.reset();
            }
        }
    }
    return services;
}

}  // namespace app::session
