#include "tests/app/sound/capture/private_sound.h"

#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>
#include <vector>

// The speech service of the machine, if there is one, heard from a sound device. Not what it says, but that
// it speaks, for as long as words take, and is quiet when it is told to be.

namespace {

using namespace std::chrono_literals;

constexpr std::size_t rate = 48'000;
constexpr std::size_t window = rate / 20;

/// For how many seconds something is heard, in windows of a twentieth of one.
double secondsHeard(const std::vector<float>& samples)
{
    constexpr double quiet = 0.01;  // -40 dB of what a device takes: what is not speech is nothing at all.
    std::size_t heard = 0;
    for (std::size_t from = 0; from + window <= samples.size(); from += window) {
        double sum = 0;
        for (std::size_t i = from; i < from + window; ++i)
            sum += static_cast<double>(samples[i]) * static_cast<double>(samples[i]);
        heard += std::sqrt(sum / window) > quiet ? 1U : 0U;
    }
    return static_cast<double>(heard * window) / rate;
}

class CapturedSpeech : public testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_FALSE(QStandardPaths::findExecutable(QStringLiteral("speech-dispatcher")).isEmpty())
            << "A speech service is needed for this test; .ci/packages names one.";
        ASSERT_TRUE(m_sound.startServer() && m_sound.addDevice());
    }

    /// What is heard of `words` in `language`, and of a "stop" after so long.
    double heardOf(const QString& language, const QByteArray& words,
                   std::optional<std::chrono::milliseconds> stopAfter = {})
    {
        capture::Recording recording;
        EXPECT_TRUE(recording.begun());
        QProcess speech;
        speech.start(QStringLiteral(PROGRAM_DIR "/basinbell-speech"), {language});
        speech.write("say " + words + "\n");
        EXPECT_TRUE(capture::waitUntil([&] { return speech.bytesAvailable() > 0; }, 20s));
        EXPECT_EQ(speech.readAllStandardOutput(), "voice yes\n");
        capture::waitFor(stopAfter.value_or(7000ms));
        if (stopAfter) {
            speech.write("stop\n");
            capture::waitFor(7000ms);
        }
        speech.closeWriteChannel();
        EXPECT_TRUE(speech.waitForFinished(5000));
        return secondsHeard(recording.endAsSamples());
    }

private:
    capture::PrivateSound m_sound;
};

TEST_F(CapturedSpeech, IsHeardInEveryLanguageOfTheWindow)
{
    for (const auto& [language, words] :
         {std::pair{"en-GB", "Ends: strand test"}, std::pair{"de-DE", "Spitzen: Str\u00e4hnentest"},
          std::pair{"fr-FR", "Pointes\u00a0: test de m\u00e8che"},
          std::pair{"es-ES", "Puntas: prueba de mecha"}}) {
        const double heard = heardOf(QLatin1String{language}, words);
        // Four or five words: nobody says them in half a second, or needs five.
        EXPECT_GT(heard, 0.5) << language;
        EXPECT_LT(heard, 5.0) << language;
    }
}

TEST_F(CapturedSpeech, IsQuietWhenItIsToldToBe)
{
    QByteArray words;
    for (int i = 0; i < 12; ++i)
        words += "Root, Mids, Ends: water on. ";
    const double heard = heardOf(QStringLiteral("en-GB"), words, 3000ms);
    EXPECT_GT(heard, 0.5);
    EXPECT_LT(heard, 4.0) << "Said in full it takes well over ten seconds.";
}

}  // namespace
