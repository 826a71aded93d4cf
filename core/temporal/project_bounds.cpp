#include "core/temporal/distances.h"
#include "core/temporal/project_draft.h"

#include <algorithm>

/// What resources say about where activities can be, before all orders are
/// decided. Both rules are of one kind: activities that together take too much
/// cannot all be in one place, so one of them is not.
namespace core::temporal {

std::vector<ProjectDraft::Range> ProjectDraft::ranges(const Distances& distances) const
{
    std::vector<Range> ranges(count());
    for (std::size_t activity = 0; activity < count(); ++activity) {
        Range& range = ranges[activity];
        range.earliestStart = -distances.between(startOf(activity), origin);
        range.latestStart = std::min(distances.between(origin, startOf(activity)), farTime);
        range.earliestEnd = range.earliestStart + duration(activity);
        range.latestEnd = range.latestStart + duration(activity);
    }
    return ranges;
}

std::vector<Clause> ProjectDraft::boundClauses(const Distances& distances) const
{
    const std::vector<Range> ranges = this->ranges(distances);
    for (const Resource& resource : m_resources) {
        for (const auto rule : {&ProjectDraft::tooMuchWork, &ProjectDraft::tooMuchAtOnce}) {
            Clause clause = (this->*rule)(resource, ranges);
            if (!clause.empty())
                return {std::move(clause)};
        }
    }
    return {};
}

/// Looks for a time between one activity's earliest start and another's latest
/// end that is too short for all that has to be done within it.
Clause ProjectDraft::tooMuchWork(const Resource& resource, const std::vector<Range>& ranges) const
{
    std::vector<Use> byEnd = resource.uses;
    std::erase_if(byEnd, [&](const Use& use) { return ranges[use.activity].latestStart >= farTime; });
    std::ranges::stable_sort(byEnd, {}, [&](const Use& use) { return ranges[use.activity].latestEnd; });
    for (const Use& first : byEnd) {
        const Time from = ranges[first.activity].earliestStart;
        std::int64_t work = 0;
        for (const Use& use : byEnd) {
            if (ranges[use.activity].earliestStart < from)
                continue;
            work += std::int64_t{use.amount} * duration(use.activity);
            const Time until = ranges[use.activity].latestEnd;
            if (work > std::int64_t{resource.capacity} * (until - from))
                return notAllWithin(resource, ranges, from, until);
        }
    }
    return {};
}

Clause ProjectDraft::notAllWithin(const Resource& resource, const std::vector<Range>& ranges, Time from,
                                  Time until) const
{
    const auto workOf = [this](const Use& use) { return std::int64_t{use.amount} * duration(use.activity); };
    std::vector<Use> within;
    std::int64_t work = 0;
    for (const Use& use : resource.uses) {
        const Range& range = ranges[use.activity];
        if (range.earliestStart < from || range.latestEnd > until)
            continue;
        within.push_back(use);
        work += workOf(use);
    }
    std::ranges::stable_sort(within, {}, workOf);
    Clause clause;
    for (const Use& use : within) {
        if (work - workOf(use) > std::int64_t{resource.capacity} * (until - from)) {
            work -= workOf(use);  // Too much without it too.
            continue;
        }
        const Point start = startOf(use.activity);
        clause.push_back({origin, start, from - 1});
        clause.push_back({start, origin, duration(use.activity) - until - 1});
    }
    return clause;
}

/// Looks for a moment at which the activities that are sure to be under way take
/// too much, or leave too little for one that could be.
Clause ProjectDraft::tooMuchAtOnce(const Resource& resource, const std::vector<Range>& ranges) const
{
    std::vector<Time> changes;
    for (const Use& use : resource.uses) {
        const Range& range = ranges[use.activity];
        if (range.latestStart < range.earliestEnd)
            changes.insert(changes.end(), {range.latestStart, range.earliestEnd});
    }
    std::ranges::sort(changes);
    changes.erase(std::unique(changes.begin(), changes.end()), changes.end());
    // Between changes[k] and changes[k + 1] the same activities are sure to be under way.
    for (std::size_t k = 0; k + 1 < changes.size(); ++k) {
        std::int64_t sure = 0;
        for (const Use& use : resource.uses) {
            const Range& range = ranges[use.activity];
            if (range.latestStart <= changes[k] && changes[k] < range.earliestEnd)
                sure += use.amount;
        }
        if (sure > resource.capacity)
            return notAllAt(resource, ranges, changes[k], nullptr);
        for (const Use& use : resource.uses) {
            const Range& range = ranges[use.activity];
            if (sure + use.amount <= resource.capacity)
                continue;
            // Where it starts first or ends last it must not be under way then: it moves on beyond this time.
            const Time lastAtFirst = std::min({range.earliestEnd, range.latestStart, changes[k + 1]}) - 1;
            if (lastAtFirst >= std::max(range.earliestStart, changes[k]))
                return notAllAt(resource, ranges, lastAtFirst, &use);
            const Time firstAtLast = std::max({range.earliestEnd, range.latestStart, changes[k]});
            if (firstAtLast < std::min(range.latestEnd, changes[k + 1]))
                return notAllAt(resource, ranges, firstAtLast, &use);
        }
    }
    return {};
}

/// One of those that are sure to be under way at `time`, or `besides`, is not.
Clause ProjectDraft::notAllAt(const Resource& resource, const std::vector<Range>& ranges, Time time,
                              const Use* besides) const
{
    std::vector<Use> underWay;
    std::int64_t taken = besides != nullptr ? besides->amount : 0;
    for (const Use& use : resource.uses) {
        const Range& range = ranges[use.activity];
        if (range.latestStart > time || time >= range.earliestEnd)
            continue;
        underWay.push_back(use);
        taken += use.amount;
    }
    dropSpare(underWay, taken, resource.capacity);
    if (besides != nullptr)
        underWay.push_back(*besides);
    Clause clause;
    for (const Use& use : underWay) {
        const Point start = startOf(use.activity);
        clause.push_back({origin, start, time - duration(use.activity)});
        clause.push_back({start, origin, -time - 1});
    }
    return clause;
}

}  // namespace core::temporal
