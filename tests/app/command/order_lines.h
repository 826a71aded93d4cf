#pragma once

#include "app/command/answer_line.h"
#include "tests/app/session/session_samples.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

/// What the tests of typed lines share: a service of two zones, and what a line amounts to.
namespace app::command::lines {

inline const std::vector<core::service::Service>& services()
{
    static const std::vector services{session::samples::twoZones()};
    return services;
}

/// The test fails where it is no answer.
inline core::run::Answer answerOf(const std::string& line, const core::run::State& state)
{
    const auto order = readOrder(line, services(), state);
    EXPECT_TRUE(order.has_value()) << line << ": " << (order ? "" : order.error());
    EXPECT_EQ(order ? order->kind : Order::Kind::Leave, Order::Kind::Answer) << line;
    return order ? order->answer : core::run::Answer{};
}

/// The test fails where it is not refused.
inline std::string refusalOf(const std::string& line, const core::run::State& state)
{
    const auto order = readOrder(line, services(), state);
    EXPECT_FALSE(order.has_value()) << line;
    return order ? std::string{} : order.error();
}

}  // namespace app::command::lines
