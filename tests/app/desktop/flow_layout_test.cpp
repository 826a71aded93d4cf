#include "app/desktop/look/flow_layout.h"

#include <QWidget>

#include <gtest/gtest.h>

using app::desktop::FlowLayout;

namespace {

/// How many parts of 100 by 20 are on each line of a width.
std::vector<int> linesOf(int parts, int width)
{
    QWidget whole;
    auto* layout = new FlowLayout{&whole};
    for (int part = 0; part < parts; ++part) {
        auto* widget = new QWidget;
        widget->setFixedSize(100, 20);
        layout->addWidget(widget);
    }
    layout->setGeometry({0, 0, width, 500});
    std::vector<int> lines;
    int y = -1;
    for (int part = 0; part < parts; ++part) {
        const QRect place = layout->itemAt(part)->geometry();
        if (place.top() != y)
            lines.push_back(0);
        y = place.top();
        ++lines.back();
        EXPECT_LE(place.right(), width);
    }
    return lines;
}

TEST(FlowLayout, PutsOnALineWhatHasRoom)
{
    EXPECT_EQ(linesOf(4, 424), (std::vector<int>{4}));
    EXPECT_EQ(linesOf(6, 424), (std::vector<int>{4, 2}));
    EXPECT_EQ(linesOf(2, 150), (std::vector<int>{1, 1}));
}

TEST(FlowLayout, LeavesNoneAloneBelowALineOfMany)
{
    EXPECT_EQ(linesOf(5, 424), (std::vector<int>{3, 2}));
    EXPECT_EQ(linesOf(9, 424), (std::vector<int>{4, 3, 2}));
    EXPECT_EQ(linesOf(3, 210), (std::vector<int>{2, 1})) << "one of two would only be alone above instead";
}

}  // namespace
