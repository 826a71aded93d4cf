#include "core/stagger/start_range.h"

#include "core/stagger/trials.h"

#include <algorithm>

namespace core::stagger {
namespace {

constexpr std::chrono::hours beyondAll{24};
/// Who is away for longer has gone for good.
constexpr std::chrono::days longestAbsence{30};

/// A day past the plan and everything that is tied to the clock: what fits then fits whenever.
Instant whenever(const Question& question, const Plan& plan)
{
    Instant last = plan->end;
    const auto count = [&last](const std::optional<Instant>& moment) {
        last = std::max(last, moment.value_or(last));
    };
    for (const service::Service& service : question.services) {
        for (const auto& moment : {service.notBefore, service.readyBy})
            count(moment);
        for (const service::Coat& coat : service.coats) {
            for (const service::RinseGroup& group : coat.groups) {
                count(group.waterEarliest);
                count(group.waterLatest);
            }
            for (const service::Zone& zone : coat.zones)
                count(zone.notBefore);
        }
    }
    for (const service::Hands& hands : question.services.front().crew.hands) {
        for (const Interval& away : hands.away)
            count(away.until - away.from <= longestAbsence ? away.until : away.from);
    }
    return last + beyondAll;
}

/// Later is never easier: whatever keeps a later start keeps an earlier one.
class LatestStart {
public:
    LatestStart(const Question& question, const TaskId& apply, const Budget& budget)
        : m_question{question}
        , m_apply{apply}
        , m_trials{budget}
    {
    }

    void find(StartRange& range, Instant far)
    {
        if (fits(far))
            return;
        Instant good = range.earliest;
        Instant bad = far;
        for (Seconds step{60}; good + step < bad; step *= 2) {
            if (!fits(good + step)) {
                bad = good + step;
                break;
            }
            good += step;
        }
        while (bad - good > Seconds{1}) {
            const Instant middle = good + (bad - good) / 2;
            (fits(middle) ? good : bad) = middle;
        }
        range.latest = good;
        range.beyond = reasonAt(bad);
        range.proved = m_proved;
    }

private:
    /// What is not known is not offered.
    bool fits(Instant moment)
    {
        const Fits found = m_trials.fits(wanting(m_question, m_apply, moment));
        m_proved = m_proved && found != Fits::Unknown;
        return found == Fits::Yes;
    }

    NoPlan reasonAt(Instant moment)
    {
        NoPlan reason = reasonFor(wanting(m_question, m_apply, moment), m_trials);
        std::erase_if(reason.demands, [this](const Demand& demand) {
            return demand.kind == DemandKind::NotBefore && demand.task == m_apply;
        });
        return reason;
    }

    const Question& m_question;
    TaskId m_apply;
    Trials m_trials;
    bool m_proved = true;
};

}  // namespace

Question wanting(Question question, const TaskId& apply, std::optional<Instant> moment)
{
    question.services[apply.service].coats[apply.coat].zones[apply.item].notBefore = moment;
    return question;
}

std::optional<StartRange> startRangeOf(const Question& question, const TaskId& apply, const Budget& budget)
{
    Question free = wanting(question, apply, std::nullopt);
    free.mayBreakLimits = false;
    const auto best = plan(free, budget);
    if (!best)
        return std::nullopt;
    const PlannedTask* planned = best->find(apply);
    if (planned == nullptr || planned->state != TaskState::Open)
        return std::nullopt;
    StartRange range{.earliest = planned->start};
    LatestStart{free, apply, budget}.find(range, whenever(free, *best));
    return range;
}

}  // namespace core::stagger
