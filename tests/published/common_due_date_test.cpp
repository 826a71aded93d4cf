#include "core/service/check.h"
#include "tests/oracle/checker.h"
#include "tests/oracle/service_maker.h"
#include "tests/published/due_date_jobs.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// A coat is a common due date problem when there is one pair of hands, nothing to mix, and the water is
// booked: with jobs of lengths that sum up to P and the due date d, the water comes at d + P and every target
// is P. A zone whose application ends E before d then develops for P + E and pays `over` for E; one that ends
// later pays `under`. One unit of time is one second here.
//
// Source of instances and values: tests/published/due_date_jobs.h.

namespace published {
namespace {

using core::measure::Seconds;
using core::stagger::Question;
using oracle::opening;

Question coatOf(const Jobs& jobs, int due)
{
    const Seconds sum{sumOfLengths(jobs)};
    std::vector<core::service::Zone> zones;
    for (const Job& job : jobs) {
        zones.push_back(oracle::makeZone("Job " + std::to_string(zones.size() + 1), Seconds{job.length},
                                         {Seconds{0}, sum, 2 * sum}));
        zones.back().over.hundredths = 100 * job.early;
        zones.back().under.hundredths = 100 * job.late;
    }
    core::service::Service made = oracle::makeService(std::move(zones), Seconds{1});
    made.notBefore = opening;
    made.coats[0].groups[0].waterEarliest = opening + Seconds{due} + sum;
    made.coats[0].groups[0].waterLatest = made.coats[0].groups[0].waterEarliest;
    return oracle::ask(made);
}

struct Case {
    std::size_t instance;
    int tenths;
};

std::vector<Case> allCases()
{
    std::vector<Case> cases;
    for (std::size_t instance = 0; instance < tenJobInstances().size(); ++instance)
        for (int tenths = 2; tenths <= 8; tenths += 2)
            cases.push_back({instance, tenths});
    return cases;
}

class CommonDueDate : public testing::TestWithParam<Case> {
protected:
    const Jobs& m_jobs = tenJobInstances().at(GetParam().instance);
    const int m_due = dueDate(m_jobs, GetParam().tenths);
    const int m_published = publishedValue(GetParam().instance, GetParam().tenths);
};

TEST_P(CommonDueDate, PublishedValueIsTheLeastThereIs)
{
    EXPECT_EQ(leastPayment(m_jobs, m_due), m_published);
}

TEST_P(CommonDueDate, PlanReachesThePublishedValue)
{
    const Question question = coatOf(m_jobs, m_due);
    ASSERT_THAT(core::service::checkService(question.services.front()), testing::IsEmpty());
    const auto plan = core::stagger::plan(question);
    ASSERT_TRUE(plan) << plan.error().text;
    EXPECT_TRUE((*plan)->proved);
    EXPECT_EQ((*plan)->worth.deviation.hundredthSeconds, 100 * m_published);
    EXPECT_THAT(oracle::violations(question, plan->data()), testing::IsEmpty());
}

INSTANTIATE_TEST_SUITE_P(BiskupFeldmann, CommonDueDate, testing::ValuesIn(allCases()),
                         [](const testing::TestParamInfo<Case>& drawn) {
                             return "Instance" + std::to_string(drawn.param.instance + 1) + "Due0"
                                 + std::to_string(drawn.param.tenths);
                         });

}  // namespace
}  // namespace published
