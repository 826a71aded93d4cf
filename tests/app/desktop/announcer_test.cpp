#include "app/desktop/announcer.h"

#include "tests/app/desktop/fake_voice.h"

#include <QDeadlineTimer>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace app::desktop {
namespace {

using core::alarm::Alarm;
using core::alarm::Call;
using core::alarm::Kind;
using core::alarm::Subject;
using core::measure::Instant;
using core::measure::Seconds;
using testing::ElementsAre;
using testing::IsEmpty;
using namespace std::chrono_literals;

constexpr Instant noon{Seconds{1'800'000'000}};

Alarm alarmOf(std::size_t zone, int insistence = 0, Kind kind = Kind::Due)
{
    Alarm alarm;
    alarm.kind = kind;
    alarm.subject = Subject::Look;
    alarm.task.item = zone;
    alarm.insistence = insistence;
    return alarm;
}

class Announcing : public testing::Test {
protected:
    void waitUntilSaid(std::size_t count)
    {
        QDeadlineTimer deadline{5000};
        while (voice.said.size() < count && !deadline.hasExpired())
            QTest::qWait(5);
    }

    FakeVoice voice;
    Announcer announcer{voice};
    const Call ends{{alarmOf(1)}};
};

TEST_F(Announcing, SpeaksOnceTheSoundIsOver)
{
    const auto begun = std::chrono::steady_clock::now();
    announcer.called(ends, QStringLiteral("Ends: strand test"), noon);
    EXPECT_THAT(voice.said, IsEmpty());
    waitUntilSaid(1);
    EXPECT_THAT(voice.said, ElementsAre(QStringLiteral("Ends: strand test")));
    EXPECT_GE(std::chrono::steady_clock::now() - begun, Announcer::lengthOf(ends));
}

// Two sounds at once: nothing is said before the longer one is over, and both are said.
TEST_F(Announcing, WaitsForAllSounds)
{
    const Call limit{{alarmOf(0, 0, Kind::LimitPassed)}};
    const auto begun = std::chrono::steady_clock::now();
    announcer.called(limit, QStringLiteral("Root is past its limit"), noon);
    announcer.called(ends, QStringLiteral("Ends: strand test"), noon);
    waitUntilSaid(2);
    EXPECT_THAT(voice.said,
                ElementsAre(QStringLiteral("Root is past its limit"), QStringLiteral("Ends: strand test")));
    EXPECT_GE(std::chrono::steady_clock::now() - begun, Announcer::lengthOf(limit));
}

TEST_F(Announcing, IsQuietWhenASoundBegins)
{
    announcer.called(ends, QStringLiteral("Ends: strand test"), noon);
    waitUntilSaid(1);
    const int stops = voice.stops;
    announcer.called(ends, QStringLiteral("Ends: strand test"), noon + Seconds{20});
    EXPECT_EQ(voice.stops, stops + 1);
}

TEST_F(Announcing, SpeaksAgainWhenItGrowsOrAnotherJoinsOrAfterAMinute)
{
    const auto saidAt = [&](int second, const Call& call) {
        const std::size_t before = voice.said.size();
        announcer.called(call, QStringLiteral("said"), noon + Seconds{second});
        QTest::qWait(static_cast<int>(Announcer::lengthOf(call).count()) + 550);
        return voice.said.size() - before;
    };
    EXPECT_EQ(saidAt(0, ends), 1U);
    EXPECT_EQ(saidAt(20, ends), 0U);
    EXPECT_EQ(saidAt(40, Call{{alarmOf(1, 1)}}), 1U);
    const Call both{{alarmOf(1, 1), alarmOf(0, 0)}};
    EXPECT_EQ(saidAt(60, both), 1U);
    EXPECT_EQ(saidAt(80, both), 0U);
    EXPECT_EQ(saidAt(120, both), 1U);
}

// Answered or muted, there is nothing to say of it any more; of the other there is.
TEST_F(Announcing, StopsWithTheAlarm)
{
    announcer.called(ends, QStringLiteral("Ends: strand test"), noon);
    announcer.called(Call{{alarmOf(0, 0, Kind::LimitNear)}}, QStringLiteral("Root nears its limit"), noon);
    announcer.setAudible({alarmOf(0, 0, Kind::LimitNear)});
    EXPECT_GE(voice.stops, 1);
    waitUntilSaid(1);
    QTest::qWait(50);
    EXPECT_THAT(voice.said, ElementsAre(QStringLiteral("Root nears its limit")));
}

TEST_F(Announcing, SaysNothingWhenItIsOff)
{
    announcer.setOn(false);
    announcer.called(ends, QStringLiteral("Ends: strand test"), noon);
    QTest::qWait(static_cast<int>(Announcer::lengthOf(ends).count()) + 600);
    EXPECT_THAT(voice.said, IsEmpty());
}

}  // namespace
}  // namespace app::desktop
