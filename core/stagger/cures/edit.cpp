#include "core/stagger/cures/edit.h"

#include "core/service/minutes.h"

#include <algorithm>

namespace core::stagger {

measure::Harm perMinute(std::int64_t rate, Seconds length)
{
    return {rate * length.count()};
}

Sentence placed(const Services& services, const TaskId& task, Sentence sentence)
{
    const service::Service& service = services[task.service];
    std::string place;
    if (services.size() > 1)
        place = service.head.name;
    if (service.coats.size() > 1)
        place += (place.empty() ? "" : ", ") + service.coats[task.coat].name;
    if (place.empty())
        return sentence;
    return Sentence::worded("%1: %2", place, measure::small(std::move(sentence)));
}

Edit lengthEdit(const Question& question, const LengthEdit& wanted)
{
    Services asked = question.services;
    const Seconds now = wanted.length(asked);
    const Seconds longest = std::min(wanted.longest, service::longestLength);
    const auto lengthAfter = [now, grows = wanted.grows](Seconds by) { return grows ? now + by : now - by; };
    Edit edit;
    edit.most = wanted.grows ? std::max(longest - now, Seconds{0}) : now;
    edit.apply = [length = wanted.length, lengthAfter](Services& services, Seconds by) {
        length(services) = lengthAfter(by);
    };
    edit.change = [rate = wanted.rate](Seconds by) { return perMinute(rate, by); };
    edit.step = [services = question.services, wanted, lengthAfter, now](Seconds by) {
        const Sentence words = wanted.words(lengthAfter(by), now);
        return CureStep{.kind = wanted.kind,
                        .service = wanted.task.service,
                        .task = wanted.task,
                        .what = placed(services, wanted.task, words),
                        .note = wanted.note,
                        .by = by};
    };
    return edit;
}

Edit plainEdit(CureStep step, measure::Harm change, std::function<void(Services&)> apply)
{
    Edit edit;
    edit.apply = [apply = std::move(apply)](Services& services, Seconds) { apply(services); };
    edit.change = [change](Seconds) { return change; };
    edit.step = [step = std::move(step)](Seconds) { return step; };
    return edit;
}

std::vector<Edit> editsFor(const Question& question, const Demand& demand)
{
    std::vector<Edit> edits;
    addZoneEdits(question, demand, edits);
    addCoatEdits(question, demand, edits);
    std::erase_if(edits, [](const Edit& edit) { return edit.most && *edit.most <= Seconds{0}; });
    return edits;
}

}  // namespace core::stagger
