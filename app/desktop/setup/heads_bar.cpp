#include "app/desktop/setup/heads_bar.h"

#include "app/desktop/look/metrics.h"
#include "core/stagger/head_name.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTabBar>
#include <QToolButton>

namespace app::desktop {
namespace {

/// Apart from the numbers of BasicsPanel, so that typing here is one step back of its own.
constexpr int mergeHeadName = 101;
constexpr int nameWidth = 160;

}  // namespace

HeadsBar::HeadsBar(ServiceDocument& document, QWidget* parent)
    : QWidget{parent}
    , m_document{document}
    , m_tabs{new QTabBar}
    , m_name{new QLineEdit}
    , m_nameLabel{nullptr}
    , m_add{new QToolButton}
    , m_remove{new QPushButton{tr("Take this head out")}}
    , m_note{new QLabel}
{
    m_tabs->setObjectName(QStringLiteral("heads"));
    m_tabs->setAccessibleName(tr("Heads"));
    m_tabs->setDrawBase(false);
    m_tabs->setExpanding(false);
    m_name->setObjectName(QStringLiteral("headName"));
    m_name->setAccessibleName(tr("Name of the head"));
    m_name->setToolTip(tr("What prompts and alarms call this head. It is not kept in the record of a run."));
    m_name->setMaximumWidth(nameWidth);
    m_add->setObjectName(QStringLiteral("addHead"));
    m_add->setText(tr("Add a head"));
    m_add->setPopupMode(QToolButton::InstantPopup);
    m_remove->setObjectName(QStringLiteral("removeHead"));
    m_note->setObjectName(QStringLiteral("crewNote"));
    m_note->setProperty("role", QStringLiteral("quiet"));
    m_note->setWordWrap(true);
    m_note->setTextFormat(Qt::PlainText);
    auto* label = new QLabel{tr("Ca&lled")};
    label->setBuddy(m_name);
    m_nameLabel = label;

    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(metrics::gapSmall);
    row->addWidget(m_tabs);
    row->addWidget(m_note, 1);
    row->addStretch(0);
    row->addWidget(m_nameLabel);
    row->addWidget(m_name);
    row->addWidget(m_remove);
    row->addWidget(m_add);
    connect(&m_document, &ServiceDocument::changed, this, &HeadsBar::follow);
    connect(&m_document, &ServiceDocument::crewLeftOut, m_note, &QLabel::setText);
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
        m_note->clear();
    m_heads = heads;
    fillTabs();
    const QString name = QString::fromStdString(m_document.service().head.name);
    if (m_name->text() != name)
        m_name->setText(name);
    m_remove->setVisible(heads > 1);
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
