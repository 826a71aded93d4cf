#include "tests/oracle/facts.h"
#include "tests/oracle/order.h"

#include <algorithm>

namespace oracle {
namespace {

using core::temporal::Point;
using core::temporal::Time;
using Kind = Choice::Kind;

Time secondsOf(Seconds length)
{
    return static_cast<Time>(length.count());
}

Time timeOf(Instant moment)
{
    return secondsOf(moment - Points::origin());
}

/// A moment so long after a point; the end of a task is one.
struct Moment {
    Point point = 0;
    Time after = 0;
    bool isKnown = false;  ///< It has come, or is nobody's to decide: no rule binds two such.
};

class NetworkWriter {
public:
    NetworkWriter(const Points& points, const Order& order, int share)
        : m_points{points}
        , m_order{order}
        , m_share{share}
    {
    }

    core::temporal::UncertainNetwork write()
    {
        m_network.points = m_points.count();
        for (Point point = 1; point < m_network.points; ++point)
            m_network.lags.push_back({point, 0, 0});
        for (const TaskId& id : m_points.tasks()) {
            if (isKnown(id))
                writeFact(id);
            else if (id.kind != TaskKind::Look)
                writeTask(id);
            if (id.kind == TaskKind::Apply)
                writeZone(id);
            if (id.kind == TaskKind::Late && m_points.has(beside(id, TaskKind::Apply, id.item)))
                writeLate(id);
            if (id.kind == TaskKind::Rinse)
                writeBooking(id);
        }
        for (const Choice& choice : m_order)
            writeChoice(choice);
        return std::move(m_network);
    }

private:
    void atLeast(Moment earlier, Moment later, Seconds by)
    {
        if (!earlier.isKnown || !later.isKnown)
            m_network.lags.push_back(
                {later.point, earlier.point, later.after - earlier.after - secondsOf(by)});
    }
    void atMost(Moment earlier, Moment later, Seconds by)
    {
        if (!earlier.isKnown || !later.isKnown)
            m_network.lags.push_back(
                {earlier.point, later.point, secondsOf(by) + earlier.after - later.after});
    }
    static Moment at(Instant moment) { return {0, timeOf(moment), true}; }
    [[nodiscard]] bool isKnown(const TaskId& id) const
    {
        return m_points.question().progress.find(id) != nullptr;
    }

    [[nodiscard]] const service::Coat& coatOf(const TaskId& id) const
    {
        return m_points.question().services[id.service].coats[id.coat];
    }
    [[nodiscard]] const service::Zone& zoneOf(const TaskId& id) const { return coatOf(id).zones[id.item]; }
    [[nodiscard]] static TaskId beside(const TaskId& id, TaskKind kind, std::size_t item)
    {
        return {.service = id.service, .coat = id.coat, .kind = kind, .item = item, .part = 0};
    }

    [[nodiscard]] Moment startOf(const TaskId& id) const { return {m_points.start(id), 0, isKnown(id)}; }
    /// Of the hands-on part.
    [[nodiscard]] Moment endOf(const TaskId& id) const
    {
        if (id.kind == TaskKind::Apply)
            return {m_points.start(id) + 1, 0, isKnown(id)};
        return {m_points.start(id), secondsOf(m_points.length(id)), isKnown(id)};
    }
    [[nodiscard]] Moment fullEndOf(const TaskId& id) const
    {
        Moment end = endOf(id);
        if (id.kind == TaskKind::Dry)
            end.after += secondsOf(coatOf(id).dryUnattended);
        return end;
    }
    [[nodiscard]] Moment waterOf(const TaskId& id) const
    {
        Moment water = startOf(rinseOf(id));
        if (rinseOf(id).kind == TaskKind::Rinse)
            water.after = secondsOf(zoneOf(id).reach);
        return water;
    }
    [[nodiscard]] Moment clockOf(const TaskId& id) const
    {
        const TaskId apply = beside(id, TaskKind::Apply, id.item);
        return zoneOf(id).clock == service::ClockStart::FirstContact ? startOf(apply) : endOf(apply);
    }

