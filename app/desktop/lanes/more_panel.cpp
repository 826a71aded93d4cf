#include "app/desktop/lanes/more_panel.h"

#include "app/desktop/look/metrics.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace app::desktop {
namespace {

constexpr int columns = 3;
constexpr int mostWithKey = 9;

}  // namespace

MorePanel::MorePanel(QWidget* parent)
    : QFrame{parent}
    , m_question{new QLabel}
    , m_grid{new QGridLayout}
{
    setProperty("role", QStringLiteral("foot"));
    setObjectName(QStringLiteral("more"));
    m_question->setObjectName(QStringLiteral("moreQuestion"));
    m_question->setWordWrap(true);
    m_question->setTextFormat(Qt::PlainText);
    m_grid->setSpacing(metrics::gapSmall);
    for (int column = 0; column < columns; ++column)
        m_grid->setColumnStretch(column, 1);
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(metrics::gapLarge, metrics::gapSmall, metrics::gapLarge, metrics::gapSmall);
    layout->setSpacing(metrics::gapSmall);
    layout->addWidget(m_question);
    layout->addLayout(m_grid);
    turnTo(Page::Pick);
    hide();
}

/// While somebody is asked, only what makes the question void changes what is shown.
void MorePanel::showAmend(const view::AmendView& amend)
{
    if (amend == m_amend)
        return;
    m_amend = amend;
    const bool typing = m_page == Page::Helper;
    if (!typing)
        turnTo(Page::Pick);
}

void MorePanel::open()
{
    turnTo(Page::Pick);
    show();
    if (!m_parts.empty())
        m_parts.front()->setFocus(Qt::OtherFocusReason);
}

void MorePanel::clear()
{
    for (QWidget* part : m_parts) {
        m_grid->removeWidget(part);
        part->hide();
        part->deleteLater();  // It may be what was pressed just now.
    }
    m_parts.clear();
}

void MorePanel::ask(const QString& question)
{
    m_question->setText(question);
    m_question->setVisible(!question.isEmpty());
}

QPushButton* MorePanel::add(const QString& text, const QString& name, const QKeySequence& key)
{
    const int place = static_cast<int>(m_parts.size());
    const QString shown = key.toString(QKeySequence::NativeText);
    auto* button = new QPushButton{key.isEmpty() ? text : tr("%1  (%2)").arg(text, shown)};
    button->setObjectName(name);
    button->setAccessibleName(text);
    button->setMinimumHeight(metrics::target);
    if (!key.isEmpty())
        button->setShortcut(key);
    m_grid->addWidget(button, place / columns, place % columns);
    m_parts.push_back(button);
    return button;
}

QPushButton* MorePanel::addOption(const QString& text)
{
    const int number = static_cast<int>(m_parts.size()) + 1;
    const QKeySequence key = number <= mostWithKey
        ? QKeySequence{Qt::ALT | static_cast<Qt::Key>(Qt::Key_0 + number)}
        : QKeySequence{};
    return add(text, QStringLiteral("option%1").arg(number), key);
}

void MorePanel::turnTo(Page page)
{
    m_page = page;
    clear();
    switch (page) {
    case Page::Pick: return pick();
    case Page::Stop:
        ask(tr("Which application stops before it is done? The rest becomes a zone of its own."));
        return listZones(m_amend.applying, &MorePanel::stopped);
    case Page::Apart:
        ask(tr("Which zone is rinsed by itself when its time comes? Its neighbours must stay dry."));
        return listZones(m_amend.dry, &MorePanel::apartWanted);
    case Page::AwayWho:
        ask(tr("Who is away?"));
        return listHands([this](const view::HandsOption& hands) {
            m_who = hands;
            turnTo(Page::AwayMinutes);
        });
    case Page::AwayMinutes: return listMinutes();
    case Page::Helper: return askName();
    case Page::Gone:
        ask(tr("Who has gone for good?"));
        return listHands([this](const view::HandsOption& hands) { Q_EMIT gone(hands); });
    case Page::GiveUp: return askGiveUp();
    }
}

