#include "tests/bench/bench_service.h"

#include "tests/oracle/service_maker.h"

#include <algorithm>
#include <random>

namespace bench {
namespace {

using core::measure::Seconds;
using std::chrono::minutes;

class Draw {
public:
    explicit Draw(std::uint64_t seed)
        : m_engine{seed}
    {
    }

    minutes between(int least, int most)
    {
        return minutes{least + static_cast<int>(m_engine() % static_cast<std::uint64_t>(most - least + 1))};
    }

private:
    std::mt19937_64 m_engine;
};

core::service::Looks looks(Family family, Seconds target)
{
    const auto wholeMinutes = std::chrono::duration_cast<minutes>(target);
    core::service::Looks made;
    made.length = minutes{1};
    made.tolerance = minutes{2};
    made.until = target;
    made.first = family == Family::Looks ? wholeMinutes / 2 : wholeMinutes - minutes{13};
    if (family == Family::Mixing)
        made.every = minutes{5};
    return made;
}

}  // namespace

core::stagger::Question coat(Family family, std::size_t zones, std::size_t hands)
{
    Draw draw{zones};
    std::vector<core::service::Zone> made(zones);
    // From the last zone to the first: each develops for about as long as those after it take.
    minutes ahead{20};
    for (std::size_t place = zones; place-- > 0;) {
        const minutes apply = draw.between(4, 9);
        const minutes target = std::max(minutes{15}, ahead + draw.between(-4, 4));
        const minutes least = target - draw.between(4, 10);
        made[place] = oracle::makeZone("Zone " + std::to_string(place + 1), apply,
                                       {least, target, target + draw.between(5, 14)});
        made[place].looks = looks(family, target);
        ahead += apply + (family == Family::Mixing ? minutes{2} : minutes{0});
    }
    core::service::Service service = oracle::makeService(std::move(made), minutes{5});
    core::service::Coat& only = service.coats.front();
    if (family == Family::Mixing) {
        only.bowls.clear();
        for (std::size_t place = 0; place < zones; ++place) {
            only.zones[place].bowl = place;
            only.bowls.push_back({.name = "Bowl " + std::to_string(place + 1),
                                  .mix = minutes{2},
                                  .potLife = only.zones[place].apply.usual + minutes{15},
                                  .note = {}});
        }
    }
    for (std::size_t pair = 1; pair < hands; ++pair)
        service.crew.hands.push_back({.name = "Hands " + std::to_string(pair + 1), .away = {}, .kinds = {}});
    service.notBefore = oracle::opening;
    return oracle::ask(std::move(service));
}

core::stagger::Question room(std::size_t heads, std::size_t zones, std::size_t hands)
{
    core::stagger::Question question = coat(Family::Looks, zones, hands);
    question.services.front().crew.basins = (heads + 1) / 2;
    question.services.resize(heads, question.services.front());
    for (std::size_t head = 0; head < heads; ++head) {
        core::service::Service& service = question.services[head];
        service.head.name = "Head " + std::to_string(head + 1);
        service.notBefore = *service.notBefore + minutes{15} * static_cast<int>(head);
    }
    return question;
}

void makeUncertain(core::stagger::Question& question)
{
    for (core::service::Service& head : question.services)
        for (core::service::Zone& zone : head.coats.front().zones) {
            zone.apply.quickest = zone.apply.usual - minutes{1};
            zone.apply.slowest = zone.apply.usual + minutes{2};
        }
}

}  // namespace bench
