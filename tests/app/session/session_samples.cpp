#include "tests/app/session/session_samples.h"

#include "core/service/service_file.h"

#include <QTest>

#include <gtest/gtest.h>

namespace app::session::samples {

using core::run::Answer;
using core::run::Prompt;

Instant noon()
{
    return std::chrono::sys_days{std::chrono::year{2026} / 3 / 14} + std::chrono::hours{12};
}

core::service::Service twoZones()
{
    constexpr const char* file = R"({
      "basinbell": 1, "name": "Two zones", "zone": "UTC",
      "head": { "name": "The lamplighter", "kind": "wig" },
      "crew": { "hands": [{ "name": "Wig room" }], "basins": 1 },
      "coats": [{
        "name": "Coat",
        "bowls": [{ "name": "Root colour", "mix": 4, "pot_life": 60 }, { "name": "Toner", "mix": 3, "pot_life": 60 }],
        "zones": [
          { "name": "Root", "bowl": "Root colour", "apply": { "quickest": 8, "usual": 10, "slowest": 13 },
            "clock": "end", "develop": { "least": 25, "target": 30, "most": 40 } },
          { "name": "Ends", "bowl": "Toner", "apply": { "quickest": 6, "usual": 8, "slowest": 10 },
            "clock": "end", "develop": { "least": 8, "target": 15, "most": 20 },
            "looks": { "first": 5, "every": 5, "length": 1 }, "after": ["Root"] }
        ],
        "rinse": [{ "name": "All together", "length": 6 }]
      }]
    })";
    const core::measure::UtcOnly zones;
    const auto read = core::service::readService(std::string_view{file}, {zones, "UTC", {}});
    EXPECT_TRUE(read.has_value()) << (read ? "" : core::service::problemText(read.error().front()));
    return read.value_or(core::service::Service{});
}

Stage::Stage(std::shared_ptr<Clock> clock, std::shared_ptr<MemoryJournal> memory, bool plansApart,
             core::run::Planner planner)
    : kept{std::move(memory)}
{
    auto watched = std::make_unique<WatchedJournal>(kept);
    journal = watched.get();
    Session::Parts parts;
    parts.journal = std::move(watched);
    parts.clock = std::move(clock);
    parts.zones = std::make_shared<core::measure::UtcOnly>();
    parts.plansApart = plansApart;
    parts.planner = std::move(planner);
    session = std::make_unique<Session>(std::move(parts));
    QObject::connect(session.get(), &Session::warningRaised, session.get(),
                     [this](const QString& warning) { warnings.push_back(warning.toStdString()); });
}

Answer answerTo(const Prompt& prompt)
{
    Answer answer;
    answer.task = prompt.task;
    answer.kind = prompt.asks == Prompt::Asks::Start ? Answer::Kind::Start
        : prompt.asks == Prompt::Asks::Finish        ? Answer::Kind::Finish
                                                     : Answer::Kind::Leave;
    return answer;
}

void answerFirst(Session& session)
{
    ASSERT_FALSE(session.state().prompts.empty());
    const auto refusal = session.answer(answerTo(session.state().prompts.front()));
    ASSERT_FALSE(refusal.has_value()) << refusal->what;
}

bool await(const std::function<bool()>& holds)
{
    return QTest::qWaitFor(holds, 60'000);
}

void settleAt(Session& session, Instant moment)
{
    // Each time it goes through some moments only, so that others have their turn.
    for (int turns = 0; turns < 1000 && session.state().now < moment; ++turns)
        session.wake();
    EXPECT_EQ(session.state().now, moment);
}

}  // namespace app::session::samples
