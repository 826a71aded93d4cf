#pragma once

#include "app/view/now_view.h"
#include "core/run/run.h"

#include <tl/expected.hpp>

#include <string>
#include <vector>

namespace app::command {

/// What a typed line asks for.
struct Order {
    enum class Kind {
        Answer,
        Answers,
        Cautions,
        Keys,
        Leave,
        Choices,
        Choose,
        Mute,
        Unmute,
        ToneWords,
        OutcomeWords
    };
    Kind kind = Kind::Answer;
    core::run::Answer answer;
    std::size_t choice = 0;  ///< For Choose, from 1.
    std::string clock{};     ///< For an Answer that moves another: when that was, by the clock. Else empty.
};

/// The order that is this answer, and the one that is an answer about a task and nothing else.
Order answered(core::run::Answer answer);
Order aboutTask(core::run::Answer::Kind kind, const core::stagger::TaskId& task);

/// The zone of that name that is at one of `stages`; a name is the same in small letters and in capitals.
std::optional<core::stagger::TaskId> zoneNamed(const std::string& name,
                                               const std::vector<core::run::Stage>& stages,
                                               const std::vector<core::service::Service>& services,
                                               const core::run::State& state);

/// Reads one line. What it is about is the first thing to do now, or the one whose
/// number it begins with. The error says what can be typed.
tl::expected<Order, std::string> readOrder(const std::string& line,
                                           const std::vector<core::service::Service>& services,
                                           const core::run::State& state);

}  // namespace app::command
