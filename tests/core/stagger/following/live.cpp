#include "tests/core/stagger/following/live.h"

#include "tests/oracle/checker.h"
#include "tests/oracle/plan_from_starts.h"
#include "tests/oracle/random_service.h"
#include "tests/oracle/service_maker.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace core::stagger {

LiveRun::LiveRun(Question question, std::map<TaskId, Seconds> lengths, Way way, std::mt19937_64& random)
    : m_asked{question}
    , m_question{std::move(question)}
    , m_lengths{std::move(lengths)}
    , m_way{way}
    , m_random{random}
{
}

Instant LiveRun::wanted(const SafeStart& safe)
{
    const Instant planned = std::max(m_plan->find(safe.task)->start, safe.earliest);
    // Where nothing sets a limit, long after all that has one.
    const Instant latest = safe.latest.value_or(safe.earliest + Seconds{2000});
    switch (m_way) {
    case Way::AsPlanned: return std::min(planned, latest);
    case Way::AsSoonAsSafe: return safe.earliest;
    case Way::AtTheLatest: return latest;
    case Way::AtRandom: break;
    }
    const Seconds room = latest - safe.earliest;
    if (m_random() % 3 == 0)
        return safe.earliest;
    return safe.earliest + Seconds{std::uniform_int_distribution<std::int64_t>{0, room.count()}(m_random)};
}

bool LiveRun::planAgain()
{
    auto answer = plan(m_question);
    if (!answer || (*answer)->give.value_or(100) != 100) {
        m_wrong = answer ? "the plan is guaranteed no more"
                         : "nothing fits any more: " + answer.error().text.text();
        return false;
    }
    m_plan = *std::move(answer);
    m_safe = safeStarts(m_question, *m_plan);
    m_wanted.clear();
    const auto open = std::ranges::count(m_plan->data().tasks, TaskState::Open, &PlannedTask::state);
    if (static_cast<std::size_t>(open) != m_safe.size())
        m_wrong = "there is not a safe start for each open task";
    for (const SafeStart& safe : m_safe) {
        m_wanted[safe.task] = wanted(safe);
        if (safe.safeFor != SafeFor::LengthsHeld || safe.earliest < *m_question.now
            || safe.latest.value_or(Instant::max()) < std::max(safe.earliest, m_plan->find(safe.task)->start))
            m_wrong = "no safe start for " + taskIdText(safe.task);
    }
    return m_wrong.empty();
}

const SafeStart* LiveRun::nextStart()
{
    const auto next = std::ranges::min_element(
        m_safe, {}, [this](const SafeStart& safe) { return m_wanted.at(safe.task); });
    return next == m_safe.end() ? nullptr : &*next;
}

Instant LiveRun::endOf(const TaskProgress& running) const
{
    const auto length = m_lengths.find(running.id);
    return length != m_lengths.end() ? running.start + length->second : *running.plannedEnd;
}

TaskProgress* LiveRun::nextEnd()
{
    TaskProgress* next = nullptr;
    for (TaskProgress& task : m_question.progress.tasks) {
        if (!task.end && (next == nullptr || endOf(task) < endOf(*next)))
            next = &task;
    }
    return next;
}

/// Whether it has to be asked again before a start then: because an application has gone past its usual
/// length since the plan was made, or because what was to come before may not have been started.
bool LiveRun::isStale(Instant moment) const
{
    if (moment <= *m_question.now)
        return false;
    return m_way == Way::AtRandom
        || std::ranges::any_of(m_question.progress.tasks, [moment](const TaskProgress& task) {
               return !task.end && task.id.kind == TaskKind::Apply && *task.plannedEnd <= moment;
           });
}

void LiveRun::start(const SafeStart& safe)
{
    const Instant now = m_wanted.at(safe.task);
    m_question.now = now;
    const Seconds usual = usualLength(m_question.services.at(safe.task.service), safe.task);
    TaskProgress task{.id = safe.task, .start = now, .end = {}, .plannedEnd = now + usual};
    if (usual == Seconds{0})
        task.end = now;
    m_question.progress.tasks.push_back(task);
}

