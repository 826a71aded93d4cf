#include "core/stagger/plan.h"
#include "tests/bench/bench_service.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <random>

// How long planning again takes while a run goes on: after each fact, the rest of all heads. Prints how long
// the plans took that were made on the way, over a number of runs in which people are late and applying takes
// longer or shorter than usual; and the first plan, before any fact, by itself. Arguments: heads (4), zones a
// head (4), pairs of hands (as many as heads), runs (20).

namespace {

using core::measure::Instant;
using core::measure::Seconds;
using core::stagger::Plan;
using core::stagger::Question;
using core::stagger::TaskKind;
using core::stagger::TaskProgress;

/// Heads whose zones are looked at once, and applying that takes up to a minute less and two more than usual.
Question uncertainRoom(std::size_t heads, std::size_t zones, std::size_t hands)
{
    Question question = bench::room(heads, zones, hands);
    bench::makeUncertain(question);
    return question;
}

class Walk {
public:
    Walk(Question question, std::uint64_t seed)
        : m_question{std::move(question)}
        , m_engine{seed}
    {
        m_question.now = m_question.services.front().notBefore;
    }

    /// False once the run is over, or nobody knows how to go on.
    bool step()
    {
        const std::optional<Plan> plan = planned();
        if (!plan)
            return false;
        const auto next = std::ranges::find_if((*plan)->tasks, [](const core::stagger::PlannedTask& task) {
            return task.state == core::stagger::TaskState::Open;
        });
        auto running = std::ranges::min_element(m_question.progress.tasks, {}, [](const TaskProgress& task) {
            return task.end ? Instant::max() : *task.plannedEnd;
        });
        const bool runs = running != m_question.progress.tasks.end() && !running->end;
        if (next == (*plan)->tasks.end() && !runs)
            return false;
        if (runs && (next == (*plan)->tasks.end() || *running->plannedEnd <= next->start)) {
            m_question.now = std::max(*m_question.now, *running->plannedEnd);
            running->end = m_question.now;
        } else {
            m_question.now = std::max(*m_question.now, next->start + late());
            m_question.progress.tasks.push_back(
                {next->id,
                 *m_question.now,
                 {},
                 *m_question.now + (next->end - next->start) + drawn(next->id)});
        }
        return true;
    }

    std::vector<double> milliseconds;
    std::size_t unproved = 0;
    std::size_t broken = 0;

private:
    std::optional<Plan> planned()
    {
        const std::clock_t begin = std::clock();
        m_question.mayBreakLimits = false;
        auto answer = core::stagger::plan(m_question);
        if (!answer) {
            m_question.mayBreakLimits = true;
            ++broken;
            answer = core::stagger::plan(m_question);
        }
        milliseconds.push_back(1000.0 * static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC);
        if (!answer)
            return {};
        unproved += (*answer)->proved ? 0U : 1U;
        return *answer;
    }

    Seconds late() { return Seconds{static_cast<int>(m_engine() % 31)}; }

    /// How much longer than usual it takes.
    Seconds drawn(const core::stagger::TaskId& id)
    {
        return id.kind == TaskKind::Apply ? Seconds{static_cast<int>(m_engine() % 121) - 50} : Seconds{0};
    }

    Question m_question;
    std::mt19937_64 m_engine;
};

std::size_t argument(int count, char** arguments, int place, std::size_t usual)
{
    return count > place ? static_cast<std::size_t>(std::atoi(arguments[place])) : usual;
}

}  // namespace

int main(int count, char** arguments)
{
    const std::size_t heads = argument(count, arguments, 1, 4);
    const std::size_t zones = argument(count, arguments, 2, 4);
    const std::size_t hands = argument(count, arguments, 3, heads);
    const std::size_t runs = argument(count, arguments, 4, 20);
    std::vector<double> all;
    double first = 0;
    std::size_t unproved = 0;
    std::size_t broken = 0;
    for (std::size_t run = 0; run < runs; ++run) {
        Walk walk{uncertainRoom(heads, zones, hands), run + 1};
        while (walk.step()) { }
        first = walk.milliseconds.front();
        all.insert(all.end(), walk.milliseconds.begin() + 1, walk.milliseconds.end());
        unproved += walk.unproved;
        broken += walk.broken;
    }
    std::ranges::sort(all);
    const auto share = [&all](double part) {
        return all[static_cast<std::size_t>(part * static_cast<double>(all.size() - 1))];
    };
    std::printf("%zu heads of %zu zones, %zu pairs of hands: %zu plans in %zu runs, "
                "%zu not proved, %zu after a limit was passed\n",
                heads, zones, hands, all.size(), runs, unproved, broken);
    std::printf("the first %.2f ms; again: median %.2f ms, 90 %% %.2f ms, 99 %% %.2f ms, most %.2f ms\n",
                first, share(0.5), share(0.9), share(0.99), all.back());
    return 0;
}
