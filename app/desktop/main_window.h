#pragma once

#include "app/desktop/asking.h"
#include "app/desktop/file_menu.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/print/printing.h"
#include "app/desktop/records/records.h"
#include "app/desktop/setup/preparation.h"
#include "app/desktop/setup/service_document.h"
#include "app/desktop/sound.h"
#include "app/desktop/view_menu.h"
#include "app/session/session.h"

#include <QMainWindow>
#include <QSettings>

#include <filesystem>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace app::desktop {

class HelpMenu;
class LanesPage;
class SetupPage;

/// The window: two pages, the menus, and the way from one page to the other.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    struct Parts {
        Theme& theme;
        session::Session& session;
        Sound& sound;
        QSettings& settings;
        std::shared_ptr<const core::measure::TimeZones> zones;
        std::string localZone;
        std::filesystem::path folder;  ///< Where the program keeps its data.
    };

    explicit MainWindow(const Parts& parts);
    ~MainWindow() override;

    [[nodiscard]] FileMenu& files() { return *m_files; }
    [[nodiscard]] ServiceDocument& document() { return m_document; }

    /// Takes up a run that was left; tells in words when it cannot.
    bool resume(const session::StoredRun& run);

    /// A run that was left too long ago to sound at once: asks what becomes of it.
    void offer(const session::StoredRun& run);

    /// From what is in Set-up to running lanes: cautions, start.
    void start();

    void warn(const QString& warning);

    /// Somebody started the program once more and wants to see this window.
    void comeToFront();

    /// A short tour in a window of its own; not while lanes run.
    void startTour();
    /// Offers the tour to whoever starts the program for the first time, until they said yes or no.
    void offerTour();

    /// What is due must be seen: the lanes come into view, and the window before others, but the keyboard
    /// stays where it is, and nothing is answered by what was just being typed.
    void takeWindow();
    void showLanes() { showPage(Page::Lanes); }
    [[nodiscard]] bool showsLanes() const;

    /// The menu that says how the window looks, for what is added to it.
    [[nodiscard]] QMenu& viewMenu() { return *m_view; }

    [[nodiscard]] print::Printing& printing() { return *m_printing; }

    /// What the page in view has for paper; nothing while there is no plan.
    [[nodiscard]] std::vector<print::Sheet> toPrint() const;

Q_SIGNALS:
    /// The menus are new, and what was added to them is gone.
    void menusBuilt();

protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    enum class Page { Setup, Lanes };

    void buildPages();
    QWidget* makeBar();
    void buildMenus();
    void rebuildPages();
    void rebuildAll();
    void connectRun();
    void connectRecords();
    void startFrom(const std::vector<core::service::Service>& services, const QString& lastTime);
    void showPage(Page page);
    void followDocument();
    void followRun();
    void beginRun();
    void askToEnd();
    void showCautions();
    void buildHelp();
    void connectTour();
    void toggleHelp();
    bool passCautions();
    void checkSound();
    void prepare();
    void connectPreparation();
    void setHeard(bool heard);
    void undo();
    void redo();
    [[nodiscard]] bool runs() const;

    Theme& m_theme;
    session::Session& m_session;
    Sound& m_sound;
    QSettings& m_settings;
    std::shared_ptr<const core::measure::TimeZones> m_zones;
    std::filesystem::path m_folder;
    ServiceDocument m_document;
    Preparation m_preparation;
    bool m_heard = false;  ///< Somebody said that the alarms can be heard where they work.
    Asking m_asking;
    FileMenu* m_files;
    print::Printing* m_printing;
    Records* m_records;
    QStackedWidget* m_pages;
    SetupPage* m_setup = nullptr;
    LanesPage* m_lanes = nullptr;
    QPushButton* m_toSetup = nullptr;
    QPushButton* m_toLanes = nullptr;
    QLabel* m_fileName = nullptr;
    ViewMenu* m_view = nullptr;
    HelpMenu* m_help = nullptr;
    QAction* m_undo = nullptr;
    QAction* m_redo = nullptr;
};

}  // namespace app::desktop
