#pragma once

#include "app/session/session.h"

#include <memory>
#include <string>
#include <vector>

/// What the tests of the session share.
namespace app::session::samples {

/// A clock that is moved by hand.
class HandClock final : public Clock {
public:
    explicit HandClock(Instant now, bool simulated = true)
        : m_now{now}
        , m_simulated{simulated}
    {
    }
    void set(Instant now) { m_now = now; }
    void forward(core::measure::Seconds by) { m_now += by; }

    [[nodiscard]] Instant now() const override { return m_now; }
    [[nodiscard]] std::chrono::milliseconds until(Instant moment) const override
    {
        return std::chrono::milliseconds{moment > m_now ? 60'000 : 0};
    }
    [[nodiscard]] double speed() const override { return 1.0; }
    [[nodiscard]] bool isSimulated() const override { return m_simulated; }

private:
    Instant m_now;
    bool m_simulated;
};

/// Hands on to a journal that outlives the session, fails when told to, and tells
/// `watch` of each append before it is done.
class WatchedJournal final : public Journal {
public:
    explicit WatchedJournal(std::shared_ptr<MemoryJournal> kept)
        : m_kept{std::move(kept)}
    {
    }
    bool fails = false;
    std::function<void()> watch = [] {};

    Result<RunId> begin(const NewRun& run) override { return fails ? failure<RunId>() : m_kept->begin(run); }
    Result<void> amend(RunId run, std::size_t revision, const std::vector<std::string>& services) override
    {
        return fails ? failure<void>() : m_kept->amend(run, revision, services);
    }
    Result<std::vector<FactNumber>> append(RunId run, std::span<const Fact> facts) override
    {
        watch();
        return fails ? failure<std::vector<FactNumber>>() : m_kept->append(run, facts);
    }
    Result<std::vector<Fact>> facts(RunId run) override { return m_kept->facts(run); }
    Result<std::vector<StoredRun>> unfinished() override { return m_kept->unfinished(); }
    Result<std::vector<StoredRun>> runs() override { return m_kept->runs(); }
    Result<StoredRun> run(RunId run) override { return m_kept->run(run); }
    Result<void> rebase(RunId run, const TimeBase& base) override { return m_kept->rebase(run, base); }
    Result<void> eraseServices(RunId run) override { return m_kept->eraseServices(run); }
    [[nodiscard]] bool isDurable() const override { return true; }

private:
    template <typename T>
    static Result<T> failure()
    {
        return tl::unexpected{JournalError{JournalError::Kind::NoSpace, "The disk is full."}};
    }
    std::shared_ptr<MemoryJournal> m_kept;
};

/// 14 March 2026, noon UTC.
Instant noon();

/// Two zones, one with looks, a bowl each, one pair of hands.
core::service::Service twoZones();

/// A session over `kept`, which may be taken up by another one later. It plans at once unless told otherwise.
struct Stage {
    explicit Stage(std::shared_ptr<Clock> clock,
                   std::shared_ptr<MemoryJournal> kept = std::make_shared<MemoryJournal>(),
                   bool plansApart = false, core::run::Planner planner = core::stagger::plan);

    std::shared_ptr<MemoryJournal> kept;
    WatchedJournal* journal = nullptr;  ///< Owned by the session.
    std::vector<std::string> warnings;
    std::unique_ptr<Session> session;  ///< Goes first, and may still warn then.
};

core::run::Answer answerTo(const core::run::Prompt& prompt);

/// Answers the most pressing prompt and expects that it is taken.
void answerFirst(Session& session);

/// Lets the events of the session happen until `holds`, for at most a minute. Whether it does.
bool await(const std::function<bool()>& holds);

/// Has the session go on to `moment`, which is the clock's now.
void settleAt(Session& session, Instant moment);

}  // namespace app::session::samples
