#include "core/stagger/drafter.h"

#include <algorithm>

namespace core::stagger {
namespace {

/// Harm a minute of being late, in hundredths, where facts leave no choice.
constexpr std::int64_t brokenPromise = 50;

}  // namespace

/// The scale of each level is above all that the levels below it can reach.
void Drafter::setScale()
{
    if (m_draft.strictness == Strictness::OnlyFits)
        return;
    const bool breaking = m_draft.strictness == Strictness::Break;
    const Price span = m_high - m_low;
    Price zones = 0;
    Price deviation = 0;
    for (const service::Service& service : m_question.services) {
        for (const service::Coat& coat : service.coats) {
            for (const service::Zone& zone : coat.zones) {
                const Price below =
                    breaking ? span : Price{(zone.develop.target - zone.develop.least).count()};
                const Price above =
                    breaking ? span : Price{(zone.develop.most - zone.develop.target).count()};
                zones += 1;
                deviation += std::max(below * zone.under.hundredths, above * zone.over.hundredths);
            }
        }
    }
    m_draft.scale.staleness = 1;
    m_draft.scale.waste = zones * span + 1;
    m_draft.scale.deviation =
        m_draft.scale.waste * (static_cast<Price>(m_question.services.size()) * span + 1);
    m_draft.scale.breach = breaking ? m_draft.scale.deviation * (deviation + 1) : Price{0};
    for (const Price unit : {m_draft.scale.breach, m_draft.scale.deviation, m_draft.scale.waste}) {
        if (unit > 0)
            m_draft.problem.levels.push_back(unit);
    }
}

void Drafter::writeWaste(std::size_t index, std::optional<Time> start, const std::vector<Moment>& sources,
                         const std::vector<Moment>& ends)
{
    const service::Service& service = m_question.services[index];
    const bool started = std::ranges::any_of(
        m_question.progress.tasks, [&](const TaskProgress& task) { return task.id.service == index; });
    const bool wantsEnd = m_question.preference == Preference::EndEarly && start;
    m_draft.startsLate[index] = service.readyBy && !started && !wantsEnd;
    if (service.readyBy) {
        const Time promise = timeOf(*service.readyBy - service.buffer);
        Sentence ready = service.buffer > Seconds{0}
            ? Sentence::worded("ready by the promised time with %1 to spare", service.buffer)
            : Sentence::worded("ready by the promised time");
        const std::size_t promised =
            demand(DemandKind::Promise, headed(index, std::move(ready)), {}, brokenPromise, index);
        for (const Moment& end : lastOf(ends, mayBreak(promised)))
            limit(promised, {temporal::origin, promise}, end, 0);
        if (m_draft.startsLate[index]) {
            m_draft.wasteFrom[index] = promise;
            const Moment first{newPoint(), 0};
            for (const Moment& source : sources)
                keep(source, first, 0);
            stretchCosts(first, {temporal::origin, promise}, 0, m_draft.scale.waste);
            return;
        }
    }
    m_draft.wasteFrom[index] = start.value_or(0);
    const Moment last{newPoint(), 0};
    for (const Moment& end : ends)
        keep(last, end, 0);
    stretchCosts({temporal::origin, m_low}, last, 0, m_draft.scale.waste);
}

void Drafter::writeRanking()
{
    std::vector<const Busy*> open;
    for (const Busy& busy : m_draft.busy) {
        if (!busy.start.isFixed())
            open.push_back(&busy);
    }
    std::ranges::sort(open, {}, [](const Busy* busy) -> const TaskId& { return busy->id; });
    for (const Busy* busy : open)
        m_draft.problem.ranking.push_back({busy->start.point, busy->due});
}

}  // namespace core::stagger
