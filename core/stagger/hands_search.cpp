#include "core/stagger/hands_search.h"

#include "core/stagger/crew.h"

#include <algorithm>

namespace core::stagger {

HandsSearch::HandsSearch(const CrewAt& crew, const std::vector<std::size_t>& places)
    : m_crew{crew}
    , m_places{places}
    , m_madeIn(places.size())
    , m_looks(places.size())
    , m_failed(places.size())
{
    // Ends are not in order, so "near" reaches back to the first task that is long enough.
    std::size_t near = 0;
    for (std::size_t next = 0; next < places.size(); ++next) {
        while (near < next && crew.end(places[near]) <= crew.start(places[next]))
            ++near;
        m_near.push_back(near);
    }
    for (std::size_t look = 0; look < places.size(); ++look) {
        if (!crew.isLook(places[look]))
            continue;
        for (std::size_t apply = m_near[look]; apply < places.size(); ++apply) {
            if (crew.start(places[apply]) > crew.start(places[look]))
                break;
            if (!crew.isMadeWhile(places[look], places[apply]))
                continue;
            m_madeIn[look].push_back(apply);
            if (look < apply)
                m_looks[apply].push_back(look);
        }
    }
}

/// Whether nothing that `hands` were given so far goes on when the next task starts.
bool HandsSearch::isFree(std::size_t hands, std::size_t next) const
{
    for (std::size_t i = m_near[next]; i < next; ++i) {
        if ((*m_given)[m_places[i]] == hands && m_crew.end(m_places[i]) > m_crew.start(m_places[next]))
            return false;
    }
    return true;
}

bool HandsSearch::hasFreeTwin(std::size_t hands, std::size_t next) const
{
    for (std::size_t other = 0; other < hands; ++other) {
        if (m_crew.areAlike(other, hands) && isFree(other, next))
            return true;
    }
    return false;
}

/// Whether one of the applications that a look is made in is done by `hands`, or
/// may yet be: those from `next` on have nobody so far.
bool HandsSearch::canBeGlance(std::size_t look, std::size_t hands, std::size_t next) const
{
    return std::ranges::any_of(m_madeIn[look], [&](std::size_t apply) {
        return apply >= next || (*m_given)[m_places[apply]] == hands;
    });
}

bool HandsSearch::canTake(std::size_t next, std::size_t hands)
{
    const std::size_t place = m_places[next];
    for (std::size_t i = m_near[next]; i < next; ++i) {
        if ((*m_given)[m_places[i]] == hands && m_crew.clash(place, m_places[i]))
            return false;
    }
    (*m_given)[place] = hands;
    // A look that was given hands before the application it is made in: is that still possible?
    const bool looksStand = std::ranges::all_of(m_looks[next], [&](std::size_t look) {
        return canBeGlance(look, *(*m_given)[m_places[look]], next + 1);
    });
    if (!looksStand)
        return false;
    if (m_madeIn[next].empty())
        return m_crew.mayDo(place, hands);
    return canBeGlance(next, hands, next) && !m_crew.isAwayDuring(place, hands);
}

/// Which hands are at the tasks that are still under way when the next one starts.
std::vector<std::size_t> HandsSearch::underWay(std::size_t next) const
{
    std::vector<std::size_t> hands;
    for (std::size_t i = m_near[next]; i < next; ++i) {
        if (m_crew.end(m_places[i]) > m_crew.start(m_places[next]))
            hands.push_back(*(*m_given)[m_places[i]]);
    }
    return hands;
}

bool HandsSearch::giveFrom(std::size_t next)
{
    if (next == m_places.size())
        return true;
    m_deepest = std::max(m_deepest, next);
    if (!m_failed[next].empty() && m_failed[next].contains(underWay(next)))
        return false;
    for (std::size_t candidate = 0; candidate < m_crew.hands(); ++candidate) {
        // Where one free pair of hands cannot, another like it cannot either.
        const bool tried = isFree(candidate, next) && hasFreeTwin(candidate, next);
        if (!tried && canTake(next, candidate) && giveFrom(next + 1))
            return true;
    }
    (*m_given)[m_places[next]].reset();
    m_failed[next].insert(underWay(next));
    return false;
}

bool HandsSearch::run(HandsOf& given)
{
    m_given = &given;
    m_deepest = 0;
    return giveFrom(0);
}

std::vector<std::size_t> HandsSearch::stuck(std::size_t wider) const
{
    const Time moment = m_crew.start(m_places[m_deepest]);
    std::vector<bool> chosen(m_places.size(), false);
    for (std::size_t i = 0; i < m_places.size() && m_crew.start(m_places[i]) <= moment; ++i)
        chosen[i] = i + wider > m_deepest || m_crew.end(m_places[i]) > moment;
    // A look goes with the applications that it may be made in, else it would need hands of its own.
    for (std::size_t look = 0; look < m_places.size(); ++look) {
        if (chosen[look]) {
            for (const std::size_t apply : m_madeIn[look])
                chosen[apply] = true;
        }
    }
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        if (chosen[i])
            places.push_back(m_places[i]);
    }
    return places;
}

namespace {

/// Drops tasks as long as the rest still cannot be shared out.
std::vector<std::size_t> withoutSpare(const CrewAt& crew, std::vector<std::size_t> places)
{
    HandsOf hands(crew.count());
    for (std::size_t i = places.size(); i-- > 0;) {
        std::vector<std::size_t> fewer = places;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
        // A look stays with the application that it is made in.
        const bool carries =
            std::ranges::any_of(fewer, [&](std::size_t look) { return crew.isMadeWhile(look, places[i]); });
        if (!carries && !HandsSearch{crew, fewer}.run(hands))
            places = std::move(fewer);
    }
    return places;
}

}  // namespace

std::vector<std::size_t> smallestStuck(const CrewAt& crew, const std::vector<std::size_t>& places)
{
    HandsOf hands(crew.count());
    HandsSearch whole{crew, places};
    if (whole.run(hands))
        return {};
    for (std::size_t wider = 0; wider < places.size(); wider = 2 * wider + 4) {
        const std::vector<std::size_t> stuck = whole.stuck(wider);
        if (!HandsSearch{crew, stuck}.run(hands))
            return withoutSpare(crew, stuck);
    }
    return withoutSpare(crew, places);
}

}  // namespace core::stagger
