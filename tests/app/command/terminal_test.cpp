#include "app/command/terminal.h"

#include "tests/app/session/session_samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

// What the terminal says by itself while it leads a run.

namespace app::command {
namespace {

using core::stagger::Preference;
using session::samples::answerFirst;
using session::samples::HandClock;
using session::samples::noon;
using session::samples::settleAt;
using session::samples::Stage;
using session::samples::twoZones;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

const core::measure::UtcOnly utc;

/// Keeps what stays on the screen.
class Heard final : public Screen {
public:
    explicit Heard(std::vector<std::string>& lines)
        : m_lines{lines}
    {
    }
    void showPicture(const Picture&) override { }
    void say(const std::string& line) override { m_lines.push_back(line); }
    void ring(const std::string&) override { }

private:
    std::vector<std::string>& m_lines;
};

/// A terminal that leads a run in real time, by a clock that is moved by hand.
struct Led {
    explicit Led(std::shared_ptr<session::MemoryJournal> kept = std::make_shared<session::MemoryJournal>())
        : stage{clock, std::move(kept)}
        , terminal{*stage.session, utc, std::make_unique<Heard>(lines)}
    {
    }

    void goOn(core::measure::Seconds by)
    {
        clock->forward(by);
        settleAt(*stage.session, clock->now());
    }
    /// Answers what is asked for, each at its time, until all is done.
    void answerAll()
    {
        for (int step = 0; step < 60 && !stage.session->state().finished; ++step) {
            const auto& prompts = stage.session->state().prompts;
            const auto wait = prompts.empty() ? core::measure::Seconds{60}
                                              : core::measure::Seconds{prompts.front().due - clock->now()};
            if (wait > core::measure::Seconds{0})
                goOn(wait);
            else
                answerFirst(*stage.session);
        }
        ASSERT_TRUE(stage.session->state().finished);
    }
    [[nodiscard]] auto asked() const
    {
        return std::ranges::count_if(
            lines, [](const std::string& line) { return line.starts_with("How did it turn out?"); });
    }

    std::vector<std::string> lines;
    std::shared_ptr<HandClock> clock = std::make_shared<HandClock>(noon(), false);
    Stage stage;
    Terminal terminal;
};

TEST(Terminal, AsksHowItTurnedOutOnceTheCoatIsOver)
{
    Led led;
    led.stage.session->begin({twoZones()}, Preference::EndEarly);
    EXPECT_EQ(led.asked(), 0);
    led.answerAll();
    EXPECT_EQ(led.asked(), 1);
    EXPECT_THAT(led.lines, Contains(HasSubstr("4 too warm")));
    EXPECT_THAT(led.lines.back(), HasSubstr("Enter ends the run"));

    led.terminal.takeLine(QStringLiteral("out Root: 4, brassy"));
    EXPECT_THAT(led.lines, Contains(HasSubstr("turned out too warm: Root")));
    led.terminal.takeLine(QStringLiteral("note: thinner sections"));
    led.goOn(core::measure::Seconds{120});
    EXPECT_EQ(led.asked(), 1) << "it does not insist";
}

TEST(Terminal, AsksAgainWhenARunThatIsDoneIsTakenUpAgain)
{
    Led led;
    const auto run = led.stage.session->begin({twoZones()}, Preference::EndEarly);
    led.answerAll();
    // What the journal holds where the program is killed now: nobody left the run.
    const auto kept = std::make_shared<session::MemoryJournal>();
    const auto copy = kept->begin(led.stage.kept->run(run).value().run).value();
    kept->append(copy, led.stage.kept->facts(run).value()).value();

    Led again{kept};
    again.clock->set(led.clock->now() + core::measure::Seconds{300});
    ASSERT_FALSE(again.stage.session->resume(copy));
    settleAt(*again.stage.session, again.clock->now());
    EXPECT_THAT(again.lines, Contains(HasSubstr("Taken up again")));
    EXPECT_EQ(again.asked(), 1);
}

TEST(Terminal, DoesNotAskWhereNobodyAnswers)
{
    Led led;
    led.terminal.endByItself();
    led.stage.session->begin({twoZones()}, Preference::EndEarly);
    led.answerAll();
    EXPECT_EQ(led.asked(), 0);
    EXPECT_THAT(led.lines, Not(Contains(HasSubstr("note:"))));
}

}  // namespace
}  // namespace app::command
