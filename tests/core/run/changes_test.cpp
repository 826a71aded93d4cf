#include "tests/core/run/support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace core::run {
namespace {

using Kind = Answer::Kind;

/// A wall clock that is put back one hour at 01:00Z on 25 October 2026, as in London.
class AutumnClock final : public measure::TimeZones {
public:
    [[nodiscard]] bool knows(std::string_view) const override { return true; }
    [[nodiscard]] std::vector<Instant> instantsOf(measure::LocalTime, std::string_view) const override
    {
        return {};
    }
    [[nodiscard]] measure::LocalTime localAt(Instant instant, std::string_view) const override
    {
        using namespace std::chrono_literals;
        const Instant change = std::chrono::sys_days{2026y / 10 / 25} + 1h;
        return measure::LocalTime{instant.time_since_epoch() + (instant < change ? Seconds{1h} : Seconds{0})};
    }
};

std::vector<std::string> sentences(const Teller& teller, const State& state)
{
    std::vector<std::string> texts;
    for (const Change& change : state.changes)
        texts.push_back(changesText(teller.setup.services, {change}, measure::UtcOnly{}));
    return texts;
}

// Root ends at 14:13 instead of 14:10, so Mids 14:13, Ends 14:19 and water 14:13 + 35 = 14:48 follow.
TEST(Changes, ALateEndMovesWhatFollows)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(13));
    EXPECT_THAT(sentences(teller, teller.at(clockAt(13))),
                testing::ElementsAre("Apply Mids moves to 14:13 (from 14:10).",
                                     "Apply Ends moves to 14:19 (from 14:16).",
                                     "Rinse All together moves to 14:48 (from 14:45)."));
}

// Mids takes 3 min more, so Ends starts at 14:19 and Mids is at its target at 14:19 + 28 = 14:47.
TEST(Changes, WaterThatMovesIsSaid)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(19));
    EXPECT_THAT(sentences(teller, teller.at(clockAt(19))),
                testing::ElementsAre("Apply Ends moves to 14:19 (from 14:16).",
                                     "Rinse All together moves to 14:47 (from 14:45)."));
}

TEST(Changes, WaterThatStaysIsNamedBesideWhatMoved)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(17));
    EXPECT_THAT(sentences(teller, teller.at(clockAt(17))),
                testing::ElementsAre("Apply Ends moves to 14:17 (from 14:16).",
                                     "Rinse All together stays at 14:45."));
}

TEST(Changes, AreOneSentenceWaterFirst)
{
    Teller teller{wig()};
    applyZone(teller, 0, clockAt(0), clockAt(13));
    const auto sentence = [&](std::size_t most) {
        return changesText(teller.setup.services, teller.at(clockAt(13)).changes, measure::UtcOnly{}, most);
    };
    EXPECT_EQ(sentence(3),
              "Rinse All together moves to 14:48 (from 14:45), Apply Mids moves to 14:13 (from 14:10), Apply "
              "Ends moves "
              "to 14:19 (from 14:16).");
    EXPECT_EQ(
        sentence(2),
        "Rinse All together moves to 14:48 (from 14:45), Apply Mids moves to 14:13 (from 14:10) and 1 more.");
    EXPECT_EQ(changesText(teller.setup.services, {}, measure::UtcOnly{}), "");
}

TEST(Changes, NothingIsSaidWhereNothingMovedByTheClock)
{
    Teller teller{wig()};
    teller.mustTell(Kind::Start, apply(0), clockAt(0, 20));
    EXPECT_TRUE(teller.at(clockAt(0, 20)).changes.empty());
}

TEST(Changes, WhatIsLeftOutIsSaid)
{
    Teller teller{wig()};
    teller.mustTell(Kind::Drop, apply(2), clockAt(0));
    EXPECT_THAT(
        sentences(teller, teller.at(clockAt(0))),
        testing::ElementsAre("Rinse All together stays at 14:45.", "Apply Ends is no longer planned."));
}

TEST(Changes, AmongSeveralHeadsEachIsNamed)
{
    const Change moved{.task = apply(1), .from = clockAt(0), .to = clockAt(10)};
    std::vector services{wig(), wig()};
    services[0].head.name = "The ghost";
    EXPECT_EQ(changesText(services, {moved}, measure::UtcOnly{}),
              "The ghost: " + changesText({wig()}, {moved}, measure::UtcOnly{}).text());
}

// IANA time zone data, Europe/London: clocks go back from 02:00 to 01:00 at 01:00Z on 25 October 2026.
TEST(Changes, ClockTimesAreThoseOfTheWall)
{
    using namespace std::chrono_literals;
    const Instant change = std::chrono::sys_days{2026y / 10 / 25} + 1h;
    const Change moved{.task = apply(1), .from = change - minutes(5), .to = change + minutes(10)};
    EXPECT_EQ(changesText({wig()}, {moved}, AutumnClock{}), "Apply Mids moves to 01:10 (from 01:55).");
}

}  // namespace
}  // namespace core::run
