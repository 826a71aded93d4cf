#pragma once

#include "core/run/run.h"
#include "core/stagger/choices.h"

#include <map>

/// Which plan is in force when, and since when a task has been due.
namespace core::run {

struct Planning {
    Instant madeFor{};
    const std::vector<service::Service>* services = nullptr;  ///< Those in force, of the setup.
    stagger::Progress progress{};
    std::optional<stagger::Plan> plan{};
    std::optional<stagger::NoPlan> reason{};
    /// When those of the plan are asked for, which is with others, or since when they were.
    std::map<TaskId, Instant> looks{};
    /// It is still being worked out; what stands here until then is an earlier plan carried on, if there was
    /// one.
    bool pending = false;

    /// `task` must be an open one of the plan.
    [[nodiscard]] Instant askedAt(const stagger::PlannedTask& task) const;
};

/// The plans of a run, each asked for at most once. Keeps references: for the
/// length of one call of `stateAt`.
class PlanHistory {
public:
    PlanHistory(const Setup& setup, std::span<const Fact> facts);

    /// The services, all facts being known.
    [[nodiscard]] const std::vector<service::Service>& services() const { return m_services; }

    /// What was planned as the first `count` facts were known and no later.
    const Planning& afterFacts(std::size_t count);

    /// What is planned at `now`, all facts being known. As long as that is still being worked out: the plan
    /// before, where nothing was told since; else that plan carried on with what was.
    const Planning& inForce(Instant now) { return inForce(m_facts.size(), now); }

    /// Of the tasks that are open in the plan in force.
    std::vector<stagger::SafeStart> safeStarts(Instant now);

    /// What `stagger::choicesFor` is asked where the limits can no longer all hold; nothing where they can.
    std::optional<stagger::Question> choiceQuestion(Instant now);

    /// When `id` is asked for by the plan in force, or, where that is not after `now`, the moment since which
    /// it has been due without a break. A look that was asked for already is not put off again to be made
    /// with others. `id` must be open in that plan.
    Instant firstDue(const TaskId& id, Instant now);

private:
    const Planning& at(std::size_t count, Instant moment);
    const Planning& inForce(std::size_t count, Instant now);
    const Planning& carriedTo(std::size_t count);
    void putLooksTogether(std::size_t count, Planning& planning);
    std::map<TaskId, Instant> calledBefore(std::size_t count, const Planning& planning);
    [[nodiscard]] Instant momentOf(std::size_t count) const;
    std::optional<Instant> dueWithin(std::size_t count, const TaskId& id, Instant until);
    Instant dueSinceLastFact(const TaskId& id, Instant now);
    [[nodiscard]] bool isOverdue(const Planning& planning, Instant now) const;

    const Setup& m_setup;
    std::span<const Fact> m_facts;
    const std::vector<service::Service>& m_services;
    std::map<std::pair<std::size_t, Instant>, Planning> m_known;
    std::map<std::size_t, Planning> m_carried;
    std::size_t m_callsBack = 0;  ///< So many plans back calls are looked for just now.
};

}  // namespace core::run
