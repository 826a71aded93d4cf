#include "app/view/amend_view.h"
#include "tests/app/view/samples.h"

#include <gmock/gmock.h>

using namespace app::view;
using core::run::Stage;
using samples::at;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

TEST(AmendView, NamesWhatIsBeingAppliedAndWhatIsStillDry)
{
    auto state = samples::developing(at(12));
    state.lanes[1].stage = Stage::Applying;

    const AmendView view = amendView({samples::service()}, state);
    EXPECT_THAT(view.applying, ElementsAre(ZoneOption{samples::applyEnds, "Ends"}));
    EXPECT_THAT(view.dry,
                ElementsAre(ZoneOption{samples::applyRoot, "Root"}, ZoneOption{samples::applyEnds, "Ends"}));
}

TEST(AmendView, DoesNotOfferToRinseApartWhatIsRinsedAlone)
{
    auto state = samples::developing(at(29));
    state.lanes[1].stage = Stage::Rinsed;
    EXPECT_THAT(amendView({samples::service()}, state).dry, IsEmpty());

    auto service = samples::service();
    service.coats[0].groups.push_back(service.coats[0].groups[0]);
    service.coats[0].zones[1].group = 1;
    EXPECT_THAT(amendView({service}, samples::developing(at(29))).dry, IsEmpty());
}

TEST(AmendView, LeavesOutWhoHasGoneForGoodAndNotWhoIsAwayForAWhile)
{
    auto service = samples::service();
    service.crew.hands.push_back({"Junior", {{at(0), at(60 * 72)}}, {}});
    service.crew.hands.push_back({"Trainee", {{at(0), at(30)}}, {}});

    EXPECT_THAT(amendView({service}, samples::developing(at(20))).here,
                ElementsAre(HandsOption{0, "Stylist"}, HandsOption{2, "Trainee"}));
}

TEST(AmendView, GivesUpTheCoatOfWhatIsAskedFor)
{
    auto state = samples::developing(at(20));
    EXPECT_FALSE(amendView({samples::service()}, state).givesUp);
    state.prompts = {{core::run::Prompt::Asks::Start, samples::rinse, at(30)}};
    const auto coat = amendView({samples::service()}, state).givesUp;
    ASSERT_TRUE(coat);
    EXPECT_EQ(coat->name, "Only");
    EXPECT_EQ(coat->zone.coat, 0u);
}

TEST(AmendView, OffersHeatForWhatIsOnTheHairAndItsEndOnceItIsOn)
{
    auto state = samples::developing(at(20));
    const AmendView without = amendView({samples::service()}, state);
    ASSERT_EQ(without.heatOn.size(), 1u);
    EXPECT_EQ(without.heatOn[0].zone.kind, core::stagger::TaskKind::Heat);
    EXPECT_THAT(without.heatOff, IsEmpty());
    EXPECT_EQ(without.like.size(), 2u);

    state.heats = {{.task = without.heatOn[0].zone, .since = at(20), .offDue = at(25)}};
    const AmendView with = amendView({samples::service()}, state);
    EXPECT_THAT(with.heatOn, IsEmpty());
    EXPECT_EQ(with.heatOff, without.heatOn);
    EXPECT_THAT(lanesView({samples::service()}, state).heats, ElementsAre(HeatView{"", at(20), at(25)}));
    state.lanes[0].stage = state.lanes[1].stage = Stage::Rinsed;
    state.heats.clear();
    EXPECT_THAT(amendView({samples::service()}, state).heatOn, IsEmpty());
}

TEST(AmendView, OffersNothingOnceAllIsDone)
{
    auto state = samples::developing(at(50));
    state.finished = true;
    EXPECT_EQ(amendView({samples::service()}, state), AmendView{});
}

}  // namespace
