#include "tests/oracle/gecode_search.h"

#include <gecode/search.hh>

#include <ctime>

namespace oracle {
namespace {

class Limits : public Gecode::Search::Stop {
public:
    explicit Limits(const GecodeOptions& options)
        : m_failures{options.mostFailures}
        , m_longest{options.longest}
    {
    }

    bool stop(const Gecode::Search::Statistics& statistics, const Gecode::Search::Options&) override
    {
        return statistics.fail > m_failures || (m_longest && processorTime() - m_started > *m_longest);
    }

private:
    /// Of this program, so that what else is going on does not matter.
    static std::chrono::duration<double> processorTime()
    {
        return std::chrono::duration<double>{static_cast<double>(std::clock()) / CLOCKS_PER_SEC};
    }

    std::uint64_t m_failures;
    std::optional<std::chrono::milliseconds> m_longest;
    std::chrono::duration<double> m_started = processorTime();
};

template <typename Engine>
Found run(Engine engine)
{
    Found found;
    while (GecodeSpace* better = engine.next())
        found.best.reset(better);
    found.failures = engine.statistics().fail;
    found.proved = !engine.stopped();
    return found;
}

}  // namespace

Found leastAt(GecodeSpace& root, int stage, const GecodeOptions& options)
{
    root.minimise(stage);
    if (root.status()
        == Gecode::SS_FAILED)  // An engine that restarts would forget to delete what it was given.
        return {.best = {}, .proved = true};
    Limits stop{options};
    Gecode::Search::Options search;
    search.stop = &stop;
    if (!options.restarts)
        return run(Gecode::BAB<GecodeSpace>{&root, search});
    // Deleted by the engine.
    search.cutoff = Gecode::Search::Cutoff::geometric(100, 1.5);
    search.nogoods_limit = 256;
    return run(Gecode::RBS<GecodeSpace, Gecode::BAB>{&root, search});
}

}  // namespace oracle
