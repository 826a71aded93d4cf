#include "tests/bench/gecode_project.h"

#include <gecode/int.hh>
#include <gecode/minimodel.hh>
#include <gecode/search.hh>

#include <algorithm>
#include <cstdint>
#include <ctime>
#include <memory>
#include <vector>

namespace bench {
namespace {

using core::temporal::Activity;
using core::temporal::Lag;
using core::temporal::Project;
using core::temporal::Time;

/// If anything fits, something does that is over by then: nobody waits for longer than an activity or a lag.
Time horizonOf(const Project& project)
{
    std::vector<Time> waits = {0};
    for (const Activity& activity : project.activities)
        waits.push_back(activity.duration);
    for (const Lag& lag : project.lags)
        waits[static_cast<std::size_t>(lag.to)] =
            std::max(waits[static_cast<std::size_t>(lag.to)], -lag.most);
    std::int64_t sum = 0;
    for (const Time wait : waits)
        sum += wait;
    return static_cast<Time>(std::min<std::int64_t>(sum, Gecode::Int::Limits::max / 4));
}

class ProjectSpace : public Gecode::IntMinimizeSpace {
public:
    explicit ProjectSpace(const Project& project)
        : m_times{*this, static_cast<int>(project.activities.size()) + 1, 0, horizonOf(project)}
        , m_makespan{*this, 0, horizonOf(project)}
    {
        Gecode::rel(*this, m_times[0] == 0);
        for (const Lag& lag : project.lags)
            Gecode::rel(*this, m_times[lag.to] - m_times[lag.from] <= lag.most);
        for (int place = 1; place < m_times.size(); ++place)
            Gecode::rel(*this,
                        m_makespan >= m_times[place]
                                + project.activities[static_cast<std::size_t>(place - 1)].duration);
        for (std::size_t resource = 0; resource < project.capacities.size(); ++resource)
            post(project, resource);
        Gecode::branch(*this, m_times, Gecode::INT_VAR_AFC_MAX(0.99), Gecode::INT_VAL_SPLIT_MIN());
        Gecode::branch(*this, m_makespan, Gecode::INT_VAL_MIN());
    }
    ProjectSpace(ProjectSpace& other)
        : Gecode::IntMinimizeSpace{other}
    {
        m_times.update(*this, other.m_times);
        m_makespan.update(*this, other.m_makespan);
    }
    Gecode::Space* copy() override { return new ProjectSpace{*this}; }
    Gecode::IntVar cost() const override { return m_makespan; }

private:
    void post(const Project& project, std::size_t resource)
    {
        Gecode::IntVarArgs starts;
        Gecode::IntArgs durations;
        Gecode::IntArgs demands;
        for (std::size_t activity = 0; activity < project.activities.size(); ++activity) {
            const Activity& each = project.activities[activity];
            if (each.duration == 0 || resource >= each.demands.size() || each.demands[resource] == 0)
                continue;
            starts << m_times[static_cast<int>(activity) + 1];
            durations << each.duration;
            demands << each.demands[resource];
        }
        if (starts.size() > 0)
            Gecode::cumulative(*this, project.capacities[resource], starts, durations, demands);
    }

    Gecode::IntVarArray m_times;
    Gecode::IntVar m_makespan;
};

class ProcessorTime : public Gecode::Search::Stop {
public:
    explicit ProcessorTime(double seconds)
        : m_until{std::clock() + static_cast<std::clock_t>(seconds * CLOCKS_PER_SEC)}
    {
    }
    bool stop(const Gecode::Search::Statistics&, const Gecode::Search::Options&) override
    {
        return std::clock() > m_until;
    }

private:
    std::clock_t m_until;
};

}  // namespace

GecodeFound shortestByGecode(const Project& project, double seconds)
{
    ProcessorTime stop{seconds};
    Gecode::Search::Options options;
    options.stop = &stop;
    const std::unique_ptr<ProjectSpace> root = std::make_unique<ProjectSpace>(project);
    Gecode::BAB<ProjectSpace> search{root.get(), options};
    GecodeFound found;
    while (const std::unique_ptr<ProjectSpace> next{search.next()})
        found.makespan = next->cost().val();
    found.proved = !search.stopped();
    return found;
}

}  // namespace bench
