#include "core/measure/harm.h"

#include <gtest/gtest.h>

namespace core::measure {
namespace {

TEST(Harm, AddsAndComparesExactly)
{
    // Ten times 0.1 are 1, which binary fractions do not give.
    Harm sum;
    for (int i = 0; i < 10; ++i)
        sum = sum + Harm{10 * 60};
    EXPECT_EQ(sum, Harm{100 * 60});
    EXPECT_LT(Harm{5999}, Harm{6000});
}

TEST(Harm, IsShownInZoneMinutes)
{
    EXPECT_DOUBLE_EQ(Harm{6000}.minutes(), 1.0);
    EXPECT_DOUBLE_EQ((Harm{HarmRate{250}.hundredths * 90}.minutes()), 3.75);  // 2.5 a minute for 1.5 min
}

}  // namespace
}  // namespace core::measure
