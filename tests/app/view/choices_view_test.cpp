#include "app/view/choices_view.h"
#include "tests/app/view/samples.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace app::view;
using core::stagger::ChoiceKind;
using samples::at;
using samples::minutes;

namespace {

/// One pair of hands cannot bring both to the basin at 20 minutes to the second: the root takes 10 to apply,
/// the ends 4.
std::vector<core::stagger::Choice> choices()
{
    auto service = samples::service();
    for (core::service::Zone& zone : service.coats[0].zones) {
        zone.develop = {minutes(20), minutes(20), minutes(20)};
        zone.looks.reset();
    }
    core::stagger::Question question;
    question.services = {service};
    question.now = at(0);
    return core::stagger::choicesFor(question);
}

TEST(ChoicesView, SaysWhatEachComesTo)
{
    const auto solved = choices();
    const ChoicesView view = choicesView(solved, at(0), at(0));

    ASSERT_GE(view.choices.size(), 2u);
    ASSERT_EQ(view.choices.size(), solved.size());
    for (std::size_t place = 0; place < solved.size(); ++place) {
        EXPECT_EQ(view.choices[place].what, solved[place].what);
        EXPECT_EQ(view.choices[place].limitsPassed, solved[place].plan->broken.size());
        EXPECT_EQ(view.choices[place].carriesOn, solved[place].kind == ChoiceKind::CarryOn);
    }
    // Carrying on, one of the two is off its target by the 4 minutes of the other's application at least.
    const auto carryOn = std::ranges::find_if(view.choices, &ChoiceView::carriesOn);
    ASSERT_NE(carryOn, view.choices.end());
    EXPECT_GE(carryOn->limitsPassed, 1u);
    EXPECT_GE(carryOn->passedBy, minutes(4));
    EXPECT_GE(carryOn->minutesShort + carryOn->minutesPast, 4.0);
}

TEST(ChoicesView, GrowsOldAfterHalfAMinute)
{
    EXPECT_FALSE(choicesView({}, at(0), at(0) + samples::Seconds{29}).old);
    EXPECT_TRUE(choicesView({}, at(0), at(0) + samples::Seconds{30}).old);
    EXPECT_EQ(choicesView({}, at(0), at(2)).age, minutes(2));
}

}  // namespace
