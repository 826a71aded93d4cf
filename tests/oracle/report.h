#pragma once

#include "tests/oracle/plan_view.h"

#include <initializer_list>
#include <string>
#include <vector>

namespace oracle {

/// Collects what is wrong with a plan.
class Report {
public:
    explicit Report(const PlanView& view)
        : m_view{view}
    {
    }

    /// Something that no plan may do.
    void wrong(const std::string& rule, const std::string& what) { m_lines.push_back(rule + ": " + what); }

    /// A limit that is passed: no fault where limits may be broken and the plan says, at one of the tasks or
    /// zones in `about`, that it breaks one that had not been broken already.
    void passedLimit(const std::string& rule, std::initializer_list<TaskId> about, const std::string& what);

    [[nodiscard]] std::vector<std::string> lines() && { return std::move(m_lines); }

private:
    const PlanView& m_view;
    std::vector<std::string> m_lines;
};

/// Whether any of `tasks` can still be moved: otherwise a rule between them binds nobody.
bool anyOpen(std::initializer_list<const PlannedTask*> tasks);

/// Whether the hands-on times of two tasks have a moment in common.
bool overlap(const PlannedTask& a, const PlannedTask& b);

void checkTasks(const PlanView& view, Report& report);
void checkZones(const PlanView& view, Report& report);
void checkLooks(const PlanView& view, Report& report);
void checkHands(const PlanView& view, Report& report);
void checkBasins(const PlanView& view, Report& report);
void checkCoats(const PlanView& view, Report& report);
void checkFigures(const PlanView& view, Report& report);
void checkGive(const PlanView& view, Report& report);

}  // namespace oracle
