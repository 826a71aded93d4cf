#include "app/view/record_card.h"

#include "core/run/amend/amendment_text.h"
#include "core/run/amend/revisions.h"
#include "core/run/outcomes.h"
#include "core/run/standing.h"
#include "core/run/zone_record.h"

#include <algorithm>

namespace app::view {
namespace {

using core::run::Fact;
using core::run::FactKind;
using core::run::Lane;
using core::run::Stage;
using core::run::State;
using core::service::Service;
using core::stagger::TaskKind;

/// Puts the card together from the state that the run was left in.
class Writer {
public:
    Writer(const core::run::Setup& setup, std::span<const Fact> facts, Instant until)
        : m_services{core::run::servicesAt(setup, facts)}
        , m_standing{core::run::standingFacts(facts)}
        , m_first{core::run::stateAt(setup, {}, setup.began)}
        , m_last{core::run::stateAt(setup, facts, until)}
        , m_outcomes{core::run::outcomesOf(facts)}
        , m_notes{core::run::notesOf(facts)}
    {
    }

    [[nodiscard]] CardHead head(std::size_t place) const;

private:
    [[nodiscard]] CardCoat coat(CoatPlace place) const;
    [[nodiscard]] CardZone zone(const Lane& lane) const;
    [[nodiscard]] std::vector<CardBowl> bowlsOf(CoatPlace place) const;
    [[nodiscard]] std::optional<Instant> mixedAt(CoatPlace place, std::size_t bowl) const;
    [[nodiscard]] std::vector<CardLook> looksAt(const TaskId& zone) const;
    [[nodiscard]] std::vector<CardHeat> heatsOf(CoatPlace place) const;
    [[nodiscard]] std::vector<std::string> leftOutOf(CoatPlace place) const;
    [[nodiscard]] StrandPicture picture(CoatPlace place) const;

