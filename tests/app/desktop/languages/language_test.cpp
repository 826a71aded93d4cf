#include "app/desktop/language.h"

#include "app/desktop/lanes/lanes_page.h"
#include "app/desktop/wall_clock.h"
#include "app/desktop/words.h"
#include "tests/app/desktop/languages/catalogue.h"
#include "tests/app/desktop/rig.h"

#include <QAction>
#include <QApplication>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QRegularExpression>
#include <QSet>
#include <QTest>

#include <gtest/gtest.h>

// The window in other languages, and the way from one to another.

namespace {

using namespace app::desktop;
using rig::Rig;

class Languages : public testing::Test {
protected:
    Languages() { language::use(QStringLiteral("en")); }
    ~Languages() override { language::use(QStringLiteral("en")); }
};

TEST_F(Languages, FollowWhatIsWantedMostAndOffered)
{
    EXPECT_EQ(language::best({QStringLiteral("de-AT"), QStringLiteral("fr")}), QStringLiteral("de"));
    EXPECT_EQ(language::best({QStringLiteral("nl"), QStringLiteral("fr-CA"), QStringLiteral("en")}),
              QStringLiteral("fr"));
    EXPECT_EQ(language::best({QStringLiteral("es_MX")}), QStringLiteral("es"));
    EXPECT_EQ(language::best({QStringLiteral("nl")}), QStringLiteral("en"));
    EXPECT_EQ(language::best({}), QStringLiteral("en"));
}

TEST_F(Languages, WriteAsTheSystemDoesWhereItIsOfTheSameLanguage)
{
    const QLocale austria{QLocale::German, QLocale::Austria};
    EXPECT_EQ(language::localeFor(QStringLiteral("de"), austria).territory(), QLocale::Austria);
    EXPECT_EQ(language::localeFor(QStringLiteral("fr"), austria).territory(), QLocale::France);
    EXPECT_EQ(language::localeFor(QStringLiteral("en"), austria).territory(), QLocale::UnitedKingdom);
    EXPECT_EQ(language::localeFor(QStringLiteral("en"), QLocale::c()).territory(), QLocale::UnitedKingdom);
}

// What a button says of its key is what the help and the menus call it.
TEST_F(Languages, HaveOneNameForEachKey)
{
    static const QRegularExpression key{
        QStringLiteral("\\(((?:(?:Ctrl|Shift|Alt)\\+)+\\w+|Enter|Del|Esc)\\)")};
    int found = 0;
    for (const language::Offered& each : language::offered()) {
        language::use(each.code);
        const QString file =
            QStringLiteral(SOURCE_DIR "/resources/translations/basinbell_%1.ts").arg(each.code);
        for (const catalogue::Message& message : catalogue::read(file)) {
            const auto named = key.match(message.source);
            if (!named.hasMatch())
                continue;
            ++found;
            const QString keys = QKeySequence{named.captured(1)}.toString(QKeySequence::NativeText);
            for (const QString& form : message.forms)
                EXPECT_TRUE(form.contains(QLatin1Char{'('} + keys + QLatin1Char{')'}))
                    << form.toStdString() << " instead of " << keys.toStdString();
        }
    }
    EXPECT_GT(found, 60);
}

TEST_F(Languages, ChangeWordsPluralsNumbersAndTimes)
{
    const std::vector<std::string> names{"Root", "Ends"};
    const WallClock clock{std::make_shared<core::measure::UtcOnly>(), "UTC"};
    const core::measure::Instant afternoon{core::measure::Seconds{14 * 3600 + 5 * 60}};
    const app::view::ChoiceView choice{.what = {}, .limitsPassed = 1, .minutesShort = 3.5};
    EXPECT_EQ(words::joined(names), QStringLiteral("Root and Ends"));
    EXPECT_EQ(clock.text(afternoon), QStringLiteral("14:05"));
    EXPECT_TRUE(words::outcome(choice).contains(QStringLiteral("3.5")));

    language::use(QStringLiteral("de"));
    EXPECT_EQ(language::used(), QStringLiteral("de"));
    EXPECT_EQ(words::joined(names), QStringLiteral("Root und Ends"));
    EXPECT_EQ(clock.text(afternoon), QStringLiteral("14:05"));
    EXPECT_TRUE(words::outcome(choice).contains(QStringLiteral("3,5")))
        << words::outcome(choice).toStdString();
    language::use(QStringLiteral("fr"));
    EXPECT_EQ(words::joined(names), QStringLiteral("Root et Ends"));
    language::use(QStringLiteral("es"));
    EXPECT_EQ(words::joined(names), QStringLiteral("Root y Ends"));
    EXPECT_EQ(QCoreApplication::translate("Words", "%n limits are passed by %1 in all", nullptr, 1),
              QStringLiteral("Se supera 1 límite por %1"));
    EXPECT_EQ(QCoreApplication::translate("Words", "%n limits are passed by %1 in all", nullptr, 2),
              QStringLiteral("Se superan 2 límites por %1 en total"));
}

TEST_F(Languages, WriteHalfADayWhereThePlaceDoes)
{
    QLocale::setDefault(QLocale{QLocale::English, QLocale::UnitedStates});
    const WallClock clock{std::make_shared<core::measure::UtcOnly>(), "UTC"};
    const QString text = clock.text(core::measure::Instant{core::measure::Seconds{14 * 3600 + 5 * 60}});
    EXPECT_TRUE(text.startsWith(QStringLiteral("2:05"))) << text.toStdString();
    EXPECT_TRUE(text.endsWith(QStringLiteral("PM"))) << text.toStdString();
}

// Lanes are the session's: another language is another coat of words over them.
TEST_F(Languages, AreChosenInTheMenuWhileLanesRun)
{
    Rig rig;
    rig.window->document().replace(Rig::service(), {});
    rig.startLanes();
    ASSERT_TRUE(rig.window->showsLanes());
    const auto prompts = rig.session->state().prompts;
    auto* german = rig.find<QAction>("language-de");
    ASSERT_NE(german, nullptr);
    EXPECT_EQ(german->text(), QStringLiteral("Deutsch"));
    german->trigger();
    ASSERT_TRUE(Rig::wait(
        [&] { return rig.find<QPushButton>("toLanes")->text().contains(QLatin1String{"Bahnen"}); }));
    EXPECT_TRUE(rig.window->showsLanes());
    EXPECT_EQ(rig.session->state().prompts, prompts);
    EXPECT_EQ(rig.window->menuBar()->actions().front()->text(), QStringLiteral("&Datei"));
    EXPECT_TRUE(rig.find<QAction>("language-de")->isChecked());
    EXPECT_EQ(rig.window->findChildren<QAction*>(QStringLiteral("fileOpen")).size(), 1);
    EXPECT_TRUE(rig.window->windowTitle().contains(QStringLiteral("auftragen")))
        << rig.window->windowTitle().toStdString();

    // The keys are where they were.
    rig.activate();
    const auto facts = rig.session->facts().size();
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_GT(rig.session->facts().size(), facts);
}

void addDoubleKeys(const QMenu& menu, QStringList& found)
{
    QSet<QString> taken;
    for (const QAction* action : menu.actions()) {
        const QString key = QKeySequence::mnemonic(action->text()).toString();
        if (!key.isEmpty() && taken.contains(key))
            found << menu.title() + QStringLiteral(" > ") + action->text();
        taken << key;
        if (action->menu() != nullptr)
            addDoubleKeys(*action->menu(), found);
    }
}

TEST_F(Languages, GiveNoLetterTwiceInAMenu)
{
    for (const language::Offered& each : language::offered()) {
        language::use(each.code);
        const Rig rig;
        QStringList found;
        for (const QAction* action : rig.window->menuBar()->actions())
            addDoubleKeys(*action->menu(), found);
        EXPECT_EQ(found.join(QLatin1Char{'\n'}).toStdString(), "") << each.code.toStdString();
    }
}

}  // namespace
