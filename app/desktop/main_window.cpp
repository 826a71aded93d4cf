#include "app/desktop/main_window.h"

#include "app/desktop/help/help_menu.h"
#include "app/desktop/lanes/lanes_page.h"
#include "app/desktop/sentences.h"
#include "app/desktop/setup/edits.h"
#include "app/desktop/setup/setup_page.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QFileInfo>
#include <QLabel>
#include <QMenuBar>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace app::desktop {

MainWindow::MainWindow(const Parts& parts)
    : m_theme{parts.theme}
    , m_session{parts.session}
    , m_sound{parts.sound}
    , m_settings{parts.settings}
    , m_zones{parts.zones}
    , m_folder{parts.folder}
    , m_asking{*this, [this] { return runs(); }}
    , m_files{new FileMenu{m_document, ServiceFiles{parts.zones, parts.localZone}, parts.settings, m_asking,
                           *this}}
    , m_printing{new print::Printing{*this, [this] { return toPrint(); }}}
    , m_records{new Records{m_theme, m_session, m_zones, *this}}
    , m_pages{new QStackedWidget}
{
    setObjectName(QStringLiteral("mainWindow"));
    setAcceptDrops(true);
    setMinimumSize(1000, 640);
    resize(1280, 800);
    edits::Service blank = edits::blankService();
    blank.timeZone = parts.localZone;
    m_document.replace(std::move(blank), {});
    buildPages();
    buildMenus();
    connectRun();
    connectRecords();
    connectPreparation();
    followDocument();
    followRun();
    showPage(Page::Setup);
    restoreGeometry(m_settings.value(QStringLiteral("window/geometry")).toByteArray());
    restoreState(m_settings.value(QStringLiteral("window/state")).toByteArray());
}

/// The pages look at the document until they are gone, so they go first.
MainWindow::~MainWindow()
{
    delete takeCentralWidget();
}

void MainWindow::buildPages()
{
    const Theme::Building building{m_theme};
    const auto now = [this] { return m_session.clock().now(); };
    m_setup = new SetupPage{m_theme, m_document, m_preparation, m_zones, now};
    m_setup->setAddMenu(m_files->addMenu());
    m_lanes = new LanesPage{m_theme, m_session, m_sound, m_zones};
    m_lanes->setHeard(m_heard);
    m_pages->addWidget(m_setup);
    m_pages->addWidget(m_lanes);
    auto* body = new QWidget;
    auto* layout = new QVBoxLayout{body};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(makeBar());
    layout->addWidget(m_pages, 1);
    setCentralWidget(body);
    connect(m_setup, &SetupPage::startRequested, this, &MainWindow::start);
    m_lanes->setFar(ViewMenu::isFar(m_settings));
    connect(m_lanes, &LanesPage::farChanged, this, [this](bool far) { m_view->setFar(far); });
    connect(m_setup, &SetupPage::soundCheckRequested, this, &MainWindow::checkSound);
    connectTour();
    connect(m_lanes, &LanesPage::stepShown, this, [this](const QString& step) {
        if (m_pages->currentWidget() == m_lanes)
            setWindowTitle(tr("%1 – Basinbell").arg(step));
    });
    connect(m_lanes, &LanesPage::serviceShown, this, [this](const QString& name) {
        if (m_pages->currentWidget() == m_lanes)
            m_fileName->setText(name);
    });
    connect(m_lanes, &LanesPage::endRequested, this, &MainWindow::askToEnd);
    connect(m_lanes, &LanesPage::cautionsRequested, this, &MainWindow::showCautions);
    connect(m_lanes, &LanesPage::soundCheckRequested, this, &MainWindow::checkSound);
}

QWidget* MainWindow::makeBar()
{
    auto* bar = new QFrame;
    bar->setProperty("role", QStringLiteral("strip"));
    auto* row = new QHBoxLayout{bar};
    row->setContentsMargins(8, 0, 20, 0);
    row->setSpacing(0);
    m_toSetup = new QPushButton{tr("Set-up  (Ctrl+1)")};
    m_toLanes = new QPushButton{tr("Lanes  (Ctrl+2)")};
    m_toSetup->setObjectName(QStringLiteral("toSetup"));
    m_toLanes->setObjectName(QStringLiteral("toLanes"));
    m_toSetup->setShortcut(QKeySequence{Qt::CTRL | Qt::Key_1});
    m_toLanes->setShortcut(QKeySequence{Qt::CTRL | Qt::Key_2});
    for (QPushButton* button : {m_toSetup, m_toLanes}) {
        button->setProperty("role", QStringLiteral("page"));
        button->setCheckable(true);
        row->addWidget(button);
    }
    m_fileName = new QLabel;
    m_fileName->setObjectName(QStringLiteral("fileName"));
    m_fileName->setProperty("role", QStringLiteral("quiet"));
    m_fileName->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_fileName->setWordWrap(true);
    row->addWidget(m_fileName, 1);
    connect(m_toSetup, &QPushButton::clicked, this, [this] { showPage(Page::Setup); });
    connect(m_toLanes, &QPushButton::clicked, this, [this] { showPage(Page::Lanes); });
    return bar;
}

