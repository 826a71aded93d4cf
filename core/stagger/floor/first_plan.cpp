#include "core/stagger/floor/first_plan.h"

#include <algorithm>
#include <array>

namespace core::stagger::floor {
namespace {

/// A good place for a coat is mostly found within a few dead ends; one that needs many more has none.
constexpr std::array<std::uint64_t, 3> forOneCoat{25, 150, 1'000};
constexpr std::uint64_t toPlaceAHead = 5'000;

/// How often a head that came out too late is begun earlier.
constexpr int mostTries = 12;

bool hasBegun(const Question& question, std::size_t head)
{
    return std::ranges::any_of(question.progress.tasks,
                               [&](const TaskProgress& task) { return task.id.service == head; });
}

/// What a head has under way takes the crew before anything is planned for it.
HeadPlan underWay(const Question& question, std::size_t head)
{
    HeadPlan plan;
    if (!hasBegun(question, head))
        return plan;
    Part part{question, {head}, Standing(question.services.size())};
    const Draft draft = draftOf(part.question(), Strictness::OnlyFits);
    for (const Busy& busy : draft.busy) {
        if (busy.state == TaskState::Running)
            plan.tasks.push_back({.id = busy.id,
                                  .start = draft.instantOf(busy.start, {0}),
                                  .end = draft.instantOf(busy.end, {0}),
                                  .state = TaskState::Running,
                                  .hands = {},
                                  .basin = {},
                                  .madeWhile = {}});
    }
    return plan;
}

}  // namespace

FirstPlan::FirstPlan(const Question& question, Meter& meter)
    : m_question{question}
    , m_meter{meter}
    , m_spans(question.services.size())
    , m_patterns(question.services.size())
{
    for (std::size_t head = 0; head < question.services.size(); ++head) {
        m_order.push_back(head);
        m_nobody.push_back(underWay(question, head));
    }
    std::ranges::stable_sort(m_order, [&](std::size_t a, std::size_t b) {
        const bool begunA = hasBegun(question, a);
        const bool begunB = hasBegun(question, b);
        if (begunA != begunB)
            return begunA;
        return aim(a).value_or(Instant::max()) < aim(b).value_or(Instant::max());
    });
}

std::optional<Instant> FirstPlan::earliest(std::size_t head) const
{
    const std::optional<Instant> own = m_question.services[head].notBefore;
    return own && m_question.now ? std::max(*own, *m_question.now) : own ? own : m_question.now;
}

std::optional<Instant> FirstPlan::aim(std::size_t head) const
{
    const service::Service& service = m_question.services[head];
    return service.readyBy ? std::optional{*service.readyBy - service.buffer} : std::nullopt;
}

bool FirstPlan::startsLate(std::size_t head) const
{
    const bool wantsEnd = m_question.preference == Preference::EndEarly && earliest(head);
    return aim(head) && !hasBegun(m_question, head) && !wantsEnd;
}

Instant FirstPlan::endOf(std::size_t head) const
{
    Instant end = Instant::min();
    for (const PlannedTask& task : m_standing[head].tasks) {
        const service::Coat& coat = m_question.services[head].coats[task.id.coat];
        end = std::max(end, task.id.kind == TaskKind::Dry ? task.end + coat.dryUnattended : task.end);
    }
    return end;
}

bool FirstPlan::keepsPromise(std::size_t head) const
{
    return !aim(head) || endOf(head) <= *aim(head);
}

/// As near the targets as it can be, or as was found.
std::optional<Plan> FirstPlan::placed(const Part& part)
{
    std::optional<Plan> best;
    for (const std::uint64_t conflicts : forOneCoat) {
        const PartAnswer answer = part.plan(Strictness::Keep, m_meter.limits(conflicts));
        m_meter.spend(answer.conflicts);
        best = answer.plan;
        if (answer.complete || (best && (*best)->worth.deviation <= answer.bound.deviation))
            break;
    }
    return best;
}

/// Coat by coat, each as near its targets and then as early as the others allow.
bool FirstPlan::placeFrom(std::size_t head, std::optional<Instant> from, const Standing& others)
{
    Part part{m_question, {head}, others};
    service::Service& service = part.question().services[head];
    part.question().preference = Preference::EndEarly;
    service.notBefore = from;
    service.readyBy.reset();
    std::optional<Plan> plan;
    for (std::size_t coat = 0; coat < service.coats.size(); ++coat) {
        part.planCoats(coat + 1);
        plan = placed(part);
        if (!plan)
            return false;
        part.pin((*plan)->tasks, coat);
    }
    put(*plan, {head}, m_standing);
    return true;
}

bool FirstPlan::placeExactly(std::size_t head, Strictness strictness)
{
    const Part part{m_question, {head}, m_standing};
    const PartAnswer answer = part.plan(strictness, m_meter.limits(toPlaceAHead));
    m_meter.spend(answer.conflicts);
    if (!answer.plan)
        return false;
    put(*answer.plan, {head}, m_standing);
    return true;
}

/// From where it would be ready in time if it were alone, and earlier by as much as it comes out too late.
bool FirstPlan::placeBefore(std::size_t head, Instant aim)
{
    const std::optional<Instant> first = earliest(head);
    if (!m_spans[head]) {
        const Instant from = first.value_or(aim);
        if (!placeFrom(head, from, m_nobody))
            return false;
        m_spans[head] = endOf(head) - from;
    }
    Instant from = aim - *m_spans[head];
    for (int tries = 0; tries < mostTries && !m_meter.isOver(); ++tries) {
        if (first)
            from = std::max(from, *first);
        const bool placed = placeFrom(head, from, m_standing);
        if (placed && keepsPromise(head))
            return true;
        if (first && from == *first)
            return false;
        const Seconds late = placed ? endOf(head) - aim : Seconds{0};
        from -= std::max<Seconds>(late, std::chrono::minutes{5});
    }
    return false;
}

/// Each coat as it would be done alone, only moved.
bool FirstPlan::placeAsWhole(std::size_t head)
{
    if (!canBeMoved(m_question, head))
        return false;
    if (!m_patterns[head])
        m_patterns[head] = patternsOf(m_question, head, m_meter);
    if (m_patterns[head]->empty())
        return false;
    auto tasks =
        floor::placed(m_question, *m_patterns[head], head,
                      {.from = earliest(head), .until = aim(head), .late = startsLate(head)}, m_standing);
    m_meter.spend(0);
    if (!tasks)
        return false;
    m_standing[head].tasks = *std::move(tasks);
    m_standing[head].broken.clear();
    return true;
}

bool FirstPlan::place(std::size_t head)
{
    if (placeAsWhole(head))
        return true;
    const HeadPlan before = m_standing[head];
    if (startsLate(head) ? placeBefore(head, *aim(head))
                         : placeFrom(head, earliest(head), m_standing) && keepsPromise(head))
        return true;
    m_standing[head] = before;
    if (placeExactly(head, Strictness::Keep))
        return true;
    return m_question.mayBreakLimits && placeExactly(head, Strictness::Break);
}

bool FirstPlan::placeAll(std::optional<std::size_t>& left)
{
    m_standing = m_nobody;
    for (const std::size_t head : m_order) {
        if (m_meter.isOver())
            return false;
        if (place(head))
            continue;
        left = head;
        return false;
    }
    return true;
}

bool FirstPlan::putAgain(const Heads& heads, Standing& standing)
{
    m_standing = standing;
    for (const std::size_t head : heads)
        m_standing[head] = m_nobody[head];
    if (!std::ranges::all_of(heads, [this](std::size_t head) { return place(head); }))
        return false;
    standing = m_standing;
    return true;
}

std::optional<Standing> FirstPlan::make()
{
    for (std::size_t tries = 0; tries < 2 * m_order.size() && !m_meter.isOver(); ++tries) {
        std::optional<std::size_t> left;
        if (placeAll(left))
            return std::move(m_standing);
        if (!left)
            return std::nullopt;
        if (*left == m_order.front()) {
            m_hopeless = left;
            return std::nullopt;
        }
        std::erase(m_order, *left);
        m_order.insert(m_order.begin(), *left);
    }
    return std::nullopt;
}

}  // namespace core::stagger::floor
