#include "tests/oracle/figures.h"

#include "tests/oracle/report.h"

#include <algorithm>

// How far limits are passed by what is still open, each weighed as docs/method.md says ("While it runs").

namespace oracle {
namespace {

using core::measure::Harm;

// Hundredths of harm a minute.
constexpr std::int64_t tooLong = 1000;
constexpr std::int64_t tooShort = 400;
constexpr std::int64_t staleBowl = 100;
constexpr std::int64_t missedBasin = 100;
constexpr std::int64_t wrongGap = 100;
constexpr std::int64_t wrongMoment = 50;
constexpr std::int64_t brokenPromise = 50;
constexpr std::int64_t soonerThanWanted = 25;

class Breaches {
public:
    explicit Breaches(const PlanView& view)
        : m_view{view}
    {
    }

    Harm sum()
    {
        for (const ZoneView& zone : m_view.zones())
            addZone(zone);
        for (std::size_t head = 0; head < m_view.question().services.size(); ++head) {
            addBookings(head);
            addPromise(head);
            for (std::size_t coat = 0; coat + 1 < m_view.head(head).coats.size(); ++coat)
                addGap(head, coat);
        }
        return m_sum;
    }

private:
    void add(std::int64_t rate, Seconds by)
    {
        m_sum.hundredthSeconds += rate * std::max<std::int64_t>(0, by.count());
    }

    void addZone(const ZoneView& zone)
    {
        if (anyOpen({zone.apply, zone.rinse}))
            addWindow(zone);
        if (const auto& potLife = zone.coatData->bowls[zone.data->bowl].potLife) {
            const PotStart from = potStart(m_view, zone);
            if (from.task != nullptr && anyOpen({from.task, zone.apply}))
                add(staleBowl, zone.apply->end - from.moment - *potLife);
        }
        if (zone.data->notBefore && anyOpen({zone.apply}))
            add(soonerThanWanted, *zone.data->notBefore - zone.apply->start);
        addLooks(zone);
        for (std::size_t part = 0; part < zone.data->late.size(); ++part) {
            const service::LateJob& job = zone.data->late[part];
            const PlannedTask* done = m_view.find(zone.id(TaskKind::Late, part));
            if (done != nullptr && anyOpen({done, zone.rinse}))
                add(wrongMoment, std::chrono::abs(done->start - (zone.water() - job.before)) - job.tolerance);
        }
        for (const service::After& after : zone.data->after) {
            const PlannedTask* earlier = m_view.find(
                {.service = zone.head, .coat = zone.coat, .kind = TaskKind::Apply, .item = after.zone});
            if (after.longestGap && earlier != nullptr && anyOpen({earlier, zone.apply}))
                add(wrongMoment, zone.apply->start - earlier->end - *after.longestGap);
        }
    }

    void addWindow(const ZoneView& zone)
    {
        const service::Zone& data = *zone.data;
        add(tooShort, data.develop.least - zone.development());
        add(tooLong, zone.development() - data.develop.most);
        if (data.firstStrandMost)
            add(tooLong, zone.water() - zone.apply->start - *data.firstStrandMost);
        if (data.lastStrandLeast)
            add(tooShort, *data.lastStrandLeast - (zone.water() - zone.apply->end));
    }

    void addLooks(const ZoneView& zone)
    {
        if (!zone.data->looks)
            return;
        const std::vector<Seconds> moments = zone.data->looks->moments();
        for (std::size_t part = 0; part < moments.size(); ++part) {
            const PlannedTask* look = m_view.find(zone.id(TaskKind::Look, part));
            if (look == nullptr || !anyOpen({look}))
                continue;
            const Instant due = zone.clockStart() + moments[part];
            add(wrongMoment, std::chrono::abs(look->start - due) - zone.data->looks->tolerance);
        }
    }

    void addBookings(std::size_t head)
    {
        for (const PlannedTask* task : m_view.tasksOfHead(head)) {
            if (task->id.kind != TaskKind::Rinse || !anyOpen({task}))
                continue;
            const service::RinseGroup& group = m_view.head(head).coats[task->id.coat].groups[task->id.item];
            if (group.waterEarliest)
                add(missedBasin, *group.waterEarliest - task->start);
            if (group.waterLatest)
                add(missedBasin, task->start - *group.waterLatest);
        }
    }

    /// One promise, however many things end late.
    void addPromise(std::size_t head)
    {
        const auto aimed = m_view.aimedEnd(head);
        Seconds by{0};
        for (const PlannedTask* task : m_view.tasksOfHead(head))
            if (aimed && anyOpen({task}))
                by = std::max(by, m_view.fullEnd(*task) - *aimed);
        add(brokenPromise, by);
    }

    void addGap(std::size_t head, std::size_t coat)
    {
        const service::Coat& data = m_view.head(head).coats[coat];
        const PlannedTask* first = firstApplied(m_view, head, coat + 1);
        if (first == nullptr || !anyOpen({first}))
            return;
        const Seconds gap = first->start - m_view.coatEnd(head, coat);
        if (data.gapLeast)
            add(wrongGap, *data.gapLeast - gap);
        if (data.gapMost)
            add(wrongGap, gap - *data.gapMost);
    }

    const PlanView& m_view;
    Harm m_sum;
};

}  // namespace

Harm breachOf(const PlanView& view)
{
    return Breaches{view}.sum();
}

}  // namespace oracle
