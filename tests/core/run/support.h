#pragma once

#include "core/run/run.h"

#include <string>
#include <vector>

namespace core::stagger {

/// Lets a test put a plan together that no planner made.
class PlanForTests {
public:
    static Plan make(PlanData data) { return Plan{std::move(data)}; }
};

}  // namespace core::stagger

/// What the tests of the run and of its alarms share: a small service, a planner that is
/// simple enough to follow by hand, and a run that is told things one after another.
namespace core::run {

using measure::Instant;
using measure::Seconds;
using service::Service;
using stagger::Plan;
using stagger::TaskKind;

constexpr Seconds minutes(std::int64_t count)
{
    return Seconds{count * 60};
}

/// So many minutes after 2026-03-02T14:00:00Z, an ordinary Monday.
Instant clockAt(std::int64_t minute, std::int64_t second = 0);

TaskId task(TaskKind kind, std::size_t item = 0, std::size_t part = 0);
TaskId apply(std::size_t zone);
TaskId look(std::size_t zone, std::size_t part = 0);

/// A zone whose development counts from the end of application.
service::Zone zone(const std::string& name, std::int64_t application, service::Window window);
service::Window window(std::int64_t least, std::int64_t target, std::int64_t most);

/// Root (10 min to apply, 30 to 45 min development, target 35), Mids (6, 15 to 35, 28), Ends (5, 10 to
/// 30, 22, one look 8 min in), all rinsed together for 4 min by one pair of hands. No mixing, no drying.
/// `inTurn` from minute 0: Root 0 to 10, Mids to 16, Ends to 21, look at 29, water at 10 + 35 = 45,
/// which gives Mids 29 and Ends 24 min.
Service wig();

/// `wig` with names wherever a service needs them: nothing is wrong with it.
Service namedWig();

/// `wig` with a bowl to mix for Root (2 min), drying (3 min hands, 20 alone) and assessing (5 min).
Service longWig();

/// Everything in the order of the service, one thing after another, as early as may be: mixing
/// before the first use of a bowl, then applying, then water when the last target is reached. Looks
/// at their moments. What is done stays, what runs ends when expected or now. Limits are not kept
/// except that a `Most` that is broken is an answer of nothing fits, where limits may not be broken.
tl::expected<Plan, stagger::NoPlan> inTurn(const stagger::Question& question, const stagger::Budget& budget);

/// A run that is told things.
class Teller {
public:
    explicit Teller(Service service);
    /// Takes an answer at `now`; a refusal is returned and nothing else happens.
    std::optional<std::string> tell(Answer answer, Instant now);
    std::optional<std::string> tell(Answer::Kind kind, TaskId task, Instant now);

    /// As `tell`, for what must be taken: a refusal fails the test.
    void mustTell(Answer::Kind kind, TaskId task, Instant now);

    [[nodiscard]] State at(Instant now) const { return stateAt(setup, facts, now); }

    Setup setup;
    std::vector<Fact> facts;
};

/// What the answer is refused with; "(taken)" where it is not.
std::string refusal(Teller& teller, const Answer& answer, Instant now);
/// A refusal fails the test.
void mustTell(Teller& teller, const Answer& answer, Instant now);

/// Start and Finish of an application.
void applyZone(Teller& teller, std::size_t zone, Instant from, Instant until);

/// The wig with the looks of its Ends at its Mids too, all of it applied by 14:21: both are to be looked at
/// together.
Teller twoLooks();

const Prompt* findPrompt(const State& state, Prompt::Asks asks, const TaskId& task);

}  // namespace core::run
