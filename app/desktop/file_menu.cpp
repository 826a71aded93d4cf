#include "app/desktop/file_menu.h"

#include "app/desktop/setup/edits.h"
#include "app/desktop/setup/starting_points.h"

#include <QCoreApplication>
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

/// "Wig room three zones" of wig-room-three-zones, in the language of the window.
QString demoTitle(const QString& name)
{
    [[maybe_unused]] static constexpr const char* titles[] = {
        QT_TRANSLATE_NOOP("Demos", "Actor root and toners"),
        QT_TRANSLATE_NOOP("Demos", "Wefts two basins"),
        QT_TRANSLATE_NOOP("Demos", "Wig room darker over a day"),
        QT_TRANSLATE_NOOP("Demos", "Wig room lightening in sections"),
        QT_TRANSLATE_NOOP("Demos", "Wig room three zones"),
    };
    QString title = name;
    title.replace(QLatin1Char{'-'}, QLatin1Char{' '});
    title[0] = title[0].toUpper();
    return QCoreApplication::translate("Demos", title.toUtf8().constData());
}

}  // namespace

FileMenu::FileMenu(ServiceDocument& document, ServiceFiles files, QSettings& settings, Asking& asking,
                   QWidget& window)
    : QObject{&window}
    , m_document{document}
    , m_files{std::move(files)}
    , m_settings{settings}
    , m_asking{asking}
    , m_window{window}
{
    build();
    connect(&m_document, &ServiceDocument::stateChanged, this, &FileMenu::rememberOpen);
}

void FileMenu::rebuild()
{
    for (QMenu* menu : {m_recent, m_add, m_demos, m_menu})
        delete menu;
    build();
}

void FileMenu::build()
{
    m_menu = new QMenu{tr("&File"), &m_window};
    m_recent = new QMenu{tr("Open &recent"), &m_window};
    m_demos = new QMenu{tr("&Demo"), &m_window};
    m_add = new QMenu{tr("Add a &head"), &m_window};
    const auto add = [this](const QString& text, const QKeySequence& keys, const QString& name, auto&& what) {
        QAction* action = m_menu->addAction(text);
        action->setShortcut(keys);
        action->setObjectName(name);
        connect(action, &QAction::triggered, this, what);
    };
    add(tr("&New"), QKeySequence::New, QStringLiteral("fileNew"), [this] { makeNew(edits::blankService()); });
    fillNew();
    add(tr("&Open …"), QKeySequence::Open, QStringLiteral("fileOpen"), [this] { askAndOpen(); });
    m_menu->addMenu(m_recent);
    m_menu->addMenu(m_add);
    m_menu->addSeparator();
    add(tr("&Save"), QKeySequence::Save, QStringLiteral("fileSave"), [this] { save(); });
    add(tr("Save &as …"), QKeySequence{Qt::CTRL | Qt::SHIFT | Qt::Key_S}, QStringLiteral("fileSaveAs"),
        [this] { saveAs(); });
    m_menu->addSeparator();
    add(tr("&Quit"), QKeySequence::Quit, QStringLiteral("fileQuit"), [this] { m_window.close(); });
    connect(m_recent, &QMenu::aboutToShow, this, &FileMenu::fillRecent);
    fillDemos(*m_demos, QStringLiteral("demo-"), [this](const QString& name) { openDemo(name); });
    QAction* premiere = m_demos->addAction(tr("Before the premiere: three heads"));
    premiere->setObjectName(QStringLiteral("demo-premiere"));
    connect(premiere, &QAction::triggered, this, [this] { openPremiere(); });
    fillAdd();
}

void FileMenu::fillAdd()
{
    const auto add = [this](const QString& text, const QString& name, auto&& what) {
        QAction* action = m_add->addAction(text);
        action->setObjectName(name);
        connect(action, &QAction::triggered, this, what);
        return action;
    };
    add(tr("From &files …"), QStringLiteral("addFiles"), [this] {
        askAndAdd();
    })->setShortcut(QKeySequence{Qt::CTRL | Qt::SHIFT | Qt::Key_O});
    add(tr("A &new one"), QStringLiteral("addNew"), [this] { takeBeside({{edits::blankService(), {}}}); });
    add(tr("The &same once more"), QStringLiteral("addSame"), [this] {
        takeBeside({{m_document.service(), {}}});
    });
    QMenu* points = m_add->addMenu(tr("From a s&tarting point"));
    for (const StartingPoint& point : startingPoints())
        connect(points->addAction(point.name), &QAction::triggered, this, [this, service = point.service] {
            takeBeside({{service, {}}});
        });
    QMenu* demos = m_add->addMenu(tr("A &demo"));
    fillDemos(*demos, QStringLiteral("add-"),
              [this](const QString& name) { takeBeside(read(demoPath(name), {})); });
}

