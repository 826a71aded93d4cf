#include "app/command/plan_command.h"

#include "app/command/complain.h"
#include "app/command/input.h"
#include "app/command/question.h"
#include "app/output/plan_json.h"
#include "app/output/timetable.h"
#include "app/session/time_zones.h"

#include <ostream>

namespace app::command {

using core::service::Service;

namespace {

/// Nobody waits for a proof of many heads for ever.
constexpr double secondsToPlan = 10;

/// Stops planning when the time is up, where there is an end.
core::stagger::Budget budgetOf(const Options& options)
{
    core::stagger::Budget budget;
    if (!options.seconds && options.files.size() < 2)
        return budget;
    using Clock = std::chrono::steady_clock;
    const std::chrono::duration<double> seconds{options.seconds.value_or(secondsToPlan)};
    const auto end = Clock::now() + std::chrono::duration_cast<Clock::duration>(seconds);
    budget.conflicts = UINT64_MAX;
    budget.stop = [end] { return Clock::now() >= end; };
    return budget;
}

/// Where to go on reading.
std::string whatWouldHelp(const Options& options)
{
    const QString file = options.files.size() == 1 ? options.files.front() : QStringLiteral("FILE");
    return "What would help: basinbell explain " + file.toStdString() + "\n";
}

}  // namespace

int planCommand(const Options& options, Outside& outside)
{
    const session::QtTimeZones zones;
    const auto question = readQuestion(options, outside.in, zones);
    if (!question)
        return complain(outside, question.error());

    const auto plan = core::stagger::plan(*question, budgetOf(options));
    if (!plan) {
        outside.out << (options.json ? output::noPlanJson(question->services, plan.error())
                                     : output::noPlanText(plan.error()) + whatWouldHelp(options));
        return NothingFits;
    }
    if (options.json)
        outside.out << output::planJson(question->services, *plan, zones);
    else
        outside.out << output::timetable(question->services, *plan, zones,
                                         options.lookAll ? output::Remarks::EveryLook
                                                         : output::Remarks::Counted)
                    << "The product's leaflet comes first: basinbell cautions.\n";
    return Planned;
}

int checkCommand(const Options& options, Outside& outside)
{
    const session::QtTimeZones zones;
    const auto service = readServiceFile(options.file, outside.in, zones);
    if (!service)
        return complain(outside, service.error());
    std::size_t zoneCount = 0;
    for (const auto& coat : service->coats)
        zoneCount += coat.zones.size();
    outside.out << "Nothing is wrong with it: " << (service->name.empty() ? "a service" : service->name)
                << ", " << service->coats.size() << (service->coats.size() == 1 ? " coat, " : " coats, ")
                << zoneCount << (zoneCount == 1 ? " zone.\n" : " zones.\n");
    return Planned;
}

}  // namespace app::command
