#include "app/command/answer_line.h"

#include "app/command/amend_order.h"
#include "app/command/outcome_order.h"
#include "app/command/right_order.h"
#include "app/command/words_of_line.h"
#include "app/view/tone_words.h"

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
        if (key == "r" || key == "r!")
            return rinse(words);
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
        for (const view::LookBeside& look : view::stepView(m_services, m_state, *m_prompt).together)
            order.answer.also.push_back(look.prompt.task);
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

    Result<Order> rinse(const std::vector<std::string>& words) const
    {
        if (words.size() > 1) {
            const std::string name = nameFrom(words, 1);
            const auto zone = zoneNamed(name, {core::run::Stage::Developing}, m_services, m_state);
            if (!zone)
                return tl::unexpected{"No zone called " + name + " is developing."};
            return rinse(*zone, words.front() == "r!");
        }
        if (!m_prompt || m_prompt->asks != Prompt::Asks::Look)
            return tl::unexpected{std::string{"Which zone? Type r and its name."}};
        return rinse(m_prompt->task, words.front() == "r!");
    }

    /// Where neighbours would get wet that is said first. It has to be meant, but is nothing to be kept from.
    Result<Order> rinse(const TaskId& task, bool meant) const
    {
        const std::vector<std::string> wet = neighboursOf(task);
        if (meant || wet.empty())
            return aboutTask(Answer::Kind::RinseZoneNow, task);
        const std::string name = m_services.at(task.service).coats.at(task.coat).zones.at(task.item).name;
        return tl::unexpected{name + " cannot be rinsed without wetting " + nameFrom(wet, 0, ", ")
                              + ". If it is to be rinsed all the same, type r! " + name + "."};
    }

    /// What carries mixture beside a zone that cannot be rinsed alone.
    [[nodiscard]] std::vector<std::string> neighboursOf(const TaskId& task) const
    {
        std::vector<std::string> wet;
        const auto& zones = m_services.at(task.service).coats.at(task.coat).zones;
        for (const core::run::Lane& lane : m_state.lanes) {
            const bool beside =
                lane.service == task.service && lane.coat == task.coat && lane.zone != task.item;
            if (beside && core::run::carriesMixture(lane.stage) && !zones.at(task.item).alone)
                wet.push_back(zones.at(lane.zone).name);
        }
        return wet;
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

/// Where words were said with a look, after a colon: they, or the one of the list that they are the number
/// of.
std::string toneOf(const std::string& said)
{
    const std::string tone = nameFrom(wordsOf(said), 0);
    const std::int64_t number = numberIn(tone).value_or(0);
    const bool picks = number > 0 && number <= static_cast<std::int64_t>(view::toneWords.size());
    return picks ? std::string{view::toneWords[static_cast<std::size_t>(number) - 1]} : tone;
}

/// Whether words after a colon go with it: a time of day has a colon too, and so may a name.
bool answersLook(std::vector<std::string> words)
{
    takeNumber(words);
    const std::string key = words.empty() ? std::string{} : lowered(words.front());
    return key.empty() || key == "l" || key == "a" || key == "r" || key == "r!";
}

/// An answer to a look with what was seen; a zone that is rinsed without a look being asked for is looked at
/// with that.
Result<Order> withTone(Order order, const std::string& tone, const State& state)
{
    Answer& answer = order.answer;
    const bool looks = answer.kind == Answer::Kind::Leave || answer.kind == Answer::Kind::LookAgain
        || answer.kind == Answer::Kind::RinseZoneNow;
    if (order.kind != Order::Kind::Answer || !looks)
        return tl::unexpected{
            std::string{"Words after a colon say what was seen at a look, and this is none."}};
    answer.tone = tone;
    for (const core::run::Lane& lane : state.lanes) {
        const bool mine = lane.service == answer.task.service && lane.coat == answer.task.coat
            && lane.zone == answer.task.item;
        if (mine && answer.task.kind == TaskKind::Apply && lane.nextLookTask)
            answer.task = *lane.nextLookTask;
    }
    return order;
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
    if (key == "tone")
        return ordered(Order::Kind::ToneWords);
    Order order;
    order.answer.kind = Answer::Kind::End;
    if (key == "e")
        return order;
    return std::nullopt;
}

Result<Order> readWords(std::vector<std::string> words, const Services& services, const State& state)
{
    const std::size_t number = takeNumber(words);
    if (words.empty())
        words = {"done"};
    words.front() = lowered(words.front());
    if (const auto order = withoutPrompt(words.front()))
        return *order;
    if (const auto order = readCorrection(words, services, state))
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
    if (const auto order = readOutcome(line, services, state))
        return *order;
    const std::size_t colon = line.find(':');
    if (colon == std::string::npos || !answersLook(wordsOf(line.substr(0, colon))))
        return readWords(wordsOf(line), services, state);
    const auto order = readWords(wordsOf(line.substr(0, colon)), services, state);
    return order ? withTone(*order, toneOf(line.substr(colon + 1)), state) : order;
}

}  // namespace app::command
