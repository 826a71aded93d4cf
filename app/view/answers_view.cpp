#include "app/view/answers_view.h"

#include "core/run/answers.h"

namespace app::view {
namespace {

using core::run::Fact;
using core::service::Service;

std::vector<ZoneOption> othersThan(const std::vector<Service>& services, const Fact& fact)
{
    std::vector<ZoneOption> others;
    if (fact.revision != 0 || !core::stagger::isOfZone(fact.task) || fact.kind == core::run::FactKind::Ended)
        return others;
    const auto& zones = services.at(fact.task.service).coats.at(fact.task.coat).zones;
    for (std::size_t zone = 0; zone < zones.size(); ++zone)
        if (zone != fact.task.item)
            others.push_back(
                {{.service = fact.task.service, .coat = fact.task.coat, .item = zone}, zones[zone].name});
    return others;
}

}  // namespace

std::vector<AnswerOption> answersView(const std::vector<Service>& services, std::span<const Fact> facts,
                                      std::size_t most)
{
    std::vector<AnswerOption> options;
    for (std::vector<Fact>& answer : core::run::standingAnswers(facts)) {
        if (options.size() == most)
            break;
        std::vector<ZoneOption> others = othersThan(services, answer.front());
        options.push_back({std::move(answer), std::move(others)});
    }
    return options;
}

}  // namespace app::view
