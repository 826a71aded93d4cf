#pragma once

#include "core/run/fact.h"

#include <QtGlobal>

#include <array>
#include <string_view>
#include <utility>

namespace app::view {

/// What is asked of each zone once a coat is over, to be picked; own words go with it or stand instead of it.
/// Common practice, no source.
constexpr std::array<std::pair<core::run::Outcome, std::string_view>, 6> outcomeWords{{
    {core::run::Outcome::AsWanted, QT_TRANSLATE_NOOP("Outcomes", "as wanted")},
    {core::run::Outcome::TooLight, QT_TRANSLATE_NOOP("Outcomes", "too light")},
    {core::run::Outcome::TooDark, QT_TRANSLATE_NOOP("Outcomes", "too dark")},
    {core::run::Outcome::TooWarm, QT_TRANSLATE_NOOP("Outcomes", "too warm")},
    {core::run::Outcome::TooCool, QT_TRANSLATE_NOOP("Outcomes", "too cool (greenish)")},
    {core::run::Outcome::Uneven, QT_TRANSLATE_NOOP("Outcomes", "uneven")},
}};

constexpr std::string_view outcomeWord(core::run::Outcome outcome)
{
    return outcomeWords[static_cast<std::size_t>(outcome)].second;
}

}  // namespace app::view
