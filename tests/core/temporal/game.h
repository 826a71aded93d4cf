#pragma once

#include "core/temporal/uncertain.h"

#include <cstddef>
#include <string>
#include <unordered_map>
#include <vector>

namespace core::temporal {

/// The game itself, played out in every way: the oracle for controllability. In
/// each unit from 0 on, first nature ends links, then points are started. Every
/// point that ends no link must have a lag from and to the origin that keeps it
/// at 0 or later and before the game is over. The least of a link is above 0.
///
/// It knows no theorem: it tries all lengths against all starts, and remembers
/// what came of a state.
class Game {
public:
    explicit Game(const UncertainNetwork& network);

    /// Some strategy keeps every lag whatever the lengths.
    bool isWon();
    /// One winning strategy makes just this run when all lengths are usual. The
    /// run must have the usual lengths.
    bool isWonBy(const std::vector<Time>& run);

private:
    using Times = std::vector<Time>;

    bool winsFrom(Time now, const Times& times);
    bool winsByStarting(Time now, Times& times, Point next);
    bool forAllEnds(Time now, Times& times, std::size_t link, const std::vector<bool>* usual, bool differs);
    bool allows(const Times& times, Point point) const;
    bool isLate(const Times& times, Time now) const;
    std::string key(Time now, const Times& times) const;

    const UncertainNetwork& m_network;
    std::vector<bool> m_isEnd;
    std::unordered_map<std::string, bool> m_won;
};

/// Every run of usual lengths, in whole units from 0 to `last`, that keeps all lags.
std::vector<std::vector<Time>> usualRuns(const UncertainNetwork& network, Time last);

}  // namespace core::temporal
