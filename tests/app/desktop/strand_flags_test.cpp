#include "app/desktop/look/strand_flags.h"

#include "tests/app/desktop/strand_moments.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace app::desktop;
using app::view::Instant;
using strand_moments::atMinute;

namespace {

app::view::StrandPicture pictureWith(std::vector<int> waters, std::optional<int> now)
{
    app::view::StrandPicture picture;
    picture.strands.resize(2);
    for (const int water : waters)
        picture.rinseLines.push_back({atMinute(water), "All"});
    if (now)
        picture.now = atMinute(*now);
    picture.reach = {atMinute(0), atMinute(60)};
    return picture;
}

std::vector<StrandFlags::Flag> flags(const app::view::StrandPicture& picture)
{
    const StrandGeometry geometry{picture, QRectF{0, 0, 900, 300}};
    return StrandFlags{picture,
                       geometry,
                       {[](Instant) { return QStringLiteral("Water 14:17"); }, QStringLiteral("Now 14:16")}}
        .flags();
}

/// Or all but: between two there is a gap.
bool holdsPole(const StrandFlags::Flag& flag)
{
    constexpr double gap = 4;
    return flag.box.left() - gap <= flag.pole && flag.pole <= flag.box.right() + gap;
}

TEST(StrandFlags, HangOverTheirPolesWhereThereIsRoom)
{
    for (const auto& flag : flags(pictureWith({50}, 10)))
        EXPECT_NEAR(flag.box.center().x(), flag.pole, 1) << flag.text.toStdString();
}

// Minute by minute, up to water, through it and past it.
TEST(StrandFlags, NeverCoverOneAnother)
{
    for (const auto& waters : {std::vector<int>{30}, {30, 40}, {30, 36, 42}, {2}, {58}}) {
        for (int now = 0; now <= 60; ++now) {
            const auto hung = flags(pictureWith(waters, now));
            ASSERT_FALSE(hung.empty());
            EXPECT_TRUE(hung.back().isNow);
            for (std::size_t one = 0; one < hung.size(); ++one)
                for (std::size_t other = one + 1; other < hung.size(); ++other)
                    EXPECT_FALSE(hung[one].box.intersects(hung[other].box)) << now;
        }
    }
}

TEST(StrandFlags, BothStandAtTheirPolesShortlyBeforeWaterAndAfterIt)
{
    for (const int now : {27, 29, 30, 31, 33}) {
        const auto hung = flags(pictureWith({30}, now));
        ASSERT_EQ(hung.size(), 2u) << now;
        for (const auto& flag : hung)
            EXPECT_TRUE(holdsPole(flag)) << flag.text.toStdString() << " at " << now;
    }
}

TEST(StrandFlags, CoverATextOnlyWhereTheyAre)
{
    const auto shown = pictureWith({30}, {});
    const StrandGeometry geometry{shown, QRectF{0, 0, 900, 300}};
    const StrandFlags hung{shown, geometry, {[](Instant) { return QStringLiteral("Water 14:17"); }, {}}};
    const QRectF water = hung.flags().at(0).box;
    EXPECT_TRUE(hung.cover(water));
    EXPECT_FALSE(hung.cover(water.translated(water.width() + 1, 0)));
}

}  // namespace
