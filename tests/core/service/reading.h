#pragma once

#include "core/service/service_file.h"
#include "tests/core/measure/london.h"

#include <nlohmann/json.hpp>

#include <initializer_list>
#include <string>
#include <utility>
#include <vector>

/// What the tests of the service file share.
namespace core::service {

using Json = nlohmann::ordered_json;

/// A service with something of everything, without fault: two coats, bowls, groups, hands.
inline const char* const richText = R"({
  "basinbell": 1, "name": "Two coats", "zone": "Europe/London", "date": "2026-06-01", "demo": true,
  "head": { "name": "Sea witch", "kind": "wefts", "comes_apart": true },
  "crew": {
    "hands": [
      { "name": "Odile", "away": [{ "from": "12:00", "until": "12:30" }, { "from": "15:00", "until": "15:10" }] },
      { "name": "Fenn", "does": ["mix", "apply"] }
    ],
    "basins": 2
  },
  "not_before": "09:00", "ready_by": "2026-06-01T17:00", "buffer": 10,
  "coats": [
    {
      "name": "First",
      "bowls": [{ "name": "Deep", "mix": 4, "pot_life": 45, "note": "two\nlines" }, { "name": "Pale" }],
      "zones": [
        { "name": "Root", "bowl": "Deep", "group": "Left", "apply": 10, "develop": { "least": 25, "target": 30, "most": 35 },
          "first_strand_most": 50, "last_strand_least": 20,
          "late": [{ "name": "Emulsify", "before": 3, "length": 3 }] },
        { "name": "Mids", "bowl": "Pale", "group": "Left", "apply": { "quickest": 8, "usual": 10, "slowest": 12 }, "clock": "first",
          "develop": { "least": 15, "target": 20, "most": 25 }, "looks": { "first": 5, "every": 5, "length": 1 },
          "after": ["Root"], "reach": 2, "alone": true, "under": 2, "over": 0.5, "not_before": "10:00",
          "where": ["crown mids", "piece 2 ends"] },
        { "name": "Ends", "bowl": "Pale", "group": "Right", "apply": 8, "develop": 15,
          "after": [{ "zone": "Mids", "longest_gap": 10 }, "Root"] }
      ],
      "rinse": [{ "name": "Left", "length": 5 },
                { "name": "Right", "length": 5, "water": { "earliest": "10:30", "latest": "10:45" } }],
      "dry": { "hands": 5, "unattended": 20 }, "assess": 5, "gap": { "least": 5, "most": 60 }
    },
    { "name": "Second", "zones": [{ "name": "All", "apply": 10, "develop": 10 }], "rinse": [{ "length": 5 }] }
  ]
})";

inline const measure::London2026& london()
{
    static const measure::London2026 zones;
    return zones;
}

inline ReadContext context()
{
    using namespace std::chrono;
    return {london(), "Europe/London", local_days{2026y / June / 1}};
}

inline std::vector<std::string> textsOf(const std::vector<Problem>& problems)
{
    std::vector<std::string> texts;
    for (const Problem& problem : problems)
        texts.push_back(problemText(problem));
    return texts;
}

/// Everything wrong with a file; empty where it was read.
inline std::vector<std::string> problemsOf(std::string_view text)
{
    const auto service = readService(text, context());
    return service ? std::vector<std::string>{} : textsOf(service.error());
}

/// `richText` with other values at some JSON pointers (RFC 6901); an empty value takes the key out.
inline std::string edited(std::initializer_list<std::pair<const char*, const char*>> edits)
{
    Json rich = Json::parse(richText);
    for (const auto& [pointer, value] : edits) {
        const Json::json_pointer place{pointer};
        if (*value != '\0')
            rich[place] = Json::parse(value);
        else
            rich[place.parent_pointer()].erase(place.back());
    }
    return rich.dump();
}

}  // namespace core::service
