#include "core/stagger/drafter.h"

#include <algorithm>

namespace core::stagger {

/// Where hands differ in what follows from them, which pair does a task is a decision
/// like its start: a number from 0, at a point of its own.
void Drafter::nameHands()
{
    const service::Crew& crew = m_question.services.front().crew;
    const auto rinses = static_cast<std::size_t>(std::ranges::count_if(m_draft.busy, &Busy::needsBasin));
    const bool basins = crew.basins > 1 && rinses > crew.basins;
    const bool matters = !m_draft.links.empty() || m_pins.keepPoints;
    if (!matters || (crew.hands.size() == 1 && !basins))
        return;
    const Point zero = m_draft.problem.points++;
    const auto numberPoint = [this, zero](std::size_t count) {
        const Point point = m_draft.problem.points++;
        m_draft.problem.lags.push_back({point, zero, 0});
        m_draft.problem.lags.push_back({zero, point, static_cast<Time>(count) - 1});
        return point;
    };
    m_draft.numberZero = zero;
    m_draft.problem.placedFrom = zero;
    for (Busy& busy : m_draft.busy) {
        if (crew.hands.size() > 1)
            busy.hands = numberPoint(crew.hands.size());
        if (basins && busy.needsBasin)
            busy.basin = numberPoint(crew.basins);
    }
}

/// What can be dropped in looking for a reason, besides limits: the crew.
void Drafter::registerCrewDemands()
{
    const service::Crew& crew = m_question.services.front().crew;
    const auto add = [this](DemandKind kind, Sentence what, std::size_t place = 0) {
        demand(kind, std::move(what), {}, 0, place);
    };
    add(DemandKind::Hands,
        crew.hands.size() == 1 ? Sentence::worded("one pair of hands")
                               : Sentence::worded("%1 pairs of hands", crew.hands.size()));
    add(DemandKind::Basins,
        crew.basins == 1 ? Sentence::worded("one basin") : Sentence::worded("%1 basins", crew.basins));
    add(DemandKind::HeadAtBasin, Sentence::worded("nothing else is done to a head at the basin"));
    for (std::size_t hands = 0; hands < crew.hands.size(); ++hands) {
        for (std::size_t place = 0; place < crew.hands[hands].away.size(); ++place)
            add(DemandKind::Away, Sentence::worded("%1 is away", crew.hands[hands].name),
                hands * 1000 + place);
    }
}

/// The crew is taken by heads that are not planned here.
void Drafter::writeElsewhere()
{
    for (const PlannedTask& task : m_pins.elsewhere) {
        addOpen(task.id, {temporal::origin, timeOf(task.start)},
                static_cast<Time>((task.end - task.start).count()));
        m_draft.busy.back().state = task.state;
        m_draft.busy.back().elsewhere = true;
    }
}

}  // namespace core::stagger
