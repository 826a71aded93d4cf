#pragma once

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <string>

/// Runs the real program and says what came of it.
namespace app::command {

inline const QString program = QStringLiteral(PROGRAM_DIR "/basinbell");
inline const QString demo = QStringLiteral(SOURCE_DIR "/resources/demo/wig-room-three-zones.json");
inline const QString person = QStringLiteral(SOURCE_DIR "/resources/demo/actor-root-and-toners.json");

struct Ran {
    int status = -1;
    std::string out;
    std::string err;
};

inline Ran ran(const QStringList& arguments, const QByteArray& input = {})
{
    QProcess process;
    process.start(program, arguments);
    process.write(input);
    process.closeWriteChannel();
    EXPECT_TRUE(process.waitForFinished(60'000)) << arguments.join(u' ').toStdString();
    EXPECT_EQ(process.exitStatus(), QProcess::NormalExit);
    return {process.exitCode(), process.readAllStandardOutput().toStdString(),
            process.readAllStandardError().toStdString()};
}

inline QByteArray fileText(const QString& path)
{
    QFile file{path};
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

inline QStringList playing(const QTemporaryDir& folder, const QString& file)
{
    return {QStringLiteral("run"),
            file,
            QStringLiteral("--speed"),
            QStringLiteral("100000"),
            QStringLiteral("--answer-all"),
            QStringLiteral("--data"),
            folder.path()};
}

}  // namespace app::command
