#include "app/session/cautions.h"

#include <QFile>
#include <QProcess>
#include <QProcessEnvironment>
#include <QString>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// What pages show of the program is what the program prints.

namespace pages {
namespace {

using testing::HasSubstr;

QString pageAt(const QString& path)
{
    QFile file{QStringLiteral(SOURCE_DIR "/") + path};
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return QString::fromUtf8(file.readAll());
}

/// What the program says, on a machine whose clocks show UTC.
QString printed(const QStringList& arguments)
{
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("TZ"), QStringLiteral("UTC"));
    QProcess process;
    process.setProcessEnvironment(environment);
    process.start(QStringLiteral(PROGRAM_DIR "/basinbell"), arguments);
    EXPECT_TRUE(process.waitForFinished(60'000));
    return QString::fromUtf8(process.readAllStandardOutput());
}

class ShownPlan : public testing::TestWithParam<const char*> { };

TEST_P(ShownPlan, IsWhatTheProgramPrints)
{
    const QString plan =
        printed({QStringLiteral("plan"), QStringLiteral("--from"), QStringLiteral("2026-03-14T14:00"),
                 QStringLiteral(SOURCE_DIR "/resources/demo/actor-root-and-toners.json")});

    ASSERT_THAT(plan.toStdString(), HasSubstr("Proved"));
    EXPECT_THAT(pageAt(QString::fromUtf8(GetParam())).toStdString(),
                HasSubstr("```text\n" + plan.toStdString() + "```\n"));
}

INSTANTIATE_TEST_SUITE_P(Pages, ShownPlan, testing::Values("README.md", "docs/worked-example.md"),
                         [](const auto& page) { return page.index == 0 ? "Readme" : "WorkedExample"; });

TEST(ShownCautions, AreTheOnesOfTheProgram)
{
    const std::string page = pageAt(QStringLiteral("docs/cautions.md"))
                                 .replace(QStringLiteral("\n> "), QStringLiteral(" "))
                                 .toStdString();
    ASSERT_FALSE(app::session::cautions().empty());
    for (const std::string& caution : app::session::cautions())
        EXPECT_THAT(page, HasSubstr(caution));
}

}  // namespace
}  // namespace pages
