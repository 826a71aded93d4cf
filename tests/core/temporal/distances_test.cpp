#include "core/temporal/distances.h"

#include "tests/core/temporal/small_networks.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace core::temporal {
namespace {

constexpr Time unbounded = Distances::unbounded;

/// `to` comes from `least` to `most` after `from`.
void between(std::vector<Lag>& lags, Point from, Point to, Time least, Time most)
{
    lags.push_back({from, to, most});
    lags.push_back({to, from, -least});
}

// R. Dechter, I. Meiri, J. Pearl, "Temporal constraint networks", Artificial Intelligence 49, 1991, the two
// commuters (from memory of the paper; the figures were worked out again by hand). 0: 7:00, 1 and 2: one
// leaves home and arrives, 3 and 4: the other.
std::vector<Lag> commuters()
{
    std::vector<Lag> lags;
    between(lags, 0, 1, 10, 20);
    between(lags, 1, 2, 30, 40);
    between(lags, 3, 2, 10, 20);
    between(lags, 3, 4, 40, 50);
    between(lags, 0, 4, 60, 70);
    return lags;
}

bool addAll(Distances& distances, const std::vector<Lag>& lags)
{
    return std::ranges::all_of(lags, [&](const Lag& lag) { return distances.addForGood(lag); });
}

// 2 is at most 20 + 40 = 60 by the first commuter, and at least 3 + 10; 3 is at most 70 - 40 = 30, so 2 is at
// most 30 + 20 = 50. 3 is at least 60 - 50 = 10 and at least 2 - 20 = 20, 2 being at least 10 + 30 = 40.
TEST(Distances, CommutersOfDechterMeiriPearl)
{
    Distances distances{5};
    ASSERT_TRUE(addAll(distances, commuters()));
    const std::vector<Time> latest = {0, 20, 50, 30, 70};
    const std::vector<Time> earliest = {0, 10, 40, 20, 60};
    for (Point point = 0; point < 5; ++point) {
        EXPECT_EQ(distances.between(0, point), latest[static_cast<std::size_t>(point)]) << point;
        EXPECT_EQ(-distances.between(point, 0), earliest[static_cast<std::size_t>(point)]) << point;
    }
}

// With the first commuter at least 60 on the way, 2 is at 10 + 60 = 70 or later, but at 50 at the latest.
TEST(Distances, CommutersWithAnHourOnTheWayCannotBe)
{
    std::vector<Lag> lags = commuters();
    lags.push_back({2, 1, -60});
    Distances distances{5};
    EXPECT_FALSE(addAll(distances, lags));
}

// The second commuter by another way, 20 to 30: 3 is then at 70 - 20 = 50 at the latest, so 2 at 70.
TEST(Distances, CommutersWithAnHourOnTheWayCanBeWhereTheOtherIsQuick)
{
    std::vector<Lag> lags;
    between(lags, 0, 1, 10, 20);
    between(lags, 1, 2, 60, 70);
    between(lags, 3, 2, 10, 20);
    between(lags, 3, 4, 20, 30);
    between(lags, 0, 4, 60, 70);
    Distances distances{5};
    ASSERT_TRUE(addAll(distances, lags));
    EXPECT_EQ(distances.between(0, 2), 70);
    EXPECT_EQ(-distances.between(2, 0), 70);
}

TEST(Distances, NothingBoundsPointsThatNoLagJoins)
{
    Distances distances{3};
    ASSERT_TRUE(distances.addForGood({0, 1, 5}));
    EXPECT_EQ(distances.between(0, 1), 5);
    EXPECT_GE(distances.between(1, 0), unbounded);
    EXPECT_GE(distances.between(0, 2), unbounded);
    EXPECT_EQ(distances.between(2, 2), 0);
}

TEST(Distances, ALagFromAPointToItselfHoldsOrNot)
{
    Distances distances{2};
    EXPECT_TRUE(distances.addForGood({1, 1, 0}));
    EXPECT_FALSE(distances.addForGood({1, 1, -1}));
}

using Table = std::vector<std::vector<Time>>;

/// All pairs of shortest ways, the simple way (Floyd 1962, Warshall 1962).
Table floydWarshall(int points, const std::vector<Lag>& lags)
{
    const auto size = static_cast<std::size_t>(points);
    Table table(size, std::vector<Time>(size, unbounded));
    for (std::size_t point = 0; point < size; ++point)
        table[point][point] = 0;
    for (const Lag& lag : lags) {
        Time& cell = table[static_cast<std::size_t>(lag.from)][static_cast<std::size_t>(lag.to)];
        cell = std::min(cell, lag.most);
    }
    for (std::size_t via = 0; via < size; ++via) {
        for (std::size_t from = 0; from < size; ++from) {
            for (std::size_t to = 0; to < size; ++to) {
                if (table[from][via] < unbounded && table[via][to] < unbounded)
                    table[from][to] = std::min(table[from][to], table[from][via] + table[via][to]);
            }
        }
    }
    return table;
}

/// A random history of adding and taking back, and what is in force.
class History {
public:
    explicit History(std::uint64_t seed)
        : m_dice{seed}
        , m_points{m_dice.between(3, 8)}
        , m_distances{m_points}
    {
        for (int count = m_dice.between(0, 5); count > 0; --count) {
            const Lag lag = m_dice.lag(m_points, -5, 20);
            if (m_distances.addForGood(lag))
                m_always.push_back(lag);
        }
    }

