#include "tests/oracle/gecode_model.h"

#include "tests/oracle/gecode_give.h"
#include "tests/oracle/gecode_search.h"
#include "tests/oracle/plan_from_starts.h"

#include <memory>

namespace oracle {
namespace {

using Kind = GecodeAnswer::Kind;

/// Makes one number of the aims least after the other.
class Solver {
public:
    Solver(const Rows& rows, const GecodeOptions& options)
        : m_options{options}
        , m_root{std::make_unique<GecodeSpace>(rows, options.first)}
    {
    }

    Kind solve(int stages)
    {
        if (m_root->status() == Gecode::SS_FAILED)
            return Kind::NothingFits;
        for (int stage = 0; stage < stages; ++stage) {
            const bool proved = improve(stage);
            if (!m_best)
                return proved ? Kind::NothingFits : Kind::Open;
            if (!proved)
                return Kind::Open;
            m_root->fix(stage, m_best->valueAt(stage));
            if (stage + 1 < stages)
                m_root->keepAtMost(stage + 1, m_best->valueAt(stage + 1));
        }
        return Kind::Best;
    }

    [[nodiscard]] const GecodeSpace* best() const { return m_best.get(); }
    [[nodiscard]] std::uint64_t failures() const { return m_failures; }

private:
    /// Whether it was proved that nothing better than what was found exists.
    bool improve(int stage)
    {
        Found found = leastAt(*m_root, stage, m_options);
        m_failures += found.failures;
        if (found.best)
            m_best = std::move(found.best);
        return found.proved;
    }

    const GecodeOptions& m_options;
    std::unique_ptr<GecodeSpace> m_root;
    std::unique_ptr<GecodeSpace> m_best;
    std::uint64_t m_failures = 0;
};

Starts startsOf(const Rows& rows, const GecodeSpace& space)
{
    Starts starts;
    for (std::size_t place = 0; place < rows.rows().size(); ++place)
        if (space.isDone(static_cast<int>(place)))
            starts[rows.rows()[place].id] = rows.instantAt(space.start(static_cast<int>(place)));
    return starts;
}

}  // namespace

GecodeAnswer planWithGecode(const core::stagger::Question& question, const GecodeOptions& options)
{
    const Rows rows{question, options.grid};
    if (rows.seeksGive())
        return giveWithGecode(rows, options);
    Solver solver{rows, options};
    GecodeAnswer answer;
    answer.kind = solver.solve(3 + (options.earliestStarts ? static_cast<int>(rows.rows().size()) : 0));
    answer.failures = solver.failures();
    if (solver.best() != nullptr)
        answer.plan = rows.hasFacts() ? solver.best()->plan()
                                      : planFromStarts(question, startsOf(rows, *solver.best()));
    return answer;
}

}  // namespace oracle
