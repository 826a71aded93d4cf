#include "app/command/right_order.h"

#include "app/command/words_of_line.h"

#include <algorithm>

namespace app::command {

using core::measure::Seconds;
using core::run::Answer;
using core::run::FactNumber;
using core::run::Stage;
using core::run::State;
using Services = std::vector<core::service::Service>;
template <typename T>
using Result = tl::expected<T, std::string>;

namespace {

/// Takes "#12" off the end of the words: which answer is meant. Nothing there means the last.
std::optional<FactNumber> takeAbout(std::vector<std::string>& words)
{
    if (words.size() < 2 || words.back().front() != '#')
        return std::nullopt;
    const auto number = numberIn(std::string_view{words.back()}.substr(1));
    if (!number)
        return std::nullopt;
    words.pop_back();
    return FactNumber{*number};
}

Result<Order> moved(const std::vector<std::string>& words, const std::optional<FactNumber>& about)
{
    Answer answer;
    answer.kind = Answer::Kind::MoveLast;
    answer.about = about;
    Order order = answered(answer);
    if (words.size() == 2 && words[1].find(':') != std::string::npos) {
        order.clock = words[1];
        return order;
    }
    const auto minutes = minutesOf(
        words,
        "m 2 if the last answer was true 2 minutes ago, or m 14:03, or m 14:03 #12 for an earlier one");
    if (!minutes)
        return tl::unexpected{minutes.error()};
    order.answer.ago = *minutes;
    return order;
}

Result<Order> otherZone(const std::vector<std::string>& words, const std::optional<FactNumber>& about,
                        const Services& services, const State& state)
{
    const std::string name = nameFrom(words, 1);
    if (name.empty())
        return tl::unexpected{std::string{"Which zone was it? Type was and its name."}};
    const auto zone = zoneNamed(
        name,
        {Stage::Waiting, Stage::Applying, Stage::Developing, Stage::Rinsing, Stage::Rinsed, Stage::Dropped},
        services, state);
    if (!zone)
        return tl::unexpected{"There is no zone called " + name + "."};
    Order order = aboutTask(Answer::Kind::OtherZone, *zone);
    order.answer.about = about;
    return order;
}

}  // namespace

std::optional<Result<Order>> readCorrection(std::vector<std::string> words, const Services& services,
                                            const State& state)
{
    const std::string key = words.front();
    if (key == "answers") {
        Order order;
        order.kind = Order::Kind::Answers;
        return order;
    }
    if (key != "u" && key != "m" && key != "was")
        return std::nullopt;
    const auto about = takeAbout(words);
    if (key == "m")
        return moved(words, about);
    if (key == "was")
        return otherZone(words, about, services, state);
    if (words.size() > 1)
        return tl::unexpected{std::string{"Undo what? Type u for the last answer, or u #12 for another."}};
    Answer answer;
    answer.kind = Answer::Kind::UndoLast;
    answer.about = about;
    return answered(answer);
}

std::optional<Seconds> agoOf(const std::string& text, core::measure::LocalTime now)
{
    constexpr std::int64_t wholeDay = 24 * 3600;
    constexpr std::int64_t most[] = {23, 59, 59};
    std::int64_t moment = 0;
    std::size_t parts = 0;
    for (std::size_t from = 0; from <= text.size(); ++parts) {
        const std::size_t until = std::min(text.find(':', from), text.size());
        const auto part = numberIn(std::string_view{text}.substr(from, until - from));
        if (parts == std::size(most) || !part || *part < 0 || *part > most[parts])
            return std::nullopt;
        moment = moment * 60 + *part;
        from = until + 1;
    }
    if (parts < 2)
        return std::nullopt;
    if (parts == 2)
        moment *= 60;
    const auto shown = now.time_since_epoch().count() % wholeDay;
    return Seconds{(shown - moment + wholeDay) % wholeDay};
}

}  // namespace app::command
