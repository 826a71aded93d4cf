#include "tests/bench/floor_service.h"

#include "tests/oracle/service_maker.h"

#include <random>

namespace bench {
namespace {

namespace service = core::service;
using core::measure::Instant;
using oracle::opening;
using service::Work;
using std::chrono::hours;
using std::chrono::minutes;

constexpr Instant dayBegins = opening - hours{1};
constexpr Instant dayEnds = dayBegins + hours{10};

class Draw {
public:
    explicit Draw(std::uint64_t seed)
        : m_engine{seed}
    {
    }

    int number(int least, int most)
    {
        return least + static_cast<int>(m_engine() % static_cast<std::uint64_t>(most - least + 1));
    }
    minutes between(int least, int most) { return minutes{number(least, most)}; }

private:
    std::mt19937_64 m_engine;
};

std::string numbered(const char* thing, std::size_t place)
{
    return thing + (" " + std::to_string(place + 1));
}

/// Zones one after the other, each developing for about as long as those after it take.
service::Coat coat(std::size_t place, Draw& draw)
{
    service::Coat made;
    made.name = numbered("Coat", place);
    made.groups.push_back(
        {.name = "All", .rinse = draw.between(4, 6), .waterEarliest = {}, .waterLatest = {}});
    const auto zones = static_cast<std::size_t>(draw.number(3, 5));
    made.zones.resize(zones);
    minutes ahead{15};
    for (std::size_t item = zones; item-- > 0;) {
        const minutes apply = draw.between(5, 9);
        const minutes target = ahead + draw.between(0, 6);
        service::Zone& zone = made.zones[item];
        zone = oracle::makeZone(numbered("Zone", item), apply,
                                {target - draw.between(4, 8), target, target + draw.between(6, 12)});
        zone.apply = {apply - minutes{1}, apply, apply + minutes{2}};
        zone.bowl = item;
        zone.looks = service::Looks{.first = target - draw.between(7, 10),
                                    .every = minutes{6},
                                    .length = minutes{1},
                                    .tolerance = minutes{2},
                                    .until = target};
        ahead += apply;
    }
    for (std::size_t item = 0; item < zones; ++item)
        made.bowls.push_back({.name = numbered("Bowl", item),
                              .mix = minutes{2},
                              .potLife = made.zones[item].apply.usual + minutes{30},
                              .note = {}});
    made.zones.front().late.push_back(
        {.name = "Emulsify", .before = minutes{3}, .length = minutes{2}, .tolerance = minutes{1}});
    made.dryHands = draw.between(3, 5);
    made.dryUnattended = draw.between(15, 25);
    made.assess = draw.between(3, 5);
    return made;
}

service::Crew crew()
{
    service::Crew made;
    for (std::size_t place = 0; place < 4; ++place) {
        const Instant from = dayBegins + hours{3} + static_cast<int>(place) * minutes{30};
        made.hands.push_back(
            {.name = numbered("Hands", place), .away = {{from, from + minutes{30}}}, .kinds = {}});
    }
    made.hands.back().kinds = {Work::Mix, Work::Look, Work::Late, Work::Rinse, Work::Dry};
    made.basins = 3;
    return made;
}

service::Service head(std::size_t place, Draw& draw)
{
    service::Service made;
    made.name = numbered("Service", place);
    made.head.name = numbered("Wig", place);
    made.crew = crew();
    const std::size_t coats = place % 6 == 5 ? 3 : 2;
    for (std::size_t item = 0; item < coats; ++item)
        made.coats.push_back(coat(item, draw));
    made.notBefore = dayBegins;
    // A third is promised for about noon, a third for the evening, the rest is to be done soon.
    if (place % 3 == 0)
        made.readyBy = dayBegins + hours{5} + draw.between(0, 60);
    else if (place % 3 == 1)
        made.readyBy = dayEnds - draw.between(0, 60);
    else
        made.notBefore = dayBegins + draw.between(0, 180);
    return made;
}

}  // namespace

core::stagger::Question dayOnTheFloor(std::size_t heads, std::uint64_t seed)
{
    Draw draw{seed};
    core::stagger::Question question;
    for (std::size_t place = 0; place < heads; ++place)
        question.services.push_back(head(place, draw));
    return question;
}

std::size_t taskCount(const core::stagger::Question& question)
{
    std::size_t tasks = 0;
    for (const service::Service& service : question.services)
        tasks += core::stagger::tasksOf(service).size();
    return tasks;
}

}  // namespace bench
