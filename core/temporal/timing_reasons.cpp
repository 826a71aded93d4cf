#include "core/temporal/timing.h"

#include <algorithm>
#include <functional>

/// Why the least price is what it is, and why a point is no earlier.
namespace core::temporal {
namespace {

constexpr int nothing = -1;

Price inUnits(Price flow, Price unit)
{
    return (flow + unit / 2) / unit;
}

}  // namespace

void Timing::appendReason(Step step, std::vector<Literal>& literals) const
{
    const Literal reason = m_arcs[static_cast<std::size_t>(step >> 1)].reason;
    if (!(reason == noLiteral))
        literals.push_back(reason);
}

/// The circulation is a sum of circulations, one a level, each scaled by its
/// unit; what the lower ones add is small against a unit, so that rounding finds
/// the share of the levels from `unit` up, which is a circulation of its own.
Price Timing::bound(Price unit) const
{
    Price bound = 0;
    for (std::size_t arc = 0; arc < m_arcs.size(); ++arc)
        bound -= inUnits(m_flows[arc], unit) * m_arcs[arc].length;
    return bound;
}

/// The circulation of `bound(unit)` taken apart into cycles. It is optimal, so that none of them
/// is worth less than nothing, and each is a circulation of its own.
std::vector<Timing::Round> Timing::roundsOf(Price unit) const
{
    std::vector<Price> flows(m_arcs.size());
    std::vector<std::vector<int>> leaving(size());
    for (std::size_t arc = 0; arc < m_arcs.size(); ++arc) {
        flows[arc] = inUnits(m_flows[arc], unit);
        if (flows[arc] > 0)
            leaving[static_cast<std::size_t>(m_arcs[arc].from)].push_back(static_cast<int>(arc));
    }
    const auto next = [&](Point point) {
        std::vector<int>& arcs = leaving[static_cast<std::size_t>(point)];
        while (!arcs.empty() && flows[static_cast<std::size_t>(arcs.back())] == 0)
            arcs.pop_back();
        return arcs.empty() ? nothing : arcs.back();
    };
    std::vector<Round> rounds;
    std::vector<int> place(size(), nothing);  // Where on the way a point was left.
    std::vector<int> way;
    for (Point first = 0; first < static_cast<Point>(size());) {
        const Point here = way.empty() ? first : m_arcs[static_cast<std::size_t>(way.back())].to;
        int& met = place[static_cast<std::size_t>(here)];
        if (met == nothing) {
            const int arc = next(here);
            if (arc == nothing) {
                ++first;  // What flows into a point flows out of it: the way is empty.
                continue;
            }
            met = static_cast<int>(way.size());
            way.push_back(arc);
            continue;
        }
        Round round{.arcs = {way.begin() + met, way.end()}, .worth = 0};
        way.resize(static_cast<std::size_t>(met));
        Price least = flows[static_cast<std::size_t>(round.arcs.front())];
        for (const int arc : round.arcs)
            least = std::min(least, flows[static_cast<std::size_t>(arc)]);
        for (const int arc : round.arcs) {
            flows[static_cast<std::size_t>(arc)] -= least;
            round.worth -= least * m_arcs[static_cast<std::size_t>(arc)].length;
            place[static_cast<std::size_t>(m_arcs[static_cast<std::size_t>(arc)].from)] = nothing;
        }
        rounds.push_back(std::move(round));
    }
    return rounds;
}

void Timing::explainPrice(std::vector<Literal>& literals) const
{
    if (m_failed) {
        for (const Step step : m_cycle)
            appendReason(step, literals);
        return;
    }
    for (std::size_t arc = 0; arc < m_arcs.size(); ++arc) {
        if (m_flows[arc] > 0)
            appendReason(static_cast<Step>(2 * arc), literals);
    }
}

void Timing::explainMoreThan(Price above, Price unit, std::vector<Literal>& literals) const
{
    // Enough is enough: the fewer literals, the more the search learns from them.
    std::vector<Round> rounds = roundsOf(unit);
    std::ranges::stable_sort(rounds, std::greater{}, &Round::worth);
    Price spare = -above - 1;
    for (const Round& round : rounds)
        spare += round.worth;
    for (std::size_t place = rounds.size(); place-- > 0;) {
        if (rounds[place].worth <= spare) {
            spare -= rounds[place].worth;
            continue;
        }
        for (const int arc : rounds[place].arcs)
            appendReason(2 * arc, literals);
    }
}

void Timing::explainEarliest(Point point, std::vector<Literal>& literals) const
{
    for (Step step = m_towardsOrigin[static_cast<std::size_t>(point)]; step != noStep;
         step = m_towardsOrigin[static_cast<std::size_t>(head(step))])
        appendReason(step, literals);
}

}  // namespace core::temporal
