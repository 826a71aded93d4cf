#include "app/desktop/look/colours.h"

#include <algorithm>
#include <cmath>

namespace app::desktop {
namespace {

double linear(double channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

/// Relative luminance, WCAG 2.1.
double luminance(const QColor& colour)
{
    const double red = linear(static_cast<double>(colour.redF()));
    const double green = linear(static_cast<double>(colour.greenF()));
    const double blue = linear(static_cast<double>(colour.blueF()));
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

}  // namespace

// Linen and ink, with the colours of hair and of water.
Colours lightColours()
{
    return {
        .ground = QColor{0xF6F1EA},
        .surface = QColor{0xFFFDFA},
        .sunken = QColor{0xEAE2D8},
        .line = QColor{0x85796F},
        .hairline = QColor{0xD6CBBF},
        .ink = QColor{0x2A2027},
        .quietInk = QColor{0x5F535B},
        .action = QColor{0x5B2A4E},
        .onAction = QColor{0xFFFFFF},
        .water = QColor{0x14697E},
        .waterWash = QColor{0xD8EBEE},
        .soon = QColor{0xF2C94C},
        .onSoon = QColor{0x2A2027},
        .late = QColor{0xB3261E},
        .onLate = QColor{0xFFFFFF},
        .alarm = QColor{0xB3261E},
        .onAlarm = QColor{0xFFFFFF},
        .alarmEdge = QColor{0xB3261E},
        .alarmStep = QColor{0x5B2A4E},
        .onAlarmStep = QColor{0xFFFFFF},
        .selection = QColor{0xE3D2DE},
        .onSelection = QColor{0x2A2027},
        .strands = {QColor{0x8A3B1E}, QColor{0x9A6A12}, QColor{0x6B3F73}, QColor{0x4F6430}, QColor{0x94405B},
                    QColor{0x3F5A86}},
    };
}

Colours darkColours()
{
    return {
        .ground = QColor{0x1B161A},
        .surface = QColor{0x262025},
        .sunken = QColor{0x312930},
        .line = QColor{0x8F828B},
        .hairline = QColor{0x443A42},
        .ink = QColor{0xF4ECE6},
        .quietInk = QColor{0xBDB0B6},
        .action = QColor{0xE7B7D5},
        .onAction = QColor{0x2B1325},
        .water = QColor{0x6CC4D6},
        .waterWash = QColor{0x17343B},
        .soon = QColor{0xF2C94C},
        .onSoon = QColor{0x2A2027},
        .late = QColor{0xFF8A7E},
        .onLate = QColor{0x2B0603},
        .alarm = QColor{0x7E231D},
        .onAlarm = QColor{0xFFF1EC},
        .alarmEdge = QColor{0xFF8A7E},
        .alarmStep = QColor{0x5B2A4E},
        .onAlarmStep = QColor{0xFFF1FA},
        .selection = QColor{0x5A3A50},
        .onSelection = QColor{0xF4ECE6},
        .strands = {QColor{0xE08A5F}, QColor{0xE0B350}, QColor{0xC79AD0}, QColor{0xA3BF78}, QColor{0xEB93AE},
                    QColor{0x8FB0E4}},
    };
}

// The same hues as far as they can be told from black and white.
Colours highContrastColours()
{
    return {
        .ground = QColor{0xFFFFFF},
        .surface = QColor{0xFFFFFF},
        .sunken = QColor{0xF0F0F0},
        .line = QColor{Qt::black},
        .hairline = QColor{0x6B6B6B},
        .ink = QColor{Qt::black},
        .quietInk = QColor{0x303030},
        .action = QColor{0x3D0F33},
        .onAction = QColor{0xFFFFFF},
        .water = QColor{0x003F52},
        .waterWash = QColor{0xE6F6FA},
        .soon = QColor{0xFFD21F},
        .onSoon = QColor{Qt::black},
        .late = QColor{0x8C0000},
        .onLate = QColor{0xFFFFFF},
        .alarm = QColor{0x8C0000},
        .onAlarm = QColor{0xFFFFFF},
        .alarmEdge = QColor{0x8C0000},
        .alarmStep = QColor{0x3D0F33},
        .onAlarmStep = QColor{0xFFFFFF},
        .selection = QColor{0xE9D3E3},
        .onSelection = QColor{Qt::black},
        .strands = {QColor{0x7A2A0E}, QColor{0x6B4700}, QColor{0x5A2A66}, QColor{0x364A15}, QColor{0x7D2447},
                    QColor{0x23406F}},
    };
}

Colours darkHighContrastColours()
{
    return {
        .ground = QColor{Qt::black},
        .surface = QColor{Qt::black},
        .sunken = QColor{0x1A1A1A},
        .line = QColor{0xFFFFFF},
        .hairline = QColor{0x8C8C8C},
        .ink = QColor{0xFFFFFF},
        .quietInk = QColor{0xE0E0E0},
        .action = QColor{0xFFC9EC},
        .onAction = QColor{Qt::black},
        .water = QColor{0x7FE3F7},
        .waterWash = QColor{0x00262E},
        .soon = QColor{0xFFE14D},
        .onSoon = QColor{Qt::black},
        .late = QColor{0xFFA398},
        .onLate = QColor{Qt::black},
        .alarm = QColor{0x6E0A06},
        .onAlarm = QColor{0xFFFFFF},
        .alarmEdge = QColor{0xFFA398},
        .alarmStep = QColor{0x4A0F3D},
        .onAlarmStep = QColor{0xFFFFFF},
        .selection = QColor{0x3A2333},
        .onSelection = QColor{0xFFFFFF},
        .strands = {QColor{0xFFAE85}, QColor{0xFFD36B}, QColor{0xE3B8EC}, QColor{0xC4E297}, QColor{0xFFB0C8},
                    QColor{0xB0CEFF}},
    };
}

Colours paperColours()
{
    Colours colours = highContrastColours();
    colours.sunken = Qt::white;
    colours.waterWash = QColor{0xF1F8FA};
    colours.filling = 0.12;
    return colours;
}

double contrast(const QColor& one, const QColor& other)
{
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

QColor blend(const QColor& under, const QColor& over, double share)
{
    const auto mix = [share](int low, int high) {
        return low + static_cast<int>(std::lround((high - low) * share));
    };
    return {mix(under.red(), over.red()), mix(under.green(), over.green()), mix(under.blue(), over.blue())};
}

}  // namespace app::desktop
