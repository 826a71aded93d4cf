#include "core/stagger/cures/needed_hands.h"

#include <algorithm>
#include <vector>

namespace core::stagger {
namespace {

using std::chrono::minutes;

/// So many single tasks are tried before all of them together.
constexpr std::size_t mostTasksTried = 6;

bool isTiedToTheClock(const Question& question)
{
    return question.now || std::ranges::any_of(question.services, [](const service::Service& service) {
               return service.notBefore || service.readyBy
                   || std::ranges::any_of(service.coats, &service::Coat::namesTimes);
           });
}

void beThere(Question& question, const Interval& when)
{
    question.services.front().crew.hands.back().away = {{when.from - awayForGood, when.from},
                                                        {when.until, when.until + awayForGood}};
}

/// To whole minutes, outwards.
Interval inMinutes(Instant from, Instant until)
{
    return {std::chrono::floor<minutes>(from), std::chrono::ceil<minutes>(until)};
}

Seconds lengthOf(const Interval& when)
{
    return when.until - when.from;
}

/// The time of each task of theirs, the shortest first, and of all of them together.
std::vector<Interval> timesOf(const Plan& plan, std::size_t hands)
{
    std::vector<Interval> times;
    for (const PlannedTask& task : plan->tasks) {
        if (task.hands == hands && task.state == TaskState::Open)
            times.push_back(inMinutes(task.start, task.end));
    }
    if (times.empty())
        return times;
    Interval all = times.front();
    for (const Interval& time : times)
        all = {std::min(all.from, time.from), std::max(all.until, time.until)};
    std::ranges::stable_sort(times, {}, lengthOf);
    times.resize(std::min(times.size(), mostTasksTried));
    times.push_back(all);
    return times;
}

class Narrowing {
public:
    Narrowing(const Question& question, Trials& trials)
        : m_question{question}
        , m_trials{trials}
    {
    }

    bool fits(const Interval& when)
    {
        beThere(m_question, when);
        return m_trials.fits(m_question) == Fits::Yes;
    }

    Interval fromTheFront(Interval when)
    {
        when.from += cut(when, [](const Interval& whole, Seconds by) {
            return Interval{whole.from + by, whole.until};
        });
        return when;
    }

    Interval fromTheBack(Interval when)
    {
        when.until -= cut(when, [](const Interval& whole, Seconds by) {
            return Interval{whole.from, whole.until - by};
        });
        return when;
    }

private:
    /// The most whole minutes that can be cut off. Less time never fits more easily.
    template <class Rest>
    Seconds cut(const Interval& when, const Rest& rest)
    {
        std::int64_t low = 0;
        std::int64_t high = lengthOf(when) / minutes{1};  // Nothing left: that is known not to fit.
        while (high - low > 1) {
            const std::int64_t middle = low + (high - low) / 2;
            (fits(rest(when, middle * minutes{1})) ? low : high) = middle;
        }
        return low * minutes{1};
    }

    Question m_question;
    Trials& m_trials;
};

}  // namespace

std::optional<Interval> keepNeededHands(Question& question, Trials& trials)
{
    if (!isTiedToTheClock(question))
        return std::nullopt;
    const auto plan = trials.planned(question);
    const std::size_t hands = question.services.front().crew.hands.size() - 1;
    const std::vector<Interval> times = plan ? timesOf(*plan, hands) : std::vector<Interval>{};
    if (times.empty())
        return std::nullopt;
    Narrowing narrowing{question, trials};
    Interval whole = times.back();
    for (const Interval& time : times) {
        if (narrowing.fits(time)) {
            whole = time;
            break;
        }
    }
    const Interval one = narrowing.fromTheBack(narrowing.fromTheFront(whole));
    const Interval other = narrowing.fromTheFront(narrowing.fromTheBack(whole));
    const Interval when = lengthOf(other) < lengthOf(one) ? other : one;
    beThere(question, when);
    return when;
}

}  // namespace core::stagger
