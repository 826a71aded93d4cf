#include "app/desktop/words.h"

#include <gtest/gtest.h>

using namespace app::desktop;
using core::measure::Seconds;

namespace {

TEST(Words, JoinNamesAsPeopleDo)
{
    EXPECT_EQ(words::joined({"Root"}), QStringLiteral("Root"));
    EXPECT_EQ(words::joined({"Root", "Mids"}), QStringLiteral("Root and Mids"));
    EXPECT_EQ(words::joined({"Root", "Mids", "Ends"}), QStringLiteral("Root, Mids and Ends"));
}

TEST(Words, ShowDigitsWithoutASign)
{
    EXPECT_EQ(words::digits(Seconds{545}), QStringLiteral("9:05"));
    EXPECT_EQ(words::digits(Seconds{-30}), QStringLiteral("0:30"));
    EXPECT_EQ(words::digits(Seconds{5999}), QStringLiteral("99:59"));
    EXPECT_EQ(words::digits(Seconds{6000}), QStringLiteral("1h40"));
}

TEST(Words, SayWhen)
{
    EXPECT_EQ(words::when(Seconds{65}), QStringLiteral("in 1:05"));
    EXPECT_EQ(words::when(Seconds{0}), QStringLiteral("now"));
    EXPECT_EQ(words::when(Seconds{-130}), QStringLiteral("due 2 min ago"));
}

TEST(Words, SayUntilWhenAStepCanBePutOff)
{
    app::view::LatestStart latest;
    latest.left = Seconds{380};
    EXPECT_EQ(words::latest(latest, QStringLiteral("14:31")), QStringLiteral("at the latest 14:31, in 6:20"));
    latest.onlyAsUsual = true;
    EXPECT_EQ(words::latest(latest, QStringLiteral("14:31")),
              QStringLiteral("at the latest 14:31, in 6:20, if all takes as usual"));
    EXPECT_EQ(words::latestBriefly(latest, QStringLiteral("14:31")),
              QStringLiteral("latest 14:31, in 6:20, if as usual"));
    latest.left = Seconds{0};
    EXPECT_EQ(words::latest(latest, QStringLiteral("14:31")),
              QStringLiteral("at the latest 14:31, now, if all takes as usual"));
    latest.left = Seconds{-70};
    EXPECT_EQ(words::latest(latest, QStringLiteral("14:31")),
              QStringLiteral("the latest safe start was 14:31, 1:10 ago"));
}

TEST(Words, NameWhatToDoAndWhatAnswersIt)
{
    app::view::StepView step;
    step.prompt.task.kind = core::stagger::TaskKind::Rinse;
    step.zones = {"Root", "Ends"};
    EXPECT_EQ(words::step(step), QStringLiteral("Rinse Root and Ends"));
    EXPECT_EQ(words::stepButton(step), QStringLiteral("Water is on"));
    step.prompt.asks = core::run::Prompt::Asks::Finish;
    EXPECT_EQ(words::step(step), QStringLiteral("Rinsing Root and Ends"));
    EXPECT_EQ(words::stepButton(step), QStringLiteral("Rinsed out"));
}

TEST(Words, TellEveryUrgencyInText)
{
    EXPECT_TRUE(words::urgency(app::view::Urgency::Calm).isEmpty());
    for (const auto urgency : {app::view::Urgency::Soon, app::view::Urgency::Due, app::view::Urgency::Late})
        EXPECT_FALSE(words::urgency(urgency).isEmpty());
}

}  // namespace
