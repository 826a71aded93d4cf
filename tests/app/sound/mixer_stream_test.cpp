#include "app/sound/mixer_stream.h"

#include "app/sound/limiter.h"

#include <gtest/gtest.h>

#include <QtEndian>

namespace app::sound {
namespace {

TEST(MixerStream, GivesTheSameSamplesToBothSides)
{
    MixerStream stream;
    stream.play(1, {0.5F, -0.25F});
    const QByteArray bytes = stream.read(3 * MixerStream::frameBytes);
    ASSERT_EQ(bytes.size(), 3 * MixerStream::frameBytes);
    const auto sample = [&](int place) { return qFromLittleEndian<qint16>(bytes.constData() + 2 * place); };
    EXPECT_EQ(sample(0), toSixteenBits(0.5F));
    EXPECT_EQ(sample(1), toSixteenBits(0.5F));
    EXPECT_EQ(sample(2), toSixteenBits(-0.25F));
    EXPECT_EQ(sample(3), toSixteenBits(-0.25F));
    EXPECT_EQ(sample(4), 0);
}

TEST(MixerStream, NeverEndsAndGivesWholeFramesOnly)
{
    MixerStream stream;
    EXPECT_FALSE(stream.atEnd());
    stream.offer(480);
    EXPECT_EQ(stream.read(4 * 480 + 3).size(), 4 * 480);
    EXPECT_FALSE(stream.atEnd());
    EXPECT_EQ(stream.taken(), 480U);
    EXPECT_GT(stream.bytesAvailable(), 1'000'000);
}

TEST(MixerStream, RunsDryWhereNothingSoundsAndNothingIsOffered)
{
    MixerStream stream;
    EXPECT_EQ(stream.read(4 * 480), QByteArray{});
    stream.offer(500);
    EXPECT_EQ(stream.read(4 * 480), QByteArray(4 * 480, '\0'));
    EXPECT_EQ(stream.offered(), 20U);
    EXPECT_EQ(stream.read(4 * 480), QByteArray(4 * 480, '\0'));
    EXPECT_EQ(stream.offered(), 0U);
    EXPECT_EQ(stream.read(4 * 480), QByteArray{});
    EXPECT_EQ(stream.taken(), 960U);
    EXPECT_FALSE(stream.atEnd());
}

// Until its ticket is fetched: the device has to take more than its last sample before it was heard.
TEST(MixerStream, DoesNotRunDryBeforeASoundIsKnownToBeHeard)
{
    MixerStream stream;
    stream.play(1, std::vector<float>(10, 0.1F));
    EXPECT_EQ(stream.read(4 * 20).size(), 4 * 20);
    EXPECT_EQ(stream.read(4 * 20).size(), 4 * 20);
    EXPECT_EQ(stream.endedBy(40), std::vector<std::uint64_t>{1});
    EXPECT_EQ(stream.read(4 * 20), QByteArray{});
}

TEST(MixerStream, WakesTheDeviceForASoundAndForAnOffer)
{
    MixerStream stream;
    int woken = 0;
    QObject::connect(&stream, &QIODevice::readyRead, [&] { ++woken; });
    stream.offer(1);
    EXPECT_EQ(woken, 1);
    stream.play(1, {0.1F});
    EXPECT_EQ(woken, 2);
}

TEST(MixerStream, SaysWhichSoundsHadEndedByAFrame)
{
    MixerStream stream;
    stream.play(1, std::vector<float>(10, 0.1F));
    stream.play(2, std::vector<float>(25, 0.1F));
    stream.read(4 * 20);
    stream.read(4 * 20);
    EXPECT_TRUE(stream.busy());
    EXPECT_EQ(stream.endedBy(19), std::vector<std::uint64_t>{});
    EXPECT_EQ(stream.endedBy(20), std::vector<std::uint64_t>{1});
    EXPECT_EQ(stream.endedBy(40), std::vector<std::uint64_t>{2});
    EXPECT_EQ(stream.endedBy(1000), std::vector<std::uint64_t>{});
    EXPECT_FALSE(stream.busy());
}

TEST(MixerStream, ForgetsWhatPlays)
{
    MixerStream stream;
    stream.play(1, std::vector<float>(10, 0.1F));
    stream.play(2, std::vector<float>(100, 0.1F));
    stream.offer(100);
    stream.read(4 * 20);
    stream.forget();
    EXPECT_FALSE(stream.busy());
    EXPECT_EQ(stream.offered(), 0U);
    EXPECT_EQ(stream.read(4), QByteArray{});
    EXPECT_EQ(stream.endedBy(1000), std::vector<std::uint64_t>{});
}

TEST(MixerStream, CannotBeWrittenTo)
{
    MixerStream stream;
    EXPECT_FALSE(stream.isWritable());
}

}  // namespace
}  // namespace app::sound
