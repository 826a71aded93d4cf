#include "app/command/services.h"

#include "app/command/input.h"
#include "core/service/shared_crew.h"

namespace app::command {

using core::service::Crew;
using core::service::Service;

namespace {

using Lines = std::vector<std::string>;

std::string nameOf(const QString& file)
{
    return file == QLatin1String{"-"} ? "standard input" : file.toStdString();
}

tl::expected<Crew, Lines> sharedCrew(const QStringList& files, const std::vector<Service>& services)
{
    const std::size_t first = core::service::whoseCrew(services);
    Lines problems;
    for (std::size_t place = first + 1; place < services.size(); ++place) {
        if (core::service::namesNoCrew(services[place].crew))
            continue;
        const std::string difference =
            core::service::crewDifference(services[place].crew, services[first].crew);
        const std::string other = nameOf(files[static_cast<qsizetype>(first)]);
        if (!difference.empty())
            problems.push_back(nameOf(files[static_cast<qsizetype>(place)]) + ": crew: it is not the crew of "
                               + other + ": " + difference
                               + ". Heads that are planned together share one crew: write the same crew in "
                                 "both, leave it out of one, or choose one with --crew "
                               + other + ".");
    }
    if (!problems.empty())
        return tl::unexpected{problems};
    return services[first].crew;
}

}  // namespace

tl::expected<std::vector<Service>, Lines> readServices(const QStringList& files, const QString& crewFile,
                                                       std::istream& in,
                                                       const core::measure::TimeZones& zones)
{
    std::vector<Service> services;
    Lines problems;
    std::optional<Crew> crew;
    for (const QString& file : files) {
        auto service = readServiceFile(file, in, zones);
        if (!service) {
            problems.insert(problems.end(), service.error().begin(), service.error().end());
            continue;
        }
        services.push_back(*std::move(service));
        if (file == crewFile)
            crew = services.back().crew;
    }
    if (!crewFile.isEmpty() && !crew && !files.contains(crewFile)) {
        const auto chosen = readServiceFile(crewFile, in, zones);
        if (chosen)
            crew = chosen->crew;
        else
            problems.insert(problems.end(), chosen.error().begin(), chosen.error().end());
    }
    if (!problems.empty())
        return tl::unexpected{problems};
    if (!crew) {
        const auto shared = sharedCrew(files, services);
        if (!shared)
            return tl::unexpected{shared.error()};
        crew = *shared;
    }
    for (Service& service : services)
        service.crew = *crew;
    return services;
}

}  // namespace app::command
