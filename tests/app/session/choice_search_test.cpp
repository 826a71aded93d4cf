#include "app/session/choice_search.h"

#include "tests/app/session/late_run.h"

#include <gtest/gtest.h>

namespace app::session {
namespace {

using samples::await;
using samples::LateRun;

TEST(ChoiceSearch, FindsWhatTheSessionWouldFindAndLeavesItToGoOnMeanwhile)
{
    LateRun run;
    ASSERT_TRUE(run.session().plansApart());
    ASSERT_TRUE(run.session().choiceQuestion());
    ChoiceSearch search{run.session()};
    search.open();
    EXPECT_TRUE(search.isSearching());
    EXPECT_TRUE(search.choices().empty());

    ASSERT_TRUE(await([&] { return !search.isSearching(); }));
    const auto expected = run.session().choices();
    ASSERT_FALSE(expected.empty());
    ASSERT_EQ(search.choices().size(), expected.size());
    for (std::size_t place = 0; place < expected.size(); ++place)
        EXPECT_EQ(search.choices()[place].kind, expected[place].kind);
    EXPECT_EQ(search.asOf(), run.session().state().now);
}

TEST(ChoiceSearch, SearchesAgainAfterAnAnswerForTheOldOnesWouldTakeItBack)
{
    LateRun run;
    ChoiceSearch search{run.session()};
    search.open();
    ASSERT_TRUE(await([&] { return !search.isSearching(); }));
    search.follow();
    EXPECT_FALSE(search.isSearching()) << "nothing was answered since";

    samples::answerFirst(run.session());
    ASSERT_TRUE(await([&] { return !run.session().isPlanning(); }));
    ASSERT_TRUE(run.session().choiceQuestion());
    search.follow();
    EXPECT_TRUE(search.isSearching());
    EXPECT_TRUE(search.choices().empty());
}

TEST(ChoiceSearch, ClosesWhereNothingIsLeftToChoose)
{
    LateRun run;
    ChoiceSearch search{run.session()};
    search.open();
    ASSERT_FALSE(run.session().end());
    search.follow();
    EXPECT_FALSE(search.isOpen());
    search.open();
    EXPECT_FALSE(search.isOpen());
}

}  // namespace
}  // namespace app::session