    /// Adds a lag if it contradicts nothing. It is literal 2 * (its place in the history).
    void add()
    {
        const Lag lag = m_dice.lag(m_points, -12, 20);
        if (m_distances.between(lag.to, lag.from) + lag.most < 0)
            return;
        m_distances.add(lag, Literal{2 * static_cast<int>(m_added.size())});
        m_added.push_back(lag);
    }

    void takeBack()
    {
        const int kept = m_dice.between(0, static_cast<int>(m_added.size()));
        m_distances.takeBackTo(kept);
        m_added.resize(static_cast<std::size_t>(kept));
    }

    void step()
    {
        if (m_dice.between(0, 5) == 0)
            takeBack();
        else
            add();
    }

    void expectRight() const
    {
        ASSERT_EQ(m_distances.added(), static_cast<int>(m_added.size()));
        const Table table = floydWarshall(m_points, asOf(m_added.size()));
        forPairs([&](Point from, Point to) {
            const Time right = table[static_cast<std::size_t>(from)][static_cast<std::size_t>(to)];
            if (right >= unbounded)
                EXPECT_GE(m_distances.between(from, to), unbounded) << from << " to " << to;
            else
                EXPECT_EQ(m_distances.between(from, to), right) << from << " to " << to;
        });
    }

    /// As of every moment: the named lags alone give the distance that all those of then give.
    void expectExplained() const
    {
        for (std::size_t moment = 0; moment <= m_added.size(); ++moment) {
            const Table table = floydWarshall(m_points, asOf(moment));
            forPairs([&](Point from, Point to) {
                const std::vector<Lag> named = namedLags(from, to, moment);
                EXPECT_EQ(floydWarshall(m_points,
                                        named)[static_cast<std::size_t>(from)][static_cast<std::size_t>(to)],
                          table[static_cast<std::size_t>(from)][static_cast<std::size_t>(to)])
                    << from << " to " << to << " as of " << moment;
            });
        }
    }

private:
    template <class Visit>
    void forPairs(const Visit& visit) const
    {
        for (Point from = 0; from < m_points; ++from) {
            for (Point to = 0; to < m_points; ++to)
                visit(from, to);
        }
    }

    [[nodiscard]] std::vector<Lag> asOf(std::size_t moment) const
    {
        std::vector<Lag> lags = m_always;
        lags.insert(lags.end(), m_added.begin(), m_added.begin() + static_cast<std::ptrdiff_t>(moment));
        return lags;
    }

    [[nodiscard]] std::vector<Lag> namedLags(Point from, Point to, std::size_t moment) const
    {
        std::vector<Literal> literals;
        m_distances.explain(from, to, static_cast<int>(moment), literals);
        std::vector<Lag> lags = m_always;
        for (const Literal literal : literals) {
            const auto place = static_cast<std::size_t>(literal.variable());
            EXPECT_LT(place, moment) << "a reason from later than the moment";
            lags.push_back(m_added[place]);
        }
        return lags;
    }

    Dice m_dice;
    int m_points;
    Distances m_distances;
    std::vector<Lag> m_always;
    std::vector<Lag> m_added;
};

TEST(Distances, AgreeWithFloydWarshallAfterEveryStep)
{
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        History history{seed};
        for (int step = 0; step < 40; ++step) {
            history.step();
            history.expectRight();
        }
        if (HasFailure())
            return;
    }
}

TEST(Distances, TheNamedLagsAloneGiveTheDistance)
{
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        History history{seed};
        for (int step = 0; step < 25; ++step)
            history.step();
        history.expectExplained();
        if (HasFailure())
            return;
    }
}

}  // namespace
}  // namespace core::temporal
