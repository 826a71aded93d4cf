#include "core/stagger/draft.h"

#include "core/stagger/drafter.h"
#include "core/stagger/head_name.h"

#include <algorithm>
#include <cassert>

namespace core::stagger {
namespace {

/// Harm a minute of being late, in hundredths, where facts leave no choice.
constexpr std::int64_t brokenPromise = 50;

/// The search keeps tables of every pair of points: these take some hundred megabytes.
constexpr int mostPoints = 4000;

}  // namespace

Drafter::Drafter(const Question& question, Strictness strictness, std::vector<bool> left, const Pins& pins)
    : m_question{question}
    , m_pins{pins}
{
    m_draft.question = &question;
    m_draft.strictness = strictness;
    m_draft.left = std::move(left);
}

const service::Service& Drafter::serviceOf(const TaskId& id) const
{
    return m_question.services[id.service];
}

const service::Coat& Drafter::coatOf(const TaskId& id) const
{
    return serviceOf(id).coats[id.coat];
}

const service::Zone& Drafter::zoneOf(const TaskId& id) const
{
    return coatOf(id).zones[id.item];
}

/// "Ada, " where there are several heads.
std::string Drafter::headed(std::size_t service) const
{
    return m_question.services.size() > 1 ? headName(m_question.services, service) + ", " : std::string{};
}

/// "Root: ..." and, where there are several coats or heads, "Coat 2, Root: ...".
std::string Drafter::named(const TaskId& id, const std::string& what) const
{
    std::string text = headed(id.service);
    if (serviceOf(id).coats.size() > 1)
        text += coatOf(id).name + ", ";
    return text + what;
}

Point Drafter::newPoint()
{
    const Point point = m_draft.problem.points++;
    m_draft.problem.lags.push_back({point, temporal::origin, -m_low});
    m_draft.problem.lags.push_back({temporal::origin, point, m_high});
    return point;
}

/// Where `id` starts: settled already, or a point of its own.
Moment Drafter::startOf(const TaskId& id)
{
    const auto pin = m_pins.starts.find(id);
    if (pin != m_pins.starts.end())
        return {temporal::origin, timeOf(pin->second)};
    return {newPoint(), 0};
}

std::size_t Drafter::demand(DemandKind kind, std::string what, std::optional<TaskId> task,
                            std::int64_t breachRate, std::size_t place)
{
    m_draft.demands.push_back(
        {.kind = kind, .task = task, .what = std::move(what), .breachRate = breachRate, .place = place});
    return m_draft.demands.size() - 1;
}

/// Between two things that have happened no rule binds.
void Drafter::keep(const Moment& earlier, const Moment& later, Time most)
{
    if (!earlier.isFixed() || !later.isFixed())
        m_draft.problem.lags.push_back(lagBetween(earlier, later, most));
}

void Drafter::limit(std::size_t demand, const Moment& earlier, const Moment& later, Time most)
{
    if (m_draft.isLeft(demand))
        return;
    if (earlier.isFixed() && later.isFixed()) {
        m_draft.settled.push_back({demand, earlier, later, most});
        return;
    }
    if (mayBreak(demand))
        m_draft.breakable.push_back({demand, earlier, later, most});
    else
        keep(earlier, later, most);
}

void Drafter::stretchCosts(const Moment& earlier, const Moment& later, Time most, Price price)
{
    const Lag lag = lagBetween(earlier, later, most);
    if (lag.from != lag.to && price > 0)
        m_draft.problem.softLags.push_back({lag, price});
}

Time Drafter::runningEnd(const TaskProgress& progress, Seconds usual) const
{
    const Instant planned = progress.plannedEnd.value_or(progress.start + usual);
    return std::max(timeOf(planned), m_now.value_or(timeOf(planned)));
}

void Drafter::addRunning(const TaskId& id, const TaskProgress& progress, Time end)
{
    const Time start = timeOf(progress.start);
    m_draft.busy.push_back({.id = id,
                            .start = {temporal::origin, start},
                            .length = end - start,
                            .due = {},
                            .state = TaskState::Running,
                            .needsBasin = id.kind == TaskKind::Rinse || id.kind == TaskKind::RinseAlone});
}

void Drafter::addOpen(const TaskId& id, const Moment& start, Time length, std::optional<Lag> due)
{
    m_draft.busy.push_back({.id = id,
                            .start = start,
                            .length = length,
                            .due = due,
                            .state = TaskState::Open,
                            .needsBasin = id.kind == TaskKind::Rinse || id.kind == TaskKind::RinseAlone});
}

/// What can be dropped in looking for a reason, besides limits: the crew.
void Drafter::registerCrewDemands()
{
    const service::Crew& crew = m_question.services.front().crew;
    const auto add = [this](DemandKind kind, std::string what, std::size_t place = 0) {
        demand(kind, std::move(what), {}, 0, place);
    };
    add(DemandKind::Hands,
        crew.hands.size() == 1 ? "one pair of hands" : std::to_string(crew.hands.size()) + " pairs of hands");
    add(DemandKind::Basins, crew.basins == 1 ? "one basin" : std::to_string(crew.basins) + " basins");
    add(DemandKind::HeadAtBasin, "nothing else is done to a head at the basin");
    for (std::size_t hands = 0; hands < crew.hands.size(); ++hands) {
        for (std::size_t place = 0; place < crew.hands[hands].away.size(); ++place)
            add(DemandKind::Away, crew.hands[hands].name + " is away", hands * 1000 + place);
    }
}

/// The crew is taken by heads that are not planned here.
void Drafter::writeElsewhere()
{
    for (const PlannedTask& task : m_pins.elsewhere) {
        addOpen(task.id, {temporal::origin, timeOf(task.start)},
                static_cast<Time>((task.end - task.start).count()));
        m_draft.busy.back().state = task.state;
        m_draft.busy.back().elsewhere = true;
    }
}

/// The scale of each level is above all that the levels below it can reach.
void Drafter::setScale()
{
    if (m_draft.strictness == Strictness::OnlyFits)
        return;
    const bool breaking = m_draft.strictness == Strictness::Break;
    const Price span = m_high - m_low;
    Price zones = 0;
    Price deviation = 0;
    for (const service::Service& service : m_question.services) {
        for (const service::Coat& coat : service.coats) {
            for (const service::Zone& zone : coat.zones) {
                const Price below =
                    breaking ? span : Price{(zone.develop.target - zone.develop.least).count()};
                const Price above =
                    breaking ? span : Price{(zone.develop.most - zone.develop.target).count()};
                zones += 1;
                deviation += std::max(below * zone.under.hundredths, above * zone.over.hundredths);
            }
        }
    }
    m_draft.scale.staleness = 1;
    m_draft.scale.waste = zones * span + 1;
    m_draft.scale.deviation =
        m_draft.scale.waste * (static_cast<Price>(m_question.services.size()) * span + 1);
    m_draft.scale.breach = breaking ? m_draft.scale.deviation * (deviation + 1) : Price{0};
    for (const Price unit : {m_draft.scale.breach, m_draft.scale.deviation, m_draft.scale.waste}) {
        if (unit > 0)
            m_draft.problem.levels.push_back(unit);
    }
}

void Drafter::writeWaste(std::size_t index, std::optional<Time> start, const std::vector<Moment>& sources,
                         const std::vector<Moment>& ends)
{
    const service::Service& service = m_question.services[index];
    const bool started = std::ranges::any_of(
        m_question.progress.tasks, [&](const TaskProgress& task) { return task.id.service == index; });
    const bool wantsEnd = m_question.preference == Preference::EndEarly && start;
    m_draft.startsLate[index] = service.readyBy && !started && !wantsEnd;
    if (service.readyBy) {
        const Time promise = timeOf(*service.readyBy - service.buffer);
        const std::string spare =
            service.buffer > Seconds{0} ? " with " + measure::lengthText(service.buffer) + " to spare" : "";
        const std::size_t promised =
            demand(DemandKind::Promise, headed(index) + "ready by the promised time" + spare, {},
                   brokenPromise, index);
        for (const Moment& end : ends)
            limit(promised, {temporal::origin, promise}, end, 0);
        if (m_draft.startsLate[index]) {
            m_draft.wasteFrom[index] = promise;
            const Moment first{newPoint(), 0};
            for (const Moment& source : sources)
                keep(source, first, 0);
            stretchCosts(first, {temporal::origin, promise}, 0, m_draft.scale.waste);
            return;
        }
    }
    m_draft.wasteFrom[index] = start.value_or(0);
    const Moment last{newPoint(), 0};
    for (const Moment& end : ends)
        keep(last, end, 0);
    stretchCosts({temporal::origin, m_low}, last, 0, m_draft.scale.waste);
}

/// When the service can begin: never before now, nor before it may.
std::optional<Time> Drafter::earliestStart(const service::Service& service) const
{
    std::optional<Time> start = m_now;
    if (service.notBefore)
        start = std::max(start.value_or(timeOf(*service.notBefore)), timeOf(*service.notBefore));
    const bool anchored =
        service.readyBy || std::ranges::any_of(service.coats, [](const service::Coat& coat) {
            return std::ranges::any_of(coat.groups, [](const service::RinseGroup& group) {
                return group.waterEarliest || group.waterLatest;
            });
        });
    if (!start && !anchored)
        start = 0;
    return start;
}

void Drafter::writeService(std::size_t index)
{
    const service::Service& service = m_question.services[index];
    const std::optional<Time> start = earliestStart(service);
    std::vector<Moment> ends;
    std::vector<Moment> sources;
    for (std::size_t coat = 0; coat < std::min(service.coats.size(), m_pins.coats); ++coat) {
        const CoatDraft drafted = writeCoat(index, coat, ends);
        if (start) {
            for (const Moment& source : drafted.sources)
                keep(source, {temporal::origin, *start}, 0);
        }
        sources.insert(sources.end(), drafted.sources.begin(), drafted.sources.end());
        if (!drafted.ends.empty())
            ends = drafted.ends;
    }
    for (const Moment& end : ends)
        m_draft.tails.push_back({index, end});
    writeWaste(index, start, sources, ends);
}

void Drafter::writeRanking()
{
    std::vector<const Busy*> open;
    for (const Busy& busy : m_draft.busy) {
        if (!busy.start.isFixed())
            open.push_back(&busy);
    }
    std::ranges::sort(open, {}, [](const Busy* busy) -> const TaskId& { return busy->id; });
    for (const Busy* busy : open)
        m_draft.problem.ranking.push_back({busy->start.point, busy->due});
}

Draft Drafter::write()
{
    if (m_question.services.empty() || !setHorizon()) {
        m_draft.impossible = m_question.services.empty()
            ? "There is no service to plan."
            : "The clock times lie more than two years apart: check the dates.";
        return std::move(m_draft);
    }
    m_draft.startsLate.resize(m_question.services.size(), false);
    m_draft.wasteFrom.resize(m_question.services.size(), 0);
    setScale();
    registerCrewDemands();
    for (std::size_t index = 0; index < m_question.services.size(); ++index)
        writeService(index);
    writeElsewhere();
    if (m_draft.problem.points > mostPoints) {
        m_draft.impossible = "This is more than can be planned at once: "
            + std::to_string(m_draft.problem.points) + " moments, at most " + std::to_string(mostPoints)
            + ". Plan fewer coats at a time, or fewer looks.";
        return std::move(m_draft);
    }
    for (const BreakableLag& breakable : m_draft.breakable) {
        stretchCosts(breakable.earlier, breakable.later, breakable.most,
                     m_draft.scale.breach * m_draft.demands[breakable.demand].breachRate);
    }
    if (m_draft.strictness != Strictness::OnlyFits)
        writeRanking();
    return std::move(m_draft);
}

Draft draftOf(const Question& question, Strictness strictness, std::vector<bool> left, const Pins& pins)
{
    return Drafter{question, strictness, std::move(left), pins}.write();
}

}  // namespace core::stagger
