#include "app/desktop/setup/edits.h"

#include "core/service/check.h"

#include <gtest/gtest.h>

using namespace app::desktop;
using edits::Part;

namespace {

/// Zones A, B, C; C comes after A and B; two bowls and two groups.
edits::Service threeZones()
{
    edits::Service service = edits::blankService();
    for (const Part part : {Part::Zones, Part::Zones, Part::Bowls, Part::Groups})
        edits::add(service, 0, part);
    auto& coat = service.coats[0];
    coat.zones[0].name = "A";
    coat.zones[1].name = "B";
    coat.zones[2].name = "C";
    coat.zones[1].bowl = 1;
    coat.zones[2].group = 1;
    coat.zones[2].after = {{0, {}}, {1, {}}};
    return service;
}

TEST(Edits, BeginWithAServiceThatCanBePlanned)
{
    for (const core::service::Problem& problem : core::service::checkService(edits::blankService()))
        ADD_FAILURE() << problemText(problem);
}

TEST(Edits, TreatABlankHeadAsAPersonSoThatTheCautionsComeUp)
{
    EXPECT_EQ(edits::blankService().head.kind, core::service::HeadKind::Person);
}

TEST(Edits, GiveEveryNewZoneANameOfItsOwn)
{
    edits::Service service = edits::blankService();
    edits::add(service, 0, Part::Zones);
    service.coats[0].zones[0].name = "Zone 3";
    edits::add(service, 0, Part::Zones);

    EXPECT_TRUE(core::service::checkService(service).empty());
}

TEST(Edits, DropReferencesToAZoneThatIsRemovedAndKeepTheRest)
{
    edits::Service service = threeZones();
    edits::remove(service, 0, Part::Zones, 0);

    ASSERT_EQ(service.coats[0].zones.size(), 2u);
    ASSERT_EQ(service.coats[0].zones[1].after.size(), 1u);
    EXPECT_EQ(service.coats[0].zones[1].after[0].zone, 0u);  // Still B.
}

TEST(Edits, FollowAZoneThatMoves)
{
    edits::Service service = threeZones();
    edits::swapDown(service, 0, Part::Zones, 0);

    EXPECT_EQ(service.coats[0].zones[0].name, "B");
    EXPECT_EQ(service.coats[0].zones[2].after[0].zone, 1u);  // A went down.
    EXPECT_EQ(service.coats[0].zones[2].after[1].zone, 0u);  // B went up.
}

TEST(Edits, FollowABowlThatMoves)
{
    edits::Service service = threeZones();
    edits::swapDown(service, 0, Part::Bowls, 0);

    EXPECT_EQ(service.coats[0].zones[0].bowl, 1u);
    EXPECT_EQ(service.coats[0].zones[1].bowl, 0u);
}

TEST(Edits, KeepABowlThatIsInUseAndTheLastOfEachKind)
{
    edits::Service service = threeZones();
    EXPECT_FALSE(edits::mayRemove(service, 0, Part::Bowls, 1));
    EXPECT_FALSE(edits::mayRemove(service, 0, Part::Coats, 0));
    EXPECT_FALSE(edits::mayRemove(service, 0, Part::Hands, 0));
    service.coats[0].zones[1].bowl = 0;
    EXPECT_TRUE(edits::mayRemove(service, 0, Part::Bowls, 1));
}

TEST(Edits, LeaveNoGapAfterTheLastCoat)
{
    edits::Service service = edits::blankService();
    edits::add(service, 0, Part::Coats);
    service.coats[0].gapLeast = core::measure::Seconds{600};
    edits::remove(service, 0, Part::Coats, 1);

    EXPECT_FALSE(service.coats[0].gapLeast);
}

}  // namespace
