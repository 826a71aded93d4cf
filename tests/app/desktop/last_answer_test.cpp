#include "app/desktop/lanes/last_answer.h"

#include "app/session/time_zones.h"
#include "tests/app/desktop/rig.h"

#include <gtest/gtest.h>

using namespace app::desktop;
using core::run::Fact;
using core::run::FactKind;
using core::run::FactNumber;

namespace {

Fact fact(int number, FactKind kind, int minute)
{
    Fact made;
    made.number = FactNumber{number};
    made.kind = kind;
    made.happened = made.recorded = rig::morning + std::chrono::minutes{minute};
    return made;
}

QString last(const std::vector<Fact>& facts)
{
    core::run::Setup setup;
    setup.services = {rig::Rig::service()};
    const auto zones = std::make_shared<app::session::QtTimeZones>();
    return lastAnswer(setup, facts, WallClock{zones, "UTC"}, *zones);
}

TEST(LastAnswer, IsNothingBeforeTheFirst)
{
    EXPECT_TRUE(last({}).isEmpty());
}

TEST(LastAnswer, SaysWhatWasAnsweredAndWhen)
{
    EXPECT_EQ(last({fact(1, FactKind::Started, 2), fact(2, FactKind::Finished, 7)}),
              QStringLiteral("Apply Root: done 08:07"));
}

TEST(LastAnswer, PassesOverWhatWasUndone)
{
    Fact undo = fact(3, FactKind::Undone, 8);
    undo.about = FactNumber{2};
    EXPECT_EQ(last({fact(1, FactKind::Started, 2), fact(2, FactKind::Finished, 7), undo}),
              QStringLiteral("Apply Root: started 08:02"));
}

TEST(LastAnswer, ShowsWhenItReallyHappened)
{
    Fact moved = fact(2, FactKind::Moved, 0);
    moved.about = FactNumber{1};
    EXPECT_EQ(last({fact(1, FactKind::Started, 2), moved}), QStringLiteral("Apply Root: started 08:00"));
}

TEST(LastAnswer, SaysWhatWasSeenAndWhetherHeatIsOn)
{
    Fact looked = fact(1, FactKind::Looked, 5);
    looked.task = {.kind = core::stagger::TaskKind::Look, .item = 1};
    looked.tone = "still yellow";
    EXPECT_EQ(last({looked}), QStringLiteral("Look at Ends: looked 08:05, still yellow"));
    Fact heat = fact(2, FactKind::Started, 6);
    heat.task.kind = core::stagger::TaskKind::Heat;
    EXPECT_EQ(last({looked, heat}), QStringLiteral("Heat on 08:06"));
}

}  // namespace
