#include "app/view/alarm_view.h"
#include "tests/app/view/samples.h"

#include <gmock/gmock.h>

using namespace app::view;
using core::alarm::Alarm;
using core::alarm::Kind;
using core::alarm::Subject;
using samples::at;
using testing::ElementsAre;

namespace {

Alarm alarm(Kind kind, Subject subject, const TaskId& task)
{
    Alarm made;
    made.kind = kind;
    made.subject = subject;
    made.task = task;
    made.since = at(30);
    return made;
}

std::optional<AlarmView> viewOf(const std::vector<Alarm>& alarms)
{
    return alarmView({samples::service()}, samples::developing(at(32)), alarms);
}

TEST(AlarmView, IsNothingWhileNothingStands)
{
    EXPECT_FALSE(viewOf({}));
}

TEST(AlarmView, LetsWaterTakeTheWindow)
{
    const auto view = viewOf({alarm(Kind::Due, Subject::Water, samples::rinse)});

    ASSERT_TRUE(view);
    EXPECT_TRUE(view->takesWindow);
    EXPECT_THAT(view->zones, ElementsAre("Root", "Ends"));
    EXPECT_EQ(view->standing, samples::minutes(2));
}

TEST(AlarmView, LeavesTheWindowToWaterThatShouldHaveEnded)
{
    Alarm ends = alarm(Kind::Due, Subject::Water, samples::rinse);
    ends.asks = core::run::Prompt::Asks::Finish;

    EXPECT_FALSE(viewOf({ends})->takesWindow);
}

// One alarm has the headline; none that stands is hidden behind it, and limits come first.
TEST(AlarmView, NamesWhatElseStands)
{
    const auto view = viewOf({alarm(Kind::LimitPassed, Subject::Water, samples::applyRoot),
                              alarm(Kind::LimitPassed, Subject::Water, samples::applyEnds),
                              alarm(Kind::Due, Subject::Look, samples::lookAtEnds),
                              alarm(Kind::GetReady, Subject::Water, samples::rinse)});

    EXPECT_THAT(view->zones, ElementsAre("Root"));
    ASSERT_EQ(view->also.size(), 2U);
    EXPECT_EQ(view->also[0].alarm.kind, Kind::LimitPassed);
    EXPECT_THAT(view->also[0].zones, ElementsAre("Ends"));
    EXPECT_EQ(view->also[1].alarm.subject, Subject::Look);
}

TEST(AlarmView, PrefersWhatTakesTheWindow)
{
    const auto view = viewOf({alarm(Kind::Due, Subject::Look, samples::lookAtEnds),
                              alarm(Kind::LimitNear, Subject::Water, samples::applyEnds)});

    EXPECT_EQ(view->alarm.kind, Kind::LimitNear);
    EXPECT_TRUE(view->takesWindow);
    EXPECT_THAT(view->zones, ElementsAre("Ends"));
}

TEST(AlarmView, LeavesTheWindowToOtherAlarms)
{
    EXPECT_FALSE(viewOf({alarm(Kind::Due, Subject::Look, samples::lookAtEnds)})->takesWindow);
    EXPECT_FALSE(viewOf({alarm(Kind::GetReady, Subject::Water, samples::rinse)})->takesWindow);
}

}  // namespace
