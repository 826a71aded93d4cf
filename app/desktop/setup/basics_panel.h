#pragma once

#include "app/desktop/setup/service_document.h"

#include <QWidget>

#include <memory>

class QCheckBox;
class QComboBox;
class QDateTimeEdit;
class QLineEdit;
class QSpinBox;

namespace app::desktop {

/// The head, when it must be ready, and how many basins there are.
class BasicsPanel : public QWidget {
    Q_OBJECT

public:
    BasicsPanel(ServiceDocument& document, std::shared_ptr<const core::measure::TimeZones> zones,
                std::function<core::measure::Instant()> now, QWidget* parent = nullptr);

private:
    void build();
    void follow();
    void setReadyBy();
    void offerReadyBy(bool wanted);

    ServiceDocument& m_document;
    std::shared_ptr<const core::measure::TimeZones> m_zones;
    std::function<core::measure::Instant()> m_now;
    QLineEdit* m_name;
    QComboBox* m_kind;
    QCheckBox* m_hasReadyBy;
    QDateTimeEdit* m_readyBy;
    QSpinBox* m_buffer;
    QSpinBox* m_basins;
    bool m_following = false;
};

}  // namespace app::desktop
