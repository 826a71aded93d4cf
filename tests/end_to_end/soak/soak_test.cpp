#include "tests/end_to_end/soak/day.h"

#include <gtest/gtest.h>

#include <cstdio>

namespace soak {
namespace {

/// 24 hours of work in one go; SEED in the environment chooses another day.
TEST(Soak, ADayOfSeveralHeadsLosesNothingMissesNoLimitAndDoesNotGrow)
{
    const char* const chosen = std::getenv("SEED");
    Day day{chosen ? std::strtoull(chosen, nullptr, 10) : 20260314};
    day.workFor(std::chrono::hours{3});
    const std::size_t warm = residentMemory();
    day.workFor(std::chrono::hours{21});
    const std::size_t after = residentMemory();

    for (const auto& [what, count] : day.counts)
        std::printf("%8zu  %s\n", count, what.c_str());
    std::printf("memory after 3 hours %zu MB, after 24 hours %zu MB\n", warm >> 20U, after >> 20U);
    constexpr std::size_t room = std::size_t{48} << 20U;
    EXPECT_LT(after, warm + room) << "what is kept in memory must not grow with the day";
    for (const char* const what :
         {"answers", "corrections", "interruptions", "early rinses", "zones apart", "zones added", "helpers",
          "times away", "heat", "restarts", "moments past a limit"})
        EXPECT_GT(day.counts[what], 3u) << what << ": too few to say anything";
}

}  // namespace
}  // namespace soak
