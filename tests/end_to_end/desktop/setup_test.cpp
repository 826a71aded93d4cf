#include "tests/app/sound/capture/private_sound.h"
#include "tests/end_to_end/desktop/expected_alarms.h"
#include "tests/end_to_end/desktop/kept_run.h"
#include "tests/end_to_end/desktop/room.h"

#include <QElapsedTimer>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// From nothing to lanes that run, and their end, by what a screen reader is told and may press and write.

namespace {

using core::run::FactKind;
using core::run::Prepared;
using desk::Part;
using testing::HasSubstr;

const QString menuItem = QStringLiteral("menu item");
const QString tableCell = QStringLiteral("cell");
const QString whySkipped = QStringLiteral("The same mixture as in March");

class SetUpByScreenReader : public testing::Test {
public:
    void SetUp() override
    {
        ASSERT_TRUE(reader.isUp()) << "dbus-daemon and at-spi2-core are needed for this test";
        ASSERT_TRUE(sound.startServer() && sound.addDevice());
        ASSERT_TRUE(screen.isUp());
    }

    /// The part of this name, without the key that stands behind it. Waits for it.
    std::optional<Part> part(const QString& name, const QString& role = {}) const
    {
        QElapsedTimer timer;
        timer.start();
        while (timer.elapsed() < 20000) {
            const auto parts = reader.read();
            const auto found = std::ranges::find_if(parts, [&](const Part& each) {
                return (each.name == name || each.name.startsWith(name + QStringLiteral("  (")))
                    && (role.isEmpty() || each.role == role);
            });
            if (found != parts.end())
                return *found;
            capture::waitFor(std::chrono::milliseconds{100});
        }
        ADD_FAILURE() << "There is no " << name.toStdString() << " among:\n" << room.all();
        return {};
    }

    void press(const char* name, const QString& role = {})
    {
        const auto found = part(QString::fromUtf8(name), role);
        ASSERT_TRUE(found && reader.press(*found)) << name;
    }

    void write(const char* name, const QString& text, const QString& role = tableCell)
    {
        const auto found = part(QString::fromUtf8(name), role);
        ASSERT_TRUE(found && reader.write(*found, text)) << name;
    }

    /// What is said of the drawn strands, once that fits.
    QString strands(const QRegularExpression& wanted) const
    {
        QString said;
        for (int tries = 0; tries < 60 && !wanted.match(said).hasMatch(); ++tries) {
            capture::waitFor(std::chrono::milliseconds{300});
            said = reader.find(QStringLiteral("Strands")).value_or(Part{}).description;
        }
        return said;
    }

    void startTheProgram();
    void chooseAStartingPoint();
    void addAZone();
    void readThePlan();
    void answerTheList();
    void startTheLanes();
    void answerTheFirstSteps();
    void endTheRun();

