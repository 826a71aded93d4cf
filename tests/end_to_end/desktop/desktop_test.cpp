#include "tests/app/sound/capture/private_sound.h"
#include "tests/end_to_end/desktop/expected_alarms.h"
#include "tests/end_to_end/desktop/kept_run.h"
#include "tests/end_to_end/desktop/screen.h"

#include <QTemporaryDir>

#include <algorithm>
#include <span>

#include <gtest/gtest.h>

// The real program on a screen of its own, worked by real key events, its alarms recorded from a sound
// device.

namespace {

using capture::Clock;
using capture::Heard;
using desk::Expected;

using desk::named;
using desk::speed;
using desk::speedText;

/// A start that is pressed twice answers nothing; what is pressed after that does.
constexpr std::chrono::milliseconds afterTheStart{1500};
constexpr std::chrono::milliseconds afterAnAnswer{800};

class Desktop : public testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(sound.startServer() && sound.addDevice());
        ASSERT_TRUE(screen.isUp());
    }

    QStringList arguments() const
    {
        return {QStringLiteral("--demo"), QStringLiteral("--speed"), speedText, QStringLiteral("--data"),
                folder.path()};
    }

    /// From the program's start to running lanes: say that the alarms were heard, and start.
    void startLanes()
    {
        ASSERT_TRUE(screen.start(arguments()));
        ASSERT_FALSE(screen.waitForTitle({QStringLiteral("Three zones")}, 30000).isEmpty());
        screen.press(QStringLiteral("F3"));
        bool heard = false;
        for (int tries = 0; tries < 40 && !heard; ++tries) {
            capture::waitFor(std::chrono::milliseconds{300});
            heard = screen.pressInDialog(QStringLiteral("Sound check"), QStringLiteral("Return"));
        }
        ASSERT_TRUE(heard);
        for (int tries = 0; tries < 40; ++tries) {
            screen.press(QStringLiteral("ctrl+Return"));  // Does nothing until the plan is there.
            capture::waitFor(std::chrono::milliseconds{300});
            if (!screen.waitForTitle({QStringLiteral("Now: "), QStringLiteral("Next: ")}, 3000).isEmpty()) {
                capture::waitFor(afterTheStart);
                return;
            }
        }
        FAIL() << "The lanes did not start; the window says: " << screen.title().toStdString();
    }

    /// Answers whatever is due a moment after it is, until all is done. A press that follows another at once
    /// would be taken for a slip.
    std::vector<Clock::time_point> answerAll()
    {
        std::vector<Clock::time_point> presses;
        const auto most = Clock::now() + std::chrono::minutes{8};
        while (Clock::now() < most) {
            const QString title =
                screen.waitForTitle({QStringLiteral("Now: "), QStringLiteral("All done")}, 120000);
            if (!title.startsWith(QLatin1String{"Now: "}))
                break;
            capture::waitFor(std::chrono::milliseconds{250});
            while (!presses.empty() && Clock::now() - presses.back() < afterAnAnswer)
                capture::waitFor(std::chrono::milliseconds{20});
            const bool look = title.startsWith(QLatin1String{"Now: Look at"});
            presses.push_back(Clock::now());
            screen.press(look ? QStringLiteral("1") : QStringLiteral("Return"));
            const auto patience = Clock::now() + std::chrono::seconds{2};
            while (screen.title() == title && Clock::now() < patience)
                capture::waitFor(std::chrono::milliseconds{20});
        }
        return presses;
    }

    QTemporaryDir folder;
    capture::PrivateSound sound;
    desk::Screen screen;
};

TEST_F(Desktop, SoundsEveryAlarmOfTheDemoAtItsTime)
{
    capture::Recording recording;
    ASSERT_TRUE(recording.begun());
    startLanes();
    const std::vector<Clock::time_point> presses = answerAll();
    EXPECT_TRUE(screen.title().startsWith(QLatin1String{"All done"})) << screen.title().toStdString();
    capture::waitFor(std::chrono::milliseconds{1500});
    screen.press(QStringLiteral("ctrl+q"));
    EXPECT_EQ(screen.waitForEnd(), 0);

    const desk::Kept kept = desk::keptIn(folder.path());
    // Every press became one fact, and the last of all says that the run is over.
    ASSERT_EQ(kept.facts.size(), presses.size() + 1);
    ASSERT_EQ(kept.facts.back().kind, core::run::FactKind::Ended);
    const double began = desk::beginningOf(kept.setup.began, std::span{kept.facts}.first(presses.size()),
                                           presses, recording, speed);
    const auto expected = desk::alarmsOf(kept.setup, kept.facts, kept.facts.back().recorded);
    const std::vector<Heard> heard = recording.end(core::alarm::voices);
    ASSERT_GE(expected.size(), kept.facts.size());

    constexpr double tolerance = 0.3;
    for (const Expected& alarm : expected) {
        const double at = began + static_cast<double>((alarm.at - kept.setup.began).count()) / speed;
        EXPECT_TRUE(std::ranges::any_of(heard,
                                        [&](const Heard& found) {
                                            return found.kind == alarm.kind && found.subject == alarm.subject
                                                && found.voice == alarm.voice
                                                && std::abs(found.at - at) < tolerance;
                                        }))
            << named(alarm, at) << "; " << desk::around(heard, at);
    }
    // And nothing that is not an alarm of this run, but for the sound that a press of the sound check might
    // make.
    for (const Heard& found : heard) {
        EXPECT_TRUE(std::ranges::any_of(
            expected,
            [&](const Expected& alarm) {
                const double at = began + static_cast<double>((alarm.at - kept.setup.began).count()) / speed;
                return found.kind == alarm.kind && found.subject == alarm.subject
                    && found.voice == alarm.voice && std::abs(found.at - at) < tolerance;
            }))
            << "heard unasked: kind " << static_cast<int>(found.kind) << " at " << found.at << " s";
    }
}

TEST_F(Desktop, StandsWhereItStoodAfterItWasKilled)
{
    startLanes();
    ASSERT_FALSE(screen.waitForTitle({QStringLiteral("Now: Mix Root")}, 20000).isEmpty());
    screen.press(QStringLiteral("Return"));
    ASSERT_FALSE(screen.waitForTitle({QStringLiteral("Mixing Root")}, 20000).isEmpty());
    screen.kill();

    ASSERT_TRUE(
        screen.start({QStringLiteral("--speed"), speedText, QStringLiteral("--data"), folder.path()}));
    const QString title =
        screen.waitForTitle({QStringLiteral("Mixing Root"), QStringLiteral("Now: Mixing Root")}, 30000);
    EXPECT_FALSE(title.isEmpty()) << "The window says: " << screen.title().toStdString();
}

}  // namespace