void MorePanel::pick()
{
    ask({});
    auto* stops = add(m_amend.applying.size() == 1
                          ? tr("Applying %1 stops").arg(QString::fromStdString(m_amend.applying.front().name))
                          : tr("Applying stops"),
                      QStringLiteral("moreStop"), Qt::Key_S);
    stops->setEnabled(!m_amend.applying.empty());
    stops->setToolTip(tr("It stops before it is done; the rest becomes a zone of its own, applied later."));
    connect(stops, &QPushButton::clicked, this, &MorePanel::stop);
    auto* apart = add(tr("Rinse a zone by itself …"), QStringLiteral("moreApart"), Qt::Key_R);
    apart->setEnabled(!m_amend.dry.empty());
    connect(apart, &QPushButton::clicked, this, [this] { turnTo(Page::Apart); });
    auto* givesUp = add(tr("Give up this coat …"), QStringLiteral("moreGiveUp"), Qt::Key_U);
    givesUp->setEnabled(m_amend.givesUp.has_value());
    connect(givesUp, &QPushButton::clicked, this, [this] { turnTo(Page::GiveUp); });
    auto* away = add(tr("Away …"), QStringLiteral("moreAway"), Qt::Key_A);
    away->setEnabled(!m_amend.here.empty());
    connect(away, &QPushButton::clicked, this, [this] {
        m_who = m_amend.here.front();
        turnTo(m_amend.here.size() == 1 ? Page::AwayMinutes : Page::AwayWho);
    });
    auto* comes = add(tr("Somebody comes …"), QStringLiteral("moreComes"), Qt::Key_C);
    connect(comes, &QPushButton::clicked, this, [this] { turnTo(Page::Helper); });
    auto* gone = add(tr("Somebody has gone …"), QStringLiteral("moreGone"), Qt::Key_G);
    gone->setEnabled(!m_amend.here.empty());
    connect(gone, &QPushButton::clicked, this, [this] { turnTo(Page::Gone); });
}

void MorePanel::stop()
{
    if (m_amend.applying.size() == 1)
        Q_EMIT stopped(view::ZoneOption{m_amend.applying.front()});
    else
        turnTo(Page::Stop);
}

void MorePanel::listZones(const std::vector<view::ZoneOption>& zones,
                          void (MorePanel::*told)(const view::ZoneOption&))
{
    for (const view::ZoneOption& zone : zones)
        connect(addOption(QString::fromStdString(zone.name)), &QPushButton::clicked, this,
                [this, told, zone] {
                    Q_EMIT(this->*told)
                    (zone);
                });
}

void MorePanel::listHands(const std::function<void(const view::HandsOption&)>& told)
{
    for (const view::HandsOption& hands : m_amend.here)
        connect(addOption(QString::fromStdString(hands.name)), &QPushButton::clicked, this,
                [told, hands] { told(hands); });
}

void MorePanel::listMinutes()
{
    ask(tr("For how long is %1 away, from now on?").arg(QString::fromStdString(m_who.name)));
    for (const int minutes : {5, 10, 15, 20, 30, 45})
        connect(addOption(tr("%1 min").arg(minutes)), &QPushButton::clicked, this,
                [this, minutes, who = m_who] { Q_EMIT away(who, minutes); });
}

void MorePanel::askName()
{
    ask(tr("Who comes to help?"));
    auto* name = new QLineEdit;
    name->setObjectName(QStringLiteral("helperName"));
    name->setAccessibleName(tr("Name of who comes to help"));
    name->setMinimumHeight(metrics::target);
    m_grid->addWidget(name, 0, 0);
    m_parts.push_back(name);
    auto* comes = add(tr("Comes to help  (Enter)"), QStringLiteral("helperComes"), {});
    comes->setEnabled(false);
    connect(name, &QLineEdit::textChanged, comes,
            [comes](const QString& text) { comes->setEnabled(!text.trimmed().isEmpty()); });
    connect(name, &QLineEdit::returnPressed, comes, &QPushButton::click);
    connect(comes, &QPushButton::clicked, this, [this, name] { Q_EMIT came(name->text().trimmed()); });
    name->setFocus(Qt::OtherFocusReason);
}

void MorePanel::askGiveUp()
{
    if (!m_amend.givesUp)
        return turnTo(Page::Pick);
    ask(tr("Give up %1? Nothing more of it is begun; what is on the hair is still rinsed.")
            .arg(QString::fromStdString(m_amend.givesUp->name)));
    connect(addOption(tr("Give it up")), &QPushButton::clicked, this,
            [this, coat = *m_amend.givesUp] { Q_EMIT givenUp(coat); });
    connect(addOption(tr("Keep it")), &QPushButton::clicked, this, [this] { turnTo(Page::Pick); });
}

}  // namespace app::desktop
