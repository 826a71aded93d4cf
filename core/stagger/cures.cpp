#include "core/stagger/cures.h"

#include "core/service/check.h"
#include "core/stagger/cures/edit.h"
#include "core/stagger/cures/needed_hands.h"
#include "core/stagger/trials.h"

#include <algorithm>
#include <tuple>

namespace core::stagger {
namespace {

constexpr Seconds minute{60};

/// Where no single change helps, so many pairs are looked for, with so many trials.
constexpr std::size_t enoughPairs = 4;
constexpr std::size_t mostTrials = 400;

using Edits = std::vector<Edit>;
using Amounts = std::vector<Seconds>;

Amounts widest(const Edits& edits)
{
    Amounts amounts;
    for (const Edit& edit : edits)
        amounts.push_back(edit.most.value_or(Seconds{0}));
    return amounts;
}

/// Finds what of one question, changed by a few edits, fits with the least amounts.
class Curing {
public:
    Curing(const Question& question, Trials& trials)
        : m_question{question}
        , m_trials{trials}
    {
    }

    /// The question with all edits made, one after the other.
    [[nodiscard]] Question changed(const Edits& edits, const Amounts& amounts) const;
    bool fits(const Edits& edits, const Amounts& amounts)
    {
        return m_trials.fits(changed(edits, amounts)) == Fits::Yes;
    }
    /// The cure that consists of these edits, or nothing where they do not help.
    std::optional<Cure> cure(const Edits& edits);

private:
    std::optional<Amounts> leastAmounts(const Edits& edits);
    std::optional<Seconds> least(const Edits& edits, Amounts amounts, std::size_t place);
    std::optional<Cure> finished(const Edits& edits, const Amounts& amounts);

