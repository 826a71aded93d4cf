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
    return lastAnswer({rig::Rig::service()}, facts,
                      WallClock{std::make_shared<app::session::QtTimeZones>(), "UTC"});
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

}  // namespace
