#include "core/stagger/floor/bound.h"

#include "core/stagger/coat_by_coat.h"
#include "core/stagger/floor/floor.h"

#include <algorithm>

namespace core::stagger::floor {
namespace {

constexpr std::uint64_t forOneHead = 20'000;
constexpr std::uint64_t forAGroup = 10'000;

struct Extent {
    Instant from = Instant::max();
    Instant until = Instant::min();
};

Extent extentOf(const Heads& heads, const Standing& standing)
{
    Extent extent;
    for (const std::size_t head : heads) {
        for (const PlannedTask& task : standing[head].tasks) {
            extent.from = std::min(extent.from, task.start);
            extent.until = std::max(extent.until, task.end);
        }
    }
    return extent;
}

bool meet(const Heads& a, const Heads& b, const Standing& standing)
{
    const Extent one = extentOf(a, standing);
    const Extent other = extentOf(b, standing);
    return one.from < other.until && other.from < one.until;
}

}  // namespace

Worth Bound::alone(std::size_t head, Meter& meter) const
{
    const Question question = floor::alone(m_question, head);
    if (const std::optional<Plan> plan = planCoatByCoat(question, meter.limits(forOneHead)).plan) {
        meter.spend((*plan)->tasks.size());
        return (*plan)->provedBound;
    }
    return together({head}, meter).value_or(Worth{});
}

std::optional<Worth> Bound::together(const Heads& heads, Meter& meter) const
{
    const Part part{m_question, heads, Standing(m_question.services.size())};
    for (const Strictness strictness : {Strictness::Keep, Strictness::Break}) {
        const PartAnswer answer =
            part.plan(strictness, meter.limits(heads.size() == 1 ? forOneHead : forAGroup));
        meter.spend(answer.conflicts);
        // Where limits can be kept, nothing is better than keeping them.
        if (answer.plan)
            return answer.complete || heads.size() == 1 ? std::optional{answer.bound} : std::nullopt;
        if (!answer.complete || !m_question.mayBreakLimits)
            break;
    }
    return std::nullopt;
}

void Bound::begin(Meter& meter)
{
    for (std::size_t head = 0; head < m_question.services.size(); ++head) {
        m_alone.push_back(alone(head, meter));
        m_groups.push_back({{head}, m_alone.back()});
    }
}

Worth Bound::total() const
{
    Worth total;
    for (const Group& group : m_groups)
        total = total + group.worth;
    return total;
}

bool Bound::mayBeTaken(const Heads& heads) const
{
    std::size_t tasks = 0;
    for (const std::size_t head : heads)
        tasks += core::stagger::tasksOf(m_question.services[head]).size();
    return tasks <= mostTasksAtOnce && std::ranges::find(m_tried, heads) == m_tried.end();
}

bool Bound::tighten(Meter& meter, const Standing& standing)
{
    const auto gap = [&](const Group& group) {
        Worth worth;
        for (const std::size_t head : group.heads)
            worth = worth + standing[head].worth;
        return worth - group.worth;
    };
    std::optional<std::pair<std::size_t, std::size_t>> best;
    Heads chosen;
    Worth widest;
    for (std::size_t a = 0; a < m_groups.size(); ++a) {
        for (std::size_t b = a + 1; b < m_groups.size(); ++b) {
            Heads heads = m_groups[a].heads;
            heads.insert(heads.end(), m_groups[b].heads.begin(), m_groups[b].heads.end());
            std::ranges::sort(heads);
            const Worth both = gap(m_groups[a]) + gap(m_groups[b]);
            if (both <= widest || !mayBeTaken(heads) || !meet(m_groups[a].heads, m_groups[b].heads, standing))
                continue;
            best = {a, b};
            chosen = std::move(heads);
            widest = both;
        }
    }
    if (!best)
        return false;
    m_tried.push_back(chosen);
    if (const std::optional<Worth> worth = together(chosen, meter)) {
        m_groups[best->first] = {chosen, *worth};
        m_groups.erase(m_groups.begin() + static_cast<std::ptrdiff_t>(best->second));
    }
    return true;
}

}  // namespace core::stagger::floor
