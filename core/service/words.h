#pragma once

#include <string>
#include <vector>

/// The words of the file for what the program has as enumerations, each in the
/// order of its enumeration, and the names that are given where only one is needed.
namespace core::service {

inline const std::vector<std::string> clockWords{"end", "first"};
inline const std::vector<std::string> headWords{"person", "wig", "wefts"};
inline const std::vector<std::string> workWords{"mix", "apply", "look", "late", "rinse", "dry", "assess"};

inline constexpr const char* onlyHandsName = "Stylist";
inline constexpr const char* onlyCoatName = "Coat";
inline constexpr const char* onlyBowlName = "Bowl";
inline constexpr const char* onlyGroupName = "Rinse";

}  // namespace core::service
