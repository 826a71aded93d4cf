#include "app/desktop/sentences.h"

#include "app/desktop/language.h"

#include <gtest/gtest.h>

// What core says, in the languages of the window.

namespace {

using app::desktop::inWords;
using core::measure::LocalTime;
using core::measure::Seconds;
using core::measure::Sentence;
using std::chrono::minutes;

class Sentences : public testing::Test {
protected:
    ~Sentences() override { app::desktop::language::use(QStringLiteral("en")); }

    static std::string in(const char* language, const Sentence& sentence)
    {
        app::desktop::language::use(QLatin1String{language});
        return inWords(sentence).toStdString();
    }
};

const std::string root = "Root";

TEST_F(Sentences, PutLengthsTimesAndOtherSentencesIn)
{
    const Sentence moves =
        Sentence::worded("%1 moves to %2 (from %3)", Sentence::worded("Apply %1", root),
                         LocalTime{minutes{14 * 60 + 36}}, LocalTime{minutes{14 * 60 + 31}});
    EXPECT_EQ(in("en", moves), moves.text());
    EXPECT_EQ(in("de", moves), "Root auftragen rückt auf 14:36 (von 14:31)");
    EXPECT_EQ(in("fr", moves), "Appliquer Root passe à 14:36 (au lieu de 14:31)");
    EXPECT_EQ(in("es", moves), "Aplicar Root pasa a las 14:36 (antes 14:31)");
    const Sentence limit =
        Sentence::worded("%1: %2", root, Sentence::worded("development of at most %1", Seconds{minutes{65}}));
    EXPECT_EQ(in("de", limit), "Root: Einwirkzeit von höchstens 1 h 5 min");
}

TEST_F(Sentences, CountAsEachLanguageDoes)
{
    const auto look = [](std::size_t number) {
        return Sentence::worded("Look at %1 (%2)", root, core::measure::ordinal(number));
    };
    EXPECT_EQ(in("en", look(2)), "Look at Root (2nd)");
    EXPECT_EQ(in("de", look(2)), "Root kontrollieren (2.)");
    EXPECT_EQ(in("fr", look(1)), "Contrôler Root (1er)");
    EXPECT_EQ(in("fr", look(2)), "Contrôler Root (2e)");
    EXPECT_EQ(in("es", look(3)), "Revisar Root (3.ª)");
}

TEST_F(Sentences, GoOnWithASmallLetterInEnglishAlone)
{
    const Sentence cure =
        Sentence::worded("%1: %2", std::string{"Second coat"},
                         core::measure::small(Sentence::worded("Let %1 develop up to %2 (now %3)", root,
                                                               Seconds{minutes{22}}, Seconds{minutes{20}})));
    EXPECT_EQ(in("en", cure), "Second coat: let Root develop up to 22 min (now 20 min)");
    EXPECT_EQ(in("de", cure), "Second coat: Root bis zu 22 min einwirken lassen (jetzt 20 min)");
}

TEST_F(Sentences, LeaveNamesAsTheyAre)
{
    EXPECT_EQ(in("de", Sentence{std::string{"Heat %1"}}), "Heat %1");
    EXPECT_EQ(in("de", Sentence::worded("Apply %1", std::string{"Heat %1"})), "Heat %1 auftragen");
    EXPECT_EQ(in("de", Sentence{}), "");
}

}  // namespace
