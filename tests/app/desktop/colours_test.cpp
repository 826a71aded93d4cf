#include "app/desktop/look/colours.h"
#include "app/desktop/look/theme.h"

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>

#include <gtest/gtest.h>

#include <string>
#include <vector>

using namespace app::desktop;

namespace {

struct Pair {
    std::string name;
    QColor ink;
    QColor ground;
};

/// What is written on what.
std::vector<Pair> textPairs(const Colours& c)
{
    return {
        {"ink on ground", c.ink, c.ground},
        {"ink on surface", c.ink, c.surface},
        {"ink on sunken", c.ink, c.sunken},
        {"ink on wash", c.ink, c.waterWash},
        {"ink on selection", c.ink, c.selection},
        {"quiet on wash", c.quietInk, c.waterWash},
        {"late on sunken", c.late, c.sunken},
        {"late on wash", c.late, c.waterWash},
        {"quiet on ground", c.quietInk, c.ground},
        {"quiet on surface", c.quietInk, c.surface},
        {"quiet on sunken", c.quietInk, c.sunken},
        {"on action", c.onAction, c.action},
        {"on soon", c.onSoon, c.soon},
        {"on late", c.onLate, c.late},
        {"late on ground", c.late, c.ground},
        {"late on surface", c.late, c.surface},
        {"on alarm", c.onAlarm, c.alarm},
        {"alarm button", c.alarm, c.onAlarm},
        {"on step that is due", c.onAlarmStep, c.alarmStep},
        {"its button", c.alarmStep, c.onAlarmStep},
        {"selection", c.onSelection, c.selection},
        {"water flag", c.surface, c.water},
        {"now flag", c.ground, c.ink},
    };
}

/// What is drawn on what, and has to be told apart from it.
std::vector<Pair> partPairs(const Colours& c)
{
    std::vector<Pair> pairs = {
        {"line on ground", c.line, c.ground},
        {"line on surface", c.line, c.surface},
        {"water on ground", c.water, c.ground},
        {"water on its wash", c.water, c.waterWash},
        {"focus on surface", c.water, c.surface},
        {"focus on sunken", c.water, c.sunken},
        {"line on sunken", c.line, c.sunken},
        {"line on wash", c.line, c.waterWash},
        {"page mark on sunken", c.action, c.sunken},
        {"tab mark on ground", c.action, c.ground},
        {"broken window on ground", c.late, c.ground},
        {"tick in a box", c.onSoon, c.soon},
        {"alarm's edge on ground", c.alarmEdge, c.ground},
        {"edge of a step that is due on ground", c.action, c.ground},
    };
    for (std::size_t place = 0; place < c.strands.size(); ++place) {
        const std::string strand = "strand " + std::to_string(place);
        pairs.push_back({strand + " on ground", c.strands[place], c.ground});
        pairs.push_back({strand + " on surface", c.strands[place], c.surface});
        pairs.push_back({strand + " on wash", c.strands[place], c.waterWash});
        pairs.push_back({strand + " on sunken", c.strands[place], c.sunken});
        const QColor track = blend(c.strands[place], c.ink, 0.25);
        pairs.push_back({strand + "'s window on ground", track, c.ground});
        pairs.push_back({strand + "'s window on wash", track, c.waterWash});
    }
    return pairs;
}

void expectContrast(const std::vector<Pair>& pairs, double least)
{
    for (const Pair& pair : pairs)
        EXPECT_GE(contrast(pair.ink, pair.ground), least) << pair.name;
}

// WCAG 2.1, success criterion 1.4.3: 4.5:1 for text.
TEST(Colours, LetTextBeRead)
{
    expectContrast(textPairs(lightColours()), 4.5);
    expectContrast(textPairs(darkColours()), 4.5);
}

// WCAG 2.1, success criterion 1.4.6: 7:1 for text in enhanced contrast.
TEST(Colours, LetTextBeReadByManyMoreInHighContrast)
{
    expectContrast(textPairs(highContrastColours()), 7.0);
    expectContrast(textPairs(darkHighContrastColours()), 7.0);
    expectContrast(textPairs(paperColours()), 7.0);
}

// WCAG 2.1, success criterion 1.4.11: 3:1 for parts.
TEST(Colours, LetPartsBeSeen)
{
    expectContrast(partPairs(lightColours()), 3.0);
    expectContrast(partPairs(darkColours()), 3.0);
    expectContrast(partPairs(highContrastColours()), 3.0);
    expectContrast(partPairs(darkHighContrastColours()), 3.0);
    expectContrast(partPairs(paperColours()), 3.0);
}

// What is said in an empty field is text too; the toolkit by itself draws it in half the colour of text.
TEST(Theme, LetsBeReadWhatIsSaidInEmptyFields)
{
    Theme theme{*qApp};
    for (const auto choice : {Theme::Choice::Light, Theme::Choice::Dark, Theme::Choice::HighContrast,
                              Theme::Choice::DarkHighContrast}) {
        theme.choose(choice);
        QComboBox choices;
        choices.setEditable(true);
        QLineEdit line;
        for (QWidget* field : {static_cast<QWidget*>(&line), static_cast<QWidget*>(choices.lineEdit())}) {
            field->ensurePolished();
            const QColor said = field->palette().color(QPalette::PlaceholderText);
            const Colours& colours = theme.colours();
            EXPECT_GE(contrast(blend(colours.surface, said, said.alphaF()), colours.surface),
                      theme.isHighContrast() ? 7.0 : 4.5)
                << field->metaObject()->className() << static_cast<int>(choice);
        }
    }
    theme.choose(Theme::Choice::Light);
}

// No more light than that of the light theme, where eyes are used to more. Common practice, no source.
TEST(Colours, LetNoAlarmDazzleInADarkRoom)
{
    const double light = contrast(lightColours().alarm, Qt::black);
    EXPECT_LT(contrast(darkColours().alarm, Qt::black), 0.8 * light);
    EXPECT_LT(contrast(darkHighContrastColours().alarm, Qt::black), 0.8 * light);
    EXPECT_EQ(lightColours().alarm, lightColours().late);
    EXPECT_LE(contrast(darkColours().alarmStep, Qt::black), contrast(lightColours().alarmStep, Qt::black));
    EXPECT_LE(contrast(darkHighContrastColours().alarmStep, Qt::black),
              contrast(lightColours().alarmStep, Qt::black));
}

// WCAG 2.1, definition of contrast ratio: from 1 to 21.
TEST(Contrast, ReachesFromOneToTwentyOne)
{
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrast(Qt::white, Qt::black), 21.0, 1e-9);
    EXPECT_NEAR(contrast(Qt::red, Qt::red), 1.0, 1e-9);
}

TEST(Blend, LaysOneColourOnAnother)
{
    EXPECT_EQ(blend(Qt::black, Qt::white, 0.0), QColor(Qt::black));
    EXPECT_EQ(blend(Qt::black, Qt::white, 1.0), QColor(Qt::white));
    EXPECT_EQ(blend(QColor(0, 0, 0), QColor(200, 100, 50), 0.5), QColor(100, 50, 25));
}

}  // namespace
