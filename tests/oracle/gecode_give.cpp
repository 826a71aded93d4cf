#include "tests/oracle/gecode_give.h"

#include "tests/core/temporal/naive_closure.h"
#include "tests/oracle/gecode_search.h"
#include "tests/oracle/plan_from_starts.h"

#include <algorithm>

namespace oracle {
namespace {

using core::temporal::Lag;
using core::temporal::NaiveClosure;
using core::temporal::Time;
using Kind = GecodeAnswer::Kind;

/// What no plan for a share may do: have all of `order`; or have it and break `lag`, if there is one.
struct Cut {
    Order order;
    std::optional<Lag> lag;
};

class GiveSearch {
public:
    GiveSearch(const Rows& rows, const GecodeOptions& options)
        : m_rows{rows}
        , m_options{options}
        , m_points{rows.question()}
        , m_stages{3 + (options.earliestStarts ? static_cast<int>(rows.rows().size()) : 0)}
    {
    }

    GecodeAnswer run()
    {
        GecodeAnswer answer;
        answer.kind = Kind::Best;
        for (int share = 0; share <= 100 && answer.kind == Kind::Best; share += 10) {
            m_share = share;
            if (!m_best || cutFor(*m_best))
                answer.kind = solve();
            if (answer.kind != Kind::Best)
                break;
            answer.give = share;
        }
        if (answer.give && answer.kind == Kind::NothingFits)
            answer.kind = Kind::Best;  // Only more give does not fit.
        answer.failures = m_failures;
        answer.orders = static_cast<int>(m_cuts.size());
        if (m_best)
            answer.plan = m_best->plan();
        return answer;
    }

private:
    /// The best plan for the share becomes `m_best`; else that one is left as it is.
    Kind solve()
    {
        GecodeSpace root{m_rows, m_options.first};
        for (const Cut& cut : m_cuts)
            post(cut, root);
        if (m_best)
            root.keepAtLeast(0, m_best->valueAt(0));
        std::unique_ptr<GecodeSpace> best;
        for (int stage = 0; stage < m_stages; ++stage) {
            while (true) {
                Found found = leastAt(root, stage, m_options);
                m_failures += found.failures;
                if (!found.proved || static_cast<int>(m_cuts.size()) > m_options.mostOrders)
                    return Kind::Open;
                if (!found.best)
                    return Kind::NothingFits;
                best = std::move(found.best);
                const std::optional<Cut> cut = cutFor(*best);
                if (!cut)
                    break;
                m_cuts.push_back(*cut);
                post(*cut, root);
            }
            root.fix(stage, best->valueAt(stage));
            if (stage + 1 < m_stages)
                root.keepAtMost(stage + 1, best->valueAt(stage + 1));
        }
        m_best = std::move(best);
        return Kind::Best;
    }

    void post(const Cut& cut, GecodeSpace& root) const
    {
        if (cut.lag)
            root.demand(cut.order, m_points, *cut.lag);
        else
            root.ruleOut(cut.order);
    }

    /// Nothing where the plan holds for the share.
    [[nodiscard]] std::optional<Cut> cutFor(const GecodeSpace& space) const
    {
        const PlanData plan = space.plan();
        const PlanView view{m_rows.question(), plan};
        Cut cut{orderOf(view), std::nullopt};
        std::ranges::copy(space.gaps(), std::back_inserter(cut.order));
        const auto network = networkOf(m_points, cut.order, m_share);
        const NaiveClosure closure{network};
        if (closure.isControllable()) {
            const std::vector<Time> times = m_points.timesOf(view);
            const std::vector<Lag> broken = closure.brokenBy(times);
            if (broken.empty())
                return std::nullopt;
            cut.lag = *std::ranges::max_element(broken, {}, [&times](const Lag& lag) {
                return times[static_cast<std::size_t>(lag.to)] - times[static_cast<std::size_t>(lag.from)]
                    - lag.most;
            });
        }
        leaveOutWhatCan(cut);
        return cut;
    }

    /// Leaves of the order only what the cut takes.
    void leaveOutWhatCan(Cut& cut) const
    {
        for (std::size_t place = cut.order.size(); place-- > 0;) {
            Cut shorter = cut;
            shorter.order.erase(shorter.order.begin() + static_cast<std::ptrdiff_t>(place));
            if (isTrue(shorter))
                cut = std::move(shorter);
        }
    }

    [[nodiscard]] bool isTrue(const Cut& cut) const
    {
        const auto network = networkOf(m_points, cut.order, m_share);
        const NaiveClosure closure{network};
        return cut.lag ? closure.forces(*cut.lag) : !closure.isControllable();
    }

    const Rows& m_rows;
    const GecodeOptions& m_options;
    const Points m_points;
    int m_stages;
    int m_share = 0;
    std::vector<Cut> m_cuts;
    std::unique_ptr<GecodeSpace> m_best;
    std::uint64_t m_failures = 0;
};

}  // namespace

GecodeAnswer giveWithGecode(const Rows& rows, const GecodeOptions& options)
{
    return GiveSearch{rows, options}.run();
}

}  // namespace oracle
