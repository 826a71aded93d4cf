#include "app/desktop/lanes/notice.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace app::desktop {

Notice::Notice(const Theme& theme, const QString& role, const QString& icon, QWidget* parent)
    : QFrame{parent}
    , m_icon{new QLabel}
    , m_text{new QLabel}
{
    setProperty("role", role);
    m_text->setWordWrap(true);
    m_text->setTextFormat(Qt::PlainText);
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(metrics::gap, metrics::gapTiny, metrics::gapSmall, metrics::gapTiny);
    row->setSpacing(metrics::gapSmall);
    row->addWidget(m_icon);
    row->addWidget(m_text, 1);
    const auto draw = [this, &theme, role, icon] {
        const QColor ink = role == QLatin1String{"warning"} ? theme.colours().onSoon : theme.colours().ink;
        m_icon->setPixmap(theme.icon(icon, ink).pixmap(22, 22));
    };
    draw();
    connect(&theme, &Theme::changed, this, draw);
    hide();
}

void Notice::say(const QString& text)
{
    if (text != m_text->text()) {
        m_text->setText(text);
        setAccessibleName(text);
    }
    setVisible(!text.isEmpty());
}

QString Notice::text() const
{
    return m_text->text();
}

QPushButton* Notice::offer(const QString& text)
{
    auto* button = new QPushButton{text};
    button->setObjectName(QStringLiteral("%1Offer%2").arg(objectName()).arg(++m_offers));
    layout()->addWidget(button);
    return button;
}

}  // namespace app::desktop
