#include "app/sound/alarm_player.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <memory>

// The player against a stand-in for the sound program that writes down its orders and says what the test
// wants.

namespace app::sound {
namespace {

using core::alarm::Alarm;
using core::alarm::Kind;
using core::alarm::Subject;

class AlarmPlayerTest : public testing::Test {
protected:
    /// `first` is said at the start; later words are what the test puts into the file `say`.
    void writeProgram(const QByteArray& first)
    {
        QFile file{path("program")};
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write("#!/bin/bash\ncd \"$(dirname \"$0\")\"\necho begun >>orders\n" + first
                   + "\nwhile IFS= read -r line; do echo \"$line\" >>orders\n"
                     "  [ -f say ] && cat say && rm say\n[ -f die ] && rm die && exit 1\ndone\n");
        file.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    }

    void start() { m_player = std::make_unique<AlarmPlayer>(path("program")); }

    void put(const char* name, const QByteArray& text) const
    {
        QFile file{path(name)};
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
    }

    [[nodiscard]] int orders(const QByteArray& line) const
    {
        QFile file{path("orders")};
        if (!file.open(QIODevice::ReadOnly))
            return 0;
        return static_cast<int>(file.readAll().split('\n').count(line));
    }

    [[nodiscard]] bool becomes(Health health) const
    {
        return QTest::qWaitFor([&] { return m_player->health() == health; }, 8000);
    }

    [[nodiscard]] bool ordered(const QByteArray& line, int times = 1) const
    {
        return QTest::qWaitFor([&] { return orders(line) >= times; }, 8000);
    }

    [[nodiscard]] QString path(const char* name) const
    {
        return m_folder.path() + QLatin1Char('/') + QLatin1String(name);
    }

    static Alarm alarmOf(Kind kind, int insistence = 0)
    {
        Alarm alarm;
        alarm.kind = kind;
        alarm.insistence = insistence;
        return alarm;
    }

    std::unique_ptr<AlarmPlayer> m_player;

private:
    QTemporaryDir m_folder;
};

TEST_F(AlarmPlayerTest, OrdersThePatternOfTheAlarm)
{
    writeProgram("echo health working");
    start();
    ASSERT_TRUE(becomes(Health::Working));
    Alarm alarm = alarmOf(Kind::LimitNear, 2);
    alarm.subject = Subject::Water;
    m_player->sound(alarm);
    EXPECT_TRUE(ordered("play 1 limit-near water 0 2"));
    m_player->playCheck(Kind::Due, Subject::Look);
    EXPECT_TRUE(ordered("play 2 due look 0 0"));
    m_player->silence();
    EXPECT_TRUE(ordered("silence"));
    m_player->setVolume(7);
    EXPECT_EQ(m_player->volume(), 1);
    m_player->setVolume(0.5);
    EXPECT_TRUE(ordered("volume 0.5"));
}

TEST_F(AlarmPlayerTest, SaysInPlainWordsWhenThereIsNoProgram)
{
    start();
    QSignalSpy changed{m_player.get(), &AlarmPlayer::healthChanged};
    ASSERT_TRUE(becomes(Health::NoDevice));
    EXPECT_TRUE(m_player->healthText().contains(path("program"))) << qPrintable(m_player->healthText());
    m_player->sound(alarmOf(Kind::Due));  // Nothing happens, and nothing breaks.
    m_player->silence();
}

TEST_F(AlarmPlayerTest, StartsTheProgramAfreshWhileThereIsNoDevice)
{
    writeProgram("echo health no-device");
    start();
    ASSERT_TRUE(becomes(Health::NoDevice));
    EXPECT_FALSE(m_player->healthText().isEmpty());
    writeProgram("echo health working");
    ASSERT_TRUE(becomes(Health::Working));
    EXPECT_TRUE(m_player->healthText().isEmpty());
    EXPECT_EQ(orders("begun"), 2);
}

TEST_F(AlarmPlayerTest, TellsAFreshProgramWhatTheOldOneKnew)
{
    writeProgram("echo health working");
    start();
    ASSERT_TRUE(becomes(Health::Working));
    m_player->keepReady(true);
    m_player->setVolume(0.25);
    ASSERT_TRUE(ordered("volume 0.25"));
    put("die", "");
    m_player->silence();
    EXPECT_TRUE(ordered("volume 0.25", 2));
    EXPECT_TRUE(ordered("ready yes", 2));
}

TEST_F(AlarmPlayerTest, MakesUpOnceForWhatWasMissedAndStillStands)
{
    writeProgram("echo health no-device");
    start();
    ASSERT_TRUE(becomes(Health::NoDevice));
    const Alarm standing = alarmOf(Kind::Due, 1);
    const Alarm answered = alarmOf(Kind::LimitPassed);
    m_player->setStanding({answered, standing});
    m_player->sound(standing);
    m_player->sound(standing);
    m_player->sound(answered);
    m_player->setStanding({alarmOf(Kind::GetReady), alarmOf(Kind::Due, 3)});
    writeProgram("echo health working");
    ASSERT_TRUE(becomes(Health::Working));
    EXPECT_TRUE(ordered("play 4 due task 0 3"));
    m_player->silence();
    ASSERT_TRUE(ordered("silence"));
    QFile all{path("orders")};
    ASSERT_TRUE(all.open(QIODevice::ReadOnly));
    EXPECT_EQ(all.readAll().count("play"), 1);
}

TEST_F(AlarmPlayerTest, SoundsAgainWhatTheProgramDidNotConfirmBeforeItEnded)
{
    writeProgram("echo health working");
    start();
    ASSERT_TRUE(becomes(Health::Working));
    m_player->setStanding({alarmOf(Kind::Due), alarmOf(Kind::LimitNear)});
    put("say", "heard 1\n");
    m_player->sound(alarmOf(Kind::Due));
    ASSERT_TRUE(ordered("play 1 due task 0 0"));
    QTest::qWait(100);
    put("die", "");
    m_player->sound(alarmOf(Kind::LimitNear));
    EXPECT_TRUE(ordered("play 3 limit-near task 0 0"));
    EXPECT_EQ(orders("play 1 due task 0 0"), 1);
    EXPECT_EQ(orders("play 3 due task 0 0"), 0);
}

}  // namespace
}  // namespace app::sound