void MainWindow::buildMenus()
{
    menuBar()->addMenu(m_files->menu());
    m_records->addTo(*m_files->menu());
    m_printing->addTo(*m_files->menu());
    QMenu* edit = menuBar()->addMenu(tr("&Edit"));
    m_undo = edit->addAction(tr("Undo"), this, &MainWindow::undo);
    m_undo->setObjectName(QStringLiteral("undo"));
    m_undo->setShortcut(QKeySequence::Undo);
    m_redo = edit->addAction(tr("Redo"), this, &MainWindow::redo);
    m_redo->setObjectName(QStringLiteral("redo"));
    m_redo->setShortcuts(
        {QKeySequence{Qt::CTRL | Qt::SHIFT | Qt::Key_Z}, QKeySequence{Qt::CTRL | Qt::Key_Y}});
    menuBar()->addMenu(m_files->demoMenu());
    QMenu* run = menuBar()->addMenu(tr("&Run"));
    QAction* start = run->addAction(tr("&Start the lanes"), this, &MainWindow::start);
    start->setObjectName(QStringLiteral("runStart"));
    start->setShortcuts({QKeySequence{Qt::CTRL | Qt::Key_Enter}, QKeySequence{Qt::CTRL | Qt::Key_Return}});
    QAction* before = run->addAction(tr("&Before the start"), this, &MainWindow::prepare);
    before->setObjectName(QStringLiteral("runBefore"));
    before->setShortcut(QKeySequence{Qt::Key_F4});
    QAction* check = run->addAction(tr("Sound &check …"), this, &MainWindow::checkSound);
    check->setObjectName(QStringLiteral("soundCheckMenu"));
    check->setShortcut(QKeySequence{Qt::Key_F3});
    run->addAction(tr("&How it turned out …"), this,
                   [this] {
                       showPage(Page::Lanes);
                       m_lanes->openOutcome();
                   })
        ->setObjectName(QStringLiteral("runOutcome"));
    run->addAction(tr("&End this run …"), this, &MainWindow::askToEnd);
    m_view = new ViewMenu{m_theme, m_settings, menuBar()};
    menuBar()->addMenu(m_view);
    connect(m_view, &ViewMenu::farChanged, this, [this](bool far) { m_lanes->setFar(far); });
    // Not while the menu that it was chosen in is still open.
    connect(m_view, &ViewMenu::textSizeChanged, this, &MainWindow::rebuildPages, Qt::QueuedConnection);
    connect(m_view, &ViewMenu::languageChanged, this, &MainWindow::rebuildAll, Qt::QueuedConnection);
    buildHelp();
    // Who has the menus read aloud triggers what is in them and does not click it, which closes nothing.
    for (const QAction* top : menuBar()->actions())
        connect(top->menu(), &QMenu::triggered, this, &Asking::closeMenus);
}

/// Sizes of text are set when parts are built.
void MainWindow::rebuildPages()
{
    const bool lanes = m_pages->currentWidget() == m_lanes;
    const QString lastTime = m_setup->lastTime();
    delete takeCentralWidget();
    m_pages = new QStackedWidget;
    buildPages();
    centralWidget()->show();  // What is not there to be seen cannot take the keyboard.
    m_setup->sayLastTime(lastTime);
    followRun();
    showPage(lanes ? Page::Lanes : Page::Setup);
}

/// Words are set when parts are built. Lanes go on meanwhile: they are the session's, not the window's.
void MainWindow::rebuildAll()
{
    QMenuBar* const old = menuBar();
    setMenuBar(new QMenuBar);
    delete old;
    m_files->rebuild();
    buildMenus();
    rebuildPages();
    Q_EMIT menusBuilt();
}

void MainWindow::connectRun()
{
    connect(&m_document, &ServiceDocument::changed, this, &MainWindow::followDocument);
    connect(&m_document, &ServiceDocument::stateChanged, this, &MainWindow::followDocument);
    connect(&m_session, &session::Session::stateChanged, this, &MainWindow::followRun);
    connect(&m_session, &session::Session::called, &m_sound, &Sound::sound);
    connect(&m_session, &session::Session::alarmsChanged, this,
            [this] { m_sound.setStanding(m_session.audible()); });
}

bool MainWindow::runs() const
{
    return m_session.current() && !m_session.state().finished;
}

void MainWindow::showPage(Page page)
{
    const bool lanes = page == Page::Lanes && m_session.current();
    const QSizePolicy shown{QSizePolicy::Preferred, QSizePolicy::Preferred};
    const QSizePolicy ignored{QSizePolicy::Ignored, QSizePolicy::Ignored};
    // A page that is not in view must not keep the window from being as small as the other can be.
    m_setup->setSizePolicy(lanes ? ignored : shown);
    m_lanes->setSizePolicy(lanes ? shown : ignored);
    m_pages->setCurrentWidget(lanes ? static_cast<QWidget*>(m_lanes) : m_setup);
    m_toSetup->setChecked(!lanes);
    m_toLanes->setChecked(lanes);
    m_setup->setWatched(!lanes);
    followDocument();
    if (lanes) {
        m_lanes->refresh();
        m_lanes->takeFocus();
    }
}

