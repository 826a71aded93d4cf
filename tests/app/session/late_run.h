#pragma once

#include "tests/app/session/session_samples.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace app::session::samples {

/// A run in real time whose limits cannot all hold any more: the root has been on for 35 of its at most 40
/// minutes, and the ends, which need 8 to apply and 8 at least to develop, are still to be applied.
class LateRun {
public:
    LateRun()
    {
        m_stage.session->begin({twoZones()}, core::stagger::Preference::EndEarly);
        while (!rootIsOn() && !testing::Test::HasFailure()) {
            answerFirst(session());
            goOn(std::chrono::minutes{1});
        }
        goOn(std::chrono::minutes{34});
    }

    [[nodiscard]] Session& session() { return *m_stage.session; }

    /// Time goes on, and the plan for it is there.
    void goOn(core::measure::Seconds by)
    {
        m_clock->forward(by);
        session().wake();
        EXPECT_TRUE(await([this] { return !session().isPlanning(); }));
    }

private:
    bool rootIsOn()
    {
        const core::stagger::TaskId root{.kind = core::stagger::TaskKind::Apply};
        return std::ranges::any_of(session().facts(), [&](const Fact& fact) {
            return fact.kind == core::run::FactKind::Finished && fact.task == root;
        });
    }

    std::shared_ptr<HandClock> m_clock = std::make_shared<HandClock>(noon(), false);
    Stage m_stage{m_clock, std::make_shared<MemoryJournal>(), true};
};

}  // namespace app::session::samples
