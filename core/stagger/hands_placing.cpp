#include "core/stagger/hands_placing.h"

#include "core/stagger/crew.h"

#include <algorithm>

namespace core::stagger {
namespace {

/// What speaks against a number, the worst first.
struct Against {
    bool wrong = false;  ///< They do no such work, are away, or are not who applies.
    int clashes = 0;     ///< They are at something else.
    int close = 0;       ///< They may still be at something else, should that take long.

    friend auto operator<=>(const Against&, const Against&) = default;
};

class Placing {
public:
    /// `longer`: see `longerThanUsual`.
    Placing(const Draft& draft, const std::vector<Time>& longer, std::vector<Time>& times,
            const temporal::Distances& distances)
        : m_draft{draft}
        , m_longer{longer}
        , m_crew{draft, times}
        , m_times{times}
        , m_distances{distances}
    {
    }

    void run()
    {
        at(*m_draft.numberZero) = 0;
        for (const std::size_t place : m_crew.present()) {
            const Busy& busy = m_draft.busy[place];
            if (busy.hands) {
                lookAtHands(place);
                put(*busy.hands);
            }
            if (busy.basin) {
                lookAtBasins(place);
                put(*busy.basin);
            }
            m_seen.push_back(place);
        }
        // Who would make a look that is not due is open, but for what is decided of it.
        m_against.assign(m_crew.hands(), {});
        for (const Busy& busy : m_draft.busy) {
            if (busy.hands && std::ranges::find(m_given, *busy.hands) == m_given.end())
                put(*busy.hands);
        }
    }

private:
    [[nodiscard]] Time& at(Point point) const { return m_times[static_cast<std::size_t>(point)]; }
    [[nodiscard]] Against& against(Point point) { return m_against[static_cast<std::size_t>(at(point))]; }

    [[nodiscard]] Time slowestEnd(std::size_t place) const { return m_crew.end(place) + m_longer[place]; }

    /// The number that least speaks against. The distances are all that follows, so what keeps to those
    /// between numbers given so far can be gone on with.
    void put(Point point)
    {
        const Point zero = *m_draft.numberZero;
        Time least = -m_distances.between(point, zero);
        Time most = m_distances.between(zero, point);
        for (const Point other : m_given) {
            least = std::max(least, at(other) - m_distances.between(point, other));
            most = std::min(most, at(other) + m_distances.between(other, point));
        }
        m_given.push_back(point);
        const auto first = m_against.begin() + least;
        at(point) = least + static_cast<Time>(std::min_element(first, m_against.begin() + most + 1) - first);
    }

    /// What speaks against each pair of hands.
    void lookAtHands(std::size_t place)
    {
        m_against.assign(m_crew.hands(), {});
        bool glance = false;
        std::vector<bool> applies(m_crew.hands(), false);
        for (const std::size_t other : m_seen) {
            const Point hands = *m_draft.busy[other].hands;
            if (slowestEnd(other) <= m_crew.start(place))
                continue;
            if (m_crew.isMadeWhile(place, other)) {
                glance = true;
                applies[static_cast<std::size_t>(at(hands))] = true;
                continue;
            }
            ++against(hands).close;
            against(hands).clashes += m_crew.clash(place, other) ? 1 : 0;
        }
        for (std::size_t hands = 0; hands < m_crew.hands(); ++hands) {
            m_against[hands].wrong =
                glance ? !applies[hands] || m_crew.isAwayDuring(place, hands) : !m_crew.mayDo(place, hands);
        }
    }

    void lookAtBasins(std::size_t place)
    {
        m_against.assign(m_draft.question->services.front().crew.basins, {});
        for (const std::size_t other : m_seen) {
            if (m_draft.busy[other].basin && m_crew.end(other) > m_crew.start(place))
                ++against(*m_draft.busy[other].basin).clashes;
        }
    }

    const Draft& m_draft;
    const std::vector<Time>& m_longer;
    const CrewAt m_crew;
    std::vector<Time>& m_times;
    const temporal::Distances& m_distances;
    std::vector<Against> m_against{};   ///< By number.
    std::vector<std::size_t> m_seen{};  ///< Tasks that have been given to somebody.
    std::vector<Point> m_given{};       ///< Points whose numbers are given.
};

/// How much longer than usual each task can take, by place.
std::vector<Time> longerThanUsual(const Draft& draft)
{
    std::vector<Time> longer;
    for (const Busy& busy : draft.busy) {
        const auto link = std::ranges::find(draft.links, busy.end.point, &temporal::Uncertain::end);
        longer.push_back(link == draft.links.end() ? 0 : link->most - link->usual);
    }
    return longer;
}

}  // namespace

void placeHands(const Draft& draft, std::vector<Time>& times, const temporal::Distances& distances)
{
    Placing{draft, longerThanUsual(draft), times, distances}.run();
}

std::function<void(std::vector<Time>&, const temporal::Distances&)> handsPlacing(const Draft& draft)
{
    if (!draft.numberZero)
        return {};
    return [&draft, longer = longerThanUsual(draft)](std::vector<Time>& times,
                                                     const temporal::Distances& distances) {
        Placing{draft, longer, times, distances}.run();
    };
}

}  // namespace core::stagger
