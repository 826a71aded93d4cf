#include "app/command/options.h"

#include "app/command/help.h"

#include <gtest/gtest.h>

namespace app::command {
namespace {

using Command = Options::Command;

tl::expected<Options, QString> readWords(const char* line)
{
    return readOptions(QString::fromUtf8(line).split(u' ', Qt::SkipEmptyParts));
}

std::string problemOf(const char* line)
{
    const auto options = readWords(line);
    EXPECT_FALSE(options.has_value()) << line;
    return options ? std::string{} : options.error().toStdString();
}

TEST(Options, AreReadForEachCommand)
{
    const auto plan = readWords("plan --json --from 14:30 --preference end-early --look-all service.json");
    ASSERT_TRUE(plan.has_value()) << plan.error().toStdString();
    EXPECT_EQ(plan->command, Command::Plan);
    EXPECT_TRUE(plan->json && plan->lookAll);
    EXPECT_EQ(plan->from, QLatin1String{"14:30"});
    EXPECT_EQ(plan->preference, core::stagger::Preference::EndEarly);
    EXPECT_EQ(plan->file, QLatin1String{"service.json"});

    const auto explain = readWords("explain service.json --cure 2 --save new.json --seconds 5");
    ASSERT_TRUE(explain.has_value()) << explain.error().toStdString();
    EXPECT_EQ(explain->command, Command::Explain);
    EXPECT_EQ(explain->cure, 2);
    EXPECT_EQ(explain->save, QLatin1String{"new.json"});

    const auto run = readWords("run - --speed 60 --answer-all --sound-file a.wav --data d --resume");
    ASSERT_TRUE(run.has_value()) << run.error().toStdString();
    EXPECT_EQ(run->speed, 60.0);
    EXPECT_TRUE(run->answerAll && run->resume);
    EXPECT_EQ(run->file, QLatin1String{"-"});
    EXPECT_EQ(run->data, QLatin1String{"d"});
}

TEST(Options, OfAForecastAreRunsAndASeed)
{
    const auto forecast = readWords("forecast service.json --runs 500 --seed 18446744073709551615 --json");
    ASSERT_TRUE(forecast.has_value()) << forecast.error().toStdString();
    EXPECT_EQ(forecast->command, Command::Forecast);
    EXPECT_EQ(forecast->runs, 500);
    EXPECT_EQ(forecast->seed, UINT64_MAX);
    EXPECT_EQ(readWords("forecast service.json")->runs, 2000);

    EXPECT_NE(problemOf("forecast a --runs 0").find("from 1 to 1000000"), std::string::npos);
    EXPECT_NE(problemOf("forecast a --runs many").find("--runs many"), std::string::npos);
    EXPECT_NE(problemOf("forecast a --seed -1").find("--seed -1"), std::string::npos);
}

TEST(Options, NeedAFileButForARunThatIsTakenUp)
{
    EXPECT_NE(problemOf("plan").find("A service file is needed"), std::string::npos);
    EXPECT_NE(problemOf("run").find("A service file is needed"), std::string::npos);
    EXPECT_TRUE(readWords("run --resume").has_value());
    EXPECT_NE(problemOf("check a b").find("one too many"), std::string::npos);
    EXPECT_NE(problemOf("cautions a").find("one too many"), std::string::npos);
}

TEST(Options, TakeSeveralFilesToPlanTogether)
{
    const auto plan = readWords("plan a.json b.json --crew c.json --seconds 2.5");
    ASSERT_TRUE(plan.has_value()) << plan.error().toStdString();
    EXPECT_EQ(plan->files, (QStringList{QStringLiteral("a.json"), QStringLiteral("b.json")}));
    EXPECT_EQ(plan->file, QLatin1String{"a.json"});
    EXPECT_EQ(plan->crewFile, QLatin1String{"c.json"});
    EXPECT_EQ(plan->seconds, 2.5);
    EXPECT_NE(problemOf("plan - a -").find("only once"), std::string::npos);
    for (const char* const seconds : {"plan a --seconds 0", "plan a --seconds -1", "plan a --seconds soon",
                                      "plan a --seconds inf", "plan a --seconds 100000"})
        EXPECT_NE(problemOf(seconds).find("--seconds"), std::string::npos) << seconds;
}

TEST(Options, RefuseWhatTheyDoNotKnow)
{
    EXPECT_NE(problemOf("").find("Say what to do"), std::string::npos);
    EXPECT_NE(problemOf("dye").find("no command dye"), std::string::npos);
    EXPECT_NE(problemOf("plan --loud a").find("loud"), std::string::npos);
    EXPECT_NE(problemOf("check --json a").find("json"), std::string::npos);
    EXPECT_NE(problemOf("plan a --from").find("from"), std::string::npos);
    EXPECT_NE(problemOf("plan a --preference best").find("start-late"), std::string::npos);
    for (const char* const cure : {"explain a --cure 0", "explain a --cure all", "explain a --cure -1"})
        EXPECT_NE(problemOf(cure).find("1 or more"), std::string::npos) << cure;
    EXPECT_NE(problemOf("explain a --save b").find("--cure"), std::string::npos);
    for (const char* const speed :
         {"run a --speed 0", "run a --speed -1", "run a --speed fast", "run a --speed nan"})
        EXPECT_NE(problemOf(speed).find("0.01 to 1000000"), std::string::npos) << speed;
}

TEST(Options, HaveHelpForTheProgramAndEachCommand)
{
    EXPECT_EQ(readWords("--help")->command, Command::Help);
    EXPECT_EQ(readWords("--version")->command, Command::Version);
    for (const char* const command : {"plan", "explain", "forecast", "check", "run", "cautions"}) {
        const auto options = readOptions({QString::fromUtf8(command), QStringLiteral("--help")});
        ASSERT_TRUE(options.has_value()) << command;
        EXPECT_EQ(options->command, Command::Help);
        EXPECT_TRUE(helpText(options->helpAbout)
                        .startsWith(QStringLiteral("Usage: basinbell ") + QString::fromUtf8(command)));
    }
}

TEST(Options, AreAllNamedInTheHelp)
{
    for (const char* const option : {"--json", "--from", "--preference", "--look-all", "--help"})
        EXPECT_TRUE(helpText(QStringLiteral("plan")).contains(QString::fromUtf8(option))) << option;
    for (const char* const option :
         {"--json", "--cure", "--save", "--from", "--preference", "--seconds", "--help"})
        EXPECT_TRUE(helpText(QStringLiteral("explain")).contains(QString::fromUtf8(option))) << option;
    for (const char* const option :
         {"--resume", "--speed", "--from", "--preference", "--answer-all", "--sound-file", "--data"})
        EXPECT_TRUE(helpText(QStringLiteral("run")).contains(QString::fromUtf8(option))) << option;
}

}  // namespace
}  // namespace app::command
