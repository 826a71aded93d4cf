#include "app/session/journal.h"

#include <QCoreApplication>

#include <algorithm>

namespace app::session {

namespace {

struct JournalText {
    Q_DECLARE_TR_FUNCTIONS(Journal)
};

JournalError notThere()
{
    return {JournalError::Kind::NotThere, JournalText::tr("There is no such run.").toStdString()};
}

}  // namespace

MemoryJournal::Kept* MemoryJournal::find(RunId run)
{
    const auto found =
        std::find_if(m_runs.begin(), m_runs.end(), [&](const Kept& kept) { return kept.stored.id == run; });
    return found == m_runs.end() ? nullptr : &*found;
}

Journal::Result<RunId> MemoryJournal::begin(const NewRun& run)
{
    const RunId id{static_cast<std::int64_t>(m_runs.size()) + 1};
    m_runs.push_back({{id, run, {}, {}}, {}});
    return id;
}

Journal::Result<void> MemoryJournal::amend(RunId run, std::size_t revision,
                                           const std::vector<std::string>& services)
{
    Kept* const kept = find(run);
    if (!kept)
        return tl::unexpected{notThere()};
    std::vector<std::vector<std::string>>& revisions = kept->stored.revisions;
    revisions.resize(std::max(revisions.size(), revision));
    revisions[revision - 1] = services;
    return {};
}

Journal::Result<std::vector<FactNumber>> MemoryJournal::append(RunId run, std::span<const Fact> facts)
{
    Kept* const kept = find(run);
    if (!kept)
        return tl::unexpected{notThere()};
    std::vector<FactNumber> numbers;
    for (Fact fact : facts) {
        fact.number = FactNumber{static_cast<std::int64_t>(kept->facts.size()) + 1};
        numbers.push_back(fact.number);
        kept->facts.push_back(fact);
        if (fact.kind == core::run::FactKind::Ended)
            kept->stored.ended = fact.happened;
    }
    return numbers;
}

Journal::Result<std::vector<Fact>> MemoryJournal::facts(RunId run)
{
    if (const Kept* const kept = find(run))
        return kept->facts;
    return tl::unexpected{notThere()};
}

Journal::Result<std::vector<StoredRun>> MemoryJournal::unfinished()
{
    std::vector<StoredRun> open = *runs();
    std::erase_if(open, [](const StoredRun& run) { return run.ended.has_value(); });
    return open;
}

Journal::Result<std::vector<StoredRun>> MemoryJournal::runs()
{
    std::vector<StoredRun> all;
    for (const Kept& kept : m_runs)
        all.push_back(kept.stored);
    std::stable_sort(all.begin(), all.end(), [](const StoredRun& a, const StoredRun& b) {
        return a.run.began != b.run.began ? a.run.began > b.run.began : a.id > b.id;
    });
    return all;
}

Journal::Result<StoredRun> MemoryJournal::run(RunId run)
{
    if (const Kept* const kept = find(run))
        return kept->stored;
    return tl::unexpected{notThere()};
}

Journal::Result<void> MemoryJournal::rebase(RunId run, const TimeBase& base)
{
    Kept* const kept = find(run);
    if (!kept)
        return tl::unexpected{notThere()};
    kept->stored.run.base = base;
    return {};
}

Journal::Result<void> MemoryJournal::eraseServices(RunId run)
{
    Kept* const kept = find(run);
    if (!kept)
        return tl::unexpected{notThere()};
    if (!kept->stored.ended)
        return tl::unexpected{
            JournalError{JournalError::Kind::Other,
                         JournalText::tr("The run is still open. End it before erasing it.").toStdString()}};
    kept->stored.run.services.clear();
    kept->stored.revisions.clear();
    kept->stored.run.prepared.clear();
    for (Fact& fact : kept->facts)
        fact.tone.clear();
    return {};
}

}  // namespace app::session
