#include "app/speech/speech_player.h"

#include <QDeadlineTimer>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

// With a program that stands in for the one that speaks, and the real one where nothing can be spoken with.

namespace app::speech {
namespace {

class Speaking : public testing::Test {
protected:
    QString path(const char* name) const { return folder.filePath(QLatin1String{name}); }

    /// Writes down what it was told, and reports as it is told to.
    QString program(const char* report)
    {
        QFile script{path("speech")};
        EXPECT_TRUE(script.open(QIODevice::WriteOnly));
        script.write("#!/bin/sh\necho \"$1\" >>'" + path("language").toUtf8()
                     + "'\nwhile read -r line; do echo \"$line\" >>'" + path("told").toUtf8()
                     + "'; case \"$line\" in say*) " + report + ";; esac; done\n");
        script.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
        return script.fileName();
    }

    QByteArray contents(const char* name) const
    {
        QFile file{path(name)};
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{};
    }

    template <typename Condition>
    static bool wait(const Condition& condition)
    {
        const QDeadlineTimer deadline{8000};
        while (!condition() && !deadline.hasExpired())
            QTest::qWait(5);
        return condition();
    }

    QTemporaryDir folder;
};

TEST_F(Speaking, HandsOnWhatIsSaidInOneLineEach)
{
    SpeechPlayer player{program("echo voice yes"), QStringLiteral("en-GB")};
    EXPECT_FALSE(player.hasVoice());
    player.say(QStringLiteral("Ends:\nstrand test"));
    player.stop();
    ASSERT_TRUE(wait([&] { return contents("told") == "say Ends: strand test\nstop\n"; }));
    EXPECT_TRUE(wait([&] { return player.hasVoice() == true; }));
    EXPECT_EQ(contents("language"), "en-GB\n");
}

TEST_F(Speaking, KnowsWhenThereIsNoVoice)
{
    SpeechPlayer player{program("echo voice no"), QStringLiteral("en-GB")};
    player.say(QStringLiteral("Ends: strand test"));
    EXPECT_TRUE(wait([&] { return player.hasVoice() == false; }));
}

TEST_F(Speaking, StartsTheProgramAgainWithTheNextWordWhenItEnded)
{
    SpeechPlayer player{program("echo voice yes; exit"), QStringLiteral("en-GB")};
    player.say(QStringLiteral("one"));
    ASSERT_TRUE(wait([&] { return player.hasVoice() == false; }));
    player.say(QStringLiteral("two"));
    EXPECT_TRUE(wait([&] { return contents("told") == "say one\nsay two\n"; }));
}

TEST_F(Speaking, DoesWithoutTheProgram)
{
    SpeechPlayer player{path("nowhere"), QStringLiteral("en-GB")};
    player.say(QStringLiteral("Ends: strand test"));
    EXPECT_TRUE(wait([&] { return player.hasVoice() == false; }));
    player.stop();
}

// Whoever says something must not wait for it: a program that takes no line is no reason to.
TEST_F(Speaking, NeverWaits)
{
    QFile script{path("deaf")};
    ASSERT_TRUE(script.open(QIODevice::WriteOnly));
    script.write("#!/bin/sh\nexec sleep 60\n");
    script.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    script.close();
    SpeechPlayer player{path("deaf"), QStringLiteral("en-GB")};
    player.say(QStringLiteral("first"));
    const auto begun = std::chrono::steady_clock::now();
    for (int word = 0; word < 1000; ++word) {
        player.say(QStringLiteral("and another"));
        player.stop();
    }
    EXPECT_LT(std::chrono::steady_clock::now() - begun, std::chrono::milliseconds{500});
}

// The real program, and an address at which no speech service is.
TEST_F(Speaking, TheProgramSaysWhenNoServiceCanBeReached)
{
    qputenv("SPEECHD_ADDRESS", "unix_socket:/nowhere/at/all");
    SpeechPlayer player{QStringLiteral(PROGRAM_DIR "/basinbell-speech"), QStringLiteral("en-GB")};
    player.say(QStringLiteral("Ends: strand test"));
    EXPECT_TRUE(wait([&] { return player.hasVoice() == false; }));
    qunsetenv("SPEECHD_ADDRESS");
}

}  // namespace
}  // namespace app::speech
