#pragma once

#include <functional>

class QDialog;
class QWidget;

namespace app::desktop {

/// What is asked over a window. While lanes run nothing that is asked keeps anybody from answering them, and
/// what must be seen puts it away.
class Asking {
public:
    Asking(QWidget& window, std::function<bool()> lanesRun);

    /// As QDialog::exec(). While lanes run the window can be used meanwhile; then one thing is asked at a
    /// time, and a second one is as good as turned down.
    int ask(QDialog& dialog);

    /// Turns down whatever is asked, as Esc does, and closes what lies over the window and menus. False where
    /// nothing was there.
    bool putAway() const;

    /// Of whichever window. False where none is open.
    static bool closeMenus();

private:
    QWidget& m_window;
    std::function<bool()> m_lanesRun;
    QDialog* m_asked = nullptr;  ///< What waits for an answer.
};

}  // namespace app::desktop
