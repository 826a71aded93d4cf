#pragma once

#include "app/desktop/look/metrics.h"

#include <QComboBox>
#include <QLineEdit>

namespace app::desktop {

/// As wide as what it asks for; a word that is longer scrolls.
class ToneBox : public QComboBox {
public:
    void setLeastHeight(int height)
    {
        m_height = height;
        updateGeometry();
    }
    [[nodiscard]] QSize sizeHint() const override
    {
        constexpr int edgesAndArrow = 52;
        const QString asked = lineEdit() == nullptr ? QString{} : lineEdit()->placeholderText();
        return {fontMetrics().horizontalAdvance(asked) + edgesAndArrow, m_height};
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

private:
    int m_height = metrics::targetLive;
};

}  // namespace app::desktop
