#include "app/command/card_text.h"
#include "tests/app/command/program_runner.h"

#include <QDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// Record cards, and what is said of a run once it is over.

namespace app::command {
namespace {

using testing::HasSubstr;
using testing::Not;

QStringList cardOf(const QTemporaryDir& folder, const QStringList& more = {})
{
    return QStringList{QStringLiteral("card"), QStringLiteral("--data"), folder.path()} + more;
}

TEST(Card, TellsWhatEachZoneOfTheLatestRunGot)
{
    const QTemporaryDir folder;
    const Ran none = ran(cardOf(folder));
    EXPECT_EQ(none.status, 1);
    EXPECT_THAT(none.err, HasSubstr("begin with basinbell run"));
    ASSERT_EQ(
        ran(playing(folder, demo) + QStringList{QStringLiteral("--from"), QStringLiteral("2026-03-14T14:00")})
            .status,
        0);

    const Ran card = ran(cardOf(folder));
    EXPECT_EQ(card.status, 0) << card.err;
    EXPECT_THAT(card.out, HasSubstr("Run 1, Saturday 14 March 2026"));
    for (const char* const heading :
         {"Mixed", "First strand", "Last strand", "Water", "Developed", "Root", "Ends"})
        EXPECT_THAT(card.out, HasSubstr(heading));
    EXPECT_THAT(card.out, HasSubstr("  Mixed "));
    EXPECT_THAT(card.out, HasSubstr(" for Root"));
    EXPECT_THAT(card.out, HasSubstr("Looked at "));
    EXPECT_THAT(card.out, HasSubstr("leaflet"));
    EXPECT_THAT(card.out, Not(HasSubstr("not ended")));
    EXPECT_EQ(ran(cardOf(folder, {QStringLiteral("--of"), QStringLiteral("1")})).out, card.out);
    EXPECT_THAT(ran(cardOf(folder, {QStringLiteral("--of"), QStringLiteral("9")})).err,
                HasSubstr("no run 9"));
}

TEST(Card, TellsWhatWasSaidBeforeTheStart)
{
    using core::run::Prepared;
    using core::run::Preparing;
    const core::measure::Instant noon{std::chrono::sys_days{std::chrono::year{2026} / 3 / 14}
                                      + std::chrono::hours{12}};
    view::RecordCard card;
    card.began = noon;
    card.until = noon + std::chrono::hours{1};
    card.heads = {{.service = "Wigs", .head = {}, .timeZone = "UTC", .coats = {}}};
    const core::measure::UtcOnly zones;
    EXPECT_THAT(cardText(card, 1, zones), Not(HasSubstr("Before the start"))) << "nobody was asked";

    card.prepared = {
        {.what = Preparing::Sound, .state = Prepared::State::Done, .at = noon - std::chrono::minutes{9}},
        {.what = Preparing::Tests,
         .state = Prepared::State::Skipped,
         .why = "the same as in March",
         .at = noon - std::chrono::minutes{2}},
        {.what = Preparing::Bowls}};
    EXPECT_THAT(cardText(card, 1, zones),
                HasSubstr("Before the start:\n"
                          "11:51  Sound: heard\n"
                          "11:58  Strand test: skipped, the same as in March\n"
                          "Bowls in order: open\n"));
    card.onPerson = true;
    EXPECT_THAT(cardText(card, 1, zones), HasSubstr("11:58  Skin and strand tests: skipped"));
}

TEST(Card, TellsHowItTurnedOutUntilThatIsErased)
{
    const QTemporaryDir folder;
    QByteArray typed;
    for (int step = 0; step < 60; ++step)
        typed += "done\n";  // More often than there are steps: past the last there is nothing to do.
    typed += "out Root: too warm, brassy\nout Ends: 1\nnote: thinner sections\ne\n";
    const Ran played = ran({QStringLiteral("run"), demo, QStringLiteral("--speed"), QStringLiteral("1000"),
                            QStringLiteral("--data"), folder.path()},
                           typed);
    ASSERT_EQ(played.status, 0) << played.err;
    EXPECT_THAT(played.out, HasSubstr("turned out too warm: Root at "));
    EXPECT_THAT(played.out, HasSubstr("said: brassy"));

    const Ran card = ran(cardOf(folder));
    EXPECT_EQ(card.status, 0) << card.err;
    EXPECT_THAT(card.out, HasSubstr("too warm, brassy"));
    EXPECT_THAT(card.out, HasSubstr("as wanted"));
    EXPECT_THAT(card.out, HasSubstr("For next time: thinner sections"));
    EXPECT_THAT(ran({QStringLiteral("replay"), QStringLiteral("--data"), folder.path()}).out,
                HasSubstr("for next time:"));

    const Ran erased = ran({QStringLiteral("erase"), QStringLiteral("--of"), QStringLiteral("1"),
                            QStringLiteral("--data"), folder.path()});
    EXPECT_EQ(erased.status, 0) << erased.err;
    EXPECT_THAT(erased.out, HasSubstr("how it turned out"));
    const Ran left = ran(cardOf(folder));
    EXPECT_EQ(left.status, 0) << left.err;
    for (const char* const said :
         {"was erased from it", "apply zone 1", "rinse group 1", "Zone 1 turned out too warm"})
        EXPECT_THAT(left.out, HasSubstr(said));
    for (const char* const gone : {"Root", "brassy", "thinner"})
        EXPECT_THAT(left.out, Not(HasSubstr(gone)));
    EXPECT_THAT(ran({QStringLiteral("replay"), QStringLiteral("--data"), folder.path()}).err,
                HasSubstr("erased, so it cannot be told again"));
    for (const QFileInfo& file : QDir{folder.path()}.entryInfoList(QDir::Files)) {
        QFile bytes{file.filePath()};
        ASSERT_TRUE(bytes.open(QIODevice::ReadOnly));
        const QByteArray all = bytes.readAll();
        EXPECT_FALSE(all.contains("brassy")) << file.fileName().toStdString();
        EXPECT_FALSE(all.contains("thinner")) << file.fileName().toStdString();
    }
}

}  // namespace
}  // namespace app::command
