#pragma once

#include "core/run/run.h"

#include <condition_variable>
#include <memory>
#include <mutex>
#include <vector>

namespace app::session::samples {

/// Plans, but only as long as it is not held; then it waits until it is let or stopped. For several threads.
class HeldPlanner {
public:
    using Answer = tl::expected<core::stagger::Plan, core::stagger::NoPlan>;

    std::optional<Answer> operator()(const core::stagger::Question& question,
                                     const core::stagger::Budget& budget)
    {
        std::unique_lock guard{m_guard};
        m_asked.push_back(question);
        m_changed.notify_all();
        while (m_held) {
            if (budget.stop && budget.stop()) {
                ++m_stopped;
                core::stagger::NoPlan unknown;
                unknown.stopped = true;
                return Answer{tl::unexpected{unknown}};
            }
            m_changed.wait_for(guard, std::chrono::milliseconds{1});
        }
        guard.unlock();
        return core::stagger::plan(question, budget);
    }

    void hold() { set(true); }
    void let() { set(false); }

    /// Waits until it was asked so often.
    void waitForQuestions(std::size_t count)
    {
        std::unique_lock guard{m_guard};
        m_changed.wait(guard, [&] { return m_asked.size() >= count; });
    }
    std::vector<core::stagger::Question> asked()
    {
        const std::lock_guard guard{m_guard};
        return m_asked;
    }
    int stopped()
    {
        const std::lock_guard guard{m_guard};
        return m_stopped;
    }

private:
    void set(bool held)
    {
        const std::lock_guard guard{m_guard};
        m_held = held;
        m_changed.notify_all();
    }

    std::mutex m_guard;
    std::condition_variable m_changed;
    std::vector<core::stagger::Question> m_asked;
    int m_stopped = 0;
    bool m_held = false;
};

/// The same as a planner that a session can have.
inline core::run::Planner plannerOf(const std::shared_ptr<HeldPlanner>& held)
{
    return [held](const core::stagger::Question& question, const core::stagger::Budget& budget) {
        return (*held)(question, budget);
    };
}

}  // namespace app::session::samples
