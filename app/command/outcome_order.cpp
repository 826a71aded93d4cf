#include "app/command/outcome_order.h"

#include "app/command/words_of_line.h"
#include "app/view/outcome_words.h"

#include <algorithm>
#include <charconv>

namespace app::command {

using core::run::Answer;
using core::run::Lane;
using core::run::Stage;
using core::run::State;
using core::stagger::TaskId;
using Services = std::vector<core::service::Service>;
template <typename T>
using Result = tl::expected<T, std::string>;

namespace {

/// Of several coats the last that had water; without a name any zone.
std::optional<TaskId> lastRinsed(const std::string& name, const Services& services, const State& state)
{
    std::optional<TaskId> zone;
    core::measure::Instant water{};
    for (const Lane& lane : state.lanes) {
        const auto& asked = services.at(lane.service).coats.at(lane.coat).zones.at(lane.zone);
        const bool had = lane.stage == Stage::Rinsing || lane.stage == Stage::Rinsed;
        if (!had || (!name.empty() && lowered(asked.name) != lowered(name)) || (zone && lane.water < water))
            continue;
        zone = TaskId{.service = lane.service, .coat = lane.coat, .item = lane.zone};
        water = lane.water;
    }
    return zone;
}

/// What the words begin with: a number of the list, or one of its words; own words may follow it.
void pick(const std::string& said, Answer& answer)
{
    std::size_t taken = 0;
    std::size_t number = 0;
    const auto [end, error] = std::from_chars(said.data(), said.data() + said.size(), number);
    if (error == std::errc{} && number > 0 && number <= view::outcomeWords.size()) {
        answer.outcome = view::outcomeWords[number - 1].first;
        taken = static_cast<std::size_t>(end - said.data());
    }
    for (const auto& [outcome, word] : view::outcomeWords) {
        for (const std::string_view each : {word, word.substr(0, word.find(" ("))})
            if (each.size() > taken && lowered(said.substr(0, each.size())) == each) {
                answer.outcome = outcome;
                taken = each.size();
            }
    }
    const std::size_t rest = said.find_first_not_of(" ,;", taken);
    answer.tone = rest == std::string::npos ? std::string{} : said.substr(rest);
}

Result<Order> turnedOut(const std::string& name, const std::string& said, const Services& services,
                        const State& state)
{
    const auto zone = lastRinsed(name, services, state);
    if (!zone)
        return tl::unexpected{"No zone called " + name + " has been rinsed."};
    Order order = aboutTask(Answer::Kind::TurnOut, *zone);
    pick(said, order.answer);
    return order;
}

Result<Order> noted(const std::string& said, const Services& services, const State& state)
{
    const auto zone = lastRinsed({}, services, state);
    if (!zone)
        return tl::unexpected{std::string{"Nothing has been rinsed that a note could be about."}};
    Order order = aboutTask(Answer::Kind::Note, *zone);
    order.answer.tone = said;
    return order;
}

}  // namespace

std::string outcomeWordsText()
{
    std::string text =
        "How did it turn out? out ZONE: 1, or any words; and note: what to think of next time.";
    for (std::size_t place = 0; place < view::outcomeWords.size(); ++place)
        text += (place == 0 ? "\n  " : ",  ") + std::to_string(place + 1) + " "
            + std::string{view::outcomeWords[place].second};
    return text;
}

std::optional<Result<Order>> readOutcome(const std::string& line, const Services& services,
                                         const State& state)
{
    const std::size_t colon = line.find(':');
    const auto words = wordsOf(line.substr(0, colon));
    if (words.empty())
        return std::nullopt;
    const std::string key = lowered(words.front());
    const std::string said =
        colon == std::string::npos ? std::string{} : nameFrom(wordsOf(line.substr(colon + 1)), 0);
    if (key == "out" && words.size() == 1 && colon == std::string::npos) {
        Order order;
        order.kind = Order::Kind::OutcomeWords;
        return order;
    }
    if (key == "out" && words.size() > 1 && !said.empty())
        return turnedOut(nameFrom(words, 1), said, services, state);
    if (key == "note" && words.size() == 1 && !said.empty())
        return noted(said, services, state);
    if (key == "out" || key == "note")
        return tl::unexpected{
            std::string{"Type out ZONE: and how it turned out, or note: and what to think of next "
                        "time. out alone lists words to pick."}};
    return std::nullopt;
}

}  // namespace app::command
