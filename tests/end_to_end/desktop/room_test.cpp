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
using core::run::Fact;
using core::run::FactKind;
using desk::Expected;
using testing::HasSubstr;

/// A minute is two seconds.
constexpr double speed = 30;
const QString speedText = QStringLiteral("30");

/// Two zones, rinsed together; the second is looked at.
QByteArray headNamed(const char* name)
{
    return QByteArray{R"({ "basinbell": 1, "name": ")"} + name + R"(",
  "head": { "name": ")"
        + name + R"(", "kind": "wig" },
  "crew": { "hands": [{ "name": "Wig room" }, { "name": "Dresser" }], "basins": 2 },
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

class TwoHeads : public testing::Test {
protected:
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
        for (int tries = 0; tries < 40; ++tries) {
            room.pressNamed(QStringLiteral("Start"));  // Does nothing until the plan is there.
            capture::waitFor(std::chrono::milliseconds{300});
            room.pressNamed(QStringLiteral("I hear them"));
            if (!room.lanes().isEmpty())
                return;
        }
        FAIL() << "The lanes did not start.\n" << room.all();
    }

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
};

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

std::string named(const Expected& expected, double at)
{
    return "kind " + std::to_string(static_cast<int>(expected.kind)) + " subject "
        + std::to_string(static_cast<int>(expected.subject)) + " at " + std::to_string(at) + " s";
}

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
        EXPECT_TRUE(std::ranges::any_of(heard, [&](const capture::Heard& found) {
            return found.kind == alarm.kind && found.subject == alarm.subject
                && std::abs(found.at - at) < tolerance;
        })) << named(alarm, at);
    }
    return alarms;
}

// Applying is interrupted, an answer is put right, a zone is rinsed early and the program is killed.
TEST_F(TwoHeads, AreLedByAScreenReaderThroughAllThatGetsInTheWay)
{
    capture::Recording recording;
    ASSERT_TRUE(recording.begun());
    start();
    ASSERT_EQ(room.lanes().size(), 4) << room.all();
    for (const char* head : {"Duke", "Porter"})
        EXPECT_EQ(room.lanes().filter(QString::fromLatin1(head)).size(), 2) << room.all();

    ASSERT_THAT(answerUntil(QStringLiteral("Apply")).toStdString(), HasSubstr("Root"));
    ASSERT_TRUE(room.answer());
    capture::waitFor(std::chrono::milliseconds{1500});
    ASSERT_TRUE(room.pressNamed(QStringLiteral("More"))) << room.all();
    ASSERT_TRUE(room.answerNamed(QStringLiteral("Applying Duke, Root stops"))) << room.all();
    EXPECT_EQ(room.lanes().size(), 5) << room.all();

    ASSERT_THAT(answerUntil(QStringLiteral("Applying")).toStdString(), HasSubstr("Applying"));
    ASSERT_TRUE(room.answer());
    ASSERT_TRUE(room.pressNamed(QStringLiteral("It was earlier"))) << room.all();
    ASSERT_TRUE(room.answerNamed(QStringLiteral("1 min ago"))) << room.all();

    ASSERT_THAT(answerUntil(QStringLiteral("Look at")).toStdString(), HasSubstr("Ends"));
    ASSERT_TRUE(room.answerNamed(QStringLiteral("Rinse Ends now"))) << room.all();

    const QStringList before = room.lanes();
    const auto killed = capture::Clock::now();
    screen.kill();
    const auto first = room.takePresses();
    const std::size_t known = desk::keptIn(data.path()).facts.size();
    ASSERT_TRUE(screen.start(arguments({})));
    ASSERT_TRUE(reader.waitFor(QStringLiteral("End this run"), QStringLiteral("push button"), 30000));
    EXPECT_EQ(room.lanes(), before) << room.all();

    EXPECT_EQ(answerUntil(QStringLiteral("All done")).left(8).toStdString(), "All done") << room.all();
    EXPECT_EQ(room.lanes().filter(QStringLiteral(", rinsed")).size(), 5) << room.all();
    capture::waitFor(std::chrono::milliseconds{1500});
    screen.press(QStringLiteral("ctrl+q"));
    EXPECT_EQ(screen.waitForEnd(), 0);

    const desk::Kept kept = desk::keptIn(data.path());
    const Instant began = kept.setup.began;
    const std::span facts{kept.facts};
    ASSERT_EQ(facts.back().kind, FactKind::Ended);
    Life one{.began = desk::beginningOf(began, facts.first(known), first, recording, speed),
             .from = began - core::measure::Seconds{1},
             .until = began,
             .facts = known};
    constexpr double settling =
        0.5;  // A sound that has only just begun when the program is killed is cut off.
    one.until = began
        + core::measure::Seconds{
            static_cast<std::int64_t>((recording.at(killed) - settling - one.began) * speed)};
    const auto later = facts.subspan(known, facts.size() - known - 1);
    const Life two{.began = desk::beginningOf(began, later, room.takePresses(), recording, speed),
                   .from = facts[known - 1].recorded + core::measure::Seconds{1},
                   .until = facts.back().recorded,
                   .facts = facts.size()};
    const std::vector<capture::Heard> heard = recording.end();
    EXPECT_GE(expectHeard(kept, one, heard), known / 2);
    EXPECT_GE(expectHeard(kept, two, heard), later.size() / 2);
    for (const Fact& fact : kept.facts)
        EXPECT_EQ(fact.number, core::run::FactNumber{&fact - kept.facts.data() + 1});
}

}  // namespace