void MainWindow::followDocument()
{
    const QString file =
        m_document.path().isEmpty() ? tr("not saved anywhere yet") : QFileInfo{m_document.path()}.fileName();
    const bool lanes = m_pages->currentWidget() == m_lanes;
    if (!lanes)
        m_fileName->setText(m_document.isChanged() ? tr("%1, changed").arg(file) : file);
    if (!lanes)
        setWindowTitle(tr("%1 – Basinbell").arg(QString::fromStdString(m_document.service().name)));
    QUndoStack& stack = m_document.undoStack();
    m_undo->setText(lanes ? tr("Undo my last answer") : tr("Undo %1").arg(stack.undoText()));
    m_undo->setEnabled(lanes || stack.canUndo());
    m_redo->setText(tr("Redo %1").arg(stack.redoText()));
    m_redo->setEnabled(!lanes && stack.canRedo());
}

void MainWindow::followRun()
{
    m_toLanes->setEnabled(m_session.current().has_value());
    m_setup->setRunning(runs());
    m_sound.keepReady(runs());
    m_help->setRunning(runs());
}

void MainWindow::undo()
{
    if (m_pages->currentWidget() == m_lanes)
        m_lanes->undoLast();
    else
        m_document.undoStack().undo();
}

void MainWindow::redo()
{
    m_document.undoStack().redo();
}

void MainWindow::start()
{
    if (runs() || !m_setup->canStart() || m_pages->currentWidget() != m_setup)
        return;
    if (passCautions())
        beginRun();
}

void MainWindow::beginRun()
{
    m_session.leave();
    m_session.begin(m_document.services(), core::stagger::Preference::AsAsked, m_preparation.said());
    setHeard(m_preparation.of(Preparing::Sound).state == Prepared::State::Done);
    m_preparation.startOver();
    followRun();
    showPage(Page::Lanes);
    m_lanes->settle();  // A start that was pressed twice has answered nothing yet.
}

void MainWindow::askToEnd()
{
    if (!m_session.current())
        return;
    if (runs()) {
        QMessageBox box{
            QMessageBox::Question, tr("End this run"),
            tr("End this run for good? Nothing sounds any more, and it cannot be taken up again."),
            QMessageBox::NoButton, this};
        box.setObjectName(QStringLiteral("endQuestion"));
        const auto* end = box.addButton(tr("End it"), QMessageBox::DestructiveRole);
        box.setDefaultButton(box.addButton(tr("Keep it running"), QMessageBox::RejectRole));
        m_asking.ask(box);
        if (box.clickedButton() != end || !m_session.current())
            return;
    }
    if (const auto refusal = m_session.end(); refusal && runs())
        return warn(inWords(refusal->what));
    m_session.leave();
    m_sound.silence();
    followRun();
    showPage(Page::Setup);
}

void MainWindow::warn(const QString& warning)
{
    if (m_session.current())
        m_lanes->warn(warning);
    else
        QMessageBox::warning(this, tr("Basinbell"), warning);
}

void MainWindow::comeToFront()
{
    setWindowState((windowState() & ~Qt::WindowMinimized) | Qt::WindowActive);
    show();
    raise();
    activateWindow();
}

bool MainWindow::showsLanes() const
{
    return m_pages->currentWidget() == m_lanes;
}

void MainWindow::takeWindow()
{
    if (!m_session.current())
        return;
    const bool wasCovered = m_records->putAside() | m_asking.putAway();
    if (wasCovered || !showsLanes())
        m_lanes->settle();
    if (!showsLanes())
        showPage(Page::Lanes);
    if (isMinimized())
        setWindowState(windowState() & ~Qt::WindowMinimized);
    if (!isVisible())
        show();
    raise();
    if (!isActiveWindow())
        QApplication::alert(this);
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    if (runs()) {
        QMessageBox box{QMessageBox::Question, tr("Lanes are running"),
                        tr("Close the window while lanes run? No alarm sounds until it is opened again; the "
                           "run is kept and goes on then."),
                        QMessageBox::NoButton, this};
        box.setObjectName(QStringLiteral("closeQuestion"));
        const auto* close = box.addButton(tr("Close"), QMessageBox::DestructiveRole);
        box.setDefaultButton(box.addButton(tr("Keep it open"), QMessageBox::RejectRole));
        m_asking.ask(box);
        if (box.clickedButton() != close)
            return event->ignore();
    }
    if (!m_files->mayLetGo())
        return event->ignore();
    m_settings.setValue(QStringLiteral("window/geometry"), saveGeometry());
    m_settings.setValue(QStringLiteral("window/state"), saveState());
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event)
{
    const auto urls = event->mimeData()->urls();
    if (!urls.isEmpty() && std::ranges::all_of(urls, &QUrl::isLocalFile))
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event)
{
    event->acceptProposedAction();
    showPage(Page::Setup);
    QStringList paths;
    for (const QUrl& url : event->mimeData()->urls())
        paths << url.toLocalFile();
    m_files->receive(paths);
}

}  // namespace app::desktop
