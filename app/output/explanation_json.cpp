#include "app/output/explanation.h"
#include "app/output/json_parts.h"
#include "app/output/wall_clock.h"

#include <array>

namespace app::output {

using core::stagger::Cure;
using core::stagger::CureStep;
using core::stagger::Hold;
using core::stagger::Plan;

namespace {

constexpr const char* format = "basinbell_explanation";

/// In the order of `CureKind`.
constexpr std::array kinds{"use-buffer",      "later-promise",   "start-earlier",       "earlier-apply",
                           "shorter-least",   "longer-most",     "longer-first-strand", "shorter-last-strand",
                           "looser-looks",    "looser-late-job", "longer-pot-life",     "second-bowl",
                           "rinse-alone",     "let-go-order",    "longer-blend-gap",    "shorter-coat-gap",
                           "longer-coat-gap", "earlier-water",   "later-water",         "leave-later",
                           "return-earlier",  "another-hands",   "another-basin"};
static_assert(kinds.size() == static_cast<std::size_t>(core::stagger::CureKind::AnotherBasin) + 1);

WallClock isoClock(const Services& services, const core::measure::TimeZones& zones)
{
    return {zones, services.front().timeZone, {}, {}};
}

Json planSummary(const Plan& plan, const WallClock& clock)
{
    return {{"start", clock.isoText(plan->start)},
            {"end", clock.isoText(plan->end)},
            {"proved", plan->proved},
            {"worth", worthJson(plan->worth)}};
}

Json stepJson(const CureStep& step, const WallClock& clock)
{
    Json json{{"kind", kinds.at(static_cast<std::size_t>(step.kind))},
              {"service", step.service},
              {"task", idOrNull(step.task)},
              {"what", step.what.text()},
              {"note", step.note.text()},
              {"by_seconds", step.by.count()}};
    if (step.when) {
        json["from"] = clock.isoText(step.when->from);
        json["until"] = clock.isoText(step.when->until);
    }
    return json;
}

Json cureJson(std::size_t number, const Cure& cure, const WallClock& clock)
{
    Json steps = Json::array();
    for (const CureStep& step : cure.steps)
        steps.push_back(stepJson(step, clock));
    return {{"number", number},
            {"what", cure.what().text()},
            {"change_hundredth_seconds", cure.change.hundredthSeconds},
            {"steps", steps},
            {"plan", planSummary(cure.plan, clock)}};
}

Json holdJson(const Hold& hold)
{
    return {{"task", idOrNull(hold.demand.task)},
            {"what", hold.demand.what.text()},
            {"deviation_hundredth_seconds", hold.deviation.hundredthSeconds}};
}

}  // namespace

std::string explanationJson(const Services& services, const WhyNot& whyNot,
                            const core::measure::TimeZones& zones)
{
    const WallClock clock = isoClock(services, zones);
    Json json = jsonHead(format, services);
    json["fits"] = false;
    json["nothing_fits"] = nothingFitsJson(whyNot.reason);
    json["complete"] = whyNot.complete;
    json["cures"] = Json::array();
    for (std::size_t place = 0; place < whyNot.cures.size(); ++place)
        json["cures"].push_back(cureJson(place + 1, whyNot.cures[place], clock));
    return jsonText(json);
}

std::string explanationJson(const Services& services, const WhySo& whySo,
                            const core::measure::TimeZones& zones)
{
    Json json = jsonHead(format, services);
    json["fits"] = true;
    json["plan"] = planSummary(whySo.plan, isoClock(services, zones));
    json["complete"] = whySo.holding && whySo.holding->complete;
    json["holds"] = Json::array();
    if (whySo.holding) {
        for (const Hold& hold : whySo.holding->holds)
            json["holds"].push_back(holdJson(hold));
    }
    return jsonText(json);
}

}  // namespace app::output
