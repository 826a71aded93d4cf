#include "app/output/explanation.h"
#include "app/output/wall_clock.h"

#include <algorithm>

namespace app::output {

using core::measure::Harm;
using core::stagger::Cure;
using core::stagger::CureStep;
using core::stagger::Hold;
using core::stagger::Plan;

namespace {

bool isWholeMinute(Instant moment)
{
    return moment == std::chrono::floor<std::chrono::minutes>(moment);
}

/// For all that is said of the cures: they may begin and end at other times.
WallClock wallClockOf(const std::vector<Cure>& cures, const core::service::Service& service,
                      const core::measure::TimeZones& zones)
{
    Instant first = cures.front().plan->start;
    Instant last = cures.front().plan->end;
    bool whole = true;
    for (const Cure& cure : cures) {
        first = std::min(first, cure.plan->start);
        last = std::max(last, cure.plan->end);
        whole = whole && isWholeMinute(cure.plan->start) && isWholeMinute(cure.plan->end);
    }
    WallClock clock{zones, service.timeZone, first, last};
    if (!whole)
        clock.showSeconds();
    return clock;
}

std::string worthText(const Plan& plan, const WallClock& clock)
{
    const Harm off = plan->worth.deviation;
    return (off.hundredthSeconds == 0 ? "every zone gets its target"
                                      : "off target by " + zoneMinutes(off) + " in all")
        + ", from " + clock.text(plan->start) + " to " + clock.text(plan->end)
        + (plan->proved ? "" : "; not proved best");
}

std::string stepText(const CureStep& step, const WallClock& clock)
{
    std::string text = step.what;
    if (step.when && step.kind == core::stagger::CureKind::AnotherHands)
        text += ", from " + clock.text(step.when->from) + " to " + clock.text(step.when->until);
    return text + "." + (step.note.empty() ? "" : " " + step.note.text());
}

std::string cureText(std::size_t number, const Cure& cure, const WallClock& clock)
{
    const std::string label = std::to_string(number);
    const std::string indent(4, ' ');
    std::string text = label + std::string(label.size() < 4 ? 4 - label.size() : 1, ' ');
    for (std::size_t place = 0; place < cure.steps.size(); ++place)
        text += (place == 0 ? "" : indent + "And: ") + stepText(cure.steps[place], clock) + "\n";
    return text + indent + "Then " + worthText(cure.plan, clock) + ".\n";
}

std::string withoutText(const Hold& hold)
{
    return "  - " + hold.demand.what.text() + ": without it "
        + (hold.deviation.hundredthSeconds == 0 ? "every zone would get its target"
                                                : zoneMinutes(hold.deviation))
        + "\n";
}

}  // namespace

std::string explanationText(const Services& services, const WhyNot& whyNot,
                            const core::measure::TimeZones& zones)
{
    std::string text = noPlanText(whyNot.reason);
    if (!whyNot.cures.empty()) {
        text += "\nEach of these changes was planned, and it fits. The least change comes first:\n\n";
        const WallClock clock = wallClockOf(whyNot.cures, services.front(), zones);
        for (std::size_t place = 0; place < whyNot.cures.size(); ++place)
            text += cureText(place + 1, whyNot.cures[place], clock);
    }
    if (!whyNot.complete)
        text += "\nThe time for finding cures was up, so there may be more.\n";
    else if (whyNot.cures.empty() && !whyNot.reason.stopped)
        text += "\nNo change that is known makes it fit, nor do two together.\n";
    return text;
}

std::string explanationText(const Services& services, const WhySo& whySo,
                            const core::measure::TimeZones& zones)
{
    const WallClock clock{zones, services.front().timeZone, whySo.plan->start, whySo.plan->end};
    std::string text = "It fits: " + worthText(whySo.plan, clock) + ".\n";
    if (whySo.plan->worth.deviation.hundredthSeconds == 0)
        return text;
    text += worthSentences(services, whySo.plan).front() + "\n";
    if (!whySo.holding)
        return text + "There was no time to find out what keeps it from being less.\n";
    // What holds it is sought among plans for usual lengths; the give comes before the targets.
    const std::int64_t forGive =
        whySo.plan->worth.deviation.hundredthSeconds - whySo.holding->deviation.hundredthSeconds;
    if (forGive > 0)
        text += zoneMinutes({forGive})
            + " of that are the price of holding when applying takes longer or shorter than usual.\n";
    if (whySo.holding->deviation.hundredthSeconds == 0)
        return text;
    if (!whySo.holding->holds.empty()) {
        text += "\nWhat would have to give for less, one thing at a time:\n";
        for (const Hold& hold : whySo.holding->holds)
            text += withoutText(hold);
    } else if (whySo.holding->complete) {
        text += "No single limit keeps it from being less, only several together.\n";
    }
    if (!whySo.holding->complete)
        text += "The time was up before every limit had been looked at.\n";
    return text;
}

}  // namespace app::output
