#include "core/run/looks_together.h"

#include "core/run/zone_record.h"

#include <algorithm>
#include <tuple>

namespace core::run {
namespace {

using stagger::PlannedTask;
using stagger::TaskState;

/// Somebody who is called needs a moment to come.
constexpr Seconds timeToAnswer{15};

/// Two calls in ten minutes are no burden.
constexpr Seconds betweenCalls{300};

struct OpenLook {
    const PlannedTask* task = nullptr;
    Instant moment{};  ///< On its zone's clock; not before its planned start.
    Instant latest{};  ///< Until then it can be put off.

    [[nodiscard]] Instant start() const { return task->start; }
    [[nodiscard]] Seconds length() const { return task->end - task->start; }
};

/// A way to call for the first so many looks.
struct Calls {
    std::size_t count = 0;
    Seconds crowding{0};  ///< By how much calls come sooner than that after each other.
    Seconds putOff{0};
    std::optional<Instant> last{};  ///< The last call.
    std::size_t first = 0;          ///< Of the looks of the last call.

    [[nodiscard]] auto cost() const { return std::tuple{crowding, count, putOff}; }
};

/// Those that one pair of hands makes on one head.
class LooksOfHands {
public:
    LooksOfHands(std::vector<OpenLook> looks, const stagger::Plan& plan,
                 const std::map<TaskId, Instant>& called)
        : m_looks{std::move(looks)}
    {
        std::ranges::sort(m_looks, {}, [](const OpenLook& look) {
            return std::tuple{look.start(), look.task->id};
        });
        const PlannedTask& any = *m_looks.front().task;
        for (const auto& [look, moment] : called) {
            if (look.service == any.id.service)
                m_before = std::max(m_before.value_or(moment), moment);
        }
        for (const PlannedTask& task : plan->tasks) {
            const bool sameHead = task.id.service == any.id.service;
            const bool look = task.id.kind == TaskKind::Look;
            if (sameHead && look && task.state != TaskState::Open)
                m_before = std::max(m_before.value_or(task.start), task.start);
            const bool goesWithLooks = sameHead && (look || task.id.kind == TaskKind::Apply);
            if (task.hands == any.hands && task.state != TaskState::Done && !goesWithLooks)
                m_busy.push_back(&task);
        }
    }

    void addTo(std::map<TaskId, Instant>& asked) const
    {
        const std::vector<Calls> best = bestCalls();
        for (std::size_t count = m_looks.size(); count > 0; count = best[count].first) {
            for (std::size_t each = best[count].first; each < count; ++each)
                asked[m_looks[each].task->id] = *best[count].last;
        }
    }

private:
    [[nodiscard]] std::vector<Calls> bestCalls() const
    {
        std::vector<Calls> best(m_looks.size() + 1);
        best[0].last = m_before;
        for (std::size_t count = 1; count <= m_looks.size(); ++count) {
            best[count] = withCall(best, count - 1, count);
            const Instant call = m_looks[count - 1].start();
            for (std::size_t first = count - 1; first > 0 && canBeMade(first - 1, call); --first) {
                const Calls way = withCall(best, first - 1, count);
                if (way.cost() < best[count].cost())
                    best[count] = way;
            }
        }
        return best;
    }

    /// One call for the looks from `first` to `count`, after the best for those before.
    [[nodiscard]] Calls withCall(const std::vector<Calls>& best, std::size_t first, std::size_t count) const
    {
        const Calls& before = best[first];
        Calls way{before.count + 1, before.crowding, before.putOff, m_looks[count - 1].start(), first};
        if (before.last) {
            const Instant wished = std::min(*before.last + betweenCalls, firstMoment(first, count));
            bool fits = wished > *way.last;
            for (std::size_t each = first; each < count; ++each)
                fits = fits && canBeMade(each, wished);
            if (fits)
                way.last = wished;
            way.crowding += std::max(Seconds{0}, Seconds{*before.last + betweenCalls - *way.last});
        }
        for (std::size_t each = first; each < count; ++each)
            way.putOff += *way.last - m_looks[each].start();
        return way;
    }

    [[nodiscard]] Instant firstMoment(std::size_t first, std::size_t count) const
    {
        Instant moment = m_looks[first].moment;
        for (std::size_t each = first; each < count; ++each)
            moment = std::min(moment, m_looks[each].moment);
        return moment;
    }

    [[nodiscard]] bool canBeMade(std::size_t place, Instant call) const
    {
        const OpenLook& look = m_looks[place];
        return call <= look.latest && std::ranges::none_of(m_busy, [&](const PlannedTask* task) {
                   return task->start < call + look.length() && call < task->end;
               });
    }

    std::vector<OpenLook> m_looks;
    std::vector<const PlannedTask*> m_busy;  ///< What the hands cannot do while they look.
    std::optional<Instant> m_before;         ///< When the head was last looked at, or somebody called to.
};

OpenLook openLook(const std::vector<Service>& services, const stagger::Plan& plan, const PlannedTask& task)
{
    OpenLook look{.task = &task, .moment = task.start, .latest = task.start};
    const auto* zone = plan.zone(task.id.service, task.id.coat, task.id.item);
    const auto& looks = zoneOf(services, applyOf(task.id)).looks;
    if (!zone || !looks)
        return look;
    const Instant moment = zone->clockStart + looks->moments().at(task.id.part);
    const Instant beforeWater = zone->water - look.length();
    look.latest = std::max(look.latest, std::min(moment + looks->tolerance - timeToAnswer, beforeWater));
    look.moment = std::clamp(moment, look.start(), look.latest);
    return look;
}

}  // namespace

std::map<TaskId, Instant> looksTogether(const std::vector<Service>& services, const stagger::Plan& plan,
                                        const std::map<TaskId, Instant>& called)
{
    using Maker = std::pair<std::size_t, std::optional<std::size_t>>;  // The head and the hands.
    std::map<Maker, std::vector<OpenLook>> looks;
    for (const PlannedTask& task : plan->tasks) {
        const bool open = task.id.kind == TaskKind::Look && task.state == TaskState::Open;
        if (open && !called.contains(task.id))
            looks[{task.id.service, task.hands}].push_back(openLook(services, plan, task));
    }
    std::map<TaskId, Instant> asked = called;
    for (auto& [maker, ofHands] : looks)
        LooksOfHands{std::move(ofHands), plan, called}.addTo(asked);
    return asked;
}

}  // namespace core::run
