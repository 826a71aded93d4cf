#include "tests/oracle/random_service.h"

#include "core/service/check.h"
#include "tests/oracle/dice.h"
#include "tests/oracle/service_maker.h"

#include <algorithm>

namespace oracle {
namespace {

namespace service = core::service;
using core::stagger::Preference;
using core::stagger::Question;
using service::Work;

class Draw : private Dice {
public:
    Draw(std::uint64_t seed, const Sizes& sizes)
        : Dice{seed}
        , m_sizes{sizes}
    {
    }

    Question question();

private:
    Seconds length(int least, int most) { return number(least, most) * m_sizes.unit; }
    Instant moment(int least, int most) { return opening + length(least, most); }

    service::Bowl bowl(std::size_t place);
    service::Zone zone(std::size_t place, const service::Coat& coat);
    service::Looks looks(Seconds target);
    void makeUncertain(service::Zone& zone);
    service::LateJob lateJob();
    void addAfter(service::Zone& zone, std::size_t place);
    service::RinseGroup group(std::size_t place);
    service::Coat coat(std::size_t place);
    service::Hands hands(std::size_t place);
    std::vector<Work> someKinds();
    void tieToTheClock(service::Service& made);
    service::Crew crew();
    service::Service head(std::size_t place);
    void addPreference(Question& question);

