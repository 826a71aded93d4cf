#include "core/stagger/crew.h"

#include "core/stagger/hands_search.h"

#include <algorithm>

namespace core::stagger {

CrewAt::CrewAt(const Draft& draft, const std::vector<Time>& times)
    : m_draft{draft}
    , m_times{times}
    , m_crew{draft.question->services.front().crew}
    , m_away(m_crew.hands.size())
{
    for (const Busy& busy : draft.busy) {
        const Time start = times[static_cast<std::size_t>(busy.start.point)] + busy.start.offset;
        m_spans.push_back({start, start + busy.length});
    }
    for (std::size_t place = 0; place < count(); ++place) {
        const std::optional<Lag>& due = task(place).due;
        if (!due || temporal::holds(*due, times))
            m_present.push_back(place);
    }
    std::ranges::sort(m_present, [&](std::size_t a, std::size_t b) {
        return start(a) != start(b) ? start(a) < start(b) : task(a).id < task(b).id;
    });
    for (std::size_t place = 0; place < draft.demands.size(); ++place) {
        const DraftedDemand& demand = draft.demands[place];
        const bool counts = !draft.isLeft(place);
        if (demand.kind == DemandKind::Hands)
            m_handsCount = counts;
        if (demand.kind == DemandKind::Basins)
            m_basinsCount = counts;
        if (demand.kind == DemandKind::HeadAtBasin)
            m_headCounts = counts;
        if (demand.kind == DemandKind::Away && counts) {
            const Interval& away = m_crew.hands[demand.place / 1000].away[demand.place % 1000];
            m_away[demand.place / 1000].push_back({static_cast<Time>((away.from - draft.zero).count()),
                                                   static_cast<Time>((away.until - draft.zero).count())});
        }
    }
    lookWhoCanBeAtWhatRuns();
}

/// Facts are exempt from the rules, but only as far as they contradict them: otherwise everybody who is at
/// something is at one thing, and there.
void CrewAt::lookWhoCanBeAtWhatRuns()
{
    std::vector<std::size_t> running;
    for (const std::size_t place : m_present) {
        if (!isRunning(place))
            continue;
        running.push_back(place);
        m_runningUntil = std::max(m_runningUntil, start(place) + 1);
    }
    if (running.empty())
        return;
    HandsOf hands(count());
    if (HandsSearch{*this, running}.run(hands))
        return;
    m_runningPresent = false;
    m_runningApart = HandsSearch{*this, running}.run(hands);
}

/// A look that starts while an application on its head is under way is made by
/// the hands that apply.
bool CrewAt::isMadeWhile(std::size_t look, std::size_t apply) const
{
    return isLook(look) && isApplication(apply) && sameHead(look, apply) && start(apply) <= start(look)
        && start(look) < m_spans[apply].end;
}

/// Whether one pair of hands cannot do both at these times.
bool CrewAt::clash(std::size_t a, std::size_t b) const
{
    const bool bothRun = isRunning(a) && isRunning(b) && m_runningApart;
    if (a == b || (!bothRun && (bothHappened(a, b) || !overlap(a, b))))
        return false;
    if (sameHead(a, b) && isLook(a) && isLook(b))
        return false;
    return !isMadeWhile(a, b) && !isMadeWhile(b, a);
}

/// A look that goes on, and was begun while the head was being applied, is made by the hands that applied.
bool CrewAt::beganWhileApplying(std::size_t look) const
{
    const Instant began = m_draft.zero + Seconds{start(look)};
    return std::ranges::any_of(m_draft.question->progress.tasks, [&](const TaskProgress& task) {
        return task.id.kind == TaskKind::Apply && task.id.service == this->task(look).id.service
            && task.start <= began && (!task.end || *task.end > began);
    });
}

/// Whether these hands do that kind of work. Somebody is at what goes on, even where nobody is said to do it.
bool CrewAt::doesSuchWork(std::size_t place, std::size_t hands) const
{
    const bool glance = isLook(place) && isRunning(place) && beganWhileApplying(place);
    const service::Work work = glance ? service::Work::Apply : workOf(task(place).id.kind);
    const auto does = [work](const service::Hands& each) { return each.does(work); };
    return does(m_crew.hands[hands]) || (happened(place) && std::ranges::none_of(m_crew.hands, does));
}

bool CrewAt::mayDo(std::size_t place, std::size_t hands) const
{
    return doesSuchWork(place, hands) && !isAwayDuring(place, hands);
}

bool CrewAt::isAwayDuring(std::size_t place, std::size_t hands) const
{
    if (happened(place) && !(isRunning(place) && m_runningPresent))
        return false;
    return std::ranges::any_of(m_away[hands], [&](const Span& away) {
        return start(place) < away.end && away.start < m_spans[place].end;
    });
}

/// Whether it makes no difference which of the two does something.
bool CrewAt::areAlike(std::size_t hands, std::size_t others) const
{
    return m_crew.hands[hands].kinds == m_crew.hands[others].kinds && m_away[hands] == m_away[others];
}

Assignment CrewAt::assign() const
{
    if (m_draft.numberZero)
        return assignByNames();
    Assignment assignment{HandsOf(count()), HandsOf(count()), HandsOf(count())};
    HandsSearch{*this, m_present}.run(assignment.hands);
    assignGlances(assignment);
    assignBasins(assignment);
    return assignment;
}

void CrewAt::assignGlances(Assignment& assignment) const
{
    for (const std::size_t look : m_present) {
        for (const std::size_t apply : m_present) {
            if (isMadeWhile(look, apply) && assignment.hands[apply] == assignment.hands[look]
                && !assignment.madeWhile[look])
                assignment.madeWhile[look] = apply;
        }
    }
}

void CrewAt::assignBasins(Assignment& assignment) const
{
    std::vector<std::optional<Time>> freeFrom(m_crew.basins);
    for (const std::size_t place : m_present) {
        if (!task(place).needsBasin)
            continue;
        const auto basin = std::ranges::find_if(
            freeFrom, [&](const std::optional<Time>& from) { return !from || *from <= start(place); });
        if (basin == freeFrom.end())
            continue;
        *basin = m_spans[place].end;
        assignment.basins[place] = static_cast<std::size_t>(basin - freeFrom.begin());
    }
}

Assignment assignCrew(const Draft& draft, const std::vector<Time>& times)
{
    return CrewAt{draft, times}.assign();
}

}  // namespace core::stagger
