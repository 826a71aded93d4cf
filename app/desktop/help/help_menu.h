#pragma once

#include <QMenu>

namespace app::desktop {

/// What can be read about the program.
class HelpMenu : public QMenu {
    Q_OBJECT

public:
    explicit HelpMenu(QWidget* parent = nullptr);

    /// A tour beside lanes that run would be taken for them, so there is none then, and it says so.
    void setRunning(bool running);

Q_SIGNALS:
    /// The help of the page in view is to be opened, or closed where it is open.
    void pageWanted();
    void tourWanted();
    void cautionsWanted();

private:
    QAction* m_tour;
};

}  // namespace app::desktop
