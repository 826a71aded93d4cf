#include "tests/app/desktop/languages/catalogue.h"

#include "app/desktop/language.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

// Every text of the sources is in every language, and says in it what it says in English.

namespace {

QString folder()
{
    return QStringLiteral(SOURCE_DIR "/resources/translations");
}

QStringList files()
{
    QStringList names;
    for (const app::desktop::language::Offered& each : app::desktop::language::offered())
        names << QStringLiteral("basinbell_%1.ts").arg(each.code);
    return names;
}

QByteArray contentOf(const QString& path)
{
    QFile file{path};
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{};
}

std::string toText(const QStringList& lines)
{
    return lines.join(QLatin1Char{'\n'}).toStdString();
}

/// What is in one catalogue and not in the other.
QStringList differences(const QString& kept, const QString& fresh)
{
    const auto names = [](const QString& file) {
        QStringList all;
        for (const catalogue::Message& message : catalogue::read(file))
            all << message.name();
        return all;
    };
    QStringList found;
    for (const QString& name : names(fresh))
        if (!names(kept).contains(name))
            found << QStringLiteral("lacks ") + name;
    for (const QString& name : names(kept))
        if (!names(fresh).contains(name))
            found << QStringLiteral("nothing says any more ") + name;
    return found;
}

TEST(Catalogues, HaveWhatTheSourcesSayAndNothingElse)
{
    const QTemporaryDir copies;
    for (const QString& name : files())
        ASSERT_TRUE(QFile::copy(QDir{folder()}.filePath(name), copies.filePath(name))) << name.toStdString();
    QProcess update;
    update.start(folder() + QStringLiteral("/update"), {copies.path()});
    ASSERT_TRUE(update.waitForFinished(60'000));
    ASSERT_EQ(update.exitCode(), 0) << update.readAllStandardError().toStdString();
    for (const QString& name : files()) {
        const QString kept = QDir{folder()}.filePath(name);
        const QString fresh = copies.filePath(name);
        EXPECT_TRUE(contentOf(kept) == contentOf(fresh))
            << name.toStdString() << ": run resources/translations/update and translate what is unfinished.\n"
            << toText(differences(kept, fresh));
    }
}

TEST(Catalogues, AreTranslatedWithEverythingThatIsPutIn)
{
    for (const QString& name : files()) {
        const auto messages = catalogue::read(QDir{folder()}.filePath(name));
        EXPECT_FALSE(messages.empty()) << name.toStdString();
        for (const catalogue::Message& message : messages)
            EXPECT_EQ(toText(catalogue::faultsOf(message)), "") << name.toStdString();
    }
}

// A text is looked up by where it stands. Where the reader of the sources has lost its way (after a constant
// of a type in another namespace, say) it takes a class for one of its own, and nobody would find the text.
TEST(Catalogues, HaveEverySentenceOfCoreInOnePlace)
{
    const auto messages = catalogue::read(QDir{folder()}.filePath(QStringLiteral("basinbell_de.ts")));
    int found = 0;
    for (const catalogue::Message& message : messages) {
        const bool ofCore = message.context == QLatin1String{"core::measure::Sentence"};
        found += ofCore ? 1 : 0;
        EXPECT_TRUE(ofCore || !message.context.endsWith(QLatin1String{"Sentence"}))
            << message.name().toStdString();
        EXPECT_FALSE(message.context.isEmpty()) << message.name().toStdString();
    }
    EXPECT_GT(found, 100);
}

TEST(Catalogues, CountInBothPluralForms)
{
    for (const QString& name : files())
        for (const catalogue::Message& message : catalogue::read(QDir{folder()}.filePath(name)))
            if (message.counts) {
                EXPECT_EQ(message.forms.size(), 2) << message.name().toStdString();
            }
}

// The test of the test.
TEST(CatalogueFaults, AreSeen)
{
    const auto faults = [](const char* source, const QStringList& forms, bool counts = false) {
        catalogue::Message message{QStringLiteral("C"), QString::fromUtf8(source), {}, counts, true, forms};
        return catalogue::faultsOf(message).size();
    };
    EXPECT_EQ(faults("Begin %1, done %2.", {QStringLiteral("Beginn %1, fertig %2.")}), 0);
    EXPECT_EQ(faults("Begin %1, done %2.", {QStringLiteral("Beginn %1.")}), 1);
    EXPECT_EQ(faults("Begin %1", {QString{}}), 1);
    EXPECT_EQ(faults("Begin", {}), 1);
    EXPECT_EQ(faults("&File", {QStringLiteral("Datei")}), 1);
    EXPECT_EQ(faults("&File", {QStringLiteral("&Datei")}), 0);
    EXPECT_EQ(faults("&%1 %", {QStringLiteral("zu &%1 %")}), 0);
    EXPECT_EQ(faults("More (M)", {QStringLiteral("Plus (P)")}), 1);
    EXPECT_EQ(faults(" min", {QStringLiteral("min")}), 1);
    EXPECT_EQ(faults("%n heads", {QStringLiteral("ein Kopf"), QStringLiteral("%n Köpfe")}, true), 0);
    EXPECT_EQ(faults("%n heads", {QStringLiteral("ein Kopf"), QStringLiteral("Köpfe")}, true), 1);
    catalogue::Message unfinished{QStringLiteral("C"),    QStringLiteral("Go"), {}, false, false,
                                  {QStringLiteral("Los")}};
    EXPECT_EQ(catalogue::faultsOf(unfinished).size(), 1);
}

}  // namespace
