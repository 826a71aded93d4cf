#pragma once

#include "app/output/plan_words.h"

#include <nlohmann/json.hpp>

/// What the JSON of plans and of explanations have in common.
namespace app::output {

/// People read it too, so keys keep their order.
using Json = nlohmann::ordered_json;

/// As it is printed, with a line feed at the end.
std::string jsonText(const Json& json);

/// The version of the format, 1, under `format`, and what is planned.
Json jsonHead(const char* format, const Services& services);

Json worthJson(const core::stagger::Worth& worth);
Json nothingFitsJson(const core::stagger::NoPlan& noPlan);

/// The id, or null.
Json idOrNull(const std::optional<core::stagger::TaskId>& task);

}  // namespace app::output
