#include "app/desktop/cautions_dialog.h"
#include "app/desktop/language.h"
#include "app/desktop/sound_check.h"
#include "tests/app/desktop/languages/said.h"
#include "tests/app/desktop/pictures/scenes.h"

#include "core/service/service_file.h"

#include <QApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QTest>

#include <gtest/gtest.h>

#include <sstream>

// Nothing that the window says has been left in English: with everything that is translated between brackets,
// what stands without them is a name out of a service, or was forgotten.

namespace {

class Untranslated : public testing::Test {
protected:
    Untranslated() { QCoreApplication::installTranslator(&m_brackets); }
    ~Untranslated() override { QCoreApplication::removeTranslator(&m_brackets); }

private:
    said::Bracketing m_brackets;
};

void addTexts(const QJsonValue& value, QStringList& texts)
{
    if (value.isString())
        texts << value.toString();
    for (const QJsonValue each : value.toArray())
        addTexts(each, texts);
    for (const QJsonValue each : value.toObject())
        addTexts(each, texts);
}

/// Whatever somebody wrote into the services that are open or run.
QStringList namesIn(const rig::Rig& rig)
{
    QStringList names{QStringLiteral("Basinbell"), QStringLiteral("still yellow"),
                      QStringLiteral("brassy at the nape")};
    for (const app::desktop::language::Offered& language : app::desktop::language::offered())
        names << language.name;
    for (const auto* services : {&rig.window->document().services(), &rig.session->services()})
        for (const core::service::Service& service : *services) {
            std::ostringstream text;
            core::service::writeService(text, service, core::measure::UtcOnly{});
            addTexts(QJsonDocument::fromJson(QByteArray::fromStdString(text.str())).object(), names);
        }
    return names;
}

std::string untranslatedIn(QWidget& window, const QStringList& names)
{
    QStringList found;
    for (const QString& text : said::textsIn(window))
        if (const QString left = said::notTranslated(text, names); !left.isEmpty())
            found << QStringLiteral("\"%1\" in \"%2\"").arg(left, text);
    found.sort();
    return found.join(QLatin1Char{'\n'}).toStdString();
}

TEST_F(Untranslated, IsNothingInAnyScene)
{
    for (const pictures::Scene& scene : pictures::scenes()) {
        rig::Rig rig;
        scene.stage(rig);
        QTest::qWait(50);
        EXPECT_EQ(untranslatedIn(*rig.window, namesIn(rig)), "") << scene.name.toStdString();
    }
}

TEST_F(Untranslated, IsNothingInDialogs)
{
    using app::desktop::CautionsDialog;
    rig::FakeSound sound;
    const app::desktop::Theme theme{*qobject_cast<QApplication*>(QCoreApplication::instance())};
    CautionsDialog before{CautionsDialog::Occasion::BeforeRun, nullptr};
    app::desktop::SoundCheck check{theme, sound, nullptr};
    for (QWidget* dialog : {static_cast<QWidget*>(&before), static_cast<QWidget*>(&check)})
        EXPECT_EQ(untranslatedIn(*dialog, {}), "") << dialog->objectName().toStdString();
}

// The test of the test.
TEST_F(Untranslated, IsSeen)
{
    QWidget window;
    auto* label = new QLabel{QStringLiteral("Forgotten"), &window};
    EXPECT_EQ(untranslatedIn(window, {}), "\"Forgotten\" in \"Forgotten\"");
    EXPECT_EQ(untranslatedIn(window, {QStringLiteral("Forgotten")}), "");
    label->setText(QCoreApplication::translate("Any", "Apply %1").arg(QStringLiteral("Root")));
    EXPECT_EQ(untranslatedIn(window, {}), "");
    label->setText(label->text() + QStringLiteral(", 2 of 3"));
    EXPECT_NE(untranslatedIn(window, {}), "");
    window.setToolTip(QStringLiteral("A tip"));
    label->setText({});
    EXPECT_EQ(untranslatedIn(window, {}), "\"A tip\" in \"A tip\"");
}

}  // namespace
