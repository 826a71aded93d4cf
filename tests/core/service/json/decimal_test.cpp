#include "core/service/json/decimal.h"

#include <gtest/gtest.h>

namespace core::service::json {
namespace {

void expectExact(const char* number, std::int64_t factor, std::int64_t value)
{
    const Scaled result = scaled(number, factor);
    EXPECT_EQ(result.exactness, Exactness::Exact) << number;
    EXPECT_EQ(result.value, value) << number;
}

TEST(Scaled, IsExactWhereBinaryFractionsAreNot)
{
    expectExact("0.1", 60, 6);  // 0.1 has no finite binary fraction
    expectExact("0.7", 60, 42);
    expectExact("4.35", 100, 435);  // 4.35 * 100 is 434.99999999999994 in binary
    expectExact("1.15", 60, 69);
}

TEST(Scaled, ReadsEveryWayOfWritingANumber)
{
    expectExact("0", 60, 0);
    expectExact("-0.0", 60, 0);
    expectExact("-2.5", 60, -150);
    expectExact("12", 1, 12);
    expectExact("1.2e1", 60, 720);
    expectExact("1200E-2", 60, 720);
    expectExact("12.000000000000000000000000000000000", 60, 720);
    expectExact("0.0000000000000000000012e+22", 1, 12);
    expectExact("999999999999", 100, 99999999999900);
}

TEST(Scaled, RefusesWhatIsNotWhole)
{
    for (const char* number :
         {"0.33", "0.01", "0.001", "1e-3", "1e-999999999999", "0.10000000000000000000001"})
        EXPECT_EQ(scaled(number, 60).exactness, Exactness::NotWhole) << number;
    EXPECT_EQ(scaled("0.125", 100).exactness, Exactness::NotWhole);
}

TEST(Scaled, RefusesWhatIsTooLarge)
{
    for (const char* number :
         {"1000000000000", "1e12", "1e308", "18446744073709551615", "-1e99", "1e999999999999"})
        EXPECT_EQ(scaled(number, 60).exactness, Exactness::TooLarge) << number;
}

}  // namespace
}  // namespace core::service::json
