#include "tests/core/run/support.h"

#include "core/run/amend/revisions.h"
#include "core/service/check.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace core::run {
namespace {

using stagger::PlannedTask;
using stagger::PlannedZone;
using stagger::TaskState;

/// Plans one coat in turn; see the header.
class InTurn {
public:
    InTurn(const stagger::Question& question, Instant now)
        : m_question{question}
        , m_now{now}
        , m_next{now}
    {
    }

    void addCoat(std::size_t coat)
    {
        m_coat = coat;
        const service::Coat& asked = service().coats[coat];
        for (std::size_t zone = 0; zone < asked.zones.size(); ++zone) {
            PlannedZone& planned = m_zones.emplace_back();
            planned.coat = coat;
            planned.zone = zone;
            add(id(TaskKind::Mix, asked.zones[zone].bowl));
            add(id(TaskKind::Apply, zone));
        }
        for (std::size_t group = 0; group < asked.groups.size(); ++group)
            addRinse(group);
        for (std::size_t zone = 0; zone < asked.zones.size(); ++zone)
            addLooks(zone);
        add(id(TaskKind::Dry));
        m_next += asked.dryUnattended;
        add(id(TaskKind::Assess));
    }

    stagger::PlanData take()
    {
        std::ranges::sort(m_data.tasks, [](const PlannedTask& one, const PlannedTask& other) {
            return std::tie(one.start, one.id) < std::tie(other.start, other.id);
        });
        m_data.zones = m_zones;
        m_data.proved = true;
        return m_data;
    }

    [[nodiscard]] bool keepsMost() const { return m_keepsMost; }

private:
    [[nodiscard]] const Service& service() const { return m_question.services.front(); }

    [[nodiscard]] TaskId id(TaskKind kind, std::size_t item = 0, std::size_t part = 0) const
    {
        return {.service = 0, .coat = m_coat, .kind = kind, .item = item, .part = part};
    }

    const PlannedTask* find(const TaskId& wanted) const
    {
        const auto found = std::ranges::find(m_data.tasks, wanted, &PlannedTask::id);
        return found == m_data.tasks.end() ? nullptr : &*found;
    }

    void add(const TaskId& wanted) { addAt(wanted, m_next, true); }

    void addAt(const TaskId& wanted, Instant start, bool takesTime)
    {
        if (!stagger::isTaskOf(service(), wanted) || find(wanted) || m_question.progress.isDropped(wanted))
            return;
        PlannedTask planned;
        planned.id = wanted;
        planned.start = start;
        planned.hands = 0;
        planned.end = start + stagger::usualLength(service(), wanted);
        if (const auto* told = m_question.progress.find(wanted)) {
            planned.start = told->start;
            planned.end = told->end.value_or(std::max(m_now, told->plannedEnd.value_or(m_now)));
            planned.state = told->end ? TaskState::Done : TaskState::Running;
        }
        if (takesTime)
            m_next = std::max(m_next, planned.end);
        m_data.tasks.push_back(planned);
    }

    void addRinse(std::size_t group)
    {
        Instant water = m_next;
        forZones(group, [&](const service::Zone& asked, PlannedZone& planned) {
            const auto* applied = find(id(TaskKind::Apply, planned.zone));
            if (!applied)
                return;
            planned.firstContact = applied->start;
            planned.applicationEnd = applied->end;
            const bool fromContact = asked.clock == service::ClockStart::FirstContact;
            planned.clockStart = fromContact ? applied->start : applied->end;
            water = std::max(water, planned.clockStart + asked.develop.target - asked.reach);
        });
        addAt(id(TaskKind::Rinse, group), water, true);
        const auto* rinse = find(id(TaskKind::Rinse, group));
        forZones(group, [&](const service::Zone& asked, PlannedZone& planned) {
            planned.water = (rinse ? rinse->start : water) + asked.reach;
            m_keepsMost = m_keepsMost && planned.development() <= asked.develop.most;
        });
    }

    void addLooks(std::size_t zone)
    {
        const service::Zone& asked = service().coats[m_coat].zones[zone];
        if (!asked.looks || !find(id(TaskKind::Apply, zone)))
            return;
        const auto moments = asked.looks->moments();
        for (std::size_t part = 0; part < moments.size(); ++part) {
            const auto& planned = *std::ranges::find_if(
                m_zones, [&](const PlannedZone& each) { return each.coat == m_coat && each.zone == zone; });
            if (planned.clockStart + moments[part] < planned.water)
                addAt(id(TaskKind::Look, zone, part), std::max(m_now, planned.clockStart + moments[part]),
                      false);
        }
    }

    template <class Action>
    void forZones(std::size_t group, const Action& action)
    {
        for (PlannedZone& planned : m_zones) {
            const service::Zone& asked = service().coats[planned.coat].zones[planned.zone];
            if (planned.coat == m_coat && asked.group == group)
                action(asked, planned);
        }
    }

    const stagger::Question& m_question;
    Instant m_now;
    Instant m_next;
    std::size_t m_coat = 0;
    std::vector<PlannedZone> m_zones;
    stagger::PlanData m_data;
    bool m_keepsMost = true;
};

}  // namespace