    Sizes m_sizes;
};

std::string named(const std::string& thing, std::size_t place)
{
    return thing + " " + std::to_string(place + 1);
}

service::Bowl Draw::bowl(std::size_t place)
{
    service::Bowl made{.name = named("Bowl", place), .mix = Seconds{0}, .potLife = {}, .note = {}};
    if (inHundred(60))
        made.mix = length(1, 3);
    if (inHundred(40))
        made.potLife = length(6, 16);
    return made;
}

service::Looks Draw::looks(Seconds target)
{
    service::Looks made;
    made.first = length(2, 8);
    made.length = length(1, 2);
    made.until = std::max(inHundred(20) ? target + length(-4, 6) : target, made.first + m_sizes.unit);
    made.tolerance = length(0, 2);
    if (inHundred(50)) {
        made.every = length(4, 8);
        made.tolerance = std::min(made.tolerance, *made.every / 2);
    }
    return made;
}

/// Mostly by a little, so that often something can be given and seldom all.
void Draw::makeUncertain(service::Zone& zone)
{
    if (!inHundred(75))
        return;
    const int most = inHundred(70) ? 4 : 10;
    zone.apply.quickest = std::max(m_sizes.unit, zone.apply.usual - length(0, most));
    zone.apply.slowest = zone.apply.usual + length(0, most);
}

service::Zone Draw::zone(std::size_t place, const service::Coat& coat)
{
    const Seconds least = length(6, 16);
    const Seconds target = least + length(0, 4);
    service::Zone made = makeZone(named("Zone", place), length(2, 6), {least, target, target + length(0, 6)});
    made.bowl = place < coat.bowls.size() ? place : count(coat.bowls.size()) - 1;
    made.group = place < coat.groups.size() ? place : count(coat.groups.size()) - 1;
    if (m_sizes.uncertain)
        makeUncertain(made);
    if (inHundred(30)) {
        made.clock = service::ClockStart::FirstContact;
        made.develop.most = std::max(made.develop.most, made.apply.slowest);
    }
    if (inHundred(15))
        made.firstStrandMost = made.develop.most + length(0, 5);
    if (inHundred(15))
        made.lastStrandLeast = made.develop.least - length(0, 4);
    if (m_sizes.looks && inHundred(35))
        made.looks = looks(target);
    for (const int chances : {20, 15})
        if (inHundred(chances) && (chances == 20 || !made.late.empty()))
            made.late.push_back(lateJob());
    addAfter(made, place);
    if (inHundred(20))
        made.reach = length(0, static_cast<int>(coat.groups[made.group].rinse / m_sizes.unit));
    made.alone = inHundred(20);
    if (inHundred(40)) {
        made.under.hundredths = number(0, 6) * 50;
        made.over.hundredths = number(0, 300);
    }
    return made;
}

service::LateJob Draw::lateJob()
{
    return {.name = "Emulsify", .before = length(2, 4), .length = length(1, 2), .tolerance = length(0, 2)};
}

/// One zone, seldom two that this one goes on after.
void Draw::addAfter(service::Zone& zone, std::size_t place)
{
    for (std::size_t earlier = 0; earlier < place; ++earlier) {
        if (!inHundred(25 / static_cast<int>(place)))
            continue;
        service::After after{.zone = earlier, .longestGap = {}};
        if (inHundred(40))
            after.longestGap = length(0, 6);
        zone.after.push_back(after);
    }
}

service::RinseGroup Draw::group(std::size_t place)
{
    return {.name = named("Group", place), .rinse = length(2, 5), .waterEarliest = {}, .waterLatest = {}};
}

service::Coat Draw::coat(std::size_t place)
{
    service::Coat made;
    made.name = named("Coat", place);
    const std::size_t zones = count(m_sizes.mostZones);
    const std::size_t bowls = inHundred(50) ? 1 : count(zones);
    for (std::size_t item = 0; item < bowls; ++item)
        made.bowls.push_back(bowl(item));
    const std::size_t groups = inHundred(75) ? 1 : std::min<std::size_t>(zones, 2);
    for (std::size_t item = 0; item < groups; ++item)
        made.groups.push_back(group(item));
    for (std::size_t item = 0; item < zones; ++item)
        made.zones.push_back(zone(item, made));
    if (inHundred(30))
        made.dryHands = length(1, 4);
    if (inHundred(30))
        made.dryUnattended = length(1, 4);
    if (inHundred(30))
        made.assess = length(1, 2);
    return made;
}

service::Hands Draw::hands(std::size_t place)
{
    service::Hands made{.name = named("Hands", place), .away = {}, .kinds = {}};
    if (place > 0 && inHundred(30))
        made.kinds = {Work::Mix, Work::Look, Work::Late, Work::Rinse};
    else if (place > 0 && inHundred(20))
        made.kinds = {Work::Apply, Work::Late, Work::Dry};
    else if (inHundred(place > 0 ? 15 : 5))
        made.kinds = someKinds();
    if (inHundred(20)) {
        const Instant from = moment(0, 30);
        made.away.push_back({.from = from, .until = from + length(2, 12)});
        if (inHundred(30))
            made.away.push_back(
                {.from = made.away[0].until + length(1, 8), .until = made.away[0].until + length(9, 14)});
    }
    return made;
}

/// Most of them. What nobody does cannot be planned.
std::vector<Work> Draw::someKinds()
{
    std::vector<Work> kinds;
    for (const Work work :
         {Work::Mix, Work::Apply, Work::Look, Work::Late, Work::Rinse, Work::Dry, Work::Assess})
        if (inHundred(75))
            kinds.push_back(work);
    return kinds;
}

void Draw::tieToTheClock(service::Service& made)
{
    // Some are generous, some are tight, some cannot be kept.
    const int coats = static_cast<int>(made.coats.size());
    if (inHundred(15)) {
        service::RinseGroup& group = made.coats.front().groups[count(made.coats.front().groups.size()) - 1];
        const Instant earliest = moment(20, 40);
        const std::int64_t ends = number(0, 5);
        if (ends != 0)
            group.waterEarliest = earliest;
        if (ends != 1)
            group.waterLatest = earliest + length(0, 10);
    }
    const int kind = static_cast<int>(number(0, 2));
    if (kind != 0)
        made.notBefore = moment(0, 6);
    if (kind != 1) {
        made.readyBy = moment(28, 60) + length(0, 20) * coats;
        made.buffer = length(0, 5);
    }
}

service::Crew Draw::crew()
{
    service::Crew made;
    const std::size_t hands = count(m_sizes.mostHands);
    for (std::size_t place = 0; place < hands; ++place)
        made.hands.push_back(this->hands(place));
    made.basins = count(2);
    return made;
}

/// The first head brings the crew.
service::Service Draw::head(std::size_t place)
{
    service::Service made;
    made.name = "A wig";
    if (inHundred(15))
        made.head = {.name = "Wefts", .kind = service::HeadKind::Wefts, .piecesComeApart = true};
    if (m_sizes.mostHeads > 1)
        made.head.name = named("Head", place);
    if (place == 0)
        made.crew = crew();
    const std::size_t coats = inHundred(80) ? 1 : m_sizes.mostCoats;
    for (std::size_t item = 0; item < coats; ++item)
        made.coats.push_back(coat(item));
    for (std::size_t item = 0; item + 1 < coats; ++item) {
        if (inHundred(50))
            made.coats[item].gapLeast = length(0, 4);
        if (inHundred(50))
            made.coats[item].gapMost = made.coats[item].gapLeast.value_or(Seconds{0}) + length(0, 6);
    }
    tieToTheClock(made);
    return made;
}

void Draw::addPreference(Question& question)
{
    const auto& made = question.services;
    const bool bounded =
        std::ranges::all_of(made, [](const service::Service& each) { return each.notBefore.has_value(); });
    if (bounded && (made.size() > 1 || made.front().readyBy))
        question.preference = static_cast<Preference>(number(0, 2));
    else if (bounded && inHundred(20))
        question.now = *question.services.front().notBefore + length(0, 3);
}

Question Draw::question()
{
    Question question;
    const auto least = static_cast<std::int64_t>(m_sizes.leastHeads);
    const auto most = static_cast<std::int64_t>(m_sizes.mostHeads);
    const std::int64_t heads = most > 1 ? number(least, most) : 1;
    for (std::int64_t place = 0; place < heads; ++place) {
        question.services.push_back(head(static_cast<std::size_t>(place)));
        question.services.back().crew = question.services.front().crew;
    }
    addPreference(question);
    return question;
}

bool isSound(const Question& question, const Sizes& sizes)
{
    std::size_t tasks = 0;
    for (const service::Service& made : question.services)
        tasks += core::stagger::tasksOf(made).size();
    return tasks <= sizes.mostTasks && std::ranges::all_of(question.services, [](const auto& made) {
               return service::checkService(made).empty();
           });
}

}  // namespace

Question randomQuestion(std::uint64_t seed, const Sizes& sizes)
{
    Draw draw{seed, sizes};
    Question question = draw.question();
    while (!isSound(question, sizes))
        question = draw.question();
    return question;
}

}  // namespace oracle
