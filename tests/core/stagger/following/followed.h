#pragma once

#include "core/stagger/planned_network.h"
#include "core/temporal/executor.h"

#include <cstdint>
#include <random>
#include <string>
#include <vector>

/// Plans followed by their dispatch rule, with lengths that turn out as they do, and judged by the
/// independent checker: as if all lengths had been known, no rule may be broken.
namespace core::stagger {

/// When a step is started, of all the times that are safe.
enum class Way { AsPlanned, AsSoonAsSafe, AtTheLatest, AtRandom };
inline constexpr Way everyWay[] = {Way::AsPlanned, Way::AsSoonAsSafe, Way::AtTheLatest, Way::AtRandom};

/// Starts and ends of all tasks, as they came.
struct Followed {
    std::vector<PlannedTask> tasks;
    std::vector<TaskId> looksNotDue;
};

/// What the checker has against it. The service is the one asked for with the lengths that turned out; looks
/// are due or not as the order says.
std::vector<std::string> wrongWith(const Question& question, const Followed& followed);

/// Runs one plan many times over, by its order's network.
class Follower {
public:
    /// `question` must outlive it. The plan must keep every limit.
    Follower(const Question& question, const Plan& plan);

    /// The lengths that the plan holds for, by link: quickest, usual, slowest.
    [[nodiscard]] const std::vector<temporal::Uncertain>& links() const { return m_planned.network.links; }

    Followed follow(const std::vector<Time>& lengths, Way way, std::mt19937_64& random);

    /// For each link: its lengths that are whole `unit`s, and both ends.
    [[nodiscard]] std::vector<std::vector<Time>> lengths(Time unit) const;
    /// Quickest and slowest.
    [[nodiscard]] std::vector<std::vector<Time>> extremeLengths() const;
    [[nodiscard]] std::vector<Time> randomLengths(std::mt19937_64& random) const;

private:
    void wish(Way way, std::mt19937_64& random);

    const Question& m_question;
    const Plan& m_plan;
    PlannedNetwork m_planned;
    std::optional<temporal::Executor> m_executor;
    std::vector<Time> m_wished;
    std::vector<Time> m_times;
};

/// A random question as `oracle::randomQuestion` draws it, with lengths of whole `unit`s, where most
/// applications may take up to two units less and up to three more, and half of the questions have wider
/// windows.
Question uncertainQuestion(std::uint64_t seed, std::size_t zones, std::size_t heads, Seconds unit);

/// What was followed.
struct FollowedPlans {
    int plans = 0;
    int held = 0;  ///< So many have a give.
    int whole = 0;
    int looks = 0;  ///< So many have a look that is made while applying.
    int mixes = 0;
    int lateJobs = 0;
    int twoHands = 0;  ///< So many make use of two pairs of hands.
    int rinses = 0;    ///< So many have more rinses than one.
    std::int64_t runs = 0;
};

/// Which questions, and how each plan with uncertain lengths is followed.
struct Following {
    std::uint64_t seed = 1;
    int plans = 10;
    std::size_t zones = 4;
    std::size_t heads = 1;
    int everyLength = 0;     ///< Every choice of whole minutes where there are no more than this.
    int extremeLengths = 0;  ///< Every choice of extremes likewise.
    int randomLengths = 0;
};

/// Follows plans in every way, and expects the checker to find nothing in any run.
FollowedPlans followPlans(const Following& following);

}  // namespace core::stagger
