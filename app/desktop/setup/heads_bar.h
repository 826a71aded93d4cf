#pragma once

#include "app/desktop/setup/service_document.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QMenu;
class QPushButton;
class QTabBar;
class QToolButton;

namespace app::desktop {

/// The heads that are planned together: a tab each, what adds one and what takes the shown one away.
class HeadsBar : public QWidget {
    Q_OBJECT

public:
    explicit HeadsBar(ServiceDocument& document, QWidget* parent = nullptr);

    /// What can be added.
    void setAddMenu(QMenu* menu);

private:
    void follow();
    void fillTabs();

    ServiceDocument& m_document;
    QTabBar* m_tabs;
    QLineEdit* m_name;
    QToolButton* m_add;
    QPushButton* m_remove;
    QLabel* m_note;
    QLabel* m_practice;
    std::size_t m_heads = 0;
};

}  // namespace app::desktop
