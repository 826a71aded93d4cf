#include "tests/app/sound/capture/private_sound.h"
#include "tests/end_to_end/desktop/expected_alarms.h"
#include "tests/end_to_end/desktop/kept_run.h"
#include "tests/end_to_end/desktop/room.h"

#include <QFile>
#include <QTemporaryDir>

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Two heads in one room, led through what a screen reader is told, with all that gets in the way.

namespace {

using core::measure::Instant;
using core::measure::Seconds;
using core::run::FactKind;
using desk::Expected;
using testing::HasSubstr;

using desk::named;
using desk::speed;
using desk::speedText;

/// Two zones, rinsed together; the second is looked at.
QByteArray headNamed(const char* name)
{
    return QByteArray{R"({ "basinbell": 1, "name": ")"} + name + R"(",
  "head": { "name": ")"
        + name + R"(", "kind": "wig" },
  "crew": { "hands": [{ "name": "Wig room" }], "basins": 1 },
  "coats": [{
    "name": "Only",
    "bowls": [{ "name": "Dark", "pot_life": 90 }, { "name": "Pale", "pot_life": 90 }],
    "rinse": [{ "name": "All together", "length": 4 }],
    "zones": [
      { "name": "Root", "bowl": "Dark", "group": "All together", "apply": { "quickest": 3, "usual": 5, "slowest": 9 },
        "develop": { "least": 15, "target": 25, "most": 45 } },
      { "name": "Ends", "bowl": "Pale", "group": "All together", "apply": { "quickest": 2, "usual": 4, "slowest": 8 },
        "develop": { "least": 5, "target": 15, "most": 35 },
        "looks": { "first": 6, "every": 6, "length": 1, "until": 12 }, "after": ["Root"] }
    ]
  }]
})";
}

/// What the program was told and sounded between two of its starts.
struct Life {
    double began = 0;  ///< Of the run, in seconds of the recording, by this life's clock.
    Instant from;
    Instant until;
    std::size_t facts = 0;  ///< So many are known at its end.

    [[nodiscard]] double at(Instant runBegan, Instant moment) const
    {
        return began + static_cast<double>((moment - runBegan).count()) / speed;
    }
};

class TwoHeads : public testing::Test {
public:
    void SetUp() override
    {
        ASSERT_TRUE(reader.isUp()) << "dbus-daemon and at-spi2-core are needed for this test";
        ASSERT_TRUE(sound.startServer() && sound.addDevice());
        ASSERT_TRUE(screen.isUp());
        for (const char* name : {"Duke", "Porter"}) {
            files << folder.filePath(QString::fromLatin1(name) + QStringLiteral(".json"));
            QFile file{files.back()};
            ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write(headNamed(name)) > 0);
        }
    }

    QStringList arguments(const QStringList& more) const
    {
        return QStringList{QStringLiteral("--speed"), speedText, QStringLiteral("--data"), data.path()}
        + more;
    }

    /// From Set-up to running lanes.
    void start()
    {
        ASSERT_TRUE(screen.start(arguments(files)));
        ASSERT_TRUE(reader.waitFor(QStringLiteral("Start"), QStringLiteral("push button"), 30000))
            << room.all();
        ASSERT_TRUE(room.pressNamed(QStringLiteral("Sound: not checked"))) << room.all();
        ASSERT_TRUE(room.pressNamed(QStringLiteral("Listen"))) << room.all();
        for (int tries = 0; tries < 40; ++tries) {
            capture::waitFor(std::chrono::milliseconds{300});
            room.pressNamed(QStringLiteral("I hear them"));
            room.pressNamed(QStringLiteral("Start"));  // Does nothing until the plan is there.
            if (!room.lanes().isEmpty())
                return;
        }
        FAIL() << "The lanes did not start.\n" << room.all();
    }

    void readTheLanes();
    void interruptApplying();
    void putAnAnswerRight();
    void rinseEarly();
    void killAndGoOn();
    void goOnToTheEnd();
    Life firstLife(const desk::Kept& kept, const capture::Recording& recording) const;
    Life secondLife(const desk::Kept& kept, const capture::Recording& recording);

    /// Answers all that is asked until `wanted` is asked for, or a run is done; what is asked then.
    QString answerUntil(const QString& wanted)
    {
        const auto most = capture::Clock::now() + std::chrono::minutes{6};
        while (capture::Clock::now() < most) {
            const QString step = room.waitForStep(120000);
            capture::waitFor(std::chrono::milliseconds{250});
            if (step.contains(wanted) || !step.startsWith(QLatin1String{"Now: "}))
                return step;
            EXPECT_TRUE(room.answer()) << room.all();
        }
        return {};
    }

    QTemporaryDir folder;
    QTemporaryDir data;
    QStringList files;
    desk::ScreenReader reader;
    capture::PrivateSound sound;
    desk::Screen screen;
    desk::Room room{screen, reader};

    capture::Clock::time_point killed;
    std::vector<capture::Clock::time_point> pressedBefore;
    std::size_t keptBefore = 0;
};

/// How many alarms of this life had to be heard; each that was not is a failure.
std::size_t expectHeard(const desk::Kept& kept, const Life& life, const std::vector<capture::Heard>& heard)
{
    constexpr double tolerance = 0.3;
    std::size_t alarms = 0;
    for (const Expected& alarm : desk::alarmsOf(
             kept.setup, {kept.facts.begin(), kept.facts.begin() + static_cast<std::ptrdiff_t>(life.facts)},
             life.until)) {
        if (alarm.at <= life.from)
            continue;
        ++alarms;
        const double at = life.at(kept.setup.began, alarm.at);
        double nearest = 1e9;  // Seconds from when it should have been heard.
        for (const capture::Heard& found : heard)
            if (found.voice == alarm.voice && found.kind == alarm.kind && found.subject == alarm.subject
                && std::abs(found.at - at) < std::abs(nearest))
                nearest = found.at - at;
        EXPECT_LT(std::abs(nearest), tolerance) << named(alarm, at) << "; " << desk::around(heard, at);
    }
    return alarms;
}

