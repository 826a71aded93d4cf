#include "core/stagger/cures.h"

#include "core/service/check.h"
#include "tests/core/stagger/support.h"
#include "tests/oracle/checker.h"
#include "tests/oracle/random_service.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

// What holds of every reason and every cure, on random services of whole minutes that do not fit.

namespace core::stagger {
namespace {

using testing::IsEmpty;

constexpr Seconds wide = std::chrono::hours{24};

/// The demands of a reason, asked one by one.
class Named {
public:
    explicit Named(std::vector<Demand> demands)
        : m_demands{std::move(demands)}
    {
    }

    [[nodiscard]] bool has(DemandKind kind) const
    {
        return std::ranges::any_of(m_demands, [&](const Demand& demand) { return demand.kind == kind; });
    }
    [[nodiscard]] bool has(DemandKind kind, const TaskId& task) const
    {
        return std::ranges::any_of(
            m_demands, [&](const Demand& demand) { return demand.kind == kind && demand.task == task; });
    }
    [[nodiscard]] bool hasAt(DemandKind kind, std::size_t place) const
    {
        return std::ranges::any_of(
            m_demands, [&](const Demand& demand) { return demand.kind == kind && demand.place == place; });
    }
    [[nodiscard]] bool hasBowl(std::size_t coat, std::size_t bowl) const
    {
        return std::ranges::any_of(m_demands, [&](const Demand& demand) {
            return demand.kind == DemandKind::PotLife && demand.task->coat == coat && demand.place == bowl;
        });
    }
    [[nodiscard]] bool hasAfter(DemandKind kind, const TaskId& zone, std::size_t place) const
    {
        return std::ranges::any_of(m_demands, [&](const Demand& demand) {
            return demand.kind == kind && demand.task == zone && demand.place == place;
        });
    }

private:
    std::vector<Demand> m_demands;
};

/// Whether each demand can be let go by itself in a service file: a longest gap after a zone brings the order
/// with it.
bool canBeWritten(const NoPlan& reason)
{
    return std::ranges::none_of(reason.demands,
                                [](const Demand& demand) { return demand.kind == DemandKind::BlendGap; });
}

void keepOfZone(Zone& zone, const TaskId& id, const Named& named)
{
    if (!named.has(DemandKind::Least, id))
        zone.develop.least = Seconds{0};
    if (!named.has(DemandKind::Most, id))
        zone.develop.most = wide;
    if (!named.has(DemandKind::FirstStrand, id))
        zone.firstStrandMost.reset();
    if (!named.has(DemandKind::LastStrand, id))
        zone.lastStrandLeast.reset();
    if (!named.has(DemandKind::Looks, id))
        zone.looks.reset();
    std::vector<service::LateJob> late;
    for (std::size_t job = 0; job < zone.late.size(); ++job) {
        if (named.has(DemandKind::LateJob, idOf(TaskKind::Late, id.item, job, id.coat)))
            late.push_back(zone.late[job]);
    }
    zone.late = late;
    std::vector<service::After> after;
    for (std::size_t place = 0; place < zone.after.size(); ++place) {
        if (named.hasAfter(DemandKind::Order, id, place))
            after.push_back({.zone = zone.after[place].zone, .longestGap = {}});
    }
    zone.after = after;
}

void keepOfCoat(service::Service& service, std::size_t coat, const Named& named)
{
    service::Coat& changed = service.coats[coat];
    for (std::size_t zone = 0; zone < changed.zones.size(); ++zone)
        keepOfZone(changed.zones[zone], idOf(TaskKind::Apply, zone, 0, coat), named);
    for (std::size_t bowl = 0; bowl < changed.bowls.size(); ++bowl) {
        if (!named.hasBowl(coat, bowl))
            changed.bowls[bowl].potLife.reset();
    }
    for (std::size_t group = 0; group < changed.groups.size(); ++group) {
        const TaskId rinse = idOf(TaskKind::Rinse, group, 0, coat);
        if (!named.has(DemandKind::WaterEarliest, rinse))
            changed.groups[group].waterEarliest.reset();
        if (!named.has(DemandKind::WaterLatest, rinse))
            changed.groups[group].waterLatest.reset();
    }
    const TaskId next = idOf(TaskKind::Apply, 0, 0, coat + 1);
    if (!named.has(DemandKind::CoatGapLeast, next))
        changed.gapLeast.reset();
    if (!named.has(DemandKind::CoatGapMost, next))
        changed.gapMost.reset();
}

void keepOfCrew(service::Service& service, const Named& named)
{
    service::Crew& crew = service.crew;
    for (std::size_t hands = 0; hands < crew.hands.size(); ++hands) {
        std::vector<Interval> away;
        for (std::size_t place = 0; place < crew.hands[hands].away.size(); ++place) {
            if (named.hasAt(DemandKind::Away, hands * 1000 + place))
                away.push_back(crew.hands[hands].away[place]);
        }
        crew.hands[hands].away = away;
    }
    for (int count = 0; count < 8 && !named.has(DemandKind::Hands); ++count)
        addHands(service);
    if (!named.has(DemandKind::Basins))
        crew.basins = 20;
    if (!named.has(DemandKind::HeadAtBasin))
        service.head = {.name = "Wefts", .kind = service::HeadKind::Wefts, .piecesComeApart = true};
}

/// The question with nothing asked for but what is named, as far as a service can say it.
Question withOnly(Question question, const Named& named)
{
    Service& service = question.services.front();
    for (std::size_t coat = 0; coat < service.coats.size(); ++coat)
        keepOfCoat(service, coat, named);
    keepOfCrew(service, named);
    if (!named.has(DemandKind::Promise))
        service.readyBy.reset();
    return question;
}

void expectMinimal(const Question& question, const NoPlan& reason)
{
    EXPECT_TRUE(reason.minimal);
    EXPECT_FALSE(fits(withOnly(question, Named{reason.demands}))) << "these can hold together";
    for (std::size_t place = 0; place < reason.demands.size(); ++place) {
        std::vector<Demand> fewer = reason.demands;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(place));
        EXPECT_TRUE(fits(withOnly(question, Named{fewer}))) << "one too many: " << reason.demands[place].what;
    }
}

Question randomly(std::uint64_t seed)
{
    return oracle::randomQuestion(seed, {.mostZones = 3, .unit = minutes{1}});
}

TEST(CureProperties, EveryReasonIsMinimal)
{
    int found = 0;
    int written = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const Question question = randomly(seed);
        const auto answer = plan(question);
        if (answer)
            continue;
        ++found;
        if (!canBeWritten(answer.error()))
            continue;
        ++written;
        SCOPED_TRACE("seed " + std::to_string(seed) + '\n' + oracle::questionText(question)
                     + answer.error().text.text());
        expectMinimal(question, answer.error());
    }
    EXPECT_GT(found, 60);
    EXPECT_GT(written, 50);
}

