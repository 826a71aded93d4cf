#include "core/stagger/plan.h"

#include "tests/core/stagger/support.h"
#include "tests/oracle/random_service.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

// What is said when nothing fits: demands that cannot hold together, of which none is too many.

namespace core::stagger {
namespace {

using testing::HasSubstr;

/// Crown, accent and back by one pair of hands fit in one way only; see published/hand_worked_test.cpp.
Service noSlack()
{
    return readyBy(300,
                   {makeZone("Crown", minutes{40}, {minutes{45}, minutes{45}, minutes{50}}),
                    makeZone("Accent", minutes{20}, {minutes{30}, minutes{35}, minutes{45}}),
                    makeZone("Back", minutes{10}, {minutes{20}, minutes{20}, minutes{25}})});
}

bool isNamed(const NoPlan& reason, std::size_t zone, const std::string& limit)
{
    return std::ranges::any_of(reason.demands, [&](const Demand& demand) {
        return demand.task == idOf(TaskKind::Apply, zone)
            && demand.what.text().find(limit) != std::string::npos;
    });
}

bool hasHands(const NoPlan& reason)
{
    return demandsOf(reason).find("one pair of hands") != std::string::npos;
}

/// Every window wide open but for the limits that are named, and hands for all unless they are. `without`
/// counts the named demands: that one is let go as well.
Service withOnly(Service service, const NoPlan& reason, std::optional<std::size_t> without)
{
    NoPlan kept = reason;
    if (without)
        kept.demands.erase(kept.demands.begin() + static_cast<std::ptrdiff_t>(*without));
    for (std::size_t zone = 0; zone < service.coats[0].zones.size(); ++zone) {
        service::Window& window = service.coats[0].zones[zone].develop;
        if (!isNamed(kept, zone, "at least"))
            window.least = Seconds{0};
        if (!isNamed(kept, zone, "at most"))
            window.most = std::chrono::hours{24};
        window.target = std::clamp(window.target, window.least, window.most);
    }
    for (int count = 0; count < 5 && !hasHands(kept); ++count)
        addHands(service);
    return service;
}

/// Of a service in which only windows and the one pair of hands can be in the way.
void expectMinimal(const Service& service, const NoPlan& reason)
{
    EXPECT_TRUE(reason.minimal);
    EXPECT_FALSE(reason.demands.empty());
    EXPECT_FALSE(fits(withOnly(service, reason, {}))) << "these can hold together";
    for (std::size_t place = 0; place < reason.demands.size(); ++place)
        EXPECT_TRUE(fits(withOnly(service, reason, place))) << "one too many: " << reason.demands[place].what;
}

// 20 of the accent and 10 of the back have to fit between the ends of crown and back: at most 49 - 20.
TEST(Reason, NamesTheZonesAndTheirMinutes)
{
    Service service = noSlack();
    service.coats[0].zones[0].develop.most = minutes{49};
    const NoPlan reason = refused(service);
    EXPECT_TRUE(isNamed(reason, 0, "Crown: development of at most 49 min"));
    EXPECT_THAT(reason.text, HasSubstr("These cannot all hold together: "));
    for (const Demand& demand : reason.demands)
        EXPECT_THAT(reason.text, HasSubstr(demand.what));
    expectMinimal(service, reason);
}

TEST(Reason, OfADeadlineNamesThePromise)
{
    Service service = noSlack();
    service.notBefore = at(250);
    const NoPlan reason = refused(service);
    EXPECT_THAT(demandsOf(reason), HasSubstr("ready by the promised time"));
    EXPECT_TRUE(reason.minimal);
}

TEST(Reason, OfAPromiseAloneIsASentenceInTheSingular)
{
    Service service = noSlack();
    service.notBefore = at(299);
    EXPECT_EQ(refused(service).text, "This cannot be kept: ready by the promised time.");
}

TEST(Reason, OfABufferNamesIt)
{
    Service service = noSlack();
    service.notBefore = at(200);
    service.buffer = minutes{15};
    EXPECT_THAT(demandsOf(refused(service)), HasSubstr("ready by the promised time with 15 min to spare"));
}

TEST(Reason, OfAnAbsenceNamesWhoIsAway)
{
    Service service = noSlack();
    service.notBefore = at(200);
    service.crew.hands[0].away = {{at(220), at(225)}};
    EXPECT_THAT(demandsOf(refused(service)), HasSubstr("Hands 1 is away"));
}

TEST(Reason, NamesTheCoatWhereThereAreSeveral)
{
    Service service = fromOpening({makeZone("Root", minutes{20}, exactly(30))});
    service.coats.push_back(service.coats[0]);
    service.coats[1].name = "Second";
    service.coats[1].zones[0].firstStrandMost = minutes{49};
    EXPECT_THAT(demandsOf(refused(service)), HasSubstr("Second, Root: first strand"));
}

TEST(Reason, NamesTheHeadWhereThereAreSeveral)
{
    Service service = fromOpening({makeZone("Root", minutes{20}, exactly(30))});
    service.head.name = "Long wig";
    Question question = ask(service);
    service.head.name = "Short wig";
    service.coats[0].zones[0].firstStrandMost = minutes{49};
    question.services.push_back(service);
    EXPECT_THAT(demandsOf(refused(question)), HasSubstr("Short wig, Root: first strand"));
}

TEST(Reason, OfLooksAndLateJobsNamesThem)
{
    const NoPlan reason = refused(fromOpening({zoneWithLookAndJob()}));
    EXPECT_THAT(demandsOf(reason), HasSubstr("Root: looks from 20 min, each within 2 min"));
    EXPECT_THAT(demandsOf(reason), HasSubstr("Emulsify Root: 13 min before its water, within 1 min"));
    EXPECT_TRUE(reason.minimal);
}

// Random services in which nothing but windows and the one pair of hands can be in the way.
TEST(Reason, IsMinimalWhateverDoesNotFit)
{
    int found = 0;
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        std::mt19937_64 engine{seed};
        const auto between = [&](int least, int most) {
            return least + static_cast<int>(engine() % static_cast<unsigned>(most - least + 1));
        };
        std::vector<Zone> zones;
        for (int count = between(2, 4); count > 0; --count) {
            const int least = between(5, 30);
            const minutes length{between(5, 15)};
            zones.push_back(makeZone("Zone " + std::to_string(count), length,
                                     {minutes{least}, minutes{least}, minutes{least + between(0, 5)}}));
        }
        const Service service = fromOpening(zones);
        const auto answer = plan(ask(service));
        if (answer)
            continue;
        SCOPED_TRACE(oracle::questionText(ask(service)) + answer.error().text.text());
        expectMinimal(service, answer.error());
        ++found;
    }
    EXPECT_GT(found, 40);
}

TEST(Reason, IsNotSoughtForEverWithoutABudget)
{
    Service service = noSlack();
    service.coats[0].zones[0].develop.most = minutes{49};
    const auto answer = plan(ask(service), {.conflicts = 0, .stop = {}});
    ASSERT_FALSE(answer);
    EXPECT_TRUE(answer.error().stopped);
    EXPECT_FALSE(answer.error().minimal);
    EXPECT_FALSE(answer.error().text.empty());
}

}  // namespace
}  // namespace core::stagger
