#include "core/stagger/floor/improver.h"

#include "core/stagger/floor/floor.h"
#include "core/stagger/plan_builder.h"

#include <algorithm>

namespace core::stagger::floor {
namespace {

/// Most rounds that help do so within some dozens of dead ends.
constexpr std::uint64_t leastForARound = 200;

/// The bound is raised once in so many rounds.
constexpr std::size_t boundEvery = 8;

/// Coats that are set free together, where they are not all those of a head.
constexpr std::size_t mostCoats = 4;

Worth worthOf(const Standing& standing)
{
    Worth total;
    for (const HeadPlan& head : standing)
        total = total + head.worth;
    return total;
}

}  // namespace

Plan joined(const Question& question, const Standing& standing, const Worth& bound)
{
    Pins pins;
    PlanBuilder::Joined parts{.worth = {}, .bound = bound, .broken = {}};
    for (const HeadPlan& head : standing) {
        for (const PlannedTask& task : head.tasks) {
            if (task.state == TaskState::Open)
                pins.starts[task.id] = task.start;
        }
        parts.worth = parts.worth + head.worth;
        parts.broken.insert(parts.broken.end(), head.broken.begin(), head.broken.end());
    }
    const Draft draft = draftOf(question, Strictness::Keep, {}, pins);
    return PlanBuilder::join(draft, temporal::search(draft.problem, {}), parts);
}

Improver::Improver(const Question& question, const Budget& budget, Meter& meter, Standing standing)
    : m_question{question}
    , m_budget{budget}
    , m_meter{meter}
    , m_standing{std::move(standing)}
    , m_bound{question}
    , m_places{question, meter}
    , m_conflicts{leastForARound}
{
    Heads all;
    for (std::size_t head = 0; head < m_standing.size(); ++head)
        all.push_back(head);
    value(all);
}

Worth Improver::total() const
{
    return worthOf(m_standing);
}

Worth Improver::bound() const
{
    return std::max(m_known, m_bound.total());
}

Strictness Improver::strictness() const
{
    return total().breach.hundredthSeconds > 0 ? Strictness::Break : Strictness::Keep;
}

/// What each of `heads` is worth as it stands.
void Improver::value(const Heads& heads)
{
    const Strictness how = m_question.mayBreakLimits ? Strictness::Break : Strictness::Keep;
    for (const std::size_t head : heads) {
        const Part part{m_question, {head}, Standing(m_standing.size())};
        if (const std::optional<Worth> worth = part.worthOf(how, m_standing))
            m_standing[head].worth = *worth;
    }
}

/// One that is not at its bound, if there are such.
std::size_t Improver::drawHead()
{
    Heads heads;
    for (std::size_t head = 0; head < m_standing.size(); ++head) {
        if (m_standing[head].worth > m_bound.of(head))
            heads.push_back(head);
    }
    return heads.empty() ? draw(m_standing.size()) : heads[draw(heads.size())];
}

Improver::Coats Improver::coatsOf(std::size_t head) const
{
    Coats coats;
    for (const PlannedTask& task : m_standing[head].tasks) {
        if (task.state == TaskState::Open)
            coats.insert({head, task.id.coat});
    }
    return coats;
}

std::size_t Improver::tasksOf(const Coats& coats) const
{
    std::size_t count = 0;
    for (const HeadPlan& head : m_standing)
        count += static_cast<std::size_t>(std::ranges::count_if(head.tasks, [&](const PlannedTask& task) {
            return coats.contains({task.id.service, task.id.coat});
        }));
    return count;
}

/// Whether two coats overlap in time as they stand.
bool Improver::meet(const std::pair<std::size_t, std::size_t>& a,
                    const std::pair<std::size_t, std::size_t>& b) const
{
    const auto extent = [&](const std::pair<std::size_t, std::size_t>& coat) {
        std::pair span{Instant::max(), Instant::min()};
        for (const PlannedTask& task : m_standing[coat.first].tasks) {
            if (task.id.coat != coat.second)
                continue;
            span.first = std::min(span.first, task.start);
            span.second = std::max(span.second, task.end);
        }
        return span;
    };
    const auto one = extent(a);
    const auto other = extent(b);
    return one.first < other.second && other.first < one.second;
}

Improver::Coats Improver::someHeads()
{
    Coats chosen = coatsOf(drawHead());
    const std::size_t heads = 1 + draw(m_heads);
    for (std::size_t more = 1; more < heads; ++more) {
        const std::size_t head = draw(m_standing.size());
        Coats both = coatsOf(head);
        const bool near = std::ranges::any_of(both, [&](const auto& coat) {
            return std::ranges::any_of(chosen, [&](const auto& other) { return meet(coat, other); });
        });
        both.insert(chosen.begin(), chosen.end());
        if (near && tasksOf(both) <= mostTasksAtOnce)
            chosen = std::move(both);
    }
    return chosen;
}

Improver::Coats Improver::someCoats()
{
    Coats own = coatsOf(drawHead());
    if (own.empty())
        return own;
    const auto first = *std::next(own.begin(), static_cast<std::ptrdiff_t>(draw(own.size())));
    std::vector<std::pair<std::size_t, std::size_t>> near;
    for (std::size_t head = 0; head < m_standing.size(); ++head) {
        for (const auto& coat : coatsOf(head)) {
            if (coat != first && meet(coat, first))
                near.push_back(coat);
        }
    }
    Coats chosen{first};
    while (!near.empty() && chosen.size() < mostCoats) {
        const std::size_t place = draw(near.size());
        chosen.insert(near[place]);
        near.erase(near.begin() + static_cast<std::ptrdiff_t>(place));
    }
    return chosen;
}

/// Plans `coats` anew while everything else stands.
void Improver::setFree(const Coats& coats)
{
    Coats free = coats;
    // A coat that must follow another soon goes with it, or that could not be moved.
    for (const auto& [head, coat] : coats) {
        for (std::size_t next = coat; m_question.services[head].coats[next].gapMost; ++next)
            free.insert({head, next + 1});
    }
    Heads heads;
    for (const auto& [head, coat] : free) {
        if (heads.empty() || heads.back() != head)
            heads.push_back(head);
    }
    Part part{m_question, heads, m_standing};
    bool everything = heads.size() == m_standing.size();
    for (const std::size_t head : heads) {
        for (const auto& coat : coatsOf(head)) {
            if (free.contains(coat))
                continue;
            part.pin(m_standing[head].tasks, coat.second);
            everything = false;
        }
    }
    const PartAnswer answer = part.improve(strictness(), m_meter.limits(m_conflicts), m_standing);
    m_meter.spend(answer.conflicts);
    if (answer.plan && answer.isBetter) {
        const Standing before = m_standing;
        put(*answer.plan, heads, m_standing);
        keepBetter(heads, before);
    }
    if (everything && answer.complete)
        m_known = std::max(m_known, total());
}

/// Puts the heads of `coats` in again in another order.
void Improver::putAgain(const Coats& coats)
{
    Heads heads;
    for (const auto& [head, coat] : coats) {
        if (heads.empty() || heads.back() != head)
            heads.push_back(head);
    }
    for (std::size_t place = heads.size(); place > 1; --place)
        std::swap(heads[place - 1], heads[draw(place)]);
    const Standing before = m_standing;
    if (m_places.putAgain(heads, m_standing))
        keepBetter(heads, before);
}

/// Values what `heads` have now, and goes back to `before` unless that is worth more and may be kept.
void Improver::keepBetter(const Heads& heads, const Standing& before)
{
    value(heads);
    if (total() >= worthOf(before) || (m_may && !m_may(plan()))) {
        m_standing = before;
        return;
    }
    m_quiet = 0;
    if (m_budget.better)
        m_budget.better(plan());
}

void Improver::round()
{
    ++m_rounds;
    if (m_rounds % boundEvery == 0)
        m_bound.tighten(m_meter, m_standing);
    const Coats coats = m_rounds % 4 == 1 ? someCoats() : someHeads();
    if (coats.empty()) {
        m_meter.spend(0);
        return;
    }
    ++m_quiet;
    if (m_rounds % 2 == 0)
        putAgain(coats);
    else
        setFree(coats);
    if (m_quiet < 3 * m_standing.size())
        return;
    m_quiet = 0;
    m_conflicts *= 2;
    m_heads = std::min(m_heads + 1, m_standing.size());
}

void Improver::run()
{
    m_bound.begin(m_meter);
    while (!m_meter.isOver() && bound() < total())
        round();
}

Plan Improver::plan() const
{
    return joined(m_question, m_standing, std::min(bound(), total()));
}

}  // namespace core::stagger::floor
