#include "app/desktop/language.h"
#include "tests/app/desktop/pictures/sheet.h"

#include <QApplication>
#include <QFileInfo>
#include <QPainter>
#include <QTemporaryDir>

#include <gtest/gtest.h>

// What is shown in the documents is what the program shows. Who changes the window on purpose draws the
// sheets anew (docs/images/draw --sheets) and looks at them.

namespace {

using pictures::Look;

QImage documented(const Look& look)
{
    return QImage{QStringLiteral(SHEETS "/%1.jpg").arg(look.name())};
}

class Pictures : public testing::TestWithParam<Look> {
protected:
    ~Pictures() override
    {
        app::desktop::language::use(QStringLiteral("en"));
        app::desktop::Theme{*qobject_cast<QApplication*>(QCoreApplication::instance())}.setTextSize(100);
    }
};

TEST_P(Pictures, AreAsInTheDocuments)
{
    const QImage known = documented(GetParam());
    ASSERT_FALSE(known.isNull()) << "There is no sheet " << GetParam().name().toStdString();
    const QImage drawn = pictures::sheetOf(GetParam());
    const QStringList found = pictures::differences(drawn, known);
    if (!found.isEmpty()) {
        const QString path = QStringLiteral("other-%1.png").arg(GetParam().name());
        drawn.save(path);
        FAIL() << found.join(QLatin1Char{'\n'}).toStdString() << "\nWhat was drawn is in "
               << QFileInfo{path}.absoluteFilePath().toStdString()
               << "; if it is right, run docs/images/draw --sheets";
    }
}

std::string called(const testing::TestParamInfo<Look>& look)
{
    return look.param.name().replace(QLatin1Char{'-'}, QLatin1Char{'_'}).toStdString();
}

#ifdef EVERY_LOOK
INSTANTIATE_TEST_SUITE_P(Every, Pictures, testing::ValuesIn(pictures::looks()), called);
#else
INSTANTIATE_TEST_SUITE_P(English, Pictures, testing::Values(Look{}), called);

TEST(Differences, AreSeenWhereAButtonIsGoneAndNotWhereAFileIsPacked)
{
    const QImage known = documented({});
    ASSERT_FALSE(known.isNull());
    EXPECT_TRUE(pictures::differences(known, known).isEmpty());

    const QTemporaryDir folder;
    const QString packed = folder.filePath(QStringLiteral("packed.jpg"));
    ASSERT_TRUE(known.save(packed, "jpg", 50));
    EXPECT_TRUE(pictures::differences(known, QImage{packed}).isEmpty());

    QImage less = known;
    QPainter painter{&less};
    painter.fillRect(QRect{100, 60, 60, 16}, Qt::gray);
    painter.end();
    EXPECT_EQ(pictures::differences(known, less).size(), 1);
    EXPECT_EQ(pictures::differences(known, known.copy(0, 0, 100, 100)).size(), 1);
}
#endif

}  // namespace
