#include "core/run/amend/revisions.h"
#include "core/run/standing.h"
#include "core/run/telling.h"
#include "core/run/zone_record.h"

#include <algorithm>

namespace core::run {
namespace {

constexpr Seconds longestAgo = std::chrono::hours{24};

bool corrects(const Answer& answer)
{
    return answer.kind == Answer::Kind::UndoLast || answer.kind == Answer::Kind::MoveLast
        || answer.kind == Answer::Kind::OtherZone;
}

/// What is said of a coat once it is over can be said when the run has been ended, too.
bool looksBack(const Answer& answer)
{
    return answer.kind == Answer::Kind::TurnOut || answer.kind == Answer::Kind::Note;
}

bool hasEnded(std::span<const Fact> facts)
{
    const std::vector<Fact> standing = standingFacts(facts);
    return std::ranges::find(standing, FactKind::Ended, &Fact::kind) != standing.end();
}

Told tellFacts(const Telling& telling)
{
    switch (telling.answer.kind) {
    case Answer::Kind::Start:
    case Answer::Kind::Finish:
    case Answer::Kind::Drop: return tellTask(telling);
    case Answer::Kind::Leave:
    case Answer::Kind::LookAgain:
    case Answer::Kind::RinseZoneNow: return tellLook(telling);
    case Answer::Kind::UndoLast:
    case Answer::Kind::MoveLast: return tellCorrection(telling);
    case Answer::Kind::OtherZone: return tellOtherZone(telling);
    case Answer::Kind::TurnOut:
    case Answer::Kind::Note: return tellOutcome(telling);
    case Answer::Kind::End: return std::vector{telling.fact(FactKind::Ended, {})};
    case Answer::Kind::Amend:
    case Answer::Kind::Interrupt:
    case Answer::Kind::Abandon: break;
    }
    return refuse(Sentence::worded("This is no answer that a run knows."));
}

tl::expected<Decision, Refusal> tell(const Telling& telling)
{
    const Answer::Kind kind = telling.answer.kind;
    if (kind == Answer::Kind::Amend || kind == Answer::Kind::Interrupt || kind == Answer::Kind::Abandon)
        return tellAmendment(telling);
    return tellFacts(telling).map(
        [](std::vector<Fact>&& facts) { return Decision{.facts = std::move(facts), .revision = {}}; });
}

}  // namespace

Fact Telling::fact(FactKind kind, const TaskId& task) const
{
    return {.kind = kind, .task = task, .about = {}, .happened = happened(), .recorded = now};
}

Sentence Telling::nameOf(const TaskId& task) const
{
    return stagger::taskName(services.at(task.service), task);
}

tl::unexpected<Refusal> refuse(Sentence what)
{
    return tl::unexpected{Refusal{std::move(what)}};
}

tl::expected<std::vector<Fact>, Refusal> decide(const Setup& setup, std::span<const Fact> facts,
                                                const Answer& answer, Instant now)
{
    return decideInFull(setup, facts, answer, now).map([](Decision&& decision) {
        return std::move(decision.facts);
    });
}

tl::expected<Decision, Refusal> decideInFull(const Setup& setup, std::span<const Fact> facts,
                                             const Answer& answer, Instant now)
{
    if (answer.ago < Seconds{0})
        return refuse(Sentence::worded("That time is still to come. Answer when it has happened."));
    if (answer.ago > longestAgo)
        return refuse(Sentence::worded("That is more than a day ago. Give a time within the last 24 hours."));
    const std::vector<Service>& services = servicesAt(setup, facts);
    const bool namesTask = answer.kind == Answer::Kind::OtherZone
        || (!corrects(answer) && answer.kind != Answer::Kind::End && answer.kind != Answer::Kind::Amend);
    if (namesTask && !exists(services, answer.task))
        return refuse(Sentence::worded("There is no such task in this service. Choose one from the list."));
    if (hasEnded(facts) && !corrects(answer) && !looksBack(answer))
        return refuse(Sentence::worded("This run was ended. Undo that to go on with it."));
    return tell({.setup = setup,
                 .services = services,
                 .facts = facts,
                 .progress = progressOf(setup, facts),
                 .answer = answer,
                 .now = now});
}

}  // namespace core::run
