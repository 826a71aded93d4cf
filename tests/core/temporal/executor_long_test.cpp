#include "tests/core/temporal/uncertain_networks.h"

#include <gtest/gtest.h>

namespace core::temporal {
namespace {

// Following the rule never breaks a lag: a thousand networks of five to ten links, every extreme combination
// of lengths and a thousand random ones each.
TEST(ExecutorLong, KeepsEveryLagInAMillionRandomRunsAndAllExtremeOnes)
{
    EXPECT_GT(runManyLinks(1'000'000, 1000, 1000), 1'000'000);
}

}  // namespace
}  // namespace core::temporal
