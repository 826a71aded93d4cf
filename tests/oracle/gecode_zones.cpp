#include "tests/oracle/gecode_space.h"

// Rules 1 to 5 as constraints.

namespace oracle {

using namespace Gecode;
using core::stagger::TaskId;
using core::stagger::TaskKind;

// Rule 1.
void GecodeSpace::postBowls()
{
    for (int place = 0; place < count(); ++place) {
        if (row(place).id.kind != TaskKind::Apply)
            continue;
        if (mixOf(place) >= 0 && anyOpen(mixOf(place), place))
            rel(*this, end(mixOf(place)) <= m_start[place]);
        if (m_rows->coatOf(row(place)).bowls[m_rows->zoneOf(row(place)).bowl].potLife)
            postPotLife(place);
    }
}

void GecodeSpace::postPotLife(int apply)
{
    const std::size_t bowl = m_rows->zoneOf(row(apply)).bowl;
    const core::service::Bowl& data = m_rows->coatOf(row(apply)).bowls[bowl];
    const Units potLife = m_rows->units(*data.potLife);
    if (mixOf(apply) >= 0) {
        if (anyOpen(mixOf(apply), apply))
            rel(*this, end(apply) - end(mixOf(apply)) <= potLife);
        return;
    }
    if (data.mix > Seconds{0})
        return;  // Nobody saw it being mixed: there is nothing to count from.
    for (const int other : rowsOf(row(apply).id.service, row(apply).id.coat, TaskKind::Apply))
        if (m_rows->zoneOf(row(other)).bowl == bowl && anyOpen(apply, other))
            rel(*this, end(apply) - m_start[other] <= potLife);
}

// Rule 2.
void GecodeSpace::postWindows()
{
    for (int place = 0; place < count(); ++place) {
        if (row(place).id.kind != TaskKind::Apply)
            continue;
        const core::service::Zone& zone = m_rows->zoneOf(row(place));
        postHarm(place);
        if (!anyOpen(place, rinseOf(place)))
            continue;
        rel(*this, end(place) <= m_start[rinseOf(place)]);
        rel(*this, water(place) - clockStart(place) >= m_rows->units(zone.develop.least));
        rel(*this, water(place) - clockStart(place) <= m_rows->units(zone.develop.most));
        if (zone.firstStrandMost)
            rel(*this, water(place) - m_start[place] <= m_rows->units(*zone.firstStrandMost));
        if (zone.lastStrandLeast)
            rel(*this, water(place) - end(place) >= m_rows->units(*zone.lastStrandLeast));
    }
}

void GecodeSpace::postHarm(int apply)
{
    const core::service::Zone& zone = m_rows->zoneOf(row(apply));
    const Units target = m_rows->units(zone.develop.target);
    const bool bound = anyOpen(apply, rinseOf(apply));
    const Units mostOver = bound ? m_rows->units(zone.develop.most) - target : m_rows->horizon();
    const IntVar under{*this, 0, bound ? target - m_rows->units(zone.develop.least) : target};
    const IntVar over{*this, 0, mostOver};
    rel(*this, water(apply) - clockStart(apply) == target - under + over);
    rel(*this, (under == 0) || (over == 0));
    m_posting->deviations << under << over;
    const int perUnder = static_cast<int>(zone.under.hundredths);
    const int perOver = static_cast<int>(zone.over.hundredths);
    m_posting->harms << expr(*this, perUnder * under + perOver * over);
}

// Rule 3.
void GecodeSpace::postLooks()
{
    for (int place = 0; place < count(); ++place) {
        if (!isLook(place))
            continue;
        const int apply = find(row(place), TaskKind::Apply, row(place).id.item);
        if (isOpen(place))
            postDue(place, apply);
        else if (apply >= 0 && isOpen(rinseOf(apply)))
            rel(*this, end(place) <= water(apply));
        if (row(place).state == core::stagger::TaskState::Running)
            postGoesOnWhile(place);
    }
}

// A look that began this very second may be made by whoever begins to apply in it.
void GecodeSpace::postGoesOnWhile(int look)
{
    for (const int apply : rowsOf(row(look).id.service, row(look).id.coat, TaskKind::Apply)) {
        if (!isOpen(apply))
            continue;
        const BoolVar started = expr(*this, m_start[apply] <= m_start[look]);
        m_posting->madeWhile[{look, apply}] =
            expr(*this, started && sameHands(std::min(look, apply), std::max(look, apply)));
    }
}

void GecodeSpace::postDue(int look, int apply)
{
    const core::service::Zone& zone = m_rows->zoneOf(row(look));
    const Units moment = m_rows->units(zone.looks->moments()[row(look).id.part]);
    const Units tolerance = m_rows->units(zone.looks->tolerance);
    const bool first = zone.clock == core::service::ClockStart::FirstContact;
    if (first && moment + tolerance < row(apply).length) {
        rel(*this, m_done[look], IRT_EQ, 0);
        return;
    }
    const LinIntExpr development = water(apply) - clockStart(apply);
    rel(*this, m_done[look] == (development >= moment + row(look).length));
    m_posting->choices << m_done[look];
    rel(*this, m_done[look] >> (m_start[look] - clockStart(apply) >= moment - tolerance));
    rel(*this, m_done[look] >> (m_start[look] - clockStart(apply) <= moment + tolerance));
    rel(*this, m_done[look] >> (m_start[look] >= end(apply)));
    rel(*this, m_done[look] >> (end(look) <= water(apply)));
    postMadeWhile(look, apply);
}

// Rule 6 for looks: whoever applies on the head just then makes it.
void GecodeSpace::postMadeWhile(int look, int apply)
{
    BoolVarArgs during;
    BoolVarArgs made;
    for (const int other : rowsOf(row(look).id.service, row(look).id.coat, TaskKind::Apply)) {
        if (other == apply)
            continue;
        const BoolVar started = expr(*this, m_start[other] <= m_start[look]);
        const BoolVar going = expr(*this, m_start[look] < end(other));
        const BoolVar underWay = expr(*this, m_done[look] && started && going);
        const BoolVar madeWhile =
            expr(*this, underWay && sameHands(std::min(look, other), std::max(look, other)));
        m_posting->choices << started << going;
        m_posting->started[{look, other}] = started;
        m_posting->madeWhile[{look, other}] = madeWhile;
        during << underWay;
        made << madeWhile;
    }
    const BoolVar anyDuring{*this, 0, 1};
    m_posting->glances[look] = anyDuring;
    rel(*this, BOT_OR, during, anyDuring);
    rel(*this, BOT_OR, made, anyDuring);
    for (std::size_t hands = 0; hands < m_rows->crew().hands.size(); ++hands)
        if (!m_rows->crew().hands[hands].does(core::service::Work::Look))
            rel(*this, !m_done[look] || anyDuring || (m_hands[look] != static_cast<int>(hands)));
}

// Rule 4.
void GecodeSpace::postLateJobs()
{
    for (int place = 0; place < count(); ++place) {
        if (row(place).id.kind != TaskKind::Late)
            continue;
        const int apply = find(row(place), TaskKind::Apply, row(place).id.item);
        if (apply < 0 || !anyOpen(place, rinseOf(apply)))
            continue;
        const core::service::LateJob& job = m_rows->zoneOf(row(place)).late[row(place).id.part];
        const Units before = m_rows->units(job.before);
        const Units tolerance = m_rows->units(job.tolerance);
        rel(*this, water(apply) - m_start[place] <= before + tolerance);
        rel(*this, water(apply) - m_start[place] >= before - tolerance);
        if (isOpen(place))
            rel(*this, m_start[place] >= end(apply));
        rel(*this, end(place) <= water(apply));
    }
}

// Rule 5.
void GecodeSpace::postAfter()
{
    for (int place = 0; place < count(); ++place) {
        if (row(place).id.kind != TaskKind::Apply)
            continue;
        for (const core::service::After& after : m_rows->zoneOf(row(place)).after) {
            const int earlier = find(row(place), TaskKind::Apply, after.zone);
            if (earlier < 0 || !anyOpen(earlier, place))
                continue;
            rel(*this, m_start[place] >= end(earlier));
            if (after.longestGap)
                rel(*this, m_start[place] - end(earlier) <= m_rows->units(*after.longestGap));
        }
    }
}

}  // namespace oracle
