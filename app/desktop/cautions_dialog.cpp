#include "app/desktop/cautions_dialog.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/session/cautions.h"

#include <QCoreApplication>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace app::desktop {
namespace {

QWidget* cautionsText()
{
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout{page};
    layout->setSpacing(metrics::gap);
    for (const std::string& caution : session::cautions()) {
        auto* label = new QLabel{QCoreApplication::translate("Cautions", caution.c_str())};
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
        label->setFont(Theme::font(metrics::text));
        label->setTextInteractionFlags(Qt::TextSelectableByKeyboard | Qt::TextSelectableByMouse);
        layout->addWidget(label);
    }
    layout->addStretch(1);
    return page;
}

}  // namespace

CautionsDialog::CautionsDialog(Occasion occasion, QWidget* parent)
    : QDialog{parent}
{
    setObjectName(QStringLiteral("cautionsDialog"));
    setWindowTitle(tr("Cautions"));
    resize(720, 560);
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(24, 20, 24, 20);
    auto* title = new QLabel{tr("The leaflet of the product comes first")};
    title->setFont(Theme::font(metrics::textLarge, true));
    layout->addWidget(title);
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidget(cautionsText());
    layout->addWidget(scroll, 1);
    auto* row = new QHBoxLayout;
    const bool before = occasion == Occasion::BeforeRun;
    auto* go = new QPushButton{before ? tr("I have read them, go on  (Enter)") : tr("Close  (Enter)")};
    go->setObjectName(QStringLiteral("cautionsRead"));
    go->setProperty("role", QStringLiteral("main"));
    go->setDefault(true);
    row->addStretch(1);
    if (before) {
        auto* back = new QPushButton{tr("Not yet  (Esc)")};
        back->setObjectName(QStringLiteral("cautionsNotYet"));
        row->addWidget(back);
        connect(back, &QPushButton::clicked, this, &QDialog::reject);
    }
    row->addWidget(go);
    layout->addLayout(row);
    connect(go, &QPushButton::clicked, this, &QDialog::accept);
    go->setFocus();
}

}  // namespace app::desktop