    [[nodiscard]] TaskId rinseOf(const TaskId& id) const
    {
        return oracle::rinseOf(m_points.question(), beside(id, TaskKind::Apply, id.item));
    }

    /// It stands; a look that goes on is over before water comes.
    void writeFact(const TaskId& id)
    {
        const core::stagger::TaskProgress* fact = m_points.question().progress.find(id);
        const Time begun = timeOf(fact->start);
        m_network.lags.push_back({0, m_points.start(id), begun});
        m_network.lags.push_back({m_points.start(id), 0, -begun});
        if (id.kind == TaskKind::Look && !fact->end && m_points.has(beside(id, TaskKind::Apply, id.item)))
            atLeast(endOf(id), waterOf(id), Seconds{0});
    }

    /// Rules 8, 9 and 10.
    void writeTask(const TaskId& id)
    {
        const service::Service& head = m_points.question().services[id.service];
        const auto& now = m_points.question().now;
        if (now)
            atLeast(at(*now), startOf(id), Seconds{0});
        if (id.kind == TaskKind::Apply && zoneOf(id).notBefore)
            atLeast(at(*zoneOf(id).notBefore), startOf(id), Seconds{0});
        if (head.notBefore)
            atLeast(at(*head.notBefore), startOf(id), Seconds{0});
        if (head.readyBy)
            atLeast(fullEndOf(id), at(*head.readyBy - head.buffer), Seconds{0});
        for (const TaskId& other : m_points.tasks()) {
            if (other.service != id.service || other.kind == TaskKind::Look)
                continue;
            const bool rinsed = isRinse(other) && (id.kind == TaskKind::Dry || id.kind == TaskKind::Assess);
            const bool dried = other.kind == TaskKind::Dry && id.kind == TaskKind::Assess;
            if (other.coat + 1 == id.coat || (other.coat == id.coat && (rinsed || dried)))
                atLeast(fullEndOf(other), startOf(id), Seconds{0});
            if (other.coat + 1 == id.coat && id.kind == TaskKind::Apply && coatOf(other).gapLeast
                && !m_points.isBegun(id.service, id.coat))
                atLeast(fullEndOf(other), startOf(id), *coatOf(other).gapLeast);
        }
    }

    void writeBooking(const TaskId& id)
    {
        const service::RinseGroup& group = coatOf(id).groups[id.item];
        if (group.waterEarliest)
            atLeast(at(*group.waterEarliest), startOf(id), Seconds{0});
        if (group.waterLatest)
            atLeast(startOf(id), at(*group.waterLatest), Seconds{0});
    }

    void writeZone(const TaskId& id)
    {
        writeLength(id);
        writeBowl(id);
        const service::Zone& zone = zoneOf(id);
        atLeast(endOf(id), startOf(rinseOf(id)), Seconds{0});
        atLeast(clockOf(id), waterOf(id), zone.develop.least);
        atMost(clockOf(id), waterOf(id), zone.develop.most);
        if (zone.firstStrandMost)
            atMost(startOf(id), waterOf(id), *zone.firstStrandMost);
        if (zone.lastStrandLeast)
            atLeast(endOf(id), waterOf(id), *zone.lastStrandLeast);
        for (const service::After& after : zone.after) {
            const TaskId earlier = beside(id, TaskKind::Apply, after.zone);
            if (!m_points.has(earlier))
                continue;
            atLeast(endOf(earlier), startOf(id), Seconds{0});
            if (after.longestGap)
                atMost(endOf(earlier), startOf(id), *after.longestGap);
        }
    }

    void writeLength(const TaskId& id)
    {
        const service::Application apply = applyingOf(m_points.question(), id);
        const auto part = [this](Seconds room) {
            return static_cast<Time>((room.count() * m_share + 99) / 100);
        };
        const Time usual = secondsOf(apply.usual);
        const Time least = usual - part(apply.usual - apply.quickest);
        const Time most = usual + part(apply.slowest - apply.usual);
        const Point start = m_points.start(id);
        if (least < most) {
            m_network.links.push_back({start, start + 1, least, usual, most});
            return;
        }
        m_network.lags.push_back({start, start + 1, usual});
        m_network.lags.push_back({start + 1, start, -usual});
    }

