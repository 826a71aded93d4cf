#include "core/temporal/controllability.h"
#include "core/temporal/dispatch.h"

#include "tests/core/temporal/game.h"
#include "tests/core/temporal/naive_closure.h"
#include "tests/core/temporal/uncertain_networks.h"

#include <gtest/gtest.h>

#include <algorithm>

// Two second opinions on random networks: the game played out in every way, and all reductions applied until
// nothing changes. Each says whether something wins, and which runs something that wins can make.

namespace core::temporal {
namespace {

/// An objection must stand on what it names alone. Second opinion on that: the naive closure.
void expectStandsAlone(const UncertainNetwork& network, const Objection& objection)
{
    const UncertainNetwork named = only(network, objection.lags, objection.links);
    const NaiveClosure closure{named};
    if (objection.lag)
        EXPECT_TRUE(closure.forces(*objection.lag)) << textOf(objection);
    else
        EXPECT_FALSE(closure.isControllable()) << textOf(objection);
}

/// By the game: what all safe runs of the network keep, and whether each run is objected to.
class AgainstGame {
public:
    AgainstGame(const UncertainNetwork& network, Time last)
        : m_network{network}
        , m_last{last}
        , m_game{network}
    {
    }

    bool expectSameVerdict()
    {
        const bool won = m_game.isWon();
        const auto objection = notControllable(m_network);
        EXPECT_EQ(!objection.has_value(), won);
        if (objection)
            expectStandsAlone(m_network, *objection);
        return won;
    }

    /// How many runs are safe, and how many are not.
    std::pair<int, int> expectSameRuns()
    {
        std::vector<std::vector<Time>> safe;
        std::vector<Objection> all;
        int unsafe = 0;
        const auto lags = usualLags(m_network);
        for (const auto& run : usualRuns(m_network, m_last)) {
            const auto objections = objectionsTo(m_network, run);
            const bool wins = m_game.isWonBy(run);
            EXPECT_EQ(objections.empty(), wins) << textOf(run);
            EXPECT_EQ(lags && std::ranges::all_of(*lags, [&](const Lag& lag) { return keeps(lag, run); }),
                      wins)
                << textOf(run);
            for (const Objection& objection : objections) {
                EXPECT_TRUE(!objection.lag || !keeps(*objection.lag, run)) << textOf(run) << '\n'
                                                                           << textOf(objection);
                expectStandsAlone(m_network, objection);
                all.push_back(objection);
            }
            if (wins)
                safe.push_back(run);
            else
                ++unsafe;
            if (testing::Test::HasFailure())
                break;
        }
        expectKept(all, safe);
        return {static_cast<int>(safe.size()), unsafe};
    }

private:
    void expectKept(const std::vector<Objection>& objections,
                    const std::vector<std::vector<Time>>& safe) const
    {
        for (const Objection& objection : objections)
            for (const auto& run : safe)
                ASSERT_TRUE(objection.lag && keeps(*objection.lag, run)) << textOf(run) << '\n'
                                                                         << textOf(objection);
    }

