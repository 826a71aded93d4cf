#pragma once

#include <span>
#include <vector>

namespace capture {

/// For each place of `signal` the sum of products with `shape` laid on it from
/// there: as long as `signal`, which counts as silent past its end.
std::vector<float> correlation(std::span<const float> signal, std::span<const float> shape);

}  // namespace capture
