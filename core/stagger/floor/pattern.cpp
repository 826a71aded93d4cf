#include "core/stagger/floor/pattern.h"

#include <algorithm>

namespace core::stagger::floor {
namespace {

constexpr std::uint64_t forAPattern = 2'000;
constexpr Seconds step = std::chrono::minutes{1};

/// Nobody looks for room further away than this.
constexpr Seconds farAway = std::chrono::hours{24};

/// One coat of a head, by the crew as if nobody were ever away.
Question coatAlone(const Question& whole, std::size_t head, std::size_t coat)
{
    Question question = alone(whole, head);
    service::Service& service = question.services.front();
    service.coats = {service.coats[coat]};
    service.notBefore = Instant{};
    service.readyBy.reset();
    for (service::Hands& hands : service.crew.hands)
        hands.away.clear();
    question.now.reset();
    question.preference = Preference::EndEarly;
    question.mayBreakLimits = false;
    return question;
}

std::optional<Pattern> patternOf(const Question& whole, std::size_t head, std::size_t coat, Meter& meter)
{
    const Question question = coatAlone(whole, head, coat);
    const PartAnswer answer =
        Part{question, {0}, Standing(1)}.plan(Strictness::Keep, meter.limits(forAPattern));
    meter.spend(answer.conflicts);
    if (!answer.plan)
        return std::nullopt;
    const PlanData& plan = answer.plan->data();
    Pattern pattern;
    const Seconds early = plan.start - Instant{};
    pattern.length = plan.end - plan.start;
    pattern.firstContact = pattern.length;
    for (PlannedTask task : plan.tasks) {
        task.id.service = head;
        task.id.coat = coat;
        task.start -= early;
        task.end -= early;
        if (task.id.kind == TaskKind::Apply)
            pattern.firstContact = std::min(pattern.firstContact, task.start - Instant{});
        pattern.tasks.push_back(task);
    }
    return pattern;
}

/// Looks for room for one pattern beside what others do.
class Room {
public:
    Room(const Draft& others, const Pattern& pattern)
        : m_others{others}
        , m_near{others}
        , m_length{static_cast<Time>(pattern.length.count())}
    {
        m_near.busy.clear();
        for (const PlannedTask& task : pattern.tasks) {
            if (task.start == task.end)
                continue;
            const auto length = static_cast<Time>((task.end - task.start).count());
            const Moment begins{1, static_cast<Time>((task.start - Instant{}).count())};
            Busy busy{.id = task.id, .start = begins, .end = begins + length, .length = length, .due = {}};
            busy.needsBasin = task.id.kind == TaskKind::Rinse;
            m_near.busy.push_back(busy);
        }
        m_own = m_near.busy.size();
    }

    /// Most moments fail for what goes on just then, which is seen sooner than looking at the whole day.
    [[nodiscard]] bool isAt(Instant start)
    {
        const auto from = static_cast<Time>((start - m_others.zero).count());
        m_near.busy.resize(m_own);
        for (const Busy& busy : m_others.busy) {
            if (busy.start.offset < from + m_length && from < busy.end.offset)
                m_near.busy.push_back(busy);
        }
        if (!crewSuffices(m_near, {0, from}))
            return false;
        m_near.busy.resize(m_own);
        m_near.busy.insert(m_near.busy.end(), m_others.busy.begin(), m_others.busy.end());
        return crewSuffices(m_near, {0, from});
    }

    /// The first of the starts from `from` to `until` that has room.
    [[nodiscard]] std::optional<Instant> find(Instant from, Instant until)
    {
        const Seconds direction = from <= until ? step : -step;
        for (Instant start = from; direction > Seconds{0} ? start <= until : start >= until;
             start += direction) {
            if (isAt(start))
                return start;
        }
        return std::nullopt;
    }

private:
    const Draft& m_others;
    Draft m_near;           ///< The pattern, and what others do at the same time.
    std::size_t m_own = 0;  ///< Tasks of the pattern, which come first.
    Time m_length;
};

}  // namespace

bool canBeMoved(const Question& question, std::size_t head)
{
    const bool begun = std::ranges::any_of(question.progress.tasks,
                                           [&](const TaskProgress& task) { return task.id.service == head; });
    const bool changed =
        std::ranges::any_of(question.progress.dropped, [&](const TaskId& id) { return id.service == head; });
    return !begun && !changed
        && std::ranges::none_of(question.services[head].coats,
                                [](const service::Coat& coat) { return coat.gapMost || coat.namesTimes(); });
}

std::vector<Pattern> patternsOf(const Question& question, std::size_t head, Meter& meter)
{
    std::vector<Pattern> patterns;
    for (std::size_t coat = 0; coat < question.services[head].coats.size(); ++coat) {
        std::optional<Pattern> pattern = patternOf(question, head, coat, meter);
        if (!pattern)
            return {};
        patterns.push_back(*std::move(pattern));
    }
    return patterns;
}

std::optional<std::vector<PlannedTask>> placed(const Question& question, const std::vector<Pattern>& patterns,
                                               std::size_t head, const Bounds& bounds, const Standing& others)
{
    const std::vector<service::Coat>& coats = question.services[head].coats;
    Standing beside = others;
    beside[head] = {};
    const Part everybodyElse{question, {}, beside};
    const Draft nobody = everybodyElse.draft();
    std::vector<PlannedTask> tasks;
    std::optional<Instant> edge = bounds.late ? bounds.until : bounds.from;
    for (std::size_t count = 0; edge && count < patterns.size(); ++count) {
        const std::size_t coat = bounds.late ? patterns.size() - 1 - count : count;
        const Pattern& pattern = patterns[coat];
        Room room{nobody, pattern};
        const Instant last = bounds.until ? *bounds.until - pattern.length : *edge + farAway;
        const Instant first = bounds.from.value_or(*edge - farAway);
        std::optional<Instant> start;
        if (bounds.late) {
            start = first <= *edge - pattern.length ? room.find(*edge - pattern.length, first) : std::nullopt;
            const Seconds gap = coat > 0 ? coats[coat - 1].gapLeast.value_or(Seconds{0}) : Seconds{0};
            if (start)
                edge = std::min(*start, *start + pattern.firstContact - gap);
        } else {
            const Seconds gap = coat > 0 ? coats[coat - 1].gapLeast.value_or(Seconds{0}) : Seconds{0};
            const Instant earliest = std::max(*edge, *edge + gap - pattern.firstContact);
            start = earliest <= last ? room.find(earliest, last) : std::nullopt;
            if (start)
                edge = *start + pattern.length;
        }
        if (!start)
            return std::nullopt;
        for (PlannedTask task : pattern.tasks) {
            task.start += *start - Instant{};
            task.end += *start - Instant{};
            tasks.push_back(task);
        }
    }
    return edge ? std::optional{std::move(tasks)} : std::nullopt;
}

}  // namespace core::stagger::floor
