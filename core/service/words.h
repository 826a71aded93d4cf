#pragma once

#include <string>
#include <vector>

/// The words of the file for what the program has as enumerations, each in the
/// order of its enumeration, and the names that are given where only one is needed.
namespace core::service {

inline const std::vector<std::string> clockWords{"end", "first"};
inline const std::vector<std::string> headWords{"person", "wig", "wefts"};
/// Of places: the roots, mids and ends of each section, in the order of the sections.
inline const std::vector<std::string> placeWords{
    "front roots",   "front mids",   "front ends",    //
    "crown roots",   "crown mids",   "crown ends",    //
    "side roots",    "side mids",    "side ends",     //
    "nape roots",    "nape mids",    "nape ends",     //
    "piece 1 roots", "piece 1 mids", "piece 1 ends",  //
    "piece 2 roots", "piece 2 mids", "piece 2 ends",  //
    "piece 3 roots", "piece 3 mids", "piece 3 ends",  //
    "piece 4 roots", "piece 4 mids", "piece 4 ends",
};
inline constexpr std::size_t stretches = 3;

inline const std::vector<std::string> workWords{"mix", "apply", "look", "late", "rinse", "dry", "assess"};

inline constexpr const char* onlyHandsName = "Stylist";
inline constexpr const char* onlyCoatName = "Coat";
inline constexpr const char* onlyBowlName = "Bowl";
inline constexpr const char* onlyGroupName = "Rinse";

}  // namespace core::service
