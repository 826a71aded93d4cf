#pragma once

#include "tests/oracle/random_service.h"

#include <array>
#include <cstdint>
#include <string>

namespace oracle {

/// How often the two sides had something to say, so that a test can see that it tests something.
struct Opinions {
    int planned = 0;
    int refused = 0;
    int open = 0;  ///< Gecode gave up before it could prove its answer.
    /// Where lengths are uncertain and both sides proved their answer: by the give in tens of percent.
    std::array<int, 11> give{};

    /// Of those, the ones with a give of so many tens of percent.
    [[nodiscard]] int withGive(std::size_t least, std::size_t most) const;

    Opinions& operator+=(const Opinions& other);
};

/// How many of each kind, on one line.
std::string textOf(const Opinions& opinions);

/// Whether every start is compared, or only what is worth something.
enum class Compare { Worth, EveryStart };

/// Plans `question` with the planner and with Gecode and expects, as GoogleTest does, that they agree:
/// whether anything fits, and on harm, waste and staleness; and that the planner's plan passes the checker.
Opinions expectSameOpinion(const core::stagger::Question& question, Compare compare);

/// The same for the questions of seeds `first` to `last`: most of them in seconds, every fifth in half
/// minutes and without looks unless lengths are uncertain.
Opinions expectSameOpinions(std::uint64_t first, std::uint64_t last, const Sizes& sizes,
                            Compare compare = Compare::Worth);

/// The same for so many questions in which something has happened: what those from seed `first` on, in
/// seconds, come to half way, if they can be planned.
Opinions expectSameOpinionsUnderWay(std::uint64_t first, int questions, const Sizes& sizes,
                                    Compare compare = Compare::Worth);

/// Two or three heads on one crew, with up to a dozen tasks in all.
inline constexpr Sizes severalHeads{
    .leastHeads = 2, .mostHeads = 3, .mostTasks = 12, .mostZones = 3, .mostCoats = 2};

/// One to three heads whose applications may take longer or shorter than usual, with up to a dozen tasks in
/// all.
inline constexpr Sizes uncertainLengths{
    .leastHeads = 1, .mostHeads = 3, .mostTasks = 12, .mostZones = 3, .mostCoats = 2, .uncertain = true};

}  // namespace oracle
