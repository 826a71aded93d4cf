#include "app/desktop/beckon.h"
#include "app/desktop/front_door.h"
#include "app/desktop/keep_awake.h"
#include "app/desktop/language.h"
#include "app/desktop/look/system_look.h"
#include "app/desktop/main_window.h"
#include "app/desktop/options.h"
#include "app/desktop/startup.h"
#include "app/desktop/view_menu.h"
#include "app/desktop/voice.h"
#include "app/session/data_folder.h"
#include "app/session/time_zones.h"
#include "app/sound/alarm_player.h"
#include "app/speech/speech_player.h"
#include "app/storage/open_journal.h"

#include <QApplication>
#include <QMenu>
#include <QMessageBox>
#include <QScreen>
#include <QTimer>

#include <algorithm>
#include <cstdio>
#include <filesystem>

namespace {

using namespace app;

/// The alarms of the window, sounded by the sound program, which is started once the window is there.
class PlayerSound final : public desktop::Sound {
public:
    void begin()
    {
        m_player = std::make_unique<sound::AlarmPlayer>();
        connect(m_player.get(), &sound::AlarmPlayer::healthChanged, this, &Sound::healthChanged);
    }

    void keepReady(bool ready) override
    {
        if (m_player)
            m_player->keepReady(ready);
    }
    void sound(const core::alarm::Call& call) override { m_player->sound(call); }
    void setStanding(const std::vector<core::alarm::Alarm>& standing) override
    {
        m_player->setStanding(standing);
    }
    void silence() override { m_player->silence(); }
    void playCheck(core::alarm::Kind kind, core::alarm::Subject subject) override
    {
        m_player->playCheck(kind, subject);
    }
    [[nodiscard]] bool isWorking() const override
    {
        return !m_player || m_player->health() == sound::Health::Working
            || m_player->health() == sound::Health::Starting;
    }
    [[nodiscard]] QString problem() const override { return m_player ? m_player->healthText() : QString{}; }

private:
    std::unique_ptr<sound::AlarmPlayer> m_player;
};

/// Speaks by the speech program, in the language of the window.
class SpokenVoice final : public desktop::Voice {
public:
    SpokenVoice() { followLanguage(); }

    /// Speaks with a voice of the window's language from now on.
    void followLanguage()
    {
        m_player = std::make_unique<speech::SpeechPlayer>(speech::SpeechPlayer::usualProgram(),
                                                          desktop::language::voice());
        connect(m_player.get(), &speech::SpeechPlayer::voiceKnown, this, &Voice::known);
    }
    void say(const QString& text) override { m_player->say(text); }
    void stop() override { m_player->stop(); }

private:
    std::unique_ptr<speech::SpeechPlayer> m_player;
};

/// What calls somebody besides the sounds. The bus is asked for once the window has been painted.
class Beckoning {
public:
    void begin(desktop::MainWindow& window, session::Session& session, QSettings& settings)
    {
        m_beckon = std::make_unique<desktop::Beckon>(window, session, m_voice, QDBusConnection::sessionBus());
        offerSpeech(window.viewMenu(), settings);
        QObject::connect(&window, &desktop::MainWindow::menusBuilt, m_beckon.get(),
                         [this, &window, &settings] {
                             m_voice.followLanguage();
                             offerSpeech(window.viewMenu(), settings);
                         });
    }

private:
    /// Whether alarms are spoken, in the menu and remembered.
    void offerSpeech(QMenu& menu, QSettings& settings)
    {
        const QString name = QCoreApplication::translate("Speech", "S&peak the alarms");
        QAction* const action = menu.addAction(name);
        action->setObjectName(QStringLiteral("speakAlarms"));
        action->setCheckable(true);
        action->setChecked(settings.value(QStringLiteral("speech"), true).toBool());
        m_beckon->announcer().setOn(action->isChecked());
        QObject::connect(action, &QAction::toggled, m_beckon.get(), [this, &settings](bool on) {
            settings.setValue(QStringLiteral("speech"), on);
            m_beckon->announcer().setOn(on);
            if (on)
                m_voice.say(QCoreApplication::translate("Speech", "Alarms are spoken."));
        });
        QObject::connect(&m_voice, &desktop::Voice::known, action, [action, name](bool there) {
            action->setText(
                there ? name : QCoreApplication::translate("Speech", "%1 (no voice was found)").arg(name));
        });
    }

    SpokenVoice m_voice;
    std::unique_ptr<desktop::Beckon> m_beckon;
};

/// While lanes run the machine does not fall asleep. The buses are asked for when there is something to ask
/// of them, which is long after the first paint.
class KeepingAwake {
public:
    explicit KeepingAwake(session::Session& session)
        : m_session{session}
    {
        QObject::connect(&session, &session::Session::settled, &m_here, [this] { follow(); });
        QObject::connect(&session, &session::Session::left, &m_here, [this] { follow(); });
    }

private:
    void follow()
    {
        const bool runs =
            m_session.current() && !m_session.state().finished && !m_session.clock().isSimulated();
        if (runs && !m_awake)
            m_awake = std::make_unique<desktop::KeepAwake>(QDBusConnection::sessionBus(),
                                                           QDBusConnection::systemBus());
        if (runs)
            m_awake->hold(QCoreApplication::translate("KeepAwake", "Lanes are running"));
        else if (m_awake)
            m_awake->letGo();
    }

