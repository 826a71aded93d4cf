#pragma once

#include "core/temporal/project.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace core::temporal {

/// A project as the search sees it: points, lags and clauses. Private to this
/// folder; see `shortest`.
class ProjectDraft {
public:
    explicit ProjectDraft(const Project& project);

    /// Its functions refer to this object.
    [[nodiscard]] Problem problem() const;

private:
    using Set = std::vector<std::size_t>;

    struct Use {
        std::size_t activity;
        int amount;  ///< Above 0.
    };
    struct Resource {
        int capacity = 0;
        std::vector<Use> uses;
    };
    /// Where an activity can still start and end.
    struct Range {
        Time earliestStart = 0;
        Time latestStart = 0;
        Time earliestEnd = 0;
        Time latestEnd = 0;
    };

    /// Leaves out, the least first, what is not needed to take too much together; `taken` is what they
    /// and others take.
    static void dropSpare(std::vector<Use>& uses, std::int64_t taken, int capacity);

    [[nodiscard]] std::size_t count() const { return m_project.activities.size(); }
    [[nodiscard]] Time duration(std::size_t activity) const
    {
        return m_project.activities[activity].duration;
    }

    // Sets of which one must end before another starts: project_draft.cpp.
    void findPairs();
    void addCliques();
    [[nodiscard]] Set cliqueAround(std::size_t seed) const;
    [[nodiscard]] bool exclude(std::size_t a, std::size_t b) const { return m_exclude[a * count() + b] != 0; }
    [[nodiscard]] Clause oneAfterAnother(const Set& set) const;
    [[nodiscard]] std::vector<Clause> overloads(const std::vector<Time>& times) const;

    // What resources say about bounds: project_bounds.cpp.
    [[nodiscard]] std::vector<Clause> boundClauses(const Distances& distances) const;
    [[nodiscard]] std::vector<Range> ranges(const Distances& distances) const;
    [[nodiscard]] Clause tooMuchWork(const Resource& resource, const std::vector<Range>& ranges) const;
    [[nodiscard]] Clause notAllWithin(const Resource& resource, const std::vector<Range>& ranges, Time from,
                                      Time until) const;
    [[nodiscard]] Clause tooMuchAtOnce(const Resource& resource, const std::vector<Range>& ranges) const;
    [[nodiscard]] Clause notAllAt(const Resource& resource, const std::vector<Range>& ranges, Time time,
                                  const Use* besides) const;

    const Project& m_project;
    std::vector<Resource> m_resources;
    std::size_t m_given = 0;      ///< The resources from here on are cliques, which follow from the others.
    std::vector<char> m_exclude;  ///< By pair of activities: they cannot overlap.
};

}  // namespace core::temporal
