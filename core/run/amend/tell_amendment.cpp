#include "core/run/amend/rest_of_zone.h"
#include "core/run/amend/revisions.h"
#include "core/run/telling.h"
#include "core/run/zone_record.h"

#include <algorithm>

namespace core::run {
namespace {

/// The facts of an amendment: first that there is one, then what was told with it.
class Amendment {
public:
    explicit Amendment(const Telling& telling)
        : m_telling{telling}
    {
        add(FactKind::Amended, {});
    }

    void add(FactKind kind, const TaskId& task)
    {
        m_facts.push_back(m_telling.fact(kind, task));
        m_facts.back().revision = m_telling.setup.revisions.size() + 1;
    }

    [[nodiscard]] Decision with(std::vector<Service> revision) &&
    {
        return {.facts = std::move(m_facts), .revision = std::move(revision)};
    }

private:
    const Telling& m_telling;
    std::vector<Fact> m_facts;
};

tl::expected<Decision, Refusal> tellAmend(const Telling& telling)
{
    if (const auto why = whyNoAmendment(telling.services, telling.answer.services))
        return refuse(*why);
    Amendment amendment{telling};
    for (const TaskId& task : telling.answer.drop) {
        if (!exists(telling.answer.services, task))
            return refuse(
                Sentence::worded("There is no such task in this service. Choose one from the list."));
        if (telling.progress.find(task))
            return refuse(Sentence::worded("%1 has begun and cannot be left out.", telling.nameOf(task)));
        amendment.add(FactKind::Dropped, task);
    }
    return std::move(amendment).with(telling.answer.services);
}

tl::expected<Decision, Refusal> tellInterrupt(const Telling& telling)
{
    const TaskId& id = telling.answer.task;
    const auto* begun = id.kind == TaskKind::Apply ? telling.progress.find(id) : nullptr;
    if (!begun || begun->end)
        return refuse(Sentence::worded("Only applying that is under way can be interrupted."));
    if (telling.happened() <= begun->start)
        return refuse(Sentence::worded("That is before %1 started. Give a later time.", telling.nameOf(id)));
    std::vector<Service> amended = withRestOf(telling.services, telling.progress, id, telling.happened());
    if (const auto why = whyNoAmendment(telling.services, amended))
        return refuse(*why);
    Amendment amendment{telling};
    amendment.add(FactKind::Finished, id);
    return std::move(amendment).with(std::move(amended));
}

/// Whether a task of an abandoned coat has nothing left to be done for. What is on the hair is rinsed, dried
/// and looked at in the end.
bool isGivenUp(const Telling& telling, const TaskId& id, bool wet)
{
    const auto isBegun = [&](const TaskId& apply) { return telling.progress.find(apply) != nullptr; };
    if (telling.progress.find(id) || telling.progress.isDropped(id))
        return false;
    switch (id.kind) {
    case TaskKind::Mix:
    case TaskKind::Apply:
    case TaskKind::Look:
    case TaskKind::Late: return true;
    case TaskKind::Rinse:
    case TaskKind::RinseAlone:
        return std::ranges::none_of(zonesUnder(telling.services, telling.progress, id), isBegun);
    case TaskKind::Dry:
    case TaskKind::Assess: return !wet;
    case TaskKind::Heat: return false;
    }
    return false;
}

tl::expected<Decision, Refusal> tellAbandon(const Telling& telling)
{
    const TaskId& any = telling.answer.task;
    const auto ofCoat = [&](const TaskId& id) { return id.service == any.service && id.coat == any.coat; };
    const bool wet = std::ranges::any_of(telling.progress.tasks, [&](const stagger::TaskProgress& task) {
        return ofCoat(task.id) && task.id.kind == TaskKind::Apply;
    });
    Amendment amendment{telling};
    std::size_t left = 0;
    for (const TaskId& id : stagger::tasksOf(telling.services[any.service], any.service)) {
        if (!ofCoat(id) || !isGivenUp(telling, id, wet))
            continue;
        amendment.add(FactKind::Dropped, id);
        ++left;
    }
    if (left == 0)
        return refuse(Sentence::worded("Nothing of this coat is left that could be given up."));
    return std::move(amendment).with(telling.services);
}

}  // namespace

tl::expected<Decision, Refusal> tellAmendment(const Telling& telling)
{
    switch (telling.answer.kind) {
    case Answer::Kind::Interrupt: return tellInterrupt(telling);
    case Answer::Kind::Abandon: return tellAbandon(telling);
    default: return tellAmend(telling);
    }
}

}  // namespace core::run
