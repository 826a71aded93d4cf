#include "core/run/remember.h"
#include "tests/core/run/support.h"

#include <gtest/gtest.h>

#include <algorithm>

// Two zones whose looks are asked for together; one is answered, and a moment later the other.

namespace core::run {
namespace {

Service twoTonedZones()
{
    Service service = wig();
    service::Coat& coat = service.coats[0];
    coat.zones.erase(coat.zones.begin());
    for (service::Zone& zone : coat.zones) {
        zone.apply = {minutes(4), minutes(5), minutes(6)};
        zone.develop = {.least = minutes(10), .target = minutes(25), .most = minutes(45)};
        zone.looks = service::Looks{.first = minutes(5),
                                    .every = minutes(5),
                                    .length = minutes(1),
                                    .tolerance = minutes(2),
                                    .until = minutes(45)};
    }
    return service;
}

std::vector<Prompt> dueLooks(const State& state)
{
    std::vector<Prompt> looks;
    std::ranges::copy_if(state.prompts, std::back_inserter(looks), [&](const Prompt& prompt) {
        return prompt.asks == Prompt::Asks::Look && prompt.due <= state.now;
    });
    return looks;
}

class LooksCalled : public testing::Test {
protected:
    LooksCalled()
    {
        m_teller.setup.planner = remembering(Planner{stagger::plan});
        m_teller.setup.safeStarts = remembering(SafeStarts{stagger::safeStarts});
        // Whatever is due is answered after ten seconds, until two looks are due at once.
        for (; m_now < clockAt(60) && dueLooks(state()).size() < 2; m_now += Seconds{1})
            if (const Prompt first = state().prompts.front(); first.due + Seconds{10} <= m_now)
                m_teller.mustTell(first.asks == Prompt::Asks::Start      ? Answer::Kind::Start
                                      : first.asks == Prompt::Asks::Look ? Answer::Kind::Leave
                                                                         : Answer::Kind::Finish,
                                  first.task, m_now);
    }

    [[nodiscard]] State state() const { return m_teller.at(m_now); }
    /// When the look of the zone after the one that is asked for now comes.
    [[nodiscard]] Instant nextDue(TaskId look) const
    {
        ++look.part;
        const State known = state();
        const Prompt* prompt = findPrompt(known, Prompt::Asks::Look, look);
        EXPECT_NE(prompt, nullptr);
        return prompt ? prompt->due : Instant{};
    }
    void leave(const Prompt& look)
    {
        m_now += Seconds{10};
        m_teller.mustTell(Answer::Kind::Leave, look.task, m_now);
    }

    Instant m_now = clockAt(0);
    Teller m_teller{twoTonedZones()};
};

TEST_F(LooksCalled, TheNextLookDoesNotHangOnWhetherTheOtherZoneWasAnsweredYet)
{
    const auto looks = dueLooks(state());
    ASSERT_EQ(looks.size(), 2U);
    leave(looks[0]);
    const Instant half = nextDue(looks[0].task);
    EXPECT_GT(half, m_now + minutes(3))
        << "nobody is called back for what is planned with the call that stands";
    leave(looks[1]);
    // It counts from the later look.
    EXPECT_EQ(nextDue(looks[0].task), half + Seconds{10});
}

TEST_F(LooksCalled, ALookThatIsNotAnsweredStaysAskedForSinceItWas)
{
    const auto looks = dueLooks(state());
    ASSERT_EQ(looks.size(), 2U);
    leave(looks[0]);
    for (int second = 0; second < 240; ++second, m_now += Seconds{1}) {
        const State known = state();
        const Prompt* other = findPrompt(known, Prompt::Asks::Look, looks[1].task);
        ASSERT_NE(other, nullptr);
        ASSERT_EQ(other->due, looks[1].due) << second;
    }
}

}  // namespace
}  // namespace core::run
