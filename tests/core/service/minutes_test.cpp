#include "core/service/minutes.h"

#include <gtest/gtest.h>

namespace core::service {
namespace {

using measure::HarmRate;
using measure::Seconds;

TEST(Minutes, AreWrittenAsDecimalsWhereThereIsOne)
{
    EXPECT_EQ(minutesText(Seconds{720}), "12");
    EXPECT_EQ(minutesText(Seconds{150}), "2.5");
    EXPECT_EQ(minutesText(Seconds{6}), "0.1");
    EXPECT_EQ(minutesText(Seconds{3}), "0.05");
    EXPECT_EQ(minutesText(Seconds{0}), "0");
    EXPECT_EQ(minutesText(Seconds{-150}), "-2.5");
}

TEST(Minutes, AreWrittenWithSecondsWhereNoDecimalEnds)
{
    EXPECT_EQ(minutesText(Seconds{140}), "2:20");
    EXPECT_EQ(minutesText(Seconds{1}), "0:01");
    EXPECT_EQ(minutesText(Seconds{-70}), "-1:10");
    EXPECT_EQ(minutesValue(Seconds{140}).kind, json::Kind::Text);
    EXPECT_EQ(minutesValue(Seconds{150}).kind, json::Kind::Number);
}

// Every whole second up to 24 hours comes back as it was.
TEST(Minutes, AreReadAsTheyWereWritten)
{
    for (Seconds length{0}; length <= longestLength; ++length) {
        const auto read = readMinutes(minutesValue(length));
        ASSERT_TRUE(read) << length.count();
        ASSERT_EQ(*read, length);
    }
}

// Harms are whole hundredths; 0.07 times 100 is 7.000000000000001 in binary.
TEST(Harm, IsReadAsItWasWritten)
{
    for (HarmRate harm{0}; harm <= HarmRate{2000}; ++harm.hundredths)
        ASSERT_EQ(readHarm(harmValue(harm)), harm);
    EXPECT_EQ(harmValue(HarmRate{7}).text, "0.07");
    EXPECT_EQ(harmValue(HarmRate{50}).text, "0.5");
    EXPECT_EQ(harmValue(HarmRate{100000}).text, "1000");
}

}  // namespace
}  // namespace core::service
