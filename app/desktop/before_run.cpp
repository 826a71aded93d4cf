#include "app/desktop/cautions_dialog.h"
#include "app/desktop/lanes/lanes_page.h"
#include "app/desktop/main_window.h"
#include "app/desktop/setup/setup_page.h"
#include "app/desktop/sound_check.h"
#include "app/session/cautions.h"

namespace app::desktop {

void MainWindow::showCautions()
{
    CautionsDialog{CautionsDialog::Occasion::Asked, this}.exec();
}

/// Before the first run on a person the cautions are read.
bool MainWindow::passCautions()
{
    if (!core::service::isOnPerson(m_document.services()) || session::cautionsWereShown(m_folder))
        return true;
    if (CautionsDialog{CautionsDialog::Occasion::BeforeRun, this}.exec() != QDialog::Accepted)
        return false;
    session::rememberCautionsShown(m_folder);
    return true;
}

void MainWindow::checkSound()
{
    SoundCheck check{m_theme, m_sound, this};
    check.exec();
    using State = Prepared::State;
    const bool heard = check.verdict() == SoundCheck::Verdict::Heard;
    if (check.verdict() == SoundCheck::Verdict::Cancelled)
        return;
    setHeard(heard);
    // While lanes run it is of them, and the list is that of the next time.
    if (!runs())
        m_preparation.say({.what = Preparing::Sound,
                           .state = heard ? State::Done : State::Skipped,
                           .at = m_session.clock().now()});
}

void MainWindow::prepare()
{
    if (runs())
        return;
    showPage(Page::Setup);
    m_setup->goToPreparation();
}

void MainWindow::connectPreparation()
{
    connect(&m_document, &ServiceDocument::headsCame, &m_preparation, &Preparation::startAfresh);
    // What was heard from a loudspeaker that is gone says nothing of the next.
    connect(&m_sound, &Sound::healthChanged, this, [this] {
        if (m_sound.isWorking())
            return;
        m_preparation.say({.what = Preparing::Sound});
        setHeard(false);
    });
}

void MainWindow::setHeard(bool heard)
{
    m_heard = heard;
    m_lanes->setHeard(heard);
}

}  // namespace app::desktop
