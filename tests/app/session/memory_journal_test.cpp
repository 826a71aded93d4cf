#include "app/session/journal.h"

#include <gtest/gtest.h>

namespace app::session {
namespace {

Fact fact(core::run::FactKind kind)
{
    Fact made;
    made.kind = kind;
    made.happened = Instant{std::chrono::seconds{77}};
    return made;
}

TEST(MemoryJournal, NumbersFactsAndEndsARun)
{
    MemoryJournal journal;
    const RunId run = journal.begin({}).value();
    const std::vector facts{fact(core::run::FactKind::Started), fact(core::run::FactKind::Ended)};

    EXPECT_EQ(journal.unfinished().value().size(), 1u);
    EXPECT_EQ(journal.append(run, facts).value(), (std::vector{FactNumber{1}, FactNumber{2}}));
    EXPECT_EQ(journal.facts(run).value().size(), 2u);
    EXPECT_TRUE(journal.unfinished().value().empty());
    EXPECT_EQ(journal.run(run).value().ended, facts.back().happened);
    EXPECT_FALSE(journal.isDurable());
}

TEST(MemoryJournal, KnowsOnlyItsOwnRuns)
{
    MemoryJournal journal;
    EXPECT_EQ(journal.append(RunId{1}, {}).error().kind, JournalError::Kind::NotThere);
    EXPECT_EQ(journal.facts(RunId{1}).error().kind, JournalError::Kind::NotThere);
    EXPECT_EQ(journal.run(RunId{1}).error().kind, JournalError::Kind::NotThere);
}

}  // namespace
}  // namespace app::session
