#include "core/run/amend/amend.h"

#include "core/run/planning.h"
#include "core/run/zone_record.h"
#include "core/service/edits.h"

#include <algorithm>

namespace core::run {
namespace {

/// Who has gone is away longer than any run lasts, and nobody who comes back is away for that long.
constexpr Seconds forGood = std::chrono::hours{72};
constexpr Seconds longestAway = std::chrono::hours{24};

Answer amended(std::vector<service::Service> services)
{
    Answer answer;
    answer.kind = Answer::Kind::Amend;
    answer.services = std::move(services);
    return answer;
}

/// Sorted, and joined where they touch.
void addAway(std::vector<measure::Interval>& away, measure::Interval more)
{
    std::erase_if(away, [&more](const measure::Interval& each) {
        if (each.until < more.from || more.until < each.from)
            return false;
        more = {std::min(each.from, more.from), std::max(each.until, more.until)};
        return true;
    });
    away.push_back(more);
    std::ranges::sort(away, {}, &measure::Interval::from);
}

}  // namespace

Answer awayAnswer(const std::vector<service::Service>& services, std::size_t hands, measure::Interval away)
{
    Answer answer = amended(services);
    for (service::Service& service : answer.services) {
        if (hands < service.crew.hands.size())
            addAway(service.crew.hands[hands].away, away);
    }
    return answer;
}

Answer goneAnswer(const std::vector<service::Service>& services, std::size_t hands, Instant from)
{
    return awayAnswer(services, hands, {from, from + forGood});
}

bool hasGone(const service::Hands& hands, Instant now)
{
    return std::ranges::any_of(hands.away, [now](const measure::Interval& away) {
        return away.from <= now && now + longestAway <= away.until;
    });
}

Answer helperAnswer(const std::vector<service::Service>& services, const std::string& name)
{
    Answer answer = amended(services);
    for (service::Service& service : answer.services) {
        std::vector<std::string> taken;
        for (const service::Hands& hands : service.crew.hands)
            taken.push_back(hands.name);
        service.crew.hands.push_back({.name = service::freeName(name, taken), .away = {}, .kinds = {}});
    }
    return answer;
}

Answer apartAnswer(const std::vector<service::Service>& services, const TaskId& apply)
{
    Answer answer = amended(services);
    service::giveOwnGroup(answer.services[apply.service].coats[apply.coat], apply.item);
    return answer;
}

Answer zoneAnswer(const std::vector<service::Service>& services, std::size_t service, std::size_t coat,
                  const service::Zone& zone)
{
    Answer answer = amended(services);
    std::vector<service::Zone>& zones = answer.services[service].coats[coat].zones;
    std::vector<std::string> taken;
    taken.reserve(zones.size());
    for (const service::Zone& each : zones)
        taken.push_back(each.name);
    zones.push_back(zone);
    zones.back().name = service::freeName(zone.name, taken);
    return answer;
}

Answer zoneLikeAnswer(const std::vector<service::Service>& services, const stagger::Progress& progress,
                      const TaskId& like, const std::string& name, std::optional<Seconds> apply)
{
    service::Zone zone = zoneOf(services, like);
    zone.name = name;
    zone.after.clear();
    zone.late.clear();
    if (apply)
        zone.apply = {.quickest = *apply, .usual = *apply, .slowest = *apply};
    Answer answer = zoneAnswer(services, like.service, like.coat, zone);
    service::Coat& coat = answer.services[like.service].coats[like.coat];
    if (progress.find(rinseOf(services, like)))
        service::giveOwnGroup(coat, coat.zones.size() - 1);
    return answer;
}

std::vector<stagger::Choice> choicesAt(const Setup& setup, std::span<const Fact> facts, Instant now)
{
    const auto question = choiceQuestionAt(setup, facts, now);
    return question ? stagger::choicesFor(*question, setup.budget) : std::vector<stagger::Choice>{};
}

std::optional<stagger::Question> choiceQuestionAt(const Setup& setup, std::span<const Fact> facts,
                                                  Instant now)
{
    return PlanHistory{setup, facts}.choiceQuestion(now);
}

Answer choiceAnswer(const stagger::Choice& choice)
{
    Answer answer = amended(choice.services);
    answer.drop = choice.drop;
    return answer;
}

}  // namespace core::run
