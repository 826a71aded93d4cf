#include "app/sound/message.h"

#include <gtest/gtest.h>

#include <clocale>
#include <vector>

namespace app::sound {
namespace {

using core::alarm::Kind;
using core::alarm::Subject;

TEST(Message, OrdersComeBackAsTheyWent)
{
    std::vector<Order> orders{Silence{}, Volume{0.0F}, Volume{0.3F}, Volume{1.0F}, Ready{true}, Ready{false}};
    for (const Kind kind : {Kind::GetReady, Kind::Due, Kind::LimitNear, Kind::LimitPassed})
        for (const Subject subject : {Subject::Task, Subject::Look, Subject::Water})
            for (int insistence = 0; insistence <= core::alarm::mostInsistence; ++insistence)
                orders.emplace_back(Play{18446744073709551615U, {kind, subject, insistence}, insistence});
    for (const Order& order : orders) {
        const auto back = orderOf(lineOf(order));
        ASSERT_TRUE(back) << lineOf(order);
        EXPECT_EQ(*back, order) << lineOf(order);
    }
}

TEST(Message, ReportsComeBackAsTheyWent)
{
    for (const Report& report : {Report{Health::Starting}, Report{Health::Working}, Report{Health::NoDevice},
                                 Report{Health::Stalled}, Report{Heard{12}}}) {
        const auto back = reportOf(lineOf(report));
        ASSERT_TRUE(back) << lineOf(report);
        EXPECT_EQ(*back, report) << lineOf(report);
    }
}

TEST(Message, IsWrittenAsTheHeaderSays)
{
    EXPECT_EQ(lineOf(Order{Play{12, {Kind::Due, Subject::Look, 5}, 2}}), "play 12 due look 5 2");
    EXPECT_EQ(lineOf(Order{Silence{}}), "silence");
    EXPECT_EQ(lineOf(Order{Volume{0.8F}}), "volume 0.8");
    EXPECT_EQ(lineOf(Order{Ready{true}}), "ready yes");
    EXPECT_EQ(lineOf(Report{Health::NoDevice}), "health no-device");
    EXPECT_EQ(lineOf(Report{Heard{12}}), "heard 12");
}

TEST(Message, MeansNothingWhenItIsNotWhole)
{
    for (const char* line : {"",
                             " ",
                             "play",
                             "play 1 due look 0",
                             "play x due look 0 1",
                             "play 1 due look 0 4",
                             "play 1 due look 0 -1",
                             "play 1 due look 6 1",
                             "play 1 due look -1 1",
                             "play 1 due look high 1",
                             "play 1 due hair 0 1",
                             "play 1 dull look 0 1",
                             "play 1 due look 0 1 more",
                             "volume",
                             "volume 0,8",
                             "volume x",
                             "ready",
                             "ready maybe",
                             "silence now",
                             "play  1 due look 0 1",
                             "play 99999999999999999999 due look 0 1"})
        EXPECT_FALSE(orderOf(line)) << line;
    for (const char* line : {"", "health", "health well", "heard", "heard -1", "heard 1 2", "heard one"})
        EXPECT_FALSE(reportOf(line)) << line;
}

}  // namespace
}  // namespace app::sound
