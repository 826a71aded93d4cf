#pragma once

#include "core/service/service.h"

namespace core::service {

/// `name`, or with a number behind it where one of `taken` is called that.
std::string freeName(const std::string& name, const std::vector<std::string>& taken);

/// Gives `zone`, a place in `coat`, a rinse group of its own, that takes as long as the one it leaves.
void giveOwnGroup(Coat& coat, std::size_t zone);

}  // namespace core::service