/// The amount that is one minute less, made by hand; nothing where a minute was all, or there is no amount.
std::optional<Service> aMinuteLess(const Service& asked, const CureStep& step)
{
    const Seconds by = step.by - minutes{1};
    if (by <= Seconds{0})
        return std::nullopt;
    Service less = asked;
    const TaskId id = step.task.value_or(TaskId{});
    service::Coat& coat = less.coats[id.coat];
    switch (step.kind) {
    case CureKind::UseBuffer: less.buffer -= by; return less;
    case CureKind::LaterPromise:
        *less.readyBy += by;
        less.buffer = Seconds{0};
        return less;
    case CureKind::StartEarlier: *less.notBefore -= by; return less;
    case CureKind::ShorterLeast: coat.zones[id.item].develop.least -= by; return less;
    case CureKind::LongerMost: coat.zones[id.item].develop.most += by; return less;
    case CureKind::LongerFirstStrand: *coat.zones[id.item].firstStrandMost += by; return less;
    case CureKind::ShorterLastStrand: *coat.zones[id.item].lastStrandLeast -= by; return less;
    case CureKind::LooserLooks: coat.zones[id.item].looks->tolerance += by; return less;
    case CureKind::LooserLateJob: coat.zones[id.item].late[id.part].tolerance += by; return less;
    case CureKind::LongerPotLife: *coat.bowls[id.item].potLife += by; return less;
    case CureKind::ShorterCoatGap: *coat.gapLeast -= by; return less;
    case CureKind::LongerCoatGap: *coat.gapMost += by; return less;
    case CureKind::EarlierWater: *coat.groups[id.item].waterEarliest -= by; return less;
    case CureKind::LaterWater: *coat.groups[id.item].waterLatest += by; return less;
    default: return std::nullopt;
    }
}

struct Counted {
    int reasons = 0;
    int cured = 0;
    int cures = 0;
    int least = 0;
    int pairs = 0;
};

void lookAt(const Question& question, const Cure& cure, Counted& counted)
{
    SCOPED_TRACE(cure.what());
    Question cured = question;
    cured.services = cure.services;
    EXPECT_EQ(planned(cured), cure.plan);
    for (const Service& service : cure.services)
        EXPECT_THAT(service::checkService(service), IsEmpty());
    ++counted.cures;
    counted.pairs += cure.steps.size() == 2 ? 1 : 0;
    if (cure.steps.size() != 1)
        return;
    if (const auto less = aMinuteLess(question.services.front(), cure.steps.front())) {
        ++counted.least;
        EXPECT_FALSE(fits([&] {
            Question tighter = question;
            tighter.services.front() = *less;
            return tighter;
        }()))
            << "a minute less would do";
    }
}

TEST(CureProperties, EveryCureFitsAndIsTheLeastOfItsKind)
{
    Counted counted;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const Question question = randomly(seed);
        const auto answer = plan(question);
        if (answer)
            continue;
        SCOPED_TRACE("seed " + std::to_string(seed) + '\n' + oracle::questionText(question)
                     + answer.error().text.text());
        ++counted.reasons;
        const std::vector<Cure> cures = curesFor(question, answer.error());
        counted.cured += cures.empty() ? 0 : 1;
        for (const Cure& cure : cures)
            lookAt(question, cure, counted);
        EXPECT_TRUE(std::ranges::is_sorted(cures, [](const Cure& a, const Cure& b) {
            return std::pair{a.steps.size(), a.change} < std::pair{b.steps.size(), b.change};
        }));
        const std::vector<Cure> again = curesFor(question, answer.error());
        EXPECT_TRUE(std::ranges::equal(cures, again, [](const Cure& a, const Cure& b) {
            return a.steps == b.steps && a.services == b.services && a.plan == b.plan;
        })) << "not the same twice";
    }
    EXPECT_GT(counted.reasons, 60);
    EXPECT_GT(counted.cured, counted.reasons * 8 / 10);
    EXPECT_GT(counted.cures, 150);
    EXPECT_GT(counted.least, 50);
    EXPECT_GT(counted.pairs, 0);
}

}  // namespace
}  // namespace core::stagger
