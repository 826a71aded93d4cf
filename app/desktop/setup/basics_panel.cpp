#include "app/desktop/setup/basics_panel.h"

#include "app/desktop/look/flow_layout.h"
#include "app/desktop/setup/moments.h"
#include "app/desktop/wall_clock.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateTimeEdit>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>

namespace app::desktop {
namespace {

using core::measure::Instant;
using core::measure::LocalTime;
using core::measure::Seconds;

/// Typing in one field is one step back, whatever was typed.
enum Merge { MergeName = 1, MergeReadyBy, MergeBuffer, MergeBasins };

QLabel* labelFor(QWidget* field, const QString& text)
{
    auto* label = new QLabel{text};
    label->setBuddy(field);
    field->setAccessibleName(QString{text}.remove(QLatin1Char{'&'}));
    return label;
}

}  // namespace

BasicsPanel::BasicsPanel(ServiceDocument& document, std::shared_ptr<const core::measure::TimeZones> zones,
                         std::function<Instant()> now, QWidget* parent)
    : QWidget{parent}
    , m_document{document}
    , m_zones{std::move(zones)}
    , m_now{std::move(now)}
    , m_name{new QLineEdit}
    , m_kind{new QComboBox}
    , m_hasReadyBy{new QCheckBox{tr("&Ready by")}}
    , m_readyBy{new QDateTimeEdit}
    , m_buffer{new QSpinBox}
    , m_basins{new QSpinBox}
{
    build();
    connect(&m_document, &ServiceDocument::changed, this, &BasicsPanel::follow);
    connect(m_name, &QLineEdit::textEdited, this, [this](const QString& name) {
        m_document.edit(
            tr("the service's name"), [&](auto& service) { service.name = name.toStdString(); }, MergeName);
    });
    connect(m_kind, &QComboBox::activated, this, [this](int kind) {
        m_document.edit(tr("what is coloured"), [kind](auto& service) {
            service.head.kind = static_cast<core::service::HeadKind>(kind);
            service.head.piecesComeApart = service.head.piecesComeApart && kind == 2;
        });
    });
    connect(m_hasReadyBy, &QCheckBox::clicked, this, &BasicsPanel::offerReadyBy);
    connect(m_readyBy, &QDateTimeEdit::dateTimeChanged, this, &BasicsPanel::setReadyBy);
    connect(m_buffer, &QSpinBox::valueChanged, this, [this](int minutes) {
        if (!m_following)
            m_document.edit(
                tr("the time to spare"), [minutes](auto& service) { service.buffer = Seconds{minutes * 60}; },
                MergeBuffer);
    });
    connect(m_basins, &QSpinBox::valueChanged, this, [this](int basins) {
        if (!m_following)
            m_document.edit(
                tr("the basins"),
                [basins](auto& service) { service.crew.basins = static_cast<std::size_t>(basins); },
                MergeBasins);
    });
    follow();
}

void BasicsPanel::build()
{
    auto* row = new FlowLayout{this};
    m_name->setObjectName(QStringLiteral("serviceName"));
    m_kind->setObjectName(QStringLiteral("headKind"));
    m_kind->addItems({tr("a person"), tr("a wig"), tr("wefts")});
    m_hasReadyBy->setObjectName(QStringLiteral("hasReadyBy"));
    m_readyBy->setObjectName(QStringLiteral("readyBy"));
    m_readyBy->setAccessibleName(tr("Ready by"));
    m_readyBy->setTimeSpec(Qt::UTC);  // Stands for the wall clock of the service's zone.
    m_readyBy->setDisplayFormat(tr("ddd d MMM", "a day, as QDate::toString writes it") + QLatin1Char{' '}
                                + WallClock::format());
    m_buffer->setObjectName(QStringLiteral("buffer"));
    m_buffer->setRange(0, 600);
    m_buffer->setSuffix(tr(" min"));
    m_basins->setObjectName(QStringLiteral("basins"));
    m_basins->setRange(1, 50);
    for (QWidget* field : {static_cast<QWidget*>(m_kind), static_cast<QWidget*>(m_readyBy),
                           static_cast<QWidget*>(m_buffer), static_cast<QWidget*>(m_basins)})
        field->setMinimumHeight(36);
    row->addPair(labelFor(m_name, tr("Ser&vice")), m_name);
    row->addPair(labelFor(m_kind, tr("&On")), m_kind);
    row->addPair(m_hasReadyBy, m_readyBy);
    row->addPair(labelFor(m_buffer, tr("S&pare")), m_buffer);
    row->addPair(labelFor(m_basins, tr("&Basins")), m_basins);
}

void BasicsPanel::follow()
{
    const auto& service = m_document.service();
    m_following = true;
    if (m_name->text().toStdString() != service.name) {
        m_name->setText(QString::fromStdString(service.name));
        m_name->setCursorPosition(0);  // A long one is read from its beginning.
    }
    m_kind->setCurrentIndex(static_cast<int>(service.head.kind));
    m_hasReadyBy->setChecked(service.readyBy.has_value());
    for (QWidget* needsPromise : {static_cast<QWidget*>(m_readyBy), m_buffer->parentWidget()})
        needsPromise->setVisible(service.readyBy.has_value());
    if (service.readyBy)
        m_readyBy->setDateTime(Moments{m_zones, m_now}.wall(*service.readyBy, service.timeZone));
    m_buffer->setValue(static_cast<int>(service.buffer.count() / 60));
    m_basins->setValue(static_cast<int>(service.crew.basins));
    m_following = false;
}

void BasicsPanel::setReadyBy()
{
    if (m_following)
        return;
    const LocalTime local{Seconds{m_readyBy->dateTime().toSecsSinceEpoch()}};
    const std::string& zone = m_document.service().timeZone;
    if (!m_zones->knows(zone))
        return;
    const auto instants = m_zones->instantsOf(local, zone);
    // In the hour that a clock going forward leaves out there is no such moment; the entry waits for another.
    if (!instants.empty())
        m_document.edit(
            tr("when it is ready"), [&](auto& service) { service.readyBy = instants.front(); }, MergeReadyBy);
}

void BasicsPanel::offerReadyBy(bool wanted)
{
    m_document.edit(wanted ? tr("a time to be ready by") : tr("no time to be ready by"), [&](auto& service) {
        service.readyBy.reset();
        constexpr Seconds ahead{4 * 3600};
        if (wanted)
            service.readyBy = Instant{std::chrono::ceil<std::chrono::hours>(m_now() + ahead)};
    });
}

}  // namespace app::desktop
