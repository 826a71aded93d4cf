#pragma once

#include "core/run/run.h"

namespace core::run {

/// The looks that were asked for and are still to be made, in the order of the service.
std::vector<ExtraLook> extraLooksOf(const Setup& setup, std::span<const Fact> facts);

}  // namespace core::run
