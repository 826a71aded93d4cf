#include "app/command/answer_line.h"

#include "app/command/amend_order.h"
#include "app/command/words_of_line.h"

#include <algorithm>
#include <charconv>

namespace app::command {

using core::measure::Seconds;
using core::run::Answer;
using core::run::Prompt;
using core::run::State;
using core::service::Service;
using core::stagger::TaskId;
using core::stagger::TaskKind;
using Services = std::vector<Service>;
template <typename T>
using Result = tl::expected<T, std::string>;

namespace {

Order ordered(Order::Kind kind)
{
    Order order;
    order.kind = kind;
    return order;
}

/// What Enter means for a prompt.
Answer::Kind doneWith(Prompt::Asks asks)
{
    switch (asks) {
    case Prompt::Asks::Start: return Answer::Kind::Start;
    case Prompt::Asks::Finish: return Answer::Kind::Finish;
    case Prompt::Asks::Look: break;
    }
    return Answer::Kind::Leave;
}

/// The lines that need a prompt to be about.
class PromptOrders {
public:
    PromptOrders(const Services& services, const State& state, const std::optional<Prompt>& prompt)
        : m_services{services}
        , m_state{state}
        , m_prompt{prompt}
    {
    }

    Result<Order> read(const std::vector<std::string>& words) const
    {
        const std::string& key = words.front();
        if (key == "r")
            return rinse(words);
        if (key == "m")
            return moved(words);
        if (!m_prompt)
            return tl::unexpected{std::string{"Nothing is asked for now."}};
        if (key == "done")
            return aboutTask(doneWith(m_prompt->asks), m_prompt->task);
        if (key == "all")
            return leaveAll();
        if (key == "s")
            return aboutTask(Answer::Kind::Drop, m_prompt->task);
        if (key != "l" && key != "a")
            return tl::unexpected{"What does \"" + key + "\" mean? Type ? for what can be typed."};
        if (m_prompt->asks != Prompt::Asks::Look)
            return tl::unexpected{"\"" + key
                                  + "\" answers a look, and this is none. Only Enter says that it is done."};
        return key == "l" ? aboutTask(Answer::Kind::Leave, m_prompt->task) : again(words);
    }

private:
    /// The look, and all that are to be made with it.
    Result<Order> leaveAll() const
    {
        if (m_prompt->asks != Prompt::Asks::Look)
            return tl::unexpected{std::string{"\"all\" leaves looks, and this is none."}};
        Order order = aboutTask(Answer::Kind::Leave, m_prompt->task);
        for (const Prompt& look : view::stepView(m_services, m_state, *m_prompt).together)
            order.answer.also.push_back(look.task);
        return order;
    }

    Result<Order> again(const std::vector<std::string>& words) const
    {
        const auto minutes = minutesOf(words, "a 5 to look again in 5 minutes");
        if (!minutes)
            return tl::unexpected{minutes.error()};
        Answer answer;
        answer.kind = Answer::Kind::LookAgain;
        answer.task = m_prompt->task;
        answer.again = *minutes;
        return answered(answer);
    }

    static Result<Order> moved(const std::vector<std::string>& words)
    {
        const auto minutes = minutesOf(words, "m 2 if the last answer was true 2 minutes ago");
        if (!minutes)
            return tl::unexpected{minutes.error()};
        Answer answer;
        answer.kind = Answer::Kind::MoveLast;
        answer.ago = *minutes;
        return answered(answer);
    }

    Result<Order> rinse(const std::vector<std::string>& words) const
    {
        if (words.size() > 1) {
            const std::string name = nameFrom(words, 1);
            if (const auto zone = zoneNamed(name, {core::run::Stage::Developing}, m_services, m_state))
                return aboutTask(Answer::Kind::RinseZoneNow, *zone);
            return tl::unexpected{"No zone called " + name + " is developing."};
        }
        if (!m_prompt || m_prompt->asks != Prompt::Asks::Look)
            return tl::unexpected{std::string{"Which zone? Type r and its name."}};
        return aboutTask(Answer::Kind::RinseZoneNow, m_prompt->task);
    }

    const Services& m_services;
    const State& m_state;
    const std::optional<Prompt>& m_prompt;
};

/// Takes the number that a line may begin with off it; 1 where there is none.
std::size_t takeNumber(std::vector<std::string>& words)
{
    std::size_t number = 1;
    if (words.empty())
        return number;
    const std::string& text = words.front();
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size())
        return 1;
    words.erase(words.begin());
    return number;
}

std::optional<Order> withoutPrompt(const std::string& key)
{
    if (key == "q")
        return ordered(Order::Kind::Leave);
    if (key == "?" || key == "h" || key == "help")
        return ordered(Order::Kind::Keys);
    if (key == "c")
        return ordered(Order::Kind::Cautions);
    if (key == "mute")
        return ordered(Order::Kind::Mute);
    if (key == "unmute")
        return ordered(Order::Kind::Unmute);
    Order order;
    order.answer.kind = Answer::Kind::End;
    if (key == "e")
        return order;
    order.answer.kind = Answer::Kind::UndoLast;
    if (key == "u")
        return order;
    return std::nullopt;
}

}  // namespace

Order answered(Answer answer)
{
    Order order;
    order.answer = std::move(answer);
    return order;
}

Order aboutTask(Answer::Kind kind, const TaskId& task)
{
    Answer answer;
    answer.kind = kind;
    answer.task = task;
    return answered(std::move(answer));
}

std::optional<TaskId> zoneNamed(const std::string& name, const std::vector<core::run::Stage>& stages,
                                const Services& services, const State& state)
{
    for (const core::run::Lane& lane : state.lanes) {
        const auto& zone = services.at(lane.service).coats.at(lane.coat).zones.at(lane.zone);
        const bool there = std::find(stages.begin(), stages.end(), lane.stage) != stages.end();
        if (there && lowered(zone.name) == lowered(name))
            return TaskId{lane.service, lane.coat, TaskKind::Apply, lane.zone, 0};
    }
    return std::nullopt;
}

Result<Order> readOrder(const std::string& line, const Services& services, const State& state)
{
    auto words = wordsOf(line);
    const std::size_t number = takeNumber(words);
    if (words.empty())
        words = {"done"};
    words.front() = lowered(words.front());
    if (const auto order = withoutPrompt(words.front()))
        return *order;
    if (const auto order = readAmendment(words, services, state))
        return *order;

    const view::NowView now = view::nowView(services, state);
    if (number == 0 || number > 1 + now.next.size())
        return tl::unexpected{"There is no number " + std::to_string(number) + " on the list."};
    std::optional<Prompt> prompt;
    if (now.main)
        prompt = number == 1 ? now.main->prompt : now.next[number - 2].prompt;
    return PromptOrders{services, state, prompt}.read(words);
}

}  // namespace app::command
