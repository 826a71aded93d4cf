#include "app/command/services.h"

#include "app/command/input.h"

namespace app::command {

using core::service::Crew;
using core::service::Hands;
using core::service::Service;

namespace {

using Lines = std::vector<std::string>;

std::string nameOf(const QString& file)
{
    return file == QLatin1String{"-"} ? "standard input" : file.toStdString();
}

std::string counted(std::size_t count, const std::string& one, const std::string& many)
{
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

/// One pair of hands and one basin is also what a file has that says nothing of them.
bool namesNoCrew(const Crew& crew)
{
    return crew.basins == 1 && crew.hands.size() == 1 && crew.hands.front().away.empty()
        && crew.hands.front().kinds.empty();
}

tl::expected<Crew, Lines> sharedCrew(const QStringList& files, const std::vector<Service>& services)
{
    std::size_t first = 0;
    while (first + 1 < services.size() && namesNoCrew(services[first].crew))
        ++first;
    // Where nobody says more, the first one's word for the only pair of hands will do.
    if (namesNoCrew(services[first].crew))
        return services.front().crew;
    Lines problems;
    for (std::size_t place = first + 1; place < services.size(); ++place) {
        if (namesNoCrew(services[place].crew))
            continue;
        const std::string difference = crewDifference(services[place].crew, services[first].crew);
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

std::string crewDifference(const Crew& here, const Crew& there)
{
    if (here.hands.size() != there.hands.size())
        return counted(here.hands.size(), "pair of hands", "pairs of hands") + " here, "
            + std::to_string(there.hands.size()) + " there";
    for (std::size_t place = 0; place < here.hands.size(); ++place) {
        const Hands& one = here.hands[place];
        const Hands& other = there.hands[place];
        if (one.name != other.name)
            return one.name + " here, " + other.name + " there";
        if (one.away != other.away)
            return one.name + " is away at other times";
        if (one.kinds != other.kinds)
            return one.name + " does other work";
    }
    if (here.basins != there.basins)
        return counted(here.basins, "basin", "basins") + " here, " + std::to_string(there.basins) + " there";
    return {};
}

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