    const UncertainNetwork& m_network;
    Time m_last;
    Game m_game;
};

struct Tally {
    int won = 0;
    int lost = 0;
    int safe = 0;
    int unsafe = 0;  ///< Runs of networks that can be won.
};

Tally playAll(const Shape& shape, std::uint64_t seed, int networks)
{
    Tally tally;
    for (int count = 0; count < networks && !testing::Test::HasFailure(); ++count) {
        Dice dice{seed + static_cast<std::uint64_t>(count)};
        const UncertainNetwork network = randomNetwork(dice, shape);
        SCOPED_TRACE(testing::Message() << "seed " << seed + static_cast<std::uint64_t>(count) << '\n'
                                        << textOf(network));
        AgainstGame against{network, shape.last};
        const bool won = against.expectSameVerdict();
        const auto [safe, unsafe] = against.expectSameRuns();
        (won ? tally.won : tally.lost) += 1;
        tally.safe += safe;
        tally.unsafe += won ? unsafe : 0;
    }
    return tally;
}

void expectMixed(const Tally& tally)
{
    const int networks = tally.won + tally.lost;
    EXPECT_GT(tally.won, networks / 10) << tally.lost << " lost";
    EXPECT_GT(tally.lost, networks / 10) << tally.won << " won";
    EXPECT_GT(tally.safe, networks);
    EXPECT_GT(tally.unsafe, networks) << tally.safe << " safe";
}

TEST(Controllability, IsWhatTheGameSaysForOneLink)
{
    expectMixed(playAll({.links = 1, .free = 2, .last = 7, .lags = 4}, 1'000'000, 2000));
}

TEST(Controllability, IsWhatTheGameSaysForTwoLinks)
{
    expectMixed(playAll({.links = 2, .free = 1, .last = 7, .lags = 5}, 2'000'000, 2000));
}

TEST(Controllability, IsWhatTheGameSaysForTwoLinksAndTwoMorePoints)
{
    expectMixed(playAll({.links = 2, .free = 2, .last = 5, .lags = 6}, 3'000'000, 600));
}

TEST(Controllability, IsWhatTheGameSaysForThreeLinks)
{
    expectMixed(playAll({.links = 3, .free = 1, .last = 5, .lags = 6}, 4'000'000, 600));
}

TEST(Controllability, IsWhatTheGameSaysForFourLinks)
{
    expectMixed(playAll({.links = 4, .free = 0, .last = 5, .lags = 7, .longest = 2}, 5'000'000, 300));
}

TEST(Controllability, IsWhatTheGameSaysForLinksThatStartWhereOthersEnd)
{
    expectMixed(playAll({.links = 3, .free = 1, .last = 5, .lags = 5, .chained = true}, 6'000'000, 600));
}

/// Runs of usual lengths that keep all lags: the earliest, the latest, and some in between.
std::vector<std::vector<Time>> someRuns(const UncertainNetwork& network, Dice& dice, int count)
{
    UncertainNetwork usual = network;
    for (const Uncertain& link : network.links)
        window(usual, link.start, link.end, link.usual, link.usual);
    std::vector<std::vector<Time>> runs;
    for (int run = 0; run < count; ++run) {
        // Bellman-Ford to a solution, after a few random clock times that may or may not be kept.
        std::vector<Time> times(static_cast<std::size_t>(network.points));
        for (Time& time : times)
            time = dice.between(-5, 40);
        bool changed = true;
        for (int round = 0; changed && round < 400; ++round) {
            changed = false;
            for (const Lag& lag : usual.lags) {
                Time& to = times[static_cast<std::size_t>(lag.to)];
                const Time from = times[static_cast<std::size_t>(lag.from)];
                changed = changed || to > from + lag.most;
                to = std::min(to, from + lag.most);
            }
        }
        if (changed)
            return runs;
        const Time begin = times[origin];
        for (Time& time : times)
            time -= begin;
        runs.push_back(times);
    }
    return runs;
}

void compareWithNaive(const Shape& shape, std::uint64_t seed, int networks)
{
    Tally tally;
    for (int count = 0; count < networks && !testing::Test::HasFailure(); ++count) {
        Dice dice{seed + static_cast<std::uint64_t>(count)};
        const UncertainNetwork network = randomNetwork(dice, shape);
        SCOPED_TRACE(testing::Message() << "seed " << seed + static_cast<std::uint64_t>(count) << '\n'
                                        << textOf(network));
        const NaiveClosure closure{network};
        const auto verdict = notControllable(network);
        ASSERT_EQ(verdict.has_value(), !closure.isControllable());
        if (verdict)
            expectStandsAlone(network, *verdict);
        (verdict ? tally.lost : tally.won) += 1;
        for (const auto& run : someRuns(network, dice, 3)) {
            const auto objections = objectionsTo(network, run);
            ASSERT_EQ(objections.empty(), closure.isKeptBy(run)) << textOf(run);
            ASSERT_EQ(objectionsTo(network, run, 1).size(), objections.empty() ? 0U : 1U) << textOf(run);
            for (const Objection& objection : objections)
                expectStandsAlone(network, objection);
            if (!verdict)
                (objections.empty() ? tally.safe : tally.unsafe) += 1;
        }
    }
    EXPECT_GT(tally.won, networks / 10) << tally.lost << " lost";
    EXPECT_GT(tally.lost, networks / 10) << tally.won << " won";
    EXPECT_GT(tally.safe, networks / 20);
    EXPECT_GT(tally.unsafe, networks / 20) << tally.safe << " safe";
}

TEST(Controllability, IsWhatAllReductionsSayForUpToThreeLinks)
{
    compareWithNaive(
        {.links = 3, .free = 2, .last = 30, .lags = 7, .longest = 6, .lagLeast = -8, .lagMost = 12},
        10'000'000, 12'000);
}

TEST(Controllability, IsWhatAllReductionsSayForSixLinks)
{
    compareWithNaive(
        {.links = 6, .free = 3, .last = 60, .lags = 13, .longest = 8, .lagLeast = -8, .lagMost = 16},
        20'000'000, 4'000);
}

TEST(Controllability, IsWhatAllReductionsSayForLinksThatMayTakeNoTime)
{
    compareWithNaive({.links = 4,
                      .free = 1,
                      .last = 20,
                      .lags = 9,
                      .shortest = 0,
                      .longest = 2,
                      .lagLeast = -4,
                      .lagMost = 6},
                     40'000'000, 6'000);
}

TEST(Controllability, IsWhatAllReductionsSayForLinksThatStartWhereOthersEnd)
{
    compareWithNaive({.links = 5,
                      .free = 2,
                      .last = 50,
                      .lags = 9,
                      .longest = 8,
                      .lagLeast = -8,
                      .lagMost = 16,
                      .chained = true},
                     30'000'000, 4'000);
}

}  // namespace
}  // namespace core::temporal
