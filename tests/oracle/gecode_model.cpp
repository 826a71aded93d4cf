#include "tests/oracle/gecode_model.h"

#include "tests/oracle/gecode_space.h"
#include "tests/oracle/plan_from_starts.h"

#include <gecode/search.hh>

#include <memory>

namespace oracle {
namespace {

using Kind = GecodeAnswer::Kind;

class Limits : public Gecode::Search::Stop {
public:
    explicit Limits(const GecodeOptions& options)
        : m_failures{options.mostFailures}
        , m_longest{options.longest}
    {
    }

    bool stop(const Gecode::Search::Statistics& statistics, const Gecode::Search::Options&) override
    {
        return statistics.fail > m_failures
            || (m_longest && std::chrono::steady_clock::now() - m_started > *m_longest);
    }

private:
    std::uint64_t m_failures;
    std::optional<std::chrono::milliseconds> m_longest;
    std::chrono::steady_clock::time_point m_started = std::chrono::steady_clock::now();
};

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
        m_root->minimise(stage);
        Limits stop{m_options};
        Gecode::Search::Options search;
        search.stop = &stop;
        Gecode::BAB<GecodeSpace> engine{m_root.get(), search};
        while (GecodeSpace* found = engine.next())
            m_best.reset(found);
        m_failures += engine.statistics().fail;
        return !engine.stopped();
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
    Solver solver{rows, options};
    GecodeAnswer answer;
    answer.kind = solver.solve(3 + (options.earliestStarts ? static_cast<int>(rows.rows().size()) : 0));
    answer.failures = solver.failures();
    if (solver.best() != nullptr)
        answer.plan = planFromStarts(question, startsOf(rows, *solver.best()));
    return answer;
}

}  // namespace oracle
