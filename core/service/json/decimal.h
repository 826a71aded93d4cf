#pragma once

#include <cstdint>
#include <string_view>

namespace core::service::json {

enum class Exactness { Exact, NotWhole, TooLarge };

struct Scaled {
    Exactness exactness = Exactness::Exact;
    std::int64_t value = 0;  ///< Only where exact.
};

/// `number * factor` as a whole number, without any rounding: 0.1 by 60 is 6, and
/// 0.33 by 60 is not whole. `number` is written as JSON writes numbers; `factor`
/// lies between 1 and 100. From a thousand thousand million on: too large.
Scaled scaled(std::string_view number, std::int64_t factor);

}  // namespace core::service::json