Instant clockAt(std::int64_t minute, std::int64_t second)
{
    using namespace std::chrono_literals;
    return std::chrono::sys_days{2026y / 3 / 2} + 14h + Seconds{minute * 60 + second};
}

TaskId task(TaskKind kind, std::size_t item, std::size_t part)
{
    return {.service = 0, .coat = 0, .kind = kind, .item = item, .part = part};
}

TaskId apply(std::size_t zone)
{
    return task(TaskKind::Apply, zone);
}
TaskId look(std::size_t zone, std::size_t part)
{
    return task(TaskKind::Look, zone, part);
}

service::Window window(std::int64_t least, std::int64_t target, std::int64_t most)
{
    return {.least = minutes(least), .target = minutes(target), .most = minutes(most)};
}

service::Zone zone(const std::string& name, std::int64_t application, service::Window develop)
{
    service::Zone made;
    made.name = name;
    made.apply = {minutes(application), minutes(application), minutes(application)};
    made.develop = develop;
    return made;
}

Service wig()
{
    service::Coat coat;
    coat.bowls.resize(1);
    coat.bowls[0].name = "Colour bowl";
    coat.zones = {zone("Root", 10, window(30, 35, 45)), zone("Mids", 6, window(15, 28, 35)),
                  zone("Ends", 5, window(10, 22, 30))};
    coat.zones[2].alone = true;
    coat.zones[2].looks = service::Looks{.first = minutes(8),
                                         .every = {},
                                         .length = minutes(1),
                                         .tolerance = minutes(2),
                                         .until = minutes(15)};
    coat.groups.resize(1);
    coat.groups[0].name = "All together";
    coat.groups[0].rinse = minutes(4);
    Service service;
    service.name = "Wig for the second act";
    service.crew.hands.resize(1);
    service.coats = {coat};
    return service;
}

Service namedWig()
{
    Service service = wig();
    service.head.name = "Second act";
    service.crew.hands[0].name = "Wig room";
    service.coats[0].name = "Colour";
    EXPECT_TRUE(service::checkService(service).empty());
    return service;
}

Service longWig()
{
    Service service = wig();
    service.coats[0].bowls[0].mix = minutes(2);
    service.coats[0].dryHands = minutes(3);
    service.coats[0].dryUnattended = minutes(20);
    service.coats[0].assess = minutes(5);
    return service;
}

tl::expected<Plan, stagger::NoPlan> inTurn(const stagger::Question& question, const stagger::Budget&)
{
    InTurn planner{question, *question.now};
    for (std::size_t coat = 0; coat < question.services.front().coats.size(); ++coat)
        planner.addCoat(coat);
    if (!planner.keepsMost() && !question.mayBreakLimits) {
        stagger::NoPlan none;
        none.text = std::string{"Applying takes too long."};
        return tl::unexpected{none};
    }
    return stagger::PlanForTests::make(planner.take());
}

Teller::Teller(Service service)
    : setup{.services = {std::move(service)}, .began = clockAt(0), .planner = inTurn}
{
}

std::optional<std::string> Teller::tell(Answer answer, Instant now)
{
    auto told = decideInFull(setup, facts, answer, now);
    if (!told)
        return told.error().what;
    if (told->revision)
        setup.revisions.push_back(std::move(*told->revision));
    for (Fact& fact : told->facts) {
        fact.number = FactNumber{static_cast<std::int64_t>(facts.size()) + 1};
        facts.push_back(fact);
    }
    return {};
}

std::optional<std::string> Teller::tell(Answer::Kind kind, TaskId task, Instant now)
{
    return tell(Answer{.kind = kind, .task = task}, now);
}

void Teller::mustTell(Answer::Kind kind, TaskId task, Instant now)
{
    const auto refused = tell(kind, task, now);
    EXPECT_FALSE(refused) << stagger::taskIdText(task) << ": " << refused.value_or("");
}

std::string refusal(Teller& teller, const Answer& answer, Instant now)
{
    return teller.tell(answer, now).value_or("(taken)");
}

void mustTell(Teller& teller, const Answer& answer, Instant now)
{
    EXPECT_EQ(refusal(teller, answer, now), "(taken)");
}

void applyZone(Teller& teller, std::size_t zone, Instant from, Instant until)
{
    teller.mustTell(Answer::Kind::Start, apply(zone), from);
    teller.mustTell(Answer::Kind::Finish, apply(zone), until);
}

Teller twoLooks()
{
    Service service = wig();
    service.coats[0].zones[1].looks = service.coats[0].zones[2].looks;
    Teller teller{service};
    applyZone(teller, 0, clockAt(0), clockAt(10));
    applyZone(teller, 1, clockAt(10), clockAt(16));
    applyZone(teller, 2, clockAt(16), clockAt(21));
    return teller;
}

const Prompt* findPrompt(const State& state, Prompt::Asks asks, const TaskId& task)
{
    const auto found = std::ranges::find_if(
        state.prompts, [&](const Prompt& prompt) { return prompt.asks == asks && prompt.task == task; });
    return found == state.prompts.end() ? nullptr : &*found;
}

}  // namespace core::run
