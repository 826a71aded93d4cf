#include "app/session/background_work.h"
#include "tests/app/session/session_samples.h"

#include <QThread>

#include <gtest/gtest.h>

namespace app::session {
namespace {

TEST(BackgroundWork, HandsTheOutcomeOverInItsOwnThread)
{
    BackgroundWork work;
    QThread* worked = nullptr;
    QThread* delivered = nullptr;
    work.begin([&](const BackgroundWork::Stop&) {
        worked = QThread::currentThread();
        return [&] { delivered = QThread::currentThread(); };
    });

    EXPECT_TRUE(work.isBusy());
    ASSERT_TRUE(samples::await([&] { return delivered != nullptr; }));
    EXPECT_EQ(delivered, QThread::currentThread());
    EXPECT_NE(worked, delivered);
    EXPECT_FALSE(work.isBusy());
}

TEST(BackgroundWork, StopsWhatIsNotWantedAnyMoreAndDropsItsOutcome)
{
    BackgroundWork work;
    std::vector<int> delivered;
    std::atomic<bool> began = false;
    work.begin([&](const BackgroundWork::Stop& stop) {
        began = true;
        while (!stop())
            QThread::msleep(1);
        return [&] { delivered.push_back(1); };
    });
    ASSERT_TRUE(samples::await([&] { return began.load(); }));
    work.begin([&](const BackgroundWork::Stop&) { return [&] { delivered.push_back(2); }; });

    ASSERT_TRUE(samples::await([&] { return !delivered.empty(); }));
    EXPECT_EQ(delivered, std::vector<int>{2});
}

TEST(BackgroundWork, ForgetsOnRequest)
{
    BackgroundWork work;
    bool delivered = false;
    work.begin([&](const BackgroundWork::Stop&) { return [&] { delivered = true; }; });
    work.forget();

    EXPECT_FALSE(work.isBusy());
    bool later = false;
    work.begin([&](const BackgroundWork::Stop&) { return [&] { later = true; }; });
    ASSERT_TRUE(samples::await([&] { return later; }));
    EXPECT_FALSE(delivered);
}

}  // namespace
}  // namespace app::session
