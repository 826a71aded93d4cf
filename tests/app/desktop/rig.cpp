#include "tests/app/desktop/rig.h"

#include "app/desktop/lanes/lanes_page.h"
#include "app/session/time_zones.h"

#include <QApplication>
#include <QDialog>
#include <QElapsedTimer>
#include <QPushButton>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

namespace rig {

using core::service::Zone;

std::chrono::milliseconds HandClock::until(Instant moment) const
{
    // Soon, so that the session notices at once when the clock was moved.
    return std::clamp(std::chrono::milliseconds{moment - m_now}, std::chrono::milliseconds{0},
                      std::chrono::milliseconds{5});
}

Rig::Rig(const Dress& dress)
    : theme{std::make_unique<app::desktop::Theme>(*qobject_cast<QApplication*>(QCoreApplication::instance()))}
    , settings{std::make_unique<QSettings>(folder.filePath(QStringLiteral("window.ini")),
                                           QSettings::IniFormat)}
    , session{std::make_unique<app::session::Session>(
          app::session::Session::Parts{.journal = std::make_unique<app::session::MemoryJournal>(),
                                       .clock = clock,
                                       .zones = std::make_shared<app::session::QtTimeZones>(),
                                       .plansApart = false})}
{
    if (dress)
        dress(*theme);
    openWindow();
}

Rig::~Rig()
{
    session->leave();  // So that nothing asks whether lanes may be left alone.
}

void Rig::openWindow()
{
    window.reset();
    window = std::make_unique<app::desktop::MainWindow>(app::desktop::MainWindow::Parts{
        *theme, *session, sound, *settings, std::make_shared<app::session::QtTimeZones>(), "UTC",
        folder.path().toStdString()});
    window->show();
    activate();
}

void Rig::activate()
{
    window->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));  // Else shortcuts do nothing.
}

void Rig::startLanes()
{
    EXPECT_TRUE(wait([this] { return find<QPushButton>("start")->isEnabled(); }));
    pressInDialog("soundCheck", sound.works ? "heard" : "passOver");
    QTest::keyClick(window.get(), Qt::Key_F3);
    window->start();
    activate();
    settle();
}

void Rig::settle()
{
    find<app::desktop::LanesPage>("lanesPage")->settled();
}

void Rig::goOn(Seconds length)
{
    clock->goOn(length);
    // The session wakes by itself at the next whole second.
    wait([this] { return session->state().now >= clock->now(); });
}

bool Rig::wait(const std::function<bool()>& done, int milliseconds)
{
    QElapsedTimer timer;
    timer.start();
    while (!done() && timer.elapsed() < milliseconds)
        QTest::qWait(5);
    return done();
}

void Rig::pressInDialog(const char* dialog, const char* button)
{
    // The dialog runs a loop of its own, so the press is left waiting for it.
    auto* timer = new QTimer{window.get()};
    QObject::connect(timer, &QTimer::timeout, window.get(), [this, timer, dialog, button] {
        auto* shown = window->findChild<QDialog*>(QLatin1String{dialog});
        if (shown == nullptr || !shown->isVisible())
            return;
        timer->deleteLater();
        for (QPushButton* candidate : shown->findChildren<QPushButton*>())
            if (candidate->objectName() == QLatin1String{button}
                || candidate->text() == QLatin1String{button})
                return candidate->click();
        ADD_FAILURE() << dialog << " has no button " << button;
        shown->reject();
    });
    timer->start(5);
}

core::service::Service Rig::service()
{
    const auto minutes = [](int count) { return Seconds{count * 60}; };
    Zone root;
    root.name = "Root";
    root.apply = {minutes(5), minutes(5), minutes(5)};
    root.develop = {minutes(15), minutes(20), minutes(25)};
    Zone ends;
    ends.name = "Ends";
    ends.apply = {minutes(4), minutes(4), minutes(4)};
    ends.develop = {minutes(8), minutes(10), minutes(14)};
    ends.looks = core::service::Looks{minutes(5), {}, minutes(1), minutes(2), minutes(10)};
    core::service::Service service;
    service.name = "Rig";
    service.crew.hands = {{"Stylist", {}, {}}};
    core::service::Coat coat;
    coat.name = "Coat";
    coat.bowls = {{"Colour", Seconds{0}, {}, {}}};
    coat.zones = {root, ends};
    coat.groups = {{"Both", minutes(5), {}, {}}};
    service.coats = {coat};
    return service;
}

}  // namespace rig
