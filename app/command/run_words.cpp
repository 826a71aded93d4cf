#include "app/command/run_words.h"

#include "app/output/plan_words.h"
#include "app/output/text_table.h"
#include "app/view/outcome_view.h"
#include "app/view/outcome_words.h"
#include "app/view/tone_words.h"
#include "core/run/amend/amendment_text.h"
#include "core/run/amend/revisions.h"
#include "core/run/answers.h"
#include "core/stagger/head_name.h"

#include <algorithm>

namespace app::command {

using core::measure::countdownText;
using core::measure::Instant;
using core::measure::lengthText;
using core::measure::Seconds;
using core::measure::TimeZones;
using core::run::Fact;
using core::run::FactKind;
using core::run::Lane;
using core::run::Prompt;
using core::run::Stage;
using core::run::State;
using core::stagger::TaskId;
using Side = output::TextTable::Side;

namespace {

const core::service::Zone& zoneOf(const Services& services, const Lane& lane)
{
    return services.at(lane.service).coats.at(lane.coat).zones.at(lane.zone);
}

std::string stageText(Stage stage)
{
    switch (stage) {
    case Stage::Waiting: return "waits";
    case Stage::Applying: return "is applied";
    case Stage::Developing: return "develops";
    case Stage::Rinsing: return "is rinsed";
    case Stage::Rinsed: return "rinsed";
    case Stage::Dropped: return "left out";
    }
    return {};
}

/// What the lane waits for, and how long.
std::string untilText(const Lane& lane, Instant now)
{
    switch (lane.stage) {
    case Stage::Waiting: return "application " + dueText(lane.firstContact - now);
    case Stage::Applying: return "its end " + dueText(lane.applicationEnd - now);
    case Stage::Developing: return "water " + dueText(lane.water - now);
    case Stage::Rinsing:
    case Stage::Rinsed:
    case Stage::Dropped: break;
    }
    return {};
}

std::string lookText(const Lane& lane, Instant now)
{
    return core::run::carriesMixture(lane.stage) && lane.nextLook ? "look " + dueText(*lane.nextLook - now)
                                                                  : std::string{};
}

/// "heat on for 10 min", "heat off"
std::string heatVerb(const Fact& fact)
{
    if (fact.kind == FactKind::Finished)
        return "heat off";
    return fact.again > Seconds{0} ? "heat on for " + lengthText(fact.again) : "heat on";
}

/// " as wanted"; empty where none of the few words was said.
std::string outcomeText(const Fact& fact)
{
    return fact.outcome ? " " + std::string{view::outcomeWord(*fact.outcome)} : std::string{};
}

/// The zone, or the coat, that is looked back on.
std::string lookedBackOn(const Services& services, const TaskId& zone, FactKind kind)
{
    const auto& service = services.at(zone.service);
    const auto& coat = service.coats.at(zone.coat);
    const std::string head =
        services.size() > 1 ? core::stagger::headName(services, zone.service) + ": " : std::string{};
    return head + (kind == FactKind::TurnedOut ? coat.zones.at(zone.item).name : coat.name);
}

std::string factVerb(const Fact& fact)
{
    switch (fact.kind) {
    case FactKind::Started: return "started";
    case FactKind::Finished: return "finished";
    case FactKind::Looked: break;
    case FactKind::Dropped: return "left out";
    case FactKind::Undone: return "undone";
    case FactKind::Moved: return "moved";
    case FactKind::Ended: return "ended";
    case FactKind::Amended: return "what is planned was changed";
    case FactKind::TurnedOut: return "turned out" + outcomeText(fact) + ":";
    case FactKind::Noted: return "for next time:";
    }
    if (fact.verdict == core::run::Verdict::Again)
        return "again in " + lengthText(fact.again) + ":";
    return fact.verdict == core::run::Verdict::RinseNow ? "rinse now:" : "left:";
}

/// What was seen of it last, and when.
std::string toneText(const Services& services, const TimeZones& zones, const Lane& lane)
{
    return lane.tone ? lane.tone->what + " at " + clockOf(services, zones, lane.tone->at) : std::string{};
}

std::string heatText(const Services& services, const TimeZones& zones, const core::run::Heat& heat,
                     Instant now)
{
    std::string text =
        services.size() > 1 ? core::stagger::headName(services, heat.task.service) + ": heat" : "Heat";
    text += " since " + clockOf(services, zones, heat.since);
    if (heat.offDue)
        text += ", to be taken off " + dueText(*heat.offDue - now);
    return text + ". " + std::string{view::heatCaution};
}

bool wasBegun(const State& state, const Lane& lane)
{
    for (const Lane& other : state.lanes)
        if (other.service == lane.service && other.coat == lane.coat && other.stage != Stage::Waiting)
            return true;
    return lane.coat == 0;
}

/// Until when it can be put off; what that is safe against, where it is not what is said by default.
std::string latestText(const Services& services, const TimeZones& zones, const view::LatestStart& latest)
{
    return " (at the latest " + clockOf(services, zones, latest.at)
        + (latest.onlyAsUsual ? " if all takes as usual)" : ")");
}

/// The countdown comes last: what stands before it changes only with what is asked for.
std::string stepLine(const Services& services, const TimeZones& zones, const view::StepView& step)
{
    std::string line = promptText(services, step.prompt);
    if (step.latest)
        line += latestText(services, zones, *step.latest);
    line += ", " + dueText(step.left);
    if (!step.hands.empty())
        line += " (" + step.hands + ")";
    return line;
}

}  // namespace

std::string clockOf(const Services& services, const TimeZones& zones, Instant moment)
{
    return core::measure::clockTextWithSeconds(zones.localAt(moment, services.front().timeZone));
}

std::string taskText(const Services& services, const TaskId& task)
{
    const auto& service = services.at(task.service);
    const std::string name = core::stagger::taskName(service, task);
    return services.size() > 1 ? core::stagger::headName(services, task.service) + ": " + name : name;
}

std::string promptText(const Services& services, const Prompt& prompt)
{
    const std::string task = taskText(services, prompt.task);
    if (prompt.task.kind == core::stagger::TaskKind::Heat)
        return "Take it off: " + task;
    switch (prompt.asks) {
    case Prompt::Asks::Start: return "Start: " + task;
    case Prompt::Asks::Finish: return "Has it ended? " + task;
    case Prompt::Asks::Look: break;
    }
    return task;
}

namespace {

/// "2 limits are passed by 7 min in all"
std::string passedText(const std::vector<core::stagger::BrokenLimit>& broken)
{
    Seconds by{0};
    for (const core::stagger::BrokenLimit& limit : broken)
        by += limit.by;
    const bool one = broken.size() == 1;
    return std::to_string(broken.size()) + (one ? " limit is passed by " : " limits are passed by ")
        + lengthText(by) + (one ? "" : " in all");
}

}  // namespace

std::string choiceText(const core::stagger::Choice& choice)
{
    std::string text = choice.what.text() + ": ";
    const auto minutes = [](const core::measure::Harm& harm) { return output::zoneMinutes(harm); };
    if (choice.plan->broken.empty())
        text += "every limit holds";
    else
        text += passedText(choice.plan->broken);
    return text + ", " + minutes(choice.under) + " short and " + minutes(choice.over) + " past the targets";
}

std::string dueText(Seconds left)
{
    if (left.count() == 0)
        return "now";
    return left.count() > 0 ? "in " + countdownText(left) : countdownText(-left) + " late";
}

namespace {

std::string textWithoutAmendment(const Services& services, const TimeZones& zones, const Fact& fact)
{
    const bool heat = fact.task.kind == core::stagger::TaskKind::Heat;
    const bool hasTask = !heat && fact.kind != FactKind::Undone && fact.kind != FactKind::Moved
        && fact.kind != FactKind::Ended && fact.kind != FactKind::Amended;
    std::string text = "#" + std::to_string(static_cast<std::int64_t>(fact.number)) + " "
        + (heat ? heatVerb(fact) : factVerb(fact));
    if (fact.kind == FactKind::TurnedOut || fact.kind == FactKind::Noted)
        text += " " + lookedBackOn(services, fact.task, fact.kind);
    else if (hasTask)
        text += " " + taskText(services, fact.task);
    else if (fact.about)
        text += " #" + std::to_string(static_cast<std::int64_t>(*fact.about));
    text += " at " + clockOf(services, zones, fact.happened);
    if (core::run::isInstead(fact))
        text += ", instead of #" + std::to_string(static_cast<std::int64_t>(*fact.about));
    if (fact.tone.empty())
        return text;
    return text + (fact.kind == FactKind::Looked ? ", seen: " : ", said: ") + fact.tone;
}

}  // namespace

std::string factText(const core::run::Setup& setup, std::span<const Fact> facts, std::size_t place,
                     const TimeZones& zones)
{
    const Services& services = core::run::servicesAt(setup, facts.first(place + 1));
    std::string text = textWithoutAmendment(services, zones, facts[place]);
    if (facts[place].kind != FactKind::Amended)
        return text;
    const std::string what = core::run::amendmentText(setup, facts, place, zones);
    return what.empty() ? text : text + ": " + what;
}

std::vector<std::string> answerLines(const core::run::Setup& setup, std::span<const Fact> facts,
                                     const TimeZones& zones, std::size_t most)
{
    std::vector<std::string> lines;
    for (const std::vector<Fact>& answer : core::run::standingAnswers(facts)) {
        if (lines.size() == most)
            break;
        const auto place = core::run::placeOf(facts, answer.front().number);
        std::vector<Fact> known{facts.begin(), facts.end()};
        known[*place].happened = answer.front().happened;
        lines.push_back(factText(setup, known, *place, zones));
    }
    return lines;
}

std::vector<std::string> outcomeLines(const Services& services, const State& state,
                                      std::span<const Fact> facts)
{
    std::vector<std::string> lines;
    for (const view::CoatResult& coat : view::coatResults(services, state, facts)) {
        const std::string whose = coat.name.empty() ? std::string{} : " (" + coat.name + ")";
        std::string said;
        for (const view::ZoneResult& zone : coat.zones)
            said += (said.empty() ? "" : "; ") + zone.name + " "
                + (zone.isTold() ? resultText(zone) : "not said");
        const bool any = std::ranges::any_of(coat.zones, &view::ZoneResult::isTold);
        lines.push_back(any ? "Turned out" + whose + ": " + said
                            : "How did it turn out" + whose + "? Type out ZONE: and words; out lists some.");
        if (!coat.note.empty())
            lines.push_back("For next time" + whose + ": " + coat.note);
    }
    return lines;
}

std::vector<std::string> laneLines(const Services& services, const State& state, const TimeZones& zones)
{
    output::TextTable table{{{""}, {""}, {""}, {""}, {""}, {""}, {""}}};
    for (const Lane& lane : state.lanes) {
        if (!wasBegun(state, lane))
            continue;
        const auto& zone = zoneOf(services, lane);
        const bool counts = lane.development.count() > 0;
        const std::string development = counts
            ? countdownText(lane.development) + " of " + lengthText(zone.develop.target)
            : std::string{};
        const std::string most = lane.stage == Stage::Developing
            ? "at most until " + clockOf(services, zones, lane.mostAt)
            : std::string{};
        table.addRow({zone.name, stageText(lane.stage), development, untilText(lane, state.now),
                      lookText(lane, state.now), most, toneText(services, zones, lane)});
    }
    std::vector<std::string> lines;
    const std::string text = table.text();
    for (std::size_t from = text.find('\n') + 1; from < text.size(); from = text.find('\n', from) + 1)
        lines.push_back(text.substr(from, text.find('\n', from) - from));
    for (const core::run::Heat& heat : state.heats)
        lines.push_back(heatText(services, zones, heat, state.now));
    return lines;
}

std::vector<std::string> nowLines(const Services& services, const State& state, const TimeZones& zones)
{
    const view::NowView now = view::nowView(services, state);
    if (!now.main)
        return {now.finished ? "Every task is done." : "Nothing is asked for."};
    std::vector<std::string> lines{"NOW  " + stepLine(services, zones, *now.main)};
    int number = 2;
    for (const view::StepView& step : now.next)
        lines.push_back("  " + std::to_string(number++) + "  " + stepLine(services, zones, step));
    if (state.reason)
        lines.push_back("Not every limit can hold any more: " + state.reason->text.text());
    return lines;
}

std::string summary(const Services& services, const State& state)
{
    output::TextTable table{{{"Zone"}, {"Developed", Side::Right}, {"Asked for"}, {""}}};
    for (const Lane& lane : state.lanes) {
        const auto& zone = zoneOf(services, lane);
        const bool rinsed = lane.stage == Stage::Rinsed || lane.stage == Stage::Rinsing;
        table.addRow({zone.name, rinsed ? lengthText(lane.development) : stageText(lane.stage),
                      output::windowText(zone.develop),
                      rinsed ? output::deviationText(zone, lane.development) : std::string{}});
    }
    return table.text();
}

}  // namespace app::command
