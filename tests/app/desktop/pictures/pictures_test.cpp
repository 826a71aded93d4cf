#include "app/desktop/look/colours.h"
#include "tests/app/desktop/pictures/sheet.h"

#include <QDir>
#include <QPainter>

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>

// The window looks as it does on the sheets that are kept, for the eye. Every day each scene is drawn in one
// of the looks, with --all in each.

namespace {

using pictures::Look;

QString keptAs(const Look& look)
{
    return QStringLiteral("docs/images/sheets/%1.jpg").arg(look.name());
}

QImage kept(const Look& look)
{
    return QImage{QStringLiteral(SOURCE_DIR "/") + keptAs(look)};
}

/// To be looked at by whoever wonders what is other.
QString put(const QImage& picture, const QString& name)
{
    const QDir folder{QStringLiteral(OTHER_PICTURES)};
    const QString path = folder.filePath(name + QStringLiteral(".png"));
    return QDir{}.mkpath(folder.path()) && picture.save(path) ? path : QStringLiteral("nowhere");
}

class Pictures : public testing::TestWithParam<std::size_t> {
protected:
    static Look look() { return pictures::looks()[GetParam()]; }
#ifdef EVERY_LOOK
    static bool isTurnOf(std::size_t /*scene*/)
    {
        return true;
    }
#else
    static bool isTurnOf(std::size_t scene)
    {
        return scene % pictures::looks().size() == GetParam();
    }
#endif
};

TEST_P(Pictures, AreAsKept)
{
    constexpr const char* anew = "Where that is as it should be, docs/images/draw --sheets draws them anew.";
    const QImage sheet = kept(look());
    ASSERT_EQ(sheet.size(), pictures::sheetSize(look()))
        << keptAs(look()).toStdString() << " is missing or has other scenes. " << anew;
    const auto scenes = pictures::scenes();
    for (std::size_t scene = 0; scene < scenes.size(); ++scene) {
        if (!isTurnOf(scene))
            continue;
        const QImage now = pictures::packed(pictures::smallPicture(scenes[scene], look()));
        const double other = pictures::otherness(pictures::cutOut(sheet, scene, look()), now);
        if (other > pictures::mostOther)
            ADD_FAILURE() << scenes[scene].name.toStdString() << " is not as on "
                          << keptAs(look()).toStdString() << ": " << other
                          << " of 100 parts of it are other. It is now as in "
                          << put(now, look().name() + QLatin1Char{'-'} + scenes[scene].name).toStdString()
                          << ". " << anew;
    }
}

std::string called(const testing::TestParamInfo<std::size_t>& look)
{
    std::string name = pictures::looks()[look.param].name().toStdString();
    std::ranges::replace(name, '-', '_');
    return name;
}

#ifdef EVERY_LOOK
INSTANTIATE_TEST_SUITE_P(Every, Pictures, testing::Range(std::size_t{0}, pictures::looks().size()), called);
#else
INSTANTIATE_TEST_SUITE_P(Some, Pictures, testing::Range(std::size_t{0}, pictures::looks().size()), called);

// The test of the test.
TEST(Otherness, IsSeenWhereAButtonIsGoneAndNotWhereAFileIsPacked)
{
    const QImage known = pictures::cutOut(kept({}), 0, {});
    ASSERT_FALSE(known.isNull());
    EXPECT_EQ(pictures::otherness(known, known), 0);

    EXPECT_LE(pictures::otherness(known, pictures::packed(known)), pictures::mostOther);

    QImage less = known;
    QPainter painter{&less};
    painter.fillRect(QRect{100, 60, 60, 16}, Qt::gray);
    painter.end();
    EXPECT_GT(pictures::otherness(known, less), pictures::mostOther);
}

/// The same picture, had the theme another colour there.
QImage recoloured(QImage picture, const QColor& from, const QColor& to)
{
    constexpr int alike = 24;  // The file it was packed into keeps no colour to the last bit.
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x) {
            const QColor here = picture.pixelColor(x, y);
            if (std::max({std::abs(here.red() - from.red()), std::abs(here.green() - from.green()),
                          std::abs(here.blue() - from.blue())})
                < alike)
                picture.setPixelColor(x, y, to);
        }
    return picture;
}

TEST(Otherness, IsSeenWhereAButtonHasAnotherColour)
{
    const QImage known = pictures::cutOut(kept({}), 0, {});
    ASSERT_FALSE(known.isNull());
    const QColor action = app::desktop::lightColours().action;
    EXPECT_GT(pictures::otherness(known, recoloured(known, action, action.lighter(150))),
              pictures::mostOther);
}

TEST(Looks, EachHaveASheetOfTheirOwn)
{
    QStringList names;
    for (const Look& look : pictures::looks())
        names << look.name() + QStringLiteral(".jpg");
    names.sort();
    EXPECT_EQ(QDir{QStringLiteral(SOURCE_DIR "/docs/images/sheets")}
                  .entryList(QDir::Files, QDir::Name)
                  .join(QLatin1Char{' '})
                  .toStdString(),
              names.join(QLatin1Char{' '}).toStdString());
}
#endif

}  // namespace
