#include "tests/core/stagger/following/followed.h"

#include "core/service/check.h"
#include "tests/oracle/checker.h"
#include "tests/oracle/figures.h"
#include "tests/oracle/numbering.h"
#include "tests/oracle/random_service.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>

namespace core::stagger {
namespace {

service::Zone& zoneOf(Question& question, const TaskId& id)
{
    return question.services.at(id.service).coats.at(id.coat).zones.at(id.item);
}

/// Whatever has happened: the numbers of hands are those of the plan, not the lowest of this run.
const TaskId noTask{.coat = SIZE_MAX, .kind = TaskKind::Look};

PlannedNetwork networkOf(const Question& question, const Plan& plan)
{
    auto planned = plannedNetwork(question, plan);
    if (!planned)
        throw std::runtime_error("the plan keeps no rules");
    return *std::move(planned);
}

/// Looks at a zone that was still being applied, as usual: the glance was part of applying, however long that
/// took.
void leaveOutGlances(Question& question, const Followed& followed)
{
    for (const TaskId& look : followed.looksNotDue) {
        const service::Zone& zone = zoneOf(question, look);
        const Seconds moment = zone.looks->moments().at(look.part);
        if (zone.clock == service::ClockStart::FirstContact
            && moment + zone.looks->tolerance < zone.apply.usual)
            question.progress.dropped.push_back(look);
    }
}

/// Basins are alike, and the plan's numbers are the lowest as planned: here are those of this run.
void numberBasins(const Question& question, PlanData& plan)
{
    const oracle::Numbers numbers = oracle::lowestBasins(oracle::PlanView{question, plan});
    std::size_t rinse = 0;
    for (PlannedTask& task : plan.tasks) {
        if (task.id.kind == TaskKind::Rinse || task.id.kind == TaskKind::RinseAlone)
            task.basin = numbers.at(rinse++);
    }
}

}  // namespace

std::vector<std::string> wrongWith(const Question& question, const Followed& followed)
{
    Question known = question;
    known.guarantee = false;
    known.progress.dropped.push_back(noTask);
    leaveOutGlances(known, followed);
    PlanData plan;
    plan.tasks = followed.tasks;
    plan.looksNotDue = followed.looksNotDue;
    for (const PlannedTask& task : plan.tasks) {
        if (task.id.kind == TaskKind::Apply && task.state != TaskState::Done) {
            const Seconds length = task.end - task.start;
            zoneOf(known, task.id).apply = {length, length, length};
        }
    }
    std::ranges::sort(plan.tasks, [](const PlannedTask& a, const PlannedTask& b) {
        return a.start != b.start ? a.start < b.start : a.id < b.id;
    });
    numberBasins(known, plan);
    const oracle::PlanView view{known, plan};
    plan.zones = oracle::zoneFigures(view);
    plan.worth = plan.provedBound = oracle::worthOf(view);
    plan.start = oracle::startOf(view);
    plan.end = oracle::endOf(view);
    return oracle::violations(known, plan);
}

Follower::Follower(const Question& question, const Plan& plan)
    : m_question{question}
    , m_plan{plan}
    , m_planned{networkOf(question, plan)}
    , m_executor{temporal::Executor::of(m_planned.network)}
{
    if (!m_executor)
        throw std::runtime_error("no strategy wins, though the plan says so");
}

void Follower::wish(Way way, std::mt19937_64& random)
{
    m_wished = m_planned.times;
    if (way == Way::AsPlanned)
        return;
    std::uniform_int_distribution<Time> around{-900, 900};
    for (Time& time : m_wished) {
        if (way == Way::AtRandom)
            time += around(random);
        else
            time = way == Way::AsSoonAsSafe ? -temporal::farTime : temporal::farTime;
    }
}

Followed Follower::follow(const std::vector<Time>& lengths, Way way, std::mt19937_64& random)
{
    wish(way, random);
    m_executor->run(lengths, m_wished, m_times);
    Followed followed{.tasks = m_plan->tasks, .looksNotDue = m_plan->looksNotDue};
    const auto move = [&](const TaskId& id, const Moment& start, const Moment& end) {
        const auto task = std::ranges::find(followed.tasks, id, &PlannedTask::id);
        if (task == followed.tasks.end())
            return;
        task->start = m_planned.draft.instantOf(start, m_times);
        task->end = m_planned.draft.instantOf(end, m_times);
    };
    for (const Busy& busy : m_planned.draft.busy)
        move(busy.id, busy.start, busy.end);
    for (const auto& [id, start] : m_planned.draft.drying) {
        const service::Coat& coat = m_question.services.at(id.service).coats.at(id.coat);
        move(id, start, start + static_cast<Time>(coat.dryHands.count()));
    }
    return followed;
}

std::vector<std::vector<Time>> Follower::lengths(Time unit) const
{
    std::vector<std::vector<Time>> choices = extremeLengths();
    for (std::size_t place = 0; place < choices.size(); ++place) {
        const temporal::Uncertain& link = links()[place];
        for (Time length = link.least / unit * unit + unit; length < link.most; length += unit)
            choices[place].push_back(length);
    }
    return choices;
}

std::vector<std::vector<Time>> Follower::extremeLengths() const
{
    std::vector<std::vector<Time>> choices;
    for (const temporal::Uncertain& link : links()) {
        choices.push_back({link.least});
        if (link.most > link.least)
            choices.back().push_back(link.most);
    }
    return choices;
}

std::vector<Time> Follower::randomLengths(std::mt19937_64& random) const
{
    std::vector<Time> lengths;
    for (const temporal::Uncertain& link : links())
        lengths.push_back(std::uniform_int_distribution<Time>{link.least, link.most}(random));
    return lengths;
}

Question uncertainQuestion(std::uint64_t seed, std::size_t zones, std::size_t heads, Seconds unit)
{
    std::mt19937_64 random{seed};
    const auto from = [&](int least, int most) {
        return unit * std::uniform_int_distribution<int>{least, most}(random);
    };
    const auto spread = [&](service::Zone& zone, bool wider) {
        zone.apply.quickest = std::max(unit, zone.apply.usual - from(0, 2));
        zone.apply.slowest = zone.apply.usual + from(0, 3);
        zone.develop.most += wider ? from(4, 12) : Seconds{0};
        if (zone.clock == service::ClockStart::FirstContact)
            zone.develop.most = std::max(zone.develop.most, zone.apply.slowest);
    };
    while (true) {
        Question question = oracle::randomQuestion(
            random(), {.leastHeads = heads, .mostHeads = heads, .mostZones = zones, .unit = unit});
        const bool wider = from(0, 1) > Seconds{0};
        bool sound = true;
        for (service::Service& service : question.services) {
            for (service::Coat& coat : service.coats) {
                for (service::Zone& zone : coat.zones)
                    spread(zone, wider);
            }
            sound = sound && service::checkService(service).empty();
        }
        if (sound)
            return question;
    }
}

namespace {

std::size_t choicesOf(const std::vector<std::vector<Time>>& choices)
{
    std::size_t count = 1;
    for (const std::vector<Time>& each : choices)
        count *= std::min<std::size_t>(each.size(), 1'000'000 / count + 1);
    return count;
}

/// The choice of that number, as if choices were counted with the first link's going round quickest.
std::vector<Time> chosen(const std::vector<std::vector<Time>>& choices, std::size_t number)
{
    std::vector<Time> lengths;
    for (const std::vector<Time>& each : choices) {
        lengths.push_back(each[number % each.size()]);
        number /= each.size();
    }
    return lengths;
}

void noteKinds(const Plan& plan, FollowedPlans& count)
{
    const auto any = [&plan](const auto& holds) { return std::ranges::any_of(plan->tasks, holds) ? 1 : 0; };
    count.held += plan->give.value_or(0) > 0 ? 1 : 0;
    count.whole += plan->give == 100 ? 1 : 0;
    count.looks += any([](const PlannedTask& task) { return task.madeWhile.has_value(); });
    count.mixes += any([](const PlannedTask& task) { return task.id.kind == TaskKind::Mix; });
    count.lateJobs += any([](const PlannedTask& task) { return task.id.kind == TaskKind::Late; });
    count.twoHands += any([](const PlannedTask& task) { return task.hands.value_or(0) > 0; });
    const auto isRinse = [](const PlannedTask& task) { return task.id.kind == TaskKind::Rinse; };
    count.rinses += std::ranges::count_if(plan->tasks, isRinse) > 1 ? 1 : 0;
}

/// The lengths that a plan is followed with.
std::vector<std::vector<Time>> lengthsToFollow(const Following& following, const Follower& follower,
                                               std::mt19937_64& random)
{
    std::vector<std::vector<Time>> lengths;
    const auto addAll = [&lengths](const std::vector<std::vector<Time>>& choices, int most) {
        const std::size_t count = choicesOf(choices);
        for (std::size_t number = 0; count <= static_cast<std::size_t>(most) && number < count; ++number)
            lengths.push_back(chosen(choices, number));
    };
    addAll(follower.lengths(60), following.everyLength);
    addAll(follower.extremeLengths(), following.extremeLengths);
    for (int run = 0; run < following.randomLengths; ++run)
        lengths.push_back(follower.randomLengths(random));
    return lengths;
}

}  // namespace

FollowedPlans followPlans(const Following& following)
{
    FollowedPlans count;
    for (std::uint64_t seed = following.seed; count.plans < following.plans; ++seed) {
        const Question question = uncertainQuestion(seed, following.zones, following.heads, Seconds{60});
        const auto found = plan(question, {.conflicts = 20'000, .stop = {}});
        if (!found || !(*found)->give)
            continue;
        ++count.plans;
        noteKinds(*found, count);
        std::mt19937_64 random{seed};
        Follower follower{question, *found};
        for (const std::vector<Time>& lengths : lengthsToFollow(following, follower, random)) {
            for (const Way way : everyWay) {
                ++count.runs;
                const auto wrong = wrongWith(question, follower.follow(lengths, way, random));
                if (wrong.empty())
                    continue;
                ADD_FAILURE() << "seed " << seed << ", way " << static_cast<int>(way) << ": "
                              << testing::PrintToString(wrong) << testing::PrintToString(lengths) << '\n'
                              << oracle::questionText(question) << oracle::planText(question, found->data());
                return count;
            }
        }
    }
    return count;
}

}  // namespace core::stagger
