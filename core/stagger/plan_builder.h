#pragma once

#include "core/stagger/draft.h"
#include "core/temporal/search.h"

namespace core::stagger {

/// Turns times into a plan. The only maker of plans.
class PlanBuilder {
public:
    static Plan build(const Draft& draft, const temporal::Outcome& outcome);

    /// What was found out about a plan while its parts were planned.
    struct Joined {
        Worth worth;
        Worth bound;
        std::vector<BrokenLimit> broken;
    };
    /// The plan of a draft in which all starts are settled.
    static Plan join(const Draft& draft, const temporal::Outcome& outcome, Joined parts);

    /// The same plan, saying what give it has (in tenths) and whether none has a greater one.
    static Plan withGive(Plan plan, int give, bool proved);

    /// That of a plan that was made for usual lengths.
    static Plan withOwnGive(const Question& question, Plan plan, int give, bool proved);

    /// The same plan, every task done by who does it in `other`, a plan of the same tasks.
    static Plan withCrewOf(const Plan& other, Plan plan);

    /// The same plan, of which it is known that none with such a give is worth less than `bound`.
    static Plan withBound(Plan plan, const Worth& bound);

private:
    PlanBuilder(const Draft& draft, const std::vector<Time>& times)
        : m_draft{draft}
        , m_times{times}
    {
    }
    void addTasks();
    void addPast();
    void addZones();
    void addBroken();
    [[nodiscard]] TaskId endingAt(std::size_t service, Instant end) const;
    [[nodiscard]] TaskId breakingTask(const BreakableLag& limit) const;
    void addEnds();
    void addWorth(const temporal::Outcome& outcome);
    [[nodiscard]] Seconds stalenessOf(const DraftedZone& zone) const;
    [[nodiscard]] Worth worthOf() const;
    [[nodiscard]] Instant at(const Moment& moment) const { return m_draft.instantOf(moment, m_times); }
    [[nodiscard]] Time time(const Moment& moment) const
    {
        return m_times[static_cast<std::size_t>(moment.point)] + moment.offset;
    }

    const Draft& m_draft;
    const std::vector<Time>& m_times;
    PlanData m_data;
};

/// Why nothing fits; asks the search again without one demand after another.
/// `conflicts` bounds the work.
NoPlan reasonFor(const Question& question, const Budget& budget);

}  // namespace core::stagger
