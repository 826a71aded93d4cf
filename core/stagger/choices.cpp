#include "core/stagger/choices.h"

#include "core/stagger/coat_by_coat.h"
#include "core/stagger/cures/edit.h"
#include "core/stagger/cures/needed_hands.h"
#include "core/stagger/draft.h"
#include "core/stagger/plan_builder.h"
#include "core/stagger/trials.h"

#include <algorithm>
#include <tuple>

namespace core::stagger {
namespace {

/// So many looks of one zone are tried one by one before all that are left.
constexpr std::size_t mostLooksTried = 10;

Choice choiceOf(ChoiceKind kind, const Question& asked, const Plan& plan)
{
    Choice choice{.kind = kind, .services = asked.services, .plan = plan};
    for (const PlannedZone& zone : plan->zones) {
        const service::Zone& wanted = asked.services[zone.service].coats[zone.coat].zones[zone.zone];
        measure::Harm& harm = zone.development() > wanted.develop.target ? choice.over : choice.under;
        harm = harm + wanted.harmOf(zone.development());
    }
    return choice;
}

/// "Go 3 min past: development of at most 45 min", "Stay 3 min short of: development of at least 20 min"
Sentence passingText(const Demand& demand, Seconds by)
{
    switch (demand.kind) {
    case DemandKind::Least:
    case DemandKind::LastStrand:
    case DemandKind::CoatGapLeast: return Sentence::worded("Stay %1 short of: %2", by, demand.what);
    case DemandKind::NotBefore:
    case DemandKind::WaterEarliest: return Sentence::worded("Go %1 ahead of: %2", by, demand.what);
    case DemandKind::Looks:
    case DemandKind::LateJob: return Sentence::worded("Go %1 off: %2", by, demand.what);
    default: return Sentence::worded("Go %1 past: %2", by, demand.what);
    }
}

class Choosing {
public:
    Choosing(const Question& question, const Budget& budget)
        : m_question{question}
        , m_trials{budget}
    {
        m_question.mayBreakLimits = false;
    }

    std::vector<Choice> choices();

private:
    bool carryOn();
    void chooseFor(const Demand& demand);
    std::vector<service::Service> withRoom(const Demand& demand, Seconds by);
    void passLimit(const Demand& demand);
    void skipLooks(const TaskId& zone);
    bool skip(ChoiceKind kind, const std::vector<TaskId>& tasks, Sentence what);
    void rinseAlone(const Edit& edit);
    void callHands(const Edit& edit);
    std::optional<Plan> better(const Question& asked);

