#include "tests/oracle/gecode_space.h"

#include "tests/oracle/facts.h"

namespace oracle {

using namespace Gecode;
using core::stagger::TaskId;
using core::stagger::TaskKind;

GecodeSpace::GecodeSpace(const Rows& rows, GecodeOptions::First first)
    : m_rows{&rows}
    , m_start{*this, static_cast<int>(rows.rows().size()), 0, rows.horizon()}
    , m_hands{*this, static_cast<int>(rows.rows().size()), 0, static_cast<int>(rows.crew().hands.size()) - 1}
    , m_done{*this, static_cast<int>(rows.rows().size()), 0, 1}
    , m_aims{*this, 3 + static_cast<int>(rows.rows().size()), 0, Int::Limits::max}
{
    m_posting = std::make_unique<Posting>();
    for (int place = 0; place < count(); ++place)
        if (!isLook(place) || !isOpen(place))
            rel(*this, m_done[place], IRT_EQ, 1);
    postFacts();
    postBounds();
    postBowls();
    postWindows();
    postLooks();
    postLateJobs();
    postAfter();
    postKinds();
    postAway();
    postOneAtATime();
    postBasins();
    postCoats();
    postAims();
    postPushed();
    if (rows.seeksGive()) {
        postBasinNumbers();
        postGaps();
    }
    postBranching(first);
}

GecodeSpace::GecodeSpace(GecodeSpace& other)
    : Space{other}
    , m_rows{other.m_rows}
    , m_stage{other.m_stage}
{
    m_start.update(*this, other.m_start);
    m_hands.update(*this, other.m_hands);
    m_done.update(*this, other.m_done);
    m_aims.update(*this, other.m_aims);
    m_basins.update(*this, other.m_basins);
    m_gapEnds.update(*this, other.m_gapEnds);
}

void GecodeSpace::constrain(const Space& best)
{
    const auto& other = dynamic_cast<const GecodeSpace&>(best);
    rel(*this, m_aims[m_stage], IRT_LE, other.m_aims[m_stage].val());
}

BoolVar GecodeSpace::before(int first, int second)
{
    const auto [entry, isNew] = m_posting->before.try_emplace({first, second});
    if (isNew) {
        entry->second = expr(*this, end(first) <= m_start[second]);
        m_posting->choices << entry->second;
    }
    return entry->second;
}

BoolVar GecodeSpace::sameHands(int a, int b)
{
    const auto [entry, isNew] = m_posting->same.try_emplace({a, b});
    if (isNew)
        entry->second = expr(*this, m_hands[a] == m_hands[b]);
    return entry->second;
}

LinIntExpr GecodeSpace::end(int place) const
{
    return m_start[place] + row(place).length;
}

int GecodeSpace::find(const Row& beside, TaskKind kind, std::size_t item) const
{
    return m_rows->find({.service = beside.id.service, .coat = beside.id.coat, .kind = kind, .item = item});
}

int GecodeSpace::rinseOf(int apply) const
{
    return m_rows->find(oracle::rinseOf(m_rows->question(), row(apply).id));
}

int GecodeSpace::mixOf(int apply) const
{
    return find(row(apply), TaskKind::Mix, m_rows->zoneOf(row(apply)).bowl);
}

LinIntExpr GecodeSpace::clockStart(int apply) const
{
    const bool first = m_rows->zoneOf(row(apply)).clock == core::service::ClockStart::FirstContact;
    return m_start[apply] + (first ? 0 : row(apply).length);
}

LinIntExpr GecodeSpace::water(int apply) const
{
    const int rinse = rinseOf(apply);
    const bool alone = row(rinse).id.kind == TaskKind::RinseAlone;
    return m_start[rinse] + (alone ? 0 : m_rows->units(m_rows->zoneOf(row(apply)).reach));
}

std::vector<int> GecodeSpace::rowsOf(std::size_t head, std::size_t coat, TaskKind kind) const
{
    std::vector<int> found;
    for (int place = 0; place < count(); ++place)
        if (row(place).id.service == head && row(place).id.coat == coat && row(place).id.kind == kind)
            found.push_back(place);
    return found;
}

// What has happened stands, and those who did it are free again.
void GecodeSpace::postFacts()
{
    for (int place = 0; place < count(); ++place)
        if (!isOpen(place))
            rel(*this, m_start[place], IRT_EQ, row(place).begun);
}

// Rules 9 and 10, and where the basin is booked.
void GecodeSpace::postBounds()
{
    for (int place = 0; place < count(); ++place) {
        if (!isOpen(place))
            continue;
        const TaskId& id = row(place).id;
        const core::service::Coat& coat = m_rows->coatOf(row(place));
        const Units unattended = id.kind == TaskKind::Dry ? m_rows->units(coat.dryUnattended) : 0;
        if (const auto from = m_rows->notBefore(id.service))
            rel(*this, m_done[place] >> (m_start[place] >= m_rows->unitsAt(*from)));
        if (const auto until = m_rows->aimedEnd(id.service))
            rel(*this, m_done[place] >> (end(place) + unattended <= m_rows->unitsAt(*until)));
        if (id.kind == TaskKind::Apply) {
            if (const auto from = m_rows->zoneOf(row(place)).notBefore)
                rel(*this, m_start[place] >= m_rows->unitsAt(*from));
        }
        if (id.kind != TaskKind::Rinse)
            continue;
        if (const auto from = coat.groups[id.item].waterEarliest)
            rel(*this, m_start[place] >= m_rows->unitsAt(*from));
        if (const auto until = coat.groups[id.item].waterLatest)
            rel(*this, m_start[place] <= m_rows->unitsAt(*until));
    }
}

// Where only one bound ties the plan to the clock, a best plan touches it.
void GecodeSpace::postPushed()
{
    if (!m_rows->canBePushed())
        return;
    const std::size_t lastCoat = m_rows->question().services[0].coats.size() - 1;
    if (m_rows->startsLate(0)) {
        const IntVar over = m_posting->coatOver.at({0, lastCoat});
        const Units end = m_rows->unitsAt(*m_rows->aimedEnd(0));
        // Applications that take longer than usual push it there.
        rel(*this, over <= end);
        rel(*this, over >= end - m_rows->units(m_rows->uncertainty()));
        return;
    }
    IntVarArgs starts;
    for (int place = 0; place < count(); ++place)
        if (row(place).id.kind != TaskKind::Look)
            starts << m_start[place];
    rel(*this, Gecode::min(starts) == m_rows->unitsAt(*m_rows->notBefore(0)));
}

IntVar GecodeSpace::waste(std::size_t head)
{
    const std::size_t lastCoat = m_rows->question().services[head].coats.size() - 1;
    if (!m_rows->startsLate(head)) {
        // Where something has happened all of it may be over before now: any origin will do.
        const Units from = m_rows->hasFacts() ? 0 : m_rows->unitsAt(*m_rows->notBefore(head));
        return expr(*this, m_posting->coatOver.at({head, lastCoat}) - from);
    }
    IntVarArgs starts;
    for (int place = 0; place < count(); ++place)
        if (row(place).id.service == head && row(place).id.kind != TaskKind::Look)
            starts << m_start[place];
    const IntVar first = expr(*this, Gecode::min(starts));
    return expr(*this, m_rows->unitsAt(*m_rows->aimedEnd(head)) - first);
}

// Levels 2 to 5.
void GecodeSpace::postAims()
{
    linear(*this, m_posting->harms, IRT_EQ, m_aims[0]);
    IntVarArgs wastes;
    for (std::size_t head = 0; head < m_rows->question().services.size(); ++head)
        wastes << waste(head);
    linear(*this, wastes, IRT_EQ, m_aims[1]);
    LinIntExpr staleness{0};
    for (int place = 0; place < count(); ++place)
        if (row(place).id.kind == TaskKind::Apply && mixOf(place) >= 0)
            staleness = staleness + m_start[place] - end(mixOf(place));
    rel(*this, m_aims[2] == staleness);
    for (int place = 0; place < count(); ++place) {
        rel(*this, m_done[place] >> (m_aims[3 + place] == m_start[place]));
        rel(*this, (!m_done[place]) >> (m_aims[3 + place] == m_rows->horizon() + 1));
        rel(*this, (!m_done[place]) >> (m_start[place] == 0));
        rel(*this, (!m_done[place]) >> (m_hands[place] == 0));
    }
}

void GecodeSpace::postBranching(GecodeOptions::First first)
{
    if (first == GecodeOptions::First::Deviation)
        branch(*this, m_posting->deviations, INT_VAR_AFC_SIZE_MAX(0.98), INT_VAL_MIN());
    branch(*this, m_posting->choices, BOOL_VAR_AFC_MAX(0.98), BOOL_VAL_MAX());
    branch(*this, m_posting->deviations, INT_VAR_AFC_SIZE_MAX(0.98), INT_VAL_MIN());
    branch(*this, m_hands, INT_VAR_SIZE_MIN(), INT_VAL_MIN());
    branch(*this, m_aims[1], INT_VAL_MIN());
    branch(*this, m_aims[2], INT_VAL_MIN());
    branch(*this, m_start, INT_VAR_SIZE_MIN(), INT_VAL_MIN());
    branch(*this, m_done, BOOL_VAR_NONE(), BOOL_VAL_MIN());
    branch(*this, m_basins, INT_VAR_NONE(), INT_VAL_MIN());
    branch(*this, m_gapEnds, INT_VAR_NONE(), INT_VAL_MIN());
}

}  // namespace oracle
