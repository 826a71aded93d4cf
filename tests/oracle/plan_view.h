#pragma once

#include "core/stagger/plan.h"

#include <map>
#include <string>
#include <vector>

/// A plan beside its question, so that a rule can be written as it is read.
namespace oracle {

using core::measure::Instant;
using core::measure::Seconds;
using core::stagger::PlanData;
using core::stagger::PlannedTask;
using core::stagger::Question;
using core::stagger::TaskId;
using core::stagger::TaskKind;
using core::stagger::TaskState;

namespace service = core::service;

/// A zone that is still part of the service, with the two tasks that decide it.
struct ZoneView {
    std::size_t head = 0;
    std::size_t coat = 0;
    std::size_t place = 0;
    const service::Coat* coatData = nullptr;
    const service::Zone* data = nullptr;
    const PlannedTask* apply = nullptr;
    const PlannedTask* rinse = nullptr;
    bool alone = false;

    [[nodiscard]] TaskId id(TaskKind kind, std::size_t part = 0) const;
    [[nodiscard]] Instant clockStart() const;
    [[nodiscard]] Instant water() const;
    [[nodiscard]] Seconds development() const { return water() - clockStart(); }
    /// Whether the look at `moment` on the zone's clock falls due.
    [[nodiscard]] bool lookFallsDue(Seconds moment) const;
};

class PlanView {
public:
    PlanView(const Question& question, const PlanData& plan);

    [[nodiscard]] const Question& question() const { return m_question; }
    [[nodiscard]] const PlanData& plan() const { return m_plan; }
    [[nodiscard]] const service::Crew& crew() const { return m_question.services.front().crew; }
    [[nodiscard]] const service::Service& head(std::size_t place) const
    {
        return m_question.services.at(place);
    }

    [[nodiscard]] const PlannedTask* find(const TaskId& id) const;
    [[nodiscard]] std::vector<const PlannedTask*> tasksOfHead(std::size_t head) const;
    [[nodiscard]] std::vector<const PlannedTask*> tasksOfCoat(std::size_t head, std::size_t coat) const;

    /// Every zone that has not been given up and whose tasks are in the plan.
    [[nodiscard]] const std::vector<ZoneView>& zones() const { return m_zones; }
    [[nodiscard]] std::vector<const ZoneView*> zonesOfCoat(std::size_t head, std::size_t coat) const;
    [[nodiscard]] bool isGivenUp(std::size_t head, std::size_t coat, std::size_t zone) const;

    /// When a task and what follows it unattended are over.
    [[nodiscard]] Instant fullEnd(const PlannedTask& task) const;
    /// When nothing of a coat is left to be done, assessing included.
    [[nodiscard]] Instant coatEnd(std::size_t head, std::size_t coat) const;
    /// Before this nothing open starts, as far as anything says so.
    [[nodiscard]] std::optional<Instant> notBefore(std::size_t head) const;
    /// The promise less the buffer.
    [[nodiscard]] std::optional<Instant> aimedEnd(std::size_t head) const;

    /// Such as "Apply Root (0.0.apply.2.0)".
    [[nodiscard]] std::string nameOf(const TaskId& id) const;

private:
    void addZone(std::size_t head, std::size_t coat, std::size_t zone);

    const Question& m_question;
    const PlanData& m_plan;
    std::map<TaskId, const PlannedTask*> m_tasks;
    std::vector<ZoneView> m_zones;
};

/// The mixing of a zone's bowl, if it is in the plan.
const PlannedTask* mixOf(const PlanView& view, const ZoneView& zone);

/// What the pot life of a zone's bowl counts from: the task, and the moment in it. Where a bowl was not seen
/// to be mixed, nothing.
struct PotStart {
    const PlannedTask* task = nullptr;
    Instant moment;
};
PotStart potStart(const PlanView& view, const ZoneView& zone);

/// The first application of a coat, if it has any.
const PlannedTask* firstApplied(const PlanView& view, std::size_t head, std::size_t coat);

}  // namespace oracle
