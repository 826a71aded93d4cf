#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace house {

struct FunctionLength {
    std::size_t line;    ///< Where its opening brace stands, counted from 1.
    std::size_t length;  ///< Lines from the opening to the closing brace, both included.
    std::string head;    ///< What stands before the brace, to recognise it by.
};

/// The functions that a C++ file defines, found by their braces.
///
/// Not a parser: it relies on the layout that clang-format gives, where a brace that opens a body follows a
/// space or a new line and a brace that opens an initialiser follows a name. Lambdas count as part of what
/// they stand in.
std::vector<FunctionLength> functionsIn(const std::vector<std::string>& lines);

}  // namespace house
