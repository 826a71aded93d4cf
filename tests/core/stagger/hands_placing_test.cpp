#include "core/stagger/guarantee.h"
#include "core/stagger/hands_placing.h"
#include "tests/core/stagger/support.h"
#include "tests/oracle/random_service.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

// Who is given what at a node of the search, where hands are decided by name.

namespace core::stagger {
namespace {

using temporal::Distances;
using temporal::origin;
using Times = std::vector<Time>;

Distances distancesOf(const Draft& draft)
{
    Distances distances{draft.problem.points};
    for (std::size_t lag = 0; lag < draft.ruleLags; ++lag)
        EXPECT_TRUE(distances.addForGood(draft.problem.lags[lag]));
    return distances;
}

std::vector<Point> numbersOf(const Draft& draft)
{
    std::vector<Point> points;
    for (Point point = *draft.numberZero; point < draft.problem.points; ++point)
        points.push_back(point);
    return points;
}

/// Three zones on two pairs of hands: Root takes 8 to 14 min, usually 11, the others what they are said to.
struct Three {
    explicit Three(int mids)
        : service{fromOpening({slowZone("Root", 20, 30, 40), makeZone("Mids", minutes{mids}, exactly(20)),
                               makeZone("Ends", minutes{3}, exactly(20))})}
    {
        addHands(service);
        question = ask(service);
        draft = draftOf(question, Strictness::Keep, {}, {}, wholeGive);
        times.resize(static_cast<std::size_t>(draft.problem.points), 0);
    }

    /// `minute` from the opening, as the start of the zone's application.
    void begin(std::size_t zone, int minute)
    {
        for (const Busy& busy : draft.busy) {
            if (busy.id == idOf(TaskKind::Apply, zone))
                times[static_cast<std::size_t>(busy.start.point)] = minute * 60 - busy.start.offset;
        }
    }

    [[nodiscard]] Time handsOf(std::size_t zone) const
    {
        const auto busy = std::ranges::find(draft.busy, idOf(TaskKind::Apply, zone), &Busy::id);
        return times[static_cast<std::size_t>(*busy->hands)];
    }

    Service service;
    Question question;
    Draft draft;
    Times times;
};

TEST(HandsPlacing, GivesATaskToTheLowestHandsThatAreFree)
{
    Three three{5};
    three.begin(0, 0);
    three.begin(1, 0);
    three.begin(2, 14);  // Root is over by then, however long it takes.
    placeHands(three.draft, three.times, distancesOf(three.draft));
    EXPECT_EQ(three.handsOf(0), 0);
    EXPECT_EQ(three.handsOf(1), 1);
    EXPECT_EQ(three.handsOf(2), 0);
}

TEST(HandsPlacing, RatherGivesATaskToHandsThatAreFreeHoweverLongApplyingTakes)
{
    Three three{5};
    three.begin(0, 0);
    three.begin(1, 0);
    three.begin(2, 11);  // Root is usually over.
    placeHands(three.draft, three.times, distancesOf(three.draft));
    EXPECT_EQ(three.handsOf(2), 1);
}

TEST(HandsPlacing, TakesHandsThatAreUsuallyFreeBeforeThoseThatAreNot)
{
    Three three{12};
    three.begin(0, 0);
    three.begin(1, 0);
    three.begin(2, 11);
    placeHands(three.draft, three.times, distancesOf(three.draft));
    EXPECT_EQ(three.handsOf(2), 0);
}

TEST(HandsPlacing, KeepsToWhatIsDecided)
{
    Three three{5};
    three.begin(0, 0);
    three.begin(1, 0);
    three.begin(2, 14);
    Distances distances = distancesOf(three.draft);
    const auto hands = [&](std::size_t zone) {
        return *std::ranges::find(three.draft.busy, idOf(TaskKind::Apply, zone), &Busy::id)->hands;
    };
    ASSERT_TRUE(distances.addForGood({hands(0), hands(2), -1}));  // Ends before Root, by number.
    placeHands(three.draft, three.times, distances);
    EXPECT_EQ(three.handsOf(0), 1);
    EXPECT_EQ(three.handsOf(1), 0);
    EXPECT_EQ(three.handsOf(2), 0);
}

// Whatever is decided about numbers: what is given keeps to it, and leaves the times alone.
TEST(HandsPlacing, KeepsEveryDistanceThatRandomDecisionsLeave)
{
    std::size_t placed = 0;
    std::size_t decided = 0;
    std::mt19937_64 engine{7};
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        Question question = oracle::randomQuestion(seed, {.mostHeads = 2, .mostHands = 4});
        for (Service& service : question.services) {
            for (service::Coat& coat : service.coats) {
                for (Zone& zone : coat.zones)
                    zone.apply.slowest += Seconds{60};
            }
        }
        const Draft draft = draftOf(question, Strictness::Keep, {}, {}, wholeGive);
        if (draft.impossible || !draft.numberZero)
            continue;
        Distances distances{draft.problem.points};
        const bool keeps = std::ranges::all_of(draft.problem.lags,
                                               [&](const Lag& lag) { return distances.addForGood(lag); });
        if (!keeps)
            continue;
        const std::vector<Point> numbers = numbersOf(draft);
        for (int tries = 0; tries < 12; ++tries) {
            const Lag lag{numbers[engine() % numbers.size()], numbers[engine() % numbers.size()],
                          static_cast<Time>(engine() % 4) - 2};
            decided += distances.addForGood(lag) ? 1U : 0U;
        }
        Times times(static_cast<std::size_t>(draft.problem.points), 0);
        for (Point point = 0; point < *draft.numberZero; ++point)
            times[static_cast<std::size_t>(point)] = -distances.between(point, origin);
        const Times before = times;
        placeHands(draft, times, distances);
        for (const Point from : numbers) {
            for (const Point to : numbers)
                EXPECT_LE(times[static_cast<std::size_t>(to)] - times[static_cast<std::size_t>(from)],
                          distances.between(from, to));
        }
        EXPECT_TRUE(std::equal(before.begin(), before.begin() + *draft.numberZero, times.begin()));
        ++placed;
    }
    EXPECT_GT(placed, 100U);
    EXPECT_GT(decided, 400U);
}

}  // namespace
}  // namespace core::stagger
