#include "core/stagger/drafter.h"

#include <algorithm>

namespace core::stagger {
namespace {

/// More than anything in a service can take, so that no answer is lost by the horizon.
Seconds longestSpan(const service::Service& service)
{
    Seconds span = std::chrono::hours{1};
    for (const service::Coat& coat : service.coats) {
        Seconds window{0};
        for (const service::Bowl& bowl : coat.bowls)
            span += bowl.mix;
        for (const service::Zone& zone : coat.zones) {
            span += zone.apply.slowest;
            window = std::max({window, zone.develop.most, zone.firstStrandMost.value_or(Seconds{0}),
                               zone.lastStrandLeast.value_or(Seconds{0})});
            for (const service::LateJob& job : zone.late)
                span += job.length + job.tolerance;
        }
        for (const service::RinseGroup& group : coat.groups)
            span += group.rinse;
        span +=
            window + coat.dryHands + coat.dryUnattended + coat.assess + coat.gapLeast.value_or(Seconds{0});
    }
    return span;
}

/// Nobody waits for somebody who is away for longer: they count as gone for good.
constexpr std::chrono::days longestAbsence{30};

/// How long absences can hold up a service of `span`: as long as they last, and
/// the time between two of them where it is too short for what has to be done.
Seconds longestWait(const service::Crew& crew, Seconds span)
{
    Seconds wait{0};
    for (const service::Hands& hands : crew.hands) {
        for (std::size_t place = 0; place < hands.away.size(); ++place) {
            const Interval& away = hands.away[place];
            if (away.until - away.from <= longestAbsence)
                wait += away.until - away.from;
            if (place > 0)
                wait += std::min(span, away.from - hands.away[place - 1].until);
        }
    }
    return wait;
}

void mention(const Question& question, std::vector<Instant>& instants)
{
    for (const service::Service& service : question.services) {
        for (const auto& instant : {service.notBefore, service.readyBy}) {
            if (instant)
                instants.push_back(*instant);
        }
        for (const service::Coat& coat : service.coats) {
            for (const service::RinseGroup& group : coat.groups) {
                for (const auto& instant : {group.waterEarliest, group.waterLatest}) {
                    if (instant)
                        instants.push_back(*instant);
                }
            }
            for (const service::Zone& zone : coat.zones) {
                if (zone.notBefore)
                    instants.push_back(*zone.notBefore);
            }
        }
    }
    for (const TaskProgress& task : question.progress.tasks)
        instants.push_back(task.start);
    if (question.now)
        instants.push_back(*question.now);
}

}  // namespace

/// False when the question spans more than the planner counts in.
bool Drafter::setHorizon()
{
    std::vector<Instant> instants;
    mention(m_question, instants);
    for (const PlannedTask& task : m_pins.elsewhere)
        instants.push_back(task.end);
    Seconds span{0};
    for (const service::Service& service : m_question.services)
        span += longestSpan(service);
    span += longestWait(m_question.services.front().crew, span);
    if (instants.empty())
        instants.push_back(Instant{});
    const auto [earliest, latest] = std::ranges::minmax(instants);
    // The origin is the moment that is nearest to what is planned, so that numbers stay small.
    m_draft.zero = m_question.now.value_or(m_question.services.front().notBefore.value_or(earliest));
    const auto low = (earliest - m_draft.zero) - span;
    const auto high = (latest - m_draft.zero) + 2 * span;
    if (-low.count() > temporal::farTime / 4 || high.count() > temporal::farTime / 4)
        return false;
    m_low = static_cast<Time>(low.count());
    m_high = static_cast<Time>(high.count());
    if (m_draft.give > 0) {
        // A clock time cannot wait for an end, so in a network with links nothing comes before the origin.
        m_draft.zero += low;
        m_freeStart = -m_low;
        m_high -= m_low;
        m_low = 0;
    }
    m_draft.horizon = m_high;
    if (m_question.now)
        m_now = timeOf(*m_question.now);
    return true;
}

}  // namespace core::stagger