    /// Rule 1.
    void writeBowl(const TaskId& id)
    {
        const std::size_t bowl = zoneOf(id).bowl;
        const auto& potLife = coatOf(id).bowls[bowl].potLife;
        const TaskId mix = beside(id, TaskKind::Mix, bowl);
        if (m_points.has(mix)) {
            atLeast(endOf(mix), startOf(id), Seconds{0});
            if (potLife)
                atMost(endOf(mix), endOf(id), *potLife);
            return;
        }
        if (coatOf(id).bowls[bowl].mix > Seconds{0})
            return;  // Nobody saw it being mixed: there is nothing to count from.
        for (std::size_t zone = 0; potLife && zone < coatOf(id).zones.size(); ++zone)
            if (coatOf(id).zones[zone].bowl == bowl && m_points.has(beside(id, TaskKind::Apply, zone)))
                atMost(startOf(beside(id, TaskKind::Apply, zone)), endOf(id), *potLife);
    }

    /// Rule 4.
    void writeLate(const TaskId& id)
    {
        const service::LateJob& job = zoneOf(id).late[id.part];
        atMost(startOf(id), waterOf(id), job.before + job.tolerance);
        atLeast(startOf(id), waterOf(id), job.before - job.tolerance);
        atLeast(endOf(beside(id, TaskKind::Apply, id.item)), startOf(id), Seconds{0});
        atLeast(endOf(id), waterOf(id), Seconds{0});
    }

    /// Rule 3.
    void writeDue(const TaskId& id)
    {
        writeTask(id);
        const service::Looks& looks = *zoneOf(id).looks;
        const Seconds moment = looks.moments()[id.part];
        atLeast(clockOf(id), waterOf(id), moment + looks.length);
        atLeast(clockOf(id), startOf(id), moment - looks.tolerance);
        atMost(clockOf(id), startOf(id), moment + looks.tolerance);
        atLeast(endOf(beside(id, TaskKind::Apply, id.item)), startOf(id), Seconds{0});
        atLeast(endOf(id), waterOf(id), Seconds{0});
    }

    void writeChoice(const Choice& choice)
    {
        const TaskId& first = choice.first;
        const TaskId& second = choice.second;
        switch (choice.kind) {
        case Kind::Before: return atLeast(endOf(first), startOf(second), Seconds{0});
        case Kind::Clear: return atLeast(startOf(first), startOf(second), Seconds{1});
        case Kind::Within:
            atLeast(startOf(second), startOf(first), Seconds{0});
            return atLeast(startOf(first), endOf(second), Seconds{1});
        case Kind::Due: return writeDue(first);
        case Kind::NotDue: {
            const service::Looks& looks = *zoneOf(first).looks;
            return atMost(clockOf(first), waterOf(first),
                          looks.moments()[first.part] + looks.length - Seconds{1});
        }
        case Kind::Leave: return atLeast(endOf(first), at(choice.moment), Seconds{0});
        case Kind::Back: return atLeast(at(choice.moment), startOf(first), Seconds{0});
        case Kind::WithinGap: return atMost(fullEndOf(first), startOf(second), *coatOf(first).gapMost);
        }
    }

    const Points& m_points;
    const Order& m_order;
    int m_share;
    core::temporal::UncertainNetwork m_network;
};

}  // namespace

core::temporal::UncertainNetwork networkOf(const Points& points, const Order& order, int share)
{
    return NetworkWriter{points, order, share}.write();
}

std::vector<Time> Points::timesOf(const PlanView& view) const
{
    std::vector<Time> times(static_cast<std::size_t>(m_count), 0);
    for (const auto& [id, point] : m_starts) {
        const PlannedTask* task = view.find(id);
        if (task == nullptr)
            continue;
        times[static_cast<std::size_t>(point)] = timeOf(task->start);
        if (id.kind == TaskKind::Apply)
            times[static_cast<std::size_t>(point) + 1] = timeOf(task->end);
    }
    return times;
}

}  // namespace oracle
