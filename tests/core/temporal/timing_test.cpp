#include "core/temporal/timing.h"

#include "tests/core/temporal/small_networks.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace core::temporal {
namespace {

// A development of 35 wanted, 30 to 45 allowed, and something that takes until 38: 3 too long at 2 each.
TEST(Timing, StretchesALagByAsLittleAsItMust)
{
    Timing timing{3};
    ASSERT_TRUE(timing.add({1, origin, 0}, noLiteral));
    ASSERT_TRUE(timing.add({2, origin, 0}, noLiteral));
    ASSERT_TRUE(timing.add({1, 2, 45}, noLiteral));
    ASSERT_TRUE(timing.add({2, 1, -30}, noLiteral));
    timing.addSoft({{1, 2, 35}, 2});
    timing.addSoft({{2, 1, -35}, 1});
    EXPECT_EQ(shown(timing.price()), 0);
    EXPECT_EQ(timing.earliest(), (std::vector<Time>{0, 0, 35}));
    ASSERT_TRUE(timing.add({2, 1, -38}, Literal{4}));
    EXPECT_EQ(shown(timing.price()), 6);
    EXPECT_EQ(timing.earliest(), (std::vector<Time>{0, 0, 38}));
    std::vector<Literal> reasons;
    timing.explainPrice(reasons);
    EXPECT_EQ(reasons, std::vector<Literal>{Literal{4}});
}

TEST(Timing, NamesTheLagsThatContradictOneAnother)
{
    Timing timing{4};
    for (Point point = 1; point < 4; ++point)
        ASSERT_TRUE(timing.add({point, origin, 0}, noLiteral));
    ASSERT_TRUE(timing.add({origin, 3, 9}, noLiteral));
    ASSERT_TRUE(timing.add({2, 1, -5}, Literal{0}));
    ASSERT_TRUE(timing.add({1, 3, 8}, Literal{2}));
    ASSERT_FALSE(timing.add({3, 2, -5}, Literal{4}));
    std::vector<Literal> reasons;
    timing.explainPrice(reasons);
    std::ranges::sort(reasons, {}, &Literal::code);
    // 1 to 2 to 3 takes 10: within 9 of the origin, and within 8 of 1, that is one lag too many either way.
    EXPECT_TRUE(reasons == (std::vector<Literal>{{0}, {4}})
                || reasons == (std::vector<Literal>{{0}, {2}, {4}}));
}

// Two points that are each 3 and 1 later than wanted, for reasons of their own: for more than 2 the first
// will do.
TEST(Timing, NamesNoMoreLagsThanItNeeds)
{
    Timing timing{3};
    for (const Point point : {1, 2}) {
        ASSERT_TRUE(timing.add({point, origin, 0}, noLiteral));
        timing.addSoft({{origin, point, 5}, 1});
    }
    ASSERT_TRUE(timing.add({1, origin, -8}, Literal{0}));
    ASSERT_TRUE(timing.add({2, origin, -6}, Literal{2}));
    EXPECT_EQ(shown(timing.price()), 4);
    std::vector<Literal> forMoreThanTwo;
    timing.explainMoreThan(2, 1, forMoreThanTwo);
    EXPECT_EQ(forMoreThanTwo, std::vector<Literal>{Literal{0}});
    std::vector<Literal> forMoreThanThree;
    timing.explainMoreThan(3, 1, forMoreThanThree);
    EXPECT_EQ(forMoreThanThree.size(), 2);
}

// Prices above 2^64, as several levels in one number need them.
TEST(Timing, CountsInPricesBeyondSixtyFourBits)
{
    const Price unit = Price{1} << 80;
    Timing timing{2};
    ASSERT_TRUE(timing.add({1, origin, 0}, noLiteral));
    timing.addSoft({{1, origin, -10}, unit});
    timing.addSoft({{origin, 1, 4}, unit + 1});
    EXPECT_EQ(timing.earliest(), (std::vector<Time>{0, 4}));
    EXPECT_TRUE(timing.price() == unit * 6);
}

/// A network under construction, with every lag known by its literal, and its answers by trying all.
class Trial {
public:
    explicit Trial(std::uint64_t seed)
        : m_dice{seed}
        , m_box{.points = m_dice.between(3, 5), .low = -1, .high = 3}
        , m_always{lagsOf(m_box)}
        , m_timing{m_box.points}
    {
        for (const Lag& lag : m_always)
            EXPECT_TRUE(m_timing.add(lag, noLiteral));
        for (int count = m_dice.between(1, 5); count > 0; --count)
            addSoft();
    }

    void addSoft()
    {
        m_soft.push_back(m_dice.softLag(m_box.points));
        m_timing.addSoft(m_soft.back());
    }

    /// False once nothing keeps all lags.
    bool add()
    {
        const Literal literal{2 * static_cast<int>(m_named.size())};
        m_named.push_back(m_dice.lag(m_box.points, -3, 3));
        const bool fits = m_timing.add(m_named.back(), literal);
        EXPECT_EQ(fits, cheapest(m_box, allLags(), m_soft).has_value());
        return fits;
    }

    void expectRight()
    {
        const std::optional<Price> price = cheapest(m_box, allLags(), m_soft);
        ASSERT_TRUE(price);
        EXPECT_EQ(shown(m_timing.price()), shown(*price));
        const std::vector<Time> times = m_timing.earliest();
        EXPECT_EQ(times, leastOfCheapest(m_box, allLags(), m_soft));
        EXPECT_TRUE(keepsAll(allLags(), times));
        EXPECT_EQ(shown(costOf(m_soft, times)), shown(*price));
        Problem problem;
        problem.softLags = m_soft;
        EXPECT_EQ(shown(priceOf(problem, times)), shown(*price));
    }

