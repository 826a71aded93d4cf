#include "app/command/input.h"

#include "app/session/time_zones.h"

#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

namespace app::command {
namespace {

using core::measure::Instant;
using testing::HasSubstr;

const session::QtTimeZones zones;

Instant utc(int month, int day, int hour, int minute)
{
    return std::chrono::sys_days{std::chrono::year{2026} / month / day} + std::chrono::hours{hour}
    + std::chrono::minutes{minute};
}

tl::expected<Instant, std::string> read(const char* text)
{
    // 23:30 UTC on 30 June is already 1 July in London.
    return readMoment(QString::fromUtf8(text), "Europe/London", zones, utc(6, 30, 23, 30));
}

std::string refusalOf(const char* text)
{
    const auto moment = read(text);
    return moment ? std::string{"none"} : moment.error();
}

TEST(Moment, IsReadByTheClocksOfTheService)
{
    EXPECT_EQ(read("14:30"), utc(7, 1, 13, 30));
    EXPECT_EQ(read("9:05"), utc(7, 1, 8, 5));
    EXPECT_EQ(read("14:30:15"), utc(7, 1, 13, 30) + std::chrono::seconds{15});
    EXPECT_EQ(read("2026-03-14T14:30"), utc(3, 14, 14, 30));
    EXPECT_EQ(read("2026-03-14 14:30"), utc(3, 14, 14, 30));
}

TEST(Moment, MayBearItsDistanceFromUtc)
{
    EXPECT_EQ(read("2026-10-25T01:30+01:00"), utc(10, 25, 0, 30));
    EXPECT_EQ(read("2026-10-25T01:30+00:00"), utc(10, 25, 1, 30));
    EXPECT_EQ(read("2026-10-25T01:30Z"), utc(10, 25, 1, 30));
    EXPECT_EQ(read("2026-01-15T08:30-03:30"), utc(1, 15, 12, 0));
}

TEST(Moment, IsRefusedWhereTheClocksSkipOrRepeatIt)
{
    EXPECT_THAT(read("2026-03-29T01:30").error(), HasSubstr("skip that time"));
    EXPECT_THAT(read("2026-10-25T01:30").error(), HasSubstr("twice"));
}

TEST(Moment, IsRefusedWhenItIsNone)
{
    for (const char* const text :
         {"", "now", "25:00", "14", "14:60", "2026-02-30T10:00", "14:30+1", "2026-03-14", "1e9"})
        EXPECT_THAT(refusalOf(text), HasSubstr("it must be a time such as")) << text;
}

TEST(ServiceFile, IsRefusedWithItsNameOnEachLine)
{
    std::istringstream in{R"({"basinbell": 1, "nme": 1, "coats": 7})"};
    const auto read = readServiceFile(QStringLiteral("-"), in, zones);
    ASSERT_FALSE(read.has_value());
    EXPECT_GE(read.error().size(), 2u) << "every problem in one go";
    for (const std::string& line : read.error())
        EXPECT_TRUE(line.starts_with("standard input: ")) << line;
}

TEST(ServiceFile, SaysWhyItCannotBeRead)
{
    std::istringstream in;
    const QTemporaryDir folder;
    EXPECT_THAT(readServiceFile(QStringLiteral("/no/such/file"), in, zones).error().front(),
                HasSubstr("No such file"));
    EXPECT_THAT(readServiceFile(folder.path(), in, zones).error().front(), HasSubstr("a folder"));
}

}  // namespace
}  // namespace app::command
