#pragma once

#include "core/measure/harm.h"
#include "core/measure/time.h"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

/// What is asked: a head, its coats, what is applied where, and who is there.
///
/// Plain values. A `Service` that came out of `readService` has passed every
/// check of `checkService`; one built by hand has passed none until it is given
/// to it. Places inside (bowl, group, after) are positions in the coat's lists.
namespace core::service {

using measure::HarmRate;
using measure::Instant;
using measure::Interval;
using measure::Seconds;

/// Hands-on time to apply. What really happens lies in [quickest, slowest] and
/// nobody controls it. 1 s <= quickest <= usual <= slowest.
struct Application {
    Seconds quickest{0};
    Seconds usual{0};
    Seconds slowest{0};

    friend bool operator==(const Application&, const Application&) = default;
};

/// What development is counted from.
enum class ClockStart { EndOfApplication, FirstContact };

/// Development until water reaches the zone: least <= target <= most.
struct Window {
    Seconds least{0};
    Seconds target{0};
    Seconds most{0};

    friend bool operator==(const Window&, const Window&) = default;
};

/// Looks (strand tests) at `first + k * every` on the zone's clock, while that
/// is less than `until`. Without `every` there is one look. A look that is due
/// starts within `tolerance` of its moment.
struct Looks {
    Seconds first{0};
    std::optional<Seconds> every;
    Seconds length{0};
    Seconds tolerance{0};
    Seconds until{0};

    /// The moments on the zone's clock, in order. Never more than `mostLooks`.
    [[nodiscard]] std::vector<Seconds> moments() const;
    static constexpr std::size_t mostLooks = 1000;

    friend bool operator==(const Looks&, const Looks&) = default;
};

/// The tolerance of looks that name none: two minutes, or half of `every` (rounded
/// down to whole seconds) where that is less.
[[nodiscard]] Seconds defaultTolerance(std::optional<Seconds> every);

/// A hands-on job tied to the rinse, such as emulsifying: starts within
/// `tolerance` of `before` ahead of the zone's water and lasts `length`.
struct LateJob {
    std::string name;
    Seconds before{0};
    Seconds length{0};
    Seconds tolerance{60};

    friend bool operator==(const LateJob&, const LateJob&) = default;
};

/// The application of another zone of the coat that must have ended first, and
/// the longest gap between its end and the start of this one (a blend line that
/// must still be wet).
struct After {
    std::size_t zone = 0;
    std::optional<Seconds> longestGap;

    friend bool operator==(const After&, const After&) = default;
};

/// One mixed mixture. `mix` 0 means there is no task of mixing; the bowl's pot
/// life then counts from the first application that uses it.
struct Bowl {
    std::string name;
    Seconds mix{0};
    std::optional<Seconds> potLife;
    std::string note;  ///< What goes in, in the stylist's words. Shown, never interpreted.

    friend bool operator==(const Bowl&, const Bowl&) = default;
};

/// A part of a head, or one of the pieces of hair, as a drawing of it shows them.
enum class Section { Front, Crown, Side, Nape, PieceOne, PieceTwo, PieceThree, PieceFour };

/// How far along the hair.
enum class Stretch { Roots, Mids, Ends };

/// A place on the drawing.
struct Place {
    Section section = Section::Front;
    Stretch stretch = Stretch::Roots;

    friend auto operator<=>(const Place&, const Place&) = default;
};

/// A part of the head that takes one mixture.
struct Zone {
    std::string name;
    std::size_t bowl = 0;
    Application apply;
    ClockStart clock = ClockStart::EndOfApplication;
    Window develop;
    std::optional<Seconds> firstStrandMost;  ///< From the start of application until water.
    std::optional<Seconds> lastStrandLeast;  ///< From the end of application until water.
    std::optional<Looks> looks;
    std::vector<LateJob> late;
    std::vector<After> after;
    std::size_t group = 0;
    Seconds reach{0};    ///< How long after its group's water starts it is reached; at most the rinse.
    bool alone = false;  ///< It can be rinsed without wetting its neighbours.
    HarmRate under{100};
    HarmRate over{100};
    std::vector<Place> where{};          ///< On a drawing of the head. Shown, and nothing is planned by it.
    std::optional<Instant> notBefore{};  ///< Somebody wants its application to start then or later.

    /// Of developing for so long: of each second short of the target, or past it.
    [[nodiscard]] measure::Harm harmOf(Seconds development) const;

    friend bool operator==(const Zone&, const Zone&) = default;
};

/// Zones that go under the water together.
struct RinseGroup {
    std::string name;
    Seconds rinse{0};                      ///< Hands-on time at the basin, at least 1 s.
    std::optional<Instant> waterEarliest;  ///< Where the basin is booked.
    std::optional<Instant> waterLatest;

    friend bool operator==(const RinseGroup&, const RinseGroup&) = default;
};

/// One pass: mix, apply, develop, rinse, dry, look at it.
struct Coat {
    std::string name;
    std::vector<Bowl> bowls;
    std::vector<Zone> zones;
    std::vector<RinseGroup> groups;
    Seconds dryHands{0};
    Seconds dryUnattended{0};  ///< Follows the hands-on part.
    Seconds assess{0};
    std::optional<Seconds> gapLeast;  ///< From this coat's assessment to the next coat's first application.
    std::optional<Seconds> gapMost;

    /// Whether a clock time is set for something of it: water that is booked, or a start that is wanted.
    [[nodiscard]] bool namesTimes() const;

    friend bool operator==(const Coat&, const Coat&) = default;
};

enum class HeadKind { Person, Wig, Wefts };

/// What is coloured.
struct Head {
    std::string name;  ///< For the screen only. A journal never holds it.
    HeadKind kind = HeadKind::Wig;
    bool piecesComeApart = false;  ///< Wefts: other pieces can be worked on while one is at a basin.

    friend bool operator==(const Head&, const Head&) = default;
};

/// The kinds of task that take a pair of hands.
enum class Work { Mix, Apply, Look, Late, Rinse, Dry, Assess };

/// One pair of hands.
struct Hands {
    std::string name;
    std::vector<Interval> away;  ///< Sorted, not overlapping.
    std::vector<Work> kinds;     ///< What they do. Empty means everything.

    [[nodiscard]] bool does(Work work) const;

    friend bool operator==(const Hands&, const Hands&) = default;
};

struct Crew {
    std::vector<Hands> hands;
    std::size_t basins = 1;

    friend bool operator==(const Crew&, const Crew&) = default;
};

/// Everything done to one head, and the crew it is done by.
struct Service {
    std::string name;
    std::string timeZone = "UTC";  ///< For showing and saving clock times.
    Head head;
    Crew crew;
    std::vector<Coat> coats;
    std::optional<Instant> notBefore;
    std::optional<Instant> readyBy;
    Seconds buffer{0};
    bool demo = false;  ///< Invented, and safe to run at high speed.

    friend bool operator==(const Service&, const Service&) = default;
};

/// Whether one of the heads is a person's: then it is their skin too.
[[nodiscard]] inline bool isOnPerson(const std::vector<Service>& services)
{
    return std::ranges::any_of(services,
                               [](const Service& service) { return service.head.kind == HeadKind::Person; });
}

}  // namespace core::service
