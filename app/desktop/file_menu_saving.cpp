#include "app/desktop/file_menu.h"

#include <QFileDialog>
#include <QMessageBox>

// What is kept of a service, and what is asked before it is lost.
namespace app::desktop {

bool FileMenu::save()
{
    return m_document.path().isEmpty() ? saveAs() : saveTo(m_document.path());
}

bool FileMenu::saveAs()
{
    QFileDialog dialog{&m_window, tr("Save the service"), {}, tr("Service files (*.json)")};
    dialog.setObjectName(QStringLiteral("saveDialog"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("json"));
    dialog.selectFile(QString::fromStdString(m_document.service().name) + QStringLiteral(".json"));
    if (m_asking.ask(dialog) != QDialog::Accepted || dialog.selectedFiles().isEmpty())
        return false;
    return saveTo(dialog.selectedFiles().constFirst());
}

bool FileMenu::saveTo(const QString& path)
{
    if (!m_document.problems().empty()) {
        sayNotSaved(tr("Something is marked as wrong. Put it right first: a file that cannot be "
                       "opened again is of no use."));
        return false;
    }
    if (const auto wrong = m_files.write(path, m_document.service())) {
        sayNotSaved(*wrong);
        return false;
    }
    m_document.markSaved(path);
    remember(path);
    return true;
}

void FileMenu::sayNotSaved(const QString& why)
{
    QMessageBox box{QMessageBox::Warning, tr("Not saved"), why, QMessageBox::Ok, &m_window};
    box.setObjectName(QStringLiteral("notSaved"));
    m_asking.ask(box);
}

bool FileMenu::save(std::size_t head)
{
    m_document.showHead(head);
    return save();
}

bool FileMenu::mayLetGo()
{
    if (!m_document.isChanged())
        return true;
    QStringList names;
    for (std::size_t head = 0; head < m_document.services().size(); ++head)
        if (m_document.isChanged(head))
            names << QString::fromStdString(m_document.services()[head].name);
    QMessageBox box{
        QMessageBox::Question, tr("Unsaved changes"),
        names.size() == 1
            ? tr("%1 has changes that are not saved.").arg(names.front())
            : tr("These have changes that are not saved: %1.").arg(names.join(QStringLiteral(", "))),
        QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, &m_window};
    box.setObjectName(QStringLiteral("unsaved"));
    box.setDefaultButton(QMessageBox::Save);
    switch (m_asking.ask(box)) {
    case QMessageBox::Save: break;
    case QMessageBox::Discard: return true;
    default: return false;
    }
    for (std::size_t head = 0; head < m_document.services().size(); ++head)
        if (m_document.isChanged(head) && !save(head))
            return false;
    return true;
}

}  // namespace app::desktop
