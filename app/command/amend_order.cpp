#include "app/command/amend_order.h"

#include "app/command/words_of_line.h"
#include "core/run/amend/amend.h"

#include <algorithm>
#include <charconv>

namespace app::command {

using core::run::Answer;
using core::run::Stage;
using core::run::State;
using core::stagger::TaskId;
using core::stagger::TaskKind;
using Services = std::vector<core::service::Service>;
template <typename T>
using Result = tl::expected<T, std::string>;

namespace {

/// Whose name it is; the first where there is no name.
Result<std::size_t> handsNamed(const std::string& name, const Services& services)
{
    const auto& hands = services.front().crew.hands;
    if (name.empty())
        return std::size_t{0};
    const auto found = std::find_if(hands.begin(), hands.end(),
                                    [&](const auto& each) { return lowered(each.name) == lowered(name); });
    if (found != hands.end())
        return static_cast<std::size_t>(found - hands.begin());
    std::string known;
    for (const auto& each : hands)
        known += (known.empty() ? "" : ", ") + each.name;
    return tl::unexpected{"Nobody here is called " + name + ". Here are: " + known + "."};
}

Result<Order> away(const std::vector<std::string>& words, const Services& services, const State& state)
{
    const auto minutes =
        minutesOf({words.begin(), words.begin() + std::min<std::ptrdiff_t>(2, std::ssize(words))},
                  "away 20 if you are away for 20 minutes");
    if (!minutes)
        return tl::unexpected{minutes.error()};
    return handsNamed(nameFrom(words, 2), services).map([&](std::size_t hands) {
        return answered(core::run::awayAnswer(services, hands, {state.now, state.now + *minutes}));
    });
}

Result<Order> gone(const std::vector<std::string>& words, const Services& services, const State& state)
{
    if (words.size() < 2)
        return tl::unexpected{std::string{"Who has gone? Type gone and the name."}};
    return handsNamed(nameFrom(words, 1), services).map([&](std::size_t hands) {
        return answered(core::run::goneAnswer(services, hands, state.now));
    });
}

Result<Order> helper(const std::vector<std::string>& words, const Services& services)
{
    if (words.size() < 2)
        return tl::unexpected{std::string{"Who has come to help? Type here and the name."}};
    return answered(core::run::helperAnswer(services, nameFrom(words, 1)));
}

/// The zone of that name that has not met the water yet.
Result<Order> apart(const std::vector<std::string>& words, const Services& services, const State& state)
{
    const std::string name = nameFrom(words, 1);
    if (name.empty())
        return tl::unexpected{std::string{"Which zone is rinsed by itself? Type apart and its name."}};
    if (const auto zone =
            zoneNamed(name, {Stage::Waiting, Stage::Applying, Stage::Developing}, services, state))
        return answered(core::run::apartAnswer(services, *zone));
    return tl::unexpected{"No zone called " + name + " is still to be rinsed."};
}

Result<Order> stop(const State& state)
{
    std::vector<TaskId> applying;
    for (const auto& task : state.progress.tasks) {
        if (task.id.kind == TaskKind::Apply && !task.end)
            applying.push_back(task.id);
    }
    if (applying.empty())
        return tl::unexpected{std::string{"Nothing is being applied."}};
    return aboutTask(Answer::Kind::Interrupt, applying.front());
}

/// Heat for the coat that has mixture on the hair; how long it stays, if that is said.
Result<Order> heat(const std::vector<std::string>& words, const State& state)
{
    Answer answer;
    answer.task.kind = TaskKind::Heat;
    if (words.size() == 2 && lowered(words[1]) == "off") {
        answer.kind = Answer::Kind::Finish;
        if (!state.heats.empty())
            answer.task = state.heats.front().task;
        return answered(answer);
    }
    for (const core::run::Lane& lane : state.lanes) {
        if (core::run::carriesMixture(lane.stage))
            answer.task.coat = lane.coat;
    }
    if (words.size() == 1)
        return answered(answer);
    const auto minutes =
        minutesOf(words, "heat 10 if it stays for 10 minutes, heat if you do not know, or heat off");
    if (!minutes)
        return tl::unexpected{minutes.error()};
    answer.again = *minutes;
    return answered(answer);
}

/// "add Nape like Root 6": a zone more, as another, that takes so many minutes to apply if that is said.
Result<Order> add(std::vector<std::string> words, const Services& services, const State& state)
{
    const auto like =
        std::find_if(words.begin(), words.end(), [](const auto& word) { return lowered(word) == "like"; });
    if (words.size() < 4 || like <= words.begin() + 1 || like + 1 == words.end())
        return tl::unexpected{std::string{
            "Type add, its name, like, and the zone it is like: add Nape like Root. Behind that the minutes "
            "to apply it, if they are others."}};
    const std::string name = nameFrom({words.begin() + 1, like}, 0);
    std::vector<std::string> rest{like + 1, words.end()};
    const std::vector<Stage> there{Stage::Waiting, Stage::Applying, Stage::Developing};
    std::optional<core::measure::Seconds> apply;
    auto zone = zoneNamed(nameFrom(rest, 0), there, services, state);
    if (!zone && rest.size() > 1) {
        const auto minutes =
            minutesOf({"", rest.back()}, "add Nape like Root 6 if it takes 6 minutes to apply");
        if (!minutes)
            return tl::unexpected{minutes.error()};
        apply = *minutes;
        rest.pop_back();
        zone = zoneNamed(nameFrom(rest, 0), there, services, state);
    }
    if (!zone)
        return tl::unexpected{"No zone called " + nameFrom(rest, 0) + " is still to be rinsed."};
    return answered(core::run::zoneLikeAnswer(services, state.progress, *zone, name, apply));
}

/// The coat that is under way, else the one that comes next.
Result<Order> giveUp(const State& state)
{
    if (state.prompts.empty())
        return tl::unexpected{std::string{"There is nothing left to give up."}};
    return aboutTask(Answer::Kind::Abandon, state.prompts.front().task);
}

Result<Order> choose(const std::vector<std::string>& words)
{
    Order order;
    order.kind = Order::Kind::Choices;
    if (words.size() < 2)
        return order;
    std::size_t number = 0;
    const auto [end, error] = std::from_chars(words[1].data(), words[1].data() + words[1].size(), number);
    if (error != std::errc{} || end != words[1].data() + words[1].size() || number == 0 || words.size() > 2)
        return tl::unexpected{std::string{"Which choice? Type w for the list, and w 2 to take the second."}};
    order.kind = Order::Kind::Choose;
    order.choice = number;
    return order;
}

}  // namespace

std::optional<Result<Order>> readAmendment(const std::vector<std::string>& words, const Services& services,
                                           const State& state)
{
    const std::string& key = words.front();
    if (key == "w")
        return choose(words);
    if (key == "away")
        return away(words, services, state);
    if (key == "gone")
        return gone(words, services, state);
    if (key == "here")
        return helper(words, services);
    if (key == "apart")
        return apart(words, services, state);
    if (key == "stop")
        return stop(state);
    if (key == "add")
        return add(words, services, state);
    if (key == "heat")
        return heat(words, state);
    if (key == "give-up")
        return giveUp(state);
    return std::nullopt;
}

}  // namespace app::command
