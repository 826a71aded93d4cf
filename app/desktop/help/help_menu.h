#pragma once

#include <QMenu>

namespace app::desktop {

/// What can be read about the program.
class HelpMenu : public QMenu {
    Q_OBJECT

public:
    explicit HelpMenu(QWidget* parent = nullptr);

Q_SIGNALS:
    /// The help of the page in view is to be opened, or closed where it is open.
    void pageWanted();
    void cautionsWanted();
};

}  // namespace app::desktop
