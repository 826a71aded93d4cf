#pragma once

#include "app/desktop/asking.h"
#include "app/desktop/service_files.h"
#include "app/desktop/setup/service_document.h"

#include <QMenu>
#include <QSettings>

#include <functional>
#include <optional>

namespace app::desktop {

/// New, open, add a head, recent, demo, save, save as. Asks before something unsaved is lost.
class FileMenu : public QObject {
    Q_OBJECT

public:
    FileMenu(ServiceDocument& document, ServiceFiles files, QSettings& settings, Asking& asking,
             QWidget& window);

    [[nodiscard]] QMenu* menu() const { return m_menu; }
    [[nodiscard]] QMenu* demoMenu() const { return m_demos; }

    /// Makes the menus anew, in the language that is used now.
    void rebuild();

    /// What can be added to what is there: files, a new head, the same once more, a demo.
    [[nodiscard]] QMenu* addMenu() const { return m_add; }

    /// Opens `path`, after asking about what is unsaved. False where it was not opened.
    bool open(const QString& path);

    /// Opens files as the heads that are planned together.
    bool open(const QStringList& paths);

    /// Adds files to the heads that are there. False where one of them cannot be read: none is added then.
    bool add(const QStringList& paths);

    /// Files that were dragged in: asks whether they come beside what is there or in its place.
    void receive(const QStringList& paths);

    /// Opens a demo by its name in resources/demo, such as "wig-room-three-zones".
    bool openDemo(const QString& name);

    /// A demo by its name, without opening it.
    [[nodiscard]] std::optional<core::service::Service> readDemo(const QString& name);

    /// The demo with several heads.
    bool openPremiere();

    /// Opens services of a run that is over as ones that were never saved, after asking about what is
    /// unsaved.
    bool openCopy(const std::vector<core::service::Service>& services);

    bool save();

    /// Whether nothing unsaved stands in the way; saves it, or lets it go, as the person says.
    bool mayLetGo();

    /// The names of the demos, the default one first.
    static QStringList demoNames();

Q_SIGNALS:
    /// Something else is there in place of what was.
    void opened();

private:
    void build();
    void makeNew(const core::service::Service& service);
    void fillNew();
    void askAndOpen();
    void askAndAdd();
    [[nodiscard]] QStringList askForFiles(const QString& title);
    bool save(std::size_t head);
    bool saveAs();
    bool saveTo(const QString& path);
    void sayNotSaved(const QString& why);
    void remember(const QString& path);
    void rememberOpen();
    void fillRecent();
    void fillAdd();
    void fillDemos(QMenu& menu, const QString& prefix, const std::function<void(const QString&)>& chosen);
    [[nodiscard]] std::optional<ServiceDocument::Opened> read(const QString& from, const QString& path);
    bool take(std::vector<ServiceDocument::Opened> opened);
    bool takeBeside(const std::optional<ServiceDocument::Opened>& opened);

    ServiceDocument& m_document;
    ServiceFiles m_files;
    QSettings& m_settings;
    Asking& m_asking;
    QWidget& m_window;
    QMenu* m_menu = nullptr;
    QMenu* m_recent = nullptr;
    QMenu* m_demos = nullptr;
    QMenu* m_add = nullptr;
    QStringList m_open;  ///< The files that the program opens again when it is started.
};

}  // namespace app::desktop
