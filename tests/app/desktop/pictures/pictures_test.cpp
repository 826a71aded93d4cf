#include "tests/app/desktop/pictures/sheet.h"

#include <QPainter>
#include <QTemporaryDir>

#include <gtest/gtest.h>

// How sheets of pictures are compared. The window itself is not compared yet: an alarm that pulses and a tour
// that goes on are not the same at each drawing.

namespace {

using pictures::Look;

QImage documented(const Look& look)
{
    return QImage{QStringLiteral(SHEETS "/%1.jpg").arg(look.name())};
}

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

}  // namespace
