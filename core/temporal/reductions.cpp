#include "core/temporal/reductions.h"

#include <algorithm>

namespace core::temporal {

std::optional<Objection> Reductions::close(const UncertainNetwork& network)
{
    m_fixed = false;
    m_most = SIZE_MAX;
    begin(network);
    if (!m_lags.findPotential())
        objectToCycle();
    run();
    if (m_objections.empty())
        return std::nullopt;
    return m_objections.front();
}

std::vector<Objection> Reductions::closeAround(const UncertainNetwork& network,
                                               const std::vector<Time>& times, std::size_t most)
{
    m_fixed = true;
    m_most = most;
    begin(network);
    m_lags.setPotential(times);
    run();
    return m_objections;
}

void Reductions::begin(const UncertainNetwork& network)
{
    m_network = &network;
    m_failed = false;
    m_objections.clear();
    m_lags.reset(network);
    m_reasons.reset(network.lags.size(), network.links.size());
    const auto points = static_cast<std::size_t>(network.points);
    m_endOf.assign(points, -1);
    m_starts.assign(points, 0);
    m_tables.resize(2 * network.links.size());
    for (Table& table : m_tables) {
        table.length.assign(points, noWay);
        table.via.assign(points, {});
        table.pending.clear();
    }
    for (int index = 0; index < static_cast<int>(network.links.size()); ++index) {
        const Uncertain& of = link(index);
        if (of.least == of.most)
            continue;  // Nothing turns out: its lags say all.
        m_endOf[static_cast<std::size_t>(of.end)] = index;
        m_starts[static_cast<std::size_t>(of.start)] = 1;
        for (const Kind kind : {Kind::Waits, Kind::Reach}) {
            Table& rooted = table(kind, index);
            rooted.length[static_cast<std::size_t>(of.end)] = kind == Kind::Waits ? -Length{of.most} : 0;
            rooted.pending.push_back(of.end);
        }
    }
}

void Reductions::run()
{
    const int links = static_cast<int>(m_network->links.size());
    // What is drawn from what is drawn nests no deeper than there are links, unless nothing wins (Morris
    // 2006).
    int rounds = 2 * links + 2;
    bool again = true;
    while (again && !m_failed) {
        again = false;
        if (--rounds < 0)
            objectToEverything();
        for (int index = links - 1; index >= 0 && !m_failed; --index) {
            if (!table(Kind::Reach, index).pending.empty()) {
                spreadReach(index);
                drawFromReach(index);
                again = true;
            }
            if (!m_failed && !table(Kind::Waits, index).pending.empty()) {
                spreadWaits(index);
                drawFromWaits(index);
                again = true;
            }
        }
    }
}

std::optional<Length> Reductions::wait(int index, Point point) const
{
    const Length length = table(Kind::Waits, index).length[static_cast<std::size_t>(point)];
    if (point == link(index).end || !goesOn(Kind::Waits, index, point, length))
        return std::nullopt;
    return -length;
}

void Reductions::drawFromWaits(int index)
{
    for (const Point point : m_touched) {
        if (m_failed)
            return;
        const Length length = table(Kind::Waits, index).length[static_cast<std::size_t>(point)];
        if (point == link(index).start) {
            if (length >= 0)
                continue;
            collectChain(Kind::Waits, index, point);  // The link's start would wait for itself.
            object(std::nullopt);
        } else if (length < -link(index).least) {
            drawWait(index, point);
        } else {
            drawBound(index, point);
        }
    }
}

/// A wait that the end may lift. In a run of usual lengths it has to last until
/// then at most. What crosses a link says more about its start than about its end.
void Reductions::drawWait(int index, Point point)
{
    const Uncertain& of = link(index);
    const Length length = table(Kind::Waits, index).length[static_cast<std::size_t>(point)];
    const Lag asUsual{point, of.start, static_cast<Time>(std::max<Length>(length, -of.usual))};
    const bool isEnd = m_endOf[static_cast<std::size_t>(point)] >= 0;
    if (m_fixed && !isEnd && breaks(asUsual) && !followsFromNext(index, point, asUsual.most))
        draw(asUsual, Kind::Waits, index, point);
    // Whatever happens it waits for the least. Only for starts of links can that be news.
    const Lag least{point, of.start, -of.least};
    if (m_starts[static_cast<std::size_t>(point)] != 0 && !(m_fixed && breaks(least)))
        draw(least, Kind::Waits, index, point);
}

/// No longer than the end takes at least to come: that is a lag like any other (label removal).
void Reductions::drawBound(int index, Point point)
{
    const Length length = table(Kind::Waits, index).length[static_cast<std::size_t>(point)];
    const Lag bound{point, link(index).start, static_cast<Time>(length)};
    const int ended = m_endOf[static_cast<std::size_t>(point)];
    const bool objects = m_fixed && breaks(bound);
    if (objects && ended >= 0 && length < 0) {
        // The lower case says more: what the end keeps, it must keep when it comes the earliest.
        collectChain(Kind::Waits, index, point);
        m_reasons.addLink(ended);
        object(Lag{link(ended).start, bound.to, bound.most + link(ended).least});
    } else if (!objects || !followsFromNext(index, point, length)) {
        draw(bound, Kind::Waits, index, point);
    }
}

/// Whether a run that keeps what the table says of the next point of the way, and the lag to there, keeps
/// `bound`.
bool Reductions::followsFromNext(int index, Point point, Length bound) const
{
    const Table& waits = table(Kind::Waits, index);
    const Via& via = waits.via[static_cast<std::size_t>(point)];
    if (via.edge < 0)
        return false;
    const DerivedLags::Edge& edge = m_lags.edge(via.edge);
    const Length next = waits.length[static_cast<std::size_t>(edge.to)];
    return edge.most + std::max<Length>(next, -link(index).usual) <= bound;
}

/// The lower case: what must come before the end must come before the earliest end.
void Reductions::drawFromReach(int index)
{
    const Uncertain& of = link(index);
    for (const Point point : m_touched) {
        if (m_failed)
            return;
        const Length length = table(Kind::Reach, index).length[static_cast<std::size_t>(point)];
        if (length >= 0)
            continue;
        if (point != of.start) {
            draw({of.start, point, static_cast<Time>(of.least + length)}, Kind::Reach, index, point);
        } else if (of.least + length < 0) {
            collectChain(Kind::Reach, index, point);
            object(std::nullopt);
        }
    }
}

void Reductions::draw(const Lag& lag, Kind kind, int index, Point point)
{
    if (m_lags.says(lag.from, lag.to, lag.most))
        return;
    collectChain(kind, index, point);
    if (m_fixed && breaks(lag))
        object(lag);
    else
        add(lag);
}

void Reductions::add(const Lag& lag)
{
    const int edge = m_lags.derive(lag.from, lag.to, lag.most, m_reasons.codes());
    if (!m_fixed && !m_lags.mendPotential(edge))
        objectToCycle();
    else
        tellTables(edge);
}

/// The tables that the new edge makes shorter have to be gone over again, from there.
void Reductions::tellTables(int added)
{
    const DerivedLags::Edge& edge = m_lags.edge(added);
    const auto tell = [&](Kind kind, int index, Point at, Point reached) {
        Table& told = table(kind, index);
        const Length length = told.length[static_cast<std::size_t>(at)];
        if (!goesOn(kind, index, at, length))
            return;
        Length& old = told.length[static_cast<std::size_t>(reached)];
        if (length + edge.most >= old)
            return;
        old = length + edge.most;
        told.via[static_cast<std::size_t>(reached)] = {added, -1};
        told.pending.push_back(reached);
    };
    for (int index = 0; index < static_cast<int>(m_network->links.size()); ++index) {
        tell(Kind::Waits, index, edge.to, edge.from);
        tell(Kind::Reach, index, edge.from, edge.to);
    }
}

/// Gathers what the table's length for `point` rests on.
void Reductions::collectChain(Kind kind, int index, Point point)
{
    m_reasons.begin();
    m_reasons.addLink(index);
    const Table& chain = table(kind, index);
    Point walker = point;
    for (int step = 0; step <= m_network->points; ++step) {
        const Via& via = chain.via[static_cast<std::size_t>(walker)];
        if (via.isRoot())
            return;
        if (via.edge < 0) {
            m_reasons.addLink(via.crossed);
            walker = link(via.crossed).end;
            continue;
        }
        m_lags.addReason(via.edge, m_reasons);
        walker = kind == Kind::Waits ? m_lags.edge(via.edge).to : m_lags.edge(via.edge).from;
    }
}

void Reductions::objectToCycle()
{
    m_reasons.begin();
    for (const int edge : m_lags.cycle())
        m_lags.addReason(edge, m_reasons);
    object(std::nullopt);
}

void Reductions::objectToEverything()
{
    m_reasons.begin();
    const int codes = static_cast<int>(m_network->lags.size() + m_network->links.size());
    for (int code = 0; code < codes; ++code)
        m_reasons.add(code);
    object(std::nullopt);
}

void Reductions::object(std::optional<Lag> lag)
{
    if (lag && lag->from == lag->to)
        lag.reset();  // It is broken, so it is below 0: a point before itself.
    m_failed = m_failed || !lag;
    const auto weaker = [&](const Objection& other) {
        return other.lag && lag && other.lag->from == lag->from && other.lag->to == lag->to
            && other.lag->most >= lag->most;
    };
    std::erase_if(m_objections, weaker);
    Objection objection{lag, {}, {}};
    for (const int code : m_reasons.codes()) {
        if (code < m_reasons.lags())
            objection.lags.push_back(code);
        else
            objection.links.push_back(code - m_reasons.lags());
    }
    std::ranges::sort(objection.lags);
    std::ranges::sort(objection.links);
    m_objections.push_back(std::move(objection));
    m_failed = m_failed || m_objections.size() >= m_most;
}

}  // namespace core::temporal
