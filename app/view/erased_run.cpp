#include "app/view/erased_run.h"

#include "core/run/standing.h"

#include <algorithm>
#include <ranges>

namespace app::view {
namespace {

using core::run::Fact;
using core::run::FactKind;

void end(std::vector<LeftTask>& tasks, const Fact& fact)
{
    auto latestFirst = tasks | std::views::reverse;
    const auto begun = std::ranges::find_if(
        latestFirst, [&](const LeftTask& left) { return left.task == fact.task && !left.until; });
    if (begun != latestFirst.end())
        begun->until = fact.happened;
    else
        tasks.push_back({fact.task, fact.happened, fact.happened});
}

}  // namespace

ErasedRun erasedRun(std::span<const Fact> facts)
{
    ErasedRun run{{}, core::run::outcomesOf(facts)};
    for (const Fact& fact : core::run::standingFacts(facts)) {
        if (fact.kind == FactKind::Started || fact.kind == FactKind::Looked)
            run.tasks.push_back({fact.task, fact.happened, {}});
        else if (fact.kind == FactKind::Finished)
            end(run.tasks, fact);
    }
    std::ranges::stable_sort(run.tasks, {}, &LeftTask::from);
    return run;
}

}  // namespace app::view
