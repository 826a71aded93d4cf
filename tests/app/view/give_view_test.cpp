#include "app/view/give_view.h"
#include "tests/app/view/samples.h"

#include <gtest/gtest.h>

using namespace app::view;

namespace {

using Reach = GiveView::Reach;

core::stagger::PlanData planWith(std::optional<int> give)
{
    core::stagger::PlanData plan = samples::plan();
    plan.give = give;
    plan.zones[0].quickestHeld = samples::minutes(8);
    plan.zones[0].slowestHeld = samples::minutes(13);
    plan.zones[1].quickestHeld = plan.zones[1].slowestHeld = samples::minutes(5);
    return plan;
}

TEST(GiveView, NamesTheZonesThatAreUncertainWithWhatTheyMayTake)
{
    const GiveView view = giveView({samples::service()}, planWith(100), 0);
    EXPECT_EQ(view.reach, Reach::All);
    ASSERT_EQ(view.zones.size(), 1u);
    EXPECT_EQ(view.zones[0], (HeldZone{"Root", samples::minutes(8), samples::minutes(13)}));
}

TEST(GiveView, TellsHowFarItReaches)
{
    EXPECT_EQ(giveView({samples::service()}, planWith(40), 0).reach, Reach::Part);
    EXPECT_EQ(giveView({samples::service()}, planWith(0), 0).reach, Reach::UsualOnly);
    EXPECT_EQ(giveView({samples::service()}, planWith({}), 0).reach, Reach::Unknown);
    EXPECT_TRUE(giveView({samples::service()}, planWith({}), 0).zones.empty());
}

TEST(GiveView, IsOfOneHeadAmongSeveral)
{
    const std::vector services{samples::service(), samples::service()};
    auto plan = planWith(100);
    plan.zones[0].service = 1;
    EXPECT_TRUE(giveView(services, plan, 0).zones.empty());
    ASSERT_EQ(giveView(services, plan, 1).zones.size(), 1u);
    EXPECT_EQ(giveView(services, plan, 1).zones[0].name, "Root");
}

}  // namespace
