#include "core/temporal/executor.h"

#include "tests/core/temporal/uncertain_networks.h"

#include <gtest/gtest.h>

namespace core::temporal {
namespace {

constexpr Time soon = -farTime;

std::vector<Time> runOf(const UncertainNetwork& network, const std::vector<Time>& lengths,
                        const std::vector<Time>& wished)
{
    std::vector<Time> times;
    Executor::of(network)->run(lengths, wished, times);
    return times;
}

// A is wished for at 2. X waits for C or A + 7; wished for at 20 it comes at C + 5 at the latest.
TEST(Executor, StartsAsNearToTheWishedTimeAsItMay)
{
    EXPECT_EQ(runOf(waitForAnEnd(), {4}, {0, 2, 0, soon}), (std::vector<Time>{0, 2, 6, 6}));
    EXPECT_EQ(runOf(waitForAnEnd(), {9}, {0, 2, 0, soon}), (std::vector<Time>{0, 2, 11, 9}));
    EXPECT_EQ(runOf(waitForAnEnd(), {9}, {0, 2, 0, 10}), (std::vector<Time>{0, 2, 11, 10}));
    EXPECT_EQ(runOf(waitForAnEnd(), {4}, {0, 2, 0, 20}), (std::vector<Time>{0, 2, 6, 11}));
}

TEST(Executor, IsNoneWhereNothingWins)
{
    UncertainNetwork network{.points = 4, .lags = {}, .links = {{1, 2, 1, 5, 10}}};
    window(network, 3, 2, 1, 1);
    EXPECT_FALSE(Executor::of(network));
}

// Up to four links, every whole length of each, with starts as soon as may be, as late as may be and at
// random.
TEST(Executor, KeepsEveryLagForAllLengths)
{
    int networks = 0;
    int runs = 0;
    for (std::uint64_t seed = 1; networks < 2000 && !HasFailure(); ++seed) {
        Dice dice{seed};
        const UncertainNetwork network = randomNetwork(dice,
                                                       {.links = 1 + static_cast<int>(seed % 4),
                                                        .free = dice.between(0, 2),
                                                        .last = 16,
                                                        .lags = dice.between(3, 8),
                                                        .longest = 4,
                                                        .lagLeast = -5,
                                                        .lagMost = 9,
                                                        .chained = seed % 3 == 0});
        auto executor = Executor::of(network);
        if (!executor)
            continue;
        ++networks;
        SCOPED_TRACE(testing::Message() << "seed " << seed << '\n' << textOf(network));
        std::vector<Time> times;
        forAllLengths(network, [&](const std::vector<Time>& lengths) {
            for (const auto& wished : someWishes(network, dice)) {
                executor->run(lengths, wished, times);
                ++runs;
                ASSERT_TRUE(isRunOf(network, lengths, times)) << textOf(lengths) << '\n' << textOf(times);
            }
        });
    }
    EXPECT_GT(runs, 100'000);
}

// A slice of executor_long_test.cpp.
TEST(Executor, KeepsEveryLagForExtremeAndRandomLengthsOfManyLinks)
{
    EXPECT_GT(runManyLinks(1, 100, 200), 20'000);
}

}  // namespace
}  // namespace core::temporal
