#pragma once

#include "core/temporal/uncertain.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace core::temporal {

/// The reduction rules of P. Morris, N. Muscettola, "Temporal dynamic controllability revisited", AAAI 2005
/// (from memory), applied to every pair of points until nothing changes: slow and plain, as a second opinion
/// and as a peer to measure against. Reaction is instantaneous: the lower case needs a bound below 0.
class NaiveClosure {
public:
    explicit NaiveClosure(const UncertainNetwork& network);

    [[nodiscard]] bool isControllable() const { return m_controllable; }

    /// Whether `times`, a run of usual lengths, keep all that follows.
    [[nodiscard]] bool isKeptBy(const std::vector<Time>& times) const;
    /// What follows that `times`, a run of usual lengths, do not keep. The network must be controllable.
    [[nodiscard]] std::vector<Lag> brokenBy(const std::vector<Time>& times) const;
    /// Every run of usual lengths that keeps all that follows keeps `lag`.
    [[nodiscard]] bool forces(const Lag& lag) const;

private:
    using Length = std::int64_t;
    using Matrix = std::vector<std::vector<Length>>;
    static constexpr Length noWay = Length{1} << 50;

    [[nodiscard]] Matrix begun() const;
    void shortestWays(Matrix& matrix) const;
    bool reduceUpper(std::size_t link);
    bool reduceLower(std::size_t link);
    [[nodiscard]] bool isConsistent() const;
    [[nodiscard]] Matrix asUsual() const;

    const UncertainNetwork& m_network;
    Matrix m_bounds;
    Matrix m_waits;  ///< For each link: -w where a point waits w after its start unless it has ended.
    bool m_controllable = true;
};

}  // namespace core::temporal
