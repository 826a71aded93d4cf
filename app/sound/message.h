#pragma once

#include "app/sound/health.h"
#include "core/alarm/pattern.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

/// What the player and the sound program say to each other: one line of plain
/// text each, so that the sound program can be tried by hand.
///
///     play 12 due look 0 2      sound this pattern in voice 0, insistence 2; it bears the ticket 12
///     silence                   end what plays
///     volume 0.8
///     ready yes | no            keep the device open, so that nothing is late
///
///     health working | no-device | stalled
///     heard 12                  the device has taken all of it
namespace app::sound {

struct Play {
    std::uint64_t ticket = 0;
    core::alarm::Signal signal{};
    int insistence = 0;

    friend bool operator==(const Play&, const Play&) = default;
};

struct Silence {
    friend bool operator==(const Silence&, const Silence&) = default;
};

struct Volume {
    float of = 1;

    friend bool operator==(const Volume&, const Volume&) = default;
};

struct Ready {
    bool kept = false;

    friend bool operator==(const Ready&, const Ready&) = default;
};

struct Heard {
    std::uint64_t ticket = 0;

    friend bool operator==(const Heard&, const Heard&) = default;
};

using Order = std::variant<Play, Silence, Volume, Ready>;
using Report = std::variant<Health, Heard>;

/// The line without its end, and what a line without its end means; nothing
/// when it means nothing.
std::string lineOf(const Order& order);
std::string lineOf(const Report& report);
std::optional<Order> orderOf(std::string_view line);
std::optional<Report> reportOf(std::string_view line);

}  // namespace app::sound
