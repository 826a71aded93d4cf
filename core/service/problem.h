#pragma once

#include "core/measure/sentence.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace core::service {

/// One thing that is wrong with a service, and how to mend it.
struct Problem {
    std::string place;       ///< Such as "coats[0].zones[2].develop.most"; empty for the file as a whole.
    measure::Sentence what;  ///< What is wrong and how to mend it, in plain words.

    friend bool operator==(const Problem&, const Problem&) = default;
};

/// "place: what", or "what" alone where the place is the file as a whole.
std::string problemText(const Problem& problem);

/// Places of what lies inside `place`: "coats[0]" and "name" make "coats[0].name",
/// "coats" and 0 make "coats[0]".
std::string inside(const std::string& place, std::string_view key);
std::string nth(const std::string& place, std::size_t index);

}  // namespace core::service