    session::Session& m_session;
    QObject m_here;  ///< What is connected ends with this.
    std::unique_ptr<desktop::KeepAwake> m_awake;
};

std::shared_ptr<const session::Clock> clockFor(const desktop::Options& options)
{
    auto system = std::make_shared<session::SystemClock>();
    if (!options.speed)
        return system;
    return std::make_shared<session::FastClock>(*options.speed, system->now());
}

/// Where there is none, the toolkit ends the program and says nothing that helps.
bool isThereAScreen()
{
    const auto names = {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"};
    return std::ranges::any_of(names, [](const char* name) { return !qEnvironmentVariableIsEmpty(name); });
}

/// On a small screen all of it, so that nothing at the window's edges is out of sight.
void showOnScreen(desktop::MainWindow& window)
{
    constexpr QSize frame{16, 48};
    const QSize most = window.screen()->availableSize();
    const QSize wanted = window.size() + frame;
    if (wanted.width() <= most.width() && wanted.height() <= most.height())
        return window.show();
    window.resize(window.size().boundedTo(most));
    window.showMaximized();
}

int refuse(const QString& what)
{
    std::fprintf(stderr, "basinbell-desktop: %s\n", qPrintable(what));
    return 1;
}

/// Where the program is open already, it comes to the front.
int refuseJournal(const session::JournalError& error, const std::filesystem::path& folder)
{
    if (error.kind == session::JournalError::Kind::InUse && desktop::FrontDoor::knock(folder)) {
        std::fputs("Basinbell is open already; its window has come to the front.\n", stderr);
        return 0;
    }
    const QString what = QString::fromStdString(error.what);
    QMessageBox::critical(nullptr, QStringLiteral("Basinbell"), what);
    return refuse(what);
}

}  // namespace

int main(int argc, char* argv[])
{
    const bool isSeen = isThereAScreen();
    if (!isSeen)  // What it is and how it is started can be told all the same.
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application{argc, argv};
    QApplication::setApplicationName(QStringLiteral("basinbell"));
    QApplication::setApplicationDisplayName(QStringLiteral("Basinbell"));
    QApplication::setApplicationVersion(QStringLiteral(BASINBELL_VERSION));
    QApplication::setDesktopFileName(QStringLiteral("basinbell"));
    desktop::language::use({});
    const desktop::Options options = desktop::readOptions(QApplication::arguments());
    if (!options.error.isEmpty())
        return refuse(options.error);
    if (!isSeen)
        return refuse(QCoreApplication::translate(
            "Options",
            "There is no screen to show the window on. Start it on a desktop (or set DISPLAY), or use "
            "basinbell, which plans and leads through a run in a terminal."));

    desktop::Theme theme{application};
    QApplication::setWindowIcon(QIcon{QStringLiteral(":/icons/basinbell.svg")});
    const std::filesystem::path folder = session::dataFolder(options.data.toStdString());
    QSettings settings{QString::fromStdString((folder / "window.ini").string()), QSettings::IniFormat};
    desktop::language::use(options.language.isEmpty() ? desktop::ViewMenu::chosenLanguage(settings)
                                                      : options.language);
    auto opened = storage::openJournal(folder);
    if (!opened)
        return refuseJournal(opened.error(), folder);
    desktop::ViewMenu::restore(theme, settings);
    const auto zones = std::make_shared<session::QtTimeZones>();
    session::Session session{
        {.journal = std::move(opened->journal), .clock = clockFor(options), .zones = zones}};
    PlayerSound sound;
    desktop::MainWindow window{{theme, session, sound, settings, zones, session::localZone(), folder}};
    showOnScreen(window);
    KeepingAwake awake{session};
    const desktop::FrontDoor door{folder};
    QObject::connect(&door, &desktop::FrontDoor::knocked, &window, &desktop::MainWindow::comeToFront);
    std::unique_ptr<desktop::SystemLook> look;
    Beckoning beckoning;
    QTimer::singleShot(0, &window, [&] {
        look = std::make_unique<desktop::SystemLook>(QDBusConnection::sessionBus());
        QObject::connect(look.get(), &desktop::SystemLook::changed, &theme, &desktop::Theme::followSystem);
        sound.begin();
        beckoning.begin(window, session, settings);
        for (const std::string& warning : opened->warnings)
            window.warn(QString::fromStdString(warning));
        desktop::openFirst(window, session, options, settings);
    });
    return QApplication::exec();
}
