#include "core/run/remember.h"

#include <algorithm>
#include <deque>
#include <memory>

namespace core::run {
namespace {

struct Remembered {
    stagger::Question question;
    std::uint64_t conflicts = 0;
    tl::expected<stagger::Plan, stagger::NoPlan> answer;
};

bool isFinal(const tl::expected<stagger::Plan, stagger::NoPlan>& answer)
{
    return answer ? (*answer)->proved : !answer.error().stopped;
}

/// Whether asking again would bring the same answer. Conflicts are counted, not timed; who can be stopped
/// cannot know.
bool isTheAnswer(const Remembered& known, const stagger::Budget& budget)
{
    return isFinal(known.answer) || known.conflicts == budget.conflicts;
}

}  // namespace

Planner remembering(Planner planner, std::size_t most)
{
    const auto memory = std::make_shared<std::deque<Remembered>>();
    return [planner = std::move(planner), most, memory](
               const stagger::Question& question,
               const stagger::Budget& budget) -> std::optional<tl::expected<stagger::Plan, stagger::NoPlan>> {
        const auto known = std::ranges::find_if(*memory, [&](const Remembered& each) {
            return isTheAnswer(each, budget) && each.question == question;
        });
        if (known != memory->end())
            return known->answer;
        auto answer = planner(question, budget);
        if (answer && (isFinal(*answer) || !budget.stop)) {
            memory->push_front({question, budget.conflicts, *answer});
            if (memory->size() > most)
                memory->pop_back();
        }
        return answer;
    };
}

SafeStarts remembering(SafeStarts safeStarts, std::size_t most)
{
    struct Known {
        stagger::Question question;
        stagger::Plan plan;
        std::vector<stagger::SafeStart> starts;
    };
    const auto memory = std::make_shared<std::deque<Known>>();
    return [safeStarts = std::move(safeStarts), most, memory](const stagger::Question& question,
                                                              const stagger::Plan& plan) {
        const auto known = std::ranges::find_if(
            *memory, [&](const Known& each) { return each.question == question && each.plan == plan; });
        if (known != memory->end())
            return known->starts;
        std::vector<stagger::SafeStart> starts = safeStarts(question, plan);
        memory->push_front({question, plan, starts});
        if (memory->size() > most)
            memory->pop_back();
        return starts;
    };
}

}  // namespace core::run
