#pragma once

#include <cstdint>
#include <vector>

/// The restricted single-machine common due date problem: jobs are done one at a time from 0 on, with pauses
/// if that helps; each pays for every unit of time that it ends before, or after, a due date common to all.
///
/// Instances and values: D. Biskup and M. Feldmann, "Benchmarks for scheduling on a single machine against
/// restrictive and unrestrictive common due dates", Computers & Operations Research 28 (2001) 787-801, as
/// distributed in J. E. Beasley's OR-Library (schinfo, file sch10).
namespace published {

struct Job {
    int length = 0;
    int early = 0;  ///< To pay for each unit early.
    int late = 0;   ///< To pay for each unit late.
};

using Jobs = std::vector<Job>;

/// The ten instances of ten jobs, in the order of the library.
const std::vector<Jobs>& tenJobInstances();

/// The value published for an instance and the due date `tenths` / 10 of the sum of lengths, rounded down.
int publishedValue(std::size_t instance, int tenths);

int sumOfLengths(const Jobs& jobs);
int dueDate(const Jobs& jobs, int tenths);

/// The least that has to be paid, by dynamic programming over sets of jobs and whole moments; it takes
/// nothing for granted, neither the order of the jobs nor that there are no pauses.
std::int64_t leastPayment(const Jobs& jobs, int due);

}  // namespace published
