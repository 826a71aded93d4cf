#include "tests/app/command/program_runner.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

// Runs that are told again.

namespace app::command {
namespace {

using testing::HasSubstr;

QStringList replaying(const QTemporaryDir& folder, const QStringList& more = {})
{
    return QStringList{QStringLiteral("replay"), QStringLiteral("--data"), folder.path()} + more;
}

TEST(Replay, TellsARunAgainFromItsFactsAlone)
{
    const QTemporaryDir folder;
    EXPECT_THAT(ran(replaying(folder, {QStringLiteral("--list")})).out, HasSubstr("knows no run"));
    EXPECT_EQ(ran(replaying(folder)).status, 1);
    const Ran played = ran(playing(folder, demo));
    ASSERT_EQ(played.status, 0) << played.err;

    const Ran told = ran(replaying(folder));
    EXPECT_EQ(told.status, 0) << told.err;
    EXPECT_EQ(told.out, ran(replaying(folder)).out) << "the same facts, the same words";
    // Each answer as it was printed when it was given, and what each zone got in the end.
    std::size_t answers = 0;
    std::istringstream lines{played.out};
    for (std::string line; std::getline(lines, line);) {
        const auto number = line.find("#");
        if (number == std::string::npos)
            continue;
        EXPECT_THAT(told.out, HasSubstr(line.substr(number)));
        ++answers;
    }
    EXPECT_GT(answers, 10U);
    EXPECT_THAT(told.out, HasSubstr("  * "));
    EXPECT_THAT(played.out, HasSubstr(told.out.substr(told.out.rfind("\n\n") + 2)));
    EXPECT_THAT(ran(replaying(folder, {QStringLiteral("--list")})).out, testing::StartsWith("1  "));
}

TEST(Replay, ShowsHowARunStoodAtAMoment)
{
    const QTemporaryDir folder;
    ASSERT_EQ(
        ran(playing(folder, demo) + QStringList{QStringLiteral("--from"), QStringLiteral("2026-03-14T14:00")})
            .status,
        0);
    const auto at = [&](const char* time) {
        return ran(replaying(folder, {QStringLiteral("--at"), QString::fromUtf8(time)}));
    };
    EXPECT_THAT(at("2026-03-14T14:00").out, HasSubstr("Root  waits"));
    EXPECT_THAT(at("2026-03-14T14:01").out, HasSubstr("NOW  Has it ended?"));
    EXPECT_THAT(at("2026-03-14T23:00").out, HasSubstr("Every task is done."));
    EXPECT_THAT(at("2026-03-14T13:00").err, HasSubstr("The run began at"));
    EXPECT_EQ(at("2026-03-14T13:00").status, 1);
    EXPECT_THAT(ran(replaying(folder, {QStringLiteral("--of"), QStringLiteral("7")})).err,
                HasSubstr("no run 7"));
    EXPECT_THAT(ran(replaying(folder, {QStringLiteral("--of"), QStringLiteral("x")})).err,
                HasSubstr("--of x"));
}

// The same facts beside another plan: what was done stays, what was asked for is the other service's.
TEST(Replay, TellsARunAgainAsAnotherServiceWouldHavePlannedIt)
{
    const QTemporaryDir folder;
    ASSERT_EQ(ran(playing(folder, person)).status, 0);
    QByteArray text = fileText(person);
    text.replace("\"target\": 30", "\"target\": 29");
    QFile other{folder.filePath(QStringLiteral("other.json"))};
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    other.write(text);
    other.close();

    const Ran told = ran(replaying(folder, {other.fileName()}));
    EXPECT_EQ(told.status, 0) << told.err;
    EXPECT_THAT(told.out, HasSubstr("target 29 min"));
    EXPECT_NE(told.out, ran(replaying(folder)).out);
    const Ran strange = ran(replaying(folder, {demo}));
    EXPECT_EQ(strange.status, 1);
    EXPECT_THAT(strange.err, HasSubstr("does not go with this run"));
}

}  // namespace
}  // namespace app::command
