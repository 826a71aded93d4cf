#include "core/stagger/drafter.h"

#include <algorithm>

namespace core::stagger {
namespace {

Time secondsOf(Seconds seconds)
{
    return static_cast<Time>(seconds.count());
}

/// Harm a minute of breaking a limit, in hundredths, where facts leave no
/// choice. Only their order matters: past the most is worst, a promise least.
constexpr std::int64_t staleBowl = 100;
constexpr std::int64_t missedBasin = 100;
constexpr std::int64_t wrongGap = 100;

}  // namespace

/// Rules 1, 2, 7 and 8 of one coat. `previousEnds`: when the coat before it is over.
Drafter::CoatDraft Drafter::writeCoat(std::size_t service, std::size_t coat,
                                      const std::vector<Moment>& previousEnds)
{
    CoatDraft draft;
    const service::Coat& given = m_question.services[service].coats[coat];
    TaskId id{.service = service, .coat = coat};
    draft.zonePlaces.resize(given.zones.size());
    for (id.item = 0; id.item < given.zones.size(); ++id.item)
        writeApplication(id, draft);
    writeGroups(service, coat, draft);
    for (const auto& place : draft.zonePlaces) {
        if (!place)
            continue;
        const DraftedZone drafted = m_draft.zones[*place];
        if (drafted.water) {
            writeWindow(drafted);
            writeLooks(drafted);
            writeLateJobs(drafted);
        }
        writeAfter(drafted, draft);
    }
    for (id.item = 0, id.kind = TaskKind::Mix; id.item < given.bowls.size(); ++id.item)
        writeBowl(id, draft);
    writeAfterRinse(service, coat, draft);
    for (const Moment& source : draft.sources) {
        for (const Moment& end : previousEnds)
            keep(source, end, 0);
    }
    if (coat > 0)
        writeGap(service, coat, previousEnds, draft);
    return draft;
}

void Drafter::writeGroups(std::size_t service, std::size_t coat, CoatDraft& draft)
{
    const service::Coat& given = m_question.services[service].coats[coat];
    draft.groupStarts.resize(given.groups.size());
    TaskId id{.service = service, .coat = coat, .kind = TaskKind::Rinse};
    for (id.item = 0; id.item < given.groups.size(); ++id.item)
        writeGroup(id, draft);
    for (id.item = 0, id.kind = TaskKind::Apply; id.item < given.zones.size(); ++id.item)
        writeWater(id, draft);
}

/// Whether a zone is of that group and has not left it by being rinsed alone.
bool Drafter::isRinsedIn(const TaskId& rinse, const TaskId& apply) const
{
    TaskId alone = apply;
    alone.kind = TaskKind::RinseAlone;
    return zoneOf(apply).group == rinse.item && m_question.progress.find(alone) == nullptr;
}

void Drafter::writeGroup(const TaskId& rinse, CoatDraft& draft)
{
    const service::RinseGroup& group = coatOf(rinse).groups[rinse.item];
    const Time length = secondsOf(group.rinse);
    if (const TaskProgress* progress = m_question.progress.find(rinse)) {
        const Time start = timeOf(progress->start);
        const Time end = progress->end ? timeOf(*progress->end) : runningEnd(*progress, group.rinse);
        draft.groupStarts[rinse.item] = Moment{temporal::origin, start};
        draft.rinseEnds.push_back({temporal::origin, end});
        if (!progress->end)
            addRunning(rinse, *progress, end);
        return;
    }
    const bool needed = std::ranges::any_of(draft.zonePlaces, [&](const auto& place) {
        return place && isRinsedIn(rinse, m_draft.zones[*place].apply);
    });
    if (!needed || m_question.progress.isDropped(rinse))
        return;
    const Moment start = startOf(rinse);
    draft.groupStarts[rinse.item] = start;
    draft.rinseEnds.push_back(start + length);
    addOpen(rinse, start, length);
    if (m_now)
        keep(start, {temporal::origin, *m_now}, 0);
    if (group.waterEarliest) {
        const std::size_t booked =
            demand(DemandKind::WaterEarliest,
                   named(rinse, Sentence::worded("%1: the basin is booked from a fixed time on", group.name)),
                   rinse, missedBasin);
        limit(booked, start, {temporal::origin, timeOf(*group.waterEarliest)}, 0);
    }
    if (group.waterLatest) {
        const std::size_t booked = demand(
            DemandKind::WaterLatest,
            named(rinse, Sentence::worded("%1: the basin is booked, water by a fixed time", group.name)),
            rinse, missedBasin);
        limit(booked, {temporal::origin, timeOf(*group.waterLatest)}, start, 0);
    }
}

/// Rule 1. A bowl is mixed while an application that uses it is still to come.
void Drafter::writeBowl(const TaskId& mix, CoatDraft& draft)
{
    const service::Bowl& bowl = coatOf(mix).bowls[mix.item];
    bool comes = false;
    bool used = false;
    for (const auto& place : draft.zonePlaces) {
        if (!place || zoneOf(m_draft.zones[*place].apply).bowl != mix.item)
            continue;
        const bool begun = m_draft.zones[*place].begun;
        comes = comes || !begun;
        used = used || begun;
    }
    const TaskProgress* progress = m_question.progress.find(mix);
    std::optional<Moment> ready;
    if (progress != nullptr) {
        const Time end = progress->end ? timeOf(*progress->end) : runningEnd(*progress, bowl.mix);
        ready = Moment{temporal::origin, end};
        if (!progress->end)
            addRunning(mix, *progress, end);
    } else if (bowl.mix > Seconds{0} && comes && !used && !m_question.progress.isDropped(mix)) {
        const Moment start = startOf(mix);
        ready = start + secondsOf(bowl.mix);
        addOpen(mix, start, secondsOf(bowl.mix));
        draft.sources.push_back(start);
    }
    for (const auto& place : draft.zonePlaces) {
        if (!place || !ready || zoneOf(m_draft.zones[*place].apply).bowl != mix.item)
            continue;
        const Moment& contact = m_draft.zones[*place].contact;
        keep(contact, *ready, 0);
        stretchCosts(*ready, contact, 0, m_draft.scale.staleness);
    }
    writePotLife(mix, draft, ready);
}

/// Without a task of mixing the pot life counts from the first application, so
/// that every end must lie within it of every start.
void Drafter::writePotLife(const TaskId& mix, const CoatDraft& draft, const std::optional<Moment>& ready)
{
    const service::Bowl& bowl = coatOf(mix).bowls[mix.item];
    if (!bowl.potLife)
        return;
    std::vector<DraftedZone> zones;
    for (const auto& place : draft.zonePlaces) {
        if (place && zoneOf(m_draft.zones[*place].apply).bowl == mix.item)
            zones.push_back(m_draft.zones[*place]);
    }
    // Where nobody mixes it, there is no such task to name.
    const bool mixed = bowl.mix > Seconds{0} || zones.empty();
    const std::size_t fresh =
        demand(DemandKind::PotLife,
               named(mix, Sentence::worded("%1: used up within %2 of mixing", bowl.name, *bowl.potLife)),
               mixed ? mix : zones.front().apply, staleBowl, mix.item);
    for (const DraftedZone& zone : zones) {
        if (ready)
            limit(fresh, *ready, zone.applicationEnd, secondsOf(*bowl.potLife));
    }
    // Where it was used without having been seen to be mixed, there is nothing to count from.
    if (ready || bowl.mix > Seconds{0})
        return;
    std::vector<Moment> contacts;
    contacts.reserve(zones.size());
    for (const DraftedZone& zone : zones)
        contacts.push_back(zone.contact);
    const std::vector<Moment> firsts = firstOf(contacts, mayBreak(fresh));
    for (const DraftedZone& zone : zones) {
        for (const Moment& first : firsts)
            limit(fresh, first, zone.applicationEnd, secondsOf(*bowl.potLife));
    }
}

void Drafter::writeAfterRinse(std::size_t service, std::size_t coat, CoatDraft& draft)
{
    draft.ends = draft.rinseEnds;
    const TaskId dry{.service = service, .coat = coat, .kind = TaskKind::Dry};
    if (isTaskOf(m_question.services[service], dry) && !m_question.progress.isDropped(dry)
        && !draft.ends.empty())
        writeDrying(dry, draft);
    TaskId assess = dry;
    assess.kind = TaskKind::Assess;
    if (isTaskOf(m_question.services[service], assess) && !m_question.progress.isDropped(assess)
        && !draft.ends.empty())
        writeAssessing(assess, draft);
}

/// The hands-on part comes first, then it dries by itself.
void Drafter::writeDrying(const TaskId& dry, CoatDraft& draft)
{
    const service::Coat& coat = coatOf(dry);
    const Time unattended = secondsOf(coat.dryUnattended);
    if (const TaskProgress* progress = m_question.progress.find(dry)) {
        const Time end = progress->end ? timeOf(*progress->end) : runningEnd(*progress, coat.dryHands);
        if (!progress->end && coat.dryHands > Seconds{0})
            addRunning(dry, *progress, end);
        draft.ends.assign(1, {temporal::origin, end + unattended});
        return;
    }
    const Moment start = startOf(dry);
    if (m_now)
        keep(start, {temporal::origin, *m_now}, 0);
    for (const Moment& end : draft.rinseEnds)
        keep(start, end, 0);
    if (coat.dryHands > Seconds{0})
        addOpen(dry, start, secondsOf(coat.dryHands));
    m_draft.drying.push_back({dry, start});
    draft.ends.assign(1, start + (secondsOf(coat.dryHands) + unattended));
}

void Drafter::writeAssessing(const TaskId& assess, CoatDraft& draft)
{
    const Time length = secondsOf(coatOf(assess).assess);
    if (const TaskProgress* progress = m_question.progress.find(assess)) {
        const Time end =
            progress->end ? timeOf(*progress->end) : runningEnd(*progress, coatOf(assess).assess);
        if (!progress->end)
            addRunning(assess, *progress, end);
        draft.ends.assign(1, {temporal::origin, end});
        return;
    }
    const Moment start = startOf(assess);
    if (m_now)
        keep(start, {temporal::origin, *m_now}, 0);
    for (const Moment& end : draft.ends)
        keep(start, end, 0);
    addOpen(assess, start, length);
    draft.ends.assign(1, start + length);
}

/// From the end of the coat before to the first application of this one.
void Drafter::writeGap(std::size_t service, std::size_t coat, const std::vector<Moment>& previousEnds,
                       const CoatDraft& draft)
{
    const service::Coat& before = m_question.services[service].coats[coat - 1];
    const TaskId id{.service = service, .coat = coat};
    std::vector<Moment> contacts;
    for (const auto& place : draft.zonePlaces) {
        if (place)
            contacts.push_back(m_draft.zones[*place].contact);
    }
    const bool begunAlready = std::ranges::any_of(
        draft.zonePlaces, [this](const auto& place) { return place && m_draft.zones[*place].begun; });
    if (before.gapLeast && !begunAlready) {
        const std::size_t least = demand(
            DemandKind::CoatGapLeast,
            Sentence::worded("%1: at least %2 after %3", coatOf(id).name, *before.gapLeast, before.name), id,
            wrongGap);
        for (const Moment& end : lastOf(previousEnds, mayBreak(least))) {
            for (const Moment& contact : firstOf(contacts, mayBreak(least)))
                limit(least, contact, end, -secondsOf(*before.gapLeast));
        }
    }
    if (!before.gapMost || previousEnds.empty() || contacts.empty())
        return;
    const std::size_t most =
        demand(DemandKind::CoatGapMost,
               Sentence::worded("%1: at most %2 after %3", coatOf(id).name, *before.gapMost, before.name), id,
               wrongGap);
    const bool begun = std::ranges::any_of(contacts, [](const Moment& contact) { return contact.isFixed(); });
    if (m_draft.isLeft(most) || begun)
        return;
    // The first application is the least of several starts: a point of its own, met by one of them.
    const Moment first{newPoint(), 0};
    std::vector<Lag> oneOf;
    for (const Moment& contact : contacts) {
        keep(contact, first, 0);
        oneOf.push_back(inOrder(contact, first));
    }
    always(oneOf);
    // It counts from the last of the ends.
    const Moment over{newPoint(), 0};
    std::vector<Lag> lastOf;
    for (const Moment& end : previousEnds) {
        keep(over, end, 0);
        lastOf.push_back(inOrder(over, end));
    }
    always(lastOf);
    limit(most, over, first, secondsOf(*before.gapMost));
}

}  // namespace core::stagger
