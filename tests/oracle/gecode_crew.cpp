#include "tests/oracle/at_work.h"
#include "tests/oracle/facts.h"
#include "tests/oracle/gecode_space.h"

// Rules 6 to 8 as constraints.

namespace oracle {

using namespace Gecode;
using core::stagger::TaskId;
using core::stagger::TaskKind;

// Who does what. For looks that depends on whether somebody applies just then.
void GecodeSpace::postKinds()
{
    const auto& crew = m_rows->crew().hands;
    for (int place = 0; place < count(); ++place) {
        if (!takesHands(place)) {
            rel(*this, m_hands[place], IRT_EQ, 0);
            continue;
        }
        if (isLook(place) || !isOpen(place))
            continue;
        for (std::size_t hands = 0; hands < crew.size(); ++hands)
            if (!crew[hands].does(core::stagger::workOf(row(place).id.kind)))
                rel(*this, m_hands[place], IRT_NQ, static_cast<int>(hands));
    }
    const auto isLikeFirst = [&](const core::service::Hands& hands) {
        return hands.away == crew.front().away && hands.kinds == crew.front().kinds;
    };
    if (crew.size() > 1 && std::all_of(crew.begin(), crew.end(), isLikeFirst))
        precede(*this, m_hands, IntArgs::create(static_cast<int>(crew.size()), 0));
}

void GecodeSpace::postAway()
{
    for (int place = 0; place < count(); ++place) {
        if (!takesHands(place) || !isOpen(place))
            continue;
        for (std::size_t hands = 0; hands < m_rows->crew().hands.size(); ++hands)
            for (const core::measure::Interval& away : m_rows->crew().hands[hands].away) {
                const BoolVar over = expr(*this, end(place) <= m_rows->unitsAt(away.from));
                const BoolVar back = expr(*this, m_start[place] >= m_rows->unitsAt(away.until));
                const BoolVar others = expr(*this, m_hands[place] != static_cast<int>(hands));
                rel(*this, over || back || others || !m_done[place]);
                m_posting->choices << over << back;
            }
    }
}

void GecodeSpace::postPair(int a, int b)
{
    const bool looks = isLook(a) && isLook(b);
    if ((looks && row(a).id.service == row(b).id.service) || !anyOpen(a, b))
        return;
    BoolExpr free = before(a, b) || before(b, a) || !m_done[a] || !m_done[b];
    if (m_rows->crew().hands.size() > 1)
        free = free || !sameHands(a, b);
    for (const auto& pair : {std::pair{a, b}, std::pair{b, a}})
        if (const auto made = m_posting->madeWhile.find(pair); made != m_posting->madeWhile.end())
            free = free || made->second;
    rel(*this, free);
}

void GecodeSpace::postOneAtATime()
{
    IntVarArgs starts;
    IntArgs lengths;
    IntArgs uses;
    for (int a = 0; a < count(); ++a) {
        if (!takesHands(a))
            continue;
        for (int b = a + 1; b < count(); ++b)
            if (takesHands(b))
                postPair(a, b);
        if (isLook(a) || !isOpen(a))
            continue;
        starts << m_start[a];
        lengths << row(a).length;
        uses << 1;
    }
    // Follows from the pairs, and is seen sooner so.
    cumulative(*this, static_cast<int>(m_rows->crew().hands.size()), starts, lengths, uses);
    postWhoIsAtWork();
}

/// A look is made by those who apply, as they begin to in the second in which it did.
BoolExpr GecodeSpace::goesOnWhile(int look)
{
    BoolExpr any{BoolVar{*this, 0, 0}};
    for (const auto& [pair, made] : m_posting->madeWhile)
        if (pair.first == look)
            any = any || made;
    return any;
}

void GecodeSpace::postWhoIsAtWork()
{
    const AtWork atWork{*m_rows};
    const int crew = static_cast<int>(m_rows->crew().hands.size());
    for (const int place : atWork.running()) {
        for (int hands = 0; hands < crew; ++hands)
            if (!atWork.may(place, hands))
                rel(*this, goesOnWhile(place) || (m_hands[place] != hands));
        for (const int other : atWork.running())
            if (place < other && atWork.differ(place, other))
                rel(*this, m_hands[place], IRT_NQ, m_hands[other]);
        BoolVarArgs byOneOf;
        for (const int apply : atWork.madeWithin(place))
            byOneOf << sameHands(std::min(place, apply), std::max(place, apply));
        if (byOneOf.size() > 0)
            rel(*this, BOT_OR, byOneOf, 1);
    }
}

// Rule 7.
void GecodeSpace::postBasins()
{
    IntVarArgs starts;
    IntArgs lengths;
    IntArgs uses;
    for (int rinse = 0; rinse < count(); ++rinse) {
        if (!isRinse(row(rinse).id))
            continue;
        starts << m_start[rinse];
        lengths << row(rinse).length;
        uses << 1;
        if (m_rows->hasFacts() && isOpen(rinse))
            postBasinFree(rinse);
        if (m_rows->question().services[row(rinse).id.service].head.piecesComeApart)
            continue;
        for (int other = 0; other < count(); ++other) {
            const TaskId& id = row(other).id;
            const bool sameCoat = id.service == row(rinse).id.service && id.coat == row(rinse).id.coat;
            if (sameCoat && other != rinse && id.kind != TaskKind::Mix && anyOpen(rinse, other))
                rel(*this, before(rinse, other) || before(other, rinse) || !m_done[other]);
        }
    }
    if (!m_rows->hasFacts())
        cumulative(*this, static_cast<int>(m_rows->crew().basins), starts, lengths, uses);
}

/// When it starts, not all basins are taken; more rinses may be going on than there are basins.
void GecodeSpace::postBasinFree(int rinse)
{
    BoolVarArgs others;
    for (int other = 0; other < count(); ++other)
        if (other != rinse && isRinse(row(other).id) && row(other).state != core::stagger::TaskState::Done)
            others << expr(*this, m_start[other] <= m_start[rinse] && m_start[rinse] < end(other));
    linear(*this, others, IRT_LQ, static_cast<int>(m_rows->crew().basins) - 1);
}

// Rule 8.
void GecodeSpace::postCoats()
{
    const auto& services = m_rows->question().services;
    for (std::size_t head = 0; head < services.size(); ++head)
        for (std::size_t coat = 0; coat < services[head].coats.size(); ++coat)
            postCoat(head, coat);
}

void GecodeSpace::postCoat(std::size_t head, std::size_t coat)
{
    const core::service::Coat& data = m_rows->question().services[head].coats[coat];
    IntVarArgs ends;
    for (const TaskKind kind : {TaskKind::Rinse, TaskKind::RinseAlone})
        for (const int rinse : rowsOf(head, coat, kind))
            ends << expr(*this, end(rinse));
    IntVar over = expr(*this, Gecode::max(ends));
    for (const int dry : rowsOf(head, coat, TaskKind::Dry)) {
        if (isOpen(dry))
            rel(*this, m_start[dry] >= over);
        over = expr(*this, end(dry) + m_rows->units(data.dryUnattended));
    }
    for (const int assess : rowsOf(head, coat, TaskKind::Assess)) {
        if (isOpen(assess))
            rel(*this, m_start[assess] >= over);
        over = expr(*this, end(assess));
    }
    m_posting->coatOver[{head, coat}] = over;
    if (coat + 1 < m_rows->question().services[head].coats.size())
        postFinish(head, coat, over);
}

/// What comes after a coat that is over.
void GecodeSpace::postFinish(std::size_t head, std::size_t coat, const IntVar& over)
{
    const core::service::Coat& data = m_rows->question().services[head].coats[coat];
    for (int place = 0; place < count(); ++place)
        if (row(place).id.service == head && row(place).id.coat == coat + 1 && isOpen(place))
            rel(*this, m_done[place] >> (m_start[place] >= over));
    if (m_rows->isBegun(head, coat + 1))
        return;  // Its first application has happened.
    IntVarArgs starts;
    for (const int apply : rowsOf(head, coat + 1, TaskKind::Apply))
        starts << m_start[apply];
    const IntVar first = expr(*this, Gecode::min(starts));
    if (data.gapLeast)
        rel(*this, first - over >= m_rows->units(*data.gapLeast));
    if (data.gapMost)
        rel(*this, first - over <= m_rows->units(*data.gapMost));
}

}  // namespace oracle
