#include "app/desktop/cautions_dialog.h"
#include "app/desktop/lanes/lanes_page.h"
#include "app/desktop/main_window.h"
#include "app/desktop/setup/setup_page.h"
#include "app/desktop/sound_check.h"
#include "app/session/cautions.h"

namespace app::desktop {

void MainWindow::showCautions()
{
    CautionsDialog cautions{CautionsDialog::Occasion::Asked, this};
    m_asking.ask(cautions);
}

/// Before the first run on a person the cautions are read.
bool MainWindow::passCautions()
{
    if (!core::service::isOnPerson(m_document.services()) || session::cautionsWereShown(m_folder))
        return true;
    CautionsDialog cautions{CautionsDialog::Occasion::BeforeRun, this};
    if (m_asking.ask(cautions) != QDialog::Accepted)
        return false;
    session::rememberCautionsShown(m_folder);
    return true;
}

void MainWindow::checkSound()
{
    SoundCheck check{m_theme, m_sound, this};
    m_asking.ask(check);
    if (m_session.audible().empty())  // What began to sound meanwhile is no check.
        m_sound.silence();
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
