#pragma once

#include "app/desktop/service_files.h"
#include "app/desktop/setup/service_document.h"

#include <QMenu>
#include <QSettings>

namespace app::desktop {

/// New, open, recent, demo, save, save as. Asks before something unsaved is lost.
class FileMenu : public QObject {
    Q_OBJECT

public:
    FileMenu(ServiceDocument& document, ServiceFiles files, QSettings& settings, QWidget& window);

    [[nodiscard]] QMenu* menu() const { return m_menu; }
    [[nodiscard]] QMenu* demoMenu() const { return m_demos; }

    /// Opens `path`, after asking about what is unsaved. False where it was not opened.
    bool open(const QString& path);

    /// Opens a demo by its name in resources/demo, such as "wig-room-three-zones".
    bool openDemo(const QString& name);

    bool save();

    /// Whether nothing unsaved stands in the way; saves it, or lets it go, as the person says.
    bool mayLetGo();

    /// The names of the demos, the default one first.
    static QStringList demoNames();

Q_SIGNALS:
    void opened();

private:
    void build();
    void makeNew();
    void askAndOpen();
    bool saveAs();
    bool saveTo(const QString& path);
    void remember(const QString& path);
    void fillRecent();
    void fillDemos();
    bool take(const QString& from, const QString& path);

    ServiceDocument& m_document;
    ServiceFiles m_files;
    QSettings& m_settings;
    QWidget& m_window;
    QMenu* m_menu;
    QMenu* m_recent;
    QMenu* m_demos;
};

}  // namespace app::desktop
