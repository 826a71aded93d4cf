#pragma once

#include "app/session/clock.h"
#include "core/run/fact.h"
#include "core/run/prepared.h"
#include "core/stagger/plan.h"

#include <tl/expected.hpp>

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// The port through which the session keeps what happened. app/storage holds
/// the journal on disk; MemoryJournal is for when there is no disk to be had.
namespace app::session {

using core::measure::Instant;
using core::run::Fact;
using core::run::FactNumber;

enum class RunId : std::int64_t {};

struct JournalError {
    enum class Kind {
        NotThere,  ///< No such run, or its service was erased.
        NoSpace,
        ReadOnly,
        InUse,  ///< Another program holds the folder.
        Damaged,
        TooNew,  ///< Written by a newer program.
        Other,
    };
    Kind kind = Kind::Other;
    std::string what;  ///< What is wrong and how to mend it, for people.
};

/// What a run is begun with.
struct NewRun {
    std::vector<std::string> services;  ///< Service files, as text. They may hold a name; facts never do.
    core::stagger::Preference preference = core::stagger::Preference::AsAsked;
    Instant began;
    bool simulated = false;          ///< Its time is not the time of day.
    std::optional<TimeBase> base{};  ///< What its clock goes by, until the machine is started anew.
    std::vector<core::run::Prepared> prepared{};  ///< What was said before. Why it was skipped is in words.

    friend bool operator==(const NewRun&, const NewRun&) = default;
};

struct StoredRun {
    RunId id{0};
    NewRun run;
    std::optional<Instant> ended;
    std::vector<std::vector<std::string>> revisions{};  ///< What amendments made of the services, from 1.
    bool damaged = false;  ///< What it was begun with, or amended to, was changed in the journal.

    friend bool operator==(const StoredRun&, const StoredRun&) = default;
};

class Journal {
public:
    template <typename T>
    using Result = tl::expected<T, JournalError>;

    Journal() = default;
    Journal(const Journal&) = delete;
    Journal& operator=(const Journal&) = delete;
    virtual ~Journal() = default;

    /// Durable when it returns.
    virtual Result<RunId> begin(const NewRun& run) = 0;

    /// Keeps what an amendment makes of the services, before the fact that names it; `revision` counts
    /// from 1. Kept again it is replaced: without its fact it does not count. Durable when it returns.
    virtual Result<void> amend(RunId run, std::size_t revision, const std::vector<std::string>& services) = 0;

    /// Appends all of `facts` or none, and gives them the next numbers of the
    /// run, from 1. Durable when it returns. A fact `Ended` ends the run.
    virtual Result<std::vector<FactNumber>> append(RunId run, std::span<const Fact> facts) = 0;

    /// In the order of recording, each with its number.
    virtual Result<std::vector<Fact>> facts(RunId run) = 0;

    /// Runs not ended, the latest begun first.
    virtual Result<std::vector<StoredRun>> unfinished() = 0;

    /// All of them, the latest begun first.
    virtual Result<std::vector<StoredRun>> runs() = 0;

    virtual Result<StoredRun> run(RunId run) = 0;

    /// From now on the clock of the run goes by `base`: the machine was started anew.
    virtual Result<void> rebase(RunId run, const TimeBase& base) = 0;

    /// Removes the service files of an ended run, and any name with them, what was said in words, and what
    /// was said before it began. Its facts stay.
    virtual Result<void> eraseServices(RunId run) = 0;

    /// Whether what is appended outlives the program.
    [[nodiscard]] virtual bool isDurable() const = 0;
};

/// Keeps everything until the program ends. Never fails for want of a disk.
class MemoryJournal final : public Journal {
public:
    Result<RunId> begin(const NewRun& run) override;
    Result<void> amend(RunId run, std::size_t revision, const std::vector<std::string>& services) override;
    Result<std::vector<FactNumber>> append(RunId run, std::span<const Fact> facts) override;
    Result<std::vector<Fact>> facts(RunId run) override;
    Result<std::vector<StoredRun>> unfinished() override;
    Result<std::vector<StoredRun>> runs() override;
    Result<StoredRun> run(RunId run) override;
    Result<void> rebase(RunId run, const TimeBase& base) override;
    Result<void> eraseServices(RunId run) override;
    [[nodiscard]] bool isDurable() const override { return false; }

private:
    struct Kept {
        StoredRun stored;
        std::vector<Fact> facts;
    };
    Kept* find(RunId run);

    std::vector<Kept> m_runs;
};

/// A journal to work with, whatever state the disk is in, and what the person
/// must be told about it.
struct OpenedJournal {
    std::unique_ptr<Journal> journal;
    std::vector<std::string> warnings;
};

}  // namespace app::session
