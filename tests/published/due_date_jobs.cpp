#include "tests/published/due_date_jobs.h"

#include <algorithm>
#include <array>
#include <limits>

namespace published {
namespace {

// Rows are instances 1 to 10; columns the due dates 0.2, 0.4, 0.6 and 0.8 of the sum of lengths.
constexpr std::array<std::array<int, 4>, 10> values = {{
    {1936, 1025, 841, 818},
    {1042, 615, 615, 615},
    {1586, 917, 793, 793},
    {2139, 1230, 815, 803},
    {1187, 630, 521, 521},
    {1521, 908, 755, 755},
    {2170, 1374, 1101, 1083},
    {1720, 1020, 610, 540},
    {1574, 876, 582, 554},
    {1869, 1136, 710, 671},
}};

// Length, early, late.
const std::vector<Jobs> instances = {
    {{20, 4, 5},
     {6, 1, 15},
     {13, 5, 13},
     {13, 2, 13},
     {12, 7, 6},
     {12, 9, 8},
     {12, 5, 15},
     {3, 6, 1},
     {12, 6, 8},
     {13, 10, 1}},
    {{6, 5, 9},
     {19, 8, 12},
     {20, 5, 1},
     {16, 8, 15},
     {11, 3, 12},
     {11, 6, 1},
     {5, 9, 13},
     {11, 7, 1},
     {10, 10, 2},
     {20, 5, 1}},
    {{12, 6, 12},
     {11, 4, 9},
     {7, 6, 3},
     {20, 5, 2},
     {11, 9, 4},
     {10, 4, 8},
     {19, 3, 10},
     {20, 8, 2},
     {9, 4, 10},
     {6, 9, 15}},
    {{19, 7, 15},
     {4, 1, 6},
     {15, 7, 6},
     {3, 1, 4},
     {11, 5, 11},
     {9, 1, 15},
     {12, 7, 7},
     {8, 9, 3},
     {8, 8, 3},
     {13, 4, 15}},
    {{5, 8, 4},
     {16, 7, 3},
     {2, 7, 8},
     {6, 7, 6},
     {10, 1, 2},
     {8, 8, 8},
     {5, 1, 5},
     {16, 10, 3},
     {7, 2, 11},
     {19, 8, 15}},
    {{11, 9, 7},
     {9, 4, 15},
     {9, 8, 11},
     {10, 4, 8},
     {10, 8, 9},
     {6, 5, 15},
     {18, 4, 2},
     {5, 1, 4},
     {5, 6, 5},
     {5, 3, 14}},
    {{18, 9, 10},
     {1, 10, 12},
     {16, 8, 13},
     {13, 10, 10},
     {9, 4, 1},
     {5, 2, 7},
     {12, 8, 15},
     {13, 2, 5},
     {4, 10, 13},
     {12, 8, 14}},
    {{4, 10, 14},
     {14, 7, 9},
     {4, 9, 1},
     {16, 6, 12},
     {9, 10, 7},
     {4, 9, 14},
     {5, 2, 12},
     {2, 3, 5},
     {3, 4, 6},
     {18, 2, 13}},
    {{10, 1, 2},
     {6, 4, 6},
     {11, 9, 3},
     {20, 3, 14},
     {8, 6, 14},
     {3, 7, 7},
     {18, 6, 10},
     {10, 4, 6},
     {1, 8, 15},
     {5, 7, 13}},
    {{16, 2, 6},
     {19, 10, 3},
     {18, 10, 6},
     {3, 9, 1},
     {8, 2, 6},
     {2, 4, 14},
     {12, 10, 7},
     {18, 5, 7},
     {20, 2, 8},
     {11, 1, 12}},
};

}  // namespace

const std::vector<Jobs>& tenJobInstances()
{
    return instances;
}

int publishedValue(std::size_t instance, int tenths)
{
    return values.at(instance).at(static_cast<std::size_t>(tenths / 2 - 1));
}

int sumOfLengths(const Jobs& jobs)
{
    int sum = 0;
    for (const Job& job : jobs)
        sum += job.length;
    return sum;
}

int dueDate(const Jobs& jobs, int tenths)
{
    return sumOfLengths(jobs) * tenths / 10;
}

std::int64_t leastPayment(const Jobs& jobs, int due)
{
    // least[set][moment]: with the jobs of `set` over by `moment`. No schedule needs more than due + sum.
    constexpr std::int64_t impossible = std::numeric_limits<std::int64_t>::max() / 2;
    const int latest = due + sumOfLengths(jobs);
    const auto moments = static_cast<std::size_t>(latest) + 1;
    std::vector<std::vector<std::int64_t>> least(std::size_t{1} << jobs.size(),
                                                 std::vector<std::int64_t>(moments, impossible));
    std::ranges::fill(least[0], 0);
    for (std::size_t set = 1; set < least.size(); ++set)
        for (int moment = 1; moment <= latest; ++moment) {
            std::int64_t best = least[set][static_cast<std::size_t>(moment - 1)];
            for (std::size_t last = 0; last < jobs.size(); ++last) {
                const Job& job = jobs[last];
                if ((set >> last & 1) == 0 || moment < job.length)
                    continue;
                const std::int64_t pays = std::int64_t{job.early} * std::max(0, due - moment)
                    + std::int64_t{job.late} * std::max(0, moment - due);
                const auto& before = least[set ^ (std::size_t{1} << last)];
                best = std::min(best, before[static_cast<std::size_t>(moment - job.length)] + pays);
            }
            least[set][static_cast<std::size_t>(moment)] = best;
        }
    return least.back().back();
}

}  // namespace published
