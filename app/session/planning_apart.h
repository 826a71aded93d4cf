#pragma once

#include "app/session/worker.h"
#include "core/run/run.h"

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>

namespace app::session {

/// Plans in a thread of its own, so that whoever asks never waits for a search. One question at a time: the
/// first of a look that has no answer yet is worked out, whatever was worked out before is stopped. All but
/// `found` is for one thread, in which nothing but a look's patience is ever waited for.
class PlanningApart {
public:
    using PlanAnswer = tl::expected<core::stagger::Plan, core::stagger::NoPlan>;

    /// How long a look may wait for plans that are found quickly: less than anybody notices, and than an
    /// alarm may be late by.
    static constexpr std::chrono::milliseconds patience{30};

    /// `found` is called in the other thread when there is an answer; so is `planner`, which must have one.
    PlanningApart(core::run::Planner planner, std::function<void()> found);
    /// Stops the search, and waits for it to have stopped.
    ~PlanningApart();

    PlanningApart(const PlanningApart&) = delete;
    PlanningApart& operator=(const PlanningApart&) = delete;

    /// As long as it lives, what is asked and not known is worked out. Once it goes, what nobody asked for
    /// any more is stopped.
    class Look {
    public:
        Look(PlanningApart& planning, bool first);
        ~Look();
        Look(const Look&) = delete;
        Look& operator=(const Look&) = delete;

    private:
        PlanningApart& m_planning;
    };

    /// Looks. The first look of a run waits until there is a plan.
    [[nodiscard]] Look look(bool first) { return {*this, first}; }

    /// A `core::run::Planner`: the answer if it is there, else nothing, yet.
    std::optional<PlanAnswer> ask(const core::stagger::Question& question,
                                  const core::stagger::Budget& budget);

    /// Nothing is wanted any more.
    void forget();

    /// Something is worked out, or was and nobody has asked for it since.
    [[nodiscard]] bool isBusy() const { return m_search != nullptr; }
    /// Something was worked out and is there for whoever asks.
    [[nodiscard]] bool hasAnswer();

private:
    struct Search {
        core::stagger::Question question;
        core::stagger::Budget budget;
        std::atomic<bool> stopped = false;
        std::optional<PlanAnswer> answer{};  ///< Guarded by `m_guard`.
    };

    void begin(const core::stagger::Question& question, const core::stagger::Budget& budget);
    void solve(Search& search);
    std::optional<PlanAnswer> answered();
    void waitForAnswer();

    core::run::Planner m_planner;
    std::function<void()> m_found;

    // Of the thread that asks.
    bool m_looking = false;
    bool m_first = false;   ///< Nothing has been planned yet, so there is nothing to go by.
    bool m_wanted = false;  ///< This look has asked for something that is not known.
    std::chrono::steady_clock::time_point m_until;
    std::shared_ptr<Search> m_search;  ///< What is worked out, or was and was not asked for since.

    std::mutex m_guard;
    std::condition_variable m_answered;
    Worker m_worker;  ///< Last, for it uses all the others.
};

}  // namespace app::session