void TwoHeads::readTheLanes()
{
    ASSERT_EQ(room.lanes().size(), 4) << room.all();
    for (const char* head : {"Duke", "Porter"})
        EXPECT_EQ(room.lanes().filter(QString::fromLatin1(head)).size(), 2) << room.all();
}

void TwoHeads::interruptApplying()
{
    ASSERT_THAT(answerUntil(QStringLiteral("Apply")).toStdString(), HasSubstr("Root"));
    ASSERT_TRUE(room.answer());
    capture::waitFor(std::chrono::milliseconds{1500});
    ASSERT_TRUE(room.pressNamed(QStringLiteral("More"))) << room.all();
    ASSERT_TRUE(room.answerNamed(QStringLiteral("Applying Duke, Root stops"))) << room.all();
    EXPECT_EQ(room.lanes().size(), 5) << room.all();
}

void TwoHeads::putAnAnswerRight()
{
    ASSERT_THAT(answerUntil(QStringLiteral("Applying")).toStdString(), HasSubstr("Applying"));
    ASSERT_TRUE(room.answer());
    ASSERT_TRUE(room.pressNamed(QStringLiteral("It was earlier"))) << room.all();
    ASSERT_TRUE(room.answerNamed(QStringLiteral("1 min ago"))) << room.all();
}

void TwoHeads::rinseEarly()
{
    ASSERT_THAT(answerUntil(QStringLiteral("Look at")).toStdString(), HasSubstr("Ends"));
    ASSERT_TRUE(room.answerNamed(QStringLiteral("Rinse Ends now"))) << room.all();
}

/// Kills the program and starts it again; what was pressed and kept in its first life.
void TwoHeads::killAndGoOn()
{
    const QStringList before = room.lanes();
    killed = capture::Clock::now();
    screen.kill();
    pressedBefore = room.takePresses();
    keptBefore = desk::keptIn(data.path()).facts.size();
    ASSERT_TRUE(screen.start(arguments({})));
    ASSERT_TRUE(reader.waitFor(QStringLiteral("End this run"), QStringLiteral("push button"), 30000));
    EXPECT_EQ(room.lanes(), before) << room.all();
}

void TwoHeads::goOnToTheEnd()
{
    EXPECT_EQ(answerUntil(QStringLiteral("All done")).left(8).toStdString(), "All done") << room.all();
    EXPECT_EQ(room.lanes().filter(QStringLiteral(", rinsed")).size(), 5) << room.all();
    capture::waitFor(std::chrono::milliseconds{1500});
    screen.press(QStringLiteral("ctrl+q"));
    EXPECT_EQ(screen.waitForEnd(), 0);
}

/// Until it was killed. A sound that had only just begun then was cut off.
Life TwoHeads::firstLife(const desk::Kept& kept, const capture::Recording& recording) const
{
    constexpr double settling = 0.5;
    const Instant began = kept.setup.began;
    Life life{.began = desk::beginningOf(began, std::span{kept.facts}.first(keptBefore), pressedBefore,
                                         recording, speed),
              .from = began - Seconds{1},
              .until = began,
              .facts = keptBefore};
    life.until += Seconds{static_cast<std::int64_t>((recording.at(killed) - settling - life.began) * speed)};
    return life;
}

/// From the moment of the last fact before; the last of all, that the run is over, was no press in the run.
Life TwoHeads::secondLife(const desk::Kept& kept, const capture::Recording& recording)
{
    const auto later = std::span{kept.facts}.subspan(keptBefore, kept.facts.size() - keptBefore - 1);
    return {.began = desk::beginningOf(kept.setup.began, later, room.takePresses(), recording, speed),
            .from = kept.facts[keptBefore - 1].recorded + Seconds{1},
            .until = kept.facts.back().recorded,
            .facts = kept.facts.size()};
}

TEST_F(TwoHeads, AreLedByAScreenReaderThroughAllThatGetsInTheWay)
{
    capture::Recording recording;
    ASSERT_TRUE(recording.begun());
    for (const auto step : {&TwoHeads::start, &TwoHeads::readTheLanes, &TwoHeads::interruptApplying,
                            &TwoHeads::putAnAnswerRight, &TwoHeads::rinseEarly, &TwoHeads::killAndGoOn,
                            &TwoHeads::goOnToTheEnd}) {
        (this->*step)();
        ASSERT_FALSE(HasFatalFailure());
    }

    const desk::Kept kept = desk::keptIn(data.path());
    ASSERT_EQ(kept.facts.back().kind, FactKind::Ended);
    for (std::size_t place = 0; place < kept.facts.size(); ++place)
        EXPECT_EQ(static_cast<std::size_t>(kept.facts[place].number), place + 1);
    const Life first = firstLife(kept, recording);
    const Life second = secondLife(kept, recording);
    const std::vector<capture::Heard> heard = recording.end(core::alarm::voices);
    EXPECT_GE(expectHeard(kept, first, heard), keptBefore / 2);
    EXPECT_GE(expectHeard(kept, second, heard), (kept.facts.size() - keptBefore) / 2);
}

}  // namespace
