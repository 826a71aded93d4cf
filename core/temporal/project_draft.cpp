#include "core/temporal/project_draft.h"

#include <algorithm>
#include <cassert>

namespace core::temporal {

ProjectDraft::ProjectDraft(const Project& project)
    : m_project{project}
{
    for (std::size_t r = 0; r < project.capacities.size(); ++r) {
        Resource& resource = m_resources.emplace_back();
        resource.capacity = project.capacities[r];
        for (std::size_t activity = 0; activity < count(); ++activity) {
            const std::vector<int>& demands = project.activities[activity].demands;
            assert(duration(activity) >= 0);
            if (duration(activity) > 0 && r < demands.size() && demands[r] > 0)
                resource.uses.push_back({activity, demands[r]});
        }
    }
    m_given = m_resources.size();
    findPairs();
    addCliques();
}

void ProjectDraft::findPairs()
{
    m_exclude.assign(count() * count(), 0);
    for (const Resource& resource : m_resources) {
        for (const Use& a : resource.uses) {
            for (const Use& b : resource.uses) {
                if (a.activity != b.activity && a.amount > resource.capacity - b.amount)
                    m_exclude[a.activity * count() + b.activity] = 1;
            }
        }
    }
}

/// Activities that cannot overlap by twos, on whichever resource, are one after
/// another altogether, which no single resource may say.
void ProjectDraft::addCliques()
{
    std::vector<Set> cliques;
    for (std::size_t seed = 0; seed < count(); ++seed) {
        Set clique = cliqueAround(seed);
        if (clique.size() < 3 || std::ranges::find(cliques, clique) != cliques.end())
            continue;
        Resource& resource = m_resources.emplace_back();
        resource.capacity = 1;
        for (const std::size_t activity : clique)
            resource.uses.push_back({activity, 1});
        cliques.push_back(std::move(clique));
    }
}

/// Takes in, one after another, the activity that leaves the longest activities to choose from.
ProjectDraft::Set ProjectDraft::cliqueAround(std::size_t seed) const
{
    Set clique = {seed};
    Set candidates;
    for (std::size_t activity = 0; activity < count(); ++activity) {
        if (exclude(seed, activity))
            candidates.push_back(activity);
    }
    while (!candidates.empty()) {
        const auto left = [&](std::size_t activity) {
            std::int64_t sum = duration(activity);
            for (const std::size_t other : candidates)
                sum += exclude(activity, other) ? duration(other) : 0;
            return sum;
        };
        const std::size_t next = *std::ranges::max_element(candidates, {}, left);
        clique.push_back(next);
        std::erase_if(candidates, [&](std::size_t other) { return !exclude(next, other); });
    }
    std::ranges::sort(clique);
    return clique;
}

void ProjectDraft::dropSpare(std::vector<Use>& uses, std::int64_t taken, int capacity)
{
    std::ranges::stable_sort(uses, {}, &Use::amount);
    std::erase_if(uses, [&](const Use& use) {
        const bool spare = taken - use.amount > capacity;
        taken -= spare ? use.amount : 0;
        return spare;
    });
}

Clause ProjectDraft::oneAfterAnother(const Set& set) const
{
    Clause clause;
    for (const std::size_t first : set) {
        for (const std::size_t second : set) {
            if (first != second)
                clause.push_back({startOf(second), startOf(first), -duration(first)});
        }
    }
    return clause;
}

/// Of the activities under way when one starts for which too little is left: a
/// set of which every proper part would fit, small by keeping what takes most.
std::vector<Clause> ProjectDraft::overloads(const std::vector<Time>& times) const
{
    const auto start = [&](const Use& use) { return times[static_cast<std::size_t>(startOf(use.activity))]; };
    std::vector<Set> found;
    for (std::size_t r = 0; r < m_given; ++r) {
        const Resource& resource = m_resources[r];
        for (const Use& starting : resource.uses) {
            std::int64_t taken = 0;
            std::vector<Use> atOnce;
            for (const Use& use : resource.uses) {
                if (start(use) <= start(starting) && start(starting) < start(use) + duration(use.activity)) {
                    atOnce.push_back(use);
                    taken += use.amount;
                }
            }
            if (taken <= resource.capacity)
                continue;
            dropSpare(atOnce, taken, resource.capacity);
            Set set;
            for (const Use& use : atOnce)
                set.push_back(use.activity);
            std::ranges::sort(set);
            if (std::ranges::find(found, set) == found.end())
                found.push_back(std::move(set));
        }
    }
    std::vector<Clause> clauses;
    clauses.reserve(found.size());
    for (const Set& set : found)
        clauses.push_back(oneAfterAnother(set));
    return clauses;
}

Problem ProjectDraft::problem() const
{
    Problem problem;
    const Point end = startOf(count());
    problem.points = end + 1;
    problem.lags = m_project.lags;
    problem.lags.push_back({end, origin, 0});
    for (std::size_t activity = 0; activity < count(); ++activity) {
        problem.lags.push_back({startOf(activity), origin, 0});
        problem.lags.push_back({end, startOf(activity), -duration(activity)});
        for (std::size_t other = 0; other < activity; ++other) {
            if (exclude(other, activity))
                problem.clauses.push_back(oneAfterAnother({other, activity}));
        }
    }
    for (const Resource& resource : m_resources) {
        for (const Use& use : resource.uses) {
            if (use.amount > resource.capacity)
                problem.clauses.push_back({});  // Alone it is too much: nothing can hold.
        }
    }
    problem.softLags = {{{origin, end, 0}, 1}};
    problem.raisesBound = true;
    problem.lazyClauses = [this](const std::vector<Time>& times) { return overloads(times); };
    problem.boundClauses = [this](const Distances& distances) { return boundClauses(distances); };
    return problem;
}

ProjectOutcome shortest(const Project& project, const Limits& limits)
{
    const ProjectDraft draft{project};
    const Problem problem = draft.problem();
    Limits own = limits;
    own.known.reset();
    const Outcome found = search(problem, own);
    ProjectOutcome outcome;
    outcome.complete = found.complete;
    outcome.bound = static_cast<Time>(found.bound);
    outcome.conflicts = found.conflicts;
    outcome.decisions = found.decisions;
    if (found.best) {
        const std::vector<Time>& times = found.best->times;
        outcome.best = Schedule{{times.begin() + 1, times.end() - 1}, times.back()};
    }
    return outcome;
}

}  // namespace core::temporal
