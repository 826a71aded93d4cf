#include "tests/oracle/at_work.h"

#include <algorithm>

namespace oracle {

using core::service::Hands;
using core::service::Work;
using core::stagger::TaskKind;
using core::stagger::TaskState;

AtWork::AtWork(const Rows& rows)
    : m_rows{rows}
{
    for (int place = 0; place < static_cast<int>(rows.rows().size()); ++place)
        if (row(place).state == TaskState::Running && row(place).length > 0)
            m_running.push_back(place);
    std::vector<int> hands;
    if (suffices(hands))
        return;
    m_present = false;
    hands.clear();
    m_apart = suffices(hands);
}

bool AtWork::isWithin(int look, int apply) const
{
    const Row& one = row(look);
    const Row& other = row(apply);
    return one.id.kind == TaskKind::Look && other.id.kind == TaskKind::Apply && !other.isOpen()
        && one.id.service == other.id.service && other.begun <= one.begun
        && one.begun < other.begun + other.length;
}

bool AtWork::beganWithin(int look, TaskState state) const
{
    for (int apply = 0; apply < static_cast<int>(m_rows.rows().size()); ++apply)
        if (row(apply).state == state && isWithin(look, apply))
            return true;
    return false;
}

std::vector<int> AtWork::madeWithin(int look) const
{
    std::vector<int> within;
    if (beganWithin(look, TaskState::Done))
        return within;
    std::ranges::copy_if(m_running, std::back_inserter(within),
                         [&](int apply) { return isWithin(look, apply); });
    return within;
}

/// Somebody is at it, even where nobody is said to do such work. Those who apply make looks meanwhile.
bool AtWork::doesSuchWork(int place, int hands) const
{
    const bool glance = beganWithin(place, TaskState::Done) || beganWithin(place, TaskState::Running);
    const Work work = glance ? Work::Apply : core::stagger::workOf(row(place).id.kind);
    const auto does = [work](const Hands& each) { return each.does(work); };
    const auto& crew = m_rows.crew().hands;
    return does(crew[static_cast<std::size_t>(hands)]) || std::ranges::none_of(crew, does);
}

bool AtWork::isAway(int place, int hands) const
{
    const auto& away = m_rows.crew().hands[static_cast<std::size_t>(hands)].away;
    const Units end = row(place).begun + row(place).length;
    return std::ranges::any_of(away, [&](const core::measure::Interval& each) {
        return row(place).begun < m_rows.unitsAt(each.until) && m_rows.unitsAt(each.from) < end;
    });
}

bool AtWork::may(int place, int hands) const
{
    return doesSuchWork(place, hands) && !(m_present && isAway(place, hands));
}

bool AtWork::differ(int a, int b) const
{
    const bool looks = row(a).id.kind == TaskKind::Look && row(b).id.kind == TaskKind::Look;
    const bool together = looks && row(a).id.service == row(b).id.service;
    return m_apart && !together && !isWithin(a, b) && !isWithin(b, a);
}

bool AtWork::suffices(std::vector<int>& hands) const
{
    const auto handsOf = [&](int place) {
        return hands[static_cast<std::size_t>(std::ranges::find(m_running, place) - m_running.begin())];
    };
    if (hands.size() == m_running.size())
        return std::ranges::all_of(m_running, [&](int look) {
            const std::vector<int> within = madeWithin(look);
            return within.empty()
                || std::ranges::any_of(within, [&](int apply) { return handsOf(apply) == handsOf(look); });
        });
    const int next = m_running[hands.size()];
    for (int number = 0; number < static_cast<int>(m_rows.crew().hands.size()); ++number) {
        bool free = may(next, number);
        for (std::size_t earlier = 0; earlier < hands.size(); ++earlier)
            free = free && !(hands[earlier] == number && differ(next, m_running[earlier]));
        if (!free)
            continue;
        hands.push_back(number);
        if (suffices(hands))
            return true;
        hands.pop_back();
    }
    return false;
}

}  // namespace oracle
