#include "app/command/terminal.h"

#include "tests/app/session/late_run.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

// What can be chosen is worked out apart in real time, while alarms sound.

namespace app::command {
namespace {

using session::samples::await;
using session::samples::LateRun;
using testing::HasSubstr;
using testing::Not;

class TerminalChoices : public testing::Test {
protected:
    void type(const char* line) { m_terminal.takeLine(QString::fromLatin1(line)); }
    /// All that was said since this was last asked.
    std::string said()
    {
        const std::string text = m_out.str();
        m_out.str({});
        return text;
    }
    bool awaitList()
    {
        return await([this] { return m_out.str().find("  w 1  ") != std::string::npos; });
    }

    LateRun m_run;

private:
    core::measure::UtcOnly m_zones;
    std::ostringstream m_out;
    Terminal m_terminal{m_run.session(), m_zones, std::make_unique<PlainScreen>(m_out)};
};

TEST_F(TerminalChoices, AreListedOnceTheyAreFoundAndNotBefore)
{
    type("w");
    EXPECT_THAT(said(), Not(HasSubstr("w 1"))) << "whoever types is not kept waiting";
    ASSERT_TRUE(awaitList());
    EXPECT_THAT(said(), HasSubstr("  w 2  "));
}

TEST_F(TerminalChoices, AreTakenByNumberThoughTheyWereNotListed)
{
    const std::size_t before = m_run.session().facts().size();
    type("w 1");
    EXPECT_EQ(m_run.session().facts().size(), before);
    ASSERT_TRUE(await([&] { return !said().empty(); }));
}

TEST_F(TerminalChoices, AreListedAnewAfterAnAnswerInsteadOfBeingMistaken)
{
    type("w");
    ASSERT_TRUE(awaitList());
    session::samples::answerFirst(m_run.session());
    const std::size_t before = m_run.session().facts().size();
    said();
    type("w 2");
    EXPECT_EQ(m_run.session().facts().size(), before);
    EXPECT_THAT(said(), HasSubstr("since these were listed"));
    ASSERT_TRUE(await([this] { return !m_run.session().isPlanning(); }));
    ASSERT_TRUE(awaitList());
}

}  // namespace
}  // namespace app::command
