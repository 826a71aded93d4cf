#include "app/desktop/look/system_look.h"

#include "tests/app/desktop/fake_services.h"
#include "tests/app/desktop/private_bus.h"

#include <QApplication>
#include <QDBusMessage>
#include <QDBusMetaType>

// The portal's keys and values: XDG desktop portal, org.freedesktop.portal.Settings, version 2.

namespace app::desktop {
namespace {

class SystemLookTest : public PrivateBus {
protected:
    void offerPortal()
    {
        qDBusRegisterMetaType<QMap<QString, QVariantMap>>();
        ASSERT_TRUE(bus("services").registerService(QStringLiteral("org.freedesktop.portal.Desktop")));
        ASSERT_TRUE(bus("services")
                        .registerObject(QStringLiteral("/org/freedesktop/portal/desktop"), &portal,
                                        QDBusConnection::ExportAllSlots));
    }

    void tell(const char* area, const char* key, uint value)
    {
        QDBusMessage signal = QDBusMessage::createSignal(QStringLiteral("/org/freedesktop/portal/desktop"),
                                                         QStringLiteral("org.freedesktop.portal.Settings"),
                                                         QStringLiteral("SettingChanged"));
        signal << QString::fromLatin1(area) << QString::fromLatin1(key)
               << QVariant::fromValue(QDBusVariant{value});
        ASSERT_TRUE(bus("services").send(signal));
    }

    void listen(const SystemLook& look)
    {
        QObject::connect(&look, &SystemLook::changed, &portal,
                         [this](const Theme::SystemLook& told) { heard = told; });
    }

    fake::Portal portal;
    std::optional<Theme::SystemLook> heard;
};

TEST_F(SystemLookTest, IsAskedOnceAndFollowed)
{
    portal.scheme = 1;
    portal.contrast = 1;
    offerPortal();
    SystemLook look{bus("asker")};
    listen(look);
    ASSERT_TRUE(waitUntil([&] { return heard.has_value(); }));
    EXPECT_EQ(heard->dark, true);
    EXPECT_TRUE(heard->highContrast);

    tell("org.freedesktop.appearance", "color-scheme", 2);
    EXPECT_TRUE(waitUntil([&] { return heard->dark == false; }));
    tell("org.freedesktop.appearance", "contrast", 0);
    EXPECT_TRUE(waitUntil([&] { return !heard->highContrast; }));
    tell("org.freedesktop.appearance", "color-scheme", 7);  // Unknown counts as no preference.
    EXPECT_TRUE(waitUntil([&] { return !heard->dark.has_value(); }));
}

TEST_F(SystemLookTest, IsNothingWhereThereIsNoPortal)
{
    SystemLook look{bus("asker")};
    listen(look);
    QDeadlineTimer awhile{300};
    waitUntil([&] { return awhile.hasExpired(); });
    EXPECT_FALSE(heard);
}

class ThemeTest : public testing::Test {
protected:
    Theme theme{*qobject_cast<QApplication*>(QCoreApplication::instance())};
};

TEST_F(ThemeTest, FollowsTheSystemWhileNobodyChose)
{
    theme.followSystem({.dark = true, .highContrast = false});
    EXPECT_TRUE(theme.isDark());
    theme.followSystem({.dark = true, .highContrast = true});
    EXPECT_TRUE(theme.isDark() && theme.isHighContrast());
    EXPECT_EQ(theme.colours().ground, darkHighContrastColours().ground);

    theme.choose(Theme::Choice::Light);
    EXPECT_FALSE(theme.isDark() || theme.isHighContrast());
    theme.followSystem({.dark = true, .highContrast = false});
    EXPECT_FALSE(theme.isDark());

    theme.choose(Theme::Choice::System);
    EXPECT_TRUE(theme.isDark());
    EXPECT_FALSE(theme.isHighContrast());
}

TEST_F(ThemeTest, HasFourPalettesToChooseFrom)
{
    const std::pair<Theme::Choice, Colours> choices[] = {
        {Theme::Choice::Light, lightColours()},
        {Theme::Choice::Dark, darkColours()},
        {Theme::Choice::HighContrast, highContrastColours()},
        {Theme::Choice::DarkHighContrast, darkHighContrastColours()}};
    for (const auto& [choice, colours] : choices) {
        theme.choose(choice);
        EXPECT_EQ(theme.colours().ground, colours.ground);
        EXPECT_EQ(theme.colours().action, colours.action);
    }
}

}  // namespace
}  // namespace app::desktop