    /// The lags named for the price force at least that price; with those named for a point as well, no
    /// answer of that price has the point any earlier.
    void expectExplained()
    {
        std::vector<Literal> forPrice;
        m_timing.explainPrice(forPrice);
        const Price price = m_timing.price();
        EXPECT_GE(shown(cheapest(m_box, lagsOf(forPrice), m_soft).value()), shown(price));
        const std::vector<Time> times = m_timing.earliest();
        for (Point point = 0; point < m_box.points; ++point) {
            std::vector<Literal> named = forPrice;
            m_timing.explainEarliest(point, named);
            const auto place = static_cast<std::size_t>(point);
            EXPECT_EQ(leastOfCheapest(m_box, lagsOf(named), m_soft)[place], times[place])
                << "point " << point;
        }
    }

    /// With every second soft lag worth whole units: what is proved of them, and by which lags.
    void expectLevelExplained(Price unit)
    {
        const Price bound = m_timing.bound(unit);
        EXPECT_LE(shown(bound), shown(m_timing.price() / unit));
        for (Price above = 0; above < bound; ++above) {
            std::vector<Literal> named;
            m_timing.explainMoreThan(above, unit, named);
            EXPECT_GT(shown(cheapest(m_box, lagsOf(named), m_soft).value() / unit), shown(above));
        }
    }

    void raiseEverySecond(Price unit)
    {
        m_soft.clear();
        m_timing = Timing{m_box.points};
        for (const Lag& lag : m_always)
            EXPECT_TRUE(m_timing.add(lag, noLiteral));
        for (int count = 0; count < 5; ++count) {
            SoftLag soft = m_dice.softLag(m_box.points);
            if (count % 2 == 0)
                soft.price *= unit;
            m_soft.push_back(soft);
            m_timing.addSoft(soft);
        }
    }

    void expectContradictionExplained()
    {
        std::vector<Literal> named;
        m_timing.explainPrice(named);
        EXPECT_FALSE(cheapest(m_box, lagsOf(named), {}));
    }

    void save() { m_timing.save(m_saved); }
    void restoreTo(std::size_t named)
    {
        m_timing.restore(m_saved);
        m_named.resize(named);
    }
    [[nodiscard]] Price bound(Price unit) const { return m_timing.bound(unit); }
    [[nodiscard]] std::size_t named() const { return m_named.size(); }

private:
    using Literals = std::vector<Literal>;

    [[nodiscard]] std::vector<Lag> allLags() const
    {
        std::vector<Lag> lags = m_always;
        lags.insert(lags.end(), m_named.begin(), m_named.end());
        return lags;
    }
    [[nodiscard]] std::vector<Lag> lagsOf(const Literals& literals) const
    {
        std::vector<Lag> lags = m_always;
        for (const Literal literal : literals)
            lags.push_back(m_named.at(static_cast<std::size_t>(literal.variable())));
        return lags;
    }
    [[nodiscard]] static std::vector<Lag> lagsOf(const Box& box) { return temporal::lagsOf(box); }

    Dice m_dice;
    Box m_box;
    std::vector<Lag> m_always;
    std::vector<Lag> m_named;
    std::vector<SoftLag> m_soft;
    Timing m_timing;
    Timing::Snapshot m_saved;
};

constexpr std::uint64_t cases = 500;

TEST(Timing, AgreesWithTryingAllTimes)
{
    for (std::uint64_t seed = 1; seed <= cases && !HasFailure(); ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        Trial trial{seed};
        trial.expectRight();
        for (int count = 0; count < 6 && trial.add(); ++count)
            trial.expectRight();
    }
}

TEST(Timing, TheNamedLagsAloneForceThePriceAndTheEarliestTimes)
{
    int contradictions = 0;
    for (std::uint64_t seed = 1; seed <= cases && !HasFailure(); ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        Trial trial{seed + 10'000};
        bool fits = true;
        for (int count = 0; count < 4 && fits; ++count)
            fits = trial.add();
        if (fits) {
            trial.expectExplained();
        } else {
            trial.expectContradictionExplained();
            ++contradictions;
        }
    }
    EXPECT_GT(contradictions, 50);
    EXPECT_LT(contradictions, 450);
}

// The small prices add up to at most 2 * 5 * 8, far less than a unit.
TEST(Timing, TheLagsNamedForALevelForceWhatItBounds)
{
    constexpr Price unit = 1000;
    int above = 0;
    for (std::uint64_t seed = 1; seed <= cases && !HasFailure(); ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        Trial trial{seed + 30'000};
        trial.raiseEverySecond(unit);
        bool fits = true;
        for (int count = 0; count < 4 && fits; ++count)
            fits = trial.add();
        if (!fits)
            continue;
        trial.expectRight();
        trial.expectLevelExplained(unit);
        above += trial.bound(unit) > 0 ? 1 : 0;
    }
    EXPECT_GT(above, 50);
}

TEST(Timing, RestoringTakesBackWhatWasAddedSince)
{
    for (std::uint64_t seed = 1; seed <= cases && !HasFailure(); ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        Trial trial{seed + 20'000};
        bool fits = trial.add() && trial.add();
        if (!fits)
            continue;
        trial.save();
        const std::size_t named = trial.named();
        for (int round = 0; round < 3; ++round) {
            for (int count = 0; count < 3 && trial.add(); ++count) { }
            trial.restoreTo(named);
            trial.expectRight();
        }
        if (trial.add()) {
            trial.expectRight();
            trial.expectExplained();
        }
    }
}

}  // namespace
}  // namespace core::temporal
