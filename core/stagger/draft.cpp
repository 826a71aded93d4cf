#include "core/stagger/draft.h"

#include "core/stagger/drafter.h"
#include "core/stagger/head_name.h"

#include <algorithm>
#include <cassert>

namespace core::stagger {
namespace {

/// The search keeps tables of every pair of points: these take some hundred megabytes.
constexpr int mostPoints = 4000;

/// Of `room` so many tenths, rounded up.
Seconds tenthsOf(Seconds room, int tenths)
{
    return Seconds{(room.count() * tenths + 9) / 10};
}

}  // namespace

service::Application covered(const service::Application& lengths, int give)
{
    return {.quickest = lengths.usual - tenthsOf(lengths.usual - lengths.quickest, give),
            .usual = lengths.usual,
            .slowest = lengths.usual + tenthsOf(lengths.slowest - lengths.usual, give)};
}

bool hasUncertainLengths(const Question& question)
{
    return !draftOf(question, Strictness::OnlyFits, {}, {}, 1).links.empty();
}

Drafter::Drafter(const Question& question, Strictness strictness, std::vector<bool> left, const Pins& pins,
                 int give)
    : m_question{question}
    , m_pins{pins}
{
    m_draft.question = &question;
    m_draft.strictness = strictness;
    m_draft.left = std::move(left);
    m_draft.give = give;
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

/// "Ada, ..." where there are several heads.
Sentence Drafter::headed(std::size_t service, Sentence what) const
{
    if (m_question.services.size() < 2)
        return what;
    return Sentence::worded("%1, %2", headName(m_question.services, service), std::move(what));
}

/// "Root: ..." and, where there are several coats or heads, "Coat 2, Root: ...".
Sentence Drafter::named(const TaskId& id, Sentence what) const
{
    if (serviceOf(id).coats.size() > 1)
        what = Sentence::worded("%1, %2", coatOf(id).name, std::move(what));
    return headed(id.service, std::move(what));
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
    if (pin == m_pins.starts.end())
        return {newPoint(), 0};
    const Time time = timeOf(pin->second);
    if (!m_pins.keepPoints)
        return {temporal::origin, time};
    const Moment moment{newPoint(), 0};
    m_asPlanned.push_back({temporal::origin, moment.point, time});
    m_asPlanned.push_back({moment.point, temporal::origin, -time});
    return moment;
}

bool Drafter::isKnown(const Moment& moment) const
{
    return moment.isFixed() || std::ranges::find(m_known, moment.point) != m_known.end();
}

std::size_t Drafter::demand(DemandKind kind, Sentence what, std::optional<TaskId> task,
                            std::int64_t breachRate, std::size_t place)
{
    m_draft.demands.push_back(
        {.kind = kind, .task = task, .what = std::move(what), .breachRate = breachRate, .place = place});
    return m_draft.demands.size() - 1;
}

/// Between two things that have happened no rule binds.
void Drafter::keep(const Moment& earlier, const Moment& later, Time most)
{
    if (!isKnown(earlier) || !isKnown(later))
        m_draft.problem.lags.push_back(lagBetween(earlier, later, most));
}

void Drafter::limit(std::size_t demand, const Moment& earlier, const Moment& later, Time most)
{
    if (m_draft.isLeft(demand))
        return;
    if (isKnown(earlier) && isKnown(later)) {
        m_draft.settled.push_back({demand, earlier, later, most});
        return;
    }
    if (mayBreak(demand))
        m_draft.breakable.push_back({demand, earlier, later, most});
    else
        keep(earlier, later, most);
}

/// What is not known yet of several moments is a point of its own where `together`, so that a limit that
/// counts from or to the first or last of them is passed once, not once for each.
std::vector<Moment> Drafter::gathered(const std::vector<Moment>& moments, bool together, bool first)
{
    const auto open = std::ranges::count_if(moments, [this](const Moment& each) { return !isKnown(each); });
    if (!together || open < 2)
        return moments;
    std::vector<Moment> gathered;
    const Moment edge{newPoint(), 0};
    for (const Moment& moment : moments) {
        if (isKnown(moment))
            gathered.push_back(moment);
        else if (first)
            keep(moment, edge, 0);
        else
            keep(edge, moment, 0);
    }
    gathered.push_back(edge);
    return gathered;
}

/// All of them, or the earliest that is known: what is open comes later.
std::vector<Moment> Drafter::firstOf(const std::vector<Moment>& moments, bool together)
{
    std::optional<Moment> known;
    for (const Moment& moment : moments) {
        if (moment.isFixed() && (!known || moment.offset < known->offset))
            known = moment;
    }
    return known ? std::vector{*known} : gathered(moments, together, true);
}

std::vector<Moment> Drafter::lastOf(const std::vector<Moment>& moments, bool together)
{
    return gathered(moments, together, false);
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
                            .end = {temporal::origin, end},
                            .length = end - start,
                            .due = {},
                            .state = TaskState::Running,
                            .needsBasin = isWater(id)});
}

void Drafter::addOpen(const TaskId& id, const Moment& start, Time length, std::optional<Lag> due)
{
    m_draft.busy.push_back({.id = id,
                            .start = start,
                            .end = start + length,
                            .length = length,
                            .due = due,
                            .state = TaskState::Open,
                            .needsBasin = isWater(id)});
}

/// When the service can begin: never before now, nor before it may.
std::optional<Time> Drafter::earliestStart(const service::Service& service) const
{
    std::optional<Time> start = m_now;
    if (service.notBefore)
        start = std::max(start.value_or(timeOf(*service.notBefore)), timeOf(*service.notBefore));
    const bool anchored = service.readyBy || std::ranges::any_of(service.coats, &service::Coat::namesTimes);
    if (!start && !anchored)
        start = m_freeStart;
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

Draft Drafter::write()
{
    if (m_question.services.empty() || !setHorizon()) {
        m_draft.impossible = m_question.services.empty()
            ? Sentence::worded("There is no service to plan.")
            : Sentence::worded("The clock times lie more than two years apart: check the dates.");
        return std::move(m_draft);
    }
    m_draft.startsLate.resize(m_question.services.size(), false);
    m_draft.wasteFrom.resize(m_question.services.size(), 0);
    setScale();
    registerCrewDemands();
    for (std::size_t index = 0; index < m_question.services.size(); ++index)
        writeService(index);
    writeElsewhere();
    nameHands();
    m_draft.ruleLags = m_draft.problem.lags.size();
    m_draft.problem.lags.insert(m_draft.problem.lags.end(), m_asPlanned.begin(), m_asPlanned.end());
    if (m_draft.problem.points > mostPoints) {
        m_draft.impossible = Sentence::worded("This is more than can be planned at once: %1 moments, at most "
                                              "%2. Plan fewer coats at a time, or "
                                              "fewer looks.",
                                              m_draft.problem.points, mostPoints);
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

Draft draftOf(const Question& question, Strictness strictness, std::vector<bool> left, const Pins& pins,
              int give)
{
    return Drafter{question, strictness, std::move(left), pins, give}.write();
}

}  // namespace core::stagger
