#include "core/service/reading/suggestion.h"

#include <gtest/gtest.h>

#include <vector>

namespace core::service::reading {
namespace {

const std::vector<std::string> keys{"name", "apply", "develop", "first_strand_most", "looks", "late"};

TEST(Suggestion, FindsSlipsOfTheKeyboard)
{
    EXPECT_EQ(nearest("aply", keys), "apply");       // a letter missing
    EXPECT_EQ(nearest("appply", keys), "apply");     // one too many
    EXPECT_EQ(nearest("devleop", keys), "develop");  // two swapped
    EXPECT_EQ(nearest("lookz", keys), "looks");      // one wrong
}

TEST(Suggestion, LooksPastCaseAndJoiners)
{
    EXPECT_EQ(nearest("firstStrandMost", keys), "first_strand_most");
    EXPECT_EQ(nearest("First strand-most", keys), "first_strand_most");
}

TEST(Suggestion, KeepsStillWhereNothingIsNear)
{
    EXPECT_EQ(nearest("temperature", keys), "");
    EXPECT_EQ(nearest("", keys), "");
    EXPECT_EQ(nearest(std::string(1'000'000, 'a'), keys), "");
}

TEST(Suggestion, ListsWhatIsKnownOtherwise)
{
    EXPECT_EQ(suggestion("aply", keys), "did you mean \"apply\"?");
    EXPECT_EQ(suggestion("temperature", keys),
              "known here: name, apply, develop, first_strand_most, looks, late");
}

}  // namespace
}  // namespace core::service::reading
