#include "app/desktop/look/theme.h"

#include "app/desktop/look/metrics.h"
#include "app/desktop/look/style_sheet.h"

#include <QApplication>
#include <QFile>
#include <QPainter>
#include <QPalette>
#include <QStyleFactory>
#include <QSvgRenderer>

#include <algorithm>

namespace app::desktop {
namespace {

QPalette toolkitPalette(const Colours& colours)
{
    QPalette palette;
    palette.setColor(QPalette::Window, colours.ground);
    palette.setColor(QPalette::WindowText, colours.ink);
    palette.setColor(QPalette::Base, colours.surface);
    palette.setColor(QPalette::AlternateBase, colours.sunken);
    palette.setColor(QPalette::Text, colours.ink);
    palette.setColor(QPalette::PlaceholderText, colours.quietInk);
    palette.setColor(QPalette::Button, colours.sunken);
    palette.setColor(QPalette::ButtonText, colours.ink);
    palette.setColor(QPalette::BrightText, colours.onLate);
    palette.setColor(QPalette::Highlight, colours.selection);
    palette.setColor(QPalette::HighlightedText, colours.onSelection);
    palette.setColor(QPalette::ToolTipBase, colours.surface);
    palette.setColor(QPalette::ToolTipText, colours.ink);
    palette.setColor(QPalette::Link, colours.water);
    palette.setColor(QPalette::Mid, colours.hairline);
    palette.setColor(QPalette::Disabled, QPalette::Text, colours.quietInk);
    palette.setColor(QPalette::Disabled, QPalette::WindowText, colours.quietInk);
    palette.setColor(QPalette::Disabled, QPalette::ButtonText, colours.quietInk);
    return palette;
}

}  // namespace

Theme::Building::Building(Theme& theme)
    : m_theme{theme}
{
    m_theme.m_building = true;
    m_theme.dress();
}

Theme::Building::~Building()
{
    m_theme.m_building = false;
    m_theme.dress();
}

Theme::Theme(QApplication& application)
    : m_application{application}
    , m_paletteIsDark{application.palette().color(QPalette::Window).lightness() < 128}
{
    m_application.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    m_application.setFont(font(metrics::text));
    apply();
}

void Theme::choose(Choice choice)
{
    m_choice = choice;
    apply();
}

void Theme::followSystem(const SystemLook& system)
{
    if (system == m_system)
        return;
    m_system = system;
    if (m_choice == Choice::System)
        apply();
}

void Theme::apply()
{
    const bool follows = m_choice == Choice::System;
    m_dark = m_choice == Choice::Dark || m_choice == Choice::DarkHighContrast
        || (follows && m_system.dark.value_or(m_paletteIsDark));
    m_highContrast = m_choice == Choice::HighContrast || m_choice == Choice::DarkHighContrast
        || (follows && m_system.highContrast);
    if (m_highContrast)
        m_colours = m_dark ? darkHighContrastColours() : highContrastColours();
    else
        m_colours = m_dark ? darkColours() : lightColours();
    m_application.setPalette(toolkitPalette(m_colours));
    dress();
    Q_EMIT changed();
}

void Theme::dress()
{
    m_application.setStyleSheet(m_building ? QString{} : styleSheet(m_colours, s_textSize));
}

void Theme::setTextSize(int percent)
{
    s_textSize = std::clamp(percent, 100, 200);
    m_application.setFont(font(metrics::text));
    apply();
}

QFont Theme::font(int pixels, bool bold)
{
    constexpr int largest = metrics::textAlert;
    return exactFont(std::min(scaled(pixels), std::max(pixels, largest)), bold);
}

QFont Theme::enlargedFont(int pixels, int percent, bool bold)
{
    return exactFont(font(pixels).pixelSize() * percent / 100, bold);
}

QFont Theme::exactFont(int pixels, bool bold)
{
    // Its figures are all of one width, so a countdown does not dance.
    QFont font{QStringLiteral("DejaVu Sans")};
    font.setStyleHint(QFont::SansSerif);
    font.setPixelSize(pixels);
    font.setBold(bold);
    return font;
}

QIcon Theme::icon(const QString& name, const QColor& colour) const
{
    QIcon& known = m_drawn[{name, colour.rgb()}];
    if (!known.isNull())
        return known;
    QFile file{QStringLiteral(":/icons/%1.svg").arg(name)};
    if (!file.open(QIODevice::ReadOnly))
        return {};
    QSvgRenderer drawing{file.readAll().replace("currentColor", colour.name().toLatin1())};
    QIcon icon;
    constexpr int smallest = 20;
    for (const int size : {smallest, 40, 80, 160}) {
        QPixmap pixmap{size, size};
        pixmap.fill(Qt::transparent);
        QPainter painter{&pixmap};
        // The smallest stands before the words of a button, and not against them.
        const double free = size == smallest ? 3 : 0;
        drawing.render(&painter, QRectF{0, free / 2, size - free, size - free});
        icon.addPixmap(pixmap);
    }
    known = icon;
    return icon;
}

}  // namespace app::desktop
