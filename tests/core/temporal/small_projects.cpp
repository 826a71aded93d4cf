#include "tests/core/temporal/small_projects.h"

#include <algorithm>
#include <sstream>

namespace core::temporal {
namespace {

int demandAt(const Project& project, const std::vector<Time>& starts, std::size_t resource, Time time)
{
    int sum = 0;
    for (std::size_t activity = 0; activity < starts.size(); ++activity) {
        const Activity& each = project.activities[activity];
        const bool underWay = starts[activity] <= time && time < starts[activity] + each.duration;
        sum += underWay && resource < each.demands.size() ? each.demands[resource] : 0;
    }
    return sum;
}

}  // namespace

Time makespanOf(const Project& project, const std::vector<Time>& starts)
{
    Time makespan = 0;
    for (std::size_t activity = 0; activity < starts.size(); ++activity)
        makespan = std::max(makespan, starts[activity] + project.activities[activity].duration);
    return makespan;
}

std::string brokenBy(const Project& project, const std::vector<Time>& starts)
{
    if (starts.size() != project.activities.size())
        return "a start for each activity";
    if (std::ranges::any_of(starts, [](Time start) { return start < 0; }))
        return "a start before the origin";
    std::vector<Time> times = {0};
    times.insert(times.end(), starts.begin(), starts.end());
    for (const Lag& lag : project.lags) {
        if (times[static_cast<std::size_t>(lag.to)] - times[static_cast<std::size_t>(lag.from)] > lag.most)
            return "the lag from " + std::to_string(lag.from) + " to " + std::to_string(lag.to);
    }
    for (std::size_t resource = 0; resource < project.capacities.size(); ++resource) {
        for (Time time = 0; time < makespanOf(project, starts); ++time) {
            if (demandAt(project, starts, resource, time) > project.capacities[resource])
                return "resource " + std::to_string(resource) + " at " + std::to_string(time);
        }
    }
    return {};
}

std::optional<Time> shortestByTryingAll(const Project& project, Time horizon)
{
    std::optional<Time> best;
    std::vector<Time> starts(project.activities.size(), 0);
    while (true) {
        if ((!best || makespanOf(project, starts) < *best) && brokenBy(project, starts).empty())
            best = makespanOf(project, starts);
        std::size_t place = 0;
        while (place < starts.size() && starts[place] == horizon)
            starts[place++] = 0;
        if (place == starts.size())
            return best;
        ++starts[place];
    }
}

std::string textOf(const Project& project)
{
    std::ostringstream text;
    for (const Activity& activity : project.activities) {
        text << "activity of " << activity.duration << " taking";
        for (const int demand : activity.demands)
            text << ' ' << demand;
        text << '\n';
    }
    text << "of";
    for (const int capacity : project.capacities)
        text << ' ' << capacity;
    for (const Lag& lag : project.lags)
        text << "\nlag " << lag.from << ' ' << lag.to << ' ' << lag.most;
    return text.str();
}

}  // namespace core::temporal
