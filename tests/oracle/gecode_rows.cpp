#include "tests/oracle/gecode_rows.h"

#include "tests/oracle/facts.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace oracle {

using core::stagger::TaskId;

Rows::Rows(const core::stagger::Question& question, std::optional<Seconds> grid)
    : m_question{question}
{
    const std::vector<Instant> fixed = moments();
    assert(!fixed.empty());
    const auto [first, last] = std::ranges::minmax(fixed);
    // Time in which nothing happens and nothing develops can be cut out of any plan that lies outside the
    // fixed moments, so none needs to reach further from them than all lengths and windows together.
    bool bounded = true;
    for (std::size_t head = 0; head < question.services.size(); ++head)
        bounded = bounded && notBefore(head);
    m_origin = bounded ? first : first - longestPlan();
    m_unit = Seconds{0};
    for (const Seconds length : lengths())
        m_unit = Seconds{std::gcd(m_unit.count(), length.count())};
    for (const Instant moment : fixed)
        m_unit = Seconds{std::gcd(m_unit.count(), (moment - m_origin).count())};
    // With looks some rules say "less than": a second counts, whatever the grid of the data.
    // So it does where a share of what is uncertain is rounded to seconds, or something has happened.
    m_unit = grid.value_or(hasLooks() || seeksGive() || hasFacts() ? Seconds{1} : m_unit);
    m_horizon = units(last + longestPlan() - m_origin);
    for (std::size_t head = 0; head < question.services.size(); ++head)
        for (const TaskId& id : tasksThatStand(question, head))
            addRow(id);
}

void Rows::addRow(const TaskId& id)
{
    Row row{.id = id, .length = units(lengthOf(m_question, id))};
    if (const core::stagger::TaskProgress* fact = m_question.progress.find(id)) {
        row.state = fact->end ? core::stagger::TaskState::Done : core::stagger::TaskState::Running;
        row.begun = unitsAt(fact->start);
    }
    m_rows.push_back(row);
}

bool Rows::isBegun(std::size_t head, std::size_t coat) const
{
    return std::ranges::any_of(m_rows, [&](const Row& row) {
        return row.id.service == head && row.id.coat == coat && row.id.kind == core::stagger::TaskKind::Apply
            && !row.isOpen();
    });
}

const core::service::Coat& Rows::coatOf(const Row& row) const
{
    return m_question.services[row.id.service].coats[row.id.coat];
}

const core::service::Zone& Rows::zoneOf(const Row& row) const
{
    return coatOf(row).zones[row.id.item];
}

