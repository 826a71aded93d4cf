#pragma once

#include <cstddef>
#include <optional>
#include <set>
#include <vector>

namespace core::stagger {

class CrewAt;

/// Who does it, by place in the draft.
using HandsOf = std::vector<std::optional<std::size_t>>;

/// Shares tasks out to pairs of hands at fixed times: in the order of their
/// starts, the lowest number that can do it first, going back where that leads
/// nowhere. Only what is under way when a task starts bears on what comes from
/// there on; so a way that has failed is not tried again with the same hands at
/// the same tasks, and the work grows with the tasks, not with the ways.
class HandsSearch {
public:
    /// `places` by start, then id. Both must outlive it.
    HandsSearch(const CrewAt& crew, const std::vector<std::size_t>& places);

    /// Sets the hands of `places` in `given`; false if there is no way.
    bool run(HandsOf& given);

    /// After a failure: tasks that cannot be shared out either, those at work where
    /// it got stuck and the `wider` before them. With `wider` large enough they are so.
    [[nodiscard]] std::vector<std::size_t> stuck(std::size_t wider) const;
    [[nodiscard]] std::size_t size() const { return m_places.size(); }

private:
    [[nodiscard]] std::size_t firstNear(std::size_t next) const;
    [[nodiscard]] bool isFree(std::size_t hands, std::size_t next) const;
    [[nodiscard]] bool hasFreeTwin(std::size_t hands, std::size_t next) const;
    [[nodiscard]] bool canBeGlance(std::size_t look, std::size_t hands, std::size_t next) const;
    bool canTake(std::size_t next, std::size_t hands);
    bool giveFrom(std::size_t next);
    [[nodiscard]] std::vector<std::size_t> underWay(std::size_t next) const;

    const CrewAt& m_crew;
    const std::vector<std::size_t>& m_places;
    HandsOf* m_given = nullptr;
    std::vector<std::size_t> m_near;  ///< By task: the first that may still go on at its start.
    std::vector<std::vector<std::size_t>> m_madeIn;  ///< By look: the applications that it may be made in.
    std::vector<std::vector<std::size_t>> m_looks;   ///< By application: the looks before it in order.
    std::vector<std::set<std::vector<std::size_t>>> m_failed;  ///< By task: hands at what was under way.
    std::size_t m_deepest = 0;
};

/// A set of `places`, which cannot be shared out, that cannot be shared out
/// either and of which no task can be spared.
std::vector<std::size_t> smallestStuck(const CrewAt& crew, const std::vector<std::size_t>& places);

}  // namespace core::stagger
