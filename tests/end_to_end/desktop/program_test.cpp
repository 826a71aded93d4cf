#include <QProcess>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// The program where there is nothing to show a window on.

namespace {

using testing::HasSubstr;

class WithoutAScreen : public testing::Test {
protected:
    void run(const QStringList& arguments)
    {
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
            environment.remove(QLatin1String{name});
        program.setProcessEnvironment(environment);
        program.start(QStringLiteral(PROGRAM_DIR "/basinbell-desktop"), arguments);
        ASSERT_TRUE(program.waitForFinished(30000));
        ASSERT_EQ(program.exitStatus(), QProcess::NormalExit);
        said = program.readAllStandardOutput().toStdString();
        complained = program.readAllStandardError().toStdString();
    }

    QProcess program;
    std::string said;
    std::string complained;
};

TEST_F(WithoutAScreen, TheProgramSaysSoAndWhatElseThereIs)
{
    run({});
    EXPECT_EQ(program.exitCode(), 1);
    EXPECT_THAT(complained, HasSubstr("There is no screen to show the window on."));
    EXPECT_THAT(complained, HasSubstr("in a terminal"));
}

TEST_F(WithoutAScreen, TheProgramTellsHowItIsStarted)
{
    run({QStringLiteral("--help")});
    EXPECT_EQ(program.exitCode(), 0);
    EXPECT_THAT(said, HasSubstr("--resume"));
}

}  // namespace