int Rows::find(const TaskId& id) const
{
    const auto found = std::ranges::find(m_rows, id, &Row::id);
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

Units Rows::units(Seconds length) const
{
    assert(length.count() % m_unit.count() == 0);
    return static_cast<Units>(length / m_unit);
}

std::optional<Instant> Rows::notBefore(std::size_t head) const
{
    const std::optional<Instant> own = m_question.services[head].notBefore;
    if (own && m_question.now)
        return std::max(*own, *m_question.now);
    return own ? own : m_question.now;
}

std::optional<Instant> Rows::aimedEnd(std::size_t head) const
{
    const core::service::Service& data = m_question.services[head];
    if (!data.readyBy)
        return std::nullopt;
    return *data.readyBy - data.buffer;
}

bool Rows::seeksGive() const
{
    return m_question.guarantee && isUncertain(m_question);
}

Seconds Rows::uncertainty() const
{
    Seconds sum{0};
    for (const Row& row : m_rows)
        if (seeksGive() && row.id.kind == core::stagger::TaskKind::Apply)
            sum += zoneOf(row).apply.slowest - zoneOf(row).apply.quickest;
    return sum;
}

std::vector<std::pair<std::size_t, std::size_t>> Rows::gaps() const
{
    std::vector<std::pair<std::size_t, std::size_t>> found;
    for (std::size_t head = 0; head < m_question.services.size(); ++head)
        for (std::size_t coat = 0; coat + 1 < m_question.services[head].coats.size(); ++coat)
            if (m_question.services[head].coats[coat].gapMost && !isBegun(head, coat + 1))
                found.emplace_back(head, coat);
    return found;
}

bool Rows::startsLate(std::size_t head) const
{
    const bool endsEarly = m_question.preference == core::stagger::Preference::EndEarly && notBefore(head);
    const bool begun = std::ranges::any_of(m_question.progress.tasks,
                                           [head](const auto& fact) { return fact.id.service == head; });
    return aimedEnd(head) && !endsEarly && !begun;
}

bool Rows::canBePushed() const
{
    if (m_question.services.size() != 1 || hasFacts())
        return false;
    const auto isBooked = [](const core::service::RinseGroup& group) {
        return group.waterEarliest || group.waterLatest;
    };
    const auto isWanted = [](const core::service::Zone& zone) { return zone.notBefore.has_value(); };
    for (const core::service::Coat& coat : m_question.services[0].coats)
        if (std::ranges::any_of(coat.groups, isBooked) || std::ranges::any_of(coat.zones, isWanted))
            return false;
    return std::ranges::all_of(crew().hands,
                               [](const core::service::Hands& hands) { return hands.away.empty(); });
}

std::vector<Instant> Rows::moments() const
{
    std::vector<Instant> fixed;
    const auto add = [&fixed](std::optional<Instant> moment) {
        if (moment)
            fixed.push_back(*moment);
    };
    for (std::size_t head = 0; head < m_question.services.size(); ++head) {
        add(notBefore(head));
        add(aimedEnd(head));
        for (const core::service::Coat& coat : m_question.services[head].coats)
            for (const core::service::RinseGroup& group : coat.groups) {
                add(group.waterEarliest);
                add(group.waterLatest);
            }
        for (const core::service::Coat& coat : m_question.services[head].coats)
            for (const core::service::Zone& zone : coat.zones)
                add(zone.notBefore);
    }
    for (const core::stagger::TaskProgress& fact : m_question.progress.tasks) {
        add(fact.start);
        add(endOfFact(m_question, fact));
    }
    if (fixed.empty())
        return fixed;
    for (const core::service::Hands& hands : crew().hands)
        for (const core::measure::Interval& away : hands.away) {
            add(away.from);
            add(away.until);
        }
    return fixed;
}

std::vector<Seconds> Rows::lengths() const
{
    std::vector<Seconds> all;
    for (const core::service::Service& data : m_question.services)
        for (const core::service::Coat& coat : data.coats) {
            all.insert(all.end(),
                       {coat.dryHands, coat.dryUnattended, coat.assess, coat.gapLeast.value_or(Seconds{0}),
                        coat.gapMost.value_or(Seconds{0})});
            for (const core::service::Bowl& bowl : coat.bowls)
                all.insert(all.end(), {bowl.mix, bowl.potLife.value_or(Seconds{0})});
            for (const core::service::RinseGroup& group : coat.groups)
                all.push_back(group.rinse);
            for (const core::service::Zone& zone : coat.zones) {
                all.insert(all.end(),
                           {zone.apply.usual, zone.develop.least, zone.develop.target, zone.develop.most,
                            zone.reach, zone.firstStrandMost.value_or(Seconds{0}),
                            zone.lastStrandLeast.value_or(Seconds{0})});
                for (const core::service::LateJob& job : zone.late)
                    all.insert(all.end(), {job.before, job.length, job.tolerance});
                for (const core::service::After& after : zone.after)
                    all.push_back(after.longestGap.value_or(Seconds{0}));
            }
        }
    return all;
}

Seconds Rows::longestPlan() const
{
    Seconds sum{1};
    for (std::size_t head = 0; head < m_question.services.size(); ++head) {
        for (const TaskId& id : core::stagger::tasksOf(m_question.services[head], head))
            sum += core::stagger::usualLength(m_question.services[head], id);
        for (const core::service::Coat& coat : m_question.services[head].coats) {
            sum += coat.dryUnattended + coat.gapLeast.value_or(Seconds{0});
            for (const core::service::Zone& zone : coat.zones)
                sum += zone.develop.most + zone.apply.slowest - zone.apply.usual;
        }
    }
    for (const Seconds length : lengths())  // On the grid of the data.
        if (length > Seconds{1})
            return (sum / length + 1) * length;
    return sum;
}

bool Rows::hasLooks() const
{
    for (const core::service::Service& data : m_question.services)
        for (const core::service::Coat& coat : data.coats)
            if (std::ranges::any_of(coat.zones, [](const auto& zone) { return zone.looks.has_value(); }))
                return true;
    return false;
}

}  // namespace oracle