    const std::vector<Service>& m_services;
    std::vector<Fact> m_standing;
    State m_first;
    State m_last;
    std::vector<core::run::ZoneOutcome> m_outcomes;
    std::vector<core::run::NextTime> m_notes;
};

bool isOf(const TaskId& task, CoatPlace place)
{
    return task.service == place.service && task.coat == place.coat;
}

CardHead Writer::head(std::size_t place) const
{
    const Service& service = m_services[place];
    CardHead head{service.name, service.head.name, service.timeZone, {}};
    for (std::size_t each = 0; each < service.coats.size(); ++each)
        head.coats.push_back(coat({place, each}));
    return head;
}

CardCoat Writer::coat(CoatPlace place) const
{
    CardCoat card;
    card.place = place;
    card.name = m_services[place.service].coats[place.coat].name;
    for (const Lane& lane : m_last.lanes)
        if (CoatPlace{lane.service, lane.coat} == place)
            card.zones.push_back(zone(lane));
    card.picture = picture(place);
    card.bowls = bowlsOf(place);
    card.heats = heatsOf(place);
    card.leftOut = leftOutOf(place);
    for (const core::run::NextTime& note : m_notes)
        if (isOf(note.zone, place))
            card.note = note.words;
    return card;
}

CardZone Writer::zone(const Lane& lane) const
{
    const TaskId id{.service = lane.service, .coat = lane.coat, .item = lane.zone};
    const core::service::Zone& asked = core::run::zoneOf(m_services, id);
    const auto record = core::run::zoneRecord(m_services, m_last.progress, id);
    CardZone card{.zone = id,
                  .name = asked.name,
                  .stage = lane.stage,
                  .mixed = mixedAt({lane.service, lane.coat}, asked.bowl),
                  .firstStrand = record.firstContact,
                  .lastStrand = record.applicationEnd,
                  .water = record.water,
                  .plannedWater = {},
                  .developed = {},
                  .window = asked.develop,
                  .looks = looksAt(id),
                  .result = {id, asked.name, {}, {}}};
    if (record.water && record.clockStart)
        card.developed = *record.water - *record.clockStart;
    if (m_first.plan)
        if (const auto* planned = m_first.plan->zone(id.service, id.coat, id.item))
            card.plannedWater = planned->water;
    if (const auto said = std::ranges::find(m_outcomes, id, &core::run::ZoneOutcome::zone);
        said != m_outcomes.end()) {
        card.result.outcome = said->outcome;
        card.result.words = said->words;
    }
    return card;
}

std::optional<Instant> Writer::mixedAt(CoatPlace place, std::size_t bowl) const
{
    const auto* mixing = m_last.progress.find(
        {.service = place.service, .coat = place.coat, .kind = TaskKind::Mix, .item = bowl});
    return mixing != nullptr ? mixing->end : std::nullopt;
}

std::vector<CardBowl> Writer::bowlsOf(CoatPlace place) const
{
    const core::service::Coat& coat = m_services[place.service].coats[place.coat];
    std::vector<CardBowl> bowls;
    for (std::size_t bowl = 0; bowl < coat.bowls.size(); ++bowl) {
        bowls.push_back({coat.bowls[bowl].name, coat.bowls[bowl].note, {}, mixedAt(place, bowl)});
        for (const core::service::Zone& zone : coat.zones)
            if (zone.bowl == bowl)
                bowls.back().zones.push_back(zone.name);
    }
    return bowls;
}

std::vector<CardLook> Writer::looksAt(const TaskId& zone) const
{
    std::vector<CardLook> looks;
    for (const Fact& fact : m_standing)
        if (fact.kind == FactKind::Looked && core::run::applyOf(fact.task) == zone)
            looks.push_back({fact.task, fact.happened, fact.verdict, fact.again, fact.tone});
    std::ranges::stable_sort(looks, {}, &CardLook::at);
    return looks;
}

std::vector<CardHeat> Writer::heatsOf(CoatPlace place) const
{
    std::vector<CardHeat> heats;
    for (const Fact& on : m_standing) {
        if (on.kind != FactKind::Started || on.task.kind != TaskKind::Heat || !isOf(on.task, place))
            continue;
        heats.push_back({on.happened, {}});
        for (const Fact& off : m_standing)
            if (off.kind == FactKind::Finished && off.task == on.task)
                heats.back().until = off.happened;
    }
    return heats;
}

std::vector<std::string> Writer::leftOutOf(CoatPlace place) const
{
    std::vector<std::string> leftOut;
    for (const Fact& fact : m_standing)
        if (fact.kind == FactKind::Dropped && isOf(fact.task, place)
            && core::run::exists(m_services, fact.task))
            leftOut.push_back(core::stagger::taskName(m_services[place.service], fact.task));
    return leftOut;
}

/// What was only planned when the run was left is no part of how it went.
StrandPicture Writer::picture(CoatPlace place) const
{
    State shown = m_last;
    std::erase_if(shown.lanes, [](const Lane& lane) { return lane.stage == Stage::Waiting; });
    StrandPicture picture = livePicture(m_services, shown, {place});
    if (m_last.finished)
        picture.now.reset();
    for (HandsRow& row : picture.hands)
        std::erase_if(row.jobs, [&](const HandsJob& job) {
            const auto* done = m_last.progress.find(job.task);
            return done == nullptr;
        });
    for (Strand& strand : picture.strands) {
        std::erase_if(strand.looks, [](const LookMark& look) { return !look.made; });
        if (m_first.plan)
            if (const auto* planned =
                    m_first.plan->zone(strand.zone.service, strand.zone.coat, strand.zone.item))
                strand.planned =
                    PlannedStrand{{planned->firstContact, planned->applicationEnd}, planned->water};
    }
    widenByPlanned(picture);
    return picture;
}

}  // namespace

Instant firstMoment(const RecordCard& card)
{
    Instant first = card.began;
    for (const core::run::Prepared& prepared : card.prepared)
        first = std::min(first, prepared.at.value_or(first));
    return first;
}

RecordCard recordCard(const core::run::Setup& setup, std::span<const Fact> facts, Instant now,
                      const core::measure::TimeZones& zones)
{
    RecordCard card{.began = setup.began,
                    .until = now,
                    .ended = false,
                    .heads = {},
                    .changes = {},
                    .prepared = setup.prepared,
                    .onPerson = core::service::isOnPerson(setup.services)};
    const std::vector<Fact> standing = core::run::standingFacts(facts);
    if (const auto end = std::ranges::find(standing, FactKind::Ended, &Fact::kind); end != standing.end()) {
        card.until = end->happened;
        card.ended = true;
    }
    const Writer writer{setup, facts, card.until};
    const std::vector<Service>& services = core::run::servicesAt(setup, facts);
    for (std::size_t head = 0; head < services.size(); ++head)
        card.heads.push_back(writer.head(head));
    const std::vector<bool> stands = core::run::whichStand(facts);
    for (std::size_t place = 0; place < facts.size(); ++place)
        if (stands[place] && facts[place].kind == FactKind::Amended)
            card.changes.push_back(
                {facts[place].happened, core::run::amendmentText(setup, facts, place, zones)});
    return card;
}

}  // namespace app::view
