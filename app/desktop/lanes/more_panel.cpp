#include "app/desktop/lanes/more_panel.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>

namespace app::desktop {
namespace {

constexpr int mostColumns = 3;
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
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(metrics::gapLarge, metrics::gapSmall, metrics::gapLarge, metrics::gapSmall);
    layout->setSpacing(metrics::gapSmall);
    layout->addWidget(m_question);
    layout->addLayout(m_grid);
    turnTo(Page::Pick);
    hide();
}

MorePanel::~MorePanel()
{
    for (const QPointer<QWidget>& part : m_gone)
        delete part;
}

/// While somebody is asked, only what makes the question void changes what is shown.
void MorePanel::showAmend(const view::AmendView& amend, const std::vector<Listed>& answers)
{
    if (amend == m_amend && answers == m_answers)
        return;
    m_amend = amend;
    m_answers = answers;
    const bool typing = m_page == Page::Helper || m_page == Page::ZoneName;
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

/// Nobody finds what is gone in the place of what has the same name now.
void MorePanel::clear()
{
    for (QWidget* part : m_parts) {
        m_grid->removeWidget(part);
        part->hide();
        part->setParent(nullptr);
        part->deleteLater();  // It may be what was pressed just now.
    }
    std::erase(m_gone, nullptr);
    m_gone.insert(m_gone.end(), m_parts.begin(), m_parts.end());
    m_parts.clear();
}

void MorePanel::ask(const QString& question)
{
    m_question->setText(question);
    m_question->setVisible(!question.isEmpty());
}

/// Shown at once where the panel is: a key that follows at once must find it there.
void MorePanel::put(QWidget* part)
{
    m_parts.push_back(part);
    m_columns = 0;
    arrange(isVisible() || parentWidget() == nullptr ? width() : parentWidget()->width());
    part->show();
}

void MorePanel::arrange(int width)
{
    int widest = 1;
    for (const QWidget* part : m_parts)
        widest = std::max(widest, part->sizeHint().width());
    const int room = width - 2 * metrics::gapLarge + metrics::gapSmall;
    const int columns = std::clamp(room / (widest + metrics::gapSmall), 1, mostColumns);
    if (columns == m_columns)
        return;
    m_columns = columns;
    for (int place = 0; place < static_cast<int>(m_parts.size()); ++place)
        m_grid->addWidget(m_parts[static_cast<std::size_t>(place)], place / columns, place % columns);
    for (int column = 0; column < mostColumns; ++column)
        m_grid->setColumnStretch(column, column < columns ? 1 : 0);
    layout()->invalidate();  // Whoever asks next how high it is must not be told of the former rows.
}

void MorePanel::resizeEvent(QResizeEvent* event)
{
    QFrame::resizeEvent(event);
    arrange(width());
}

QPushButton* MorePanel::add(const QString& text, const QString& name, const QKeySequence& key)
{
    const QString shown = key.toString(QKeySequence::NativeText);
    auto* button = new QPushButton{key.isEmpty() ? text : tr("%1  (%2)").arg(text, shown)};
    button->setObjectName(name);
    button->setAccessibleName(text);
    button->setMinimumHeight(std::max(metrics::target, Theme::scaled(26)));
    if (!key.isEmpty())
        button->setShortcut(key);
    put(button);
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
        return listZones(m_amend.applying, [this](const view::ZoneOption& zone) { Q_EMIT stopped(zone); });
    case Page::Apart:
        ask(tr("Which zone is rinsed by itself when its time comes? Its neighbours must stay dry."));
        return listZones(m_amend.dry, [this](const view::ZoneOption& zone) { Q_EMIT apartWanted(zone); });
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
    case Page::HeatWhich: return listHeats();
    case Page::HeatMinutes: return askHeat();
    case Page::ZoneLike:
        ask(tr("Which zone is it like? It has the same bowl, window and looks."));
        return listZones(m_amend.like, [this](const view::ZoneOption& like) {
            m_like = like;
            turnTo(Page::ZoneName);
        });
    case Page::ZoneName: return askZoneName();
    case Page::Answers: return listAnswers();
    case Page::Answer: return askAnswer();
    }
}

QPushButton* MorePanel::addPage(const QString& text, const QString& name, Qt::Key key, Page page,
                                bool enabled)
{
    auto* button = add(text, name, key);
    button->setEnabled(enabled);
    connect(button, &QPushButton::clicked, this, [this, page] { turnTo(page); });
    return button;
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
    addPage(tr("Rinse a zone by itself …"), QStringLiteral("moreApart"), Qt::Key_R, Page::Apart,
            !m_amend.dry.empty());
    addPage(tr("A zone more …"), QStringLiteral("moreZone"), Qt::Key_Z, Page::ZoneLike,
            !m_amend.like.empty());
    pickPeople();
    const bool both = !m_amend.heatOn.empty() && !m_amend.heatOff.empty();
    const QString heat = both     ? tr("Heat …")
        : m_amend.heatOff.empty() ? tr("Heat is on …")
                                  : tr("Heat is off");
    auto* heats = add(heat, QStringLiteral("moreHeat"), Qt::Key_H);
    heats->setEnabled(!m_amend.heatOn.empty() || !m_amend.heatOff.empty());
    connect(heats, &QPushButton::clicked, this, &MorePanel::heat);
    addPage(tr("An earlier answer …"), QStringLiteral("moreAnswers"), Qt::Key_P, Page::Answers,
            !m_answers.empty());
    addPage(tr("Give up this coat …"), QStringLiteral("moreGiveUp"), Qt::Key_U, Page::GiveUp,
            m_amend.givesUp.has_value());
}

void MorePanel::pickPeople()
{
    auto* away = add(tr("Away …"), QStringLiteral("moreAway"), Qt::Key_A);
    away->setEnabled(!m_amend.here.empty());
    connect(away, &QPushButton::clicked, this, [this] {
        m_who = m_amend.here.front();
        turnTo(m_amend.here.size() == 1 ? Page::AwayMinutes : Page::AwayWho);
    });
    addPage(tr("Somebody comes …"), QStringLiteral("moreComes"), Qt::Key_C, Page::Helper, true);
    addPage(tr("Somebody has gone …"), QStringLiteral("moreGone"), Qt::Key_G, Page::Gone,
            !m_amend.here.empty());
}

void MorePanel::stop()
{
    if (m_amend.applying.size() == 1)
        Q_EMIT stopped(view::ZoneOption{m_amend.applying.front()});
    else
        turnTo(Page::Stop);
}

void MorePanel::listZones(const std::vector<view::ZoneOption>& zones,
                          const std::function<void(const view::ZoneOption&)>& told)
{
    for (const view::ZoneOption& zone : zones)
        connect(addOption(QString::fromStdString(zone.name)), &QPushButton::clicked, this,
                [told, zone] { told(zone); });
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
    name->setMinimumHeight(std::max(metrics::target, Theme::scaled(26)));
    put(name);
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
