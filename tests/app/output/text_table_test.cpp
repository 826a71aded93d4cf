#include "app/output/text_table.h"

#include <gtest/gtest.h>

namespace app::output {
namespace {

using Side = TextTable::Side;

TEST(TextTable, SetsColumnsAsWideAsWhatStandsInThem)
{
    TextTable table{{{"Zone"}, {"Time", Side::Right}}};
    table.addRow({"Root", "30 min"});
    table.addRow({"Mid-lengths", "5 min"});

    EXPECT_EQ(table.text(),
              "Zone           Time\n"
              "Root         30 min\n"
              "Mid-lengths   5 min\n");
}

TEST(TextTable, LeavesOutAColumnInWhichNothingStands)
{
    TextTable table{{{"A"}, {"Empty"}, {"B"}}};
    table.addRow({"1", "", "2"});

    EXPECT_EQ(table.text(), "A  B\n1  2\n");
}

TEST(TextTable, CountsCharactersAndNotBytes)
{
    TextTable table{{{"Zone"}, {"X"}}};
    table.addRow({"N\u00e9e", "1"});
    table.addRow({"e\u0301t\u00e9", "2"});
    table.addRow({"Four", "3"});

    EXPECT_EQ(table.text(), "Zone  X\nN\u00e9e   1\ne\u0301t\u00e9   2\nFour  3\n");
}

TEST(TextTable, FillsUpARowThatIsTooShort)
{
    TextTable table{{{"A"}, {"B"}}};
    table.addRow({"1"});
    table.addRow({"2", "3"});

    EXPECT_EQ(table.text(), "A  B\n1\n2  3\n");
}

}  // namespace
}  // namespace app::output
