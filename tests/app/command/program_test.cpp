#include "tests/app/command/program_runner.h"

#include <QDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace app::command {
namespace {

using testing::HasSubstr;

TEST(Program, HelpsAndTellsItsVersion)
{
    EXPECT_EQ(ran({QStringLiteral("--help")}).status, 0);
    EXPECT_THAT(ran({QStringLiteral("--help")}).out, HasSubstr("Usage: basinbell COMMAND"));
    EXPECT_THAT(ran({QStringLiteral("run"), QStringLiteral("--help")}).out, HasSubstr("--answer-all"));
    EXPECT_THAT(ran({QStringLiteral("--version")}).out, testing::MatchesRegex("basinbell [0-9.]+\n"));
    EXPECT_THAT(ran({QStringLiteral("cautions")}).out, HasSubstr("leaflet"));
}

TEST(Program, PlansAFileOrStandardInputAlike)
{
    const Ran file = ran({QStringLiteral("plan"), demo, QStringLiteral("--from"), QStringLiteral("09:00")});
    const Ran input =
        ran({QStringLiteral("plan"), QStringLiteral("-"), QStringLiteral("--from"), QStringLiteral("09:00")},
            fileText(demo));

    EXPECT_EQ(file.status, 0) << file.err;
    EXPECT_THAT(file.out, HasSubstr("Rinse All together"));
    EXPECT_EQ(input.out, file.out);
    EXPECT_EQ(file.err, "");
}

QStringList premiere(const QStringList& options)
{
    const QString folder = QStringLiteral(SOURCE_DIR "/resources/demo/premiere/");
    return QStringList{QStringLiteral("plan"), folder + QStringLiteral("ghost.json"),
                       folder + QStringLiteral("countess.json"), folder + QStringLiteral("fishmonger.json")}
    + options;
}

TEST(Program, PlansSeveralHeadsOnOneCrew)
{
    const Ran plan = ran(premiere({QStringLiteral("--from"), QStringLiteral("14:00")}));
    EXPECT_EQ(plan.status, 0) << plan.err;
    EXPECT_THAT(plan.out, HasSubstr("2 pairs of hands, 1 basin."));
    EXPECT_THAT(plan.out, HasSubstr("Proved: there is no better plan."));
    for (const char* const head : {"The ghost", "The countess", "The fishmonger"})
        EXPECT_THAT(plan.out, HasSubstr(std::string{"  "} + head + "  "));
    EXPECT_EQ(ran(premiere({QStringLiteral("--from"), QStringLiteral("17:30")})).status, 2);
}

TEST(Program, StopsPlanningWhenTheSecondsAreUp)
{
    // Four times the same three heads are more than can be proved in that time.
    QStringList day = premiere({});
    for (int times = 0; times < 2; ++times)
        day += day.mid(1);
    day += QStringList{QStringLiteral("--from"), QStringLiteral("08:00"), QStringLiteral("--seconds"),
                       QStringLiteral("2")};
    const Ran plan = ran(day);
    EXPECT_EQ(plan.status, 0) << plan.out << plan.err;
    EXPECT_THAT(plan.out, HasSubstr("Not proved best: the search was stopped. "));
    EXPECT_THAT(plan.out, HasSubstr("  The ghost 4  "));
}

TEST(Program, EndsWithTwoWhenNothingFits)
{
    QByteArray tight = fileText(demo);
    tight.replace("\"demo\": true,", "\"demo\": true, \"ready_by\": \"09:20\",");

    const Ran plan =
        ran({QStringLiteral("plan"), QStringLiteral("-"), QStringLiteral("--from"), QStringLiteral("09:00")},
            tight);

    EXPECT_EQ(plan.status, 2) << plan.err;
    EXPECT_FALSE(plan.out.empty());
}

QByteArray tightDemo()
{
    QByteArray tight = fileText(demo);
    tight.replace("\"demo\": true,", "\"demo\": true, \"ready_by\": \"09:20\",");
    return tight;
}

TEST(Program, ExplainsWhyNothingFitsAndWhatWouldHelp)
{
    const QStringList from{QStringLiteral("--from"), QStringLiteral("09:00")};
    const Ran plan = ran(QStringList{QStringLiteral("plan"), QStringLiteral("-")} + from, tightDemo());
    EXPECT_THAT(plan.out, HasSubstr("basinbell explain"));
    const Ran why = ran(QStringList{QStringLiteral("explain"), QStringLiteral("-")} + from, tightDemo());

    EXPECT_EQ(why.status, 2) << why.err;
    EXPECT_THAT(why.out, HasSubstr("ready by the promised time"));
    EXPECT_THAT(why.out, HasSubstr("1   Promise it "));
    EXPECT_EQ(ran(QStringList{QStringLiteral("explain"), demo} + from).status, 0);
}

TEST(Program, SavesTheServiceWithACureAndItFits)
{
    const QTemporaryDir folder;
    const QString cured = folder.filePath(QStringLiteral("cured.json"));
    const QStringList ask{QStringLiteral("explain"), QStringLiteral("-"),      QStringLiteral("--from"),
                          QStringLiteral("09:00"),   QStringLiteral("--cure"), QStringLiteral("1")};
    const Ran saved = ran(ask + QStringList{QStringLiteral("--save"), cured}, tightDemo());
    EXPECT_EQ(saved.status, 0) << saved.err;
    EXPECT_THAT(saved.out, HasSubstr("Saved in " + cured.toStdString()));
    EXPECT_EQ(ran({QStringLiteral("plan"), cured, QStringLiteral("--from"), QStringLiteral("09:00")}).status,
              0);

    const Ran printed = ran(ask + QStringList{QStringLiteral("--save"), QStringLiteral("-")}, tightDemo());
    EXPECT_EQ(printed.status, 0) << printed.err;
    EXPECT_EQ(printed.out, fileText(cured).toStdString());
    const Ran shown = ran(ask, tightDemo());
    EXPECT_EQ(shown.status, 2);
    EXPECT_THAT(shown.out, HasSubstr("Rinse All together"));
}

TEST(Program, CuresOneOfSeveralHeadsSoThatAllFit)
{
    const QTemporaryDir folder;
    const QString cured = folder.filePath(QStringLiteral("cured.json"));
    const QStringList from{QStringLiteral("--from"), QStringLiteral("09:00")};
    const QStringList both{QStringLiteral("explain"), QStringLiteral("-"), person};
    const Ran why = ran(both + from, tightDemo());
    EXPECT_EQ(why.status, 2) << why.err;
    EXPECT_THAT(why.out, HasSubstr("1   Promise it "));

    const Ran saved =
        ran(both + from
                + QStringList{QStringLiteral("--cure"), QStringLiteral("1"), QStringLiteral("--save"), cured},
            tightDemo());
    EXPECT_EQ(saved.status, 0) << saved.err;
    EXPECT_THAT(saved.out, HasSubstr("in place of -"));
    EXPECT_EQ(ran(QStringList{QStringLiteral("plan"), cured, person} + from).status, 0);
}

TEST(Program, RefusesACureThatIsNotThere)
{
    const QStringList from{QStringLiteral("--from"), QStringLiteral("09:00")};
    const QStringList ask =
        QStringList{QStringLiteral("explain"), QStringLiteral("-"), QStringLiteral("--cure")};
    const Ran none = ran(ask + QStringList{QStringLiteral("99")} + from, tightDemo());
    EXPECT_EQ(none.status, 1);
    EXPECT_THAT(none.err, HasSubstr("--cure 99: there "));
    const Ran fits = ran(ask + QStringList{QStringLiteral("1")} + from, fileText(demo));
    EXPECT_EQ(fits.status, 1);
    EXPECT_THAT(fits.err, HasSubstr("it fits as it is"));
    const Ran nowhere = ran(
        ask + QStringList{QStringLiteral("1"), QStringLiteral("--save"), QStringLiteral("/proc/no/a.json")}
            + from,
        tightDemo());
    EXPECT_EQ(nowhere.status, 1);
    EXPECT_THAT(nowhere.err, HasSubstr("it was not saved"));
}

TEST(Program, ForecastsWhatAPlanComesTo)
{
    const QStringList asked{QStringLiteral("forecast"), demo,
                            QStringLiteral("--from"),   QStringLiteral("09:00"),
                            QStringLiteral("--runs"),   QStringLiteral("200")};
    const Ran forecast = ran(asked);

    EXPECT_EQ(forecast.status, 0) << forecast.err;
    EXPECT_THAT(forecast.out, HasSubstr("followed 200 times"));
    // The plan of the demo is guaranteed, so chance cannot take a zone out of its limits.
    EXPECT_THAT(forecast.out, HasSubstr("Every zone stays inside its limits: every time."));
    EXPECT_THAT(forecast.out, HasSubstr("It hangs most on: Apply "));
    EXPECT_EQ(ran(asked).out, forecast.out);
}

TEST(Program, EndsWithOneAndALineForEachProblem)
{
    QByteArray wrong = fileText(demo);
    wrong.replace("\"least\": 25", "\"least\": 45").replace("\"basins\": 1", "\"basins\": 0");

    for (const char* const command : {"plan", "check"}) {
        const Ran result = ran({QString::fromUtf8(command), QStringLiteral("-")}, wrong);
        EXPECT_EQ(result.status, 1) << command;
        EXPECT_EQ(std::count(result.err.begin(), result.err.end(), '\n'), 2) << result.err;
        EXPECT_THAT(result.err, HasSubstr("coats[0].zones[0].develop"));
        EXPECT_EQ(result.out, "");
    }
    EXPECT_EQ(ran({QStringLiteral("plan")}).status, 1);
    EXPECT_EQ(ran({QStringLiteral("check"), demo}).status, 0);
}

TEST(Program, RunsAServiceToItsEndWithEveryQuestionAnswered)
{
    const QTemporaryDir folder;
    const Ran run = ran(playing(folder, demo));

    EXPECT_EQ(run.status, 0) << run.err;
    EXPECT_THAT(run.out, HasSubstr("finished Rinse All together"));
    EXPECT_THAT(run.out, HasSubstr("The run is over."));
    EXPECT_THAT(run.out, HasSubstr("on target"));
    const Ran again =
        ran({QStringLiteral("run"), QStringLiteral("--resume"), QStringLiteral("--data"), folder.path()});
    EXPECT_EQ(again.status, 1);
    EXPECT_THAT(again.err, HasSubstr("There is no run to take up"));
}

TEST(Program, SaysTheSameHoweverFastARunIsPlayed)
{
    const QTemporaryDir first;
    const QTemporaryDir second;
    QStringList fast = playing(first, demo);
    QStringList slower = playing(second, demo);
    for (QStringList* const arguments : {&fast, &slower})
        *arguments << QStringLiteral("--from") << QStringLiteral("2026-03-14T14:00");
    slower.replace(3, QStringLiteral("3000"));

    EXPECT_EQ(ran(slower).out, ran(fast).out);
}

TEST(Program, ShowsTheCautionsBeforeTheFirstRunOnAPersonOnly)
{
    const QTemporaryDir folder;
    EXPECT_THAT(ran(playing(folder, person)).out, HasSubstr("leaflet comes first"));
    EXPECT_THAT(ran(playing(folder, person)).out, testing::Not(HasSubstr("leaflet comes first")));
    const QTemporaryDir other;
    EXPECT_THAT(ran(playing(other, demo)).out, testing::Not(HasSubstr("leaflet comes first")));
}

TEST(Program, TakesAnswersFromAPipeAndKeepsTheRunAtItsEnd)
{
    const QTemporaryDir folder;
    const Ran first =
        ran({QStringLiteral("run"), demo, QStringLiteral("--data"), folder.path()}, "\nbanana\n\n");

    EXPECT_EQ(first.status, 0) << first.err;
    EXPECT_THAT(first.out, HasSubstr("#1 started Mix"));
    EXPECT_THAT(first.out, HasSubstr("Type ? for what can be typed"));
    EXPECT_THAT(first.out, HasSubstr("#2 finished Mix"));
    EXPECT_THAT(first.out, HasSubstr("The run is kept"));

    const Ran second =
        ran({QStringLiteral("run"), QStringLiteral("--resume"), QStringLiteral("--data"), folder.path()},
            "u\nq\n");
    EXPECT_THAT(second.out, HasSubstr("Taken up again after 2 answers, the last: #2 finished Mix"));
    EXPECT_THAT(second.out, HasSubstr("#3 undone #2"));
}

TEST(Program, PutsAnswersRightFromAPipeAndTellsThemAgain)
{
    const QTemporaryDir folder;
    const Ran run = ran({QStringLiteral("run"), demo, QStringLiteral("--data"), folder.path()},
                        "\n\n\n\n\n\n\nheat 10\nanswers\naway 5\nadd Nape like Root 3\ne\n");
    EXPECT_EQ(run.status, 0) << run.err;
    EXPECT_THAT(run.out, HasSubstr("#8 heat on for 10 min at "));
    EXPECT_THAT(run.out, HasSubstr("only the product's leaflet says"));
    EXPECT_THAT(run.out, HasSubstr("Put one right with u #12"));
    EXPECT_THAT(run.out, HasSubstr("is away from "));
    EXPECT_THAT(run.out, HasSubstr("Nape is a zone more"));
    const Ran told = ran({QStringLiteral("replay"), QStringLiteral("--data"), folder.path()});
    EXPECT_THAT(told.out, HasSubstr("heat on for 10 min"));
    EXPECT_THAT(told.out, HasSubstr("Nape is a zone more"));
}

TEST(Program, ErasesWhatCouldNameAPersonAndSaysWhatItKeeps)
{
    const QTemporaryDir folder;
    const auto erase = [&](const QStringList& more) {
        return ran(QStringList{QStringLiteral("erase"), QStringLiteral("--data"), folder.path()} + more);
    };
    const QStringList first{QStringLiteral("--of"), QStringLiteral("1")};
    ran({QStringLiteral("run"), demo, QStringLiteral("--data"), folder.path()}, "\n");
    EXPECT_THAT(erase({}).err, HasSubstr("Which run?"));
    EXPECT_THAT(erase({QStringLiteral("--of"), QStringLiteral("9")}).err, HasSubstr("no run 9"));
    EXPECT_THAT(erase(first).err, HasSubstr("still open"));
    ran({QStringLiteral("run"), QStringLiteral("--resume"), QStringLiteral("--data"), folder.path()}, "e\n");

    const Ran erased = erase(first);
    EXPECT_EQ(erased.status, 0) << erased.err;
    EXPECT_THAT(erased.out, HasSubstr("Erased from run 1"));
    EXPECT_THAT(erased.out, HasSubstr("2 facts"));
    EXPECT_EQ(ran({QStringLiteral("replay"), QStringLiteral("--data"), folder.path()}).status, 1);
    EXPECT_THAT(
        ran({QStringLiteral("replay"), QStringLiteral("--list"), QStringLiteral("--data"), folder.path()})
            .out,
        HasSubstr("its service was erased"));
}

TEST(Program, WritesTheAlarmsIntoASoundFile)
{
    const QTemporaryDir folder;
    const QString sound = folder.filePath(QStringLiteral("alarms.wav"));
    const Ran run = ran(playing(folder, demo) << QStringLiteral("--sound-file") << sound);

    EXPECT_EQ(run.status, 0) << run.err;
    EXPECT_THAT(run.out, HasSubstr("[sound file 0:03]"));
    const QByteArray wave = fileText(sound);
    EXPECT_TRUE(wave.startsWith("RIFF"));
    EXPECT_GT(wave.size(), 48000 * 2 * 10) << "ten seconds at least";
    EXPECT_LT(wave.size(), 48000 * 2 * 600) << "long silences are shortened";
    const Ran refused =
        ran(playing(folder, demo) << QStringLiteral("--sound-file") << QStringLiteral("/no/such/a.wav"));
    EXPECT_EQ(refused.status, 1);
}

TEST(Program, RefusesAFolderThatAnotherOneUses)
{
    const QTemporaryDir folder;
    QProcess first;
    first.start(program, {QStringLiteral("run"), demo, QStringLiteral("--data"), folder.path()});
    ASSERT_TRUE(first.waitForReadyRead(20'000));

    const Ran second = ran(playing(folder, demo));

    EXPECT_EQ(second.status, 1);
    EXPECT_THAT(second.err,
                HasSubstr("Another Basinbell (process " + std::to_string(first.processId()) + " of "));
    first.write("q\n");
    EXPECT_TRUE(first.waitForFinished(20'000));
    EXPECT_EQ(first.exitCode(), 0);
    EXPECT_EQ(ran(playing(folder, demo)).status, 0);
}

TEST(Program, RunsInMemoryWithAWarningWhereNothingCanBeKept)
{
    const QTemporaryDir unused;
    QStringList arguments = playing(unused, demo);
    arguments.last() = QStringLiteral("/proc/no-such-place");
    const Ran run = ran(arguments);

    EXPECT_EQ(run.status, 0);
    EXPECT_THAT(run.err, HasSubstr("Nothing can be kept meanwhile"));
    EXPECT_THAT(run.out, HasSubstr("The run is over."));
}

}  // namespace
}  // namespace app::command
