#include "app/desktop/front_door.h"

#include <QEventLoop>
#include <QTemporaryDir>
#include <QThread>
#include <QTimer>

#include <gtest/gtest.h>

namespace app::desktop {
namespace {

std::filesystem::path pathOf(const QTemporaryDir& folder)
{
    return folder.path().toStdString();
}

/// Knocks as another program would, while this one goes on.
bool knockFromOutside(const std::filesystem::path& folder)
{
    bool heard = false;
    QThread* const guest = QThread::create([&] { heard = FrontDoor::knock(folder); });
    QEventLoop loop;
    QObject::connect(guest, &QThread::finished, &loop, &QEventLoop::quit);
    guest->start();
    loop.exec();
    guest->wait();
    delete guest;
    return heard;
}

TEST(FrontDoor, HearsWhoKnocksAndSaysThatItDid)
{
    const QTemporaryDir folder;
    const FrontDoor door{pathOf(folder)};
    int knocks = 0;
    QObject::connect(&door, &FrontDoor::knocked, [&] { ++knocks; });
    EXPECT_TRUE(knockFromOutside(pathOf(folder)));
    EXPECT_TRUE(knockFromOutside(pathOf(folder) / "."));
    EXPECT_EQ(knocks, 2);
}

TEST(FrontDoor, IsOfOneFolder)
{
    const QTemporaryDir folder;
    const QTemporaryDir other;
    const FrontDoor door{pathOf(folder)};
    EXPECT_FALSE(knockFromOutside(pathOf(other)));
}

TEST(FrontDoor, NobodyAnswersOnceTheProgramIsGoneAndTheNextOneDoes)
{
    const QTemporaryDir folder;
    EXPECT_FALSE(FrontDoor::knock(pathOf(folder)));
    {
        const FrontDoor door{pathOf(folder)};
    }
    EXPECT_FALSE(FrontDoor::knock(pathOf(folder)));
    const FrontDoor next{pathOf(folder)};
    EXPECT_TRUE(knockFromOutside(pathOf(folder)));
}

}  // namespace
}  // namespace app::desktop
