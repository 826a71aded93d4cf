#include "app/desktop/file_menu.h"

#include "app/desktop/setup/edits.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>

namespace app::desktop {
namespace {

constexpr qsizetype mostRecent = 8;

QString demoPath(const QString& name)
{
    return QStringLiteral(":/demo/%1.json").arg(name);
}

}  // namespace

FileMenu::FileMenu(ServiceDocument& document, ServiceFiles files, QSettings& settings, QWidget& window)
    : QObject{&window}
    , m_document{document}
    , m_files{std::move(files)}
    , m_settings{settings}
    , m_window{window}
    , m_menu{new QMenu{tr("&File"), &window}}
    , m_recent{new QMenu{tr("Open &recent"), &window}}
    , m_demos{new QMenu{tr("&Demo"), &window}}
{
    build();
}

void FileMenu::build()
{
    const auto add = [this](const QString& text, const QKeySequence& keys, const QString& name, auto&& what) {
        QAction* action = m_menu->addAction(text);
        action->setShortcut(keys);
        action->setObjectName(name);
        connect(action, &QAction::triggered, this, what);
    };
    add(tr("&New"), QKeySequence::New, QStringLiteral("fileNew"), [this] { makeNew(); });
    add(tr("&Open …"), QKeySequence::Open, QStringLiteral("fileOpen"), [this] { askAndOpen(); });
    m_menu->addMenu(m_recent);
    m_menu->addSeparator();
    add(tr("&Save"), QKeySequence::Save, QStringLiteral("fileSave"), [this] { save(); });
    add(tr("Save &as …"), QKeySequence{Qt::CTRL | Qt::SHIFT | Qt::Key_S}, QStringLiteral("fileSaveAs"),
        [this] { saveAs(); });
    m_menu->addSeparator();
    add(tr("&Quit"), QKeySequence::Quit, QStringLiteral("fileQuit"), [this] { m_window.close(); });
    connect(m_recent, &QMenu::aboutToShow, this, &FileMenu::fillRecent);
    fillDemos();
}

QStringList FileMenu::demoNames()
{
    const QString first = QStringLiteral("wig-room-three-zones");
    QStringList names;
    for (const QFileInfo& file : QDir{QStringLiteral(":/demo")}.entryInfoList({QStringLiteral("*.json")}))
        names << file.completeBaseName();
    if (names.removeOne(first))
        names.prepend(first);
    return names;
}

void FileMenu::fillDemos()
{
    for (const QString& name : demoNames()) {
        QString title = name;
        title.replace(QLatin1Char{'-'}, QLatin1Char{' '});
        title[0] = title[0].toUpper();
        QAction* action = m_demos->addAction(title);
        action->setObjectName(QStringLiteral("demo-") + name);
        connect(action, &QAction::triggered, this, [this, name] { openDemo(name); });
    }
}

void FileMenu::fillRecent()
{
    m_recent->clear();
    const QStringList paths = m_settings.value(QStringLiteral("recent")).toStringList();
    for (const QString& path : paths)
        connect(m_recent->addAction(QFileInfo{path}.fileName() + QStringLiteral("  –  ") + path),
                &QAction::triggered, this, [this, path] { open(path); });
    if (paths.isEmpty())
        m_recent->addAction(tr("Nothing yet"))->setEnabled(false);
}

void FileMenu::remember(const QString& path)
{
    QStringList paths = m_settings.value(QStringLiteral("recent")).toStringList();
    paths.removeAll(path);
    paths.prepend(path);
    m_settings.setValue(QStringLiteral("recent"), QStringList{paths.mid(0, mostRecent)});
}

void FileMenu::makeNew()
{
    if (!mayLetGo())
        return;
    m_document.replace(edits::blankService(), {});
    Q_EMIT opened();
}

void FileMenu::askAndOpen()
{
    const QString path = QFileDialog::getOpenFileName(
        &m_window, tr("Open a service"), QFileInfo{m_document.path()}.path(), tr("Service files (*.json)"));
    if (!path.isEmpty())
        open(path);
}

bool FileMenu::open(const QString& path)
{
    const QString whole = QFileInfo{path}.absoluteFilePath();
    if (!take(whole, whole))
        return false;
    remember(whole);
    return true;
}

/// A demo has no path: it is saved somewhere else, and never over itself.
bool FileMenu::openDemo(const QString& name)
{
    return take(demoPath(name), {});
}

bool FileMenu::take(const QString& from, const QString& path)
{
    auto service = m_files.read(from);
    if (!service) {
        QMessageBox box{QMessageBox::Warning, tr("Not opened"),
                        tr("%1 is not a service that can be opened.").arg(from), QMessageBox::Ok, &m_window};
        box.setObjectName(QStringLiteral("notOpened"));
        box.setInformativeText(service.error().section(QLatin1Char{'\n'}, 0, 11));
        box.setDetailedText(service.error());
        box.exec();
        return false;
    }
    if (!mayLetGo())
        return false;
    m_document.replace(std::move(*service), path);
    Q_EMIT opened();
    return true;
}

bool FileMenu::save()
{
    return m_document.path().isEmpty() ? saveAs() : saveTo(m_document.path());
}

bool FileMenu::saveAs()
{
    QString path = QFileDialog::getSaveFileName(&m_window, tr("Save the service"),
                                                QString::fromStdString(m_document.service().name)
                                                    + QStringLiteral(".json"),
                                                tr("Service files (*.json)"));
    if (path.isEmpty())
        return false;
    if (QFileInfo{path}.suffix().isEmpty())
        path += QStringLiteral(".json");
    return saveTo(path);
}

bool FileMenu::saveTo(const QString& path)
{
    if (!m_document.problems().empty()) {
        QMessageBox::information(&m_window, tr("Not saved"),
                                 tr("Something is marked as wrong. Put it right first: a file that cannot be "
                                    "opened again is of no use."));
        return false;
    }
    if (const auto wrong = m_files.write(path, m_document.service())) {
        QMessageBox::warning(&m_window, tr("Not saved"), *wrong);
        return false;
    }
    m_document.markSaved(path);
    remember(path);
    return true;
}

bool FileMenu::mayLetGo()
{
    if (!m_document.isChanged())
        return true;
    QMessageBox box{
        QMessageBox::Question, tr("Unsaved changes"),
        tr("%1 has changes that are not saved.").arg(QString::fromStdString(m_document.service().name)),
        QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, &m_window};
    box.setObjectName(QStringLiteral("unsaved"));
    box.setDefaultButton(QMessageBox::Save);
    switch (box.exec()) {
    case QMessageBox::Save: return save();
    case QMessageBox::Discard: return true;
    default: return false;
    }
}

}  // namespace app::desktop
