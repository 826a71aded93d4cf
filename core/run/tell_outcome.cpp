#include "core/run/telling.h"
#include "core/run/zone_record.h"

#include <algorithm>

namespace core::run {
namespace {

constexpr unsigned longestWords = 240;
constexpr unsigned longestNote = 1000;

Told tellTurnOut(const Telling& telling)
{
    const TaskId& apply = telling.answer.task;
    const std::string zone = zoneOf(telling.services, apply).name;
    if (!zoneRecord(telling.services, telling.progress, apply).water)
        return refuse(Sentence::worded("%1 has not been rinsed. Say how it turned out once it is.", zone));
    if (!telling.answer.outcome && telling.answer.tone.empty())
        return refuse(Sentence::worded("Say how %1 turned out.", zone));
    if (const auto why = whyNoWords(telling.answer.tone, longestWords))
        return refuse(*why);
    Fact fact = telling.fact(FactKind::TurnedOut, apply);
    fact.outcome = telling.answer.outcome;
    fact.tone = telling.answer.tone;
    return std::vector{fact};
}

Told tellNote(const Telling& telling)
{
    if (telling.answer.tone.empty())
        return refuse(Sentence::worded("Say what is to be thought of next time."));
    if (const auto why = whyNoWords(telling.answer.tone, longestNote))
        return refuse(*why);
    Fact fact = telling.fact(FactKind::Noted, telling.answer.task);
    fact.tone = telling.answer.tone;
    return std::vector{fact};
}

}  // namespace

Told tellOutcome(const Telling& telling)
{
    if (telling.answer.task.kind != TaskKind::Apply)
        return refuse(Sentence::worded("Choose the zone that this is about."));
    return telling.answer.kind == Answer::Kind::TurnOut ? tellTurnOut(telling) : tellNote(telling);
}

std::optional<Sentence> whyNoWords(const std::string& words, std::size_t most)
{
    if (words.size() > most)
        return Sentence::worded("Say that in fewer words: at most %1 letters.", most);
    const bool plain = std::ranges::none_of(words, [](unsigned char letter) { return letter < ' '; });
    return plain ? std::nullopt : std::optional{Sentence::worded("Say that in one line.")};
}

}  // namespace core::run