    const Question& m_question;
    Trials& m_trials;
};

Question Curing::changed(const Edits& edits, const Amounts& amounts) const
{
    Question question = m_question;
    for (std::size_t place = 0; place < edits.size(); ++place)
        edits[place].apply(question.services, amounts[place]);
    for (service::Service& service : question.services) {
        for (service::Hands& hands : service.crew.hands)
            std::erase_if(hands.away, [](const Interval& away) { return away.from >= away.until; });
    }
    return question;
}

/// The least whole minutes of one edit, the others being as they are. What fits with
/// less fits with more, so the first that fits is found by doubling and halving.
std::optional<Seconds> Curing::least(const Edits& edits, Amounts amounts, std::size_t place)
{
    const Seconds most = *edits[place].most;
    const auto fitsWith = [&](std::int64_t count) {
        amounts[place] = std::min<Seconds>(count * minute, most);
        return fits(edits, amounts);
    };
    const std::int64_t counts = (most + minute - Seconds{1}) / minute;
    std::int64_t high = 1;
    if (edits[place].tryEach) {
        while (high <= counts && !fitsWith(high))
            ++high;
        return high <= counts ? std::optional{std::min<Seconds>(high * minute, most)} : std::nullopt;
    }
    std::int64_t low = 0;
    while (high < counts && !fitsWith(high)) {
        low = high;
        high = std::min(2 * high, counts);
    }
    while (high - low > 1) {
        const std::int64_t middle = low + (high - low) / 2;
        (fitsWith(middle) ? high : low) = middle;
    }
    return std::min<Seconds>(high * minute, most);
}

/// First the widest that may be; then each edit in turn is made as small as the others let it.
std::optional<Amounts> Curing::leastAmounts(const Edits& edits)
{
    Amounts amounts = widest(edits);
    const bool widestDecides = std::ranges::none_of(edits, &Edit::tryEach);
    if (widestDecides && !fits(edits, amounts))
        return std::nullopt;
    for (std::size_t place = 0; place < edits.size(); ++place) {
        if (!edits[place].most)
            continue;
        const auto amount = least(edits, amounts, place);
        if (!amount || m_trials.isOver())
            return std::nullopt;
        amounts[place] = *amount;
    }
    return amounts;
}

/// `what`, and when it is rinsed: "..., 12 min before the others"; no more where the water comes at once.
Sentence whenRinsed(const Sentence& what, const Question& asked, const Plan& plan, const TaskId& zone)
{
    const auto& zones = asked.services[zone.service].coats[zone.coat].zones;
    const PlannedZone* own = plan.zone(zone.service, zone.coat, zone.item);
    std::optional<Instant> others;
    for (std::size_t item = 0; item < zones.size(); ++item) {
        const PlannedZone* other = plan.zone(zone.service, zone.coat, item);
        if (item != zone.item && other != nullptr && zones[item].group == zones[zone.item].group)
            others = std::min(others.value_or(other->water), other->water);
    }
    if (own == nullptr || !others || own->water == *others)
        return what;
    return own->water < *others ? Sentence::worded("%1, %2 before the others", what, *others - own->water)
                                : Sentence::worded("%1, %2 after the others", what, own->water - *others);
}

std::optional<Cure> Curing::finished(const Edits& edits, const Amounts& amounts)
{
    Question question = changed(edits, amounts);
    std::vector<CureStep> steps;
    measure::Harm change;
    for (std::size_t place = 0; place < edits.size(); ++place) {
        CureStep step = edits[place].step(amounts[place]);
        Seconds amount = amounts[place];
        if (edits[place].isForHands) {
            step.when = keepNeededHands(question, m_trials);
            if (step.when) {
                amount = step.when->until - step.when->from;
                step.what = Sentence::worded("%1 for %2", step.what, amount);
            }
        }
        change = change + edits[place].change(amount);
        steps.push_back(std::move(step));
    }
    for (const service::Service& service : question.services) {
        if (!service::checkService(service).empty())
            return std::nullopt;
    }
    auto plan = m_trials.planned(question);
    if (!plan)
        return std::nullopt;
    for (CureStep& step : steps) {
        if (step.kind == CureKind::RinseAlone)
            step.what = whenRinsed(step.what, m_question, *plan, *step.task);
    }
    return Cure{std::move(steps), std::move(question.services), *std::move(plan), change};
}

std::optional<Cure> Curing::cure(const Edits& edits)
{
    const auto amounts = leastAmounts(edits);
    if (!amounts)
        return std::nullopt;
    return finished(edits, *amounts);
}

std::vector<Edit> allEdits(const Question& question, const NoPlan& reason)
{
    std::vector<Edit> edits;
    for (const Demand& demand : reason.demands) {
        for (Edit& edit : editsFor(question, demand))
            edits.push_back(std::move(edit));
    }
    return edits;
}

/// Of the clashes that are left after each change as far as it goes, a second change.
std::vector<Cure> pairs(const Question& question, const Edits& edits, Trials& trials)
{
    Curing curing{question, trials};
    std::vector<Cure> cures;
    for (const Edit& first : edits) {
        const Question eased = curing.changed({first}, widest({first}));
        const NoPlan reason = reasonFor(eased, trials);
        for (const Edit& second : allEdits(eased, reason)) {
            if (cures.size() >= enoughPairs || trials.count() >= mostTrials || trials.isOver())
                return cures;
            if (auto cure = curing.cure({first, second}))
                cures.push_back(*std::move(cure));
        }
    }
    return cures;
}

/// The place of a bowl that is shared, where the cure gives one of its zones a bowl of its own.
std::optional<TaskId> sharedBowl(const Question& question, const Cure& cure)
{
    if (cure.steps.size() != 1 || cure.steps.front().kind != CureKind::SecondBowl)
        return std::nullopt;
    TaskId bowl = *cure.steps.front().task;
    bowl.item = question.services[bowl.service].coats[bowl.coat].zones[bowl.item].bowl;
    bowl.kind = TaskKind::Mix;
    return bowl;
}

bool isLess(const Cure& a, const Cure& b)
{
    const auto rank = [](const Cure& cure) {
        const Worth& worth = cure.plan->worth;
        return std::tuple{cure.steps.size(),  cure.change,           worth,
                          cure.steps[0].kind, cure.steps[0].service, cure.steps[0].task.value_or(TaskId{}),
                          cure.what().text()};
    };
    return rank(a) < rank(b);
}

void putInOrder(const Question& question, std::vector<Cure>& cures)
{
    std::ranges::stable_sort(cures, isLess);
    std::vector<Cure> kept;
    for (Cure& cure : cures) {
        const auto bowl = sharedBowl(question, cure);
        const bool known = std::ranges::any_of(kept, [&](const Cure& other) {
            return other.services == cure.services || (bowl && sharedBowl(question, other) == bowl);
        });
        if (!known)
            kept.push_back(std::move(cure));
    }
    cures = std::move(kept);
}

}  // namespace

Sentence Cure::what() const
{
    Sentence all;
    for (const CureStep& step : steps)
        all = all.empty() ? step.what : Sentence::worded("%1; and: %2", all, step.what);
    return all;
}

std::vector<Cure> curesFor(const Question& question, const NoPlan& reason, const Budget& budget)
{
    Question asked = question;
    asked.mayBreakLimits = false;
    Trials trials{budget};
    Curing curing{asked, trials};
    const Edits edits = allEdits(asked, reason);
    std::vector<Cure> cures;
    for (const Edit& edit : edits) {
        if (trials.isOver())
            break;
        if (auto cure = curing.cure({edit}))
            cures.push_back(*std::move(cure));
    }
    if (cures.empty() && !trials.isOver())
        cures = pairs(asked, edits, trials);
    putInOrder(asked, cures);
    return cures;
}

}  // namespace core::stagger
