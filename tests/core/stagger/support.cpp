#include "tests/core/stagger/support.h"

#include "core/service/check.h"
#include "tests/oracle/checker.h"
#include "tests/oracle/random_service.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <stdexcept>

namespace core::stagger {
namespace {

int minuteOf(Instant instant)
{
    const Seconds since = instant - opening;
    EXPECT_EQ(since % minutes{1}, Seconds{0}) << "not a whole minute";
    return static_cast<int>(since / minutes{1});
}

const PlannedTask& taskOf(const Plan& plan, const TaskId& id)
{
    const PlannedTask* task = plan.find(id);
    if (task == nullptr)
        throw std::runtime_error("the plan has no " + taskIdText(id));
    return *task;
}

}  // namespace

TaskId idOf(TaskKind kind, std::size_t item, std::size_t part, std::size_t coat)
{
    return {.service = 0, .coat = coat, .kind = kind, .item = item, .part = part};
}

oracle::Span exactly(int minute)
{
    return {minutes{minute}, minutes{minute}, minutes{minute}};
}

Zone slowZone(const std::string& name, int least, int target, int most)
{
    Zone zone = makeZone(name, minutes{11}, {minutes{least}, minutes{target}, minutes{most}});
    zone.apply.quickest = minutes{8};
    zone.apply.slowest = minutes{14};
    return zone;
}

Zone zoneWithLookAndJob()
{
    Zone zone = makeZone("Root", minutes{20}, exactly(30));
    zone.looks = service::Looks{.first = minutes{20},
                                .every = {},
                                .length = minutes{1},
                                .tolerance = minutes{2},
                                .until = minutes{21}};
    zone.late.push_back(
        {.name = "Emulsify", .before = minutes{13}, .length = minutes{10}, .tolerance = minutes{1}});
    return zone;
}

Service fromOpening(std::vector<Zone> zones)
{
    Service service = makeService(std::move(zones), minutes{5});
    service.notBefore = opening;
    return service;
}

Service readyBy(int minute, std::vector<Zone> zones)
{
    Service service = makeService(std::move(zones), minutes{5});
    service.readyBy = at(minute);
    return service;
}

void addHands(Service& service, std::vector<service::Work> kinds)
{
    const std::string name = "Hands " + std::to_string(service.crew.hands.size() + 1);
    service.crew.hands.push_back({.name = name, .away = {}, .kinds = std::move(kinds)});
}

Plan planned(const Question& question)
{
    for (const Service& service : question.services)
        EXPECT_THAT(service::checkService(service), testing::IsEmpty());
    const auto answer = plan(question);
    if (!answer)
        throw std::runtime_error("nothing fits: " + answer.error().text.text());
    EXPECT_TRUE((*answer)->proved);
    EXPECT_EQ((*answer)->provedBound, (*answer)->worth);
    EXPECT_THAT(oracle::violations(question, answer->data()), testing::IsEmpty())
        << oracle::questionText(question) << oracle::planText(question, answer->data());
    return *answer;
}

Plan planned(const Service& service)
{
    return planned(ask(service));
}

NoPlan refused(const Question& question)
{
    const auto answer = plan(question);
    if (answer)
        throw std::runtime_error("it fits:\n" + oracle::planText(question, answer->data()));
    EXPECT_FALSE(answer.error().stopped);
    EXPECT_FALSE(answer.error().text.empty());
    return answer.error();
}

NoPlan refused(const Service& service)
{
    return refused(ask(service));
}

bool fits(const Question& question)
{
    return plan(question).has_value();
}

bool fits(const Service& service)
{
    return fits(ask(service));
}

std::string demandsOf(const NoPlan& reason)
{
    std::string lines;
    for (const Demand& demand : reason.demands)
        lines += demand.what.text() + '\n';
    return lines;
}

int startOf(const Plan& plan, const TaskId& id)
{
    return minuteOf(taskOf(plan, id).start);
}

int endOf(const Plan& plan, const TaskId& id)
{
    return minuteOf(taskOf(plan, id).end);
}

int developmentOf(const Plan& plan, std::size_t zone, std::size_t coat)
{
    const PlannedZone* found = plan.zone(0, coat, zone);
    if (found == nullptr)
        throw std::runtime_error("the plan has no zone " + std::to_string(zone));
    return static_cast<int>(found->development() / minutes{1});
}

double deviationOf(const Plan& plan)
{
    return plan->worth.deviation.minutes();
}

void happened(Question& question, const TaskId& id, int from, std::optional<int> until)
{
    question.progress.tasks.push_back({.id = id, .start = at(from), .end = {}, .plannedEnd = {}});
    if (until)
        question.progress.tasks.back().end = at(*until);
}

}  // namespace core::stagger
