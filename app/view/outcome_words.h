#pragma once

#include "core/run/fact.h"

#include <array>
#include <string_view>
#include <utility>

namespace app::view {

/// What is asked of each zone once a coat is over, to be picked; own words go with it or stand instead of it.
/// Common practice, no source.
constexpr std::array<std::pair<core::run::Outcome, std::string_view>, 6> outcomeWords{{
    {core::run::Outcome::AsWanted, "as wanted"},
    {core::run::Outcome::TooLight, "too light"},
    {core::run::Outcome::TooDark, "too dark"},
    {core::run::Outcome::TooWarm, "too warm"},
    {core::run::Outcome::TooCool, "too cool (greenish)"},
    {core::run::Outcome::Uneven, "uneven"},
}};

constexpr std::string_view outcomeWord(core::run::Outcome outcome)
{
    return outcomeWords[static_cast<std::size_t>(outcome)].second;
}

}  // namespace app::view
