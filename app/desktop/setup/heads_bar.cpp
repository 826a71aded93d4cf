#include "app/desktop/setup/heads_bar.h"

#include "app/desktop/look/flow_layout.h"
#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/setup/starting_points.h"
#include "core/stagger/head_name.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTabBar>
#include <QToolButton>
#include <QVBoxLayout>

namespace app::desktop {
namespace {

/// Apart from the numbers of BasicsPanel, so that typing here is one step back of its own.
constexpr int mergeHeadName = 101;
constexpr int nameWidth = 240;

}  // namespace

HeadsBar::HeadsBar(ServiceDocument& document, QWidget* parent)
    : QWidget{parent}
    , m_document{document}
    , m_tabs{new QTabBar}
    , m_name{new QLineEdit}
    , m_add{new QToolButton}
    , m_remove{new QPushButton{tr("Take this head out")}}
    , m_note{new QLabel}
    , m_practice{
          new QLabel{tr("These times are common practice, not those of a product. Put in what the product's "
                        "leaflet says, and say so with its bowl.")}}
{
    m_tabs->setObjectName(QStringLiteral("heads"));
    m_tabs->setAccessibleName(tr("Heads"));
    m_tabs->setDrawBase(false);
    m_tabs->setExpanding(false);
    m_name->setObjectName(QStringLiteral("headName"));
    m_name->setAccessibleName(tr("Name of the head"));
    m_name->setToolTip(tr("What prompts and alarms call this head. It is not kept in the record of a run."));
    m_name->setMaximumWidth(Theme::scaled(nameWidth));
    m_add->setObjectName(QStringLiteral("addHead"));
    m_add->setText(tr("Add a head"));
    m_add->setPopupMode(QToolButton::InstantPopup);
    m_remove->setObjectName(QStringLiteral("removeHead"));
    m_note->setObjectName(QStringLiteral("crewNote"));
    m_note->setProperty("role", QStringLiteral("quiet"));
    m_note->setWordWrap(true);
    m_note->setTextFormat(Qt::PlainText);
    m_practice->setObjectName(QStringLiteral("practiceNote"));
    m_practice->setProperty("role", QStringLiteral("quiet"));
    m_practice->setWordWrap(true);
    auto* label = new QLabel{tr("Ca&lled")};
    label->setBuddy(m_name);
    label->setAlignment(Qt::AlignRight | Qt::AlignVCenter);

    auto* row = new FlowLayout;
    row->addWidget(m_tabs);
    row->addPair(label, m_name);
    row->addWidget(m_remove);
    row->addWidget(m_add);
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(metrics::gapTiny);
    layout->addLayout(row);
    layout->addWidget(m_note);
    layout->addWidget(m_practice);
    connect(&m_document, &ServiceDocument::changed, this, &HeadsBar::follow);
    m_note->hide();
    connect(&m_document, &ServiceDocument::crewLeftOut, this, [this](const QString& why) {
        m_note->setText(why);
        m_note->setVisible(!why.isEmpty());
    });
    connect(m_tabs, &QTabBar::currentChanged, this,
            [this](int head) { m_document.showHead(static_cast<std::size_t>(std::max(0, head))); });
    connect(m_remove, &QPushButton::clicked, this, [this] { m_document.removeHead(m_document.shownHead()); });
    connect(m_name, &QLineEdit::textEdited, this, [this](const QString& name) {
        m_document.edit(
            tr("the head's name"), [&](auto& service) { service.head.name = name.toStdString(); },
            mergeHeadName);
    });
    follow();
}

void HeadsBar::setAddMenu(QMenu* menu)
{
    m_add->setMenu(menu);
}

void HeadsBar::follow()
{
    const std::size_t heads = m_document.services().size();
    if (heads != m_heads)
        m_note->hide();
    m_heads = heads;
    fillTabs();
    const QString name = QString::fromStdString(m_document.service().head.name);
    if (m_name->text() != name) {
        m_name->setText(name);
        m_name->setCursorPosition(0);  // A long one is read from its beginning.
    }
    m_remove->setVisible(heads > 1);
    m_practice->setVisible(restsOnCommonPractice(m_document.service()));
}

void HeadsBar::fillTabs()
{
    const QSignalBlocker quiet{m_tabs};
    const auto& services = m_document.services();
    while (m_tabs->count() > static_cast<int>(services.size()))
        m_tabs->removeTab(m_tabs->count() - 1);
    for (std::size_t head = 0; head < services.size(); ++head) {
        const bool wrong = !m_document.problemsOf(head).empty();
        const QString name = QString::fromStdString(core::stagger::headName(services, head));
        const QString text = wrong ? tr("%1 (something is wrong)").arg(name) : name;
        const int place = static_cast<int>(head);
        if (place < m_tabs->count())
            m_tabs->setTabText(place, text);
        else
            m_tabs->addTab(text);
    }
    m_tabs->setCurrentIndex(static_cast<int>(m_document.shownHead()));
}

}  // namespace app::desktop