    QTemporaryDir data;
    desk::ScreenReader reader;
    capture::PrivateSound sound;
    desk::Screen screen;
    desk::Room room{screen, reader};
};

void SetUpByScreenReader::startTheProgram()
{
    ASSERT_TRUE(
        screen.start({QStringLiteral("--speed"), desk::speedText, QStringLiteral("--data"), data.path()}));
    ASSERT_TRUE(reader.waitFor(QStringLiteral("Start"), QStringLiteral("push button"), 30000)) << room.all();
}

void SetUpByScreenReader::chooseAStartingPoint()
{
    press("File", menuItem);
    press("New, from a starting point", menuItem);
    press("Regrowth and ends", menuItem);
    EXPECT_FALSE(reader.find(QStringLiteral("Quit"), menuItem)) << "the menu is closed\n" << room.all();
    const auto target = part(QStringLiteral("Target of Regrowth"), tableCell);
    ASSERT_TRUE(target);
    EXPECT_EQ(reader.textOf(*target).toStdString(), "35");
    EXPECT_THAT(target->description.toStdString(), HasSubstr("development"));
}

void SetUpByScreenReader::addAZone()
{
    press("Add");
    write("Zone 3", QStringLiteral("Nape"));
    write("Target of Nape", QStringLiteral("20"));
    write("Least of Nape", QStringLiteral("15"));
    write("Most of Nape", QStringLiteral("30"));
    const auto most = part(QStringLiteral("Most of Nape"), tableCell);
    ASSERT_TRUE(most);
    EXPECT_EQ(reader.textOf(*most).toStdString(), "30");

    // What makes no sense is refused in words, as it is where somebody types it.
    write("Most of Nape", QStringLiteral("soon"));
    EXPECT_EQ(reader.textOf(*most).toStdString(), "30");
    EXPECT_TRUE(reader.waitFor(QStringLiteral("Most: 'soon' was not understood"), {}, 5000)) << room.all();
}

/// Each zone is told with its times, and the new one develops as long as it was asked to.
void SetUpByScreenReader::readThePlan()
{
    static const QRegularExpression nape{
        QStringLiteral("Nape: applied from \\S+ to \\S+, water at \\S+, ([0-9.]+) min development")};
    const QString said = strands(nape);
    const auto found = nape.match(said);
    ASSERT_TRUE(found.hasMatch()) << said.toStdString() << room.all();
    EXPECT_GE(found.captured(1).toDouble(), 15);
    EXPECT_LE(found.captured(1).toDouble(), 30);
    for (const char* zone : {"Regrowth: applied from", "Ends: applied from"})
        EXPECT_THAT(said.toStdString(), HasSubstr(zone));
}

void SetUpByScreenReader::answerTheList()
{
    press("Sound: not checked");
    press("Listen …");
    press("I hear them");
    write("Why it is skipped", whySkipped, QStringLiteral("text"));
    press("Skip it");
    press("All there");
    press("Set out");
    for (const char* said : {"Sound: heard", "Skin and strand tests: skipped", "Gloves, apron, air: done",
                             "Bowls in order: done"})
        EXPECT_TRUE(part(QString::fromUtf8(said))) << said;
}

void SetUpByScreenReader::startTheLanes()
{
    press("Start");
    press("I have read them, go on");
    ASSERT_TRUE(reader.waitFor(QStringLiteral("End this run"), QStringLiteral("push button"), 30000));
    EXPECT_EQ(room.lanes().size(), 3) << room.all();
}

void SetUpByScreenReader::answerTheFirstSteps()
{
    for (int step = 0; step < 3; ++step) {
        const QString asked = room.waitForStep(120000);
        ASSERT_TRUE(asked.startsWith(QLatin1String{"Now: "})) << asked.toStdString() << room.all();
        ASSERT_TRUE(room.answer()) << room.all();
    }
}

void SetUpByScreenReader::endTheRun()
{
    press("End this run …");
    press("End it");
    EXPECT_TRUE(reader.waitFor(QStringLiteral("Start"), QStringLiteral("push button"), 30000)) << room.all();
}

TEST_F(SetUpByScreenReader, LeadsFromNothingToARunAndItsEnd)
{
    for (const auto step : {&SetUpByScreenReader::startTheProgram, &SetUpByScreenReader::chooseAStartingPoint,
                            &SetUpByScreenReader::addAZone, &SetUpByScreenReader::readThePlan,
                            &SetUpByScreenReader::answerTheList, &SetUpByScreenReader::startTheLanes,
                            &SetUpByScreenReader::answerTheFirstSteps, &SetUpByScreenReader::endTheRun}) {
        (this->*step)();
        ASSERT_FALSE(HasFatalFailure());
    }
    screen.kill();

    const desk::Kept kept = desk::keptIn(data.path());
    const auto& zones = kept.setup.services.at(0).coats.at(0).zones;
    ASSERT_EQ(zones.size(), 3u);
    EXPECT_EQ(zones[2].name, "Nape");
    EXPECT_EQ(zones[2].develop.target, std::chrono::minutes{20});
    ASSERT_EQ(kept.setup.prepared.size(), 4u);
    EXPECT_EQ(kept.setup.prepared[0].state, Prepared::State::Done);
    EXPECT_EQ(kept.setup.prepared[1].why, whySkipped.toStdString());
    ASSERT_GE(kept.facts.size(), 4u);
    EXPECT_EQ(kept.facts.back().kind, FactKind::Ended);
}

}  // namespace
