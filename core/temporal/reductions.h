#pragma once

#include "core/temporal/controllability.h"
#include "core/temporal/derived_lags.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace core::temporal {

/// Draws all that follows from a network with uncertain links: what the two
/// functions of controllability.h do, for whoever asks often. One object can be
/// used again and again, which saves allocations.
///
/// Two tables a link A -> C of [least, most]. Its *waits*: point P comes at
/// least w after A unless C has come, kept as the length -w of a way from P to A
/// over C and back with the most. Its *reach*: the shortest way from C to P, of
/// which those below 0 bind P to A, as C may come after the least.
class Reductions {
public:
    /// Draws everything, or says why no strategy wins: `notControllable`.
    std::optional<Objection> close(const UncertainNetwork& network);
    /// Draws what `times` keep, and objects where they do not: `objectionsTo`.
    std::vector<Objection> closeAround(const UncertainNetwork& network, const std::vector<Time>& times,
                                       std::size_t most = SIZE_MAX);

    /// After `close` found nothing: the lags, given and derived.
    [[nodiscard]] const DerivedLags& lags() const { return m_lags; }
    /// How long after the link's start `point` must wait unless its end has
    /// come, if that is more than the link's least.
    [[nodiscard]] std::optional<Length> wait(int link, Point point) const;

private:
    /// How a table's length came about: an edge, a link that was crossed, or nothing (the table's root).
    struct Via {
        int edge = -1;
        int crossed = -1;
        [[nodiscard]] bool isRoot() const { return edge < 0 && crossed < 0; }
    };
    enum class Kind { Waits, Reach };
    struct Table {
        std::vector<Length> length;
        std::vector<Via> via;
        std::vector<Point> pending;  ///< Points whose length got shorter since the table was gone over.
    };
    using Heap = std::vector<std::pair<Length, Point>>;

    void begin(const UncertainNetwork& network);
    void run();
    [[nodiscard]] const Uncertain& link(int index) const
    {
        return m_network->links[static_cast<std::size_t>(index)];
    }
    Table& table(Kind kind, int link)
    {
        return m_tables[2 * static_cast<std::size_t>(link) + (kind == Kind::Reach ? 1 : 0)];
    }
    [[nodiscard]] const Table& table(Kind kind, int link) const
    {
        return m_tables[2 * static_cast<std::size_t>(link) + (kind == Kind::Reach ? 1 : 0)];
    }

    // Going over a table: reductions_spread.cpp.
    void spreadWaits(int link);
    void spreadReach(int link);
    bool cross(int link);
    void leaveBackwards(int link, Point point);
    void shorten(Table& table, Point point, Length length, Via via, Length key);
    [[nodiscard]] bool goesOn(Kind kind, int link, Point point, Length length) const;
    [[nodiscard]] bool loops(int link, Point point);

    // What a table says.
    void drawFromWaits(int link);
    void drawFromReach(int link);
    void drawWait(int link, Point point);
    void drawBound(int link, Point point);
    void draw(const Lag& lag, Kind kind, int link, Point point);
    void add(const Lag& lag);
    void tellTables(int edge);
    [[nodiscard]] bool followsFromNext(int link, Point point, Length bound) const;
    void collectChain(Kind kind, int link, Point point);
    void object(std::optional<Lag> lag);
    void objectToCycle();
    void objectToEverything();

    [[nodiscard]] bool breaks(const Lag& lag) const
    {
        return m_lags.potential(lag.to) - m_lags.potential(lag.from) > lag.most;
    }

    const UncertainNetwork* m_network = nullptr;
    bool m_fixed = false;   ///< The potential is a run that is asked about, and stays.
    bool m_failed = false;  ///< No strategy wins, or no more objections are wanted.
    std::size_t m_most = SIZE_MAX;
    DerivedLags m_lags;
    Reasons m_reasons;
    std::vector<Table> m_tables;
    std::vector<int> m_endOf;    ///< The link that a point ends, -1 for none.
    std::vector<char> m_starts;  ///< Whether a point starts a link.
    std::vector<Objection> m_objections;
    Heap m_heap;
    std::vector<Point> m_touched;
    std::vector<int> m_crossings;
};

}  // namespace core::temporal
