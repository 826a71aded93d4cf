#include "app/session/session.h"
#include "app/session/time_zones.h"
#include "app/storage/sqlite_journal.h"

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <random>
#include <thread>

/// The real program is killed at random moments of a run and started again, many
/// times. KILLS says how many.
namespace app {
namespace {

using session::Fact;
using session::RunId;
using session::Session;

const QString program = QStringLiteral(PROGRAM_DIR "/basinbell");
const QString demo = QStringLiteral(SOURCE_DIR "/resources/demo/wig-room-three-zones.json");

/// One life of the program: what it acknowledged before it was killed.
struct Life {
    int acknowledged = 0;  ///< The greatest number of a fact that it said was kept.
    bool endedByItself = false;
};

int greatestFact(const QByteArray& said)
{
    static const QRegularExpression number{QStringLiteral(R"(#(\d+) )")};
    int greatest = 0;
    for (auto match = number.globalMatch(QString::fromUtf8(said)); match.hasNext();)
        greatest = std::max(greatest, match.next().captured(1).toInt());
    return greatest;
}

/// Lets the program say so many lines, and so much time pass, and kills it.
Life live(const QString& folder, int lines, std::chrono::microseconds more)
{
    QProcess process;
    process.start(program,
                  {QStringLiteral("run"), demo, QStringLiteral("--resume"), QStringLiteral("--answer-all"),
                   QStringLiteral("--speed"), QStringLiteral("20000"), QStringLiteral("--from"),
                   QStringLiteral("2026-03-14T09:00"), QStringLiteral("--data"), folder});
    EXPECT_TRUE(process.waitForStarted());
    QByteArray said;
    while (said.count('\n') < lines && process.waitForReadyRead(20'000))
        said += process.readAllStandardOutput();
    std::this_thread::sleep_for(more);
    process.kill();  // SIGKILL
    process.waitForFinished();
    said += process.readAllStandardOutput();
    return {greatestFact(said), process.exitStatus() == QProcess::NormalExit};
}

/// What stands in the journal of a program that is dead.
struct Kept {
    std::optional<RunId> run;
    std::vector<Fact> facts;
};

Kept keptIn(const QString& folder, std::unique_ptr<storage::SqliteJournal>& journal)
{
    auto opened = storage::SqliteJournal::open(folder.toStdString());
    EXPECT_TRUE(opened.has_value()) << opened.error().what;
    if (!opened)
        return {};
    journal = std::move(*opened);
    const auto runs = journal->unfinished().value();
    EXPECT_LE(runs.size(), 1u);
    if (runs.empty())
        return {};
    const auto facts = journal->facts(runs.front().id);
    EXPECT_TRUE(facts.has_value()) << facts.error().what;
    return {runs.front().id, facts.value_or(std::vector<Fact>{})};
}

/// Takes the run up and compares where it stands, alarms included, with a fold of its facts from nothing.
void expectTheFold(std::unique_ptr<storage::SqliteJournal> journal, const Kept& kept)
{
    Session::Parts parts;
    parts.journal = std::move(journal);
    parts.clock = std::make_shared<session::FastClock>(session::FastClock::slowest, core::measure::Instant{});
    Session session{std::move(parts)};
    const auto problem = session.resume(*kept.run);
    ASSERT_FALSE(problem.has_value()) << *problem;

    EXPECT_EQ(session.facts(), kept.facts);
    core::run::Setup setup = session.setup();
    setup.planner = core::stagger::plan;
    const auto state = core::run::stateAt(setup, kept.facts, session.state().now);
    EXPECT_EQ(session.state(), state);
    EXPECT_EQ(session.alarms(), core::alarm::alarmsAt(state, {}, state.now));
}

TEST(KilledRun, HasEveryAcknowledgedAnswerAndStandsWhereItStood)
{
    const QTemporaryDir folder;
    std::mt19937 random{20260314};
    Kept before;
    int ended = 0;
    int grew = 0;
    std::size_t acknowledged = 0;
    std::size_t lost = 0;
    for (int kill = 0; kill < KILLS; ++kill) {
        const int lines = static_cast<int>(random() % 9);
        const std::chrono::microseconds more{random() % 30'000};
        const Life life = live(folder.path(), lines, more);
        SCOPED_TRACE("kill " + std::to_string(kill) + ", after " + std::to_string(lines) + " lines and "
                     + std::to_string(more.count()) + " us");

        std::unique_ptr<storage::SqliteJournal> journal;
        const Kept kept = keptIn(folder.path(), journal);
        ASSERT_FALSE(HasFailure());
        if (!kept.run) {  // It came to its end, or had not begun.
            ended += before.run ? 1 : 0;
            before = kept;
            continue;
        }
        const bool sameRun = before.run == kept.run;
        const auto told = static_cast<std::size_t>(life.acknowledged);
        acknowledged += told;
        lost += told - std::min(told, kept.facts.size());
        ASSERT_EQ(lost, 0U);
        if (sameRun) {
            ASSERT_GE(kept.facts.size(), before.facts.size());
            ASSERT_TRUE(std::equal(before.facts.begin(), before.facts.end(), kept.facts.begin()));
        }
        if (kept.facts.size() > (sameRun ? before.facts.size() : 0))
            ++grew;
        expectTheFold(std::move(journal), kept);
        ASSERT_FALSE(HasFailure());
        before = kept;
    }
    std::printf("%d kills, %d of them while facts were added, %d after the end of a run; "
                "%zu facts acknowledged in runs that went on, %zu lost\n",
                KILLS, grew, ended, acknowledged, lost);
    EXPECT_GE(ended, KILLS / 40) << "runs must also come to their end, however often they are killed";
    EXPECT_GT(grew, KILLS / 4) << "the kills must fall while there is something to lose";
}

}  // namespace
}  // namespace app
