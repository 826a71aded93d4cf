#pragma once

#include "core/temporal/uncertain.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace core::temporal {

/// A sum of many times.
using Length = std::int64_t;
/// No way at all; may be added to itself and to any length.
constexpr Length noWay = Length{1} << 60;

/// Collects which given lags and links something rests on, each once. A code
/// below the number of lags is a lag, one from there on a link.
class Reasons {
public:
    void reset(std::size_t lags, std::size_t links);
    void begin();
    void addLag(int lag) { add(lag); }
    void addLink(int link) { add(m_lags + link); }
    void add(int code);
    [[nodiscard]] std::span<const int> codes() const { return m_codes; }
    [[nodiscard]] int lags() const { return m_lags; }

private:
    std::vector<int> m_seen;  ///< The round in which each code was last added.
    std::vector<int> m_codes;
    int m_round = 0;
    int m_lags = 0;
};

/// The lags of a network, those that its links imply, and lags derived from
/// them, each with what it rests on; and a potential, which is times that keep
/// them all. Private to this folder.
class DerivedLags {
public:
    struct Edge {
        Point from = 0;
        Point to = 0;
        Length most = 0;
        int nextLeaving = -1;   ///< The next edge from the same point, -1 for none.
        int nextArriving = -1;  ///< The next edge to the same point.
        int reason = 0;         ///< A code, or where a derived reason begins, as ~index.
    };

    /// Begins anew with the lags and the bounds of the links, without a potential.
    void reset(const UncertainNetwork& network);

    [[nodiscard]] const Edge& edge(int index) const { return m_edges[static_cast<std::size_t>(index)]; }
    [[nodiscard]] std::span<const Edge> edges() const { return m_edges; }
    [[nodiscard]] int firstLeaving(Point point) const { return m_leaving[static_cast<std::size_t>(point)]; }
    [[nodiscard]] int firstArriving(Point point) const { return m_arriving[static_cast<std::size_t>(point)]; }

    /// One edge says it already.
    [[nodiscard]] bool says(Point from, Point to, Length most) const;
    /// Adds a derived lag that rests on `codes`; its index.
    int derive(Point from, Point to, Length most, std::span<const int> codes);
    void addReason(int edge, Reasons& reasons) const;

    [[nodiscard]] Length potential(Point point) const { return m_potential[static_cast<std::size_t>(point)]; }
    void setPotential(const std::vector<Time>& times);
    /// Finds a potential, or mends it after `edge` was added. False if there is
    /// none; then `cycle` is edges round which the lags add up to less than 0.
    bool findPotential();
    bool mendPotential(int edge);
    [[nodiscard]] std::span<const int> cycle() const { return m_cycle; }

private:
    int append(Point from, Point to, Length most, int reason);
    bool lower(const Edge& edge);
    void traceCycle(Point point);

    std::vector<Edge> m_edges;
    std::vector<int> m_leaving;
    std::vector<int> m_arriving;
    std::vector<int> m_reasons;  ///< Of derived edges: a count, then so many codes.
    std::vector<Length> m_potential;
    std::vector<int> m_loweredBy;  ///< The edge that last lowered a point's potential.
    std::vector<Point> m_queue;
    std::vector<char> m_queued;
    std::vector<int> m_cycle;
};

}  // namespace core::temporal
