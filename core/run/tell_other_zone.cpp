#include "core/run/answers.h"
#include "core/run/standing.h"
#include "core/run/telling.h"
#include "core/run/zone_record.h"

#include <algorithm>

namespace core::run {
namespace {

/// The same task of the other zone; of looks the first that was not made. Nothing where it has none.
std::optional<TaskId> sameOf(const Telling& telling, const stagger::Progress& progress, const TaskId& id)
{
    TaskId same = id;
    same.item = telling.answer.task.item;
    if (id.kind == TaskKind::Look) {
        for (same.part = 0; exists(telling.services, same); ++same.part) {
            if (!progress.find(same) && !progress.isDropped(same))
                return same;
        }
        return {};
    }
    return exists(telling.services, same) ? std::optional{same} : std::nullopt;
}

/// What somebody would have said of the other zone. Nothing for what another of the facts brings with it.
std::optional<Answer::Kind> kindFor(const Fact& fact)
{
    switch (fact.kind) {
    case FactKind::Started:
        return fact.task.kind == TaskKind::RinseAlone ? Answer::Kind::RinseZoneNow : Answer::Kind::Start;
    case FactKind::Finished: return Answer::Kind::Finish;
    case FactKind::Dropped: return Answer::Kind::Drop;
    case FactKind::Looked:
        if (fact.verdict == Verdict::RinseNow)
            return Answer::Kind::RinseZoneNow;
        return fact.verdict == Verdict::Again ? Answer::Kind::LookAgain : Answer::Kind::Leave;
    case FactKind::TurnedOut: return Answer::Kind::TurnOut;
    case FactKind::Noted:
    case FactKind::Undone:
    case FactKind::Moved:
    case FactKind::Ended:
    case FactKind::Amended: break;
    }
    return {};
}

Fact undoingOne(const Telling& telling, const Fact& fact)
{
    Fact undo = telling.fact(FactKind::Undone, {});
    undo.about = fact.number;
    undo.happened = telling.now;
    return undo;
}

/// What is known and told so far, which each of the answers for the other zone has to go with.
class Retelling {
public:
    explicit Retelling(const Telling& telling)
        : m_telling{telling}
        , m_known{telling.facts.begin(), telling.facts.end()}
    {
    }

    void add(Fact fact)
    {
        m_told.push_back(fact);
        fact.number = FactNumber{static_cast<std::int64_t>(m_known.size()) + 1};
        m_known.push_back(std::move(fact));
    }

    /// Says of the other zone what `fact` says. Why that cannot be, or nothing.
    std::optional<Sentence> again(const Fact& fact)
    {
        const auto kind = kindFor(fact);
        const bool isToldAlready = fact.kind == FactKind::Started && fact.task.kind == TaskKind::RinseAlone
            && m_told.back().kind == FactKind::Started && m_told.back().task.kind == TaskKind::RinseAlone;
        if (!kind || isToldAlready)
            return {};
        const auto task = sameOf(m_telling, progressOf(m_telling.setup, m_known), fact.task);
        if (!task)
            return Sentence::worded("That zone has nothing like '%1' that could have been done.",
                                    m_telling.nameOf(fact.task));
        const Answer answer{.kind = *kind,
                            .task = *task,
                            .ago = m_telling.now - fact.happened,
                            .again = fact.again,
                            .tone = fact.tone,
                            .outcome = fact.outcome};
        auto told = decide(m_telling.setup, m_known, answer, m_telling.now);
        if (!told)
            return told.error().what;
        for (Fact& each : *told) {
            each.about = fact.number;
            add(each);
        }
        return {};
    }

    [[nodiscard]] std::vector<Fact> told() && { return std::move(m_told); }

private:
    const Telling& m_telling;
    std::vector<Fact> m_known;
    std::vector<Fact> m_told;
};

}  // namespace

Told tellOtherZone(const Telling& telling)
{
    const auto place =
        placeMeant(telling, [](const Fact& fact) { return !isCorrection(fact) && isOfZone(fact.task); });
    if (!place)
        return refuse(Sentence::worded("There is no such answer about a zone."));
    const Fact& meant = telling.facts[*place];
    const TaskId& other = telling.answer.task;
    if (!isOfZone(meant.task) || meant.revision != 0)
        return refuse(Sentence::worded("That answer is not about one zone. Undo it instead."));
    if (other.kind != TaskKind::Apply || other.service != meant.task.service || other.coat != meant.task.coat)
        return refuse(Sentence::worded("Choose a zone of the same coat."));
    if (other.item == meant.task.item)
        return refuse(Sentence::worded("It is about that zone already."));
    Retelling retelling{telling};
    const std::vector<Fact> standing = standingFacts(telling.facts);
    // Looks that were left together were of several zones: only the one that is meant goes over.
    const bool left = meant.kind == FactKind::Looked && meant.verdict == Verdict::Leave;
    const std::vector<Fact> undone =
        left ? std::vector{undoingOne(telling, meant)} : undoing(telling, *place);
    for (const Fact& undo : undone)
        retelling.add(undo);
    for (const Fact& undo : undone) {
        const auto said = std::ranges::find(standing, undo.about, &Fact::number);
        if (said == standing.end())
            continue;
        if (const auto why = retelling.again(*said))
            return refuse(*why);
    }
    return std::move(retelling).told();
}

}  // namespace core::run
