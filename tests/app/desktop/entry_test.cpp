#include "app/desktop/setup/entry.h"

#include <gtest/gtest.h>

using app::desktop::lengthOf;
using core::measure::Seconds;

namespace {

TEST(LengthOf, ReadsMinutes)
{
    EXPECT_EQ(lengthOf(QStringLiteral("12")), Seconds{720});
    EXPECT_EQ(lengthOf(QStringLiteral(" 12 min ")), Seconds{720});
    EXPECT_EQ(lengthOf(QStringLiteral("0")), Seconds{0});
}

TEST(LengthOf, ReadsPartsOfMinutesWithPointOrComma)
{
    EXPECT_EQ(lengthOf(QStringLiteral("12.5")), Seconds{750});
    EXPECT_EQ(lengthOf(QStringLiteral("12,5")), Seconds{750});
    EXPECT_EQ(lengthOf(QStringLiteral("0.05")), Seconds{3});
}

TEST(LengthOf, ReadsMinutesAndSeconds)
{
    EXPECT_EQ(lengthOf(QStringLiteral("12:20")), Seconds{740});
}

TEST(LengthOf, RefusesWhatIsNoLength)
{
    for (const char* entry : {"", "soon", "-3", "12:60", "1e3", "12.5.1", "99999", "12:5"})
        EXPECT_FALSE(lengthOf(QString::fromLatin1(entry))) << entry;
}

}  // namespace
