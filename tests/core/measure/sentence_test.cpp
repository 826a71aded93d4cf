#include "core/measure/sentence.h"

#include <optional>
#include <sstream>

#include <gtest/gtest.h>

namespace core::measure {
namespace {

using std::chrono::minutes;

const std::string root = "Root";

TEST(Sentence, PutsInWhatItIsMadeOf)
{
    const Sentence limit = Sentence::worded("development of at most %1", Seconds{minutes{45}});
    EXPECT_EQ(Sentence::worded("%1: %2", root, limit), "Root: development of at most 45 min");
    EXPECT_EQ(Sentence::worded("%2 of %1", 3, 2), "2 of 3");
    EXPECT_EQ(Sentence::worded("Look at %1 (%2)", root, ordinal(2)), "Look at Root (2nd)");
    EXPECT_EQ(Sentence::worded("%1 stays at %2", root, LocalTime{minutes{14 * 60 + 5}}),
              "Root stays at 14:05");
    EXPECT_EQ(Sentence::worded("%1: %2", root, small(Sentence::worded("Let it be"))), "Root: let it be");
}

TEST(Sentence, CountsInEnglish)
{
    const auto text = [](std::size_t number) { return ordinal(number).text(); };
    EXPECT_EQ(text(1) + text(2) + text(3) + text(4), "1st2nd3rd4th");
    EXPECT_EQ(text(11) + text(12) + text(13), "11th12th13th");
    EXPECT_EQ(text(21) + text(112) + text(122), "21st112th122nd");
}

TEST(Sentence, LeavesAloneWhatIsNoMarker)
{
    EXPECT_EQ(Sentence::worded("100 % of %1, %2 and %", root), "100 % of Root, %2 and %");
    // What is put in is not read again.
    EXPECT_EQ(Sentence::worded("%1 and %2", std::string{"%2"}, root), "%2 and Root");
}

TEST(Sentence, IsSaidAsItIsWhereItIsANameAlone)
{
    const Sentence name = root;
    EXPECT_EQ(name, "Root");
    EXPECT_EQ(name.pattern(), nullptr);
    EXPECT_TRUE(Sentence{}.empty());
    EXPECT_FALSE(name.empty());
    EXPECT_FALSE(Sentence::worded("Dry").empty());
}

TEST(Sentence, JoinsOthers)
{
    const std::vector<Sentence> several{Sentence::worded("one basin"), Sentence{root}};
    EXPECT_EQ(Sentence::joined(several, "; "), "one basin; Root");
    EXPECT_EQ(Sentence::joined({}, "; "), "");
    EXPECT_EQ(Sentence::worded("%1.", Sentence::joined(several, ", ")), "one basin, Root.");
}

TEST(Sentence, IsTheSameWhereItSaysTheSame)
{
    EXPECT_EQ(Sentence::worded("%1 is away", root), Sentence::worded("%1 is away", std::string{"Root"}));
    EXPECT_NE(Sentence::worded("%1 is away", root), Sentence::worded("%1 is here", root));
    std::ostringstream out;
    out << Sentence::worded("%1 is away", root);
    EXPECT_EQ(out.str(), "Root is away");
    const std::string english = Sentence::worded("%1 is away", root);
    EXPECT_EQ(english, "Root is away");
}

}  // namespace
}  // namespace core::measure
