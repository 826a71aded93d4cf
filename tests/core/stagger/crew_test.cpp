#include "core/stagger/draft.h"
#include "core/temporal/search.h"
#include "tests/core/stagger/support.h"
#include "tests/oracle/random_service.h"

#include <gtest/gtest.h>

#include <algorithm>

// The clauses with which the crew answers times that it cannot keep.

namespace core::stagger {
namespace {

using temporal::Clause;
using Times = std::vector<Time>;

bool holdsSomewhere(const Clause& clause, const Times& times)
{
    return std::ranges::any_of(clause, [&](const Lag& lag) { return holds(lag, times); });
}

struct Reply {
    Times times;
    std::vector<Clause> clauses;
};

/// All that the crew was asked in one search, and the answer at its end.
struct Talk {
    std::vector<Reply> replies;
    std::optional<Times> answer;
};

Talk listenIn(Draft& draft)
{
    Talk talk;
    draft.problem.lazyClauses = [&](const Times& times) {
        talk.replies.push_back({times, brokenByCrew(draft, times)});
        return talk.replies.back().clauses;
    };
    if (const temporal::Outcome outcome = temporal::search(draft.problem, {}); outcome.best)
        talk.answer = outcome.best->times;
    return talk;
}

// Else the search would be asked the same again, for ever; and what an answer breaks is no rule.
TEST(Crew, ClausesAreBrokenByTheTimesAskedAboutAndKeptByEveryAnswer)
{
    std::size_t clauses = 0;
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        const Question question = oracle::randomQuestion(seed);
        SCOPED_TRACE(oracle::questionText(question));
        Draft draft = draftOf(question, Strictness::Keep);
        const Talk talk = listenIn(draft);
        for (const Reply& reply : talk.replies) {
            for (const Clause& clause : reply.clauses) {
                EXPECT_FALSE(holdsSomewhere(clause, reply.times));
                EXPECT_TRUE(!talk.answer || holdsSomewhere(clause, *talk.answer));
                ++clauses;
            }
        }
    }
    EXPECT_GT(clauses, 100U);
}

// Answers to other questions about the same service are answers for the crew too.
TEST(Crew, ClausesAreKeptByAnswersOfOtherTargets)
{
    std::size_t compared = 0;
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        Question question = oracle::randomQuestion(seed);
        SCOPED_TRACE(oracle::questionText(question));
        Draft draft = draftOf(question, Strictness::Keep);
        const Talk talk = listenIn(draft);
        for (service::Coat& coat : question.services.front().coats) {
            for (Zone& zone : coat.zones)
                zone.develop.target = seed % 2 == 0 ? zone.develop.least : zone.develop.most;
        }
        Draft other = draftOf(question, Strictness::Keep);
        ASSERT_EQ(other.problem.points, draft.problem.points);
        const Talk otherTalk = listenIn(other);
        if (!otherTalk.answer)
            continue;
        for (const Reply& reply : talk.replies) {
            for (const Clause& clause : reply.clauses) {
                EXPECT_TRUE(holdsSomewhere(clause, *otherTalk.answer));
                ++compared;
            }
        }
    }
    EXPECT_GT(compared, 50U);
}

/// `tasks` zones that all have to be applied at the same time.
Question allAtOnce(std::size_t tasks, std::size_t hands)
{
    std::vector<Zone> zones;
    for (std::size_t count = 0; count < tasks; ++count)
        zones.push_back(makeZone("Zone " + std::to_string(count + 1), minutes{10}, exactly(30)));
    Service service = fromOpening(zones);
    while (service.crew.hands.size() < hands)
        addHands(service);
    return ask(service);
}

// Twelve alike pairs of hands can share out twelve of thirteen tasks in hundreds of millions of ways. One is
// enough to see that it is always one too many.
TEST(Crew, HandsThatAreAlikeAreNotTriedInEveryOrder)
{
    EXPECT_TRUE(fits(allAtOnce(12, 12)));
    EXPECT_FALSE(fits(allAtOnce(13, 12)));
}

TEST(Crew, FullHandsAreFoundWhereverOnePersonCanDoMoreThanAnother)
{
    Question question = allAtOnce(3, 3);
    auto& hands = question.services[0].crew.hands;
    hands[1].kinds = {service::Work::Rinse};
    EXPECT_FALSE(fits(question));
    hands[1].kinds = {service::Work::Apply};
    const Plan plan = planned(question);
    for (std::size_t zone = 0; zone < 3; ++zone)
        EXPECT_EQ(plan.find(idOf(TaskKind::Apply, zone))->hands, zone);
}

}  // namespace
}  // namespace core::stagger
