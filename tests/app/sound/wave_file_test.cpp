#include "app/sound/wave_file.h"

#include "app/sound/limiter.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <QtEndian>

#include <sys/stat.h>

#include <cmath>
#include <fstream>
#include <iterator>

namespace app::sound {
namespace {

class WaveFileTest : public testing::Test {
protected:
    [[nodiscard]] std::filesystem::path path() const { return m_folder.path().toStdString() + "/heard.wav"; }

    [[nodiscard]] std::string bytes() const
    {
        std::ifstream file{path(), std::ios::binary};
        return {std::istreambuf_iterator<char>{file}, {}};
    }

    static quint32 wordAt(const std::string& bytes, std::size_t place)
    {
        return qFromLittleEndian<quint32>(bytes.data() + place);
    }

    static int sampleAt(const std::string& bytes, std::size_t frame)
    {
        return qFromLittleEndian<qint16>(bytes.data() + 44 + frame * 2);
    }

private:
    QTemporaryDir m_folder;
};

// The places of the fields are those of the RIFF specification, IBM and Microsoft, August 1991.
TEST_F(WaveFileTest, IsSixteenBitOneChannelAt48Kilohertz)
{
    auto file = WaveFile::open(path());
    ASSERT_TRUE(file) << file.error();
    file->add(0, std::vector<float>(480, 0.5F));
    ASSERT_TRUE(file->finish());

    const std::string all = bytes();
    ASSERT_EQ(all.size(), 44U + 960U);
    EXPECT_EQ(all.substr(0, 4), "RIFF");
    EXPECT_EQ(wordAt(all, 4), 36U + 960U);
    EXPECT_EQ(all.substr(8, 8), "WAVEfmt ");
    EXPECT_EQ(wordAt(all, 16), 16U);
    EXPECT_EQ(wordAt(all, 20), 0x00010001U);  // Plain samples, one channel.
    EXPECT_EQ(wordAt(all, 24), 48000U);
    EXPECT_EQ(wordAt(all, 28), 96000U);
    EXPECT_EQ(wordAt(all, 32), 0x00100002U);  // Two bytes a frame, sixteen bits.
    EXPECT_EQ(all.substr(36, 4), "data");
    EXPECT_EQ(wordAt(all, 40), 960U);
    EXPECT_EQ(sampleAt(all, 0), toSixteenBits(0.5F));
    EXPECT_EQ(sampleAt(all, 479), toSixteenBits(0.5F));
}

TEST_F(WaveFileTest, PutsASoundAtItsTimeWithSilenceBefore)
{
    auto file = WaveFile::open(path());
    ASSERT_TRUE(file) << file.error();
    file->add(1.5, std::vector<float>(10, -0.25F));
    ASSERT_TRUE(file->finish());

    const std::string all = bytes();
    ASSERT_EQ(all.size(), 44U + 2U * (72000U + 10U));
    EXPECT_EQ(sampleAt(all, 71999), 0);
    EXPECT_EQ(sampleAt(all, 72000), toSixteenBits(-0.25F));
}

TEST_F(WaveFileTest, MixesWhatOverlapsInAnyOrder)
{
    auto file = WaveFile::open(path());
    ASSERT_TRUE(file) << file.error();
    file->add(0.001, std::vector<float>(96, 0.2F));
    file->add(0.0, std::vector<float>(96, 0.3F));
    ASSERT_TRUE(file->finish());

    const std::string all = bytes();
    ASSERT_EQ(all.size(), 44U + 2U * 144U);
    EXPECT_EQ(sampleAt(all, 0), toSixteenBits(0.3F));
    EXPECT_NEAR(sampleAt(all, 48), toSixteenBits(0.5F), 1);
    EXPECT_EQ(sampleAt(all, 143), toSixteenBits(0.2F));
}

TEST_F(WaveFileTest, NeverClips)
{
    auto file = WaveFile::open(path());
    ASSERT_TRUE(file) << file.error();
    for (int i = 0; i < 6; ++i)
        file->add(0, std::vector<float>(10, 0.9F));
    ASSERT_TRUE(file->finish());
    EXPECT_LE(sampleAt(bytes(), 0), 32767);
    EXPECT_GT(sampleAt(bytes(), 0), toSixteenBits(untouched));
}

// Longer than the pieces that sounds are written in, so that a seam would show.
TEST_F(WaveFileTest, WritesALongSoundWithoutASeam)
{
    std::vector<float> ramp(100'000);
    for (std::size_t i = 0; i < ramp.size(); ++i)
        ramp[i] = 0.7F * static_cast<float>(i) / static_cast<float>(ramp.size());
    auto file = WaveFile::open(path());
    ASSERT_TRUE(file) << file.error();
    file->add(0.25, ramp);
    ASSERT_TRUE(file->finish());
    const std::string all = bytes();
    for (std::size_t i = 0; i < ramp.size(); ++i)
        ASSERT_EQ(sampleAt(all, 12000 + i), toSixteenBits(ramp[i])) << i;
}

TEST_F(WaveFileTest, IsWholeAfterEachSoundAlsoWithoutAnEnd)
{
    auto file = WaveFile::open(path());
    ASSERT_TRUE(file) << file.error();
    EXPECT_EQ(bytes().size(), 44U);
    file->add(1, std::vector<float>(10, 0.5F));
    const std::string all = bytes();
    EXPECT_EQ(wordAt(all, 40), all.size() - 44);
}

// 6 hours are 1.04 GB of samples; four short sounds in them must take next to nothing on the disk.
TEST_F(WaveFileTest, TakesNoRoomForTheSilenceOfALongRun)
{
    auto file = WaveFile::open(path());
    ASSERT_TRUE(file) << file.error();
    for (const double hour : {0.0, 2.0, 4.0, 6.0})
        file->add(hour * 3600, std::vector<float>(48000, 0.5F));
    ASSERT_TRUE(file->finish());

    struct stat found { };
    ASSERT_EQ(::stat(path().c_str(), &found), 0);
    EXPECT_EQ(found.st_size, 44 + 2L * 48000 * (6 * 3600 + 1));
    EXPECT_LT(found.st_blocks * 512L, 1'000'000);
}

TEST_F(WaveFileTest, EndsWhereTheRunEndedAlsoAfterSilence)
{
    auto file = WaveFile::open(path());
    ASSERT_TRUE(file) << file.error();
    file->add(0, std::vector<float>(48000, 0.5F));
    file->lengthenTo(2);
    file->lengthenTo(1);
    ASSERT_TRUE(file->finish());
    EXPECT_EQ(bytes().size(), 44U + 2U * 96000U);
    EXPECT_EQ(wordAt(bytes(), 40), 2U * 96000U);
}

TEST_F(WaveFileTest, ReplacesWhatWasThere)
{
    std::ofstream{path()} << std::string(5000, 'x');
    auto file = WaveFile::open(path());
    ASSERT_TRUE(file) << file.error();
    ASSERT_TRUE(file->finish());
    EXPECT_EQ(bytes().size(), 44U);
}

TEST_F(WaveFileTest, SaysWhereItCannotWrite)
{
    const auto nowhere = WaveFile::open(path().parent_path() / "missing" / "heard.wav");
    ASSERT_FALSE(nowhere);
    EXPECT_NE(nowhere.error().find("missing/heard.wav"), std::string::npos) << nowhere.error();
    const auto folder = WaveFile::open(path().parent_path());
    ASSERT_FALSE(folder);
    EXPECT_NE(folder.error().find("ordinary file"), std::string::npos) << folder.error();
}

TEST_F(WaveFileTest, TellsAtTheEndWhatItCouldNotHold)
{
    for (const double late : {-1.0, WaveFile::mostSeconds + 1, std::nan(""), 1e300}) {
        auto file = WaveFile::open(path());
        ASSERT_TRUE(file) << file.error();
        file->add(0, std::vector<float>(10, 0.5F));
        file->add(late, std::vector<float>(10, 0.5F));
        const auto end = file->finish();
        ASSERT_FALSE(end) << late;
        EXPECT_NE(end.error().find("12 h 25 min"), std::string::npos) << end.error();
        EXPECT_EQ(bytes().size(), 44U + 20U);
    }
}

// A pipe or a device has no places to go back to.
TEST(WaveFile, RefusesWhatIsNoFile)
{
    const auto device = WaveFile::open("/dev/full");
    ASSERT_FALSE(device);
    EXPECT_NE(device.error().find("/dev/full"), std::string::npos);
}

}  // namespace
}  // namespace app::sound
