#include "tests/oracle/facts.h"
#include "tests/oracle/numbering.h"
#include "tests/oracle/report.h"

#include <algorithm>

// Rules 6 and 7: who does what, and what is done while a head is at a basin.

namespace oracle {
namespace {

/// Rule 6: while an application is under way on the head, the hands that apply make the look.
void checkMadeWhile(const PlanView& view, const PlannedTask& task, Report& report)
{
    const std::vector<const PlannedTask*> underWay = applicationsUnderWay(view, task);
    if (!task.madeWhile) {
        if (!underWay.empty())
            report.wrong("rule 6", view.nameOf(task.id) + " is not made by the hands that apply just then");
        return;
    }
    const auto named =
        std::ranges::find(underWay, *task.madeWhile, [](const auto* apply) { return apply->id; });
    if (named == underWay.end())
        report.wrong("rule 6", view.nameOf(task.id) + " is made during an application that is not under way");
    else if (task.hands != (*named)->hands)
        report.wrong("rule 6", view.nameOf(task.id) + " is made by other hands than those that apply");
}

void checkOwnHands(const PlanView& view, const PlannedTask& task, Report& report)
{
    if (task.start == task.end) {
        if (task.hands)
            report.wrong("rule 6", view.nameOf(task.id) + " needs no hands and takes some");
        return;
    }
    if (!task.hands || *task.hands >= view.crew().hands.size()) {
        report.wrong("rule 6", view.nameOf(task.id) + " has no hands to do it");
        return;
    }
    const service::Hands& hands = view.crew().hands[*task.hands];
    if (!task.madeWhile && !hands.does(core::stagger::workOf(task.id.kind)))
        report.wrong("rule 6", view.nameOf(task.id) + " is done by hands that do no such work");
    for (const core::measure::Interval& away : hands.away)
        if (task.start < away.until && away.from < task.end)
            report.wrong("rule 6", view.nameOf(task.id) + " is done by hands that are away");
}

void checkOneAtATime(const PlanView& view, Report& report)
{
    const std::vector<PlannedTask>& tasks = view.plan().tasks;
    for (std::size_t a = 0; a < tasks.size(); ++a)
        for (std::size_t b = a + 1; b < tasks.size(); ++b)
            if (anyOpen({&tasks[a], &tasks[b]}) && tasks[a].hands && tasks[a].hands == tasks[b].hands
                && !canShareHands(tasks[a], tasks[b]))
                report.wrong("rule 6",
                             view.nameOf(tasks[a].id) + " and " + view.nameOf(tasks[b].id)
                                 + " are done by the same hands at once");
}

/// The numbers are only defined by the rules where nothing has happened yet. Where lengths are uncertain the
/// give hangs on who does what, and a lower number may leave less of it.
void checkNumbers(const PlanView& view, Report& report)
{
    if (!view.question().progress.empty() || (view.plan().give && view.crew().hands.size() > 1))
        return;
    if (const auto lowest = lowestHands(view); lowest && *lowest != handsInOrder(view))
        report.wrong("numbers", "lower numbers of hands are free");
    if (const auto lowest = lowestBasins(view); lowest != basinsInOrder(view))
        report.wrong("numbers", "lower numbers of basins are free");
}

void checkAtBasin(const PlanView& view, const PlannedTask& rinse, const PlannedTask& other, Report& report)
{
    if (other.id == rinse.id || other.id.service != rinse.id.service || other.id.kind == TaskKind::Mix)
        return;
    if (view.head(rinse.id.service).head.piecesComeApart || !anyOpen({&rinse, &other}))
        return;
    const bool during = other.start < rinse.end && rinse.start < other.end;
    if (during && !(isRinse(other.id) && other.id < rinse.id))
        report.wrong("rule 7", view.nameOf(other.id) + " is done while the head is at a basin");
}

void checkSameBasin(const PlanView& view, const PlannedTask& a, const PlannedTask& b, Report& report)
{
    if (a.id < b.id && isRinse(b.id) && anyOpen({&a, &b}) && a.basin && a.basin == b.basin && overlap(a, b))
        report.wrong("rule 7", view.nameOf(a.id) + " and " + view.nameOf(b.id) + " are at one basin at once");
}

}  // namespace

void checkHands(const PlanView& view, Report& report)
{
    for (const PlannedTask& task : view.plan().tasks) {
        if (task.id.kind != TaskKind::Look && task.madeWhile)
            report.wrong("rule 6", view.nameOf(task.id) + " is no look and is made during an application");
        if (task.state != TaskState::Open)
            continue;
        if (task.id.kind == TaskKind::Look)
            checkMadeWhile(view, task, report);
        checkOwnHands(view, task, report);
    }
    checkOneAtATime(view, report);
    checkNumbers(view, report);
}

void checkBasins(const PlanView& view, Report& report)
{
    for (const PlannedTask& task : view.plan().tasks) {
        if (!isRinse(task.id)) {
            if (task.basin)
                report.wrong("rule 7", view.nameOf(task.id) + " is no rinse and takes a basin");
            continue;
        }
        if (task.state == TaskState::Open && (!task.basin || *task.basin >= view.crew().basins))
            report.wrong("rule 7", view.nameOf(task.id) + " has no basin");
        for (const PlannedTask& other : view.plan().tasks) {
            checkAtBasin(view, task, other, report);
            checkSameBasin(view, task, other, report);
        }
    }
}

}  // namespace oracle
