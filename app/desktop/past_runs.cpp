#include "app/desktop/lanes/lanes_page.h"
#include "app/desktop/main_window.h"
#include "app/desktop/setup/setup_page.h"

#include <QMessageBox>
#include <QPushButton>

// What the window does with runs that were left, or are over.
namespace app::desktop {

bool MainWindow::resume(const session::StoredRun& run)
{
    if (const auto wrong = m_session.resume(run.id)) {
        warn(QString::fromStdString(*wrong));
        return false;
    }
    std::vector<ServiceDocument::Opened> heads;
    for (const core::service::Service& service : m_session.services())
        heads.push_back({service, {}});
    if (!heads.empty())
        m_document.replaceAll(std::move(heads));
    followRun();
    showPage(Page::Lanes);
    m_lanes->settled();
    m_lanes->sayResumed(tr("Taken up where it stopped. If something happened meanwhile, answer it and say "
                           "how long ago it was."));
    return true;
}

void MainWindow::offer(const session::StoredRun& run)
{
    QMessageBox box{
        QMessageBox::Question, tr("A run was left unfinished"),
        tr("It was begun long ago. Taken up now, everything in it is overdue and sounds at once."),
        QMessageBox::NoButton, this};
    box.setObjectName(QStringLiteral("offerResume"));
    const auto* take = box.addButton(tr("Take it up"), QMessageBox::AcceptRole);
    const auto* end = box.addButton(tr("End it for good"), QMessageBox::DestructiveRole);
    box.addButton(tr("Leave it for later"), QMessageBox::RejectRole);
    m_asking.ask(box);
    if (box.clickedButton() == take)
        resume(run);
    else if (box.clickedButton() == end && resume(run)) {
        m_session.end();
        m_session.leave();
        followRun();
        showPage(Page::Setup);
    }
}

void MainWindow::connectRecords()
{
    connect(m_records, &Records::startAgain, this, &MainWindow::startFrom);
    // What was said of another coat is of no use for what is opened now.
    connect(m_files, &FileMenu::opened, this, [this] { m_setup->sayLastTime({}); });
}

/// Lanes that run go on.
void MainWindow::startFrom(const std::vector<core::service::Service>& services, const QString& lastTime)
{
    showPage(Page::Setup);
    if (!m_files->openCopy(services))
        return;
    m_setup->sayLastTime(lastTime);
    comeToFront();
}

}  // namespace app::desktop
