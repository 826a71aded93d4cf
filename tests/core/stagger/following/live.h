#pragma once

#include "core/stagger/safe_starts.h"
#include "tests/core/stagger/following/followed.h"

#include <map>
#include <string>

namespace core::stagger {

/// A run as it is really gone through: planned again after each start and end, and where an application goes
/// on past its usual length; the next step is taken from `safeStarts` of that plan.
class LiveRun {
public:
    /// `lengths` says how long each application turns out.
    LiveRun(Question question, std::map<TaskId, Seconds> lengths, Way way, std::mt19937_64& random);

    /// To the end, or until something goes wrong: what, in words; empty if nothing.
    std::string go();

private:
    bool planAgain();
    /// False once nothing is left to do.
    bool step();
    [[nodiscard]] Instant wanted(const SafeStart& safe);
    [[nodiscard]] const SafeStart* nextStart();
    [[nodiscard]] TaskProgress* nextEnd();
    [[nodiscard]] Instant endOf(const TaskProgress& running) const;
    [[nodiscard]] bool isStale(Instant moment) const;
    void start(const SafeStart& safe);
    [[nodiscard]] std::string judged() const;

    Question m_asked;
    Question m_question;
    std::map<TaskId, Seconds> m_lengths;
    Way m_way;
    std::mt19937_64& m_random;
    std::optional<Plan> m_plan;
    std::vector<SafeStart> m_safe;
    std::map<TaskId, Instant> m_wanted;
    std::string m_wrong;
};

/// Which plans are gone through live, and how often each.
struct Living {
    std::uint64_t seed = 1;
    int plans = 10;
    std::size_t zones = 3;
    std::size_t heads = 1;
    int runs = 3;
};

/// Goes through random guaranteed plans with random lengths, in every way, planned again and again; and
/// expects every plan on the way to be guaranteed, and the checker to find nothing. How many runs there were.
///
/// Hands are alike, as facts do not say who is at something. No look lies before its zone is usually applied:
/// it would be due after all where that is over sooner, which no plan provides for.
int liveThrough(const Living& living);

}  // namespace core::stagger
