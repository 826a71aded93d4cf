#include "app/command/screen.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

namespace app::command {
namespace {

using testing::HasSubstr;
using testing::Not;

TEST(PlainScreen, WritesWhatIsAskedForOnlyWhenThatChanges)
{
    std::ostringstream out;
    PlainScreen screen{out};
    screen.showPicture({"14:00:00", {"NOW  Start: Apply Root, in 0:02"}, {}});
    screen.showPicture({"14:00:01", {"NOW  Start: Apply Root, in 0:01"}, {}});
    screen.say("told");
    screen.showPicture({"14:00:02", {"NOW  Has it ended? Apply Root, in 9:58"}, {}});

    EXPECT_EQ(out.str(),
              "14:00:00  NOW  Start: Apply Root, in 0:02\n"
              "told\n"
              "14:00:02  NOW  Has it ended? Apply Root, in 9:58\n");
}

TEST(TerminalScreen, LeavesTheLinesBelowThePictureToRoll)
{
    std::ostringstream out;
    {
        TerminalScreen screen{out, -1};  // No size can be asked for, so it is 24 by 80.
        screen.showPicture({"14:00:00", {"NOW  Start"}, {"Root", "Ends"}});
        EXPECT_THAT(out.str(), HasSubstr("\033[6;24r")) << "four lines and a rule stand still";
        screen.say("told");
    }
    EXPECT_THAT(out.str(), HasSubstr("told\n"));
    EXPECT_THAT(out.str(), HasSubstr("\033[r")) << "the screen is given back as it was";
}

TEST(TerminalScreen, CutsALineThatIsTooLongBetweenCharacters)
{
    std::ostringstream out;
    TerminalScreen screen{out, -1};
    std::string accents;
    for (int character = 0; character < 100; ++character)
        accents += "\u00e9";
    screen.showPicture({"14:00:00", {"NOW"}, {accents}});

    EXPECT_THAT(out.str(), HasSubstr(accents.substr(0, 160)));
    EXPECT_THAT(out.str(), Not(HasSubstr(accents.substr(0, 162))));
}

}  // namespace
}  // namespace app::command