bool LiveRun::step()
{
    const SafeStart* begins = nextStart();
    TaskProgress* ends = nextEnd();
    if (begins == nullptr && ends == nullptr)
        return false;
    if (ends != nullptr && (begins == nullptr || endOf(*ends) <= m_wanted.at(begins->task))) {
        ends->end = endOf(*ends);
        m_question.now = ends->end;
    } else if (isStale(m_wanted.at(begins->task))) {
        m_question.now = m_wanted.at(begins->task);
    } else {
        start(*begins);
    }
    return planAgain();
}

std::string LiveRun::judged() const
{
    Question known = m_asked;
    known.guarantee = false;
    oracle::Starts starts;
    for (const TaskProgress& task : m_question.progress.tasks) {
        starts[task.id] = task.start;
        if (task.id.kind != TaskKind::Apply)
            continue;
        const Seconds length = *task.end - task.start;
        known.services.at(task.id.service).coats.at(task.id.coat).zones.at(task.id.item).apply = {
            length, length, length};
    }
    const auto made = oracle::planFromStarts(known, starts);
    if (!made)
        return "there are not enough hands";
    std::vector<std::string> wrong = oracle::violations(known, *made);
    // A look that was due when it was made binds water no more: that may come before the look would be due.
    std::erase_if(wrong, [](const std::string& line) {
        return line.ends_with("is made though it is not due") || line.ends_with("is not listed as not due");
    });
    return wrong.empty() ? "" : testing::PrintToString(wrong) + '\n' + oracle::planText(known, *made);
}

std::string LiveRun::go()
{
    if (planAgain()) {
        while (step()) { }
    }
    if (!m_wrong.empty())
        return m_wrong + '\n' + (m_plan ? oracle::planText(m_question, m_plan->data()) : "");
    return judged();
}

namespace {

/// See `liveThrough`.
void simplify(Question& question)
{
    for (service::Service& service : question.services) {
        for (service::Hands& hands : service.crew.hands) {
            hands.kinds.clear();
            hands.away.clear();
        }
        for (service::Coat& coat : service.coats) {
            for (service::Zone& zone : coat.zones) {
                if (!zone.looks || zone.clock != service::ClockStart::FirstContact)
                    continue;
                zone.looks->first = std::max(zone.looks->first, zone.apply.usual);
                zone.looks->until = std::max(zone.looks->until, zone.looks->first + Seconds{1});
            }
        }
    }
}

std::map<TaskId, Seconds> randomLengths(const Question& question, std::mt19937_64& random)
{
    std::map<TaskId, Seconds> lengths;
    for (std::size_t head = 0; head < question.services.size(); ++head) {
        for (const TaskId& id : tasksOf(question.services[head], head)) {
            if (id.kind != TaskKind::Apply)
                continue;
            const service::Application& apply =
                question.services[head].coats.at(id.coat).zones.at(id.item).apply;
            lengths[id] = Seconds{std::uniform_int_distribution<std::int64_t>{apply.quickest.count(),
                                                                              apply.slowest.count()}(random)};
        }
    }
    return lengths;
}

}  // namespace

int liveThrough(const Living& living)
{
    int plans = 0;
    int runs = 0;
    for (std::uint64_t seed = living.seed; plans < living.plans; ++seed) {
        Question question = uncertainQuestion(seed, living.zones, living.heads, Seconds{1});
        simplify(question);
        question.now = question.now.value_or(question.services.front().notBefore.value_or(oracle::opening));
        const auto found = plan(question, {.conflicts = 20'000, .stop = {}});
        if (!found || (*found)->give != 100)
            continue;
        ++plans;
        std::mt19937_64 random{seed};
        for (int run = 0; run < living.runs; ++run) {
            const std::map<TaskId, Seconds> lengths = randomLengths(question, random);
            for (const Way way : everyWay) {
                ++runs;
                const std::string wrong = LiveRun{question, lengths, way, random}.go();
                EXPECT_EQ(wrong, "") << "seed " << seed << ", way " << static_cast<int>(way) << '\n'
                                     << oracle::questionText(question)
                                     << oracle::planText(question, found->data());
            }
        }
        if (testing::Test::HasFailure())
            break;
    }
    return runs;
}

}  // namespace core::stagger
