#include "core/temporal/dispatch.h"

#include "core/temporal/controllability.h"
#include "tests/core/temporal/game.h"
#include "tests/core/temporal/uncertain_networks.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace core::temporal {
namespace {

// X decided upon now must suit C at A + 10, so X >= A + 7, and C at A + 1, so X <= A + 6: it has to wait.
TEST(SafeStart, IsNoneWhereAnEndHasToBeAwaited)
{
    EXPECT_FALSE(safeStart(waitForAnEnd(), {{1, 0}}, 0, 3));
}

// At 3, C comes at 4 or later, so that X may come at 4 + 5 = 9 at the latest; at 9 the wait of 7 is long
// over.
TEST(SafeStart, OpensAsTimeGoesByWithoutTheEnd)
{
    EXPECT_EQ(safeStart(waitForAnEnd(), {{1, 0}}, 3, 3), (SafeStart{7, 9}));
    EXPECT_EQ(safeStart(waitForAnEnd(), {{1, 0}}, 9, 3), (SafeStart{9, 15}));
}

TEST(SafeStart, OpensAtOnceWithTheEnd)
{
    EXPECT_EQ(safeStart(waitForAnEnd(), {{1, 0}, {2, 4}}, 4, 3), (SafeStart{4, 9}));
}

TEST(SafeStart, HasNoLimitWhereNothingSetsOne)
{
    EXPECT_EQ(safeStart(waitForAnEnd(), {}, 2, 1), (SafeStart{2, farTime}));
}

TEST(SafeStart, IsNoneWhereNothingWinsAnyMore)
{
    EXPECT_FALSE(safeStart(waitForAnEnd(), {{1, 0}, {2, 4}}, 10, 3));
}

// What has happened against the lags binds no more; what it binds is open: X may still come by C + 5.
TEST(SafeStart, ForgivesWhatHasHappened)
{
    UncertainNetwork network = waitForAnEnd();
    network.lags.push_back({1, 2, 3});
    EXPECT_EQ(safeStart(network, {{1, 0}, {2, 8}}, 8, 3), (SafeStart{8, 13}));
}

// Past its most, C is taken to come in the next unit.
TEST(SafeStart, ExpectsAnOverdueEndAtAnyMoment)
{
    EXPECT_EQ(safeStart(waitForAnEnd(), {{1, 0}}, 14, 3), (SafeStart{14, 20}));
}

/// Some state of a random play: what happened up to and in the unit `now`, by nobody's strategy.
std::vector<Seen> someHistory(const UncertainNetwork& network, Dice& dice, Time now)
{
    std::vector<Seen> seen;
    for (const Uncertain& link : network.links) {
        if (dice.between(0, 2) == 0)
            continue;
        const Time start = dice.between(0, now);
        seen.push_back({link.start, start});
        const Time end = start + dice.between(link.least, link.most);
        if (end <= now)
            seen.push_back({link.end, end});
        else if (start + link.most <= now)
            seen.push_back({link.end, now});
    }
    return seen;
}

/// By definition: the point is started at `time`, come what may, and the game is won.
bool isWonWith(UncertainNetwork left, Point point, Time time)
{
    window(left, origin, point, time, time);
    return Game{left}.isWon();
}

TEST(SafeStart, IsEveryTimeWithWhichTheGameIsWon)
{
    int windows = 0;
    int none = 0;
    for (std::uint64_t seed = 1; seed <= 4000 && !HasFailure(); ++seed) {
        Dice dice{seed};
        constexpr Time last = 8;
        const UncertainNetwork network =
            randomNetwork(dice, {.links = 2, .free = 1, .last = last, .lags = 4});
        const Time now = dice.between(0, 4);
        const std::vector<Seen> seen = someHistory(network, dice, now);
        const UncertainNetwork left = seenSoFar(network, seen, now);
        SCOPED_TRACE(testing::Message() << "seed " << seed << ", now " << now << '\n' << textOf(left));
        const auto safe = safeStart(network, seen, now, 5);
        for (Time time = now; time <= last; ++time)
            EXPECT_EQ(isWonWith(left, 5, time), safe && safe->earliest <= time && time <= safe->latest)
                << "started at " << time;
        (safe ? windows : none) += 1;
    }
    EXPECT_GT(windows, 300);
    EXPECT_GT(none, 300);
}

/// Goes on unit by unit and starts each point as soon as it is safe, asking anew each time.
std::vector<Time> runAsSoonAsSafe(const UncertainNetwork& network, const std::vector<Time>& lengths,
                                  Time last)
{
    std::vector<Time> times(static_cast<std::size_t>(network.points), -1);
    std::vector<Seen> seen;
    const auto happen = [&](Point point, Time now) {
        times[static_cast<std::size_t>(point)] = now;
        seen.push_back({point, now});
    };
    std::vector<bool> isEnd(times.size(), false);
    for (const Uncertain& link : network.links)
        isEnd[static_cast<std::size_t>(link.end)] = true;
    times[origin] = 0;
    for (Time now = 0; now <= last; ++now) {
        for (std::size_t index = 0; index < lengths.size(); ++index) {
            const Uncertain& link = network.links[index];
            const Time start = times[static_cast<std::size_t>(link.start)];
            if (start >= 0 && start + lengths[index] == now)
                happen(link.end, now);
        }
        for (Point point = 1; point < network.points; ++point) {
            if (isEnd[static_cast<std::size_t>(point)] || times[static_cast<std::size_t>(point)] >= 0)
                continue;
            if (const auto safe = safeStart(network, seen, now, point); safe && safe->earliest == now) {
                happen(point, now);
                point = 0;  // What was not safe before may be safe together with this.
            }
        }
    }
    return times;
}

TEST(SafeStart, FollowedUnitByUnitKeepsEveryLagForAllLengths)
{
    int networks = 0;
    for (std::uint64_t seed = 1; networks < 400 && !HasFailure(); ++seed) {
        Dice dice{seed + 50'000};
        const UncertainNetwork network = randomNetwork(
            dice, {.links = 3, .free = 1, .last = 10, .lags = 6, .longest = 3, .chained = true});
        if (notControllable(network))
            continue;
        ++networks;
        SCOPED_TRACE(testing::Message() << "seed " << seed + 50'000 << '\n' << textOf(network));
        forAllLengths(network, [&](const std::vector<Time>& lengths) {
            const auto times = runAsSoonAsSafe(network, lengths, 30);
            EXPECT_TRUE(keepsAll(network.lags, times)) << textOf(lengths) << '\n' << textOf(times);
            EXPECT_EQ(std::ranges::count(times, -1), 0) << textOf(lengths) << '\n' << textOf(times);
        });
    }
}

// X in [C - 3, C + 5], A [1, 10] C, usually 5: started by 0, C comes at 5. X waits 7 unless C has come, which
// it usually has at 5; and comes by 5 + 5. If C comes at 1, X has to by 6.
TEST(UsualStart, WaitsForAnEndThatUsuallyComes)
{
    const auto starts = usualStarts(seenSoFar(waitForAnEnd(), {{1, 0}}, 0));
    ASSERT_TRUE(starts);
    EXPECT_EQ(starts->at(3), (UsualStart{5, 10, 6}));
    EXPECT_EQ(starts->at(1), (UsualStart{0, 0, 0}));
}

// At 6 without the end, it is taken to come at 7.
TEST(UsualStart, TakesWhatIsOverdueToEndInTheNextUnit)
{
    EXPECT_EQ(usualStarts(seenSoFar(waitForAnEnd(), {{1, 0}}, 6))->at(3), (UsualStart{7, 12, 12}));
}

TEST(UsualStart, IsNoneWhereNothingWins)
{
    UncertainNetwork network = waitForAnEnd();
    window(network, 1, 3, 0, 4);  // At 4, C may still be to come at 10.
    EXPECT_FALSE(usualStarts(network));
}

/// By definition: over all runs of usual lengths that some winning strategy makes, the times of each point.
std::vector<std::vector<Time>> timesInWinningRuns(const UncertainNetwork& network, Time last)
{
    std::vector<std::vector<Time>> times(static_cast<std::size_t>(network.points));
    Game game{network};
    for (const std::vector<Time>& run : usualRuns(network, last)) {
        if (!game.isWonBy(run))
            continue;
        for (std::size_t point = 0; point < run.size(); ++point)
            times[point].push_back(run[point]);
    }
    for (std::vector<Time>& each : times) {
        std::ranges::sort(each);
        each.erase(std::unique(each.begin(), each.end()), each.end());
    }
    return times;
}

TEST(UsualStart, IsEveryTimeOfTheRunsThatWinTheGame)
{
    int some = 0;
    int none = 0;
    for (std::uint64_t seed = 1; seed <= 700 && !HasFailure(); ++seed) {
        Dice dice{seed + 90'000};
        constexpr Time last = 5;
        const UncertainNetwork network =
            randomNetwork(dice, {.links = 2, .free = 1, .last = last, .lags = 4});
        const Time now = dice.between(0, 3);
        const UncertainNetwork left = seenSoFar(network, someHistory(network, dice, now), now);
        SCOPED_TRACE(testing::Message() << "seed " << seed + 90'000 << ", now " << now << '\n'
                                        << textOf(left));
        const auto starts = usualStarts(left);
        const auto times = timesInWinningRuns(left, 2 * last);
        ASSERT_EQ(starts.has_value(), !times.front().empty());
        (starts ? some : none) += 1;
        for (std::size_t point = 1; starts && point < times.size(); ++point) {
            const UsualStart& start = starts->at(point);
            EXPECT_EQ(start.earliest, times[point].front()) << "point " << point;
            EXPECT_EQ(start.latest, times[point].back()) << "point " << point;
            EXPECT_EQ(start.latest - start.earliest + 1, static_cast<Time>(times[point].size()));
            EXPECT_LE(start.latestIfQuick, start.latest);
        }
    }
    EXPECT_GT(some, 100);
    EXPECT_GT(none, 50);
}

/// Goes on unit by unit: a point that may be started now is where `wants` says so, and one that must be is.
template <typename Wants>
std::vector<Time> runByUsualStarts(const UncertainNetwork& network, const std::vector<Time>& lengths,
                                   Time last, const Wants& wants)
{
    std::vector<Time> times(static_cast<std::size_t>(network.points), -1);
    std::vector<Seen> seen;
    std::vector<bool> isEnd(times.size(), false);
    const auto happen = [&](Point point, Time now) {
        times[static_cast<std::size_t>(point)] = now;
        seen.push_back({point, now});
    };
    times[origin] = 0;
    for (Time now = 0; now <= last; ++now) {
        for (std::size_t index = 0; index < lengths.size(); ++index) {
            const Uncertain& link = network.links[index];
            isEnd[static_cast<std::size_t>(link.end)] = true;
            const Time start = times[static_cast<std::size_t>(link.start)];
            if (start >= 0 && start + lengths[index] == now)
                happen(link.end, now);
        }
        std::vector<bool> wanted(times.size());
        for (Point point = 1; point < network.points; ++point)
            wanted[static_cast<std::size_t>(point)] = wants(point);
        for (Point point = 1; point < network.points; ++point) {
            if (isEnd[static_cast<std::size_t>(point)] || times[static_cast<std::size_t>(point)] >= 0)
                continue;
            const auto starts = usualStarts(seenSoFar(network, seen, now));
            if (!starts)
                return times;
            const UsualStart& start = starts->at(static_cast<std::size_t>(point));
            if (start.latest != now && (start.earliest != now || !wanted[static_cast<std::size_t>(point)]))
                continue;
            happen(point, now);
            point = 0;  // What could not be started before may be now.
        }
    }
    return times;
}

TEST(UsualStart, FollowedUnitByUnitKeepsEveryLagForAllLengths)
{
    int networks = 0;
    for (std::uint64_t seed = 1; networks < 80 && !HasFailure(); ++seed) {
        Dice dice{seed + 130'000};
        const UncertainNetwork network = randomNetwork(
            dice, {.links = 3, .free = 1, .last = 10, .lags = 6, .longest = 3, .chained = true});
        if (notControllable(network))
            continue;
        ++networks;
        SCOPED_TRACE(testing::Message() << "seed " << seed + 130'000 << '\n' << textOf(network));
        forAllLengths(network, [&](const std::vector<Time>& lengths) {
            for (const int chance : {0, 1, 3}) {
                const auto times = runByUsualStarts(
                    network, lengths, 30, [&](Point) { return dice.between(0, 3) < chance + (chance == 3); });
                EXPECT_TRUE(isRunOf(network, lengths, times)) << textOf(lengths) << '\n' << textOf(times);
            }
        });
    }
}

}  // namespace
}  // namespace core::temporal
