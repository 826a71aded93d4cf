#include "app/desktop/cautions_dialog.h"
#include "app/desktop/main_window.h"
#include "app/desktop/sound_check.h"
#include "app/session/cautions.h"

#include <algorithm>

namespace app::desktop {

void MainWindow::showCautions()
{
    CautionsDialog{CautionsDialog::Occasion::Asked, this}.exec();
}

/// Before the first run on a person the cautions are read.
bool MainWindow::passCautions()
{
    const bool person = std::ranges::any_of(m_document.services(), [](const auto& service) {
        return service.head.kind == core::service::HeadKind::Person;
    });
    if (!person || session::cautionsWereShown(m_folder))
        return true;
    if (CautionsDialog{CautionsDialog::Occasion::BeforeRun, this}.exec() != QDialog::Accepted)
        return false;
    session::rememberCautionsShown(m_folder);
    return true;
}

/// Once each time the program is started. Whoever hears nothing can start all the same: the screen tells it
/// too.
bool MainWindow::passSoundCheck()
{
    if (m_soundChecked)
        return true;
    SoundCheck check{m_theme, m_sound, this};
    check.exec();
    m_soundChecked = check.verdict() == SoundCheck::Verdict::Heard;
    return check.verdict() != SoundCheck::Verdict::Cancelled;
}

void MainWindow::checkSound()
{
    SoundCheck check{m_theme, m_sound, this};
    check.exec();
    m_soundChecked = check.verdict() == SoundCheck::Verdict::Heard;
}

}  // namespace app::desktop
