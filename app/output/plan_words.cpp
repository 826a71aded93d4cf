#include "app/output/plan_words.h"

#include "core/stagger/head_name.h"

#include <cstdio>

namespace app::output {

using core::measure::lengthText;
using core::measure::Seconds;
using core::service::Service;
using core::service::Zone;
using core::stagger::BrokenLimit;
using core::stagger::NoPlan;
using core::stagger::Plan;
using core::stagger::PlannedZone;
using core::stagger::TaskId;

namespace {

const Service& serviceOf(const Services& services, const TaskId& task)
{
    return services.at(task.service);
}

bool harmsDiffer(const Services& services)
{
    for (const Service& service : services)
        for (const auto& coat : service.coats)
            for (const Zone& zone : coat.zones)
                if (zone.under.hundredths != 100 || zone.over.hundredths != 100)
                    return true;
    return false;
}

std::string targetSentence(const Services& services, const Plan& plan)
{
    if (plan->worth.deviation.hundredthSeconds == 0)
        return "Every zone gets its target.";
    std::string off;
    for (const PlannedZone& planned : plan->zones) {
        const Zone& zone = zoneOf(services, planned);
        if (planned.development() == zone.develop.target)
            continue;
        off += (off.empty() ? "" : ", ") + ofHead(services, planned.service) + zone.name + " "
            + deviationText(zone, planned.development());
    }
    return "Off target by " + zoneMinutes(plan->worth.deviation) + " in all"
        + (harmsDiffer(services) ? ", weighed by the harms of the service: " : ": ") + off + ".";
}

/// How far from the best it can be: on the first level on which it may be worse at all.
std::string gapText(const Plan& plan)
{
    const core::stagger::Worth& worth = plan->worth;
    const core::stagger::Worth& bound = plan->provedBound;
    if (worth.breach > bound.breach)
        return "The limits are passed by at most "
            + zoneMinutes({worth.breach.hundredthSeconds - bound.breach.hundredthSeconds})
            + " of harm more than they must be.";
    if (worth.deviation > bound.deviation)
        return "At most " + zoneMinutes({worth.deviation.hundredthSeconds - bound.deviation.hundredthSeconds})
            + " of deviation from the best.";
    if (worth.waste > bound.waste)
        return "No plan is nearer to the targets; at most " + lengthText(worth.waste - bound.waste)
            + " of waiting from the best.";
    return "No plan is nearer to the targets or has less waiting; bowls wait at most "
        + lengthText(worth.staleness - bound.staleness) + " longer than in the best.";
}

std::string proofSentence(const Plan& plan)
{
    if (plan->proved || plan->worth == plan->provedBound)
        return "Proved: there is no better plan.";
    return "Not proved best: the search was stopped. " + gapText(plan);
}

/// "Root 8 to 13 min, Ends 6 to 10 min": what applying may take, where that is open.
std::string heldLengths(const Services& services, const Plan& plan)
{
    std::string text;
    for (const auto& planned : plan->zones) {
        if (planned.quickestHeld == planned.slowestHeld)
            continue;
        text += (text.empty() ? "" : ", ") + ofHead(services, planned.service)
            + zoneOf(services, planned).name + " " + lengthText(planned.quickestHeld) + " to "
            + lengthText(planned.slowestHeld);
    }
    return text;
}

/// How far the plan holds when applying takes longer or shorter than usual; nothing where that is not known.
std::string giveSentence(const Services& services, const Plan& plan)
{
    if (!plan->give)
        return {};
    const std::string unproved =
        plan->giveProved ? "" : " Not every plan was tried: another may hold further.";
    if (*plan->give == 0)
        return "Holds for the usual lengths of applying only: where one takes longer or shorter, a limit may "
               "be "
               "missed."
            + unproved;
    if (*plan->give == 100)
        return "Holds however long applying takes within what the service says: "
            + heldLengths(services, plan) + ".";
    return "Holds while applying takes " + heldLengths(services, plan) + " (" + std::to_string(*plan->give)
        + " % of what the service says it may); beyond that a limit may be missed." + unproved;
}

std::string brokenSentence(const Services& services, const BrokenLimit& broken)
{
    return "Past a limit by " + lengthText(broken.by) + (broken.already ? " already" : "") + ": "
        + broken.what.text() + " (" + ofHead(services, broken.task.service)
        + core::stagger::taskName(serviceOf(services, broken.task), broken.task).text() + ").";
}

}  // namespace

std::string ofHead(const Services& services, std::size_t head)
{
    return services.size() > 1 ? core::stagger::headName(services, head) + ", " : std::string{};
}

std::string zoneMinutes(core::measure::Harm harm)
{
    char digits[32];
    std::snprintf(digits, sizeof digits, "%.2f", harm.minutes());
    std::string text = digits;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text + " zone-minutes";
}

std::string handsName(const Services& services, std::size_t hands)
{
    const auto& crew = services.front().crew.hands;
    if (hands < crew.size() && !crew[hands].name.empty())
        return crew[hands].name;
    return "Hands " + std::to_string(hands + 1);
}

const Zone& zoneOf(const Services& services, const PlannedZone& zone)
{
    return services.at(zone.service).coats.at(zone.coat).zones.at(zone.zone);
}

std::string windowText(const core::service::Window& window)
{
    if (window.least == window.most)
        return lengthText(window.target) + " exactly";
    return lengthText(window.least) + " to " + lengthText(window.most) + ", target "
        + lengthText(window.target);
}

std::string deviationText(const Zone& zone, Seconds development)
{
    if (development == zone.develop.target)
        return "on target";
    if (development < zone.develop.target)
        return lengthText(zone.develop.target - development) + " short";
    return lengthText(development - zone.develop.target) + " over";
}

std::vector<std::string> worthSentences(const Services& services, const Plan& plan)
{
    std::vector<std::string> sentences{targetSentence(services, plan)};
    if (const std::string give = giveSentence(services, plan); !give.empty())
        sentences.push_back(give);
    sentences.push_back("It takes " + lengthText(plan->end - plan->start)
                        + " from the first task to the last.");
    if (plan->worth.staleness > Seconds{0})
        sentences.push_back("Bowls wait " + lengthText(plan->worth.staleness)
                            + " in all between being mixed and being applied, counted for each zone.");
    sentences.push_back(proofSentence(plan));
    return sentences;
}

std::vector<std::string> remarks(const Services& services, const Plan& plan, Remarks wanted)
{
    std::vector<std::string> remarks;
    for (const BrokenLimit& broken : plan->broken)
        remarks.push_back(brokenSentence(services, broken));
    const std::size_t looks = plan->looksNotDue.size();
    if (wanted == Remarks::Counted && looks > 0)
        remarks.push_back(looks == 1 ? "One look does not fall due."
                                     : std::to_string(looks) + " looks do not fall due.");
    if (wanted == Remarks::EveryLook)
        for (const TaskId& look : plan->looksNotDue)
            remarks.push_back(ofHead(services, look.service)
                              + core::stagger::taskName(serviceOf(services, look), look).text()
                              + " does not fall due.");
    return remarks;
}

std::string noPlanText(const NoPlan& noPlan)
{
    std::string text = noPlan.text.empty() ? std::string{"Nothing fits."} : noPlan.text.text();
    text += "\n";
    for (const auto& demand : noPlan.demands)
        text += "  - " + demand.what.text() + "\n";
    if (noPlan.stopped)
        text += "The search was stopped before it was known whether anything fits.\n";
    else if (!noPlan.demands.empty())
        text += noPlan.minimal ? "Without any one of these the others can hold together.\n"
                               : "Not all of these may be needed for the clash.\n";
    return text;
}

}  // namespace app::output
