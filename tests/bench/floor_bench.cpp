#include "core/stagger/forecast.h"
#include "core/stagger/plan.h"
#include "core/stagger/safe_starts.h"
#include "tests/bench/floor_service.h"
#include "tests/oracle/checker.h"

#include <cstdio>
#include <cstdlib>
#include <ctime>

// How a plan of a whole floor gets better with time: a line for the first plan, for each plan that is better,
// and for what is proved in the end; then its give, and how long it takes to say when it can be followed and
// what comes of it. Arguments: seconds (5), heads (12), seed (1).

namespace {

using core::stagger::Plan;
using core::stagger::Worth;

double minutesOf(core::measure::Seconds length)
{
    return static_cast<double>(length.count()) / 60.0;
}

void print(double seconds, const char* what, const Worth& worth)
{
    std::printf("%8.3f s  %-6s deviation %9.2f, waste %9.2f, staleness %8.2f min\n", seconds, what,
                worth.deviation.minutes(), minutesOf(worth.waste), minutesOf(worth.staleness));
}

}  // namespace

int main(int count, char** arguments)
{
    const double seconds = count > 1 ? std::atof(arguments[1]) : 5;
    const auto heads = static_cast<std::size_t>(count > 2 ? std::atoi(arguments[2]) : 12);
    const auto seed = static_cast<std::uint64_t>(count > 3 ? std::atoi(arguments[3]) : 1);
    const core::stagger::Question question = bench::dayOnTheFloor(heads, seed);
    std::printf("%zu heads, %zu tasks, seed %llu\n", heads, bench::taskCount(question),
                static_cast<unsigned long long>(seed));

    const std::clock_t begin = std::clock();
    const auto passed = [begin] { return static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC; };
    core::stagger::Budget budget;
    budget.conflicts = UINT64_MAX;
    budget.stop = [&] { return passed() > seconds; };
    budget.better = [&](const Plan& plan) { print(passed(), "plan", plan->worth); };
    const auto plan = core::stagger::plan(question, budget);
    if (!plan) {
        std::printf("%8.3f s  %s\n", passed(), plan.error().text.text().c_str());
        return 1;
    }
    print(passed(), "plan", (*plan)->worth);
    print(passed(), "bound", (*plan)->provedBound);
    if ((*plan)->give)
        std::printf("%8.3f s  give   %d %%%s\n", passed(), *(*plan)->give,
                    (*plan)->giveProved ? ", proved" : "");
    const auto followed = [&](const char* what, auto&& follow) {
        const double start = passed();
        follow();
        std::printf("%8.3f s  for %s\n", passed() - start, what);
    };
    followed("its safe starts", [&] { core::stagger::safeStarts(question, *plan); });
    followed("a forecast of 1000 runs",
             [&] { core::stagger::forecast(question, *plan, {.runs = 1'000, .seed = 1}); });
    const auto wrong = oracle::violations(question, plan->data());
    for (const std::string& line : wrong)
        std::printf("wrong: %s\n", line.c_str());
    return wrong.empty() ? 0 : 1;
}
