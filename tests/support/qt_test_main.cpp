#include <QApplication>
#include <QByteArray>
#include <QTemporaryDir>

#include <cstdio>
#include <string_view>
#include <vector>

#include <gtest/gtest.h>

namespace {

/// Listing the tests needs no application, and happens where no test environment is set.
bool onlyLists(const std::vector<std::string_view>& arguments)
{
    for (const std::string_view argument : arguments)
        if (argument == "--gtest_list_tests")
            return true;
    return false;
}

/// Tests run side by side and must not see each other's files, nor the user's.
void moveInto(const QTemporaryDir& home)
{
    const QByteArray path = home.path().toUtf8();
    for (const char* name : {"HOME", "XDG_RUNTIME_DIR", "XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_CACHE_HOME"})
        qputenv(name, path);
}

}  // namespace

int main(int argc, char* argv[])
{
    const bool listing = onlyLists({argv, argv + argc});
    testing::InitGoogleTest(&argc, argv);
    if (listing)
        return RUN_ALL_TESTS();

    const QTemporaryDir home;
    if (!home.isValid()) {
        std::fputs("The test could not make a folder to live in. Is the temporary folder full?\n", stderr);
        return 1;
    }
    moveInto(home);
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application{argc, argv};
    return RUN_ALL_TESTS();
}