    Question m_question;
    Trials m_trials;
    std::vector<Choice> m_choices;
    measure::Harm m_breach;  ///< Of carrying on.
};

bool Choosing::carryOn()
{
    Question asked = m_question;
    asked.mayBreakLimits = true;
    const auto plan = m_trials.planned(asked);
    if (!plan)
        return false;
    m_breach = (*plan)->worth.breach;
    Choice choice = choiceOf(ChoiceKind::CarryOn, m_question, *plan);
    choice.what = Sentence::worded("Carry on with what is least harm altogether");
    m_choices.push_back(std::move(choice));
    return true;
}

/// A plan that keeps every limit, else one that breaks less than carrying on.
std::optional<Plan> Choosing::better(const Question& asked)
{
    if (m_trials.fits(asked) == Fits::Yes)
        return m_trials.planned(asked);
    Question breaking = asked;
    breaking.mayBreakLimits = true;
    auto plan = m_trials.planned(breaking);
    return plan && (*plan)->worth.breach < m_breach ? plan : std::nullopt;
}

/// The services with just the room that passing `demand` takes, where that is a length of theirs; else as
/// asked.
std::vector<service::Service> Choosing::withRoom(const Demand& demand, Seconds by)
{
    for (const Edit& edit : editsFor(m_question, demand)) {
        Question asked = m_question;
        if (!edit.most || edit.tryEach || by > *edit.most)
            continue;
        edit.apply(asked.services, by);
        if (m_trials.fits(asked) == Fits::Yes)
            return asked.services;
    }
    return m_question.services;
}

/// Past that one limit and no other, by no more than is needed.
void Choosing::passLimit(const Demand& demand)
{
    const std::vector<DraftedDemand> demands = draftOf(m_question, Strictness::Break).demands;
    Pins pins;
    bool mayBeBroken = false;
    for (const DraftedDemand& drafted : demands) {
        const bool isIt =
            drafted.kind == demand.kind && drafted.task == demand.task && drafted.place == demand.place;
        pins.mayBreak.push_back(isIt);
        mayBeBroken = mayBeBroken || (isIt && drafted.breachRate > 0);
    }
    if (!mayBeBroken)
        return;
    Draft draft = draftOf(m_question, Strictness::Break, {}, pins);
    const Budget rest = m_trials.rest();
    const temporal::Outcome outcome = solve(draft, {.conflicts = rest.conflicts, .stop = rest.stop});
    if (!outcome.best)
        return;
    const Plan plan = PlanBuilder::build(draft, outcome);
    Seconds by{0};
    for (const BrokenLimit& broken : plan->broken)
        by = std::max(by, broken.already ? Seconds{0} : broken.by);
    Choice choice = choiceOf(ChoiceKind::PassLimit, m_question, plan);
    choice.task = demand.task;
    choice.what = passingText(demand, by);
    choice.services = withRoom(demand, by);
    m_choices.push_back(std::move(choice));
}

bool Choosing::skip(ChoiceKind kind, const std::vector<TaskId>& tasks, Sentence what)
{
    Question asked = m_question;
    asked.progress.dropped.insert(asked.progress.dropped.end(), tasks.begin(), tasks.end());
    const auto plan = better(asked);
    if (!plan)
        return false;
    Choice choice = choiceOf(kind, asked, *plan);
    choice.task = tasks.front();
    choice.what = std::move(what);
    choice.drop = tasks;
    m_choices.push_back(std::move(choice));
    return true;
}

/// One look if that is enough, else all of the zone that are left.
void Choosing::skipLooks(const TaskId& zone)
{
    const service::Service& service = m_question.services[zone.service];
    TaskId look = zone;
    look.kind = TaskKind::Look;
    std::vector<TaskId> open;
    for (look.part = 0; isTaskOf(service, look); ++look.part) {
        if (m_question.progress.find(look) == nullptr && !m_question.progress.isDropped(look))
            open.push_back(look);
    }
    for (std::size_t place = 0; place < std::min(open.size(), mostLooksTried); ++place) {
        if (skip(ChoiceKind::SkipLooks, {open[place]},
                 Sentence::worded("Skip: %1", taskName(service, open[place]))))
            return;
    }
    if (open.size() > 1)
        skip(ChoiceKind::SkipLooks, open,
             Sentence::worded("Skip every look that is left at %1",
                              service.coats[zone.coat].zones[zone.item].name));
}

void Choosing::rinseAlone(const Edit& edit)
{
    const CureStep step = edit.step(Seconds{0});
    const bool known = std::ranges::any_of(m_choices, [&](const Choice& choice) {
        return choice.kind == ChoiceKind::RinseAlone && choice.task == step.task;
    });
    Question asked = m_question;
    edit.apply(asked.services, Seconds{0});
    const auto plan = known ? std::nullopt : better(asked);
    if (!plan)
        return;
    Choice choice = choiceOf(ChoiceKind::RinseAlone, asked, *plan);
    choice.task = step.task;
    choice.what = step.what;
    m_choices.push_back(std::move(choice));
}

void Choosing::callHands(const Edit& edit)
{
    Question asked = m_question;
    edit.apply(asked.services, Seconds{0});
    std::optional<Interval> when;
    if (m_trials.fits(asked) == Fits::Yes)
        when = keepNeededHands(asked, m_trials);
    const auto plan = better(asked);
    if (!plan)
        return;
    Choice choice = choiceOf(ChoiceKind::CallHands, asked, *plan);
    choice.when = when;
    choice.what = edit.step(Seconds{0}).what;
    if (when)
        choice.what = Sentence::worded("%1 for %2", choice.what, when->until - when->from);
    m_choices.push_back(std::move(choice));
}

void Choosing::chooseFor(const Demand& demand)
{
    passLimit(demand);
    if (demand.kind == DemandKind::Looks)
        skipLooks(*demand.task);
    if (demand.kind == DemandKind::LateJob)
        skip(ChoiceKind::SkipJob, {*demand.task},
             Sentence::worded("Leave out: %1",
                              taskName(m_question.services[demand.task->service], *demand.task)));
    for (const Edit& edit : editsFor(m_question, demand)) {
        if (edit.isForHands)
            callHands(edit);
        else if (edit.step(Seconds{0}).kind == CureKind::RinseAlone)
            rinseAlone(edit);
    }
}

std::vector<Choice> Choosing::choices()
{
    if (m_trials.fits(m_question) != Fits::No)
        return {};
    const NoPlan reason = reasonFor(m_question, m_trials);
    if (!carryOn())
        return {};
    for (const Demand& demand : reason.demands) {
        if (m_trials.isOver())
            break;
        chooseFor(demand);
    }
    std::ranges::stable_sort(m_choices, [](const Choice& a, const Choice& b) {
        const auto rank = [](const Choice& choice) {
            return std::tuple{choice.plan->worth.breach,
                              choice.plan->broken.size(),
                              choice.under + choice.over,
                              choice.kind == ChoiceKind::CarryOn,
                              choice.kind,
                              choice.task.value_or(TaskId{}),
                              choice.what.text()};
        };
        return rank(a) < rank(b);
    });
    return std::move(m_choices);
}

}  // namespace

std::vector<Choice> choicesFor(const Question& question, const Budget& budget)
{
    return Choosing{question, budget}.choices();
}

}  // namespace core::stagger