std::optional<core::service::Service> FileMenu::readDemo(const QString& name)
{
    const auto opened = read(demoPath(name), {});
    return opened ? std::optional{opened->service} : std::nullopt;
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

void FileMenu::fillDemos(QMenu& menu, const QString& prefix,
                         const std::function<void(const QString&)>& chosen)
{
    for (const QString& name : demoNames()) {
        QAction* action = menu.addAction(demoTitle(name));
        action->setObjectName(prefix + name);
        connect(action, &QAction::triggered, this, [chosen, name] { chosen(name); });
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

void FileMenu::rememberOpen()
{
    QStringList open;
    for (std::size_t head = 0; head < m_document.services().size(); ++head)
        if (!m_document.pathOf(head).isEmpty())
            open << m_document.pathOf(head);
    if (open.isEmpty() || open == m_open)
        return;
    m_open = open;
    m_settings.setValue(QStringLiteral("open"), open);
}

void FileMenu::fillNew()
{
    QMenu* points = m_menu->addMenu(tr("New, &from a starting point"));
    for (const StartingPoint& point : startingPoints()) {
        QAction* action = points->addAction(point.name);
        action->setObjectName(QStringLiteral("new-") + point.key);
        connect(action, &QAction::triggered, this, [this, service = point.service] { makeNew(service); });
    }
}

void FileMenu::makeNew(const core::service::Service& service)
{
    if (!mayLetGo())
        return;
    m_document.replace(service, {});
    Q_EMIT opened();
}

QStringList FileMenu::askForFiles(const QString& title)
{
    QFileDialog dialog{&m_window, title, QFileInfo{m_document.path()}.path(), tr("Service files (*.json)")};
    dialog.setObjectName(QStringLiteral("openDialog"));
    dialog.setFileMode(QFileDialog::ExistingFiles);
    return m_asking.ask(dialog) == QDialog::Accepted ? dialog.selectedFiles() : QStringList{};
}

void FileMenu::askAndOpen()
{
    if (const QStringList paths = askForFiles(tr("Open a service, or several that share a crew"));
        !paths.isEmpty())
        open(paths);
}

void FileMenu::askAndAdd()
{
    add(askForFiles(tr("Add heads")));
}

bool FileMenu::open(const QString& path)
{
    return open(QStringList{path});
}

bool FileMenu::open(const QStringList& paths)
{
    std::vector<ServiceDocument::Opened> opened;
    for (const QString& path : paths) {
        const QString whole = QFileInfo{path}.absoluteFilePath();
        auto one = read(whole, whole);
        if (!one)
            return false;
        opened.push_back(*std::move(one));
    }
    if (opened.empty() || !take(std::move(opened)))
        return false;
    for (const QString& path : paths)
        remember(QFileInfo{path}.absoluteFilePath());
    return true;
}

bool FileMenu::add(const QStringList& paths)
{
    std::vector<ServiceDocument::Opened> opened;
    for (const QString& path : paths) {
        const QString whole = QFileInfo{path}.absoluteFilePath();
        auto one = read(whole, whole);
        if (!one)
            return false;
        opened.push_back(*std::move(one));
    }
    for (const ServiceDocument::Opened& one : opened) {
        takeBeside(one);
        remember(one.path);
    }
    return true;
}

void FileMenu::receive(const QStringList& paths)
{
    const bool nothingOfOnesOwn =
        m_document.services().size() == 1 && m_document.path().isEmpty() && !m_document.isChanged();
    if (nothingOfOnesOwn) {
        open(paths);
        return;
    }
    QMessageBox box{QMessageBox::Question, tr("Beside what is here?"),
                    tr("Plan it together with what is here, or open it in its place?"), QMessageBox::Cancel,
                    &m_window};
    box.setObjectName(QStringLiteral("beside"));
    const auto* beside = box.addButton(tr("Plan together"), QMessageBox::AcceptRole);
    const auto* instead = box.addButton(tr("Open in its place"), QMessageBox::DestructiveRole);
    m_asking.ask(box);
    if (box.clickedButton() == beside)
        add(paths);
    else if (box.clickedButton() == instead)
        open(paths);
}

/// A demo has no path: it is saved somewhere else, and never over itself.
bool FileMenu::openDemo(const QString& name)
{
    auto opened = read(demoPath(name), {});
    if (!opened)
        return false;
    std::vector<ServiceDocument::Opened> one;
    one.push_back(*std::move(opened));
    return take(std::move(one));
}

bool FileMenu::openPremiere()
{
    std::vector<ServiceDocument::Opened> heads;
    for (const char* head : {"countess", "fishmonger", "ghost"}) {
        auto opened = read(demoPath(QStringLiteral("premiere/") + QLatin1String{head}), {});
        if (!opened)
            return false;
        heads.push_back(*std::move(opened));
    }
    return take(std::move(heads));
}

bool FileMenu::openCopy(const std::vector<core::service::Service>& services)
{
    std::vector<ServiceDocument::Opened> opened;
    for (const core::service::Service& service : services)
        opened.push_back({service, {}});
    return !opened.empty() && take(std::move(opened));
}

/// Says what is wrong where it cannot be read.
std::optional<ServiceDocument::Opened> FileMenu::read(const QString& from, const QString& path)
{
    auto service = m_files.read(from);
    if (service)
        return ServiceDocument::Opened{*std::move(service), path};
    QMessageBox box{QMessageBox::Warning, tr("Not opened"),
                    tr("%1 is not a service that can be opened.").arg(from), QMessageBox::Ok, &m_window};
    box.setObjectName(QStringLiteral("notOpened"));
    box.setInformativeText(service.error().section(QLatin1Char{'\n'}, 0, 11));
    box.setDetailedText(service.error());
    m_asking.ask(box);
    return std::nullopt;
}

bool FileMenu::take(std::vector<ServiceDocument::Opened> opened)
{
    if (!mayLetGo())
        return false;
    m_document.replaceAll(std::move(opened));
    Q_EMIT this->opened();
    return true;
}

bool FileMenu::takeBeside(const std::optional<ServiceDocument::Opened>& opened)
{
    if (!opened)
        return false;
    m_document.addHead(*opened);
    return true;
}

}  // namespace app::desktop
