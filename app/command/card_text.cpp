#include "app/command/card_text.h"

#include "app/output/plan_words.h"
#include "app/output/text_table.h"
#include "app/output/wall_clock.h"
#include "app/session/time_zones.h"
#include "app/view/outcome_words.h"
#include "app/view/preparing_words.h"

#include <algorithm>
#include <utility>

namespace app::command {

using core::measure::Instant;
using core::measure::lengthText;
using output::TextTable;
using output::WallClock;
using view::CardCoat;
using view::CardHead;
using view::CardZone;
using Side = TextTable::Side;

namespace {

std::string momentText(const std::optional<Instant>& moment, const WallClock& clock)
{
    return moment ? clock.text(*moment) : std::string{};
}

/// "14:52", "14:52 (planned 14:50)"
std::string waterText(const CardZone& zone, const WallClock& clock)
{
    std::string text = momentText(zone.water, clock);
    if (zone.water && zone.plannedWater && clock.text(*zone.plannedWater) != text)
        text += " (planned " + clock.text(*zone.plannedWater) + ")";
    return text;
}

std::string developedText(const CardZone& zone)
{
    if (zone.developed)
        return lengthText(*zone.developed);
    return zone.stage == core::run::Stage::Dropped ? "left out" : "not rinsed";
}

std::string offText(const CardZone& zone)
{
    core::service::Zone asked;
    asked.develop = zone.window;
    return zone.developed ? output::deviationText(asked, *zone.developed) : std::string{};
}

std::string zonesText(const CardCoat& coat, const WallClock& clock)
{
    TextTable table{{{"Zone"},
                     {"Mixed"},
                     {"First strand"},
                     {"Last strand"},
                     {"Water"},
                     {"Developed", Side::Right},
                     {"Asked for"},
                     {""},
                     {"Turned out"}}};
    for (const CardZone& zone : coat.zones)
        table.addRow({zone.name, momentText(zone.mixed, clock), momentText(zone.firstStrand, clock),
                      momentText(zone.lastStrand, clock), waterText(zone, clock), developedText(zone),
                      output::windowText(zone.window), offText(zone), view::resultText(zone.result)});
    return table.text();
}

std::string lookLine(const CardZone& zone, const view::CardLook& look, const WallClock& clock)
{
    std::string line = clock.text(look.at) + "  Looked at " + zone.name + ": ";
    switch (look.verdict) {
    case core::run::Verdict::Leave: line += "left"; break;
    case core::run::Verdict::Again: line += "again in " + lengthText(look.again); break;
    case core::run::Verdict::RinseNow: line += "rinsed now"; break;
    }
    return line + (look.seen.empty() ? "" : ", seen: " + look.seen) + "\n";
}

/// "14:05  Bowl A for Root and Ends: 30 g with 45 g"
std::string bowlLine(const view::CardBowl& bowl, const WallClock& clock)
{
    std::string line = bowl.mixed ? clock.text(*bowl.mixed) + "  Mixed " : std::string{"Bowl "};
    line += bowl.name;
    for (std::size_t place = 0; place < bowl.zones.size(); ++place)
        line += (place == 0 ? " for " : place + 1 == bowl.zones.size() ? " and " : ", ") + bowl.zones[place];
    return line + (bowl.note.empty() ? "" : ": " + bowl.note) + "\n";
}

std::string coatText(const CardCoat& coat, const WallClock& clock)
{
    std::string text = zonesText(coat, clock) + "\n";
    for (const view::CardBowl& bowl : coat.bowls)
        text += bowlLine(bowl, clock);
    std::vector<std::pair<Instant, std::string>> events;
    for (const CardZone& zone : coat.zones)
        for (const view::CardLook& look : zone.looks)
            events.emplace_back(look.at, lookLine(zone, look, clock));
    for (const view::CardHeat& heat : coat.heats)
        events.emplace_back(heat.from,
                            clock.text(heat.from) + "  Heat, "
                                + (heat.until ? "until " + clock.text(*heat.until) : "no end said") + "\n");
    std::ranges::stable_sort(events, {}, &std::pair<Instant, std::string>::first);
    for (const auto& [at, line] : events)
        text += line;
    for (const std::string& task : coat.leftOut)
        text += "Left out: " + task + "\n";
    if (!coat.note.empty())
        text += "For next time: " + coat.note + "\n";
    return text;
}

/// "13:58  Strand test: skipped, same mixture as on Tuesday"
std::string preparedLine(const core::run::Prepared& prepared, bool onPerson, const WallClock& clock)
{
    return (prepared.at ? clock.text(*prepared.at) + "  " : std::string{})
        + view::preparingName(prepared.what, onPerson) + ": " + view::preparedState(prepared)
        + (prepared.why.empty() ? "" : ", " + prepared.why) + "\n";
}

std::string headText(const CardHead& head, const WallClock& clock)
{
    std::string text = head.service.empty() ? std::string{"Service"} : head.service;
    text += head.head.empty() ? "\n" : ": " + head.head + "\n";
    for (const CardCoat& coat : head.coats) {
        if (head.coats.size() > 1)
            text += "\n" + coat.name + "\n";
        text += coatText(coat, clock);
    }
    return text;
}

/// "apply zone 2": a task of a service that is not there any more.
std::string numberedText(const core::stagger::TaskId& task)
{
    using core::stagger::TaskKind;
    const std::string number = std::to_string(task.item + 1);
    switch (task.kind) {
    case TaskKind::Apply: return "apply zone " + number;
    case TaskKind::Look: return "look at zone " + number;
    case TaskKind::Late: return "late job on zone " + number;
    case TaskKind::Mix: return "mix bowl " + number;
    case TaskKind::Rinse: return "rinse group " + number;
    case TaskKind::RinseAlone: return "rinse zone " + number + " by itself";
    case TaskKind::Dry: return "dry";
    case TaskKind::Assess: return "assess";
    case TaskKind::Heat: return "heat";
    }
    return {};
}

std::string whereText(const core::stagger::TaskId& task)
{
    return (task.coat > 0 ? ", coat " + std::to_string(task.coat + 1) : "")
        + (task.service > 0 ? ", head " + std::to_string(task.service + 1) : "");
}

}  // namespace

std::string erasedText(const view::ErasedRun& run, const session::StoredRun& stored,
                       const core::measure::TimeZones& zones)
{
    const Instant began = stored.run.began;
    const Instant ended = stored.ended.value_or(began);
    const WallClock clock{zones, session::localZone(), began, ended};
    std::string text = "Run " + std::to_string(static_cast<std::int64_t>(stored.id)) + ", "
        + clock.dayText(began) + ", " + clock.text(began) + " to " + clock.text(ended) + ", times in "
        + clock.zone()
        + ".\nWhatever could name a person was erased from it. What is left are kinds of tasks, numbers and "
          "times:\n\n";
    for (const view::LeftTask& left : run.tasks)
        text += clock.text(left.from) + (left.until ? " to " + clock.text(*left.until) : "") + "  "
            + numberedText(left.task) + whereText(left.task) + "\n";
    for (const core::run::ZoneOutcome& said : run.outcomes)
        if (said.outcome)
            text += "Zone " + std::to_string(said.zone.item + 1) + whereText(said.zone) + " turned out "
                + std::string{view::outcomeWord(*said.outcome)} + ".\n";
    return text;
}

std::string cardText(const view::RecordCard& card, std::int64_t run, const core::measure::TimeZones& zones)
{
    const WallClock clock{zones, card.heads.front().timeZone, view::firstMoment(card), card.until};
    std::string text = "Run " + std::to_string(run) + ", " + clock.dayText(card.began) + ", "
        + clock.text(card.began) + " to " + clock.text(card.until) + (card.ended ? "" : " and not ended")
        + ", times in " + clock.zone() + ".\n";
    if (!card.prepared.empty())
        text += "\nBefore the start:\n";
    for (const core::run::Prepared& prepared : card.prepared)
        text += preparedLine(prepared, card.onPerson, clock);
    for (const CardHead& head : card.heads)
        text += "\n" + headText(head, clock);
    if (!card.changes.empty())
        text += "\nChanged while it went on:\n";
    for (const view::CardChange& change : card.changes)
        text += clock.text(change.at) + "  " + change.what + "\n";
    return text
        + "\nWhat was done is what was answered. The product's leaflet comes first: basinbell cautions.\n";
}

}  // namespace app::command
