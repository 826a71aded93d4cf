#include "core/stagger/drafter.h"

#include <algorithm>

namespace core::stagger {
namespace {

Time secondsOf(Seconds seconds)
{
    return static_cast<Time>(seconds.count());
}

Sentence looksText(const service::Zone& zone)
{
    const service::Looks& looks = *zone.looks;
    if (!looks.every)
        return Sentence::worded("%1: looks from %2, each within %3", zone.name, looks.first, looks.tolerance);
    return Sentence::worded("%1: looks from %2 every %3, each within %4", zone.name, looks.first,
                            *looks.every, looks.tolerance);
}

/// Harm a minute of breaking a limit, in hundredths, where facts leave no
/// choice: past a longest time weighs most, short of a least one less, a look or
/// a job at the wrong moment least.
constexpr std::int64_t tooLong = 1000;
constexpr std::int64_t tooShort = 400;
constexpr std::int64_t wrongMoment = 50;
/// What somebody would like gives way before anything that the hair or a promise asks for.
constexpr std::int64_t soonerThanWanted = 25;

}  // namespace

/// So long after the start as usual, or, where the plan must stand that it takes
/// longer or shorter, a point of its own.
Moment Drafter::applicationEnd(const Moment& start, const service::Application& lengths)
{
    const service::Application room = covered(lengths, m_draft.give);
    const Time usual = secondsOf(room.usual);
    if (room.quickest == room.slowest)
        return start + usual;
    const Point end = newPoint();
    m_draft.links.push_back({start.point, end, secondsOf(room.quickest), usual, secondsOf(room.slowest)});
    m_asPlanned.push_back({start.point, end, usual});
    m_asPlanned.push_back({end, start.point, -usual});
    return {end, 0};
}

/// Whether the coat was planned before and stands: then its lengths are certain, those of what goes on too.
bool Drafter::isSettled(const TaskId& id) const
{
    return !m_pins.keepPoints && std::ranges::any_of(m_pins.starts, [&id](const auto& pin) {
        return pin.first.service == id.service && pin.first.coat == id.coat;
    });
}

/// A link starts at a point, which what has happened does not have.
Moment Drafter::runningApplicationEnd(const TaskId& apply, Time start, const service::Application& lengths)
{
    if (m_draft.give == 0 || lengths.quickest == lengths.slowest || isSettled(apply))
        return {temporal::origin, start + secondsOf(lengths.usual)};
    const Moment begun{newPoint(), 0};
    keep({temporal::origin, start}, begun, 0);
    keep(begun, {temporal::origin, start}, 0);
    const Moment end = applicationEnd(begun, lengths);
    m_known.push_back(end.point);
    return end;
}

/// What really happened, or a point of its own.
void Drafter::writeApplication(const TaskId& apply, CoatDraft& draft)
{
    if (m_question.progress.isDropped(apply))
        return;
    const service::Zone& zone = zoneOf(apply);
    DraftedZone drafted{.apply = apply, .contact = {}, .applicationEnd = {}, .clockStart = {}, .water = {}};
    if (const TaskProgress* progress = m_question.progress.find(apply)) {
        writeBegun(*progress, drafted);
    } else {
        drafted.contact = startOf(apply);
        drafted.applied = secondsOf(zone.apply.usual);
        addOpen(apply, drafted.contact, drafted.applied);
        drafted.applicationEnd = drafted.contact + drafted.applied;
        if (!drafted.contact.isFixed())
            drafted.applicationEnd = applicationEnd(drafted.contact, zone.apply);
        m_draft.busy.back().end = drafted.applicationEnd;
        draft.sources.push_back(drafted.contact);
        writeWish(drafted);
    }
    drafted.clockStart =
        zone.clock == service::ClockStart::FirstContact ? drafted.contact : drafted.applicationEnd;
    draft.zonePlaces[apply.item] = m_draft.zones.size();
    m_draft.zones.push_back(drafted);
}

/// A start that is wanted. Once there is another one, as a fact, nothing is left of it.
void Drafter::writeWish(const DraftedZone& drafted)
{
    const service::Zone& zone = zoneOf(drafted.apply);
    if (!zone.notBefore)
        return;
    const std::size_t wanted = demand(
        DemandKind::NotBefore,
        named(drafted.apply, Sentence::worded("%1: not applied before the time that was set", zone.name)),
        drafted.apply, soonerThanWanted);
    limit(wanted, drafted.contact, {temporal::origin, timeOf(*zone.notBefore)}, 0);
}

void Drafter::writeBegun(const TaskProgress& progress, DraftedZone& drafted)
{
    const Time start = timeOf(progress.start);
    drafted.begun = true;
    drafted.contact = {temporal::origin, start};
    if (progress.end) {
        drafted.applied = timeOf(*progress.end) - start;
        drafted.applicationEnd = {temporal::origin, timeOf(*progress.end)};
        return;
    }
    // The longer it goes on, the later its usual end can still be.
    const service::Application& apply = zoneOf(progress.id).apply;
    const Seconds elapsed = m_question.now.value_or(progress.start) - progress.start;
    service::Application rest{.quickest = std::max(apply.quickest, elapsed),
                              .usual = {},
                              .slowest = std::max(apply.slowest, elapsed)};
    rest.usual = std::clamp(apply.usual, rest.quickest, rest.slowest);
    drafted.applied = secondsOf(rest.usual);
    addRunning(progress.id, progress, start + drafted.applied);
    drafted.applicationEnd = runningApplicationEnd(progress.id, start, rest);
    m_draft.busy.back().end = drafted.applicationEnd;
}

/// Rule 2, the moment of water: with its group, or alone where somebody chose that.
void Drafter::writeWater(const TaskId& apply, CoatDraft& draft)
{
    TaskId alone = apply;
    alone.kind = TaskKind::RinseAlone;
    const TaskProgress* progress = m_question.progress.find(alone);
    const auto place = draft.zonePlaces[apply.item];
    const service::Zone& zone = zoneOf(apply);
    if (progress != nullptr) {
        const Time start = timeOf(progress->start);
        const Seconds length = coatOf(apply).groups[zone.group].rinse;
        const Time end = progress->end ? timeOf(*progress->end) : runningEnd(*progress, length);
        draft.rinseEnds.push_back({temporal::origin, end});
        if (!progress->end)
            addRunning(alone, *progress, end);
        if (place) {
            m_draft.zones[*place].water = {temporal::origin, start};
            m_draft.zones[*place].rinsedAlone = true;
            m_draft.zones[*place].rinsed = true;
        }
        return;
    }
    if (!place || !draft.groupStarts[zone.group])
        return;
    TaskId rinse = apply;
    rinse.kind = TaskKind::Rinse;
    rinse.item = zone.group;
    m_draft.zones[*place].rinsed = m_question.progress.find(rinse) != nullptr;
    const Moment group = *draft.groupStarts[zone.group];
    m_draft.zones[*place].water = group + secondsOf(zone.reach);
    keep(group, m_draft.zones[*place].applicationEnd, 0);
}

/// Rule 2, the window, and its price.
void Drafter::writeWindow(const DraftedZone& drafted)
{
    const service::Zone& zone = zoneOf(drafted.apply);
    const Time target = secondsOf(zone.develop.target);
    const auto say = [&](Sentence what) {
        return named(drafted.apply, Sentence::worded("%1: %2", zone.name, std::move(what)));
    };
    limit(demand(DemandKind::Least, say(Sentence::worded("development of at least %1", zone.develop.least)),
                 drafted.apply, tooShort),
          *drafted.water, drafted.clockStart, -secondsOf(zone.develop.least));
    limit(demand(DemandKind::Most, say(Sentence::worded("development of at most %1", zone.develop.most)),
                 drafted.apply, tooLong),
          drafted.clockStart, *drafted.water, secondsOf(zone.develop.most));
    if (zone.firstStrandMost) {
        limit(demand(DemandKind::FirstStrand,
                     say(Sentence::worded("first strand, from contact to water, at most %1",
                                          *zone.firstStrandMost)),
                     drafted.apply, tooLong),
              drafted.contact, *drafted.water, secondsOf(*zone.firstStrandMost));
    }
    if (zone.lastStrandLeast) {
        limit(demand(DemandKind::LastStrand,
                     say(Sentence::worded("last strand, from the end of application to water, at least %1",
                                          *zone.lastStrandLeast)),
                     drafted.apply, tooShort),
              *drafted.water, drafted.applicationEnd, -secondsOf(*zone.lastStrandLeast));
    }
    stretchCosts(drafted.clockStart, *drafted.water, target, m_draft.scale.deviation * zone.over.hundredths);
    stretchCosts(*drafted.water, drafted.clockStart, -target,
                 m_draft.scale.deviation * zone.under.hundredths);
}

/// Once its rinse has begun nothing is done to a zone any more, but to a piece that water has still to come
/// to.
bool Drafter::canStillBeDone(const DraftedZone& drafted, Time length) const
{
    if (!drafted.rinsed)
        return true;
    const Time water = drafted.water->offset;
    return serviceOf(drafted.apply).head.piecesComeApart && m_now && *m_now + length <= water;
}

/// Rule 3.
void Drafter::writeLooks(const DraftedZone& drafted)
{
    const service::Zone& zone = zoneOf(drafted.apply);
    if (!zone.looks)
        return;
    const std::size_t demanded =
        demand(DemandKind::Looks, named(drafted.apply, looksText(zone)), drafted.apply, wrongMoment);
    const std::vector<Seconds> moments = zone.looks->moments();
    TaskId look = drafted.apply;
    look.kind = TaskKind::Look;
    for (look.part = 0; look.part < moments.size(); ++look.part)
        writeLook(drafted, look, secondsOf(moments[look.part]), demanded);
}

void Drafter::writeLook(const DraftedZone& drafted, const TaskId& look, Time moment, std::size_t demand)
{
    const service::Looks& looks = *zoneOf(drafted.apply).looks;
    if (const TaskProgress* progress = m_question.progress.find(look)) {
        if (progress->end)
            return;
        addRunning(look, *progress, runningEnd(*progress, looks.length));
        keep(*drafted.water, m_draft.busy.back().end, 0);
        return;
    }
    if (m_question.progress.isDropped(look) || m_draft.isLeft(demand))
        return;
    // The glance at a zone that is still being applied is part of applying it.
    const bool fromContact = zoneOf(drafted.apply).clock == service::ClockStart::FirstContact;
    const Time applying = fromContact ? drafted.applied : 0;
    if (moment + secondsOf(looks.tolerance) < applying) {
        m_draft.looksNotDue.push_back(look);
        return;
    }
    writeOpenLook(drafted, look, moment, demand);
}

void Drafter::writeOpenLook(const DraftedZone& drafted, const TaskId& look, Time moment, std::size_t demand)
{
    const service::Zone& zone = zoneOf(drafted.apply);
    const Time length = secondsOf(zone.looks->length);
    const Time tolerance = secondsOf(zone.looks->tolerance);
    // It is due if the zone is still developing when it would be over.
    const Lag due = lagBetween(*drafted.water, drafted.clockStart, -(moment + length));
    const bool settled = due.from == due.to;
    const bool windowHolds = m_draft.strictness != Strictness::Break;
    const bool never = settled ? due.most < 0 : windowHolds && moment + length > secondsOf(zone.develop.most);
    if (never) {
        m_draft.looksNotDue.push_back(look);
        return;
    }
    if (!canStillBeDone(drafted, length))
        return;
    const bool certain = settled;
    const Moment start = startOf(look);
    const auto bind = [&](const Moment& earlier, const Moment& later, Time most) {
        if (certain)
            keep(earlier, later, most);
        else
            always({negation(due), lagBetween(earlier, later, most)});
    };
    if (mayBreak(demand)) {
        // One that is not due may lie in the past, where it costs nothing.
        if (m_now)
            bind(start, {temporal::origin, *m_now}, 0);
        m_draft.breakable.push_back({demand, drafted.clockStart, start, moment + tolerance});
    } else {
        if (m_now)
            keep(start, {temporal::origin, *m_now}, 0);
        bind(drafted.clockStart, start, moment + tolerance);
    }
    bind(start, drafted.clockStart, -(moment - tolerance));
    bind(start, drafted.applicationEnd, 0);
    bind(*drafted.water, start, -length);
    addOpen(look, start, length, certain ? std::optional<Lag>{} : due);
}

/// Rule 4.
void Drafter::writeLateJobs(const DraftedZone& drafted)
{
    const service::Zone& zone = zoneOf(drafted.apply);
    TaskId late = drafted.apply;
    late.kind = TaskKind::Late;
    for (late.part = 0; late.part < zone.late.size(); ++late.part) {
        const service::LateJob& job = zone.late[late.part];
        const std::size_t demanded =
            demand(DemandKind::LateJob,
                   named(drafted.apply,
                         Sentence::worded("%1 %2: %3 before its water, within %4", job.name, zone.name,
                                          job.before, job.tolerance)),
                   late, wrongMoment);
        const TaskProgress* progress = m_question.progress.find(late);
        if (progress != nullptr && !progress->end)
            addRunning(late, *progress, runningEnd(*progress, job.length));
        const bool open = progress == nullptr;
        if (m_question.progress.isDropped(late) || m_draft.isLeft(demanded)
            || (open && !canStillBeDone(drafted, secondsOf(job.length))))
            continue;
        const Moment start = open ? startOf(late) : Moment{temporal::origin, timeOf(progress->start)};
        limit(demanded, *drafted.water, start, -secondsOf(job.before - job.tolerance));
        limit(demanded, start, *drafted.water, secondsOf(job.before + job.tolerance));
        if (!open) {
            if (!progress->end)
                keep(*drafted.water, m_draft.busy.back().end, 0);
            continue;
        }
        if (m_now)
            keep(start, {temporal::origin, *m_now}, 0);
        keep(start, drafted.applicationEnd, 0);
        keep(*drafted.water, start, -secondsOf(job.length));
        addOpen(late, start, secondsOf(job.length));
    }
}

/// Rule 5.
void Drafter::writeAfter(const DraftedZone& drafted, const CoatDraft& draft)
{
    const service::Zone& zone = zoneOf(drafted.apply);
    for (std::size_t listed = 0; listed < zone.after.size(); ++listed) {
        const service::After& after = zone.after[listed];
        const auto place = draft.zonePlaces[after.zone];
        if (!place || drafted.begun)
            continue;
        const Moment before = m_draft.zones[*place].applicationEnd;
        const std::string& beforeName = coatOf(drafted.apply).zones[after.zone].name;
        const std::size_t order =
            demand(DemandKind::Order,
                   named(drafted.apply, Sentence::worded("%1 goes on after %2", zone.name, beforeName)),
                   drafted.apply, 0, listed);
        limit(order, drafted.contact, before, 0);
        if (!after.longestGap)
            continue;
        const std::size_t gap = demand(
            DemandKind::BlendGap,
            named(drafted.apply,
                  Sentence::worded("%1 goes on within %2 of %3", zone.name, *after.longestGap, beforeName)),
            drafted.apply, wrongMoment, listed);
        limit(gap, before, drafted.contact, secondsOf(*after.longestGap));
    }
}

}  // namespace core::stagger
